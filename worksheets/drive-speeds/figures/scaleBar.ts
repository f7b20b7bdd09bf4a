import { figures, type Group, px, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";

/** The longest round number, 1, 2 or 5 with zeros, that is not above a number. */
export function roundBelow(value: number): number {
  const ten = 10 ** Math.floor(Math.log10(value));
  return ten * (value >= 5 * ten ? 5 : value >= 2 * ten ? 2 : 1);
}

/** A bar of a round length in the unit shown, for taking measures off the drawing. */
export function scaleBar(
  group: Group,
  { x, y, scale, units }: { x: number; y: number; scale: number; units: FigureUnits },
): void {
  const unit = scale / (units.number("length", 1) - units.number("length", 0));
  const length = roundBelow(110 / unit);
  const end = x + length * unit;
  group
    .append("path")
    .attr("class", "outline")
    .attr("d", `M${x},${y - 4}v8M${x},${y}H${px(end)}M${px(end)},${y - 4}v8M${px((x + end) / 2)},${y - 3}v6`);
  write(group, `${figures(length, 6)} ${units.unit("length")}`, { x: end + 8, y: y + 4.5, look: "mute" });
}
