import { type Cell, isRefusal, type Node } from "../../lib/graph";
import { type Measured, type UnitChoice, unitSymbol, written, writtenInput } from "../state";
import { isBare, type Substituted, type SymbolName, substituted, symbolName } from "./substituted";
import { texQuantity } from "./texText";

type Values = { get(node: Node): unknown };

/** A graph's symbols: which nodes each of them may stand for. */
export type Symbols = ReadonlyMap<string, readonly Node[]>;

export function symbolsOf(nodes: readonly Node[]): Symbols {
  const symbols = new Map<string, Node[]>();
  for (const node of nodes) {
    const name = nameOf(node);
    if (name === undefined) continue;
    const key = keyOf(name);
    symbols.set(key, [...(symbols.get(key) ?? []), node]);
  }
  return symbols;
}

/**
 * A cell's formula with the values of its symbols in the units shown; undefined where it cannot be filled in cleanly.
 *
 * A symbol is taken from what the cell depends on; one with an index or an accent, which means the same on every sheet,
 * may come from any line that alone bears it. Temperatures are written from absolute zero, as formulas need them.
 */
export function filledIn(cell: Cell, symbols: Symbols, values: Values, units: UnitChoice): Substituted | undefined {
  const operands = new Set(Object.values(cell.from).map(({ key }) => key));
  const own = nameOf(cell);
  return substituted(cell.formula, (symbol) => {
    const key = keyOf(symbol);
    if (own !== undefined && keyOf(own) === key) return undefined;
    const bearers = symbols.get(key) ?? [];
    const near = bearers.filter((node) => operands.has(node.key));
    const [node, ...others] = near.length > 0 ? near : isBare(symbol) ? [] : bearers;
    return node && others.length === 0 ? valueTex(node, values, units) : undefined;
  });
}

/** A node's value as it stands in a formula. */
function valueTex(node: Node, values: Values, units: UnitChoice): string | undefined {
  if (node.type === "choice" || node.type === "table" || node.kind === undefined) return undefined;
  const value = values.get(node);
  if (isRefusal(value) || typeof value !== "number") return undefined;
  const measured: Measured = { ...node, kind: node.kind };
  if (node.kind === "temperature") return texQuantity(written(absolute(measured, units), measured, value));
  return texQuantity(node.type === "quantity" ? writtenInput(units, measured, value) : written(units, measured, value));
}

function absolute(measured: Measured, units: UnitChoice): UnitChoice {
  const [kelvin, rankine] = ["K", "°R"];
  const symbol = unitSymbol(units, measured);
  return { ...units, own: { ...units.own, [measured.key!]: symbol === "°F" || symbol === rankine ? rankine! : kelvin! } };
}

function nameOf(node: Node): SymbolName | undefined {
  if (node.type === "choice" || node.type === "table" || !node.symbol) return undefined;
  return symbolName(node.symbol);
}

function keyOf({ base, sub }: SymbolName): string {
  return `${base.trim()}|${sub}`;
}

