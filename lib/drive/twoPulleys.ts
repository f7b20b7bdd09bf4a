import { brentRoot } from "../numeric";
import { type Angle, type Length, requirePositive } from "../quantity";

/** Two pulleys with an open belt around both. */
export interface TwoPulleys {
  /** pitch diameter of one [m], above 0 */
  readonly firstDiameter: Length;
  /** pitch diameter of the other [m], above 0 */
  readonly secondDiameter: Length;
  /** from axis to axis [m], at least half the sum of the diameters */
  readonly centreDistance: Length;
}

/** Two pulleys and the belt that shall go around both. */
export interface TwoPulleysAndBelt extends Omit<TwoPulleys, "centreDistance"> {
  /** pitch length of the belt [m] */
  readonly length: Length;
}

/**
 * Pitch length of an open belt around two pulleys [m]: L = 2 C cos s + π (D + d)/2 + (D − d) s, sin s = (D − d)/(2 C).
 *
 * @param pulleys two pitch diameters and the centre distance [m]
 * @throws RangeError if a diameter is not above 0 or the pulleys overlap
 * @source elementary geometry
 * @example twoPulleyLength({ firstDiameter: 0.1, secondDiameter: 0.1, centreDistance: 0.3 }) // 0.914159
 */
export function twoPulleyLength(pulleys: TwoPulleys): Length {
  const { firstDiameter, secondDiameter, centreDistance } = pulleys;
  const slope = spanSlope("twoPulleyLength", pulleys);
  const straight = 2 * centreDistance * Math.cos(slope);
  const curved = (Math.PI / 2) * (firstDiameter + secondDiameter) + Math.abs(firstDiameter - secondDiameter) * slope;
  return (straight + curved) as Length;
}

/**
 * Arcs of contact of an open belt on two pulleys [rad]: π − 2 s on the smaller, π + 2 s on the larger.
 *
 * @param pulleys two pitch diameters and the centre distance [m]
 * @throws RangeError if a diameter is not above 0 or the pulleys overlap
 * @source elementary geometry
 * @example twoPulleyWraps({ firstDiameter: 0.1, secondDiameter: 0.2, centreDistance: 0.3 }).smaller // 2.806696
 */
export function twoPulleyWraps(pulleys: TwoPulleys): { readonly smaller: Angle; readonly larger: Angle } {
  const slope = spanSlope("twoPulleyWraps", pulleys);
  return { smaller: (Math.PI - 2 * slope) as Angle, larger: (Math.PI + 2 * slope) as Angle };
}

/**
 * Centre distance at which an open belt of given length is just tight around two pulleys [m].
 * Found on the exact length, which grows by 2 cos s for each unit of centre distance.
 *
 * @param drive two pitch diameters and the belt's pitch length [m]
 * @throws RangeError if a diameter is not above 0, or the belt is too short for pulleys that do not overlap
 * @source elementary geometry
 * @example centreDistanceForLength({ firstDiameter: 0.1, secondDiameter: 0.1, length: 0.9141592654 }) // 0.3
 */
export function centreDistanceForLength({ firstDiameter, secondDiameter, length }: TwoPulleysAndBelt): Length {
  const lengthAt = (centreDistance: number) =>
    twoPulleyLength({ firstDiameter, secondDiameter, centreDistance: centreDistance as Length });
  requirePositive("centreDistanceForLength: length", length, "m");
  const nearest = (firstDiameter + secondDiameter) / 2;
  const shortest = lengthAt(nearest);
  if (length < shortest) {
    throw new RangeError(
      `centreDistanceForLength: length is ${Number(length.toPrecision(6))} m; pulleys that touch already need ${Number(shortest.toPrecision(6))} m`,
    );
  }
  // A belt is longer than twice its centre distance, so half its length lies beyond the answer.
  const { root } = brentRoot((c) => lengthAt(c) - length, [nearest, length / 2], {
    name: "centreDistanceForLength: centre distance",
  });
  return root as Length;
}

function spanSlope(name: string, { firstDiameter, secondDiameter, centreDistance }: TwoPulleys): number {
  requirePositive(`${name}: firstDiameter`, firstDiameter, "m");
  requirePositive(`${name}: secondDiameter`, secondDiameter, "m");
  const nearest = (firstDiameter + secondDiameter) / 2;
  if (!(centreDistance >= nearest && centreDistance < Number.POSITIVE_INFINITY)) {
    throw new RangeError(
      `${name}: centreDistance is ${centreDistance} m; it must be at least ${Number(nearest.toPrecision(6))} m, half the sum of the pulley diameters`,
    );
  }
  return Math.asin(Math.abs(firstDiameter - secondDiameter) / (2 * centreDistance));
}
