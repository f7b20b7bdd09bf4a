import type { Gas } from "../fluid";
import { requireNotNegative, requirePositive } from "../quantity/guard";
import type { MassFlow, Power, SpecificEnergy, Temperature } from "../quantity/kinds";

/** Everything that crosses the boundary of the gas in the cylinders, but for the exhaust. */
export interface CylinderGasBalance {
  /** fuel flow [kg/s], 0 or above */
  readonly fuelFlow: MassFlow;
  /** lower heating value of the fuel, which enters at 298.15 K [J/kg], above 0 */
  readonly lowerHeatingValue: SpecificEnergy;
  /** flow of air with its vapour [kg/s], above 0 */
  readonly airFlow: MassFlow;
  /** charge temperature in the manifold [K], within the gas's span */
  readonly manifoldTemperature: Temperature;
  /** gross indicated power less pumping power [W] */
  readonly netGasPower: Power;
  /** heat from the gas to cylinder, head and port walls [W] */
  readonly heatToWalls: Power;
  /** the charge [–] */
  readonly charge: Gas;
  /** the exhaust gas, of the same humidity [–] */
  readonly exhaustGas: Gas;
}

/**
 * Temperature of the exhaust at the turbine inlet [K], from the first law on the gas in the cylinders:
 * ṁ_f H + ṁ_a h(T_manifold) = net gas power + heat to walls + (ṁ_a + ṁ_f) h_exhaust(T).
 * A mean by enthalpy: the pulses of the single cylinders swing far about it. Incomplete combustion is left out.
 *
 * @param balance flows, powers, heat and gases [kg/s, J/kg, K, W]
 * @throws RangeError if flows are not above zero, or what is left for the exhaust is below its enthalpy at 200 K or above that at 2500 K
 * @source first law for a steady flow; J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §12.2 (from memory)
 * @example exhaustTemperature({ fuelFlow: 0.046, lowerHeatingValue: 42.8e6, airFlow: 1.1, manifoldTemperature: 330, netGasPower: 890e3, heatToWalls: 300e3, charge: dryAir, exhaustGas: burntGas({ excessAirRatio: 1.65 }) }) // 935.84
 */
export function exhaustTemperature(balance: CylinderGasBalance): Temperature {
  const { fuelFlow, lowerHeatingValue, airFlow, manifoldTemperature, netGasPower, heatToWalls } = balance;
  requireNotNegative("exhaustTemperature: fuelFlow", fuelFlow, "kg/s");
  requirePositive("exhaustTemperature: lowerHeatingValue", lowerHeatingValue, "J/kg");
  requirePositive("exhaustTemperature: airFlow", airFlow, "kg/s");
  const brought = fuelFlow * lowerHeatingValue + airFlow * balance.charge.enthalpy(manifoldTemperature);
  const enthalpy = (brought - netGasPower - heatToWalls) / (airFlow + fuelFlow);
  return balance.exhaustGas.temperatureAtEnthalpy(enthalpy as SpecificEnergy);
}

/** Exhaust that leaves an engine, and the air that came in. */
export interface LeavingExhaust {
  /** flow of exhaust gas [kg/s], above 0 */
  readonly exhaustFlow: MassFlow;
  /** temperature at which it leaves, after the turbine [K], within the gas's span */
  readonly exhaustTemperature: Temperature;
  /** flow of air with its vapour [kg/s], 0 or above */
  readonly airFlow: MassFlow;
  /** temperature of the surroundings, at which the air came [K], within the gas's span */
  readonly ambientTemperature: Temperature;
  /** the charge [–] */
  readonly charge: Gas;
  /** the exhaust gas [–] */
  readonly exhaustGas: Gas;
}

/**
 * Heat that leaves with the exhaust, above the heat of the air that came in [W]: ṁ_e h_e(T_e) − ṁ_a h_a(T_ambient).
 * The vapour of combustion is not condensed: the balance is one of lower heating values.
 *
 * @param exhaust flows, temperatures and gases [kg/s, K]
 * @throws RangeError if a flow is outside its span, or a temperature outside the gas's span
 * @source first law for a steady flow
 * @example exhaustHeat({ exhaustFlow: 1.15, exhaustTemperature: 800, airFlow: 1.1, ambientTemperature: 298.15, charge: dryAir, exhaustGas: burntGas({ excessAirRatio: 1.65 }) }) // 632217
 */
export function exhaustHeat(exhaust: LeavingExhaust): Power {
  const { exhaustFlow, airFlow, charge, exhaustGas } = exhaust;
  requirePositive("exhaustHeat: exhaustFlow", exhaustFlow, "kg/s");
  requireNotNegative("exhaustHeat: airFlow", airFlow, "kg/s");
  const carriedOut = exhaustFlow * exhaustGas.enthalpy(exhaust.exhaustTemperature);
  return (carriedOut - airFlow * charge.enthalpy(exhaust.ambientTemperature)) as Power;
}
