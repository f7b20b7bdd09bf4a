import { h } from "../dom";
import type { KeptBuild } from "./record";
import { timeWords } from "./time";

export type Whereabouts = "here" | "another tab" | "closed";

export interface RowDeeds {
  open(record: KeptBuild): void;
  copy(record: KeptBuild, name: string): void;
  rename(record: KeptBuild, name: string): void;
  remove(record: KeptBuild): void;
}

/** One build of the list: what it is, and what can be done with it. */
export function buildRow(record: KeptBuild, where: Whereabouts, now: number, deeds: RowDeeds): HTMLElement {
  const count = `${record.installations} ${record.installations === 1 ? "installation" : "installations"}`;
  const facts = [count, timeWords(record.time, now), ...(record.named ? [] : ["never named"]), ...placeWords[where]];
  const head = h(
    "div",
    { class: "build-facts" },
    h("p", { class: "build-title" }, record.name || "Without a name"),
    h("p", { class: "build-detail" }, facts.join(" · ")),
  );
  const actions = h("div", { class: "build-actions" });
  const row = h("li", { class: "build-row", "data-build": record.id, "aria-current": where === "here" && "true" }, head, actions);
  const ask = (label: string, word: string, proposal: string, done: (name: string) => void): void => {
    const form = nameForm({
      label,
      word,
      proposal,
      done: (name) => done(name),
      cancelled: () => {
        form.replaceWith(actions);
        actions.querySelector<HTMLElement>("button")?.focus();
      },
    });
    actions.replaceWith(form);
    form.querySelector("input")!.select();
  };
  const act = (words: string, onclick: () => void): HTMLElement =>
    h("button", { type: "button", class: "plain", onclick, "aria-label": `${words}: ${record.name}` }, words);
  actions.append(
    ...(where === "here" ? [] : [act(where === "closed" ? "Open" : "Open a copy", () => deeds.open(record))]),
    act("Keep a copy", () => ask("Name of the copy", "Keep", `${record.name} copy`, (name) => deeds.copy(record, name))),
    // What another tab is writing is renamed and deleted there.
    ...(where === "another tab"
      ? []
      : [
          act("Rename", () => ask("New name", "Rename", record.name, (name) => deeds.rename(record, name))),
          act("Delete", () => deeds.remove(record)),
        ]),
  );
  return row;
}

const placeWords: Readonly<Record<Whereabouts, readonly string[]>> = {
  here: ["open here"],
  "another tab": ["open in another tab"],
  closed: [],
};

/** Longest name that may be typed. */
const longestName = 120;

interface NameForm {
  readonly label: string;
  readonly word: string;
  readonly proposal: string;
  readonly done: (name: string) => void;
  readonly cancelled: () => void;
}

/** Asks for a name on the spot. */
export function nameForm({ label, word, proposal, done, cancelled }: NameForm): HTMLElement {
  const field = h("input", { class: "name-field", value: proposal, maxlength: longestName, "aria-label": label, autocomplete: "off" });
  const refusal = h("p", { class: "name-refusal", role: "alert" });
  const settle = (): void => {
    const name = field.value.trim();
    if (name === "") refusal.textContent = "A build needs a name.";
    else done(name);
  };
  field.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" && event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    if (event.key === "Enter") settle();
    else cancelled();
  });
  return h(
    "div",
    { class: "name-form" },
    field,
    h("button", { type: "button", class: "plain", onclick: settle }, word),
    h("button", { type: "button", class: "plain", onclick: cancelled }, "Cancel"),
    refusal,
  );
}
