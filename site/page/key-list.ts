import { h } from "../dom";
import type { Preference } from "../state";

const groups: readonly { readonly title: string; readonly keys: readonly (readonly [keys: readonly string[], does: string])[] }[] = [
  {
    title: "Anywhere",
    keys: [
      [["Alt 1", "… 9"], "to a sheet, in their order"],
      [["Alt 0"], "to the ledger"],
      [["/"], "find any quantity"],
      [["Ctrl Z"], "undo"],
      [["Ctrl Shift Z", "Ctrl Y"], "redo"],
      [["h"], "hold: make the present values the reference"],
      [["u"], "units: SI or US"],
      [["Ctrl P"], "print, as was chosen last"],
      [["Esc"], "close what is on top"],
      [["?"], "these keys"],
    ],
  },
  {
    title: "On a line",
    keys: [
      [["↑", "↓"], "line before and after (on its small arrow, or from a sheet's title)"],
      [["Enter"], "type a value"],
      [["t"], "trace: where the number comes from"],
      [["[", "]"], "in a trace: to what feeds it, to what it feeds"],
      [["Backspace"], "in a trace: back; on a slider: as it was opened"],
    ],
  },
  {
    title: "On a slider or an underlined number",
    keys: [
      [["←", "→"], "one step"],
      [["Shift ←", "→"], "ten steps"],
      [["Alt ←", "→"], "a tenth of a step"],
      [["Page Up", "Page Down"], "ten steps"],
      [["Home", "End"], "to its ends"],
      [["Enter"], "type a value"],
    ],
  },
];

/** The keys of the page, with a switch for those that are a single letter. */
export function keyList(single: Preference<"on" | "off">): { readonly element: HTMLDialogElement; open(): void } {
  const box = h("input", { type: "checkbox", id: "single-keys", onchange: () => single.set(box.checked ? "on" : "off") });
  const element = h(
    "dialog",
    { class: "key-list", "aria-labelledby": "key-list-title" },
    h(
      "div",
      { class: "find-head" },
      h("h2", { id: "key-list-title" }, "Keys"),
      h("button", { type: "button", class: "quiet", onclick: () => element.close() }, "Close ", h("kbd", {}, "Esc")),
    ),
    ...groups.map(({ title, keys }) =>
      h(
        "table",
        {},
        h("caption", {}, title),
        h("tbody", {}, ...keys.map(([names, does]) => h("tr", {}, h("th", { scope: "row" }, ...keyNames(names)), h("td", {}, does)))),
      ),
    ),
    h("p", { class: "single-keys" }, box, h("label", { for: "single-keys" }, "Keys that are a single sign (t, h, u, /, ?, [, ]) are on")),
  );
  element.addEventListener("click", (event) => event.target === element && element.close());
  return {
    element,
    open: () => {
      if (element.open) return;
      box.checked = single.value === "on";
      element.showModal();
    },
  };
}

function keyNames(names: readonly string[]): readonly (Node | string)[] {
  return names.flatMap((name, i) => (i === 0 ? [h("kbd", {}, name)] : [" ", h("kbd", {}, name)]));
}
