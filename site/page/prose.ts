import { isRefusal, type Ref } from "../../lib/graph";
import { handle } from "../control";
import { h, runningNumber, setAttribute } from "../dom";
import { type Desk, nodeOf, type Part } from "./desk";
import { steadyWords } from "./value-words";

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
