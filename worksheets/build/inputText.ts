import { acceptInput, type Column, type Input } from "../../lib/graph";
import {
  type DisplayHint,
  displayUnit,
  type KindName,
  parseQuantity,
  type Quantity,
  writeExactly,
} from "../../lib/quantity";
import { described, isObject, quoted, stepped, Unreadable } from "./unreadable";

/** Kinds that need no unit, so that a file may hold them as bare numbers. */
const plainKinds: ReadonlySet<KindName> = new Set<KindName>(["ratio", "fraction", "count"]);

interface Measured {
  readonly kind: KindName;
  readonly hint?: DisplayHint;
}

/**
 * An input's value [SI], from its form in a file: a quantity or a choice as text, a table as a list of rows.
 *
 * @param input the input
 * @param raw what the file holds
 * @param path where, for the message
 * @throws Unreadable when it is not a value of this input, or not within its bounds
 */
export function readInput(input: Input, raw: unknown, path: string): unknown {
  const value = input.type === "table" ? readRows(input.columns, raw, path) : readEntry(input, raw, path);
  const message = acceptInput(input, value);
  if (message !== null) throw new Unreadable(path, message);
  return value;
}

/** One entry of an input or of a table's column; its bounds are not looked at. @throws Unreadable */
export function readEntry(field: Exclude<Input, { type: "table" }> | Column, raw: unknown, path: string): unknown {
  if (field.type === "quantity") return readQuantity(field, raw, path);
  if (typeof raw === "string") return raw;
  const words = field.type === "text" ? "a text" : `one of ${Object.keys(field.options).map(quoted).join(", ")}`;
  throw new Unreadable(path, `it is ${described(raw)}; it must be ${words}`);
}

/** A value in the form that a file holds; readInput gives back the very same value. */
export function writeInput(input: Input, value: unknown): unknown {
  if (input.type === "choice") return value;
  if (input.type === "quantity") return writeQuantityExactly(input, value as number);
  return (value as readonly Readonly<Record<string, unknown>>[]).map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, entry]) => {
        const column = Object.hasOwn(input.columns, name) ? input.columns[name] : undefined;
        return [name, column?.type === "quantity" ? writeQuantityExactly(column, entry as number) : entry];
      }),
    ),
  );
}

/** Names of the columns that a table does not have, as its rows hold them. */
export function unknownColumns(input: Input, value: unknown): readonly string[] {
  if (input.type !== "table") return [];
  const held = (value as readonly object[]).flatMap((row) => Object.keys(row));
  return [...new Set(held)].filter((name) => !Object.hasOwn(input.columns, name));
}

function readRows(columns: Readonly<Record<string, Column>>, raw: unknown, path: string): readonly object[] {
  if (!Array.isArray(raw)) throw new Unreadable(path, `it is ${described(raw)}; it must be a list of rows`);
  return raw.map((row: unknown, index) => {
    const place = stepped(path, index);
    if (!isObject(row)) throw new Unreadable(place, `it is ${described(row)}; it must be a row of columns`);
    const read = Object.entries(columns).map(([name, column]) => {
      if (!Object.hasOwn(row, name)) throw new Unreadable(stepped(place, name), "it is missing");
      return [name, readEntry(column, row[name], stepped(place, name))] as const;
    });
    return { ...row, ...Object.fromEntries(read) };
  });
}

/** A quantity [SI] from its text in a file. @throws Unreadable when it is not one of that kind */
export function readQuantity({ kind, hint }: Measured, raw: unknown, path: string): number {
  const plain = plainKinds.has(kind);
  if (typeof raw === "number") {
    if (plain) return raw;
    throw new Unreadable(
      path,
      `${raw} has no unit; write it as a text with one, such as "${raw} ${displayUnit(kind, "SI", hint)}"`,
    );
  }
  if (typeof raw !== "string")
    throw new Unreadable(path, `it is ${described(raw)}; it must be a text with number and unit`);
  // A share without a sign is a pure number here, whether it stands as a text or as a number: "0.8" is 80 %.
  const read = parseQuantity(kind, raw, { unit: plain ? "" : displayUnit(kind, "SI", hint) });
  if (!read.ok) throw new Unreadable(path, read.message);
  return read.value;
}

/** Number and unit, in the one of the two systems that takes fewer characters: a value typed as 950 hp stays 950 hp. */
export function writeQuantityExactly({ kind, hint }: Measured, value: number): string {
  const [metric, customary] = (["SI", "US"] as const).map((system) =>
    writeExactly(kind, value as Quantity<KindName>, displayUnit(kind, system, hint)),
  );
  return customary!.length < metric!.length ? customary! : metric!;
}
