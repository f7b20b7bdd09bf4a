import { type Group, plate, px, resized, spot, textWidth, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { blowerPower, blowersAt, blowersOf, blowerTorque, closedRun } from "./blowerRun";
import { emptyPlate } from "./emptyPlate";
import { markedValue } from "./markedValue";
import {
  type Across,
  axisAcross,
  footOf,
  leapsOf,
  leftOf,
  linePanel,
  type Panel,
  panelHead,
  panelScale,
  speedAcross,
  titleBox,
} from "./overPanel";
import { isEmpty, promisedOf, type Run } from "./run";
import { gapWords } from "./runWords";
import { type Corner, polyline } from "./shapes";

/** Power and torque that the blower takes over engine speed; dotted what it would take with its bypass closed. */
export function blowerPlate(run: Run, { width, units }: FigureFrame): SVGSVGElement {
  const { points, ratedSpeed } = run;
  if (blowersOf(run).length === 0) return emptyPlate("There is no blower in the charge path.", points.length, width);
  if (isEmpty(run)) return emptyPlate(gapWords(run, units), points.length, width);
  const closed = closedRun(run);
  const series = (read: typeof blowerPower, unit: (value: number) => number, of: Run["points"] | undefined) =>
    of?.map((point) => {
      const at = blowersAt(point);
      return at && unit(read(at));
    });
  const power = (value: number) => units.number("power", value);
  const torque = (value: number) => units.number("torque", value);
  const panels = [
    {
      title: `Power at the blower's drive, ${units.unit("power")}`,
      values: series(blowerPower, power, points)!,
      closed: series(blowerPower, power, closed),
      text: (value: number) => units.text("power", value),
      read: blowerPower,
      scale: power,
      height: width < 480 ? 150 : 180,
    },
    {
      title: `Torque at the blower's shaft, ${units.unit("torque")}`,
      values: series(blowerTorque, torque, points)!,
      closed: series(blowerTorque, torque, closed),
      text: (value: number) => units.text("torque", value),
      read: blowerTorque,
      scale: torque,
      height: width < 480 ? 90 : 110,
    },
  ];
  let top = 16;
  const leaps = leapsOf(run);
  const laid = panels.map((panel) => {
    const holds = panel.closed?.filter((value) => value !== undefined) ?? [];
    const shown: Panel = { title: panel.title, top, height: panel.height, values: panel.values, holds, look: "line-2", leaps };
    top = footOf(shown) + 34;
    return { ...panel, shown };
  });
  const along = speedAcross(run, [leftOf(laid.map(({ shown }) => panelScale(shown))), width - 4], units);
  const { svg, ground } = plate(width, 10);
  const spots = ground.append("g");
  const foot = footOf(laid.at(-1)!.shown);
  const x = along.at(units.number("rotationalSpeed", ratedSpeed));
  ground
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(x)},${px(foot)}V${laid[0]!.shown.top + panelHead}`);
  const here = promisedOf(run)?.point.blowers;
  for (const [i, { shown, closed: other, read, scale, text }] of laid.entries()) {
    const y = linePanel(ground, along, shown);
    const bounds = { x: along.left + 2, y: shown.top - 12, width: along.right - along.left - 2, height: shown.height + 26 };
    const lines = [corners(along, shown.values, y), corners(along, other ?? [], y)];
    if (other) {
      ground.append("path").attr("class", "dotted").attr("d", polyline(lines[1]!));
      if (i === 0) closedWords(ground, lines[1]!, along);
    }
    if (!here) continue;
    const value = read(here);
    markedValue(ground, { at: [x, y(scale(value))], text: text(value), look: "two", lines, boxes: [titleBox(shown)], bounds });
  }
  const bottom = axisAcross(ground, along, foot);
  const begin = laid[0]!.shown.top + panelHead;
  along.columns.forEach(([from, to], i) => {
    spot(spots, i, { x: from, y: begin, width: to - from, height: foot - begin });
  });
  return resized(svg, width, bottom);
}

function corners(along: Across, values: readonly (number | undefined)[], y: (value: number) => number): readonly Corner[] {
  return along.places.flatMap((x, i): readonly Corner[] => (values[i] === undefined ? [] : [[x, y(values[i])]]));
}

/** Names the dotted line at its left end, where little else is. */
function closedWords(group: Group, line: readonly Corner[], { left, right }: Across): void {
  const [x, y] = line[Math.floor(line.length / 3)] ?? [left, 0];
  const text = "with the bypass closed";
  write(group, text, { x: Math.min(Math.max(x, left + 4), right - textWidth(text)), y: y - 12, look: "mute" });
}
