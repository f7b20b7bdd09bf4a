import { type Graph, type InputValues, isRefusal, type Program, type QuantityInput } from "../../lib/graph";
import type { Desk } from "./desk";
import type { Moves } from "./moves";
import { refusingRoots } from "./refused";

/** A setting of an input at which a line has an answer. */
export interface Setting {
  readonly key: string;
  readonly value: unknown;
}

/** Where lines lost their answer while one input was moved. */
export interface Workable {
  /**
   * The setting nearest to the present one at which it has an answer; while the hand moves, the last one that had.
   *
   * @param root key of the cell that has no answer
   */
  of(root: string): Setting | undefined;
  /** Looks for answers lost and found; once a frame, after the values. */
  update(): void;
}

/** Rest before the nearest setting is looked for, in milliseconds. */
const rest = 200;

/**
 * @param desk what is on the page
 * @param moves what the hand does
 * @param program tries settings
 * @param found told the cells for which a setting, or a nearer one, was found
 */
export function createWorkable(desk: Desk, moves: Moves, program: Program, found: (roots: readonly string[]) => void): Workable {
  const { session, graph } = desk;
  let lost = new Map<string, Setting>();
  let before = session.inputs;
  let refusing = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;

  const seek = (): void => {
    const { inputs } = session;
    const nearer = [...lost].flatMap(([root, setting]) => {
      const value = nearestWorkable({ graph, program, inputs, root, ...setting });
      return value === undefined || value === setting.value ? [] : [[root, { ...setting, value }] as const];
    });
    for (const [root, setting] of nearer) lost.set(root, setting);
    if (nearer.length > 0) found(nearer.map(([root]) => root));
  };

  return {
    of: (root) => lost.get(root),
    update: () => {
      const now = new Set(refusingRoots(desk).map(({ key }) => key));
      const [moved, ...others] = moves.keys;
      const kept = new Map([...lost].filter(([root]) => now.has(root)));
      if (moved !== undefined && others.length === 0) {
        for (const root of now) if (!refusing.has(root)) kept.set(root, { key: moved, value: before[moved] });
      }
      const roots = [...kept.keys()].filter((root) => !lost.has(root));
      lost = kept;
      refusing = now;
      before = session.inputs;
      if (roots.length > 0) found(roots);
      clearTimeout(timer);
      if (lost.size > 0) timer = setTimeout(seek, rest);
    },
  };
}

interface Search {
  readonly graph: Graph;
  readonly program: Program;
  /** At which the root has no answer. */
  readonly inputs: InputValues;
  readonly root: string;
  /** The input that is moved. */
  readonly key: string;
  /** A setting of it at which the root has an answer. */
  readonly value: unknown;
}

/**
 * The setting of an input, in whole steps, next to the edge where a cell loses its answer on the way from a setting that
 * works to the present one. Nothing for what is no quantity.
 */
export function nearestWorkable({ graph, program, inputs, root, key, value }: Search): number | undefined {
  const input = graph.inputs.find((each) => each.key === key);
  if (input?.type !== "quantity") return undefined;
  const cell = graph.nodes[graph.position.get(root)!]!;
  const start = program.run(inputs);
  const works = (tried: number): boolean => !isRefusal(program.rerun(start, { [key]: tried }).evaluation.get(cell));
  let [good, bad] = [value as number, inputs[key] as number];
  if (!works(good)) return undefined;
  for (;;) {
    const middle = onStep(input, (good + bad) / 2);
    if (Math.min(Math.abs(middle - good), Math.abs(middle - bad)) < input.step / 4) return good;
    if (works(middle)) good = middle;
    else bad = middle;
  }
}

function onStep({ span, step }: QuantityInput, value: number): number {
  const [lowest] = span as readonly [number, number];
  return Number((lowest + Math.round((value - lowest) / step) * step).toPrecision(12));
}
