import {
  type DisplayHint,
  displayUnit,
  type KindName,
  type Quantity,
  type UnitSystem,
  writeQuantity,
} from "../quantity";
import type { Column, Input } from "./input";

/** What a quantity's bounds are taken from: an input, or a column of a table. */
interface Bounded {
  readonly kind: KindName;
  readonly span: readonly [number, number];
  readonly hint?: DisplayHint;
}

/**
 * What is wrong with a value for an input, in words that name label, value and bound in the unit people read; null when
 * nothing is. A table is held against its count of rows, and each row against every column.
 *
 * @param input the input
 * @param value what is to become its value, in SI
 * @param system whose units the words speak
 */
export function acceptInput(input: Input, value: unknown, system: UnitSystem = "SI"): string | null {
  if (input.type === "choice") return ofChoice(input.label, input.options, value);
  if (input.type === "quantity") return ofQuantity(input.label, input, value, system);
  if (!Array.isArray(value)) return `${input.label} is not a list of rows`;
  const [fewest, most] = input.rows;
  if (value.length < fewest || value.length > most) {
    const words = fewest === most ? `${most}` : `${fewest} to ${most}`;
    return `${input.label} has ${value.length} row${value.length === 1 ? "" : "s"}; it must have ${words}`;
  }
  for (const [index, row] of value.entries()) {
    const place = `${input.label}, row ${index + 1}`;
    if (typeof row !== "object" || row === null || Array.isArray(row)) return `${place} is not a row of columns`;
    for (const [name, column] of Object.entries(input.columns)) {
      const label = `${place}, ${column.label}`;
      if (!Object.hasOwn(row, name)) return `${label} is missing`;
      const message = ofColumn(label, column, (row as Record<string, unknown>)[name], system);
      if (message !== null) return message;
    }
  }
  return null;
}

function ofColumn(label: string, column: Column, value: unknown, system: UnitSystem): string | null {
  if (column.type === "choice") return ofChoice(label, column.options, value);
  if (column.type === "quantity") return ofQuantity(label, column, value, system);
  if (typeof value !== "string") return `${label} is not a text`;
  const { length } = value;
  return length <= column.longest
    ? null
    : `${label} is ${length} characters long; it must be at most ${column.longest}`;
}

function ofChoice(label: string, options: Readonly<Record<string, string>>, value: unknown): string | null {
  if (typeof value === "string" && Object.hasOwn(options, value)) return null;
  const said = typeof value === "string" ? `"${shortened(value)}"` : "not a name";
  const names = Object.keys(options).map((name) => `"${name}"`);
  return `${label} is ${said}; it must be one of ${names.join(", ")}`;
}

function ofQuantity(label: string, bounded: Bounded, value: unknown, system: UnitSystem): string | null {
  const { kind, span } = bounded;
  if (typeof value !== "number" || Number.isNaN(value)) {
    return `${label} is not a number; it must be ${boundsIn(bounded, system)}`;
  }
  if (!Number.isFinite(value) || value < span[0] || value > span[1]) {
    return `${label} is ${valueIn(bounded, value, system)}; it must be ${boundsIn(bounded, system)}`;
  }
  if (kind === "count" && !Number.isInteger(value)) {
    return `${label} is ${value}; it must be a whole number, ${boundsIn(bounded, system)}`;
  }
  return null;
}

/** The value past its bound, with as many digits as tell the two apart. */
function valueIn({ kind, span, hint }: Bounded, value: number, system: UnitSystem): string {
  if (!Number.isFinite(value)) return value > 0 ? "infinite" : "minus infinite";
  const bound = value < span[0] ? span[0] : span[1];
  for (let digits = 4; digits < 15; digits++) {
    const text = written(kind, value, hint, system, digits).text;
    if (text !== written(kind, bound, hint, system, digits).text) return text;
  }
  return written(kind, value, hint, system, 15).text;
}

function boundsIn({ kind, span: [lowest, highest], hint }: Bounded, system: UnitSystem): string {
  const least = Number.isFinite(lowest) ? written(kind, lowest, hint, system) : undefined;
  const most = Number.isFinite(highest) ? written(kind, highest, hint, system) : undefined;
  if (least && most) return `${least.number} to ${most.text}`;
  if (least) return `at least ${least.text}`;
  return most ? `at most ${most.text}` : "a finite number";
}

function written(kind: KindName, value: number, hint: DisplayHint | undefined, system: UnitSystem, digits = 6) {
  const unit = displayUnit(kind, system, hint);
  return writeQuantity(kind, value as Quantity<KindName>, { unit, digits });
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
