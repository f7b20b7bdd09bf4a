import type { FigureColumn, FigureTable } from "../../worksheets/sheet";

/**
 * A table as comma-separated values by RFC 4180: fields with commas, quotes or line ends stand in quotes, lines end in
 * CR LF. Texts that a spreadsheet would take for a formula get an apostrophe before them. Numbers are written plainly:
 * a decimal point, no exponent, nothing between thousands, twelve digits at most. Units stand in the headings.
 */
export function csvOf({ columns, rows }: FigureTable): string {
  const lines = [columns.map((column) => field(heading(column))), ...rows.map((row) => row.map(fieldOf))];
  return lines.map((line) => `${line.join(",")}\r\n`).join("");
}

/** A column's heading with its unit, such as "Speed [rev/min]". */
function heading(column: FigureColumn): string {
  if (typeof column === "string") return column;
  const [label, unit] = column;
  return unit === "" ? label : `${label} [${unit}]`;
}

function fieldOf(entry: string | number): string {
  return typeof entry === "number" ? plainNumber(entry) : field(entry);
}

const plain = new Intl.NumberFormat("en-US", { useGrouping: false, maximumSignificantDigits: 12 });

/** A number as any program reads it; nothing for what is not finite. */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) return "";
  return plain.format(value === 0 ? 0 : value);
}

function field(text: string): string {
  const guarded = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
