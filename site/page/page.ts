import { type Graph, isRefusal, type Program, type Ref, sameValue } from "../../lib/graph";
import type { Pressure } from "../../lib/quantity";
import { type Build, inputsOf } from "../../worksheets/build/build";
import type { Sheet } from "../../worksheets/sheet";
import { h } from "../dom";
import { type Bases, type BuildFiles, createKeeping, type Keeping } from "../keep";
import { printAsDocument } from "../print";
import { bind, fetched } from "../runtime";
import { createLocks, createSession, differingInputs, preference } from "../state";
import { contents } from "./contents";
import { type Desk, placesOf, usersOf } from "./desk";
import { echo } from "./echo";
import { findDialog } from "./find";
import { tellFirstMove } from "./first-move";
import { dimUnderTouch } from "./hand-down";
import { header, headButton } from "./header";
import { inTurns } from "./in-turns";
import { followLinks } from "./arrive";
import { listenToKeys } from "./keyboard";
import { ledger } from "./ledger";
import { trackMoves } from "./moves";
import { noticeLine } from "./notice";
import { createNearness } from "./nearness";
import { createParts } from "./parts";
import { sheetSection } from "./sheet";
import { createStandings } from "./standings";
import { createTraces } from "./traces";
import { learnHeights } from "./true-heights";
import { createView } from "./view";
import { createWorkable } from "./workable";
import { workingWord } from "./working";
import { createZones } from "./zones";

export interface Notebook {
  readonly sheets: readonly Sheet[];
  readonly graph: Graph;
  readonly program: Program;
  /** What is open at first. */
  readonly build: Build;
  readonly files: BuildFiles;
  /** The cell that holds the pressure of the air around, for gauge pressures typed as absolute ones. */
  readonly barometer: Ref<Pressure>;
  /** Of airledger, for what is printed. */
  readonly version: string;
  /** What links are told from. */
  readonly bases: Bases;
}

/** Builds the whole page into an element, and keeps it up to date. */
export function mountPage(root: HTMLElement, { sheets, graph, program, build, files, bases, barometer, version }: Notebook): Keeping {
  const session = createSession({ graph, program, build, name: "as opened" });
  const binding = bind(graph, session.inputs, (keys, whole) => show(keys, whole), () => looked());
  const locks = createLocks();
  const ambient = (): Pressure | undefined => {
    const pressure = binding.values.get(barometer);
    return isRefusal(pressure) ? undefined : pressure;
  };
  const shown = { session, graph, sheets, values: binding.values, places: placesOf(sheets) };
  const zones = createZones(shown, program);
  const desk: Desk = { ...shown, locks, ambient, zones, users: usersOf(graph) };
  const standings = createStandings(desk);
  const moves = trackMoves(desk, standings);
  const nearness = createNearness();
  const hand = (): string | undefined => session.state.gesture?.key;
  const parts = createParts(hand);
  const looked = (): ReadonlySet<string> | undefined => (hand() === undefined ? undefined : parts.near());
  const workable = createWorkable(desk, moves, program, parts.refresh);
  const traces = createTraces(desk, moves);
  const notice = noticeLine();
  const view = createView();
  const single = preference("single keys", ["on", "off"]);
  const find = findDialog(desk);
  // Rarely asked for, so not part of the first load.
  const keys = fetched(
    () => import("./key-list"),
    ({ keyList }) => {
      const made = keyList(single);
      root.append(made.element);
      return made;
    },
    () => notice.mention("The list could not be fetched. Try again."),
  );
  const openKeys = async (): Promise<void> => (await keys.ask())?.open();
  const keeping = createKeeping({ session, graph, bases, files, mention: notice.mention });
  const head = header(desk, [...keeping.actions, headButton("Print", undefined, () => void print()), headButton("Find", "/", find.open), headButton("Keys", "?", () => void openKeys())], notice, view);
  let print = async (): Promise<void> => undefined;
  const working = workingWord(root, () => binding.settled());
  working.begin();
  let mounted = false;

  const mount = (): void => {
    mounted = true;
    const list = contents(desk, standings);
    const felt = echo(desk, standings, moves);
    const book = ledger(desk, standings);
    const main = h("main", {}, ...sheets.map((sheet) => sheetSection(desk, { standings, parts, nearness, traces, workable }, sheet)), book.element);
    const side = h("div", { class: "side" }, list.element, felt.element);
    root.replaceChildren(
      h("a", { class: "skip", href: "#sheets" }, "To the sheets"),
      head.element,
      keeping.strip.element,
      ...keeping.elements,
      h("div", { class: "columns" }, side, main),
      find.element,
    );
    main.id = "sheets";
    new ResizeObserver(() => {
      document.documentElement.style.setProperty("--head", `${head.element.offsetHeight}px`);
    }).observe(head.element);
    surroundings = [inTurns(session, [...felt.pieces, list.refresh]), book, traces];
    print = printAsDocument(desk, program, version);
    dimUnderTouch(desk, root);
    tellFirstMove(desk, standings, moves);
    listenToKeys(desk, { notice, traces, single, find, openKeys: () => void openKeys() });
    showAll();
    learnHeights(main, () => hand() !== undefined);
    followLinks();
  };

  let surroundings: readonly { refresh(): void }[] = [];
  const show = (keys: ReadonlySet<string>, whole: boolean): void => {
    working.end();
    standings.update(keys);
    if (!mounted) {
      mount();
      return;
    }
    if (!whole) {
      parts.refresh(keys);
      return;
    }
    moves.sample();
    workable.update();
    if (allDue) showAll();
    else {
      parts.refresh(keys);
      for (const each of surroundings) each.refresh();
    }
  };
  /** Whether everything is to be shown anew once the values are there that belong to it. */
  let allDue = false;
  const showAll = (): void => {
    allDue = false;
    head.refresh();
    parts.refreshAll();
    for (const each of surroundings) each.refresh();
  };

  zones.start();
  locks.subscribe((key) => parts.refresh([key]));
  session.subscribe((state, previous) => {
    const before = inputsOf(previous.build, previous.installation);
    const changes = Object.fromEntries(
      differingInputs(graph, before, session.inputs).map((key) => [key, session.inputs[key]]),
    );
    if (Object.keys(changes).length > 0) {
      working.begin();
      binding.set(changes);
    }
    if (!state.gesture || !previous.gesture) head.refresh();
    const wider =
      state.units !== previous.units ||
      state.held !== previous.held ||
      state.installation !== previous.installation ||
      state.opened !== previous.opened ||
      state.build.measured !== previous.build.measured ||
      !sameValue(state.build.installations, previous.build.installations);
    if (!wider || !mounted) return;
    if (Object.keys(changes).length === 0) {
      showAll();
      return;
    }
    // Another installation's reference must not stand beside the values of the one before.
    allDue = true;
    void binding.settled().then(() => allDue && showAll());
  });
  return keeping;
}
