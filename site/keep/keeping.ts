import type { Graph } from "../../lib/graph";
import type { Build } from "../../worksheets/build/build";
import { Unreadable } from "../../worksheets/build/unreadable";
import { h } from "../dom";
import type { Session } from "../state";
import { type Autosave, createAutosave } from "./autosave";
import { type Bases, newBuild } from "./bases";
import { codeIn } from "./code";
import { fetchedPanel } from "./fetched-panel";
import { type BuildFiles, fileOpening, saveFile, tellNotices } from "./files";
import type { Opening } from "./link";
import type { Listed } from "./panel";
import { type KeptBuild, newId } from "./record";
import { copyLink, fetchLinks, plainAddress } from "./sharing";
import { openingOf, renamed, surplus } from "./shelf";
import { openStore, type Store } from "./store";
import { createStrip, type Strip } from "./strip";
import { createTabs } from "./tabs";
import { timeWords } from "./time";

/** What keeps builds: on the device, in files, in links. */
export interface Keeping {
  /** For the head of the page. */
  readonly actions: readonly HTMLElement[];
  /** For below the head. */
  readonly elements: readonly HTMLElement[];
  readonly strip: Strip;
  /** Opens what the address names, and offers what the device has. */
  start(): Promise<void>;
}

export interface KeepingParts {
  readonly session: Session;
  readonly graph: Graph;
  readonly bases: Bases;
  readonly files: BuildFiles;
  /** A few words on what was just done. */
  mention(words: string): void;
}

