import { type ScaleLogarithmic, scaleLog } from "d3";
import {
  axisBelow,
  axisRoom,
  figures,
  type Group,
  leading,
  narrow,
  plate,
  px,
  spot,
  textWidth,
  widest,
  wrapped,
  write,
  writeLines,
} from "../../drawing";
import type { FigureFrame } from "../../sheet";

/** A part that grows hot when something fails. */
export interface FailingPart {
  readonly name: string;
  /** As usual, in the end, and allowed [K]; the end is infinite where the heat goes nowhere. */
  readonly usual: number;
  readonly reached: number;
  readonly limit: number;
  /** Time to the limit [s]; undefined if it is not reached. */
  readonly time: number | undefined;
}

/** A failure and what comes of it. */
export interface Failure {
  readonly name: string;
  readonly note: string;
  /** The parts that meet their limits first stand first. */
  readonly parts: readonly FailingPart[];
}

interface Failures extends FigureFrame {
  readonly failures: readonly Failure[];
}

interface Columns {
  /** Right edges of the temperatures' columns; none where they stand in a line of words. */
  readonly rights: readonly number[];
  readonly x: ScaleLogarithmic<number, number>;
  readonly pitch: number;
  readonly width: number;
  readonly shown: (temperature: number) => string;
}

/** Shortest time that the axis can show [min]. */
const least = 0.05;
const headings = ["as usual", "comes to", "limit"] as const;
const unmet = "stays below its limit";

/** A time as people say it. */
export function timeText(seconds: number): string {
  if (seconds < 1) return "at once";
  if (seconds < 90) return `${figures(seconds, 2)} s`;
  return seconds < 5400 ? `${figures(seconds / 60, 2)} min` : `${figures(seconds / 3600, 2)} h`;
}

/** For each failure its parts in lines: temperatures, and a bar along a common axis of time up to the limit. */
export function drawFailures({ failures, width, units }: Failures): SVGSVGElement {
  const above = width < narrow + 100;
  const shown = (temperature: number) =>
    Number.isFinite(temperature) ? figures(units.number("temperature", temperature), 3) : "no end";
  const parts = failures.flatMap((failure) => failure.parts);
  const temperatures = ({ usual, reached, limit }: FailingPart) => [usual, reached, limit].map(shown);
  const names = widest(parts.map(({ name }) => name));
  const sizes = headings.map((heading, i) =>
    widest([heading, ...parts.map((part) => temperatures(part)[i]!)], { bold: true }),
  );
  const rights = above
    ? []
    : sizes.map((_, i) => names + sizes.slice(0, i + 1).reduce((sum, own) => sum + own + 18, 0));
  const left = above ? 4 : rights.at(-1)! + 24;
  const times = parts.flatMap(({ time }) => (time === undefined ? [] : [Math.max(time / 60, least)]));
  const x = scaleLog([Math.min(0.5, ...times) / 1.6, Math.max(30, ...times) * 3], [left, width - 8]);
  const columns: Columns = { rights, x, pitch: above ? 40 : 24, width, shown };
  const top = above ? 40 : 52;

  // Notes stand beside the names where all of them fit, else below.
  const under =
    above || failures.some(({ name, note }) => textWidth(name, { bold: true }) + 10 + textWidth(note) > width);
  let y = top;
  const blocks = failures.map(({ name, note, parts: own }) => {
    const notes = wrapped(note, width - 4).filter((line) => line !== "");
    const block = { name, notes: under ? notes : [], from: y, rows: y + 26 + (under ? notes.length * leading : 0) };
    y = block.rows + own.length * columns.pitch + 10;
    return block;
  });
  const bottom = y;
  const { svg, ground } = plate(width, bottom + axisRoom);
  write(ground, `Temperatures, ${units.unit("temperature")}`, { x: 2, y: 16, look: "band" });
  axisBelow(ground, {
    at: x,
    ticks: roundTimes(x.domain() as [number, number]),
    ends: [left, width - 8],
    across: bottom,
    grid: top - 4,
    title: "Minutes to the limit",
  });
  headings.forEach((heading, i) => {
    if (!above) write(ground, heading, { x: rights[i]!, y: top - 14, anchor: "end", look: "mute" });
  });
  ground
    .append("path")
    .attr("class", "grid")
    .attr(
      "d",
      blocks
        .slice(1)
        .map(({ from }) => `M0,${px(from)}H${width}`)
        .join(""),
    );
  let row = 0;
  blocks.forEach(({ name, notes, from, rows }, i) => {
    write(ground, name, { x: 2, y: from + 19, look: "strong" });
    if (under) writeLines(ground, notes, { x: 2, y: from + 19 + leading, look: ["mute"] });
    else write(ground, failures[i]!.note, { x: 2 + textWidth(name, { bold: true }) + 8, y: from + 19, look: "mute" });
    failures[i]!.parts.forEach((part, k) => {
      drawPart(ground, part, rows + k * columns.pitch, row, columns);
      row += 1;
    });
  });
  return svg;
}

function drawPart(
  group: Group,
  part: FailingPart,
  y: number,
  row: number,
  { rights, x, pitch, width, shown }: Columns,
): void {
  const past = part.time !== undefined;
  spot(group, row, { x: 0, y: y + 1, width, height: pitch - 2 });
  if (rights.length > 0) {
    write(group, part.name, { x: 2, y: y + 16 });
    [part.usual, part.reached, part.limit].forEach((temperature, i) => {
      const look = i === 1 ? (past ? "past" : "strong") : "mute";
      write(group, shown(temperature), { x: rights[i]!, y: y + 16, anchor: "end", look });
    });
    bar(group, part, y + 12, x, width);
    return;
  }
  const words = `${part.name}: ${shown(part.usual)} to ${shown(part.reached)}, limit ${shown(part.limit)}`;
  write(group, words, { x: 2, y: y + 14, look: "mute" });
  bar(group, part, y + 28, x, width);
}

function bar(group: Group, { time, usual, limit }: FailingPart, y: number, x: Columns["x"], width: number): void {
  const [left, right] = x.range() as [number, number];
  if (time === undefined) {
    group
      .append("path")
      .attr("class", "dotted")
      .attr("d", `M${px(left)},${px(y)}H${px(Math.max(left, right - textWidth(unmet) - 10))}`);
    write(group, unmet, { x: right, y: y + 4.5, anchor: "end", look: "mute" });
    return;
  }
  const end = x(Math.max(time / 60, least));
  group
    .append("path")
    .attr("class", "outline thick")
    .attr("d", `M${px(left)},${px(y)}H${px(end)}`);
  group
    .append("rect")
    .attr("class", "mark-past")
    .attr("x", px(end - 5))
    .attr("y", px(y - 5))
    .attr("width", 10)
    .attr("height", 10);
  const words = usual > limit ? "past already" : timeText(time);
  const after = end + 12 + textWidth(words, { bold: true }) <= width;
  write(group, words, { x: after ? end + 11 : end - 11, y: y + 4.5, anchor: after ? "start" : "end", look: "past" });
}

/** Times of one, two or five with zeros inside a span. */
function roundTimes([low, high]: readonly [number, number]): readonly number[] {
  const ticks: number[] = [];
  for (let ten = 10 ** Math.floor(Math.log10(low)); ten <= high; ten *= 10) {
    for (const lead of [1, 2, 5])
      if (lead * ten >= low && lead * ten <= high) ticks.push(Number((lead * ten).toPrecision(6)));
  }
  return ticks;
}
