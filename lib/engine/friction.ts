import { requireNotNegative } from "../quantity/guard";
import type { Power, Pressure, PressureDifference, Ratio, RotationalSpeed, Velocity, Volume } from "../quantity/kinds";
import { powerFromMeanEffectivePressure } from "./brakeOutput";

/** Coefficients of a friction line that rises with peak pressure and piston speed. */
export interface FrictionCoefficients {
  /** part that depends on neither [Pa] */
  readonly constant: PressureDifference;
  /** friction per peak cylinder pressure [Pa/Pa] */
  readonly perPeakPressure: Ratio;
  /** friction per mean piston speed [Pa/(m/s)] */
  readonly perPistonSpeed: number;
  /** friction per square of the mean piston speed [Pa/(m/s)²] */
  readonly perPistonSpeedSquared: number;
}

/**
 * Coefficients of the first published line: 0.137 bar + p_max/200 + 0.162 bar per m/s, without a squared term.
 * @source S. K. Chen, P. Flynn, Development of a Single Cylinder Compression Ignition Research Engine, SAE 650733 (1965) (from memory)
 */
export const chenFlynnCoefficients: FrictionCoefficients = {
  constant: 0.137e5 as PressureDifference,
  perPeakPressure: 0.005 as Ratio,
  perPistonSpeed: 0.162e5,
  perPistonSpeedSquared: 0,
};

/** What the friction of an engine depends on. */
export interface FrictionState {
  /** highest pressure in the cylinder [Pa], 0 or above */
  readonly peakPressure: Pressure;
  /** mean piston speed [m/s], 0 or above */
  readonly meanPistonSpeed: Velocity;
  /** coefficients of the line [Pa, –, Pa/(m/s), Pa/(m/s)²]; chenFlynnCoefficients if left out */
  readonly coefficients?: FrictionCoefficients;
}

/**
 * Mean effective pressure lost to rubbing and to the engine's own auxiliaries [Pa]: a + b p_max + c v + d v².
 * Single-cylinder figures of 1965: a multi-cylinder engine may lie a third lower, so the coefficients are arguments.
 *
 * @param state peak pressure, mean piston speed and coefficients [Pa, m/s]
 * @throws RangeError if the peak pressure or the piston speed is negative
 * @source S. K. Chen, P. Flynn, Development of a Single Cylinder Compression Ignition Research Engine, SAE 650733 (1965) (from memory)
 * @example frictionMeanEffectivePressure({ peakPressure: 120e5, meanPistonSpeed: 10 }) // 235700
 */
export function frictionMeanEffectivePressure(state: FrictionState): PressureDifference {
  const { peakPressure, meanPistonSpeed, coefficients = chenFlynnCoefficients } = state;
  requireNotNegative("frictionMeanEffectivePressure: peakPressure", peakPressure, "Pa");
  requireNotNegative("frictionMeanEffectivePressure: meanPistonSpeed", meanPistonSpeed, "m/s");
  const { constant, perPeakPressure, perPistonSpeed, perPistonSpeedSquared } = coefficients;
  return (constant +
    perPeakPressure * peakPressure +
    perPistonSpeed * meanPistonSpeed +
    perPistonSpeedSquared * meanPistonSpeed ** 2) as PressureDifference;
}

/** A friction mean effective pressure, at a speed. */
export interface FrictionAtSpeed {
  /** mean effective pressure lost to friction [Pa], 0 or above */
  readonly frictionMeanEffectivePressure: PressureDifference;
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
}

/**
 * Power lost to friction in a four-stroke engine [W]: P = p V N/2.
 *
 * @param state friction mean effective pressure, displacement and speed [Pa, m³, rev/s]
 * @throws RangeError if the friction is negative, or displacement or speed not above zero
 * @source definition
 * @example frictionPower({ frictionMeanEffectivePressure: 3.6e5, displacement: 0.01, engineSpeed: 50 }) // 90000
 */
export function frictionPower(state: FrictionAtSpeed): Power {
  requireNotNegative("frictionPower: frictionMeanEffectivePressure", state.frictionMeanEffectivePressure, "Pa");
  const { frictionMeanEffectivePressure: meanEffectivePressure, displacement, engineSpeed } = state;
  return powerFromMeanEffectivePressure({ meanEffectivePressure, displacement, engineSpeed });
}
