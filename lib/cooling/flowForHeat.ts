import {
  type Density,
  type MassFlow,
  type Power,
  requireNotNegative,
  requirePositive,
  type SpecificHeat,
  type TemperatureDifference,
  type VolumeFlow,
} from "../quantity";

export interface HeatCarried {
  /** heat to carry away [W], 0 or above */
  readonly heat: Power;
  /** rise of the stream that carries it [K], above 0 */
  readonly temperatureRise: TemperatureDifference;
  /** specific heat of that stream at its mean temperature [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
}

/**
 * Flow of sea water, coolant or air that carries a heat away at a given rise [kg/s]: ṁ = Q/(c ΔT).
 * Fresh water, sea water and glycol coolant differ by up to a fifth in c: take it from the liquid. A water brake is
 * reckoned the same way, with the share of the power that reaches its water (0.9 to 1, common practice, no source).
 *
 * @param carried heat [W], rise [K], specific heat [J/(kg·K)]
 * @throws RangeError if an argument is outside its span
 * @source energy balance
 * @example massFlowForHeat({ heat: 400000, temperatureRise: 33, specificHeat: 4186 }) // 2.895655
 */
export function massFlowForHeat({ heat, temperatureRise, specificHeat }: HeatCarried): MassFlow {
  requireNotNegative("massFlowForHeat: heat", heat, "W");
  requirePositive("massFlowForHeat: temperatureRise", temperatureRise, "K");
  requirePositive("massFlowForHeat: specificHeat", specificHeat, "J/(kg·K)");
  return (heat / (specificHeat * temperatureRise)) as MassFlow;
}

/**
 * Volume flow that carries a heat away at a given rise [m³/s]: V̇ = Q/(ρ c ΔT).
 * For a test cell add the air that the engine itself breathes, unless it draws from outside.
 *
 * @param carried heat [W], rise [K], specific heat [J/(kg·K)], density of the stream where it is metered [kg/m³]
 * @throws RangeError if an argument is outside its span
 * @source energy balance
 * @example volumeFlowForHeat({ heat: 60000, temperatureRise: 10, specificHeat: 1006, density: 1.18 }) // 5.054419
 */
export function volumeFlowForHeat({ density, ...carried }: HeatCarried & { readonly density: Density }): VolumeFlow {
  requirePositive("volumeFlowForHeat: density", density, "kg/m³");
  return (massFlowForHeat(carried) / density) as VolumeFlow;
}
