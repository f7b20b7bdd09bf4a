import type { Node } from "../../lib/graph";
import { h, setAttribute } from "../dom";
import type { Desk } from "./desk";
import { type How, howOf } from "./how";

/** The small button in the margin that opens what stands behind a line. */
export function howToggle(desk: Desk, node: Node, number: string): { readonly button: HTMLElement; readonly body: HTMLElement; refresh(): void } {
  const body = h("div", { class: "how", id: `how-${number}`, hidden: true });
  let how: How | undefined;
  const button = h("button", {
    type: "button",
    class: "how-toggle",
    "aria-expanded": "false",
    "aria-controls": body.id,
    "aria-label": `How ${node.label} comes about`,
    onclick: () => {
      const open = body.hidden;
      if (open && !how) {
        how = howOf(desk, node);
        body.append(how.element);
      }
      body.hidden = !open;
      setAttribute(button, "aria-expanded", String(open));
      if (open) how!.refresh();
    },
  });
  return {
    button,
    body,
    refresh: () => {
      if (!body.hidden) how!.refresh();
    },
  };
}