export function createKeeping({ session, graph, bases, files, mention }: KeepingParts): Keeping {
  const strip = createStrip();
  const tabs = createTabs(navigator.locks);
  const now = (): number => Date.now();
  let store: Store | undefined;
  let autosave: Autosave | undefined;

  const open = (opening: Opening, record?: KeptBuild): void => {
    const { build, opened, installation, units } = opening;
    const put = (): void => {
      session.open(build, "as opened", { opened, installation });
      session.choose(units);
    };
    if (autosave) autosave.follow(record, put);
    else put();
    strip.take("offer");
    panel.close();
    cleanAddress();
  };
  /** What is open is kept before another build takes its place. */
  const replace = async (opening: Opening, record?: KeptBuild): Promise<void> => {
    session.end();
    await autosave?.flush();
    open(opening, record);
  };
  const plainly = (build: Build): Opening => ({ build, opened: build, installation: build.installations[0]!.key, units: session.state.units, notices: [] });
  const save = (): void => saveFile(session.state.build, files);

  const openKept = async (record: KeptBuild, where: Listed["where"]): Promise<void> => {
    const opening = openingOf(record, files, graph);
    if ("message" in opening) {
      strip.put({ key: "file", words: `${record.name} was not opened. What is on the page stays as it is.`, list: [opening.message], urgent: true });
      return;
    }
    if (where === "closed") await store!.take({ ...record, writer: tabs.own }).catch(() => undefined);
    await replace(opening, where === "closed" ? record : undefined);
    tellNotices(strip, `${record.name} is open.`, opening.notices);
  };

  const whereabouts = (record: KeptBuild, others: ReadonlySet<string>): Listed["where"] =>
    record.id === autosave?.id ? "here" : others.has(record.writer) ? "another tab" : "closed";
  const listed = async (): Promise<readonly Listed[] | undefined> => {
    try {
      await autosave?.flush();
      const [records, others] = await Promise.all([store?.all(), tabs.others()]);
      return records?.map((record) => ({ record, where: whereabouts(record, others) }));
    } catch {
      return undefined;
    }
  };
  const keepAside = async (record: KeptBuild, name: string): Promise<void> => {
    const copy = renamed({ ...record, id: newId(), time: now(), writer: "" }, name, files);
    if (copy) await trying(() => store!.take(copy), `Kept as ${name}`);
  };
  /** Does something on the device; where that is refused, says so. */
  const trying = async (deed: () => Promise<void>, done: string): Promise<void> => {
    try {
      await deed();
      mention(done);
    } catch {
      sayRefused();
    }
    await panel.refresh();
  };
  const remove = async (record: KeptBuild): Promise<void> => {
    const here = record.id === autosave?.id;
    if (here) autosave?.forget();
    await trying(() => store!.remove(record.id), "");
    const back = async (): Promise<void> => {
      await trying(() => store!.take(record), `${record.name} is back`);
    };
    strip.put({
      key: "deleted",
      words: `Deleted from this device: ${record.name}, ${timeWords(record.time, now())}.${here ? " It stays open on the page." : ""}`,
      deeds: [{ words: "Take back", act: () => void back() }],
    });
  };

  const panel = fetchedPanel(
    {
      list: listed,
      now,
      presentName: () => session.state.build.name,
      demoName: bases.demo.name,
      open: async (record) => {
        const found = (await listed())?.find((each) => each.record.id === record.id);
        await openKept(found?.record ?? record, found?.where ?? "closed");
      },
      copy: (record, name) => void keepAside(record, name),
      rename: async (record, name) => {
        if (record.id === autosave?.id) {
          session.rename(name);
          autosave.named();
          await panel.refresh();
          return;
        }
        const next = renamed(record, name, files);
        if (next) await trying(() => store!.take(next), `Renamed to ${name}`);
      },
      remove: (record) => void remove(record),
      openDemo: () => void replace(plainly(bases.demo)),
      openFile: () => opening.choose(),
      openNew: () => void replace(plainly(newBuild(graph))),
      keepCopy: (name) => {
        const { build, opened, installation, units } = session.state;
        const [text, openedText] = [files.write(build), files.write(opened)];
        const installations = build.installations.length;
        const record = { id: newId(), name, installations, time: now(), writer: "", named: true, text, openedText, installation, units };
        void keepAside(record, name);
      },
    },
    () => mention("The list could not be fetched. Try again."),
  );
  const opening = fileOpening({ files, strip, open: (build) => void replace(plainly(build)) });

  const sayRefused = (): void =>
    strip.put({
      key: "refused",
      words: "Not saved on this device. Save the build as a file.",
      deeds: [{ words: "Save as a file", act: save }],
      stays: true,
    });

  /** An address that names a build is true only until the build is changed. */
  const cleanAddress = (): void => {
    if (codeIn(location.hash) !== undefined) history.replaceState(history.state, "", plainAddress());
  };
  /** The link that is open, and its build as it was opened. */
  let linked: { readonly code: string; readonly build: Build } | undefined;
  const openLink = async (code: string): Promise<void> => {
    try {
      const { readCode } = await fetchLinks();
      const found = await readCode(code, { graph, bases });
      const { hash } = location;
      await replace(found);
      history.replaceState(history.state, "", hash);
      linked = { code, build: found.build };
      tellNotices(strip, "The link's build is open.", found.notices);
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      cleanAddress();
      strip.put({ key: "file", words: "The link was not opened. The page goes on with what it showed.", list: [error.message], urgent: true });
    }
  };
  const addressChanged = (): void => {
    const code = codeIn(location.hash);
    // Where the address goes to a sheet instead, it holds the build no more.
    if (code === undefined && session.state.build === linked?.build) autosave?.insist();
    if (code === undefined) return;
    // The way back through the visited addresses does not undo what was changed since.
    if (code !== linked?.code) void openLink(code);
    else if (session.state.build !== linked.build) cleanAddress();
  };

  const builds = action("Builds", () => void panel.toggle(builds));
  builds.setAttribute("aria-expanded", "false");
  builds.setAttribute("aria-controls", "builds");
  const actions = [
    builds,
    action("Save", save),
    action("Copy link", () => {
      session.end();
      void copyLink({ strip, mention, save, hash: async () => (await fetchLinks()).hashOf(session.state, { graph, bases }) });
    }),
  ];

  const offer = async (): Promise<void> => {
    const last = (await listed())?.find(({ where, record }) => where === "closed" && !("message" in openingOf(record, files, graph)));
    if (!last) return;
    const { record } = last;
    strip.put({
      key: "offer",
      words: "What you left is kept on this device.",
      deeds: [{ words: `Continue with ${record.name} as of ${timeWords(record.time, now())}`, act: () => void openKept(record, "closed") }],
      close: { words: "Start fresh", act: () => mention("It stays under Builds") },
    });
  };

  const start = async (): Promise<void> => {
    const code = codeIn(location.hash);
    if (code !== undefined) await openLink(code);
    store = await openStore();
    autosave = createAutosave({
      session,
      store,
      writer: tabs.own,
      now,
      write: files.write,
      onTaken: () => strip.put({ key: "taken", words: "Another tab has opened this build. What you change here is kept under a record of its own." }),
      onKept: (kept) => (kept ? strip.take("refused") : sayRefused()),
    });
    session.subscribe((state, previous) => {
      const before = previous.gesture?.before ?? previous.build;
      if (!state.gesture && state.build !== before) cleanAddress();
    });
    window.addEventListener("hashchange", addressChanged);
    const leave = (): void => autosave!.atOnce();
    window.addEventListener("pagehide", leave);
    document.addEventListener("visibilitychange", () => document.hidden && leave());
    await offer();
    const others = await tabs.others();
    for (const { id } of surplus((await store.all().catch(() => [])) ?? [], others)) await store.remove(id).catch(() => undefined);
  };
  return { actions, elements: [panel.element, ...opening.elements], strip, start };
}

function action(words: string, onclick: () => void): HTMLButtonElement {
  return h("button", { type: "button", class: "plain", onclick }, words);
}
