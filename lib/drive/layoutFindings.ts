import type { Length } from "../quantity";
import type { BeltLayout, BeltRun } from "./beltLayout";
import { crossedSpans, cutPulleys, distanceTo, notClosed, overlaps, requireDescribed } from "./beltRefusals";
import { beltTrace } from "./beltTrace";

/**
 * Everything that keeps a belt from lying on its pulleys, in words that name the pulleys and by how far; nothing where
 * it can. beltRun stops at the first.
 *
 * @param layout the pulleys in belt order and the travel of the belt, lengths in [m]
 * @throws RangeError if there are fewer than two pulleys, a name stands twice, or a radius or place is none
 * @source common tangents of circles; elementary geometry
 * @example layoutFindings({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.08, pitchRadius: 0.05, contact: "toothed" }] }).length // 1
 */
export function layoutFindings(layout: BeltLayout): readonly string[] {
  requireDescribed(layout);
  const overlapping = overlaps(layout);
  try {
    const trace = beltTrace(layout);
    const open = notClosed(layout, trace);
    return [
      ...overlapping,
      ...(open === undefined ? [] : [open]),
      ...cutPulleys(layout, trace.spans),
      ...crossedSpans(trace.spans),
    ];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return [...overlapping, error.message.replace(/^beltRun: /, "")];
  }
}

/** Two parts of a run and the room between them. */
export interface Clearance {
  /** a pulley's name, or a span's, as in "crank to blower" */
  readonly of: string;
  /** name of the pulley it comes near to */
  readonly to: string;
  /** room between the pitch circles, or pitch line and pitch circle [m] */
  readonly gap: Length;
}

/**
 * Room between a run's pulleys, and between its spans and the pulleys that they pass, the smallest first [m].
 * Pitch circles and pitch lines are held against each other: flanges, the belt's own thickness and the units' housings
 * come off it.
 *
 * @param run a belt drawn tight, lengths in [m]
 * @source elementary geometry
 * @example clearances(beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }))[0].gap // 0.2
 */
export function clearances({ pulleys, spans }: BeltRun): readonly Clearance[] {
  const between = pulleys.flatMap((pulley, i) =>
    pulleys.slice(0, i).map((other): Clearance => {
      const gap = Math.hypot(pulley.x - other.x, pulley.y - other.y) - pulley.pitchRadius - other.pitchRadius;
      return { of: other.name, to: pulley.name, gap: gap as Length };
    }),
  );
  const passing = spans.flatMap((span) =>
    pulleys
      .filter(({ name }) => name !== span.from && name !== span.to)
      .map((pulley): Clearance => {
        const gap = distanceTo(pulley, span) - pulley.pitchRadius;
        return { of: `${span.from} to ${span.to}`, to: pulley.name, gap: gap as Length };
      }),
  );
  return [...between, ...passing].sort((a, b) => a.gap - b.gap);
}
