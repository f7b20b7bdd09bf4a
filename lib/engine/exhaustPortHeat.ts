import { airConductivity, airTransportSpan, airViscosity } from "../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type { Length, MassFlow, Power, SpecificHeat, Temperature } from "../quantity/kinds";

export interface ExhaustPort {
  /** mean flow of exhaust through one port [kg/s], above 0 */
  readonly flow: MassFlow;
  /** specific heat of the exhaust [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
  /** mean temperature of the exhaust behind the port [K], 200 to 1500 */
  readonly outletTemperature: Temperature;
  /** bore of the port [m], above 0 */
  readonly bore: Length;
  /** length of its cooled walls, with a water-cooled manifold if there is one [m], 0 or above */
  readonly length: Length;
  /** mean temperature of its walls [K], above 0 */
  readonly wallTemperature: Temperature;
}

/**
 * Heat that the exhaust gives to the walls of one port [W]: Q = ṁ c (T − T_w)(e^N − 1) with N = h π d l/(ṁ c), since the
 * temperature behind the port is the one that is known, and h from Nu = 0.07 Re^0.75 of the mean flow, properties of air.
 * The pulses are in the fit, which gathers measurements that scatter widely about it (r = 0.8): take it as ±50 %.
 *
 * @param port flow, gas and walls [kg/s, J/(kg·K), K, m]
 * @throws RangeError if an argument is outside its span
 * @source C. Depcik, D. Assanis, A Universal Heat Transfer Correlation for Intake and Exhaust Flows in a Spark-Ignition Internal Combustion Engine, SAE 2002-01-0372 (abstract)
 * @example exhaustPortHeat({ flow: 0.118, specificHeat: 1130, outletTemperature: 815, bore: 0.046, length: 0.12, wallTemperature: 493 }) // 2644.25
 */
export function exhaustPortHeat(port: ExhaustPort): Power {
  const { flow, specificHeat, outletTemperature, bore, length, wallTemperature } = port;
  requirePositive("exhaustPortHeat: flow", flow, "kg/s");
  requirePositive("exhaustPortHeat: specificHeat", specificHeat, "J/(kg·K)");
  requireWithin("exhaustPortHeat: outletTemperature", outletTemperature, airTransportSpan, "K");
  requirePositive("exhaustPortHeat: bore", bore, "m");
  requireNotNegative("exhaustPortHeat: length", length, "m");
  requirePositive("exhaustPortHeat: wallTemperature", wallTemperature, "K");
  const reynolds = (4 * flow) / (Math.PI * bore * airViscosity(outletTemperature));
  const coefficient = (0.07 * reynolds ** 0.75 * airConductivity(outletTemperature)) / bore;
  const capacityRate = flow * specificHeat;
  const transferUnits = (coefficient * Math.PI * bore * length) / capacityRate;
  return (capacityRate * (outletTemperature - wallTemperature) * Math.expm1(transferUnits)) as Power;
}
