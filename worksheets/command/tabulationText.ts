import type { UnitSystem } from "../../lib/quantity";
import type { Tabulation, TabulationColumn } from "../sheet";
import { written } from "./written";

/**
 * A structured value as lines of text, columns under each other, units in the heads.
 *
 * @param tabulation how the value is laid out
 * @param value the value
 * @param system whose units are written
 */
export function tabulationText({ columns, rows }: Tabulation, value: unknown, system: UnitSystem): readonly string[] {
  const entries = rows(value as never);
  const heads = columns.map((column, i) => headOf(column, entries[0]?.[i], system));
  const texts = entries.map((row) => row.map((entry, i) => entryText(columns[i]!, entry, system)));
  const widths = heads.map((head, i) => Math.max(head.length, ...texts.map((row) => (row[i] ?? "").length)));
  const numeric = columns.map((_, i) => entries.every((row) => typeof row[i] === "number"));
  return [heads, ...texts].map((row) =>
    row.map((text, i) => (numeric[i] ? text.padStart(widths[i]!) : text.padEnd(widths[i]!))).join("  "),
  );
}

function headOf({ label, kind, hint }: TabulationColumn, entry: unknown, system: UnitSystem): string {
  if (kind === undefined || typeof entry !== "number") return label;
  const [, unit] = written(kind, entry, system, hint);
  return unit === "" ? label : `${label}, ${unit}`;
}

function entryText({ kind, hint }: TabulationColumn, entry: string | number, system: UnitSystem): string {
  if (typeof entry === "string") return entry;
  if (kind !== undefined) return written(kind, entry, system, hint)[0];
  return `${Number(entry.toPrecision(4))}`;
}
