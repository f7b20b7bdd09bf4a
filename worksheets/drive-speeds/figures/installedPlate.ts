import { type Box, figures, type Group, leading, plate, px, reading, resized, spot, wrapped, write } from "../../drawing";
import type { FigureFrame, FigureUnits } from "../../sheet";
import type { Difference } from "../differences";
import { beltPath, type View } from "./beltPath";
import { panelLayout, viewInto } from "./panelLayout";
import { scaleBar } from "./scaleBar";
import { type Extent, extentOf, type ShownBelt } from "./shownBelt";

interface Front {
  readonly label: string;
  readonly beltRuns: readonly ShownBelt[];
}

/** Widths below which outlines and values stand under each other, how tall an outline may be, and the room around it, in CSS pixels. */
const abreastFrom = 560;
const tallest = 300;
const margin = { side: 12, above: 10 };
/** Where the names of what differs end and the values begin, as a share of the width. */
const valuesFrom = 0.36;

/** Outlines of every installation's belts to one scale, their cranks level, and below them what differs. */
export function drawInstalled(all: readonly Front[], differences: readonly Difference[], { width, units, listApart }: FigureFrame): SVGSVGElement {
  const { svg, ground } = plate(width, 1);
  const extents = levelled(all.map(({ beltRuns }) => extentOf(beltRuns)));
  const abreast = width < abreastFrom ? 1 : Math.min(all.length, 3);
  const { scale, rows } = panelLayout(extents, { width, abreast, side: margin.side, above: margin.above, tallest });
  const looks = looksOf(all);
  let foot = 0;
  for (const { panels, height } of rows) {
    const top = foot + (foot === 0 ? 34 : 56);
    for (const { at, left, width: across } of panels) {
      const { label, beltRuns } = all[at]!;
      const box = { x: left, y: top, width: across, height };
      write(ground, label, { x: left + 2, y: top - 12, look: "band" });
      drawOutline(ground, beltRuns, viewInto(extents[at]!, box, scale), looks);
      foot = Math.max(foot, legend(ground, beltRuns, { x: left + 2, y: top + height, width: across - 14, height: 0 }, { looks, units }));
    }
  }
  scaleBar(ground, { x: 2, y: foot + 20, scale, units });
  foot += 32;
  if (listApart) return resized(svg, width, foot);
  const listing = { all, differences, width, units, top: foot };
  return resized(svg, width, width < abreastFrom ? listStacked(ground, listing) : listAbreast(ground, listing));
}

/** The same height for all, from the highest top to the lowest foot: cranks come to stand level. */
function levelled(extents: readonly Extent[]): readonly Extent[] {
  const high = Math.max(...extents.map((each) => each.high));
  const low = Math.min(...extents.map((each) => each.high - each.height));
  return extents.map((each) => ({ ...each, high, height: high - low }));
}

/** Looks of belts by name, alike in every installation. */
function looksOf(all: readonly Front[]): ReadonlyMap<string, string> {
  const names = [...new Set(all.flatMap(({ beltRuns }) => beltRuns.map(({ name }) => name)))];
  const looks = ["plain", "dashed", "dotted", "chained"];
  return new Map(names.map((name, i) => [name, looks[i % looks.length]!]));
}

/** Belts and pulleys of an installation as lines: solid, dashed and dotted by belt. */
function drawOutline(group: Group, belts: readonly ShownBelt[], view: View, looks: ReadonlyMap<string, string>): void {
  for (const { name, layout, run, travel } of belts) {
    for (const { x, y, pitchRadius } of layout.pulleys) {
      group
        .append("circle")
        .attr("class", "plan-pulley")
        .attr("cx", px(view.x(x)))
        .attr("cy", px(view.y(y)))
        .attr("r", px(pitchRadius * view.scale));
    }
    const through = layout.pulleys.map(({ x, y }, at) => `${at === 0 ? "M" : "L"}${px(view.x(x))},${px(view.y(y))}`).join("");
    group
      .append("path")
      .attr("class", `plan-belt ${run ? looks.get(name)! : "past"}`)
      .attr("d", run ? beltPath(run, travel, view) : `${through}Z`);
  }
}

interface Legend {
  readonly looks: ReadonlyMap<string, string>;
  readonly units: FigureUnits;
}

