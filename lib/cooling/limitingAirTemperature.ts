import {
  type Power,
  requireNotNegative,
  requirePositive,
  type Temperature,
  type ThermalConductance,
} from "../quantity";

export interface RadiatorTrial {
  /** heat that the radiator passed in the trial [W], above 0 */
  readonly heat: Power;
  /** coolant going into the radiator in the trial [K], above airInlet */
  readonly coolantInlet: Temperature;
  /** air going into the core in the trial [K], above 0 */
  readonly airInlet: Temperature;
}

/**
 * Heat that a radiator passes per kelvin between the inlets of coolant and air [W/K]: Q/(T_coolant − T_air) = ε Cmin.
 * It stays as it is while both flows stay; a radiator of known UA has it from exchangerOutlets as crossflow, unmixed.
 *
 * @param trial heat [W], coolant and air inlet temperatures [K]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example radiatorPerformance({ heat: 200000, coolantInlet: 363.15, airInlet: 303.15 }) // 3333.33
 */
export function radiatorPerformance({ heat, coolantInlet, airInlet }: RadiatorTrial): ThermalConductance {
  requirePositive("radiatorPerformance: heat", heat, "W");
  requirePositive("radiatorPerformance: airInlet", airInlet, "K");
  requirePositive("radiatorPerformance: coolantInlet − airInlet", coolantInlet - airInlet, "K");
  return (heat / (coolantInlet - airInlet)) as ThermalConductance;
}

/**
 * Hottest air into the core at which the coolant stays at its limit [K]: T_air = T_limit − Q/(ε Cmin).
 * Air that recirculates or passed a charge cooler arrives hotter than the weather: compare with the air at the core.
 *
 * @param performance heat per kelvin between the inlets [W/K], above 0
 * @param heat heat to pass [W], 0 or above
 * @param coolantLimit highest coolant temperature into the radiator [K], above 0
 * @throws RangeError if an argument is outside its span, or no air above absolute zero would do
 * @source energy balance
 * @example limitingAirTemperature(4000, 200000, 373.15) // 323.15
 */
export function limitingAirTemperature(
  performance: ThermalConductance,
  heat: Power,
  coolantLimit: Temperature,
): Temperature {
  requirePositive("limitingAirTemperature: performance", performance, "W/K");
  requireNotNegative("limitingAirTemperature: heat", heat, "W");
  const limit = coolantLimit - heat / performance;
  requirePositive("limitingAirTemperature: limiting temperature", limit, "K");
  return limit as Temperature;
}
