import type { Evaluation, Graph, InputValues, Program } from "../../lib/graph";

/** The graph that is measured. */
export interface Subject {
  readonly graph: Graph;
  readonly program: Program;
  /** The setting from which everything starts. */
  readonly inputs: InputValues;
  /** Key of the input that the speed sweep moves. */
  readonly speedKey: string;
}

/** A row of numbers between 0 and 1 that is the same in every run. */
export function steadyRandom(seed: number): () => number {
  // A linear congruential generator with the constants of Knuth's MMIX (from memory), its upper 32 bits used.
  let state = BigInt(seed);
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 32n) / 2 ** 32;
  };
}

/** The setting with every measured input moved by up to a share of its value, within its span. */
export function scattered({ graph, inputs }: Subject, random: () => number, share = 0.01): InputValues {
  const moved: Record<string, unknown> = { ...inputs };
  for (const input of graph.inputs) {
    if (input.type !== "quantity" || input.kind === "count") continue;
    const value = inputs[input.key] as number;
    const [lowest, highest] = input.span;
    moved[input.key] = Math.min(highest, Math.max(lowest, value * (1 + share * (2 * random() - 1))));
  }
  return moved;
}

/** The values of all cells of one number in a row, NaN for a refusal. */
export function scalarsInto({ graph }: Subject, at: Evaluation, into: Float64Array, offset: number): void {
  let place = offset;
  for (const cell of graph.cells) {
    if (cell.kind === undefined) continue;
    const value = at.get(cell);
    into[place++] = typeof value === "number" ? value : Number.NaN;
  }
}

/** How many cells hold one number. */
export function scalarCount({ graph }: Subject): number {
  return graph.cells.filter(({ kind }) => kind !== undefined).length;
}
