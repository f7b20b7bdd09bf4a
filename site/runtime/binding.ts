import { type Observer, Runtime } from "@observablehq/runtime";
import { type Cell, type Evaluation, type Graph, type InputValues, runCell, sameValue } from "../../lib/graph";

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
 * Installs a graph into an Observable runtime, one variable a node.
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
  const computing = new Set<number>();
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

  const observer = (position: number): Observer => ({
    pending: () => {
      computing.add(position);
    },
    fulfilled: (value) => {
      if (!sameValue(values[position], value)) {
        values[position] = value;
        moved.add(graph.nodes[position]!.key);
      }
      computing.delete(position);
      settle();
    },
    rejected: (error) => {
      computing.delete(position);
      settle();
      throw error;
    },
  });

  const put = (key: string, value: unknown): void => {
    const position = graph.position.get(key);
    if (position === undefined || position >= graph.inputs.length) throw new Error(`binding: there is no input "${key}"`);
    module.redefine(variableName(position), [], () => value);
  };

  graph.nodes.forEach((node, position) => {
    const variable = module.variable(observer(position));
    const name = variableName(position);
    if (node.type !== "cell") {
      if (!(node.key in inputs)) throw new Error(`binding: no value for the input "${node.key}"`);
      const value = inputs[node.key];
      variable.define(name, [], () => value);
      return;
    }
    const operands = Object.values(node.from).map((reference) => variableName(graph.position.get(reference.key)!));
    variable.define(name, operands, remembering(node));
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
      await module.value(variableName(0));
      if (computing.size > 0) await new Promise<void>((resolve) => waiting.push(resolve));
    },
    dispose: () => runtime.dispose(),
  };
}

/** The definition of a cell's variable: runs the cell, unless its operands are those of the last time. */
function remembering(cell: Cell): (...operands: readonly unknown[]) => unknown {
  const names = Object.keys(cell.from);
  let last: readonly unknown[] | undefined;
  let result: unknown;
  return (...operands) => {
    if (last === undefined || operands.some((operand, i) => !sameValue(operand, last![i]))) {
      const next = runCell(cell, names, operands);
      if (last === undefined || !sameValue(result, next)) result = next;
      last = operands;
    }
    return result;
  };
}

function variableName(position: number): string {
  return `v${position}`;
}
