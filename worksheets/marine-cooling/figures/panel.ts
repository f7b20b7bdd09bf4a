import { line, type ScaleLinear, scaleLinear } from "d3";
import {
  axisBelow,
  axisLeft,
  figures,
  type Group,
  leading,
  px,
  spot,
  spread,
  widest,
  write,
  writeLines,
} from "../../drawing";

/** A field of curves with both its scales, in numbers of the unit shown and CSS pixels. */
export interface Panel {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly top: number;
  readonly bottom: number;
}

interface PanelFrame {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  /** What stands over the field, and where its words begin. */
  readonly title: string;
  readonly titleAt: number;
  /** Title of the axis below; without one the axis has neither numbers nor title. */
  readonly across?: string;
}

/** Room from a title's base line down to the field, in CSS pixels. */
export const titleRoom = 22;

/** A scale upwards over all the numbers, ended by round ones. */
export function upwards(values: readonly number[], top: number, height: number): ScaleLinear<number, number> {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const whole = low === high ? [low - 1, high + 1] : [low, high];
  return scaleLinear(whole, [top + height, top]).nice(Math.max(3, Math.floor(height / 44)));
}

/** Ticks of a scale upwards, a line of type or more apart. */
const ticksUp = (y: ScaleLinear<number, number>) => {
  const [bottom, top] = y.range() as [number, number];
  return y.ticks(Math.max(3, Math.floor((bottom - top) / 44)));
};

/** Room that the numbers left of some fields take, in CSS pixels. */
export function numbersRoom(scales: readonly ScaleLinear<number, number>[]): number {
  return widest(scales.flatMap((scale) => ticksUp(scale).map((tick) => figures(tick, 6)))) + 12;
}

/** Draws title, grid and axes of a field of curves. */
export function panel(group: Group, { x, y, title, titleAt, across }: PanelFrame): Panel {
  const [left, right] = x.range() as [number, number];
  const [bottom, top] = y.range() as [number, number];
  write(group, title, { x: titleAt, y: top - titleRoom, look: "band" });
  axisLeft(group, { at: y, ticks: ticksUp(y), ends: [top, bottom], across: left, grid: right });
  if (across === undefined) {
    group
      .append("path")
      .attr("class", "axis")
      .attr("d", `M${px(left)},${px(bottom)}H${px(right)}`);
  } else {
    axisBelow(group, {
      at: x,
      ticks: x.ticks(Math.max(3, Math.floor((right - left) / 80))),
      ends: [left, right],
      across: bottom,
      title: across,
    });
  }
  return { x, y, top, bottom };
}

/** A curve through points in numbers of the units shown. */
export function curve(
  group: Group,
  { x, y }: Pick<Panel, "x" | "y">,
  points: readonly (readonly [number, number])[],
  look: string,
): void {
  const placed = points.map(([across, up]): [number, number] => [px(x(across)), px(y(up))]);
  group
    .append("path")
    .attr("class", look)
    .attr("d", line()(placed) ?? "");
}

/** Unseen places over the height of some fields, one for each of the numbers along them, meeting half-way between. */
export function strips(
  group: Group,
  x: ScaleLinear<number, number>,
  values: readonly number[],
  { top, bottom, firstRow = 0 }: { readonly top: number; readonly bottom: number; readonly firstRow?: number },
): void {
  const [left, right] = x.range() as [number, number];
  values.forEach((value, i) => {
    const from = i === 0 ? left : (x(values[i - 1]!) + x(value)) / 2;
    const to = i + 1 === values.length ? right : (x(value) + x(values[i + 1]!)) / 2;
    spot(group, firstRow + i, { x: Math.min(from, to), y: top, width: Math.abs(to - from), height: bottom - top });
  });
}

/** The name of a curve, which stands at its right end. */
export interface EndLabel {
  /** One line or two. */
  readonly lines: readonly string[];
  /** Height at which the curve ends, and where across if not at the labels. */
  readonly y: number;
  readonly from?: number;
  /** Its looks by line; the last counts for the rest. */
  readonly look?: readonly string[];
  /** A number of its own, in a column at the right of all names. */
  readonly value?: string;
}

/** Names at the right ends of curves, moved apart where they would touch; a thread leads to each that was moved. */
export function endLabels(
  group: Group,
  labels: readonly EndLabel[],
  { x, span, right = x }: { readonly x: number; readonly span: readonly [number, number]; readonly right?: number },
): void {
  const middles = spread(
    labels.map(({ y, lines }) => ({ at: y, size: lines.length * leading })),
    span,
    2,
  );
  labels.forEach(({ lines, y, from = x, look, value }, i) => {
    const middle = middles[i]!;
    const moved = Math.abs(middle - y) > 2;
    const bend = moved ? `L${px(x + 12)},${px(middle)}H${px(x + 15)}` : `H${px(x + 15)}`;
    group
      .append("path")
      .attr("class", "thread")
      .attr("d", `M${px(from + 2)},${px(y)}${from < x ? `H${px(x)}` : ""}${bend}`);
    if (value !== undefined) write(group, value, { x: right, y: middle + 4.5, anchor: "end", look: "strong" });
    const first = middle + 4.5 - ((lines.length - 1) / 2) * leading;
    writeLines(group, lines, { x: x + 19, y: first, ...(look && { look }) });
  });
}

/** Room that names at the ends of curves take, in CSS pixels. */
export function endRoom(labels: readonly (readonly string[])[]): number {
  return widest(labels.flat(), { bold: true }) + 19;
}
