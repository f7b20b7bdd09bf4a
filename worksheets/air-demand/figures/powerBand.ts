import { scaleLinear } from "d3";
import type { Power } from "../../../lib/quantity";
import { arrowHead, axisBelow, type Group, hatching, px, share, spot, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";

/** One step of the way from one power to another. */
export interface PowerStep {
  readonly name: string;
  readonly power: Power;
  /** Powers between which its bar lies [W]. */
  readonly begin: number;
  readonly end: number;
  readonly type: "sum" | "step";
}

/** The columns in which both bands stand: names, bars, values, shares. */
export interface Columns {
  readonly units: FigureUnits;
  /** Names and values above the bars. */
  readonly stacked: boolean;
  readonly width: number;
  /** Ends of the bars' column. */
  readonly left: number;
  readonly right: number;
  /** Right edge of the values. */
  readonly valueRight: number;
  readonly pitch: number;
  readonly top: number;
}

/** Height of a bar, in CSS pixels. */
export const barHeight = 14;

/** Base line of a row's words and top of its bar, in CSS pixels from the row's top. */
export const rowPlaces = ({ stacked, pitch }: Pick<Columns, "stacked" | "pitch">) =>
  stacked ? { words: 15, bar: 22 } : { words: pitch / 2 + 4.5, bar: (pitch - barHeight) / 2 };

/** Name, value and share of a row, in their columns. */
export function rowWords(
  group: Group,
  frame: Columns,
  row: number,
  words: readonly [string, string, string],
  strong: boolean,
): void {
  const y = frame.top + row * frame.pitch + rowPlaces(frame).words;
  write(group, words[0], { x: 2, y, ...(strong && { look: "strong" }) });
  write(group, words[1], { x: frame.valueRight, y, anchor: "end", look: "strong" });
  write(group, words[2], { x: frame.width, y, anchor: "end", look: "mute" });
}

/** An upright line from a bar to another, as a path; where words stand between them, it leaves these free. */
export function upright(x: number, from: number, to: number, stacked: boolean): string {
  return stacked ? `M${px(x)},${from}v5M${px(x)},${to - 3}v3` : `M${px(x)},${from}V${to}`;
}

/** Steps of power, one row each: every bar begins where the one before ended. */
export function powerBand(group: Group, steps: readonly PowerStep[], frame: Columns): void {
  const { units, left, right, top, pitch, stacked } = frame;
  const shown = (power: number) => units.number("power", power);
  const ends = steps.flatMap(({ begin, end }) => [shown(begin), shown(end)]);
  const scale = scaleLinear([Math.min(0, ...ends), Math.max(...ends)], [left, right]);
  const at = (power: number) => scale(shown(power));
  const whole = steps.at(-1)!.power;
  const bottom = top + steps.length * pitch + 4;

  write(group, "Power, step by step", { x: 2, y: top - 16, look: "band" });
  axisBelow(group, {
    at: scale,
    ticks: scale.ticks(Math.max(3, Math.floor((right - left) / 90))),
    ends: [left, right],
    across: bottom,
    grid: top,
    title: `Power, ${units.unit("power")}`,
  });
  steps.forEach(({ name, power, begin, end, type }, row) => {
    const y = top + row * pitch + rowPlaces(frame).bar;
    spot(group, row, { x: 0, y: top + row * pitch, width: frame.width, height: pitch });
    const box = { x: Math.min(at(begin), at(end)), y, width: Math.abs(at(end) - at(begin)), height: barHeight };
    if (row + 1 < steps.length) {
      group
        .append("path")
        .attr("class", "thread")
        .attr("d", upright(at(end), y + barHeight, y + pitch, stacked));
    }
    if (end < begin) {
      group.append("path").attr("class", "hatch").attr("d", hatching(box, 5));
      group
        .append("path")
        .attr("class", "outline")
        .attr("data-row", row)
        .attr("d", `M${px(box.x)},${y}h${px(box.width)}v${barHeight}h${px(-box.width)}z`);
      group
        .append("path")
        .attr("class", "dark")
        .attr("d", arrowHead(at(end) - 10, y + barHeight / 2, Math.PI));
    } else {
      group
        .append("rect")
        .attr("class", type === "sum" ? (row === 0 ? "solid" : "dark") : "middle")
        .attr("data-row", row)
        .attr("x", px(box.x))
        .attr("y", y)
        .attr("width", px(Math.max(box.width, power > 0 ? 1 : 0)))
        .attr("height", barHeight);
    }
    rowWords(group, frame, row, [name, units.text("power", power), share(units, power / whole)], type === "sum");
  });
}
