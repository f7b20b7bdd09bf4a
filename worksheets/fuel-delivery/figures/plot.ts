import { type ScaleLinear, scaleLinear } from "d3";
import { axisBelow, axisLeft, figures, type Group, px, widest, write } from "../../drawing";

interface PlotSpans {
  /** Ends of both axes, in the units shown. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly xTitle: string;
  /** Stands above the plot; left out where a band's title says it. */
  readonly yTitle: string;
  readonly width: number;
  readonly top: number;
  readonly height: number;
  /** Room kept free at the right of the axis, for labels. */
  readonly aside?: number;
  /** Left end of the axis, where bands stand above each other. */
  readonly left?: number;
  /** Height of the title's base line above the plot, 14 if left out. */
  readonly titleAbove?: number;
}

export interface Plot {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Axes of a plot, in the units shown: a faint line for each tick of the left one, and the title above. */
export function plot(group: Group, spans: PlotSpans): Plot {
  const { width, top, height, aside = 14, titleAbove = 14 } = spans;
  const bottom = top + height;
  const y = scaleLinear(spans.y, [bottom, top]).nice(5);
  const ticks = y.ticks(5);
  const left = spans.left ?? widest(ticks.map((tick) => figures(tick, 6))) + 12;
  const right = width - aside;
  const x = scaleLinear(spans.x, [left, right]);
  write(group, spans.yTitle, { x: 2, y: top - titleAbove, look: "band" });
  axisLeft(group, { at: y, ticks, ends: [top, bottom], across: left, grid: right });
  axisBelow(group, {
    at: x,
    ticks: x.ticks(Math.max(4, Math.floor((right - left) / 72))),
    ends: [left, right],
    across: bottom,
    title: spans.xTitle,
  });
  return { x, y, left, right, top, bottom };
}

/** A line through points, in CSS pixels. */
export function lineThrough(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${px(x)},${px(y)}`).join("");
}

/** What lies between two lines over the same places, in CSS pixels. */
export function between(
  upper: readonly (readonly [number, number])[],
  lower: readonly (readonly [number, number])[],
): string {
  return `${lineThrough(upper)}${lineThrough(lower.slice().reverse()).replace("M", "L")}Z`;
}
