import { scaleLinear } from "d3";
import { type Group, leading, plate, px, resized, spot, widest, wrapped, write, writeLines } from "../../drawing";
import type { FigureFrame, FigureUnits } from "../../sheet";
import { type ArrangementRow, heatToCarry, specificFuel } from "./arrangementRows";
import { inSentence } from "./runWords";

/** One thing that is compared: a bar for each arrangement. */
interface Measure {
  readonly title: string;
  readonly values: readonly (number | undefined)[];
  readonly text: (value: number) => string;
  /** A level that is asked for. */
  readonly asked?: number;
}

const thick = 14;

const askedWords = "dashed: promised";

/** What is compared, in the units shown. */
function measures(rows: readonly ArrangementRow[], ratedPower: number, units: FigureUnits): readonly Measure[] {
  const at = (read: (point: NonNullable<ArrangementRow["at"]>) => number) => rows.map((row) => row.at && read(row.at));
  return [
    {
      title: "Most power",
      values: rows.map(({ most }) => most),
      text: (value) => units.text("power", value),
      asked: ratedPower,
    },
    {
      title: "Exhaust back pressure",
      values: at(({ backPressure }) => backPressure),
      text: (value) => units.text("pressure", value, "boost"),
    },
    { title: "Fuel for the work", values: at(specificFuel), text: (value) => units.text("specificFuelConsumption", value) },
    { title: "Heat to walls and coolers", values: at(heatToCarry), text: (value) => units.text("power", value) },
  ];
}

/** What stands under an arrangement's name: what stops it, and the load at which it is compared. */
function words({ most, carries, stopped, at }: ArrangementRow, units: FigureUnits): string {
  if (most === undefined || !at) return `■ gives nothing: ${stopped(units)}`;
  if (carries) return `carries the promise; met first: ${inSentence(stopped(units))}`;
  return `■ stopped by ${inSentence(stopped(units))} at ${units.text("power", most)}`;
}

/** Three ways of charging the same engine, side by side. */
export function arrangementsPlate(
  rows: readonly ArrangementRow[],
  ratedPower: number,
  { width, units }: FigureFrame,
): SVGSVGElement {
  const { svg, ground } = plate(width, 10);
  const all = measures(rows, ratedPower, units);
  const note = `Power: the most that each gives. The rest: with the promised ${units.text("power", ratedPower)} on it, or with the most it gives where that is less.`;
  const lines = wrapped(note, width - 4);
  const below = (width < 620 ? stacked : sideBySide)(ground, rows, all, width, units) + 20;
  writeLines(ground, lines, { x: 2, y: below, look: ["mute"] });
  return resized(svg, width, below + (lines.length - 1) * leading + 8);
}

/** A row for each arrangement, a column for each measure. */
function sideBySide(
  group: Group,
  rows: readonly ArrangementRow[],
  all: readonly Measure[],
  width: number,
  units: FigureUnits,
): number {
  const names = Math.round(0.26 * width);
  const column = (width - names) / all.length;
  const told = rows.map((row) => wrapped(words(row, units), names - 22, { bold: !row.carries }));
  const heights = told.map(({ length }) => Math.max(56, 26 + length * leading + 12));
  const head = 52;
  const tops = heights.map((_, i) => head + heights.slice(0, i).reduce((sum, each) => sum + each, 0));
  const foot = head + heights.reduce((sum, each) => sum + each, 0);
  rows.forEach((row, i) => {
    const top = tops[i]!;
    spot(group, i, { x: 0, y: top, width, height: heights[i]! });
    group.append("path").attr("class", "grid").attr("d", `M0,${px(top)}H${width}`);
    write(group, capital(row.name), { x: 2, y: top + 20, look: "strong" });
    writeLines(group, told[i]!, { x: 2, y: top + 20 + leading, look: [row.carries ? "mute" : "past"] });
  });
  group.append("path").attr("class", "grid").attr("d", `M0,${px(foot)}H${width}`);
  all.forEach((measure, k) => {
    const left = names + k * column;
    writeLines(group, wrapped(measure.title, column - 14, { size: 15 }), { x: left, y: 16, look: ["band"] });
    if (measure.asked !== undefined) write(group, askedWords, { x: left, y: 16 + leading, look: "mute" });
    bars(group, measure, { left, right: left + column - 14, tops: tops.map((top) => top + 8), ends: [head, foot] });
  });
  return foot;
}

/** A block for each measure, in it a row for each arrangement; what stops each of them stands above. */
function stacked(
  group: Group,
  rows: readonly ArrangementRow[],
  all: readonly Measure[],
  width: number,
  units: FigureUnits,
): number {
  let y = 14;
  rows.forEach((row, i) => {
    const told = wrapped(words(row, units), width - 4, { bold: !row.carries });
    spot(group, i, { x: 0, y: y - 12, width, height: (told.length + 1) * leading });
    write(group, capital(row.name), { x: 2, y, look: "strong" });
    writeLines(group, told, { x: 2, y: y + leading, look: [row.carries ? "mute" : "past"] });
    y += (told.length + 1) * leading + 8;
  });
  const names = Math.ceil(widest(rows.map(({ name }) => capital(name)))) + 12;
  for (const measure of all) {
    y += 16;
    write(group, measure.title, { x: 2, y, look: "band" });
    if (measure.asked !== undefined) write(group, askedWords, { x: width - 4, y: y - 2, anchor: "end", look: "mute" });
    const tops = rows.map((_, i) => y + 10 + i * 38);
    rows.forEach((row, i) => {
      write(group, capital(row.name), { x: 2, y: tops[i]! + 12, look: "mute" });
    });
    const foot = tops.at(-1)! + 36;
    bars(group, measure, { left: names, right: width - 4, tops, ends: [y + 6, foot] });
    y = foot + 8;
  }
  return y - 8;
}

interface Place {
  readonly left: number;
  readonly right: number;
  /** Of each bar. */
  readonly tops: readonly number[];
  /** Ends of the line from which they grow. */
  readonly ends: readonly [number, number];
}

/** A measure's bars from zero, each with its value beneath; and the level that is asked for. */
function bars(group: Group, { values, text, asked }: Measure, { left, right, tops, ends }: Place): void {
  const known = values.filter((value) => value !== undefined);
  const x = scaleLinear([0, Math.max(...known, asked ?? 0, Number.MIN_VALUE)], [left, right]);
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);
  values.forEach((value, i) => {
    const top = tops[i]!;
    if (value === undefined) {
      write(group, "–", { x: left + 6, y: top + 12, look: "mute" });
      return;
    }
    const short = asked !== undefined && value < asked;
    path(short ? "wash" : "solid", `M${px(left)},${px(top)}H${px(x(value))}v${thick}H${px(left)}Z`);
    if (short) path("outline hair", `M${px(left)},${px(top)}H${px(x(value))}v${thick}H${px(left)}Z`);
    write(group, text(value), { x: left + 3, y: top + thick + 14, look: "strong" });
  });
  path("axis", `M${px(left)},${px(ends[0])}V${px(ends[1])}`);
  if (asked !== undefined) path("limit", `M${px(x(asked))},${px(ends[0])}V${px(ends[1])}`);
}

function capital(name: string): string {
  return name === "" ? name : name[0]!.toUpperCase() + name.slice(1);
}
