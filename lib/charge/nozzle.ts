import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type { Area, MassFlow, Pressure, Ratio, SpecificHeat, Temperature } from "../quantity/kinds";

/** A gas about to flow through a nozzle, and the pressure beyond it. */
export interface NozzleState {
  /** total pressure before the nozzle [Pa], above 0 */
  readonly pressure: Pressure;
  /** total temperature before the nozzle [K], above 0 */
  readonly temperature: Temperature;
  /** static pressure beyond it [Pa], 0 to the pressure before */
  readonly downstreamPressure: Pressure;
  /** gas constant [J/(kg·K)], above 0 */
  readonly gasConstant: SpecificHeat;
  /** ratio of specific heats [–], above 1 to 1.7 */
  readonly ratioOfSpecificHeats: Ratio;
}

/**
 * Pressure ratio, before over beyond, from which a nozzle chokes [–]: ((γ + 1)/2)^(γ/(γ − 1)).
 *
 * @param ratioOfSpecificHeats ratio of specific heats [–], above 1 to 1.7
 * @throws RangeError if the ratio is outside its span
 * @source isentropic flow of an ideal gas
 * @example criticalPressureRatio(1.33) // 1.850604
 */
export function criticalPressureRatio(ratioOfSpecificHeats: Ratio): Ratio {
  requireWithin("criticalPressureRatio: ratioOfSpecificHeats", ratioOfSpecificHeats, [1.0001, 1.7]);
  const g = ratioOfSpecificHeats;
  return (((g + 1) / 2) ** (g / (g - 1))) as Ratio;
}

/**
 * Mass flow for each square metre of effective nozzle area [kg/(s·m²)]:
 * p/√(R T) √(2γ/(γ − 1) (x^(2/γ) − x^((γ+1)/γ))) with x the pressure beyond over that before, not below the critical.
 *
 * @param state pressures, temperature and gas [Pa, K, J/(kg·K), –]
 * @throws RangeError if an argument is outside its span
 * @source isentropic flow of an ideal gas
 * @example nozzleMassFlux({ pressure: 2.4e5, temperature: 950, downstreamPressure: 1.2e5, gasConstant: 287, ratioOfSpecificHeats: 1.33 }) // 309.1603
 */
export function nozzleMassFlux(state: NozzleState): number {
  const { pressure, temperature, downstreamPressure, gasConstant, ratioOfSpecificHeats: g } = state;
  requirePositive("nozzleMassFlux: pressure", pressure, "Pa");
  requirePositive("nozzleMassFlux: temperature", temperature, "K");
  requirePositive("nozzleMassFlux: gasConstant", gasConstant, "J/(kg·K)");
  requireWithin("nozzleMassFlux: downstreamPressure", downstreamPressure, [0, pressure], "Pa");
  const x = Math.max(downstreamPressure / pressure, 1 / criticalPressureRatio(g));
  // max: at x = 1 rounding may leave a negative zero's worth
  const bracket = Math.max(0, x ** (2 / g) - x ** ((g + 1) / g));
  return (pressure / Math.sqrt(gasConstant * temperature)) * Math.sqrt(((2 * g) / (g - 1)) * bracket);
}

/**
 * Mass flow through a nozzle [kg/s], choked beyond the critical pressure ratio.
 * A radial turbine chokes less sharply than this and its apparent area falls a little with speed.
 *
 * @param area effective flow area [m²], 0 or above
 * @param state pressures, temperature and gas [Pa, K, J/(kg·K), –]
 * @throws RangeError if an argument is outside its span
 * @source isentropic flow of an ideal gas
 * @example nozzleMassFlow(0.0012, { pressure: 2.4e5, temperature: 950, downstreamPressure: 1.2e5, gasConstant: 287, ratioOfSpecificHeats: 1.33 }) // 0.3709923
 */
export function nozzleMassFlow(area: Area, state: NozzleState): MassFlow {
  requireNotNegative("nozzleMassFlow: area", area, "m²");
  return (area * nozzleMassFlux(state)) as MassFlow;
}

/**
 * Effective area that passes a mass flow [m²]: the inverse of nozzleMassFlow.
 *
 * @param massFlow flow through the nozzle [kg/s], 0 or above
 * @param state pressures, which must differ, temperature and gas [Pa, K, J/(kg·K), –]
 * @throws RangeError if an argument is outside its span or the pressures are alike
 * @source isentropic flow of an ideal gas
 * @example nozzleArea(0.3709923, { pressure: 2.4e5, temperature: 950, downstreamPressure: 1.2e5, gasConstant: 287, ratioOfSpecificHeats: 1.33 }) // 0.0012
 */
export function nozzleArea(massFlow: MassFlow, state: NozzleState): Area {
  requireNotNegative("nozzleArea: massFlow", massFlow, "kg/s");
  const flux = nozzleMassFlux(state);
  requirePositive("nozzleArea: flow for each square metre", flux, "kg/(s·m²)");
  return (massFlow / flux) as Area;
}
