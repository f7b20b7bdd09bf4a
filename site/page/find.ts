import type { Node } from "../../lib/graph";
import { h, setAttribute, setChildren } from "../dom";
import type { Desk } from "./desk";
import { foundLines } from "./found";
import { goToLine } from "./go";
import { valueWords } from "./value-words";

/** A field that finds any line of any sheet by its name; driven by keys. */
export function findDialog(desk: Desk): { readonly element: HTMLDialogElement; open(): void } {
  const field = h("input", {
    type: "text",
    class: "find-field",
    role: "combobox",
    "aria-label": "Find a quantity",
    "aria-expanded": "false",
    "aria-controls": "find-list",
    "aria-autocomplete": "list",
    placeholder: "power, speed, T_5 …",
    autocomplete: "off",
    spellcheck: "false",
  });
  const list = h("ul", { class: "find-list", id: "find-list", role: "listbox", "aria-label": "Lines found" });
  const remark = h("p", { class: "find-remark", role: "status" });
  const element = h(
    "dialog",
    { class: "find", "aria-label": "Find a quantity" },
    h("div", { class: "find-head" }, field, h("button", { type: "button", class: "quiet", onclick: () => element.close() }, "Close ", h("kbd", {}, "Esc"))),
    list,
    remark,
  );
  let found: readonly Node[] = [];
  let at = 0;

  const mark = (): void => {
    for (const [i, option] of [...list.children].entries()) setAttribute(option, "aria-selected", i === at ? "true" : "false");
    const option = list.children[at];
    setAttribute(field, "aria-activedescendant", option?.id);
    option?.scrollIntoView({ block: "nearest" });
  };
  const show = (): void => {
    found = foundLines(desk, field.value);
    at = 0;
    setChildren(list, found.map((node, i) => option(node, i)));
    setAttribute(field, "aria-expanded", String(found.length > 0));
    remark.textContent =
      field.value.trim() === ""
        ? "Type a part of a name or a symbol; ↑ ↓ to choose, Enter to go there."
        : found.length === 0
          ? `No line is called “${field.value.trim()}”.`
          : "";
    mark();
  };
  const option = (node: Node, index: number): HTMLElement => {
    const place = desk.places.get(node.key)!;
    return h(
      "li",
      { role: "option", id: `found-${index}`, class: "found", onclick: () => go(node) },
      h("span", { class: "letter" }, place.letter),
      h("span", { class: "name" }, node.label),
      h("span", { class: node.type === "cell" ? "found-value" : "found-value to-set" }, valueWords(desk, node)),
    );
  };
  const go = (node: Node): void => {
    element.close();
    goToLine(desk, node.key);
  };

  field.addEventListener("input", show);
  field.addEventListener("keydown", (event) => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (by !== undefined && found.length > 0) {
      event.preventDefault();
      at = (at + by + found.length) % found.length;
      mark();
    }
    const node = found[at];
    if (event.key === "Enter" && node) {
      event.preventDefault();
      go(node);
    }
  });
  element.addEventListener("click", (event) => event.target === element && element.close());
  return {
    element,
    open: () => {
      if (element.open) return;
      field.value = "";
      show();
      element.showModal();
      field.focus();
    },
  };
}
