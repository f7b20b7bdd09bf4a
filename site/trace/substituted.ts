import { type Item, itemsOf } from "./formula";

/** A formula with numbers in the places of its symbols. */
export interface Substituted {
  /** What stands before the equals sign, in TeX; empty where the formula has none. */
  readonly left: string;
  /** What stands behind it, with values, in TeX. */
  readonly right: string;
  /** Symbols behind the equals sign for which there was no value, each once, in TeX. */
  readonly kept: readonly string[];
}

/** Symbols that stand for a constant or a property without a line of its own. */
const constants = new Set(["\\pi", "e", "R", "\\gamma", "\\psi"]);
const relation = /^(?:=|\\(?:approx|le|leq|ge|geq)\b)/;

/**
 * The first equation of a formula with its symbols replaced by values: "P = \\frac{M}{2}" and M = 4 N·m give P and 4 N·m / 2.
 *
 * A symbol is told from others by its accents and its whole subscript. One that stands before a bracket without a space,
 * as in R(w_0), is a function and stays, and so does one under a condition, as x|_{y = 1}. Undefined where nothing could be replaced.
 *
 * @param formula in TeX
 * @param fill the value, in TeX, of a symbol in TeX; undefined where it has none
 */
export function substituted(formula: string, fill: (symbol: SymbolName) => string | undefined): Substituted | undefined {
  const first = firstEquation(itemsOf(formula));
  const equals = relationIn(first);
  const after = first.slice(equals + 1);
  const next = relationIn(after);
  const count = { values: 0, kept: [] };
  const right = written(next < 0 ? after : after.slice(0, next), fill, count);
  if (count.values === 0) return undefined;
  return { left: plain(first.slice(0, Math.max(0, equals))), right, kept: [...new Set(count.kept)] };
}

/** What stands before the first equals sign of a formula, in TeX. */
export function leftOf(formula: string): string {
  const first = firstEquation(itemsOf(formula));
  return plain(first.slice(0, Math.max(0, relationIn(first))));
}

/** A symbol as it is looked up. */
export interface SymbolName {
  readonly base: string;
  readonly sub: string;
}

/** The names by which a node's symbol is found in formulas; undefined for one that is not a single symbol. */
export function symbolName(tex: string): SymbolName | undefined {
  const [only, ...others] = itemsOf(tex).filter(({ type }) => type !== "space");
  return only?.type === "symbol" && others.length === 0 && !only.sup ? { base: only.base, sub: only.sub } : undefined;
}

/** A single letter without index or accent: such letters mean one thing here and another there. */
export function isBare({ base, sub }: SymbolName): boolean {
  return sub === "" && /^(?:[A-Za-z]|\\[A-Za-z]+)$/.test(base);
}

interface Count {
  values: number;
  readonly kept: string[];
}

function written(items: readonly Item[], fill: (symbol: SymbolName) => string | undefined, count: Count): string {
  const out: string[] = [];
  let before = { operand: false, value: false };
  let apart = false;
  for (const [i, item] of items.entries()) {
    if (item.type === "space") {
      out.push(item.tex);
      apart = true;
      continue;
    }
    const applied = item.type === "symbol" && !item.sup && (isApplied(items, i + 1) || isConditioned(items[i + 1]));
    const value = item.type === "symbol" && !applied ? fill(item) : undefined;
    if (value !== undefined) count.values += 1;
    else if (item.type === "symbol" && !applied && !constants.has(item.base)) count.kept.push(item.tex.trim());
    const starts = item.type !== "close" && item.type !== "sign";
    const holdsValue = value !== undefined || reaches(item, fill);
    // A value and what it is multiplied with get a dot between them.
    if (starts && before.operand && (before.value || holdsValue || (item.type === "open" && apart))) out.push("\\cdot ");
    out.push(value === undefined ? itemTex(item, fill, count) : valueTex(value, scriptTex(item, fill, count), out.length > 0));
    before = {
      operand: item.type === "close" || (starts && item.type !== "open" && !applied),
      value: holdsValue || item.type === "close",
    };
    apart = false;
  }
  return out.join("");
}

/** Whether a condition follows, as in x|_{y = 1}: the symbol then stands for another value than the present one. */
function isConditioned(next: Item | undefined): boolean {
  return next?.type === "sign" && next.tex.startsWith("|_");
}

/** Whether the bracket here holds the arguments of a function: it follows at once, or it holds a list. */
function isApplied(items: readonly Item[], at: number): boolean {
  const next = items[at]?.type === "space" && /!$/.test((items[at] as { tex: string }).tex) ? at + 1 : at;
  const open = items[next];
  if (open?.type !== "open") return false;
  if (open.tex === "(") return true;
  let depth = 0;
  for (const item of items.slice(next)) {
    if (item.type === "open") depth += 1;
    if (item.type === "close") depth -= 1;
    if (depth === 0) return false;
    if (depth === 1 && item.type === "sign" && item.tex === ",") return true;
  }
  return false;
}

function valueTex(value: string, script: string, follows: boolean): string {
  const bracketed = (script !== "" && !/^[\d.]+$/.test(value)) || (follows && value.startsWith("-"));
  return `${bracketed ? `\\left(${value}\\right)` : value}${script} `;
}

function itemTex(item: Item, fill: (symbol: SymbolName) => string | undefined, count: Count): string {
  const script = scriptTex(item, fill, count);
  if (item.type !== "built") return `${item.tex}${script}`;
  const parts = item.parts.map((part) => `{${written(part, fill, count)}}`).join("");
  return `${item.head}${parts}${script}`;
}

function scriptTex(item: Item, fill: (symbol: SymbolName) => string | undefined, count: Count): string {
  return "sup" in item && item.sup ? `^{${written(item.sup, fill, count)}}` : "";
}

function reaches(item: Item, fill: (symbol: SymbolName) => string | undefined): boolean {
  if (item.type === "symbol") return fill(item) !== undefined;
  return item.type === "built" && item.parts.some((part) => part.some((each) => reaches(each, fill)));
}

function plain(items: readonly Item[]): string {
  return written(items, () => undefined, { values: 0, kept: [] });
}

/** Up to a wide space or words such as "with": what follows is another equation. */
function firstEquation(items: readonly Item[]): readonly Item[] {
  const end = items.findIndex((item) => (item.type === "space" && /quad$/.test(item.tex)) || (item.type === "words" && /^\\text\{\s/.test(item.tex)));
  const first = end < 0 ? items : items.slice(0, end);
  const last = first.at(-1);
  return last?.type === "sign" && last.tex === "," ? first.slice(0, -1) : first;
}

/** Where the first relation stands that is in no brackets; below zero where there is none. */
function relationIn(items: readonly Item[]): number {
  let depth = 0;
  return items.findIndex((item) => {
    if (item.type === "open") depth += 1;
    if (item.type === "close") depth -= 1;
    return depth === 0 && item.type === "sign" && relation.test(item.tex);
  });
}
