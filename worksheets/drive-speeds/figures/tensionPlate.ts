import { isToothed } from "../../../lib/drive";
import {
  arrowHead,
  type Box,
  clearSpot,
  type Disc,
  figures,
  type Group,
  leading,
  plate,
  px,
  resized,
  type Segment,
  spotAt,
  textWidth,
  wrapped,
  write,
} from "../../drawing";
import type { FigureFrame } from "../../sheet";
import type { FrontBeltLoad } from "../frontBeltLoad";
import { beltPath, type View } from "./beltPath";
import { panelLayout, viewInto } from "./panelLayout";
import { ribbon, ribbonEdge } from "./ribbon";
import { roundBelow } from "./scaleBar";
import { extentOf, type ShownBelt } from "./shownBelt";

/** Widest ribbon and longest arrow, in CSS pixels. */
const widestRibbon = { wide: 30, slim: 22 };
const longestArrow = { wide: 64, slim: 46 };
/** Room around a run. */
const margin = { wide: 92, slim: 62, y: 56 };
const sideBySide = 560;
const tallest = 400;

interface Scales {
  /** CSS pixels for each newton, of ribbons and of arrows. */
  readonly ribbon: number;
  readonly arrow: number;
}

/** Every belt that can be laid, with its tension as a ribbon on its back and the pull on each shaft as an arrow. */
export function drawTensions(
  beltRuns: readonly ShownBelt[],
  loads: readonly FrontBeltLoad[],
  { width, units, slim }: FigureFrame & { readonly slim: boolean },
): SVGSVGElement {
  const laid = beltRuns.flatMap((belt) => {
    const load = loads.find(({ mark }) => mark === belt.mark);
    return belt.run && load && load.spans.length > 0 ? [{ belt, run: belt.run, load }] : [];
  });
  const { svg, ground } = plate(width, 1);
  write(ground, "Tensions and shaft loads", { x: 2, y: 16, look: "band" });
  let foot = 20;
  for (const line of wrapped("Ribbons: tension at the promised speed, dotted at the peak. Arrows: pull on the shaft.", width - 8)) {
    foot += leading;
    write(ground, line, { x: 2, y: foot - 2, look: "mute" });
  }
  const size = slim ? "slim" : "wide";
  const most = Math.max(1, ...laid.flatMap(({ load }) => load.spans.map(({ tension, peak }) => Math.max(tension, peak))));
  const pulls = laid.flatMap(({ load }) => load.pulleys.map(({ hub, hubAtRest }) => hub?.magnitude ?? hubAtRest));
  const scales = { ribbon: widestRibbon[size] / most, arrow: longestArrow[size] / Math.max(1, ...pulls) };
  const extents = laid.map(({ belt }) => extentOf([belt]));
  const { scale, rows } = panelLayout(extents, {
    width,
    abreast: width >= sideBySide ? 2 : 1,
    side: margin[size],
    above: margin.y,
    tallest,
  });
  const firsts = firstRows(loads);
  for (const { panels, height } of rows) {
    const top = foot + 40;
    for (const { at, left, width: across } of panels) {
      const { belt, run, load } = laid[at]!;
      const bounds: Box = { x: left, y: top, width: across, height };
      const view = viewInto(extents[at]!, bounds, scale);
      write(ground, belt.name, { x: left + 2, y: top - 10, look: "band" });
      drawLoaded(ground, { belt, run, load, view, bounds, scales, mark: firsts.get(belt.mark)!, units });
    }
    foot = top + height;
  }
  for (const { name, fault } of beltRuns) {
    if (fault === undefined) continue;
    for (const line of wrapped(`■ ${name}: ${units.refusal(fault)}`, width - 8, { bold: true })) {
      foot += leading;
      write(ground, line, { x: 2, y: foot, look: "past" });
    }
  }
  forceBar(ground, { x: 2, y: foot + 16, perNewton: scales.ribbon, units });
  return resized(svg, width, foot + 34);
}

interface Loaded {
  readonly belt: ShownBelt;
  readonly run: NonNullable<ShownBelt["run"]>;
  readonly load: FrontBeltLoad;
  readonly view: View;
  readonly bounds: Box;
  readonly scales: Scales;
  readonly mark: number;
  readonly units: FigureFrame["units"];
}

