import { type Item, itemsOf, type SymbolName } from "../../../site/trace";

/** Thrown where a formula holds what plain arithmetic does not: a function of a property, an integral, words. */
class Unread extends Error {}

/**
 * The number to which the part behind a formula's first equals sign comes, by plain arithmetic; undefined where it holds
 * more than that. Written apart from what fills formulas in, to judge it.
 *
 * @param value of a symbol, in SI; undefined where it has none
 */
export function evaluated(formula: string, value: (symbol: SymbolName) => number | undefined): number | undefined {
  const items = withoutSpaces(itemsOf(formula));
  const end = items.findIndex((item) => item.type === "space" || (item.type === "words" && /^\\text\{\s/.test(item.tex)));
  const first = end < 0 ? items : items.slice(0, end);
  const isRelation = (item: Item): boolean => item.type === "sign" && /^(?:=|\\approx)/.test(item.tex.trim());
  const from = first.findIndex(isRelation) + 1;
  const behind = first.slice(from);
  const to = behind.findIndex(isRelation);
  const whole = to < 0 ? behind : behind.slice(0, to);
  const last = whole.at(-1);
  const part = last?.type === "sign" && last.tex === "," ? whole.slice(0, -1) : whole;
  try {
    const reader = { items: part, at: 0, value };
    const result = sum(reader);
    if (reader.at < part.length) throw new Unread();
    return result;
  } catch (error) {
    if (error instanceof Unread) return undefined;
    throw error;
  }
}

/** Items without spaces, but for wide ones; a bracket that follows one is multiplied with, and no argument. */
function withoutSpaces(items: readonly Item[]): readonly Item[] {
  return items.flatMap((item, i): readonly Item[] => {
    if (item.type === "space") return /quad/.test(item.tex) ? [item] : [];
    const [before, spaced] = [items[i - 2], items[i - 1]?.type === "space" && !/!/.test((items[i - 1] as { tex: string }).tex)];
    const multiplied = item.type === "open" && spaced && (before?.type === "symbol" || before?.type === "built" || before?.type === "close");
    return multiplied ? [{ type: "sign", tex: "\\cdot " }, item] : [item];
  });
}

interface Reader {
  readonly items: readonly Item[];
  at: number;
  readonly value: (symbol: SymbolName) => number | undefined;
}

const signAt = ({ items, at }: Reader): string => {
  const item = items[at];
  return item?.type === "sign" ? item.tex.trim() : "";
};

function sum(reader: Reader): number {
  let total = 0;
  let sign = 1;
  if (/^[-−]$/.test(signAt(reader))) {
    sign = -1;
    reader.at += 1;
  }
  for (;;) {
    total += sign * term(reader);
    const next = signAt(reader);
    if (!/^[-+−]$/.test(next)) return total;
    sign = next === "+" ? 1 : -1;
    reader.at += 1;
  }
}

function term(reader: Reader): number {
  let product = factor(reader);
  for (;;) {
    const next = reader.items[reader.at];
    const sign = signAt(reader);
    if (/^\\(?:cdot|times)$/.test(sign)) reader.at += 1;
    else if (sign === "/") {
      reader.at += 1;
      product /= factor(reader);
      continue;
    } else if (next === undefined || next.type === "close" || (next.type === "sign" && !/^\\(?:ln|sin|min|max)/.test(sign))) return product;
    product *= factor(reader);
  }
}

function factor(reader: Reader): number {
  const item = reader.items[reader.at];
  if (item === undefined) throw new Unread();
  reader.at += 1;
  switch (item.type) {
    case "number": {
      const next = reader.items[reader.at];
      const unit = next?.type === "words" ? factor(reader) : 1;
      return raised(Number(item.tex), item.sup, reader) * unit;
    }
    case "symbol": {
      if (reader.items[reader.at]?.type === "open" && (reader.items[reader.at] as { tex: string }).tex === "(") throw new Unread();
      if (signAt(reader).startsWith("|_")) throw new Unread();
      const base = item.base.trim();
      const known = base === "\\pi" && item.sub === "" ? Math.PI : base === "e" && item.sub === "" ? Math.E : reader.value(item);
      if (known === undefined) throw new Unread();
      return raised(known, item.sup, reader);
    }
    case "built": {
      const [top, bottom] = item.parts.map((part) => inside(part, reader));
      if (item.head === "") return raised(top!, item.sup, reader);
      if (/frac$/.test(item.head)) return raised(top! / bottom!, item.sup, reader);
      if (item.head === "\\sqrt") return raised(Math.sqrt(top!), item.sup, reader);
      throw new Unread();
    }
    case "open": {
      const result = sum(reader);
      const close = reader.items[reader.at];
      if (close?.type !== "close") throw new Unread();
      reader.at += 1;
      return raised(/\|$/.test(close.tex) ? Math.abs(result) : result, close.sup, reader);
    }
    case "words": {
      const scale = { "\\mathrm{K}": 1, "\\mathrm{kPa}": 1e3, "\\mathrm{kg/m^3}": 1 }[item.tex];
      if (scale === undefined) throw new Unread();
      return scale;
    }
    case "sign": {
      const name = item.tex.trim();
      if (name === "\\ln") return Math.log(factor(reader));
      if (name === "\\sin") return Math.sin(factor(reader));
      if (name === "\\min" || name === "\\max") return extreme(name === "\\min" ? Math.min : Math.max, reader);
      throw new Unread();
    }
    default:
      throw new Unread();
  }
}

function extreme(of: (...all: number[]) => number, reader: Reader): number {
  if (reader.items[reader.at]?.type !== "open") throw new Unread();
  const all: number[] = [];
  do {
    reader.at += 1;
    all.push(sum(reader));
  } while (signAt(reader) === ",");
  if (reader.items[reader.at]?.type !== "close") throw new Unread();
  reader.at += 1;
  return of(...all);
}

function inside(items: readonly Item[], { value }: Reader): number {
  const reader = { items: withoutSpaces(items), at: 0, value };
  const result = sum(reader);
  if (reader.at < reader.items.length) throw new Unread();
  return result;
}

function raised(base: number, sup: readonly Item[] | undefined, reader: Reader): number {
  return sup === undefined ? base : base ** inside(sup, reader);
}
