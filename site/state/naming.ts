import { type Graph, type Input, type InputValues, sameValue } from "../../lib/graph";
import { type UnitChoice, writtenInput } from "./units";

/** Keys of the inputs whose value differs, in the graph's order. */
export function differingInputs(graph: Graph, before: InputValues, after: InputValues): readonly string[] {
  return graph.inputs.filter(({ key }) => !sameValue(before[key], after[key])).map(({ key }) => key);
}

/** What a change did, for the undo list: "Blower drive ratio 1.9 → 2.1". */
export function changeName(graph: Graph, units: UnitChoice, before: InputValues, after: InputValues): string {
  const [first, ...others] = differingInputs(graph, before, after);
  if (first === undefined) return "no value";
  const input = graph.inputs.find(({ key }) => key === first)!;
  const name = `${input.label} ${movement(input, units, before[first], after[first])}`;
  return others.length === 0 ? name : `${name}, and ${others.length} more`;
}

function movement(input: Input, units: UnitChoice, before: unknown, after: unknown): string {
  switch (input.type) {
    case "quantity": {
      const [from, to] = [writtenInput(units, input, before as number), writtenInput(units, input, after as number)];
      return `${from.number} → ${to.text}`;
    }
    case "choice":
      return `${input.options[before as string]} → ${input.options[after as string]}`;
    case "table": {
      const [from, to] = [(before as readonly unknown[]).length, (after as readonly unknown[]).length];
      return from === to ? "edited" : `${from} → ${to} rows`;
    }
  }
}
