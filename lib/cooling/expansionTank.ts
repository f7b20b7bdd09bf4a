import { boilingTemperature, type Liquid } from "../fluid";
import {
  type GaugePressure,
  type Pressure,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
  type Volume,
} from "../quantity";

export interface ExpansionInputs {
  readonly coolant: Liquid;
  /** coolant in the whole circuit when cold [m³], above 0 */
  readonly circuitVolume: Volume;
  /** temperature at filling [K], within the coolant's span */
  readonly coldTemperature: Temperature;
  /** mean temperature of the circuit at its hottest [K], coldTemperature or above */
  readonly hotTemperature: Temperature;
}

/**
 * Volume that coolant gains from cold to hot [m³]: ΔV = V (ρ_cold/ρ_hot − 1).
 * The circuit's own growth (iron takes back less than a tenth) is left out; hoses give a little more. The tank
 * must hold this above its cold mark, below it a reserve, and air over all.
 *
 * @param expansion coolant, circuit volume [m³], cold and hot temperature [K]
 * @throws RangeError if an argument is outside its span
 * @source conservation of mass
 * @example expansionVolume({ coolant: water, circuitVolume: 0.05, coldTemperature: 288.15, hotTemperature: 363.15 }) // 0.00175
 */
export function expansionVolume({ coolant, circuitVolume, coldTemperature, hotTemperature }: ExpansionInputs): Volume {
  requirePositive("expansionVolume: circuitVolume", circuitVolume, "m³");
  requireWithin("expansionVolume: hotTemperature", hotTemperature, [coldTemperature, coolant.temperatureSpan[1]], "K");
  return (circuitVolume * (coolant.density(coldTemperature) / coolant.density(hotTemperature) - 1)) as Volume;
}

export interface BoilingInputs {
  readonly coolant: Liquid;
  /** pressure of the air outside, absolute [Pa], above 0 */
  readonly ambientPressure: Pressure;
  /** gauge pressure at which the cap opens [Pa], 0 or above; 0 for an open tank */
  readonly capPressure: GaugePressure;
  /** hottest bulk temperature of the coolant [K], above 0 */
  readonly temperature: Temperature;
}

/**
 * Room between the hottest coolant and its boiling under the cap [K]: T_boil(p_ambient + p_cap) − T; below 0 it boils.
 * Metal round an exhaust port is hotter than the bulk, and the pump's suction side lies below cap pressure: keep
 * 10–15 K in hand (common practice, no source). A cap that leaks gives nothing: reckon with 0 gauge as well.
 * Never open a cap on a hot engine: the coolant flashes to steam and scalds.
 *
 * @param circuit coolant, ambient pressure [Pa], cap pressure [Pa], temperature [K]
 * @throws RangeError if an argument is outside its span
 * @source boiling temperature of the liquid at its pressure
 * @example boilingMargin({ coolant: water, ambientPressure: 101325, capPressure: 100000, temperature: 368.15 }) // 25.4
 */
export function boilingMargin(circuit: BoilingInputs): TemperatureDifference {
  const { coolant, ambientPressure, capPressure, temperature } = circuit;
  requirePositive("boilingMargin: ambientPressure", ambientPressure, "Pa");
  requireNotNegative("boilingMargin: capPressure", capPressure, "Pa");
  requirePositive("boilingMargin: temperature", temperature, "K");
  const underCap = (ambientPressure + capPressure) as Pressure;
  return (boilingTemperature(coolant, underCap) - temperature) as TemperatureDifference;
}
