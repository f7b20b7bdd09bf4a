import { type Observer, Runtime } from "@observablehq/runtime";
import { type Evaluation, type Graph, type InputValues, sameValue } from "../../lib/graph";
import { type Stretch, stretchesOf } from "./stretch";

/**
 * Cells that share one variable. With a variable a cell the runtime's own work was as long again as two thirds of the
 * cells'; stretches of 32 halve it, and longer ones gain nothing more (measured at 140 cells).
 */
const cellsPerVariable = 32;

/** A graph that lives in a runtime and tells, once a frame, what has changed. */
export interface Binding {
  /** Present values: those of the last frame that ran to its end. */
  readonly values: Pick<Evaluation, "get">;
  /** Gives inputs new values; cells follow in the next frame. @throws Error for a key that is no input */
  set(changes: InputValues): void;
  /** Resolves when nothing is left to compute. */
  settled(): Promise<void>;
  dispose(): void;
}

/**
 * Installs a graph into an Observable runtime: a variable an input, and one for each stretch of its cells.
 *
 * Variables bear generated names and the runtime gets a global lookup that throws, so that a missing cell can never be
 * taken for a property of the window. Refusals travel as values: no variable ever rejects. The runtime itself recomputes
 * everything downstream of a change; a cell whose operands are the same as before gives its last value back, which is the
 * equality cut-off that the compiled evaluator has too.
 *
 * @param graph inputs and cells
 * @param inputs a value for every input
 * @param changed called at most once a frame, when all values of the frame are in, with the keys whose value differs
 */
export function bind(graph: Graph, inputs: InputValues, changed: (keys: ReadonlySet<string>) => void): Binding {
  const runtime = new Runtime(null, (name) => {
    throw new Error(`binding: the graph refers to "${name}", which it does not hold`);
  });
  const module = runtime.module();
  const values: unknown[] = new Array(graph.nodes.length);
  const computing = new Set<string>();
  let moved = new Set<string>();
  let waiting: (() => void)[] = [];

  const settle = (): void => {
    if (computing.size > 0) return;
    const keys = moved;
    moved = new Set();
    if (keys.size > 0) changed(keys);
    const resolved = waiting;
    waiting = [];
    for (const resolve of resolved) resolve();
  };

  const take = (position: number, value: unknown): void => {
    if (sameValue(values[position], value)) return;
    values[position] = value;
    moved.add(graph.nodes[position]!.key);
  };
  const observer = <T>(variable: string, fulfilled: (value: T) => void): Observer => ({
    pending: () => {
      computing.add(variable);
    },
    fulfilled: (value) => {
      fulfilled(value as T);
      computing.delete(variable);
      settle();
    },
    rejected: (error) => {
      computing.delete(variable);
      settle();
      throw error;
    },
  });

  const put = (key: string, value: unknown): void => {
    const position = graph.position.get(key);
    if (position === undefined || position >= graph.inputs.length) throw new Error(`binding: there is no input "${key}"`);
    module.redefine(inputName(position), [], () => value);
  };

  graph.inputs.forEach(({ key }, position) => {
    if (!(key in inputs)) throw new Error(`binding: no value for the input "${key}"`);
    const [name, value] = [inputName(position), inputs[key]];
    module.variable(observer(name, (now) => take(position, now))).define(name, [], () => value);
  });
  stretchesOf(graph, cellsPerVariable).forEach((stretch, index) => {
    const name = stretchName(index);
    const shown = observer<readonly unknown[]>(name, (now) => {
      for (const [i, position] of stretch.positions.entries()) take(position, now[i]);
    });
    module.variable(shown).define(name, operandNames(stretch), (...operands: readonly unknown[]) => stretch.compute(operands));
  });

  const get: Evaluation["get"] = (reference) => {
    const position = graph.position.get(reference.key);
    if (position === undefined) throw new Error(`binding: the graph holds no "${reference.key}"`);
    return values[position] as never;
  };

  return {
    values: { get },
    set: (changes) => {
      for (const [key, value] of Object.entries(changes)) put(key, value);
    },
    settled: async () => {
      // Resolves in the frame that holds every change made so far; its other variables may still be at work.
      await module.value(inputName(0));
      if (computing.size > 0) await new Promise<void>((resolve) => waiting.push(resolve));
    },
    dispose: () => runtime.dispose(),
  };
}

function operandNames({ inputs, earlier }: Stretch): string[] {
  return [...inputs.map(inputName), ...earlier.map(stretchName)];
}

function inputName(position: number): string {
  return `input${position}`;
}

function stretchName(index: number): string {
  return `stretch${index}`;
}
