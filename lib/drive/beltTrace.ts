import type { Angle, Length } from "../quantity";
import type { BeltLayout, BeltSpan, Pulley } from "./beltLayout";

/** The common tangents of a layout and the arcs between them, before anyone has asked whether a belt can lie so. */
export interface BeltTrace {
  /** turning sense of each pulley seen from the front, +1 counterclockwise */
  readonly senses: readonly (1 | -1)[];
  readonly spans: readonly BeltSpan[];
  readonly wraps: readonly Angle[];
}

/** An arc this close under a full turn is a belt that just touches, seen through rounding. */
const touching = 1e-9;

/** Tangents and arcs of a layout. @throws RangeError naming two neighbours that no tangent joins */
export function beltTrace({ pulleys, travel }: BeltLayout): BeltTrace {
  const forward = travel === "counterclockwise" ? 1 : -1;
  const senses = pulleys.map((pulley): 1 | -1 => (pulley.contact === "toothed" ? forward : forward === 1 ? -1 : 1));
  const spans = pulleys.map((pulley, i) => {
    const next = (i + 1) % pulleys.length;
    return tangentSpan(pulley, senses[i]!, pulleys[next]!, senses[next]!);
  });
  const wraps = pulleys.map((_, i) => {
    const before = spans.at(i - 1)!;
    return wrapBetween(before.direction, spans[i]!.direction, senses[i]!);
  });
  return { senses, spans, wraps };
}

/**
 * The straight piece of belt from one pulley to the next. With signed radii ρ = s r, the belt leaves the line of
 * centres by asin((ρ₂ − ρ₁)/D), and touches each pulley ρ to the right of its centre.
 */
export function tangentSpan(from: Pulley, fromSense: number, to: Pulley, toSense: number): BeltSpan {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const between = Math.hypot(dx, dy);
  const fromRadius = fromSense * from.pitchRadius;
  const toRadius = toSense * to.pitchRadius;
  const offset = toRadius - fromRadius;
  if (!(between > Math.abs(offset))) {
    throw new RangeError(
      `beltRun: no straight belt joins ${from.name} and ${to.name}; their centres are ${inMillimetres(between)} apart and must be more than ${inMillimetres(Math.abs(offset))} apart`,
    );
  }
  const direction = Math.atan2(dy, dx) - Math.asin(offset / between);
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  return {
    from: from.name,
    to: to.name,
    start: { x: (from.x + fromRadius * sin) as Length, y: (from.y - fromRadius * cos) as Length },
    end: { x: (to.x + toRadius * sin) as Length, y: (to.y - toRadius * cos) as Length },
    length: Math.sqrt((between - offset) * (between + offset)) as Length,
    direction: Math.atan2(sin, cos) as Angle,
  };
}

function wrapBetween(directionIn: number, directionOut: number, sense: number): Angle {
  const turn = 2 * Math.PI;
  const angle = (((sense * (directionOut - directionIn)) % turn) + turn) % turn;
  return (angle > turn - touching ? 0 : angle) as Angle;
}

/** A length as a message shows it. */
export function inMillimetres(length: number): string {
  return `${Number((1000 * length).toPrecision(4))} mm`;
}
