import { isRefusal, type Node, type Ref } from "../../lib/graph";
import { handle } from "../control";
import { h, runningNumber, setAttribute } from "../dom";
import { type Measured, written } from "../state";
import { type Desk, nodeOf, type Part } from "./desk";
import { valueWords } from "./value-words";

/** A sentence in which inputs are handles and cells are live values. */
export function prosePart(desk: Desk, parts: readonly (string | Ref)[]): Part {
  const refreshers: (() => void)[] = [];
  const content = parts.map((part) => {
    if (typeof part === "string") return part;
    const node = nodeOf(desk.graph, part.key);
    if (node.type === "quantity") {
      const grip = handle(node, desk);
      refreshers.push(grip.refresh);
      return grip.element;
    }
    const place = desk.places.get(node.key);
    const element = place ? h("a", { class: "live", href: `#${place.id}` }) : h("span", { class: "live" });
    setAttribute(element, "title", `${node.label} (t: trace)`);
    setAttribute(element, "data-key", node.key);
    const text = runningNumber(element);
    refreshers.push(() => {
      const refused = isRefusal(desk.values.get(node));
      text.show(refused ? "(no answer)" : steadyWords(desk, node));
    });
    return element;
  });
  return {
    element: h("p", { class: "prose" }, ...content),
    watches: parts.flatMap((part) => (typeof part === "string" ? [] : [part.key])),
    refresh: () => {
      for (const each of refreshers) each();
    },
  };
}

/** A live value in words: with all its digits, so that it does not jump when the last is a zero. */
function steadyWords(desk: Desk, node: Node): string {
  const value = desk.values.get(node);
  if (node.type !== "cell" || node.kind === undefined || typeof value !== "number") return valueWords(desk, node);
  return written(desk.session.state.units, node as Measured, value, { steady: true }).text;
}
