import { scaleLinear } from "d3";
import type { DriveSpeeds } from "../../../lib/drive";
import { figures, type Group, px, rowsFor, textWidth, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { engineSpeeds } from "./engineSpeeds";

export interface SpeedAxis {
  readonly x: (speed: number) => number;
  readonly ends: readonly [number, number];
}

/** A scale of engine speed from idle to overspeed, wide enough for both. */
export function speedAxis(speeds: DriveSpeeds, ends: readonly [number, number]): SpeedAxis {
  const all = engineSpeeds.map(({ key }) => speeds[key]);
  const x = scaleLinear([Math.min(...all), Math.max(...all)], [ends[0], ends[1]]);
  return { x, ends };
}

/** Room that the engine's speeds take above a plot and below it, in CSS pixels. */
export const speedRoom = { above: 52, below: 40 };

interface Drawn {
  readonly axis: SpeedAxis;
  readonly speeds: DriveSpeeds;
  readonly top: number;
  readonly bottom: number;
  /** Tops and bottoms of the plots, where several stand above each other: the lines leave what is between free. */
  readonly plots?: readonly { readonly top: number; readonly bottom: number }[];
  readonly units: FigureUnits;
  readonly width: number;
}

/** A fine line up the plot at each of the engine's speeds, its name above it and its number below. */
export function drawSpeeds(group: Group, { axis, speeds, top, bottom, plots, units, width }: Drawn): void {
  const places = engineSpeeds.map(({ key, word }) => ({
    x: axis.x(speeds[key]),
    word,
    text: figures(units.number("rotationalSpeed", speeds[key]), 4),
  }));
  group
    .append("path")
    .attr("class", "grid")
    .attr("d", (plots ?? [{ top, bottom }]).map((each) => places.map(({ x }) => `M${px(x)},${each.bottom}V${each.top}`).join("")).join(""));
  group.append("path").attr("class", "axis").attr("d", `M${px(axis.ends[0])},${bottom}H${px(axis.ends[1])}`);
  // Words that would touch stand a line higher.
  const inside = (x: number, size: number) => Math.min(Math.max(x, size / 2 + 1), width - size / 2 - 1);
  const words = places.map(({ x, word }) => ({ at: inside(x, textWidth(word)), size: textWidth(word) }));
  rowsFor(words, 6).forEach((row, i) => {
    write(group, places[i]!.word, { x: words[i]!.at, y: top - 6 - 16 * row, anchor: "middle", look: "mute" });
  });
  let free = Number.NEGATIVE_INFINITY;
  for (const { x, text } of [...places].sort((a, b) => a.x - b.x)) {
    const half = textWidth(text) / 2;
    const at = inside(x, 2 * half);
    if (at - half < free) continue;
    free = at + half + 8;
    write(group, text, { x: at, y: bottom + 18, anchor: "middle", look: "mute" });
  }
  write(group, `Engine speed, ${units.unit("rotationalSpeed")}`, { x: axis.ends[1], y: bottom + 35, anchor: "end", look: "mute" });
}
