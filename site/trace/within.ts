import { type Cell, isRefusal, type Node, type Ref } from "../../lib/graph";
import type { Amount, Inner } from "../../worksheets/inner";
import { innerQuantities, sumsAndProducts } from "../../worksheets/innerQuantities";
import { type SymbolName, symbolName } from "./substituted";

type Values = { get(node: Node): unknown };

const byCell = new Map<Cell, Map<string, Inner>>();
for (const each of innerQuantities) {
  for (const cell of each.cells) byCell.set(cell, (byCell.get(cell) ?? new Map<string, Inner>()).set(keyOf(symbolName(each.symbol)!), each));
}
const written = new Map(sumsAndProducts.map((each) => [each.cell, each]));

/** What a symbol of a cell's formula stands for that no line bears; undefined where it is not declared. */
export function innerOf(cell: Cell, symbol: SymbolName): Inner | undefined {
  return byCell.get(cell)?.get(keyOf(symbol));
}

/** The value of such a symbol, in SI; undefined where it has none at present. */
export function innerValue({ found }: Inner, values: Values): number | undefined {
  const known = found && valuesOf(found.from, values);
  if (!known) return undefined;
  const value = found.value(known as never);
  return Number.isFinite(value) ? value : undefined;
}

/** The terms of a cell's sum or product, each as factors; undefined where it is none, or has no value at present. */
export function termsOf(cell: Cell, values: Values): readonly (readonly Amount[])[] | undefined {
  const found = written.get(cell);
  const known = found && valuesOf(found.from, values);
  const terms = known && found.terms(known as never);
  return terms && terms.length > 0 && terms.flat().every(({ value }) => Number.isFinite(value)) ? terms : undefined;
}

/** Values by name; undefined where one of them is refused. */
function valuesOf(from: Readonly<Record<string, Ref>>, values: Values): Readonly<Record<string, unknown>> | undefined {
  const all = Object.entries(from).map(([name, ref]) => [name, values.get(ref as Node)] as const);
  return all.some(([, value]) => isRefusal(value)) ? undefined : Object.fromEntries(all);
}

function keyOf({ base, sub }: SymbolName): string {
  return `${base.trim()}|${sub}`;
}
