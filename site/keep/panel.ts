import { h } from "../dom";
import type { KeptBuild } from "./record";
import { buildRow, nameForm, type RowDeeds, type Whereabouts } from "./row";
import { mostDrafts } from "./shelf";

export interface Listed {
  readonly record: KeptBuild;
  readonly where: Whereabouts;
}

export interface PanelDeeds extends RowDeeds {
  /** What is kept, newest first; undefined where the device keeps nothing. */
  list(): Promise<readonly Listed[] | undefined>;
  openDemo(): void;
  openNew(): void;
  openFile(): void;
  keepCopy(name: string): void;
  readonly now: () => number;
  /** Name of what is open. */
  presentName(): string;
  readonly demoName: string;
}

export interface Panel {
  readonly element: HTMLElement;
  /** Opens it, or closes it; focus goes in and comes back. */
  toggle(opener: HTMLElement): void;
  close(): void;
  refresh(): Promise<void>;
}

/** The list of builds on this device. */
export function createPanel(deeds: PanelDeeds): Panel {
  let opener: HTMLElement | undefined;
  const list = h("ul", { class: "build-list" });
  const empty = h("p", { class: "build-empty", hidden: true });
  const title = h("h2", { id: "builds-title", tabindex: -1 }, "Builds on this device");
  const close = (): void => {
    if (element.hidden) return;
    element.hidden = true;
    opener?.setAttribute("aria-expanded", "false");
    opener?.focus();
  };
  const button = (words: string, onclick: () => void): HTMLElement => h("button", { type: "button", class: "plain", onclick }, words);
  const foot = h("div", { class: "build-foot" });
  const keep = (): void => {
    const form = nameForm({
      label: "Name of the copy",
      word: "Keep",
      proposal: `${deeds.presentName()} copy`,
      done: (name) => {
        form.replaceWith(foot);
        deeds.keepCopy(name);
      },
      cancelled: () => form.replaceWith(foot),
    });
    foot.replaceWith(form);
    form.querySelector("input")!.select();
  };
  foot.append(button("Keep what is open under a name", keep));
  const element = h(
    "section",
    {
      class: "builds",
      id: "builds",
      role: "dialog",
      "aria-labelledby": "builds-title",
      hidden: true,
      onkeydown: (event: KeyboardEvent) => {
        if (event.key === "Escape") close();
      },
    },
    h("div", { class: "builds-head" }, title, button("Close", close)),
    empty,
    list,
    foot,
    h(
      "ul",
      { class: "build-list build-sources" },
      source(deeds.demoName, "The invented demo, always here as it was made", "Open the demo", () => deeds.openDemo()),
      source("A file", "As Save writes them; dropping one anywhere on the page does the same", "Open a file", () => deeds.openFile()),
      source("A new build", "One installation, every value as the sheets declare it", "Begin", () => deeds.openNew()),
    ),
    h(
      "p",
      { class: "build-note" },
      `Changes are kept here by themselves, in this browser alone. Of builds never named, the newest ${mostDrafts} stay. Clearing the browser's data clears them: what must last, save as a file.`,
    ),
  );

  const refresh = async (): Promise<void> => {
    if (element.hidden) return;
    const listed = await deeds.list();
    empty.textContent =
      listed === undefined
        ? "This browser keeps nothing for this page. Save builds as files."
        : "Nothing is kept yet. Change a value, and the build is kept here by itself.";
    empty.hidden = listed !== undefined && listed.length > 0;
    const now = deeds.now();
    list.replaceChildren(...(listed ?? []).map(({ record, where }) => buildRow(record, where, now, deeds)));
  };
  return {
    element,
    close,
    refresh,
    toggle: (from) => {
      if (!element.hidden) return close();
      opener = from;
      element.hidden = false;
      from.setAttribute("aria-expanded", "true");
      title.focus();
      void refresh();
    },
  };
}

function source(name: string, words: string, deed: string, act: () => void): HTMLElement {
  return h(
    "li",
    { class: "build-row" },
    h("div", { class: "build-facts" }, h("p", { class: "build-title" }, name), h("p", { class: "build-detail" }, words)),
    h("div", { class: "build-actions" }, h("button", { type: "button", class: "plain", onclick: act }, deed)),
  );
}
