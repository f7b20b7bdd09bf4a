import { type PressureDifference, requirePositive, type Time } from "../quantity";

/** A spray of known travel time, and another pressure drop. */
export interface SprayTime {
  /** time in which the tip of the spray covers a distance [s], above 0 */
  readonly time: Time;
  /** pressure drop across the nozzle at which it does so [Pa], above 0 */
  readonly pressureDrop: PressureDifference;
  /** pressure drop asked about [Pa], above 0 */
  readonly otherPressureDrop: PressureDifference;
}

/**
 * Time in which the tip of a spray covers the same distance at another pressure drop [s]: t₂ = t₁ √(Δp₁/Δp₂).
 * Nozzle, fuel and gas density stay; break-up and evaporation are left out. To compare, not to predict.
 *
 * @param spray known time [s] and both pressure drops [Pa]
 * @throws RangeError if an argument is not above 0
 * @source Ganesan, Internal Combustion Engines, chapter on fuel injection (attribution from memory)
 * @example sprayTime({ time: 0.02, pressureDrop: 125e5, otherPressureDrop: 225e5 }) // 0.0149071
 */
export function sprayTime({ time, pressureDrop, otherPressureDrop }: SprayTime): Time {
  requirePositive("sprayTime: time", time, "s");
  requirePositive("sprayTime: pressureDrop", pressureDrop, "Pa");
  requirePositive("sprayTime: otherPressureDrop", otherPressureDrop, "Pa");
  return (time * Math.sqrt(pressureDrop / otherPressureDrop)) as Time;
}
