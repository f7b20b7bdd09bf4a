import type { Cell } from "./cell";
import { runCell } from "./cell";
import type { Graph } from "./graph";
import type { Ref } from "./reference";
import { Refusal } from "./refusal";

/** Values of inputs by key, in SI. */
export type InputValues = Readonly<Record<string, unknown>>;

/** Every value of a graph at one setting of its inputs. */
export interface Evaluation {
  /** The value of a node, or its refusal. @throws Error if the graph does not hold the node */
  get<T>(ref: Ref<T>): T | Refusal;
  /** The value of a node. @throws RangeError with the refusal's words where there is none */
  require<T>(ref: Ref<T>): T;
  readonly values: readonly unknown[];
}

/** A graph made ready to run. */
export interface Program {
  readonly graph: Graph;
  /** Evaluates everything. @param inputs a value for every input */
  run(inputs: InputValues): Evaluation;
  /**
   * Evaluates what follows from some changed inputs, and leaves the rest as it was.
   *
   * @param previous an evaluation by this program
   * @param changes new values of some inputs
   * @returns the new evaluation and the positions of the nodes whose value differs
   */
  rerun(previous: Evaluation, changes: InputValues): { readonly evaluation: Evaluation; readonly changed: readonly number[] };
}

interface Step {
  readonly cell: Cell;
  readonly names: readonly string[];
  readonly positions: readonly number[];
}

/**
 * Turns a graph into one flat list of steps that run in order, without a notebook.
 *
 * @param graph the inputs and cells
 */
export function compile(graph: Graph): Program {
  const first = graph.inputs.length;
  const steps: readonly Step[] = graph.cells.map((cell) => ({
    cell,
    names: Object.keys(cell.from),
    positions: Object.values(cell.from).map((reference) => graph.position.get(reference.key)!),
  }));

  const work = (step: Step, values: readonly unknown[]): unknown => {
    const operands = step.positions.map((position) => values[position]);
    return runCell(step.cell, step.names, operands);
  };

  const run = (inputs: InputValues): Evaluation => {
    const values: unknown[] = graph.inputs.map((input) => {
      if (!(input.key in inputs)) throw new Error(`graph: no value for the input "${input.key}"`);
      return inputs[input.key];
    });
    for (const step of steps) values.push(work(step, values));
    return evaluation(graph, values);
  };

  const rerun = (previous: Evaluation, changes: InputValues) => {
    const values = previous.values.slice();
    const moved = new Uint8Array(values.length);
    const changed: number[] = [];
    const put = (position: number, value: unknown): void => {
      if (sameValue(values[position], value)) return;
      values[position] = value;
      moved[position] = 1;
      changed.push(position);
    };
    for (const [key, value] of Object.entries(changes)) {
      const position = graph.position.get(key);
      if (position === undefined || position >= first) throw new Error(`graph: there is no input "${key}"`);
      put(position, value);
    }
    for (let i = 0; i < steps.length; i++) {
      const step = steps[i]!;
      if (step.positions.some((position) => moved[position])) put(first + i, work(step, values));
    }
    return { evaluation: evaluation(graph, values), changed };
  };

  return { graph, run, rerun };
}

/** Whether two values of a node are the same: the same number, the same object, or the same refusal. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a instanceof Refusal && b instanceof Refusal) return a.root === b.root && a.message === b.message;
  return Object.is(a, b);
}

function evaluation(graph: Graph, values: readonly unknown[]): Evaluation {
  const get = <T>(ref: Ref<T>): T | Refusal => {
    const position = graph.position.get(ref.key);
    if (position === undefined) throw new Error(`graph: it holds no "${ref.key}"`);
    return values[position] as T | Refusal;
  };
  const require = <T>(ref: Ref<T>): T => {
    const value = get(ref);
    if (value instanceof Refusal) throw new RangeError(value.message);
    return value;
  };
  return { get, require, values };
}
