import { type Cell, type Graph, runCell, sameValue } from "../../lib/graph";

/** A run of neighbouring cells that is computed as one. */
export interface Stretch {
  /** Positions in the graph of its cells, in working order. */
  readonly positions: readonly number[];
  /** Positions of the inputs its cells read. */
  readonly inputs: readonly number[];
  /** Earlier stretches its cells read, by their place in the list. */
  readonly earlier: readonly number[];
  /**
   * The values of its cells; the very array of the last time where none differs.
   *
   * @param operands values of its inputs, then those of the earlier stretches
   */
  compute(operands: readonly unknown[]): readonly unknown[];
}

/** Where an operand's value is found: among the operands given, within one of them, or among the stretch's own values. */
type Read = (operands: readonly unknown[], own: readonly unknown[]) => unknown;

/**
 * Cuts a graph's cells into stretches. Every cell follows what it depends on, so a stretch reads from itself and from
 * earlier ones alone. A cell runs again only when one of its operands differs from the last time.
 *
 * @param graph inputs and cells
 * @param length most cells in a stretch
 */
export function stretchesOf(graph: Graph, length: number): readonly Stretch[] {
  const first = graph.inputs.length;
  const count = Math.ceil(graph.cells.length / length);
  return Array.from({ length: count }, (_, index) => stretchAt(graph, index, length, first));
}

function stretchAt(graph: Graph, index: number, length: number, first: number): Stretch {
  const begin = index * length;
  const cells = graph.cells.slice(begin, begin + length);
  const stretchOf = (position: number): number => Math.floor((position - first) / length);
  const read = [...new Set(cells.flatMap((cell) => operandPositions(graph, cell)))];
  const inputs = read.filter((position) => position < first);
  const earlier = [...new Set(read.filter((position) => position >= first).map(stretchOf))].filter((other) => other !== index);

  const readOf = (position: number): Read => {
    if (position < first) {
      const at = inputs.indexOf(position);
      return (operands) => operands[at];
    }
    const offset = (position - first) % length;
    if (stretchOf(position) === index) return (_, own) => own[offset];
    const at = inputs.length + earlier.indexOf(stretchOf(position));
    return (operands) => (operands[at] as readonly unknown[])[offset];
  };
  const steps = cells.map((cell) => remembering(cell, operandPositions(graph, cell).map(readOf)));
  let last: readonly unknown[] = [];
  return {
    positions: cells.map((_, i) => first + begin + i),
    inputs,
    earlier,
    compute: (operands) => {
      const own: unknown[] = [];
      for (const step of steps) own.push(step(operands, own));
      if (last.length === 0 || own.some((value, i) => !Object.is(value, last[i]))) last = own;
      return last;
    },
  };
}

function operandPositions(graph: Graph, cell: Cell): readonly number[] {
  return Object.values(cell.from).map(({ key }) => graph.position.get(key)!);
}

/** Runs a cell, unless its operands are those of the last time; what is the same as before stays the same object. */
function remembering(cell: Cell, reads: readonly Read[]): Read {
  const names = Object.keys(cell.from);
  let last: readonly unknown[] | undefined;
  let result: unknown;
  return (operands, own) => {
    const now = reads.map((read) => read(operands, own));
    if (last === undefined || now.some((operand, i) => !sameValue(operand, last![i]))) {
      const next = runCell(cell, names, now);
      if (last === undefined || !sameValue(result, next)) result = next;
      last = now;
    }
    return result;
  };
}
