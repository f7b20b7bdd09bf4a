import { scaleLog } from "d3";
import {
  axisBelow,
  axisRoom,
  figures,
  gathered,
  type Group,
  hatching,
  narrow,
  plate,
  px,
  spot,
  textWidth,
  widest,
  write,
} from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { type UnitSpeeds, type Verdict, verdictOf, verdictWords } from "./unitSpeeds";

/** Heights inside a row, in CSS pixels: bounds above the band, speeds below it. */
const row = { bounds: 13, band: 19, thick: 16, speeds: 50, pitch: 68 };

/** One row for each unit on a common log scale of speed: what it allows as a band, what it runs at as a line on it. */
export function drawWindows(all: readonly UnitSpeeds[], { width, units }: FigureFrame): SVGSVGElement {
  const stacked = width < narrow + 60;
  const shown = (speed: number) => units.number("rotationalSpeed", speed);
  const text = (speed: number) => figures(shown(speed), 4);
  const verdicts = all.map((unit) => verdictWords(verdictOf(unit))).map((words) => (words === "" ? "" : `■ ${words}`));
  const head = stacked ? 20 : 0;
  const pitch = row.pitch + head;
  const left = stacked ? 26 : widest([...all.map(({ unit }) => unit), ...verdicts], { bold: true }) + 20;
  const right = width - 30;
  const speeds = all
    .flatMap(({ lowest, highest, burst, at }) => [at.idle, at.overspeed, lowest, highest, burst])
    .filter((speed) => speed > 0);
  const scale = scaleLog([shown(Math.min(...speeds)) / 1.12, shown(Math.max(...speeds)) * 1.06], [left, right]);
  const at = (speed: number) => scale(shown(speed));
  const top = 26 + legendRoom(width);
  const bottom = top + all.length * pitch;

  const { svg, ground } = plate(width, bottom + axisRoom);
  write(ground, "Shaft speeds", { x: 2, y: 16, look: "band" });
  drawLegend(ground, width);
  axisBelow(ground, {
    at: scale,
    ticks: roundSpeeds(scale.domain() as [number, number]),
    ends: [left, right],
    across: bottom,
    grid: top,
    title: `Shaft speed, ${units.unit("rotationalSpeed")}`,
  });

  all.forEach((each, i) => {
    const y = top + i * pitch + head;
    const verdict = verdictOf(each);
    spot(ground, i, { x: 0, y: top + i * pitch, width, height: pitch });
    drawBand(ground, { each, mark: i, at, y, ends: [left, right] });
    drawLine(ground, { each, verdict, at, y: y + row.band + row.thick / 2 });

    const bounds = [each.lowest, each.highest, each.burst].filter((speed) => speed > 0);
    writeSpeeds(ground, bounds.map((speed) => ({ speed, look: "mute" })), { at, text, y: y + row.bounds, width });
    const run = [
      { speed: each.at.idle, look: verdict.slow ? "past" : "" },
      { speed: each.at.rated, look: "strong" },
      { speed: each.at.maximum, look: verdict.fast ? "past" : "" },
      // Overspeed is read against the burst speed, where there is one.
      ...(each.burst > 0 ? [{ speed: each.at.overspeed, look: verdict.bursting ? "past" : "mute" }] : []),
    ];
    writeSpeeds(ground, run, { at, text, y: y + row.speeds, width });
    const middle = y + row.band + row.thick / 2;
    write(ground, each.unit, { x: 2, y: stacked ? y - 6 : middle - 3, look: "strong" });
    if (verdicts[i] === "") return;
    const place = stacked ? { x: width - 2, y: y - 6, anchor: "end" as const } : { x: 2, y: middle + 14 };
    write(ground, verdicts[i]!, { ...place, look: "past" });
  });
  return svg;
}

interface Scale {
  readonly at: (speed: number) => number;
  readonly text: (speed: number) => string;
  readonly y: number;
  readonly width: number;
}

/** Speeds in figures, each as near to its place as leaves them apart. */
function writeSpeeds(
  group: Group,
  speeds: readonly { readonly speed: number; readonly look: string }[],
  { at, text, y, width }: Scale,
): void {
  const wanted = speeds.map(({ speed }) => ({ at: at(speed), size: textWidth(text(speed), { bold: true }) }));
  gathered(wanted, [2, width - 2], 8).forEach((x, i) => {
    write(group, text(speeds[i]!.speed), { x, y, anchor: "middle", look: speeds[i]!.look });
  });
}

interface Band {
  readonly each: UnitSpeeds;
  readonly mark: number;
  readonly at: (speed: number) => number;
  readonly y: number;
  readonly ends: readonly [number, number];
}

