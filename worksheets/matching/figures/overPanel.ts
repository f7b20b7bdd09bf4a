import { curveMonotoneX, line, type ScaleLinear, scaleLinear } from "d3";
import { axisBelow, axisLeft, axisRoom, figures, type Group, px, widest, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { Run } from "./run";

/** What runs across a drawing: engine speed, altitude. */
export interface Across {
  /** Place of any value, in the unit shown. */
  readonly at: (value: number) => number;
  readonly left: number;
  readonly right: number;
  /** Places of the points that are drawn. */
  readonly places: readonly number[];
  /** Ends of each point's column, half-way to its neighbours. */
  readonly columns: readonly (readonly [number, number])[];
  readonly title: string;
}

/** Values across a drawing, in the unit shown and rising. */
export function across(values: readonly number[], [left, right]: readonly [number, number], title: string): Across {
  const at = scaleLinear([values[0]!, values.at(-1)!], [left + 8, right - 8]);
  const places = values.map(at);
  const columns = places.map((x, i) => {
    const [before, after] = [places[i - 1], places[i + 1]];
    return [before === undefined ? left : (before + x) / 2, after === undefined ? right : (after + x) / 2] as const;
  });
  return { at, left, right, places, columns, title };
}

/** Engine speed across a drawing. */
export function speedAcross({ points }: Run, ends: readonly [number, number], units: FigureUnits): Across {
  const speeds = points.map(({ engineSpeed }) => units.number("rotationalSpeed", engineSpeed));
  return across(speeds, ends, `Engine speed, ${units.unit("rotationalSpeed")}`);
}

/** The axis itself, with its title. Gives back the height it ends at. */
export function axisAcross(group: Group, { at, left, right, places, title }: Across, bottom: number): number {
  const invert = scaleLinear([at(0), at(1)], [0, 1]);
  const ends = [invert(places[0]!), invert(places.at(-1)!)];
  const ticks = scaleLinear(ends, [0, 1]).ticks(Math.max(3, Math.floor((right - left) / 90)));
  axisBelow(group, { at, ticks, ends: [left, right], across: bottom, title });
  return bottom + axisRoom;
}

/** A quantity over what runs across, in the unit shown. */
export interface Panel {
  readonly title: string;
  /** Height of the title's base line. */
  readonly top: number;
  readonly height: number;
  /** One for each point; undefined where there is nothing. */
  readonly values: readonly (number | undefined)[];
  /** Values that the scale must hold too. */
  readonly holds?: readonly number[];
  readonly look: string;
}

/** Room between a panel's title and its scale, in CSS pixels. */
export const panelHead = 18;

/** Where a panel's zero lies. */
export const footOf = ({ top, height }: Pick<Panel, "top" | "height">): number => top + panelHead + height;

/** Scale of a panel, from zero up. */
export function panelScale(panel: Pick<Panel, "values" | "holds" | "top" | "height">): ScaleLinear<number, number> {
  const all = [...panel.values.filter((value) => value !== undefined), ...(panel.holds ?? [])];
  const high = Math.max(...all, 0);
  return scaleLinear([Math.min(0, ...all), high > 0 ? high * 1.02 : 1], [footOf(panel), panel.top + panelHead]).nice(4);
}

/** Left end of panels that stand above each other, right of their numbers. */
export function leftOf(scales: readonly ScaleLinear<number, number>[]): number {
  const numbers = scales.flatMap((scale) => scale.ticks(4).map((tick) => figures(tick, 6)));
  return Math.ceil(widest(numbers)) + 12;
}

/** Title, scale and foot of a panel. */
export function panelFrame(
  group: Group,
  { left, right }: Across,
  panel: Omit<Panel, "look">,
): ScaleLinear<number, number> {
  const y = panelScale(panel);
  const ends = [panel.top + panelHead, footOf(panel)] as const;
  write(group, panel.title, { x: 2, y: panel.top, look: "band" });
  axisLeft(group, { at: y, ticks: y.ticks(4), ends, across: left, grid: right });
  group
    .append("path")
    .attr("class", "axis")
    .attr("d", `M${px(left)},${px(y(0))}H${px(right)}`);
  return y;
}

/** A panel with its line, which is broken where there is nothing. */
export function linePanel(group: Group, along: Across, panel: Panel): ScaleLinear<number, number> {
  const { values, look } = panel;
  const y = panelFrame(group, along, panel);
  const corners = along.places.map((x, i): [number, number] => [px(x), px(y(values[i] ?? 0))]);
  const path = line<[number, number]>()
    .defined((_, i) => values[i] !== undefined)
    .curve(curveMonotoneX)(corners);
  group.append("path").attr("class", look).attr("d", path);
  corners.forEach(([cx, cy], i) => {
    // A point between two gaps has no line.
    if (values[i] === undefined || values[i - 1] !== undefined || values[i + 1] !== undefined) return;
    group.append("circle").attr("class", "dark").attr("cx", cx).attr("cy", cy).attr("r", 3);
  });
  return y;
}
