import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type { Fraction, MassFlow, Power, SpecificEnergy, SpecificFuelConsumption } from "../quantity/kinds";

/** Everything that the gas must bring to the pistons on their compression and expansion strokes. */
export interface PowerTakers {
  /** power at the flywheel [W] */
  readonly brakePower: Power;
  /** power lost to friction [W] */
  readonly frictionPower: Power;
  /** power of alternator, pumps and fan at the crank [W] */
  readonly accessoryPower: Power;
  /** power of the blower at the crank [W] */
  readonly blowerPower: Power;
  /** power spent on the exchange of gas, negative for a gain [W] */
  readonly pumpingPower: Power;
  /** power of the high-pressure fuel pump at the crank [W] */
  readonly fuelPumpPower: Power;
}

/**
 * Gross indicated power [W]: what compression and expansion strokes must give, the sum of all that takes from them.
 *
 * @param takers brake, friction, accessories, blower, pumping and fuel pump [W]
 * @throws RangeError if the sum is not a number above zero
 * @source definition
 * @example indicatedPower({ brakePower: 700e3, frictionPower: 90e3, accessoryPower: 5e3, blowerPower: 80e3, pumpingPower: -20e3, fuelPumpPower: 12e3 }) // 867000
 */
export function indicatedPower(takers: PowerTakers): Power {
  const { brakePower, frictionPower, accessoryPower, blowerPower, pumpingPower, fuelPumpPower } = takers;
  const sum = brakePower + frictionPower + accessoryPower + blowerPower + pumpingPower + fuelPumpPower;
  requirePositive("indicatedPower: sum of all parts", sum, "W");
  return sum as Power;
}

/** What turns fuel into gross indicated power. */
export interface IndicatedConversion {
  /** gross indicated power [W], 0 or above */
  readonly indicatedPower: Power;
  /** gross indicated power over fuel power [–], 0.05 to 0.65 */
  readonly grossIndicatedEfficiency: Fraction;
  /** lower heating value of the fuel [J/kg], above 0 */
  readonly lowerHeatingValue: SpecificEnergy;
}

/**
 * Fuel flow for a gross indicated power [kg/s]: ṁ = P/(η H).
 *
 * @param conversion power, efficiency and heating value [W, –, J/kg]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example fuelFlowForIndicatedPower({ indicatedPower: 900e3, grossIndicatedEfficiency: 0.46, lowerHeatingValue: 42.7e6 }) // 0.04582018
 */
export function fuelFlowForIndicatedPower(conversion: IndicatedConversion): MassFlow {
  const { indicatedPower, grossIndicatedEfficiency, lowerHeatingValue } = conversion;
  requireNotNegative("fuelFlowForIndicatedPower: indicatedPower", indicatedPower, "W");
  requireWithin("fuelFlowForIndicatedPower: grossIndicatedEfficiency", grossIndicatedEfficiency, [0.05, 0.65]);
  requirePositive("fuelFlowForIndicatedPower: lowerHeatingValue", lowerHeatingValue, "J/kg");
  return (indicatedPower / (grossIndicatedEfficiency * lowerHeatingValue)) as MassFlow;
}

/**
 * Fuel burnt for the work at the brake [kg/J]: ṁ/P. Times 3.6e9 it is in g/(kW·h).
 *
 * @param fuelFlow fuel flow [kg/s], 0 or above
 * @param brakePower power at the flywheel [W], above 0
 * @throws RangeError if the fuel flow is negative or the power not above zero
 * @source definition
 * @example brakeSpecificFuelConsumption(0.0458, 708e3) // 6.46893e-8
 */
export function brakeSpecificFuelConsumption(fuelFlow: MassFlow, brakePower: Power): SpecificFuelConsumption {
  requireNotNegative("brakeSpecificFuelConsumption: fuelFlow", fuelFlow, "kg/s");
  requirePositive("brakeSpecificFuelConsumption: brakePower", brakePower, "W");
  return (fuelFlow / brakePower) as SpecificFuelConsumption;
}

/**
 * Share of the fuel's lower heating value that reaches the brake [–]: η = P/(ṁ H) = 1/(b H).
 *
 * @param specificFuelConsumption fuel burnt for the work at the brake [kg/J], above 0
 * @param lowerHeatingValue lower heating value of the fuel [J/kg], above 0
 * @throws RangeError if an argument is not above zero
 * @source definition
 * @example brakeEfficiency(200 / 3.6e9, 42.8e6) // 0.4205607
 */
export function brakeEfficiency(
  specificFuelConsumption: SpecificFuelConsumption,
  lowerHeatingValue: SpecificEnergy,
): Fraction {
  requirePositive("brakeEfficiency: specificFuelConsumption", specificFuelConsumption, "kg/J");
  requirePositive("brakeEfficiency: lowerHeatingValue", lowerHeatingValue, "J/kg");
  return (1 / (specificFuelConsumption * lowerHeatingValue)) as Fraction;
}
