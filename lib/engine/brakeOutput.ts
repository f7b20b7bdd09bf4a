import { requireNotNegative, requirePositive } from "../quantity/guard";
import type { Power, PressureDifference, RotationalSpeed, Torque, Volume } from "../quantity/kinds";

/** Power of a four-stroke engine, at a speed. */
export interface PowerAtSpeed {
  /** power to be spread over the swept volume [W], 0 or above */
  readonly power: Power;
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
}

/**
 * Mean effective pressure at the brake of a four-stroke engine [Pa]: one working stroke in two turns, p = 2 P/(V N).
 *
 * @param output power, displacement and speed [W, m³, rev/s]
 * @throws RangeError if the power is negative, or displacement or speed not above zero
 * @source definition
 * @example brakeMeanEffectivePressure({ power: 210e3, displacement: 5.9e-3, engineSpeed: 2500 / 60 }) // 1708475
 */
export function brakeMeanEffectivePressure({ power, displacement, engineSpeed }: PowerAtSpeed): PressureDifference {
  requireNotNegative("brakeMeanEffectivePressure: power", power, "W");
  requirePositive("brakeMeanEffectivePressure: displacement", displacement, "m³");
  requirePositive("brakeMeanEffectivePressure: engineSpeed", engineSpeed, "rev/s");
  return ((2 * power) / (displacement * engineSpeed)) as PressureDifference;
}

/** A mean effective pressure of a four-stroke engine, at a speed. */
export interface MeanEffectivePressureAtSpeed {
  /** work of one cycle over the swept volume [Pa]; negative where work is taken back */
  readonly meanEffectivePressure: PressureDifference;
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
}

/**
 * Power behind a mean effective pressure of a four-stroke engine [W]: P = p V N/2.
 *
 * @param cycle mean effective pressure, displacement and speed [Pa, m³, rev/s]
 * @throws RangeError if displacement or speed is not above zero
 * @source definition
 * @example powerFromMeanEffectivePressure({ meanEffectivePressure: 3e5, displacement: 0.01, engineSpeed: 50 }) // 75000
 */
export function powerFromMeanEffectivePressure(cycle: MeanEffectivePressureAtSpeed): Power {
  const { meanEffectivePressure, displacement, engineSpeed } = cycle;
  requirePositive("powerFromMeanEffectivePressure: displacement", displacement, "m³");
  requirePositive("powerFromMeanEffectivePressure: engineSpeed", engineSpeed, "rev/s");
  return ((meanEffectivePressure * displacement * engineSpeed) / 2) as Power;
}

/**
 * Torque of a shaft that passes a power at a speed [N·m]: T = P/(2π N).
 *
 * @param power power at the shaft [W]
 * @param engineSpeed shaft speed [rev/s], above 0
 * @throws RangeError if the speed is not above zero
 * @source definition
 * @example brakeTorque(708e3, 3200 / 60) // 2112.8
 */
export function brakeTorque(power: Power, engineSpeed: RotationalSpeed): Torque {
  requirePositive("brakeTorque: engineSpeed", engineSpeed, "rev/s");
  return (power / (2 * Math.PI * engineSpeed)) as Torque;
}

/**
 * Power that a torque passes at a speed [W]: P = 2π N T.
 *
 * @param torque torque at the shaft [N·m]
 * @param engineSpeed shaft speed [rev/s], above 0
 * @throws RangeError if the speed is not above zero
 * @source definition
 * @example powerFromTorque(900, 2600 / 60) // 245044.2
 */
export function powerFromTorque(torque: Torque, engineSpeed: RotationalSpeed): Power {
  requirePositive("powerFromTorque: engineSpeed", engineSpeed, "rev/s");
  return (2 * Math.PI * engineSpeed * torque) as Power;
}
