import { type Observer, Runtime } from "@observablehq/runtime";
import { type Evaluation, type Graph, type InputValues, sameValue } from "../../lib/graph";
import { type Patience, whenIdle } from "./idle";
import { onceFor } from "./once";
import { type Step, stretchesOf } from "./stretch";
import { upstream } from "./upstream";

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
 * Told the keys whose value differs.
 *
 * @param keys of inputs and cells
 * @param whole whether all cells have followed; else those that no one looks at are still to come
 */
export type Changed = (keys: ReadonlySet<string>, whole: boolean) => void;

/** For the cells that no one looks at. */
const patience: Patience = { timeout: 100, blind: 0 };

/**
 * Installs a graph into an Observable runtime: a variable an input, and one for each stretch of its cells.
 *
 * Variables bear generated names and the runtime gets a global lookup that throws, so that a missing cell can never be
 * taken for a property of the window. Refusals travel as values: no variable ever rejects. The runtime itself recomputes
 * everything downstream of a change; a cell whose operands are the same as before is not run again, which is the equality
 * cut-off that the compiled evaluator has too.
 *
 * While a frame is dear, only the cells that are looked at, and what they stand on, run in it; the others follow in the
 * time that is left before the next. Both halves are consistent: what is looked at with the inputs of the frame, the rest
 * with those of the last time that all of it ran.
 *
 * @param graph inputs and cells
 * @param inputs a value for every input
 * @param changed called at most once in a frame, when its values are in, and once more when the others have followed
 * @param looked keys of what is looked at; undefined where all is to follow in the frame
 */
export function bind(
  graph: Graph,
  inputs: InputValues,
  changed: Changed,
  looked: () => ReadonlySet<string> | undefined = () => undefined,
): Binding {
  const runtime = new Runtime(null, (name) => {
    throw new Error(`binding: the graph refers to "${name}", which it does not hold`);
  });
  const module = runtime.module();
  const stretches = stretchesOf(graph, cellsPerVariable);
  const values: unknown[] = new Array(graph.nodes.length);
  const computing = new Set<string>();
  const chosenBy = onceFor((keys: ReadonlySet<string>) => upstream(graph, keys));
  let chosen: ReadonlySet<number> | undefined;
  let moved = new Set<string>();
  let waiting: (() => void)[] = [];
  let [behind, awaited] = [false, false];

  const settle = (): void => {
    if (computing.size > 0) return;
    const keys = moved;
    moved = new Set();
    if (keys.size > 0) changed(keys, !behind);
    const resolved = waiting;
    waiting = [];
    for (const resolve of resolved) resolve();
    if (!behind || awaited) return;
    awaited = true;
    whenIdle(() => {
      awaited = false;
      if (behind) follow();
    }, patience);
  };
  /** Runs the cells that were left out. */
  const follow = (): void => {
    if (computing.size > 0) return;
    behind = false;
    for (const { steps } of stretches) work(steps);
    const keys = moved;
    moved = new Set();
    changed(keys, true);
  };

  const take = (position: number, value: unknown): void => {
    if (sameValue(values[position], value)) return;
    values[position] = value;
    moved.add(graph.nodes[position]!.key);
  };
  const work = (steps: readonly Step[], only?: ReadonlySet<number>): void => {
    for (const { position, run } of steps) {
      if (only && !only.has(position)) behind = true;
      else take(position, run(values));
    }
  };
  const observer = (variable: string): Observer => ({
    pending: () => {
      computing.add(variable);
    },
    fulfilled: () => {
      computing.delete(variable);
      settle();
    },
    rejected: (error) => {
      computing.delete(variable);
      settle();
      throw error;
    },
  });

  const taken = (position: number, value: unknown) => (): unknown => {
    take(position, value);
    return value;
  };
  const put = (key: string, value: unknown): void => {
    const position = graph.position.get(key);
    if (position === undefined || position >= graph.inputs.length) throw new Error(`binding: there is no input "${key}"`);
    module.redefine(inputName(position), [], taken(position, value));
  };

  graph.inputs.forEach(({ key }, position) => {
    if (!(key in inputs)) throw new Error(`binding: no value for the input "${key}"`);
    const name = inputName(position);
    module.variable(observer(name)).define(name, [], taken(position, inputs[key]));
  });
  stretches.forEach(({ steps, inputs: read, earlier }, index) => {
    const name = stretchName(index);
    const operands = [...read.map(inputName), ...earlier.map(stretchName)];
    module.variable(observer(name)).define(name, operands, () => work(steps, chosen));
  });

  const get: Evaluation["get"] = (reference) => {
    const position = graph.position.get(reference.key);
    if (position === undefined) throw new Error(`binding: the graph holds no "${reference.key}"`);
    return values[position] as never;
  };

  return {
    values: { get },
    set: (changes) => {
      const keys = looked();
      chosen = keys && chosenBy(keys);
      for (const [key, value] of Object.entries(changes)) put(key, value);
    },
    settled: async () => {
      // Resolves in the frame that holds every change made so far; its other variables may still be at work.
      await module.value(inputName(0));
      if (computing.size > 0) await new Promise<void>((resolve) => waiting.push(resolve));
      if (behind) follow();
    },
    dispose: () => runtime.dispose(),
  };
}

function inputName(position: number): string {
  return `input${position}`;
}

function stretchName(index: number): string {
  return `stretch${index}`;
}
