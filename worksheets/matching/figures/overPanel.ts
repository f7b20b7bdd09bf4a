import { type ScaleLinear, scaleLinear } from "d3";
import { axisBelow, axisLeft, axisRoom, type Box, figures, type Group, px, textWidth, widest, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { isLeap, type Run } from "./run";
import { type Corner, polyline } from "./shapes";
import { smoothLine } from "./smoothLine";

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

/** Runs of neighbours of which something is known and between which nothing leaps: first, and one behind the last. */
export function stretchesOf(
  known: readonly unknown[],
  leaps: readonly boolean[],
): readonly (readonly [number, number])[] {
  const all: (readonly [number, number])[] = [];
  known.forEach((each, i) => {
    if (each === undefined) return;
    const last = all.at(-1);
    if (last?.[1] === i && !leaps[i]) all[all.length - 1] = [last[0], i + 1];
    else all.push([i, i + 1]);
  });
  return all;
}

/** At which points of a run the power leaps. */
export function leapsOf({ points }: Run): readonly boolean[] {
  return points.map((point, i) => i > 0 && isLeap(points[i - 1]!, point));
}

/** The axis itself, with its title. Gives back the height it ends at. */
export function axisAcross(group: Group, { at, left, right, places, title }: Across, bottom: number): number {
  const invert = scaleLinear([at(0), at(1)], [0, 1]);
  // A hair wider, so that rounding drops no tick at an end.
  const ends = [invert(places[0]! - 1e-6), invert(places.at(-1)! + 1e-6)];
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
  /** At points that no line joins to the one before: the line leaps. */
  readonly leaps?: readonly boolean[];
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

/** Where a panel's title stands, for labels to keep clear of. */
export function titleBox({ title, top }: Pick<Panel, "title" | "top">): Box {
  return { x: 2, y: top - 13, width: textWidth(title, { size: 15 }), height: 18 };
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

/** A panel with its line, which is broken where there is nothing and dotted where it leaps. */
export function linePanel(group: Group, along: Across, panel: Panel): ScaleLinear<number, number> {
  const { values, look, leaps } = panel;
  const y = panelFrame(group, along, panel);
  const path = (shown: string, d: string) => group.append("path").attr("class", shown).attr("d", d);
  let piece: Corner[] = [];
  const end = (): void => {
    if (piece.length > 1) path(look, smoothLine(piece));
    // A point between two gaps has no line.
    else if (piece[0]) circle(group, "dark", piece[0], 3);
    piece = [];
  };
  along.places.forEach((x, i) => {
    const value = values[i];
    if (value === undefined) {
      end();
      return;
    }
    const corner: Corner = [x, y(value)];
    const before = piece.at(-1);
    if (leaps?.[i] && before) {
      end();
      path(`leap ${look}`, polyline([before, corner]));
    }
    piece.push(corner);
  });
  end();
  return y;
}

/** A dot. */
export function circle(group: Group, look: string, [x, y]: Corner, radius: number): void {
  group.append("circle").attr("class", look).attr("cx", px(x)).attr("cy", px(y)).attr("r", radius);
}
