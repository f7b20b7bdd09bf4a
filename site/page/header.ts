import { installationOf } from "../../worksheets/build/build";
import { h, setAttribute, setChildren, setText } from "../dom";
import { offlineWord } from "../offline";
import type { Desk } from "./desk";
import type { Notice } from "./notice";
import { radioGroup } from "./radio-group";
import { holdNow, redoOnce, undoOnce } from "./actions";
import type { View, ViewName } from "./view";

/**
 * The head of the page: build, installation, reference, units, and the way back.
 *
 * @param deeds buttons of what else can be done with the build
 * @param view how the page is laid out
 */
export function header(desk: Desk, deeds: readonly HTMLElement[], notice: Notice, view: View): { readonly element: HTMLElement; refresh(): void } {
  const { session } = desk;
  const name = h("h1", { class: "build-name" });
  const installation = h("div", { class: "installations" });
  const heldName = h("span", { class: "held-name" });
  const undo = button("Undo", () => undoOnce(desk, notice));
  const redo = button("Redo", () => redoOnce(desk, notice));
  const units = radioGroup({
    legend: "Units",
    name: "units",
    options: { SI: "SI", US: "US" },
    onchange: (system) => session.choose({ system: system as "SI" | "US", own: {} }),
  });
  const views = radioGroup({
    legend: "Page for",
    name: "view",
    options: { reading: "Reading", bench: "Bench" },
    onchange: (chosen) => view.choose(chosen as ViewName),
  });
  views.show(view.name);
  const element = h(
    "header",
    { class: "page-head" },
    h("div", { class: "head-build" }, h("p", { class: "product" }, "airledger", offlineWord(), notice.status), name),
    installation,
    h("div", { class: "head-held" }, h("span", { class: "ring", "aria-hidden": "true" }), heldName, button("Hold now", () => holdNow(desk))),
    h("span", { class: "head-break" }),
    h("div", { class: "head-choices" }, views.element, units.element),
    h("div", { class: "head-actions" }, undo, redo, ...deeds),
  );

  let shownFor: string | undefined;
  let group: ReturnType<typeof radioGroup> | undefined;
  const refresh = (): void => {
    const { state } = session;
    setText(name, state.build.name);
    setAttribute(name, "title", state.build.note || undefined);
    document.title = `${state.build.name} · airledger`;
    const wanted = state.build.installations.map(({ key, label }) => `${key} ${label}`).join("\n");
    if (shownFor !== wanted) {
      shownFor = wanted;
      group = radioGroup({
        legend: "Installation",
        name: "installation",
        options: Object.fromEntries(state.build.installations.map(({ key, label }) => [key, label])),
        onchange: (key) => session.show(key),
      });
      setChildren(installation, [group.element]);
    }
    group!.show(state.installation);
    units.show(state.units.system);
    setText(heldName, `Held: ${state.held.name}`);
    setAttribute(heldName, "title", `▲ and ▼ stand against ${installationOf(state.build, state.installation).label} as it was held: ${state.held.name}`);
    stepButton(undo, "Undo", state.done.at(-1)?.name);
    stepButton(redo, "Redo", state.undone.at(-1)?.name);
  };
  return { element, refresh };
}

function button(words: string, onclick: () => void): HTMLButtonElement {
  return h("button", { type: "button", class: "plain", onclick }, words);
}

/** A button of the head; it names the key that does the same, if the page has one. */
export function headButton(words: string, key: string | undefined, onclick: () => void): HTMLButtonElement {
  const sign = key !== undefined && h("kbd", { "aria-hidden": "true" }, key);
  return h("button", { type: "button", class: "plain", onclick, "aria-keyshortcuts": key }, words, sign && " ", sign);
}

function stepButton(element: HTMLButtonElement, verb: string, name: string | undefined): void {
  element.disabled = name === undefined;
  setAttribute(element, "title", name === undefined ? undefined : `${verb}: ${name}`);
  setAttribute(element, "aria-label", name === undefined ? verb : `${verb} ${name}`);
}
