import { figures } from "./reading";
import { write } from "./label";
import { type Group, px } from "./plate";
import { textWidth } from "./textWidth";

interface Axis {
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
  /** Ends of the axis along itself. */
  readonly ends: readonly [number, number];
  /** Where the axis lies across itself. */
  readonly across: number;
  /** Far end of the grid's lines, if there is a grid. */
  readonly grid?: number;
  readonly title: string;
}

/** Room that an axis below a drawing takes, in CSS pixels. */
export const axisRoom = 40;

/** An axis below a drawing: ticks, their numbers, and its title with the unit at the right end. */
export function axisBelow(group: Group, { at, ticks, ends, across, grid, title }: Axis): void {
  const [from, to] = ends;
  if (grid !== undefined) {
    group
      .append("path")
      .attr("class", "grid")
      .attr("d", ticks.map((tick) => `M${px(at(tick))},${across}V${grid}`).join(""));
  }
  group
    .append("path")
    .attr("class", "axis")
    .attr("d", `M${px(from)},${across}H${px(to)}${ticks.map((tick) => `M${px(at(tick))},${across}v5`).join("")}`);
  let free = Number.NEGATIVE_INFINITY;
  for (const tick of ticks) {
    const text = figures(tick, 6);
    const halfWidth = textWidth(text) / 2;
    const x = at(tick);
    if (x - halfWidth < free || x + halfWidth > to + 12) continue;
    free = x + halfWidth + 8;
    write(group, text, { x, y: across + 18, anchor: "middle", look: "mute" });
  }
  write(group, title, { x: to, y: across + 35, anchor: "end", look: "mute" });
}

/** An axis at the left of a drawing: a faint line across for each tick, its number at the line's left end. */
export function axisLeft(group: Group, { at, ticks, ends, across, grid = across }: Omit<Axis, "title">): void {
  const inside = ticks.filter((tick) => at(tick) >= Math.min(...ends) && at(tick) <= Math.max(...ends));
  group
    .append("path")
    .attr("class", "grid")
    .attr("d", inside.map((tick) => `M${across},${px(at(tick))}H${px(grid)}`).join(""));
  for (const tick of inside) {
    write(group, figures(tick, 6), { x: across - 6, y: at(tick) + 4.5, anchor: "end", look: "mute" });
  }
}
