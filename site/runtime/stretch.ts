import { type Cell, type Graph, runCell } from "../../lib/graph";

/** A run of neighbouring cells that is computed as one. */
export interface Stretch {
  /** Its cells at work, in working order. */
  readonly steps: readonly Step[];
  /** Positions in the graph of the inputs its cells read. */
  readonly inputs: readonly number[];
  /** Earlier stretches its cells read, by their place in the list. */
  readonly earlier: readonly number[];
}

/** A cell at work. */
export interface Step {
  /** Its position in the graph. */
  readonly position: number;
  /**
   * The cell's value. It runs only when one of its operands differs from the last time.
   *
   * @param values of the whole graph, by position
   */
  run(values: readonly unknown[]): unknown;
}

/**
 * Cuts a graph's cells into stretches. Every cell follows what it depends on, so a stretch reads from itself and from
 * earlier ones alone.
 *
 * @param graph inputs and cells
 * @param length most cells in a stretch
 */
export function stretchesOf(graph: Graph, length: number): readonly Stretch[] {
  const first = graph.inputs.length;
  const stretchOf = (position: number): number => Math.floor((position - first) / length);
  return Array.from({ length: Math.ceil(graph.cells.length / length) }, (_, index) => {
    const begin = index * length;
    const cells = graph.cells.slice(begin, begin + length);
    const read = [...new Set(cells.flatMap((cell) => operandPositions(graph, cell)))];
    return {
      steps: cells.map((cell, i) => stepOf(graph, cell, first + begin + i)),
      inputs: read.filter((position) => position < first),
      earlier: [...new Set(read.filter((position) => position >= first).map(stretchOf))].filter((other) => other !== index),
    };
  });
}

function operandPositions(graph: Graph, cell: Cell): readonly number[] {
  return Object.values(cell.from).map(({ key }) => graph.position.get(key)!);
}

function stepOf(graph: Graph, cell: Cell, position: number): Step {
  const names = Object.keys(cell.from);
  const operands = operandPositions(graph, cell);
  let last: readonly unknown[] | undefined;
  return {
    position,
    run: (values) => {
      if (last !== undefined && operands.every((operand, i) => Object.is(values[operand], last![i]))) return values[position];
      last = operands.map((operand) => values[operand]);
      return runCell(cell, names, last);
    },
  };
}
