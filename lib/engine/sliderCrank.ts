import { requirePositive, requireWithin } from "../quantity/guard";
import type { Angle, CrankAngle, Length, Ratio, RotationalSpeed, Velocity, Volume } from "../quantity/kinds";

/** A crank, its rod, and where it stands. */
export interface CrankPosition {
  /** piston travel from one dead centre to the other, twice the crank radius [m], above 0 */
  readonly stroke: Length;
  /** centre to centre of the connecting rod [m], above half the stroke */
  readonly rodLength: Length;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** crank angle after top dead centre [rad] */
  readonly crankAngle: CrankAngle;
}

/** How the piston moves at one crank angle. */
export interface PistonMotion {
  /** distance of the piston from its top dead centre [m] */
  readonly travel: Length;
  /** piston velocity, positive away from top dead centre [m/s] */
  readonly velocity: Velocity;
  /** piston acceleration, positive away from top dead centre [m/s²] */
  readonly acceleration: number;
  /** angle between rod and cylinder axis [rad] */
  readonly rodAngle: Angle;
}

/**
 * Piston travel, velocity, acceleration and rod angle of a centred crank drive:
 * x = l + a − (a cos θ + √(l² − a² sin² θ)) with a = S/2, and its derivatives at constant speed.
 * Pin offset and the springing of parts are left out.
 *
 * @param position stroke, rod, speed and crank angle [m, m, rev/s, rad]
 * @throws RangeError if a measure is not above zero or the rod is no longer than the crank radius
 * @source J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §2.2 (section from memory)
 * @example pistonMotion({ stroke: 0.12, rodLength: 0.192, engineSpeed: 50, crankAngle: Math.PI / 6 }).velocity // 12.00715
 */
export function pistonMotion({ stroke, rodLength, engineSpeed, crankAngle }: CrankPosition): PistonMotion {
  requirePositive("pistonMotion: stroke", stroke, "m");
  requirePositive("pistonMotion: engineSpeed", engineSpeed, "rev/s");
  requireWithin("pistonMotion: crankAngle", crankAngle, [-1e6, 1e6], "rad");
  const a = stroke / 2;
  if (!(rodLength > a)) {
    throw new RangeError(`pistonMotion: rodLength is ${rodLength} m; it must exceed ${a} m, half the stroke`);
  }
  const omega = 2 * Math.PI * engineSpeed;
  const sine = Math.sin(crankAngle);
  const cosine = Math.cos(crankAngle);
  const reach = Math.sqrt(rodLength ** 2 - (a * sine) ** 2); // the rod's length along the cylinder axis
  // d²(reach)/dθ², from reach² = l² − a² sin² θ
  const reachCurvature = (-(a ** 2) * (cosine ** 2 - sine ** 2) - (a ** 2 * sine * cosine) ** 2 / reach ** 2) / reach;
  return {
    travel: (rodLength + a - a * cosine - reach) as Length,
    velocity: (omega * (a * sine + (a ** 2 * sine * cosine) / reach)) as Velocity,
    acceleration: omega ** 2 * (a * cosine - reachCurvature),
    rodAngle: Math.asin((a * sine) / rodLength) as Angle,
  };
}

/** What encloses the gas of one cylinder while the piston stands off its dead centre. */
export interface CylinderAtTravel {
  /** cylinder diameter [m], above 0 */
  readonly bore: Length;
  /** piston travel from one dead centre to the other [m], above 0 */
  readonly stroke: Length;
  /** largest over smallest volume of the cylinder [–], above 1 */
  readonly compressionRatio: Ratio;
  /** distance of the piston from its top dead centre [m], 0 to the stroke */
  readonly travel: Length;
}

/**
 * Volume of gas in one cylinder [m³]: clearance and the part swept so far, V = V_s/(r − 1) + π/4 B² x.
 *
 * @param cylinder bore, stroke, compression ratio and piston travel [m, m, –, m]
 * @throws RangeError if a measure is outside its span
 * @source definition
 * @example cylinderVolume({ bore: 0.102, stroke: 0.12, compressionRatio: 17.3, travel: 0 }) // 6.015668e-5
 */
export function cylinderVolume({ bore, stroke, compressionRatio, travel }: CylinderAtTravel): Volume {
  requirePositive("cylinderVolume: bore", bore, "m");
  requirePositive("cylinderVolume: stroke", stroke, "m");
  requirePositive("cylinderVolume: compressionRatio less 1", compressionRatio - 1);
  requireWithin("cylinderVolume: travel", travel, [0, stroke], "m");
  const pistonArea = (Math.PI / 4) * bore ** 2;
  return (pistonArea * (stroke / (compressionRatio - 1) + travel)) as Volume;
}
