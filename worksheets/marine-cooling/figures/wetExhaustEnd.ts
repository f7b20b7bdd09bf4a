import { type Group, px, spotAt, textWidth, write } from "../../drawing";
import type { RowPlace } from "./lineRows";

/** The water led into the exhaust [K]: mixed without evaporation, saturated, and what the hose may have. */
export interface WetExhaustEnd {
  readonly mixed: number;
  readonly saturated: number;
  readonly limit: number;
}

const saturated = "saturated";

/** A limit as a dashed line down the page. */
export function limitDown(group: Group, x: number, from: number, to: number): void {
  group
    .append("path")
    .attr("class", "limit")
    .attr("d", `M${px(x)},${px(from)}V${px(to)}`);
}

/** The water led into the exhaust: its mix without evaporation, and with as much as the gas can hold. */
export function wetExhaustEnd(
  group: Group,
  exhaust: WetExhaustEnd,
  frame: {
    readonly at: (temperature: number) => number;
    readonly text: (temperature: number) => string;
    readonly place: RowPlace;
    readonly from: number;
    readonly row: number;
  },
): void {
  const { at, text, place, from, row } = frame;
  const { top: upper, bottom } = place;
  const past = exhaust.mixed > exhaust.limit;
  limitDown(group, at(exhaust.limit), upper - 4, bottom - 9);
  spotAt(group, row, at(exhaust.mixed), bottom);
  group
    .append("path")
    .attr("class", "line-1")
    .attr("d", `M${px(from)},${px(upper)}L${px(at(exhaust.mixed))},${px(bottom)}`);
  write(group, `${past ? "■ " : ""}${text(exhaust.mixed)}`, {
    x: at(exhaust.mixed) + 10,
    y: bottom + 5,
    look: past ? "past" : "one",
  });
  group
    .append("circle")
    .attr("class", "ring")
    .attr("data-row", row + 1)
    .attr("cx", px(at(exhaust.saturated)))
    .attr("cy", px(bottom))
    .attr("r", 4);
  const beside = at(exhaust.saturated) - 10 - textWidth(saturated) > 0;
  write(group, saturated, {
    x: beside ? at(exhaust.saturated) - 10 : 2,
    y: beside ? bottom + 5 : bottom + 19,
    anchor: beside ? "end" : "start",
    look: "mute",
  });
}
