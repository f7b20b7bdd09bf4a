import { type Cell, runCell } from "../../lib/graph";
import { type Measured, timed } from "./measure";
import type { Subject } from "./subject";

/**
 * The cells that take longest, each by itself on the values it has in a whole evaluation.
 *
 * @param subject the graph
 * @param runs of each cell
 * @param count how many cells are told
 */
export function costliestLines({ graph, program, inputs }: Subject, runs: number, count = 5): readonly Measured[] {
  const at = program.run(inputs);
  const measured = (cell: Cell): Measured => {
    const names = Object.keys(cell.from);
    const values = Object.values(cell.from).map((reference) => at.get(reference));
    return { what: `  of which ${cell.key}`, timing: timed(() => runCell(cell, names, values), runs) };
  };
  return graph.cells
    .map(measured)
    .sort((a, b) => b.timing.p50 - a.timing.p50)
    .slice(0, count);
}
