import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type { Fraction, Ratio, RotationalSpeed, Torque } from "../quantity/kinds";

/** An engine's full-load line between idle and rated speed. */
export interface FullLoad {
  /** torque at the rated speed [N·m], above 0 */
  readonly ratedTorque: Torque;
  /** rated speed [rev/s], above 0 */
  readonly ratedSpeed: RotationalSpeed;
  /** highest torque over the rated one, less 1 [–], 0 to 1 */
  readonly torqueRise: Fraction;
  /** speed of the highest torque over the rated speed [–], 0.3 to 0.95 */
  readonly peakSpeedRatio: Ratio;
}

/**
 * Torque at full load and a speed [N·m]: a parabola through the rated point with its top at the speed of the highest
 * torque, T = T_r [1 + b − b ((n − n_p)/(n_r − n_p))²]. Not below zero; a measured line goes before it.
 *
 * @param engine rated torque and speed, rise and place of the highest torque [N·m, rev/s, –]
 * @param speed crankshaft speed [rev/s], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source common practice, no source: a parabola for a turbocharged diesel's line
 * @example fullLoadTorque({ ratedTorque: 1000, ratedSpeed: 40, torqueRise: 0.2, peakSpeedRatio: 0.6 }, 24) // 1200
 */
export function fullLoadTorque(engine: FullLoad, speed: RotationalSpeed): Torque {
  const { ratedTorque, ratedSpeed, torqueRise, peakSpeedRatio } = engine;
  requirePositive("fullLoadTorque: ratedTorque", ratedTorque, "N·m");
  requirePositive("fullLoadTorque: ratedSpeed", ratedSpeed, "rev/s");
  requireWithin("fullLoadTorque: torqueRise", torqueRise, [0, 1]);
  requireWithin("fullLoadTorque: peakSpeedRatio", peakSpeedRatio, [0.3, 0.95]);
  requireNotNegative("fullLoadTorque: speed", speed, "rev/s");
  const off = (speed / ratedSpeed - peakSpeedRatio) / (1 - peakSpeedRatio);
  return Math.max(0, ratedTorque * (1 + torqueRise * (1 - off ** 2))) as Torque;
}
