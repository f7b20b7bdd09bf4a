import type { AltitudePoint } from "../runs";
import { plate, px, resized, spot, textWidth, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { emptyPlate } from "./emptyPlate";
import { limitBand, type Stretch } from "./limitBand";
import { markedValue } from "./markedValue";
import { across, axisAcross, footOf, leftOf, linePanel, panelHead, panelScale, titleBox } from "./overPanel";
import { attained } from "./run";
import { reasonOf } from "./runWords";
import type { Corner } from "./shapes";

export interface OverAltitude {
  readonly points: readonly AltitudePoint[];
  /** Of this installation [m]. */
  readonly altitude: number;
  /** What the parts give here [W]; undefined where they give nothing. */
  readonly here: number | undefined;
  readonly ratedPower: number;
}

/** Power that the parts give against the altitude, with the promise and this installation's place. */
export function altitudePlate(over: OverAltitude, { width, units }: FigureFrame): SVGSVGElement {
  const { points, altitude, here, ratedPower } = over;
  const given = points.map(({ point }) => attained(point));
  if (given.every((at) => !at)) {
    const why = `The parts give nothing at any altitude. At the sea: ${reasonOf(points[0]!.point, units)}.`;
    return emptyPlate(why, points.length + 1, width);
  }
  const power = (value: number) => units.number("power", value);
  const panel = {
    title: `Most power at the promised speed, ${units.unit("power")}`,
    top: 16,
    height: 150,
    values: given.map((at) => at && power(at.point.brakePower)),
    holds: [power(ratedPower), ...(here === undefined ? [] : [power(here)])],
    look: "line-1",
  };
  const up = (metres: number) => units.number("length", metres, "altitude");
  const ends = [leftOf([panelScale(panel)]), width - 12] as const;
  const along = across(points.map((each) => up(each.altitude)), ends, `Altitude, ${units.unit("length", "altitude")}`);
  const { svg, ground } = plate(width, 10);
  const spots = ground.append("g");
  const y = linePanel(ground, along, panel);
  const level = y(power(ratedPower));
  ground
    .append("path")
    .attr("class", "limit")
    .attr("d", `M${px(along.left)},${px(level)}H${px(along.right)}`);
  const words = `promised ${units.text("power", ratedPower)}`;
  // Right of the curve's fall where it ends below the promise, else below the dashes at the left.
  const last = panel.values.findLast((value) => value !== undefined)!;
  const ended = last < power(ratedPower);
  const size = textWidth(words, { bold: true });
  const box = { x: ended ? along.right - size : along.left + 6, y: ended ? level - 20 : level + 5, width: size, height: 14 };
  write(ground, words, { x: box.x, y: box.y + 11, look: "strong" });
  const foot = footOf(panel);
  const x = Math.min(Math.max(along.at(up(altitude)), along.left), along.right);
  const line = along.places.flatMap((place, i): readonly Corner[] =>
    panel.values[i] === undefined ? [] : [[place, y(panel.values[i])]],
  );
  const height = here === undefined ? level : y(power(here));
  ground.append("path").attr("class", "dotted").attr("d", `M${px(x)},${px(foot)}V${px(height)}`);
  const dashes: readonly Corner[] = [
    [along.left, level],
    [along.right, level],
  ];
  const bounds = { x: along.left + 2, y: panel.top - 6, width: along.right - along.left - 2, height: foot - panel.top + 2 };
  if (here === undefined) write(ground, "nothing is given here", { x, y: foot - 8, anchor: "middle", look: "past" });
  else {
    const text = `here ${units.text("power", here)}`;
    markedValue(ground, { at: [x, height], text, look: "one", lines: [line, dashes], boxes: [box, titleBox(panel)], bounds });
  }
  let top = axisAcross(ground, along, foot) + 8;
  const stretches = given.map((at, i): Stretch => {
    const [from, to] = along.columns[i]!;
    return at ? { name: at.binding.name, from, to } : { name: "nothing is given", from, to, empty: true };
  });
  top += limitBand(ground, stretches, { left: along.left, right: along.right, known: [], top, title: "Limit that is met first" });
  along.columns.forEach(([from, to], i) => {
    spot(spots, i + 1, { x: from, y: panel.top + panelHead, width: to - from, height: top - panel.top - panelHead - 4 });
  });
  spot(spots, 0, { x: x - 8, y: height - 8, width: 16, height: foot - height + 8 });
  return resized(svg, width, top + 2);
}
