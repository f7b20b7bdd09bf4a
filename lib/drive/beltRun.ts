import { type Angle, type Count, type Length, requireNotNegative } from "../quantity";
import type { BeltLayout, BeltRun, RunPulley } from "./beltLayout";
import { requireBelt, requireClearPulleys } from "./beltRefusals";
import { beltTrace } from "./beltTrace";

/**
 * The belt drawn tight over its pulleys [length in m]: L = Σ spans + Σ r φ, by exact tangents.
 * Seen from the front of the engine, x to the right and y up; the pulleys in belt order, the crank first.
 * The belt has no thickness but for its pitch line, does not sag and lies in one plane; pulleys are held against each
 * other by their pitch circles, and flanges and the passing of belt beside a pulley are left out.
 *
 * @param layout the pulleys in belt order and the travel of the belt, lengths in [m]
 * @throws RangeError by name, and by how far, where pulleys overlap, no tangent joins two neighbours, the list runs
 *   against the travel, a pulley does not reach the belt, an arc exceeds 270°, or a span cuts a pulley or another span
 * @source common tangents of circles with signed radii; elementary geometry
 * @example beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }).length // 0.914159
 */
export function beltRun(layout: BeltLayout): BeltRun {
  requireClearPulleys(layout);
  const trace = beltTrace(layout);
  requireBelt(layout, trace);

  const pulleys = layout.pulleys.map(({ name, x, y, pitchRadius, contact, teeth }, i): RunPulley => {
    const wrap = trace.wraps[i]!;
    const start = trace.spans.at(i - 1)!.end;
    const end = trace.spans[i]!.start;
    const sense = trace.senses[i] === trace.senses[0] ? 1 : -1;
    // Written out: spreading the pulley made a whole run five times as slow, and a tensioner is slid through a hundred.
    return teeth === undefined
      ? { name, x, y, pitchRadius, contact, wrap, start, end, sense }
      : { name, x, y, pitchRadius, contact, wrap, start, end, sense, teeth, teethInMesh: teethInMesh(teeth, wrap) };
  });
  const straight = trace.spans.reduce((sum, span) => sum + span.length, 0);
  const curved = pulleys.reduce((sum, { pitchRadius, wrap }) => sum + pitchRadius * wrap, 0);
  return { length: (straight + curved) as Length, pulleys, spans: trace.spans };
}

/**
 * Whole teeth of a pulley that lie in the belt [–]: z φ / (2 π), rounded down.
 *
 * @param teeth teeth of the pulley [–], 0 or above
 * @param wrap arc of contact [rad], 0 or above
 * @throws RangeError if an argument is negative
 * @source common rating rule for synchronous belts (from memory)
 * @example teethInMesh(30, 3.0566845) // 14
 */
export function teethInMesh(teeth: Count, wrap: Angle): Count {
  requireNotNegative("teethInMesh: teeth", teeth);
  requireNotNegative("teethInMesh: wrap", wrap, "rad");
  // The grain of 1e-9 keeps half of 30 teeth at 15 where π has been rounded.
  return Math.floor((teeth * wrap) / (2 * Math.PI) + 1e-9) as Count;
}
