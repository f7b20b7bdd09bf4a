import type { Check } from "../../lib/graph";
import {
  type DisplayHint,
  displayUnit,
  type KindName,
  type Quantity,
  type UnitSystem,
  writeQuantity,
} from "../../lib/quantity";
import { plainLine } from "../build/unreadable";
import type { CellReport } from "./report";

/** One line: what, how much, in what unit, and how it stands to its limit. */
type Line = readonly [label: string, number: string, unit: string, words: string];

/**
 * Sheets as plain text with names, numbers and units under each other.
 *
 * @param sheets titles and what their cells came to
 * @param system whose units are written
 */
export function sheetsText(
  sheets: readonly { readonly title: string; readonly reports: readonly CellReport[] }[],
  system: UnitSystem,
): string {
  const blocks = sheets.map(({ title, reports }) => ({
    title,
    lines: reports.flatMap((each) => linesOf(each, system)),
  }));
  const every = blocks.flatMap(({ lines }) => lines);
  const width = (column: 0 | 1 | 2) => Math.max(0, ...every.map((line) => line[column].length));
  const [labels, numbers, units] = [width(0), width(1), width(2)];
  return blocks
    .map(({ title, lines }) => {
      const rows = lines.map(([label, number, unit, words]) =>
        plainLine(`  ${label.padEnd(labels)}  ${number.padStart(numbers)} ${unit.padEnd(units)}  ${words}`.trimEnd()),
      );
      return [title, ...rows].join("\n");
    })
    .join("\n\n");
}

function linesOf({ cell, value, state, message, checks }: CellReport, system: UnitSystem): readonly Line[] {
  if (state === "refused") return [[cell.label, "", "", `refused: ${message}`]];
  if (state === "waits") return [[cell.label, "", "", message!]];
  const outside = state === "outside range" ? [`outside range: ${message}`] : [];
  if (cell.kind === undefined) {
    const head: Line = [cell.label, "", "", [partsOf(value), ...outside].join("; ")];
    return [head, ...checks.map((check) => checkLine(check, system))];
  }
  const [first = "", ...more] = [...outside, ...checks.map((check) => marginWords(check, system))];
  const head: Line = [cell.label, ...written(cell.kind, value as number, system, cell.hint), first];
  return [head, ...more.map((words): Line => ["", "", "", words])];
}

/** A limit found inside a structure: a line of its own, set in below the structure's name. */
function checkLine(check: Check, system: UnitSystem): Line {
  const number = written(check.kind, check.value, system, check.hint);
  return [`  ${check.label}`, ...number, marginWords(check, system)];
}

/** "air meters: at most 66 kg/min, 9.9 % left" */
export function marginWords(
  { component, side, kind, bound, hint, margin, standing }: Check,
  system: UnitSystem,
): string {
  const limit = `${component}: at ${side} ${written(kind, bound, system, hint).join(" ").trim()}`;
  if (!Number.isFinite(margin)) return `${limit}, ${standing === "past" ? "PAST" : "inside"}`;
  const share = `${Math.abs(100 * margin).toFixed(1)} %`;
  if (standing === "past") return `${limit}, PAST by ${share}`;
  return `${limit}, ${share} left${standing === "near" ? ", near" : ""}`;
}

function partsOf(value: unknown): string {
  const count = Array.isArray(value) ? value.length : Object.keys(Object(value)).length;
  return `${count} part${count === 1 ? "" : "s"}`;
}

function written(
  kind: KindName,
  value: number,
  system: UnitSystem,
  hint?: DisplayHint,
): [number: string, unit: string] {
  // A bound may be infinite, for which there are no digits.
  if (!Number.isFinite(value)) return [`${value}`, ""];
  const { number, unit } = writeQuantity(kind, value as Quantity<KindName>, { unit: displayUnit(kind, system, hint) });
  return [number, unit];
}
