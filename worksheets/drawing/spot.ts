import type { Box } from "./hatching";
import { type Group, px } from "./plate";

/**
 * An unseen place to point at, for a row of the figure's numbers whose marks are small, or are parts of one path.
 * Marks that can be met themselves carry the row's number in their own "data-row".
 *
 * @param group where it is drawn; before the marks, so that it lies below them
 * @param row the row of the figure's numbers, from 0
 * @param box what it covers
 */
export function spot(group: Group, row: number, { x, y, width, height }: Box): void {
  group
    .append("rect")
    .attr("class", "spot")
    .attr("data-row", row)
    .attr("x", px(x))
    .attr("y", px(y))
    .attr("width", px(Math.max(0, width)))
    .attr("height", px(Math.max(0, height)));
}

/** A spot around a point. */
export function spotAt(group: Group, row: number, x: number, y: number, radius = 9): void {
  spot(group, row, { x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius });
}