/** What a unit allows for long, and hatched what it stands until it may come apart. */
function drawBand(group: Group, { each, mark, at, y, ends: [left, right] }: Band): void {
  const { lowest, highest, burst } = each;
  const low = lowest > 0 ? at(lowest) : left;
  const high = highest > 0 ? at(highest) : burst > 0 ? at(burst) : right;
  const [top, thick] = [y + row.band, row.thick];
  group
    .append("rect")
    .attr("class", "wash-1")
    .attr("data-row", mark)
    .attr("x", px(low))
    .attr("y", top)
    .attr("width", px(Math.max(0, high - low)))
    .attr("height", thick);
  const tick = (x: number) => `M${px(x)},${top - 3}v${thick + 6}`;
  const ends = [...(lowest > 0 ? [low] : []), ...(highest > 0 ? [high] : [])].map(tick).join("");
  if (ends !== "") group.append("path").attr("class", "outline").attr("d", ends);
  if (burst <= 0) return;
  const last = at(burst);
  if (last > high)
    group
      .append("path")
      .attr("class", "hatch")
      .attr("d", hatching({ x: high, y: top, width: last - high, height: thick }, 5));
  group
    .append("path")
    .attr("class", "outline thick")
    .attr("d", `${tick(last)}${tick(last + 4)}`);
}

interface Line {
  readonly each: UnitSpeeds;
  readonly verdict: Verdict;
  readonly at: (speed: number) => number;
  readonly y: number;
}

/** What a unit runs at, from idle to the highest engine speed, and dotted on to overspeed. */
function drawLine(group: Group, { each: { at: speeds }, verdict, at, y }: Line): void {
  const [idle, cruise, rated, maximum, overspeed] = [
    speeds.idle,
    speeds.cruise,
    speeds.rated,
    speeds.maximum,
    speeds.overspeed,
  ].map(at) as [number, number, number, number, number];
  group
    .append("path")
    .attr("class", "outline thick")
    .attr("d", `M${px(idle)},${y}H${px(maximum)}M${px(cruise)},${y - 4}v8`);
  if (overspeed > maximum) group.append("path").attr("class", "over").attr("d", `M${px(maximum)},${y}H${px(overspeed)}`);
  mark(group, verdict.slow ? "square" : "ring", idle, y);
  mark(group, "dot", rated, y);
  mark(group, verdict.fast ? "square" : "bar", maximum, y);
  if (overspeed > maximum) mark(group, verdict.bursting ? "square" : "diamond", overspeed, y);
}

type Shape = "ring" | "dot" | "bar" | "diamond" | "square" | "tick";

function mark(group: Group, shape: Shape, x: number, y: number): void {
  const at = px(x);
  switch (shape) {
    case "ring":
    case "dot":
      group
        .append("circle")
        .attr("class", shape === "ring" ? "ring" : "dark")
        .attr("cx", at)
        .attr("cy", y)
        .attr("r", 4.5);
      return;
    case "square":
      group.append("path").attr("class", "mark-past").attr("d", `M${px(x - 5)},${y - 5}h10v10h-10Z`);
      return;
    case "diamond":
      group.append("path").attr("class", "ring").attr("d", `M${px(x - 5)},${y}l5,-5l5,5l-5,5Z`);
      return;
    default:
      group
        .append("path")
        .attr("class", "outline thick")
        .attr("d", shape === "bar" ? `M${at},${y - 6}v12` : `M${at},${y - 4}v8`);
  }
}

const legend: readonly (readonly [Shape, string])[] = [
  ["ring", "idle"],
  ["tick", "cruise"],
  ["dot", "promised"],
  ["bar", "highest"],
  ["diamond", "overspeed"],
];

/** Ends of the legend's entries along their line; the line breaks where the width ends. */
function legendPlaces(width: number): readonly { readonly x: number; readonly line: number }[] {
  let [x, line] = [10, 0];
  return legend.map(([, word]) => {
    const size = textWidth(word) + 32;
    if (x + size > width && x > 10) [x, line] = [10, line + 1];
    const place = { x, line };
    x += size;
    return place;
  });
}

function legendRoom(width: number): number {
  return 20 * (legendPlaces(width).at(-1)!.line + 1);
}

function drawLegend(group: Group, width: number): void {
  legendPlaces(width).forEach(({ x, line }, i) => {
    const [shape, word] = legend[i]!;
    const y = 34 + 20 * line;
    mark(group, shape, x, y);
    write(group, word, { x: x + 10, y: y + 4.5, look: "mute" });
  });
}

/** Speeds of one, two or five with zeros inside a span. */
function roundSpeeds([low, high]: readonly [number, number]): readonly number[] {
  const ticks: number[] = [];
  for (let ten = 10 ** Math.floor(Math.log10(low)); ten <= high; ten *= 10) {
    for (const lead of [1, 2, 5]) if (lead * ten >= low && lead * ten <= high) ticks.push(lead * ten);
  }
  return ticks;
}