function drawLoaded(group: Group, { belt, run, load, view, bounds, scales, mark, units }: Loaded): void {
  const { travel } = belt;
  const widthsOf = (of: (span: FrontBeltLoad["spans"][number]) => number) =>
    load.spans.map((span) => Math.max(0, of(span)) * scales.ribbon);
  const now = { run, travel, view, widths: widthsOf(({ tension }) => tension) };
  const parts = ribbon(now);
  for (const arc of parts.arcs) group.append("path").attr("class", "tension").attr("d", arc);
  for (const [i, span] of parts.spans.entries()) {
    group.append("path").attr("class", "tension").attr("data-row", mark + i).attr("d", span);
  }
  group
    .append("path")
    .attr("class", "dotted")
    .attr("d", ribbonEdge({ ...now, widths: widthsOf(({ peak }) => peak) }));
  for (const { x, y, pitchRadius } of run.pulleys) {
    group
      .append("circle")
      .attr("class", "rim")
      .attr("cx", px(view.x(x)))
      .attr("cy", px(view.y(y)))
      .attr("r", px(pitchRadius * view.scale));
  }
  group
    .append("path")
    .attr("class", "belt")
    .attr("stroke-width", isToothed(belt.section) ? 2.5 : 2)
    .attr("d", beltPath(run, travel, view));

  const tips: Box[] = [];
  run.pulleys.forEach((pulley, i) => {
    const [cx, cy] = [view.x(pulley.x), view.y(pulley.y)];
    const { hub } = load.pulleys[i]!;
    spotAt(group, mark + load.spans.length + i, cx, cy, 8);
    group.append("circle").attr("class", "hub").attr("cx", px(cx)).attr("cy", px(cy)).attr("r", 3);
    if (!hub || hub.magnitude * scales.arrow < 6) return;
    const direction = Math.atan2(-hub.y, hub.x);
    const length = hub.magnitude * scales.arrow;
    const [tx, ty] = [cx + length * Math.cos(direction), cy + length * Math.sin(direction)];
    group
      .append("path")
      .attr("class", "outline thick")
      .attr("d", `M${px(cx)},${px(cy)}L${px(tx - 6 * Math.cos(direction))},${px(ty - 6 * Math.sin(direction))}`);
    group.append("path").attr("class", "dark").attr("d", arrowHead(tx, ty, direction, 10));
    tips.push({ x: tx - 6, y: ty - 6, width: 12, height: 12 });
  });
  labelSpans(group, { load, run, view, bounds, tips, widths: now.widths, units });
}

interface Labelled extends Pick<Loaded, "load" | "run" | "view" | "bounds" | "units"> {
  readonly tips: readonly Box[];
  readonly widths: readonly number[];
}

/** The tension of each span beside its middle, and of each pulley its name, where there is room. */
function labelSpans(group: Group, { load, run, view, bounds, tips, widths, units }: Labelled): void {
  const discs: readonly Disc[] = run.pulleys.map(({ x, y, pitchRadius, contact }, i) => ({
    x: view.x(x),
    y: view.y(y),
    radius: pitchRadius * view.scale + (contact === "toothed" ? Math.max(widths[i]!, widths.at(i - 1)!) : 0) + 2,
  }));
  const segments = run.spans.map(({ start, end }): Segment => [view.x(start.x), view.y(start.y), view.x(end.x), view.y(end.y)]);
  const boxes: Box[] = [...tips];
  const middle = {
    x: run.pulleys.reduce((sum, { x }) => sum + view.x(x), 0) / run.pulleys.length,
    y: run.pulleys.reduce((sum, { y }) => sum + view.y(y), 0) / run.pulleys.length,
  };
  run.spans.forEach(({ start, end, direction }, i) => {
    const { tension } = load.spans[i]!;
    const words = tension > load.centrifugal ? "" : "■ ";
    const text = `${words}${figures(units.number("force", tension), 3)} ${units.unit("force")}`;
    const at: Disc = {
      x: view.x((start.x + end.x) / 2),
      y: view.y((start.y + end.y) / 2),
      radius: widths[i]! + 1,
    };
    const outward = Math.cos(-direction - Math.PI / 2) * (at.x - middle.x) + Math.sin(-direction - Math.PI / 2) * (at.y - middle.y) > 0;
    const aside = -direction + (outward ? -1 : 1) * (Math.PI / 2);
    const size = { width: textWidth(text, { bold: true }), height: leading };
    const spot = clearSpot(at, size, aside, { discs, segments, boxes, bounds });
    if (!spot) return;
    boxes.push(spot);
    write(group, text, { x: spot.x + spot.width / 2, y: spot.y + 13, anchor: "middle", look: words ? "past" : "strong" });
  });
  run.pulleys.forEach(({ name }, i) => {
    const size = { width: textWidth(name), height: leading };
    const own = discs[i]!;
    const spot = clearSpot(own, size, Math.atan2(own.y - middle.y, own.x - middle.x), { discs, segments, boxes, bounds });
    if (!spot || spot.away > 36) return;
    boxes.push(spot);
    write(group, name, { x: spot.x + spot.width / 2, y: spot.y + 13, anchor: "middle", look: "mute" });
  });
}

/** Row of the numbers with each belt's first span, by the belt's letter. */
function firstRows(loads: readonly FrontBeltLoad[]): ReadonlyMap<string, number> {
  let next = 0;
  return new Map(
    loads.map(({ mark, spans, pulleys }) => {
      const first = next;
      next += spans.length + pulleys.length;
      return [mark, first];
    }),
  );
}

/** A ribbon as wide as a round tension. */
function forceBar(group: Group, { x, y, perNewton, units }: { x: number; y: number; perNewton: number; units: FigureFrame["units"] }): void {
  const unit = perNewton / units.number("force", 1);
  const force = roundBelow(26 / unit);
  const thick = force * unit;
  group.append("rect").attr("class", "tension").attr("x", x).attr("y", px(y - thick / 2)).attr("width", 46).attr("height", px(thick));
  write(group, `${figures(force, 6)} ${units.unit("force")}`, { x: x + 54, y: y + 4.5, look: "mute" });
}
