import { scaleLinear } from "d3";
import {
  axisBelow,
  axisLeft,
  dimension,
  figures,
  type Group,
  px,
  spot,
  spotAt,
  textWidth,
  widest,
  write,
  writeLines,
} from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { RateCorner } from "./rateCorners";

interface RateBand {
  readonly corners: readonly RateCorner[];
  readonly angle: number;
  readonly window: number;
  /** Flow of the open nozzle. */
  readonly flow: number;
  readonly volume: number;
  readonly units: FigureUnits;
  readonly width: number;
  readonly top: number;
  readonly height: number;
}

/** Rate of injection over crank angle, from the start of injection, with the allowed window behind it. */
export function rateBand(group: Group, band: RateBand): void {
  const { corners, angle, window, flow, volume, units, width, top, height } = band;
  const bottom = top + height;
  const rate = (corner: number) => units.number("volumeFlow", corner * flow, "small");
  const y = scaleLinear([0, rate(1) * 1.28], [bottom, top]);
  const ticks = y.ticks(4);
  const left = widest(ticks.map((tick) => figures(tick, 6))) + 12;
  const right = width - 14;
  const crank = (radians: number) => units.number("crankAngle", radians);
  const x = scaleLinear([0, crank(Math.max(angle, window)) * 1.12], [left, right]);
  const at = (radians: number) => x(crank(radians));

  write(group, `Rate of injection, ${units.unit("volumeFlow", "small")}`, { x: 2, y: 16, look: "band" });
  group
    .append("rect")
    .attr("class", "wash")
    .attr("data-row", corners.length + 2)
    .attr("x", px(at(0)))
    .attr("y", top)
    .attr("width", px(at(window) - at(0)))
    .attr("height", height);
  axisLeft(group, { at: y, ticks, ends: [top, bottom], across: left, grid: right });
  axisBelow(group, {
    at: x,
    ticks: x.ticks(Math.max(4, Math.floor((right - left) / 70))),
    ends: [left, right],
    across: bottom,
    title: `Crank angle after start of injection, °`,
  });
  const outline = corners
    .map((corner, i) => `${i === 0 ? "M" : "L"}${px(at(corner.angle))},${px(y(rate(corner.rate)))}`)
    .join("");
  group.append("path").attr("class", "wash-1").attr("data-row", corners.length).attr("d", `${outline}Z`);
  group.append("path").attr("class", "line-1").attr("d", outline);
  corners.forEach((corner, row) => {
    spotAt(group, row, at(corner.angle), y(rate(corner.rate)));
  });
  const end = at(window);
  group
    .append("path")
    .attr("class", "limit")
    .attr("d", `M${px(end)},${bottom}V${top - 8}`);
  const middle = (at(0) + at(angle)) / 2;
  const foot = (bottom + y(rate(corners[1]!.rate))) / 2;
  const [amount = "", ...per] = units.text("volumePerStroke", volume).split(" per ");
  const lines = [amount, ...per.map((word) => `per ${word}`)];
  const half = widest(lines, { bold: true }) / 2;
  const fits = at(corners[2]!.angle) - at(corners[1]!.angle) > 2 * half;
  const x1 = fits ? middle : at(angle) + half + 10;
  writeLines(group, lines, { x: x1, y: foot, anchor: "middle", look: ["one plain", "mute plain"] });
  const level = y(rate(corners[1]!.rate)) - 14;
  spot(group, corners.length + 1, { x: at(0), y: level - 20, width: at(angle) - at(0), height: 26 });
  dimension(group, at(0), at(angle), level);
  write(group, degrees(units, angle), { x: middle, y: level - 6, anchor: "middle", look: "strong plain" });

  const past = angle > window;
  dimension(group, at(angle), end, past ? bottom - 20 : level, past ? "past" : "");
  const gap = degrees(units, Math.abs(window - angle));
  const words = `window ends ${degrees(units, window)}, ${past ? `■ ${gap} past` : `${gap} left`}`;
  const reach = textWidth(words, { bold: true }) / 2;
  const x0 = Math.max(2 + reach, Math.min(end, width - reach));
  write(group, words, { x: x0, y: top - 14, anchor: "middle", look: past ? "past" : "strong" });
}

/** A crank angle with its sign, as a drawing has it. */
export function degrees(units: FigureUnits, angle: number): string {
  return `${figures(units.number("crankAngle", angle), 3)}°`;
}
