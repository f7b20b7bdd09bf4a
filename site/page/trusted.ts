import type { Graph } from "../../lib/graph";
import type { Trusted } from "../control";

/** By input: where the spans of all models that it feeds directly overlap. */
export function trustedSpans(graph: Graph): ReadonlyMap<string, Trusted> {
  const spans = new Map<string, Trusted>();
  for (const { from, validity } of graph.cells) {
    for (const { of, span, note } of validity ?? []) {
      const key = from[of]?.key;
      if (key === undefined || graph.nodes[graph.position.get(key)!]?.type !== "quantity") continue;
      const before = spans.get(key);
      const [low, high] = before?.span ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
      spans.set(key, { span: [Math.max(low, span[0]), Math.min(high, span[1])], notes: [...(before?.notes ?? []), note] });
    }
  }
  return spans;
}
