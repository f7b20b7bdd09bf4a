import { arrowHead } from "./arrowHead";
import { type Group, px } from "./plate";

/** A dimension line between two places on one level, with arrow heads at both ends where there is room for them. */
export function dimension(group: Group, from: number, to: number, y: number, look = ""): void {
  const [low, high] = from < to ? [from, to] : [to, from];
  const line = group.append("g").attr("class", `dimension ${look}`.trim());
  line
    .append("path")
    .attr("class", "stroke")
    .attr("d", `M${px(low)},${px(y)}H${px(high)}M${px(low)},${px(y - 5)}v10M${px(high)},${px(y - 5)}v10`);
  if (high - low < 16) return;
  line
    .append("path")
    .attr("class", "fill")
    .attr("d", arrowHead(low, y, Math.PI, 6) + arrowHead(high, y, 0, 6));
}
