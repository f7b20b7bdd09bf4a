import { requirePositive } from "../quantity/guard";
import type { Count, Length, RotationalSpeed, Velocity, Volume } from "../quantity/kinds";

/** What sets the volume that an engine's pistons sweep. */
export interface CylinderSet {
  /** cylinder diameter [m], above 0 */
  readonly bore: Length;
  /** piston travel from one dead centre to the other [m], above 0 */
  readonly stroke: Length;
  /** number of cylinders [–], above 0 */
  readonly cylinders: Count;
}

/**
 * Swept volume of all cylinders together [m³]: V = z π/4 B² S.
 * Clearance volumes are not counted.
 *
 * @param set bore, stroke and number of cylinders [m, m, –]
 * @throws RangeError if a measure is not above zero
 * @source definition
 * @example sweptVolume({ bore: 0.124, stroke: 0.141, cylinders: 6 }) // 0.010217
 */
export function sweptVolume({ bore, stroke, cylinders }: CylinderSet): Volume {
  requirePositive("sweptVolume: bore", bore, "m");
  requirePositive("sweptVolume: stroke", stroke, "m");
  requirePositive("sweptVolume: cylinders", cylinders);
  return (cylinders * (Math.PI / 4) * bore ** 2 * stroke) as Volume;
}

/**
 * Mean piston speed [m/s]: two strokes in every turn, v = 2 S N.
 * The highest speed within a stroke is about 1.6 times as much.
 *
 * @param stroke piston travel from one dead centre to the other [m], above 0
 * @param engineSpeed crankshaft speed [rev/s], above 0
 * @throws RangeError if an argument is not above zero
 * @source definition
 * @example meanPistonSpeed(0.141, 3200 / 60) // 15.04
 */
export function meanPistonSpeed(stroke: Length, engineSpeed: RotationalSpeed): Velocity {
  requirePositive("meanPistonSpeed: stroke", stroke, "m");
  requirePositive("meanPistonSpeed: engineSpeed", engineSpeed, "rev/s");
  return (2 * stroke * engineSpeed) as Velocity;
}
