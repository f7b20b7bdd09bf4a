import type { Graph } from "../../lib/graph";

/**
 * Positions of nodes and of everything that their values and limits stand on.
 *
 * @param graph inputs and cells
 * @param keys of the nodes
 */
export function upstream(graph: Graph, keys: Iterable<string>): ReadonlySet<number> {
  const found = new Set<number>();
  for (const key of keys) {
    const position = graph.position.get(key);
    if (position !== undefined) found.add(position);
  }
  // A cell stands behind what it depends on, so that one way back through the list finds all.
  for (let index = graph.cells.length - 1; index >= 0; index--) {
    if (!found.has(graph.inputs.length + index)) continue;
    const { from, limits } = graph.cells[index]!;
    for (const { key } of Object.values(from)) found.add(graph.position.get(key)!);
    for (const { bound } of limits) if (typeof bound !== "number") found.add(graph.position.get(bound.key)!);
  }
  return found;
}
