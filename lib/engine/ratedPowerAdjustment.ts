import { requirePositive, requireWithin } from "../quantity/guard";
import type { Fraction, Pressure, Ratio, Temperature } from "../quantity/kinds";

/** Reference conditions of a declared power. @source ISO 3046-1:2002 (from memory) */
export const declaredReference = {
  pressure: 100e3 as Pressure,
  temperature: 298 as Temperature,
  /** coolant reaching the charge cooler [K] */
  chargeCoolant: 298 as Temperature,
  relativeHumidity: 0.3 as Fraction,
  /** vapour pressure of saturated air there [Pa] */
  saturationPressure: 3169 as Pressure,
} as const;

/** How pressure, air and coolant temperature count towards the power that an engine may give. */
export interface AdjustmentExponents {
  /** name for readers */
  readonly name: string;
  /** factor of the vapour pressure [–] */
  readonly humidity: number;
  /** exponent of the pressure [–] */
  readonly pressure: number;
  /** exponent of the air's temperature [–] */
  readonly air: number;
  /** exponent of the coolant's temperature at the charge cooler [–] */
  readonly coolant: number;
}

/**
 * Exponents of the adjustment for compression ignition.
 * @source ISO 3046-1:2002, table of exponents (from memory)
 */
export const adjustmentExponents = {
  naturallyAspiratedByAir: {
    name: "naturally aspirated, limited by excess air",
    humidity: 1,
    pressure: 1,
    air: 0.75,
    coolant: 0,
  },
  naturallyAspiratedByHeat: {
    name: "naturally aspirated, limited by heat",
    humidity: 0,
    pressure: 1,
    air: 1,
    coolant: 0,
  },
  turbocharged: { name: "turbocharged without charge cooler", humidity: 0, pressure: 0.7, air: 2, coolant: 0 },
  turbochargedCooled: { name: "turbocharged with charge cooler", humidity: 0, pressure: 0.7, air: 1.2, coolant: 1 },
} as const satisfies Readonly<Record<string, AdjustmentExponents>>;

/** The place where an engine is to run. */
export interface Site {
  /** barometer [Pa], above 0 */
  readonly pressure: Pressure;
  /** air at the intake [K], above 0 */
  readonly temperature: Temperature;
  /** relative humidity [–], 0 to 1 */
  readonly relativeHumidity: Fraction;
  /** vapour pressure of saturated air at that temperature [Pa], above 0 */
  readonly saturationPressure: Pressure;
  /** coolant reaching the charge cooler [K], above 0 */
  readonly chargeCoolant: Temperature;
  /** exponents of the way of charging [–] */
  readonly exponents: AdjustmentExponents;
  /** brake over indicated power [–], 0.5 to 1; 0.8 where the maker states none */
  readonly mechanicalEfficiency: Fraction;
}

/** How power and consumption change from reference conditions to a site. */
export interface PowerAdjustment {
  /** ratio of indicated power [–] */
  readonly indicated: Ratio;
  /** power at the site over the declared one [–]; above 1 it is not to be used unless the maker agrees */
  readonly power: Ratio;
  /** specific consumption at the site over the declared one [–] */
  readonly consumption: Ratio;
}

/**
 * Power that an engine may give at a site over its declared power [–]: α = k − 0.7 (1 − k)(1/η_m − 1),
 * k = [(p − a φ p_s)/(p_r − a φ_r p_sr)]^m (T_r/T)^n (T_cr/T_c)^s, and consumption β = k/α.
 * It adjusts a declared power to a site and corrects no test; a turbocharger with a driven blower is not among the
 * standard's engines, so that whoever uses it must say which line was taken.
 *
 * @param site pressure, temperatures, humidity, exponents and mechanical efficiency [Pa, K, –]
 * @throws RangeError if an argument is outside its span, or no power is left
 * @source ISO 3046-1:2002, clause 10.3 and its table of exponents (from memory)
 * @example powerAdjustment({ pressure: 80000, temperature: 308, relativeHumidity: 0.4, saturationPressure: 5628, chargeCoolant: 310, exponents: adjustmentExponents.naturallyAspiratedByHeat, mechanicalEfficiency: 0.8 }).power // 0.7344805
 */
export function powerAdjustment(site: Site): PowerAdjustment {
  requirePositive("powerAdjustment: pressure", site.pressure, "Pa");
  requirePositive("powerAdjustment: temperature", site.temperature, "K");
  requireWithin("powerAdjustment: relativeHumidity", site.relativeHumidity, [0, 1]);
  requirePositive("powerAdjustment: saturationPressure", site.saturationPressure, "Pa");
  requirePositive("powerAdjustment: chargeCoolant", site.chargeCoolant, "K");
  requireWithin("powerAdjustment: mechanicalEfficiency", site.mechanicalEfficiency, [0.5, 1]);
  const { humidity, pressure, air, coolant } = site.exponents;
  const reference = declaredReference;
  const dry = site.pressure - humidity * site.relativeHumidity * site.saturationPressure;
  const dryReference = reference.pressure - humidity * reference.relativeHumidity * reference.saturationPressure;
  requirePositive("powerAdjustment: pressure less that of the vapour", dry, "Pa");
  const k =
    (dry / dryReference) ** pressure *
    (reference.temperature / site.temperature) ** air *
    (reference.chargeCoolant / site.chargeCoolant) ** coolant;
  const power = k - 0.7 * (1 - k) * (1 / site.mechanicalEfficiency - 1);
  requirePositive("powerAdjustment: power left", power);
  return { indicated: k as Ratio, power: power as Ratio, consumption: (k / power) as Ratio };
}
