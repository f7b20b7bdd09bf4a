import { type Cell, type Graph, isRefusal, type Node } from "../../lib/graph";
import { type Measured, type UnitChoice, unitSymbol, written, writtenInput } from "../state";
import { explanationOf } from "./explanation";
import { itemsOf } from "./formula";
import type { Amount } from "../../worksheets/inner";
import { isBare, leftOf, type Substituted, type SymbolName, substituted, symbolName } from "./substituted";
import { texQuantity } from "./texText";
import { innerOf, innerValue, termsOf } from "./within";

type Values = { get(node: Node): unknown };

/** A graph's symbols: which node a symbol stands for in a cell's formula. */
export interface Symbols {
  bearer(symbol: SymbolName, cell: Cell): Node | undefined;
}

/**
 * A symbol in a cell's formula stands for what the cell reads: directly, or through structures, which hand on what they
 * read. One with an index or an accent may also stand for another line of the same calculation: one that follows from a
 * structure which the cell reads, or from nothing but what the cell reads. A like symbol from elsewhere may mean
 * another thing, or the same thing at another point.
 */
export function symbolsOf(graph: Graph): Symbols {
  const bearers = new Map<string, Node[]>();
  for (const node of graph.nodes) {
    const name = nameOf(node);
    if (name === undefined) continue;
    const key = keyOf(name);
    bearers.set(key, [...(bearers.get(key) ?? []), node]);
  }
  const operands = (node: Node): readonly Node[] =>
    node.type === "cell" ? Object.values(node.from).map(({ key }) => graph.nodes[graph.position.get(key)!]!) : [];
  const fedBy = remembered((node: Node): ReadonlySet<Node> => new Set(operands(node).flatMap((each) => [each, ...fedBy(each)])));
  const read = remembered((node: Node): ReadonlySet<Node> => new Set(operands(node).flatMap((each) => (isStructure(each) ? [each, ...read(each)] : [each]))));
  const alongside = (other: Node, cell: Cell): boolean => {
    if (other.type !== "cell") return false;
    const worked = [cell, ...operands(cell)].filter((each) => isStructure(each) && !onlyGathers(each));
    return worked.some((each) => fedBy(other).has(each)) || operands(other).every((each) => read(cell).has(each));
  };
  return {
    bearer: (symbol, cell) => {
      const all = bearers.get(keyOf(symbol)) ?? [];
      const near = [all.filter((node) => operands(cell).includes(node)), all.filter((node) => read(cell).has(node))].find(({ length }) => length > 0);
      const [node, ...others] = near ?? (isBare(symbol) ? [] : all);
      if (!node || others.length > 0 || node === cell) return undefined;
      return near || alongside(node, cell) ? node : undefined;
    },
  };
}

function isStructure(node: Node): node is Cell {
  return node.type === "cell" && node.kind === undefined;
}

/** Whether a structure works nothing out: its formula is words alone. */
function onlyGathers(cell: Cell): boolean {
  return itemsOf(explanationOf(cell).formula).every(({ type }) => type === "words" || type === "space");
}

function remembered<T>(work: (node: Node) => T): (node: Node) => T {
  const known = new Map<Node, T>();
  return (node) => {
    const value = known.get(node) ?? work(node);
    known.set(node, value);
    return value;
  };
}

/** What a symbol in a filled-in line stands for that has no line of its own. */
export interface Named {
  /** In TeX. */
  readonly symbol: string;
  readonly label: string;
  /** Its value as it is read; undefined where the symbol stays. */
  readonly value: string | undefined;
}

export interface Filled extends Substituted {
  /** In the order of the formula, each once. */
  readonly named: readonly Named[];
}

/**
 * A cell's formula with the values of its symbols in the units shown; undefined where none has a value. Temperatures are
 * written from absolute zero, as formulas need them.
 */
export function filledIn(cell: Cell, symbols: Symbols, values: Values, units: UnitChoice): Filled | undefined {
  const { formula } = explanationOf(cell);
  const terms = termsOf(cell, values);
  if (terms) return { left: leftOf(formula), right: summed(terms.map((factors) => product(factors, units))), kept: [], named: [] };
  const own = nameOf(cell);
  const named = new Map<string, Named>();
  const filled = substituted(formula, (symbol) => {
    const within = innerOf(cell, symbol);
    if (!within) {
      const node = symbols.bearer(symbol, cell);
      return node && valueTex(node, values, units);
    }
    const value = within.found && innerValue(within, values);
    const measured = within.found as Measured | undefined;
    named.set(within.symbol, { symbol: within.symbol, label: within.label, value: value === undefined ? undefined : written(units, measured!, value).text });
    return value === undefined ? undefined : amountTex(measured!, value, units);
  });
  const isOwn = (tex: string): boolean => own !== undefined && keyOf(symbolName(tex) ?? own) === keyOf(own);
  return filled && { ...filled, kept: filled.kept.filter((tex) => !isOwn(tex)), named: [...named.values()] };
}

function summed(terms: readonly string[]): string {
  return terms.reduce((all, term) => (term.startsWith("-") ? `${all} - ${term.slice(1)}` : `${all} + ${term}`));
}

function product(factors: readonly Amount[], units: UnitChoice): string {
  return factors.map(({ value, ...measured }) => amountTex(measured, value, units)).join(" \\cdot ");
}

function amountTex(measured: Measured, value: number, units: UnitChoice): string {
  if (measured.kind !== "temperature") return texQuantity(written(units, measured, value));
  const keyed = { ...measured, key: measured.key ?? "" };
  return texQuantity(written(absolute(keyed, units), keyed, value));
}

/** A node's value as it stands in a formula. */
function valueTex(node: Node, values: Values, units: UnitChoice): string | undefined {
  if (node.type === "choice" || node.type === "table" || node.kind === undefined) return undefined;
  const value = values.get(node);
  if (isRefusal(value) || typeof value !== "number") return undefined;
  const measured: Measured = { ...node, kind: node.kind };
  return node.type === "quantity" && node.kind !== "temperature" ? texQuantity(writtenInput(units, measured, value)) : amountTex(measured, value, units);
}

function absolute(measured: Measured, units: UnitChoice): UnitChoice {
  const [kelvin, rankine] = ["K", "°R"];
  const symbol = unitSymbol(units, measured);
  const own = symbol === "°F" || symbol === rankine ? rankine! : kelvin!;
  return { ...units, own: { ...units.own, [measured.key!]: own } };
}

function nameOf(node: Node): SymbolName | undefined {
  if (node.type === "choice" || node.type === "table" || !node.symbol) return undefined;
  return symbolName(node.symbol);
}

function keyOf({ base, sub }: SymbolName): string {
  return `${base.trim()}|${sub}`;
}

