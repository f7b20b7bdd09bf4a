import {
  type Length,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  type Temperature,
  type VolumeFlow,
} from "../quantity";

export interface DryExhaustInputs {
  /** volume flow of the gas, hot as it is [m³/s], 0 or above */
  readonly volumeFlow: VolumeFlow;
  /** straight length, with bends added as length [m], 0 or above */
  readonly length: Length;
  /** inside diameter [m], above 0 */
  readonly bore: Length;
  /** temperature of the gas [K], above 0.15 */
  readonly temperature: Temperature;
}

/**
 * Pressure loss of a dry exhaust pipe [Pa]: Δp = 6.32 L Q²/(D⁵ T).
 * A fixed friction factor of about 0.022 and the density of exhaust gas at ambient pressure stand in the 6.32.
 * Silencer, riser and water lift are not included. Dry pipes burn: lag or guard any surface above 93 °C (200 °F).
 *
 * @param pipe volume flow [m³/s], length [m], bore [m], temperature [K]
 * @throws RangeError if an argument is outside its span
 * @source formula read in a public installation document for marine engines; ABYC P-1 as quoted by a public page
 * @example dryExhaustLoss({ volumeFlow: 0.9, length: 6, bore: 0.2, temperature: 723.15 }) // 132.7593
 */
export function dryExhaustLoss({ volumeFlow, length, bore, temperature }: DryExhaustInputs): PressureDifference {
  requireNotNegative("dryExhaustLoss: volumeFlow", volumeFlow, "m³/s");
  requireNotNegative("dryExhaustLoss: length", length, "m");
  requirePositive("dryExhaustLoss: bore", bore, "m");
  const sourceTemperature = temperature - 0.15; // the source adds 273 to °C
  requirePositive("dryExhaustLoss: temperature − 0.15", sourceTemperature, "K");
  return ((6.32 * length * volumeFlow ** 2) / (bore ** 5 * sourceTemperature)) as PressureDifference;
}
