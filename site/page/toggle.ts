import type { Node } from "../../lib/graph";
import { h, setAttribute } from "../dom";
import type { Traces } from "./traces";

/** The small button in the margin that opens the trace of a line beneath it. */
export function traceToggle(traces: Traces, node: Node, number: string): { readonly button: HTMLElement; readonly body: HTMLElement } {
  const body = h("div", { class: "how", id: `how-${number}`, hidden: true });
  const show = (open: boolean): void => {
    body.hidden = !open;
    setAttribute(button, "aria-expanded", String(open));
  };
  const button: HTMLElement = h("button", {
    type: "button",
    class: "how-toggle",
    "aria-expanded": "false",
    "aria-controls": body.id,
    "aria-label": `Trace of ${node.label}`,
    "aria-keyshortcuts": "t",
    onclick: () => traces.toggle(node, { put: (element) => { body.append(element); show(true); }, closed: () => show(false) }, button),
  });
  return { button, body };
}
