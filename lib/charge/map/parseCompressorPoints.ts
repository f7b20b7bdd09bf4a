import type { Span } from "../../quantity/guard";
import type { KindName, Length, Pressure, Temperature } from "../../quantity/kinds";
import { unitSpelled } from "../../quantity/unitSpellings";
import { fromSI, toSI, type Unit, unitsOf } from "../../quantity/units";
import type { MapReference } from "../correctedFlow";

/** A measured point of a compressor, in SI units, at the map's reference state. */
export interface MeasuredPoint {
  /** line of the file, from 1 */
  readonly line: number;
  /** corrected flow [kg/s] */
  readonly flow: number;
  /** total outlet over total inlet pressure [–] */
  readonly pressureRatio: number;
  /** ideal over actual work [–] */
  readonly efficiency: number;
  /** corrected wheel speed [rev/s] */
  readonly speed: number;
}

/** A line of a file that cannot be used, and why. */
export interface RefusedLine {
  readonly line: number;
  readonly message: string;
}

/** What a file of measured points holds. */
export interface CompressorPoints {
  readonly name: string;
  readonly reference: MapReference | undefined;
  readonly tipDiameter: Length | undefined;
  readonly points: readonly MeasuredPoint[];
  readonly refused: readonly RefusedLine[];
}

/** The columns that a file must have, in any order, with what each may hold in SI units. */
const columns = {
  flow: { title: "corrected flow", kind: "massFlow", span: [1e-4, 50] },
  pressureRatio: { title: "pressure ratio", kind: "ratio", span: [1.0001, 12] },
  efficiency: { title: "efficiency", kind: "fraction", span: [0.2, 0.95] },
  speed: { title: "wheel speed", kind: "rotationalSpeed", span: [10, 10_000] },
} as const satisfies Record<string, { title: string; kind: KindName; span: Span }>;

type ColumnKey = keyof typeof columns;

interface Column {
  readonly key: ColumnKey;
  readonly unit: Unit | undefined;
}

interface Header {
  readonly separator: string;
  readonly columns: readonly (Column | undefined)[];
}

/**
 * Reads measured points of a compressor from plain text [kg/s, –, rev/s]: lines "name: …", "reference: 298 K, 100 kPa" and,
 * if known, "wheel diameter: 76 mm"; then a header with units in brackets, as in
 * "corrected flow [kg/s], pressure ratio, efficiency [%], wheel speed [rev/min]", then a point a line.
 * Commas, semicolons or tabs separate; decimal commas may stand where commas do not separate. Lines that begin with #
 * are passed over. Every line that cannot be used is named with its number; the others are kept.
 *
 * @param text the file
 * @throws nothing; what is wrong is said in `refused`
 * @source definition
 * @example parseCompressorPoints("reference: 298 K, 100 kPa\ncorrected flow [kg/s], pressure ratio, efficiency [%], wheel speed [rev/min]\n0.3, 2.1, 72, 96000").points[0].speed // 1600
 */
export function parseCompressorPoints(text: string): CompressorPoints {
  const refused: RefusedLine[] = [];
  const points: MeasuredPoint[] = [];
  let name = "measured compressor";
  let reference: MapReference | undefined;
  let tipDiameter: Length | undefined;
  let header: Header | undefined;
  let headerRefused = false;
  text.split(/\r\n|\r|\n/).forEach((raw, i) => {
    const line = i + 1;
    const words = raw.trim();
    if (words === "" || words.startsWith("#")) return;
    try {
      const [, key = "", value = ""] = /^([A-Za-z ]+):\s*(.*)$/.exec(words) ?? [];
      if (key.toLowerCase() === "name") name = value;
      else if (key.toLowerCase() === "reference") reference = referenceOf(value);
      else if (key.toLowerCase() === "wheel diameter")
        tipDiameter = measured("length", value, "wheel diameter") as Length;
      else if (key !== "") throw new RangeError(`"${key}" is not known; known are name, reference and wheel diameter`);
      else if (header) points.push({ line, ...pointOf(words, header) });
      else if (startsLikeRow.test(words)) {
        // what is wrong with a header is told once, not with every row under it
        if (!headerRefused) throw new RangeError("there is no header above this line, with units in brackets");
      } else {
        headerRefused = true;
        header = headerOf(words);
      }
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      refused.push({ line, message: error.message });
    }
  });
  if (!reference)
    refused.push({
      line: 0,
      message: 'no line "reference: temperature, pressure"; a map without it is off by several per cent',
    });
  return { name, reference, tipDiameter, points, refused };
}

