import type { Check } from "../../lib/graph";
import type { UnitSystem } from "../../lib/quantity";
import { plainLine } from "../build/unreadable";
import type { Tabulation } from "../sheet";
import type { CellReport } from "./report";
import { tabulationText } from "./tabulationText";
import { written } from "./written";

/** A sheet and what its cells came to. */
export interface SheetReport {
  readonly title: string;
  /** Why the sheet's limits do not count, if they do not. */
  readonly aside?: string;
  readonly reports: readonly CellReport[];
  readonly tabulations: readonly Tabulation[];
}

/** What, how much, in what unit, and how it stands to its limit; or a line of text as it is. */
type Line = readonly [label: string, number: string, unit: string, words: string] | string;

/**
 * Sheets as plain text with names, numbers and units under each other.
 *
 * @param sheets what their cells came to
 * @param system whose units are written
 */
export function sheetsText(sheets: readonly SheetReport[], system: UnitSystem): string {
  const blocks = sheets.map((sheet) => ({
    head: sheet.aside === undefined ? [sheet.title] : [sheet.title, `  ${sheet.aside}`],
    lines: sheet.reports.flatMap((report) => linesOf(report, sheet.tabulations, system)),
  }));
  const set = blocks.flatMap(({ lines }) => lines.filter((line) => typeof line !== "string"));
  const width = (column: 0 | 1 | 2) => Math.max(0, ...set.map((line) => line[column].length));
  const [labels, numbers, units] = [width(0), width(1), width(2)];
  const text = (line: Line): string => {
    if (typeof line === "string") return `    ${line}`;
    const [label, number, unit, words] = line;
    return `  ${label.padEnd(labels)}  ${number.padStart(numbers)} ${unit.padEnd(units)}  ${words}`;
  };
  return blocks
    .map(({ head, lines }) => [...head, ...lines.map(text)].map((line) => plainLine(line).trimEnd()).join("\n"))
    .join("\n\n");
}

function linesOf(report: CellReport, tabulations: readonly Tabulation[], system: UnitSystem): readonly Line[] {
  const { cell, value, state, message, checks } = report;
  if (state === "refused") return [[cell.label, "", "", `refused: ${message}`]];
  if (state === "waits") return [[cell.label, "", "", message!]];
  const outside = state === "outside range" ? [`outside range: ${message}`] : [];
  if (cell.kind === undefined) {
    const tables = tabulations.filter(({ of }) => of.key === cell.key);
    const head: Line = [cell.label, "", "", [partsOf(value), ...outside].join("; ")];
    const rows = tables.flatMap((tabulation) => tabulationText(tabulation, value, system));
    return [head, ...rows, ...checks.map((check) => checkLine(check, system))];
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
export function marginWords(check: Check, system: UnitSystem): string {
  const { component, side, kind, bound, hint, margin, standing } = check;
  const limit = `${component}: at ${side} ${written(kind, bound, system, hint).join(" ").trim()}`;
  // A bound of zero has no share to tell.
  if (!Number.isFinite(margin)) return `${limit}, ${standing === "past" ? "PAST" : "inside"}`;
  const share = `${Math.abs(100 * margin).toFixed(1)} %`;
  if (standing === "past") return `${limit}, PAST by ${share}`;
  return `${limit}, ${share} left${standing === "near" ? ", near" : ""}`;
}

function partsOf(value: unknown): string {
  const count = Array.isArray(value) ? value.length : Object.keys(Object(value)).length;
  return `${count} part${count === 1 ? "" : "s"}`;
}
