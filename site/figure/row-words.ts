import { together } from "../../lib/quantity";
import { figures } from "../../worksheets/drawing";
import type { FigureTable } from "../../worksheets/sheet";

/** A row of a figure's numbers in words, as its mark is read out: what it is, and what is known of it. */
export interface RowWords {
  readonly name: string;
  readonly value: string;
}

/** Digits of a number that is read out; the page's own lines have as many. */
const digits = 4;

/** Words at the left of a row name it; after them comes each number with its column's label. Empty places are left out. */
export function rowWords({ columns, rows }: FigureTable, row: number): RowWords | undefined {
  const entries = rows[row];
  if (!entries) return undefined;
  const labels = columns.map((column) => (typeof column === "string" ? { label: column, unit: "" } : { label: column[0], unit: column[1] }));
  const firstNumber = entries.findIndex((entry) => typeof entry === "number");
  const named = Math.max(1, firstNumber);
  const parts = entries.flatMap((entry, i) => {
    const { label, unit } = labels[i]!;
    if (i < named || entry === "–" || label === "Unit") return [];
    if (labels[i + 1]?.label === "Unit") return [amount(entry, String(entries[i + 1]))];
    return [`${inSentence(label)} ${amount(entry, unit)}`];
  });
  return { name: entries.slice(0, named).join(", "), value: parts.join(", ") };
}

function amount(entry: string | number, unit: string): string {
  const number = typeof entry === "number" ? figures(entry, digits) : entry;
  return unit === "°" ? `${number}°` : together(number, unit);
}

function inSentence(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? label[0]!.toLowerCase() + label.slice(1) : label;
}