/** Names the belts of an installation with a piece of their line and their length; gives back how far down it reached. */
function legend(group: Group, belts: readonly ShownBelt[], { x, y, width }: Box, { looks, units }: Legend): number {
  let low = y + 4;
  for (const { name, run } of belts) {
    low += leading + 2;
    group.append("path").attr("class", `plan-belt ${run ? looks.get(name)! : "past"}`).attr("d", `M${px(x)},${px(low - 4.5)}h26`);
    const length = run ? reading(units, "length", run.length, { digits: 4 }) : "■ cannot be laid";
    for (const [i, line] of wrapped(`${name}, ${length}`, width - 34).entries()) {
      if (i > 0) low += leading;
      write(group, line, { x: x + 34, y: low });
    }
  }
  return low;
}

interface Listing {
  readonly all: readonly Front[];
  readonly differences: readonly Difference[];
  readonly width: number;
  readonly units: FigureUnits;
  readonly top: number;
}

/** A value of a difference as it is read. */
function valueText({ kind }: Difference, value: string | number, units: FigureUnits): string {
  if (typeof value === "string") return value;
  return kind === undefined ? figures(value, 4) : reading(units, kind, value, { digits: 4 });
}

/** What differs in a column of names and one of values for each installation; gives back how far down it reached. */
function listAbreast(group: Group, { all, differences, width, units, top }: Listing): number {
  const left = Math.round(width * valuesFrom);
  const column = (width - left) / all.length;
  let low = top + 8;
  if (differences.length > 0) {
    low += leading;
    all.forEach(({ label }, i) => {
      for (const [k, line] of wrapped(label, column - 10).slice(0, 1).entries()) write(group, line, { x: left + i * column, y: low + k * leading, look: "mute" });
    });
    low += 6;
  }
  differences.forEach((each, row) => {
    const first = row === 0 || differences[row - 1]!.of !== each.of;
    if (first) group.append("path").attr("class", "grid").attr("d", `M0,${low + 0.5}H${width}`);
    const name = [...(first ? wrapped(each.of, left - 8, { bold: true }).map((line) => ({ line, look: "strong" })) : []), ...wrapped(each.what, left - 20).map((line) => ({ line, look: "mute" }))];
    const values = each.values.map((value) => wrapped(valueText(each, value, units), column - 10));
    // Values stand beside what they are values of, below the name of the belt or unit.
    const under = first ? name.length - wrapped(each.what, left - 20).length : 0;
    const lines = Math.max(name.length, under + Math.max(...values.map(({ length }) => length)));
    const from = low;
    spot(group, row, { x: 0, y: from + 1, width, height: lines * leading + 4 });
    name.forEach(({ line, look }, i) => {
      write(group, line, { x: look === "strong" ? 2 : 14, y: from + 15 + i * leading, look });
    });
    values.forEach((texts, i) => {
      texts.forEach((line, k) => {
        write(group, line, { x: left + i * column, y: from + 15 + (under + k) * leading });
      });
    });
    low += lines * leading + 4;
  });
  return low + 4;
}

/** The same in one column: what differs, and the values in the order of the installations. */
function listStacked(group: Group, { all, differences, width, units, top }: Listing): number {
  let low = top + 8;
  const room = width - 22;
  if (differences.length > 0) {
    for (const line of wrapped(`In this order: ${all.map(({ label }) => label).join(" · ")}`, width - 4)) {
      low += leading;
      write(group, line, { x: 2, y: low, look: "mute" });
    }
    low += 6;
  }
  differences.forEach((each, row) => {
    const first = row === 0 || differences[row - 1]!.of !== each.of;
    const lines = [
      ...(first ? wrapped(each.of, room, { bold: true }).map((text) => ({ text, look: "strong", x: 2 })) : []),
      ...wrapped(each.what, room).map((text) => ({ text, look: "mute", x: 12 })),
      ...wrapped(each.values.map((value) => valueText(each, value, units)).join(" · "), room - 10).map((text) => ({ text, look: "", x: 22 })),
    ];
    if (first) group.append("path").attr("class", "grid").attr("d", `M0,${low + 0.5}H${width}`);
    spot(group, row, { x: 0, y: low + 1, width, height: lines.length * leading + 4 });
    lines.forEach(({ text, look, x }, i) => {
      write(group, text, { x, y: low + 15 + i * leading, look });
    });
    low += lines.length * leading + 6;
  });
  return low + 4;
}
