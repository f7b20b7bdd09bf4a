import { type Column, type Graph, type Input, type InputValues, sameValue, type TableInput } from "../../lib/graph";
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
  const name = `${input.label}${input.type === "table" ? ":" : ""} ${movement(input, units, before[first], after[first])}`;
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
    case "table":
      return tableMovement(input, units, before as readonly Row[], after as readonly Row[]);
  }
}

type Row = Readonly<Record<string, unknown>>;

/** What became of a table's rows: "3 → 4 rows", "Alternator, above 440 → 445 mm", "in another order". */
function tableMovement({ columns }: TableInput, units: UnitChoice, before: readonly Row[], after: readonly Row[]): string {
  if (before.length !== after.length) return `${before.length} → ${after.length} rows`;
  const moved = after.flatMap((row, i) => (sameValue(row, before[i]) ? [] : [i]));
  if (moved.every((i) => before.includes(after[i]!))) return "in another order";
  if (moved.length > 1) return `${moved.length} rows edited`;
  const [i] = moved as [number];
  const [from, to] = [before[i]!, after[i]!];
  const changes = Object.entries(columns).flatMap(([name, column]) =>
    Object.is(from[name], to[name]) ? [] : [`${inSentence(column.label)} ${entryMovement(column, units, from[name], to[name])}`],
  );
  const name = Object.entries(columns).find(([, column]) => column.type === "text")?.[0];
  return [name === undefined ? `row ${i + 1}` : (to[name] as string), ...changes].join(", ");
}

function entryMovement(column: Column, units: UnitChoice, before: unknown, after: unknown): string {
  switch (column.type) {
    case "quantity":
      return `${writtenInput(units, column, before as number).number} → ${writtenInput(units, column, after as number).text}`;
    case "choice":
      return `${column.options[before as string]} → ${column.options[after as string]}`;
    case "text":
      return `${before as string} → ${after as string}`;
  }
}

/** A label within a sentence: without a capital that only opens a line. */
function inSentence(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? label[0]!.toLowerCase() + label.slice(1) : label;
}