const startsLikeRow = /^[-+]?[.,]?\d/;

function referenceOf(value: string): MapReference {
  const [temperature = "", pressure = ""] = value.split(/[,;]\s*/);
  return {
    name: value,
    temperature: measured("temperature", temperature, "reference temperature") as Temperature,
    pressure: measured("pressure", pressure, "reference pressure") as Pressure,
  };
}

function measured(kind: KindName, text: string, what: string): number {
  const [, number = "", symbol = ""] = /^\s*([-+]?\d+(?:\.\d+)?)\s*(\S.*?)\s*$/.exec(text) ?? [];
  const unit = unitSpelled(kind, symbol);
  if (number === "" || !unit) throw new RangeError(`${what} is "${text}"; it must be a number with its unit`);
  const value = toSI(unit, number);
  if (!(value > 0)) throw new RangeError(`${what} is "${text}"; it must be above zero`);
  return value;
}

function headerOf(words: string): Header {
  const separator = words.includes(";") ? ";" : words.includes("\t") ? "\t" : ",";
  const found = words.split(separator).map((title) => columnOf(title));
  for (const [key, { title }] of Object.entries(columns)) {
    if (!found.some((column) => column?.key === key)) throw new RangeError(`the header has no column "${title}"`);
  }
  return { separator, columns: found };
}

/** Columns that nobody asked for are passed over. */
function columnOf(text: string): Column | undefined {
  const [, title = "", symbol] = /^\s*([^[(]*?)\s*(?:[[(]\s*(.*?)\s*[\])])?\s*$/.exec(text) ?? [];
  const key = (Object.keys(columns) as ColumnKey[]).find((each) => columns[each].title === title.toLowerCase());
  if (!key) return undefined;
  const { kind } = columns[key];
  if (kind === "ratio") return { key, unit: undefined };
  const unit = symbol === undefined ? undefined : unitSpelled(kind, symbol);
  if (!unit && (kind !== "fraction" || symbol !== undefined)) {
    const known = unitsOf(kind).map((each) => each.symbol).join(", ");
    throw new RangeError(
      `column "${title}" has ${symbol === undefined ? "no unit" : `"${symbol}", which is no unit of its kind`}; write one in brackets: ${known}`,
    );
  }
  return { key, unit };
}

function pointOf(words: string, header: Header): Omit<MeasuredPoint, "line"> {
  const cells = words.split(header.separator);
  const point: Record<ColumnKey, number> = { flow: 0, pressureRatio: 0, efficiency: 0, speed: 0 };
  header.columns.forEach((column, i) => {
    if (!column) return;
    const { title, span } = columns[column.key];
    const cell = (cells[i] ?? "").trim();
    const plain = header.separator === "," ? cell : cell.replace(",", ".");
    if (cell === "") throw new RangeError(`there is no ${title}`);
    if (!/^[-+]?\d+(\.\d+)?$/.test(plain)) throw new RangeError(`${title} is "${cell}"; it must be a number`);
    const { unit } = column;
    const value = unit ? toSI(unit, plain) : Number(plain);
    if (!(value >= span[0] && value <= span[1])) {
      const [least, most] = span.map((end) => Number((unit ? fromSI(unit, end) : end).toPrecision(5)));
      throw new RangeError(`${title} is ${cell}; it must be ${least} to ${most}${unit ? ` ${unit.symbol}` : ""}`);
    }
    point[column.key] = value;
  });
  return point;
}
