import type { Sheet } from "../../worksheets/sheet";
import { h } from "../dom";
import { applies, type Desk, sheetLetter } from "../page/desk";
import { type Preference, preference } from "../state";

/** What of the notebook goes on paper behind the estimate, as it was chosen last on this device. */
export interface Printed {
  /** A figure stands beside the few words on each sheet. */
  readonly figures: boolean;
  /** Whether a sheet is printed in full. */
  readonly sheet: (sheet: Sheet) => boolean;
  readonly margins: boolean;
  /** Formula, values and source of every result of the sheets printed in full. */
  readonly workings: boolean;
}

type Switch = Preference<"on" | "off">;

/**
 * A dialog that asks what to print, and remembers it.
 *
 * @param desk what is on the page
 * @param print prints what is chosen
 */
export function printChoice(desk: Desk, print: () => void): { readonly element: HTMLDialogElement; readonly printed: Printed; open(): void } {
  const figures: Switch = preference("print figures", ["on", "off"]);
  const margins: Switch = preference("print margins", ["off", "on"]);
  const workings: Switch = preference("print workings", ["off", "on"]);
  const sheets = desk.sheets.map((sheet, i) => {
    const chosen: Switch = preference(`print sheet ${sheet.key}`, ["off", "on"]);
    const aside = h("span", { class: "print-aside" });
    return { sheet, chosen, aside, row: tick(chosen, h("span", { class: "letter" }, sheetLetter(i)), sheet.title, aside) };
  });
  const ticks = [
    tick(figures, "A figure of each sheet"),
    tick(margins, "Every margin, not only the tightest"),
    tick(workings, "Workings: formula, values and source behind every result of the sheets in full"),
  ] as const;
  const showAll = (): void => {
    for (const { show } of [...ticks, ...sheets.map(({ row }) => row)]) show();
    for (const { sheet, aside } of sheets) aside.textContent = applies(sheet, desk.values) ? "" : "does not count here";
  };
  const chooseSheets = (value: "on" | "off"): void => {
    for (const { sheet, chosen } of sheets) chosen.set(value === "on" && applies(sheet, desk.values) ? "on" : "off");
    showAll();
  };
  const key = (words: string, onclick: () => void): HTMLElement => h("button", { type: "button", class: "quiet", onclick }, words);
  const element: HTMLDialogElement = h(
    "dialog",
    { class: "print-choice", "aria-labelledby": "print-choice-title" },
    h("div", { class: "find-head" }, h("h2", { id: "print-choice-title" }, "Print"), key("Close", () => element.close())),
    group("Estimate", h("p", {}, "The brief, what it comes to, the tightest margins, cautions, and a few words on every sheet that counts."), ticks[0].element),
    group("Sheets in full", ...sheets.map(({ row }) => row.element), h("p", { class: "print-keys" }, key("All that count", () => chooseSheets("on")), key("None", () => chooseSheets("off")))),
    group("At the end", ticks[1].element, ticks[2].element),
    h(
      "p",
      { class: "print-foot" },
      h(
        "button",
        {
          type: "button",
          class: "print-now",
          onclick: () => {
            element.close();
            print();
          },
        },
        "Print",
      ),
      h("span", {}, "The choice is kept on this device; Ctrl P prints by it."),
    ),
  );
  element.addEventListener("click", (event) => event.target === element && element.close());
  return {
    element,
    printed: {
      get figures() {
        return figures.value === "on";
      },
      sheet: (sheet) => sheets.find((each) => each.sheet === sheet)?.chosen.value === "on",
      get margins() {
        return margins.value === "on";
      },
      get workings() {
        return workings.value === "on";
      },
    },
    open: () => {
      if (element.open) return;
      showAll();
      element.showModal();
      element.querySelector<HTMLElement>(".print-now")?.focus({ preventScroll: true });
    },
  };
}

function group(title: string, ...content: readonly HTMLElement[]): HTMLElement {
  return h("fieldset", {}, h("legend", {}, title), ...content);
}

function tick(chosen: Switch, ...words: readonly (Node | string)[]): { readonly element: HTMLElement; show(): void } {
  const box = h("input", { type: "checkbox", onchange: () => chosen.set(box.checked ? "on" : "off") });
  return {
    element: h("label", { class: "tick" }, box, h("span", {}, ...words.flatMap((each, i) => (i === 0 ? [each] : [" ", each])))),
    show: () => {
      box.checked = chosen.value === "on";
    },
  };
}
