import { dryAir, type Gas } from "../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  Density,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  Ratio,
  RotationalSpeed,
  SpecificFuelConsumption,
  Temperature,
  Volume,
} from "../quantity/kinds";

/** Fuel, and how much air it is to have. */
export interface AirForFuel {
  /** fuel flow [kg/s], 0 or above */
  readonly fuelFlow: MassFlow;
  /** air over the least air for complete combustion [–], 0.5 to 100 */
  readonly excessAirRatio: Ratio;
  /** dry air for complete combustion of one kilogram of fuel [kg/kg], above 0 */
  readonly stoichiometricAirFuelRatio: Ratio;
}

/**
 * Flow of dry air that a fuel flow asks for [kg/s]: ṁ = λ L ṁ_fuel. Water vapour comes on top: see humidAirFlow.
 *
 * @param demand fuel flow, excess air ratio and stoichiometric ratio [kg/s, –, kg/kg]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example airFlowForFuel({ fuelFlow: 0.046, excessAirRatio: 1.65, stoichiometricAirFuelRatio: 14.5 }) // 1.10055
 */
export function airFlowForFuel({ fuelFlow, excessAirRatio, stoichiometricAirFuelRatio }: AirForFuel): MassFlow {
  requireNotNegative("airFlowForFuel: fuelFlow", fuelFlow, "kg/s");
  requireWithin("airFlowForFuel: excessAirRatio", excessAirRatio, [0.5, 100]);
  requirePositive("airFlowForFuel: stoichiometricAirFuelRatio", stoichiometricAirFuelRatio, "kg/kg");
  return (excessAirRatio * stoichiometricAirFuelRatio * fuelFlow) as MassFlow;
}

/**
 * Flow of air with its water vapour [kg/s], from the flow of dry air: ṁ (1 + w).
 *
 * @param dryAirFlow flow of dry air [kg/s], 0 or above
 * @param humidityRatio water vapour per kilogram of dry air [kg/kg], 0 to 0.2
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example humidAirFlow(1.1, 0.01) // 1.111
 */
export function humidAirFlow(dryAirFlow: MassFlow, humidityRatio: Ratio): MassFlow {
  requireNotNegative("humidAirFlow: dryAirFlow", dryAirFlow, "kg/s");
  requireWithin("humidAirFlow: humidityRatio", humidityRatio, [0, 0.2], "kg/kg");
  return (dryAirFlow * (1 + humidityRatio)) as MassFlow;
}

/** What a four-stroke engine needs from its manifold. */
export interface BreathingDemand {
  /** flow of air into the engine, vapour included [kg/s], 0 or above */
  readonly airFlow: MassFlow;
  /** filling of the cylinders, against manifold density [–], 0.3 to 1.3 */
  readonly volumetricEfficiency: Fraction;
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
}

/**
 * Charge density in the manifold at which a four-stroke engine draws an air flow [kg/m³]: ρ = 2 ṁ/(η V N).
 * Air blown through at valve overlap is not counted.
 *
 * @param demand air flow, filling, displacement and speed [kg/s, –, m³, rev/s]
 * @throws RangeError if an argument is outside its span
 * @source J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §2.10 (section from memory)
 * @example manifoldDensityNeeded({ airFlow: 0.216, volumetricEfficiency: 0.9, displacement: 6e-3, engineSpeed: 40 }) // 2
 */
export function manifoldDensityNeeded(demand: BreathingDemand): Density {
  const { airFlow, volumetricEfficiency, displacement, engineSpeed } = demand;
  requireNotNegative("manifoldDensityNeeded: airFlow", airFlow, "kg/s");
  requireWithin("manifoldDensityNeeded: volumetricEfficiency", volumetricEfficiency, [0.3, 1.3]);
  requirePositive("manifoldDensityNeeded: displacement", displacement, "m³");
  requirePositive("manifoldDensityNeeded: engineSpeed", engineSpeed, "rev/s");
  return ((2 * airFlow) / (volumetricEfficiency * displacement * engineSpeed)) as Density;
}

/**
 * Absolute pressure that gives a charge its density [Pa]: p = ρ R T.
 *
 * @param density charge density wanted in the manifold [kg/m³], 0 or above
 * @param temperature charge temperature in the manifold [K], above 0
 * @param gas the charge [–]; dry air if left out
 * @throws RangeError if the density is negative or the temperature not above zero
 * @source ideal gas law
 * @example manifoldPressureNeeded(4.5, 320) / 1e5 // 4.134
 */
export function manifoldPressureNeeded(density: Density, temperature: Temperature, gas: Gas = dryAir): Pressure {
  requireNotNegative("manifoldPressureNeeded: density", density, "kg/m³");
  requirePositive("manifoldPressureNeeded: temperature", temperature, "K");
  return (density * gas.gasConstant * temperature) as Pressure;
}

/**
 * Air flow by the trade's rule of so much air per power [kg/s]: a first guess to hold the worked-out demand against.
 * One pound of air a minute for one horsepower is 1.01380e-5 kg/J.
 *
 * @param power power at the flywheel [W], 0 or above
 * @param airPerEnergy air for the work at the brake [kg/J], above 0
 * @throws RangeError if the power is negative or the air per energy not above zero
 * @source common practice, no source
 * @example ruleOfThumbAirFlow(708e3, 0.165 * 1.0138e-5) // 1.18432
 */
export function ruleOfThumbAirFlow(power: Power, airPerEnergy: SpecificFuelConsumption): MassFlow {
  requireNotNegative("ruleOfThumbAirFlow: power", power, "W");
  requirePositive("ruleOfThumbAirFlow: airPerEnergy", airPerEnergy, "kg/J");
  return (power * airPerEnergy) as MassFlow;
}
