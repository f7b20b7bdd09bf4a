import { requirePositive, requireWithin, type Span } from "../quantity/guard";
import type { MassFlow, Pressure, Ratio, RotationalSpeed, Temperature, Volume } from "../quantity/kinds";

/** Dry pressure and temperature to which power is corrected. @source ISO 1585 and SAE J1349 (from memory) */
export const correctionReference = { dryPressure: 99e3 as Pressure, temperature: 298 as Temperature };

/** How far a way of charging lets pressure and temperature through to the power. */
export interface AtmosphericExponents {
  /** name for readers */
  readonly name: string;
  /** exponent of the reference pressure over the dry pressure [–] */
  readonly pressure: number;
  /** exponent of the temperature over the reference temperature [–] */
  readonly temperature: number;
}

/**
 * Exponents for compression ignition, by the way of charging. None is known for turbochargers with a driven blower:
 * whoever corrects such an engine must say which line they took.
 * @source ISO 1585 form, and 30 CFR 7.87 for the last line (read in public reproductions)
 */
export const atmosphericExponents: readonly AtmosphericExponents[] = [
  { name: "naturally aspirated or mechanically charged", pressure: 1, temperature: 0.7 },
  { name: "turbocharged, no cooler or air-to-air cooler (ISO 1585)", pressure: 0.7, temperature: 1.2 },
  { name: "turbocharged, air-to-liquid cooler (ISO 1585)", pressure: 0.7, temperature: 0.7 },
  { name: "turbocharged, all (30 CFR 7.87, older R24)", pressure: 0.7, temperature: 1.5 },
];

/** The air of a test, and how the engine is charged. */
export interface TestAir {
  /** barometer less vapour pressure [Pa], above 0 */
  readonly dryPressure: Pressure;
  /** air temperature at the intake [K], above 0 */
  readonly temperature: Temperature;
  /** exponents of the way of charging [–] */
  readonly exponents: AtmosphericExponents;
}

/**
 * Atmospheric factor of a test of a compression-ignition engine [–]: (99 kPa/p_dry)^a (T/298 K)^b; above 1 in thin or hot air.
 *
 * @param air dry pressure, temperature and exponents [Pa, K, –]
 * @throws RangeError if pressure or temperature is not above zero
 * @source ISO 1585 form (read in a public reproduction)
 * @example atmosphericFactor({ dryPressure: 95e3, temperature: 298, exponents: atmosphericExponents[0] }) // 1.0421053
 */
export function atmosphericFactor({ dryPressure, temperature, exponents }: TestAir): Ratio {
  requirePositive("atmosphericFactor: dryPressure", dryPressure, "Pa");
  requirePositive("atmosphericFactor: temperature", temperature, "K");
  const thinner = (correctionReference.dryPressure / dryPressure) ** exponents.pressure;
  return (thinner * (temperature / correctionReference.temperature) ** exponents.temperature) as Ratio;
}

/** Fuel of a tested four-stroke engine, and how much it is charged. */
export interface TestFuel {
  /** fuel flow [kg/s], above 0 */
  readonly fuelFlow: MassFlow;
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** manifold pressure over pressure of the open air; 1 without charging [–], above 0 */
  readonly boostPressureRatio: Ratio;
}

/**
 * Engine factor of a test of a four-stroke compression-ignition engine [–]: 0.036 q − 1.14, where q is the fuel for
 * each litre and cycle in mg over the boost ratio; 0.2 below q = 37.2 and 1.2 above 65. The joint at 37.2 is uneven by 0.0008.
 *
 * @param fuel fuel flow, displacement, speed and boost ratio [kg/s, m³, rev/s, –]
 * @throws RangeError if an argument is not above zero
 * @source ISO 1585 form (read in a public reproduction; limits from memory)
 * @example engineFactor({ fuelFlow: 7e-3, displacement: 5.9e-3, engineSpeed: 2500 / 60, boostPressureRatio: 1 }) // 0.9101695
 */
export function engineFactor({ fuelFlow, displacement, engineSpeed, boostPressureRatio }: TestFuel): Ratio {
  requirePositive("engineFactor: fuelFlow", fuelFlow, "kg/s");
  requirePositive("engineFactor: displacement", displacement, "m³");
  requirePositive("engineFactor: engineSpeed", engineSpeed, "rev/s");
  requirePositive("engineFactor: boostPressureRatio", boostPressureRatio);
  const perCycle = (2 * fuelFlow * 1e6) / (engineSpeed * displacement * 1000); // mg for each litre and cycle
  const reduced = perCycle / boostPressureRatio;
  if (reduced < 37.2) return 0.2 as Ratio;
  if (reduced > 65) return 1.2 as Ratio;
  return (0.036 * reduced - 1.14) as Ratio;
}

/** Factors for which the standards accept a correction [–]. Outside, the test should be repeated in other air. */
export const acceptedCorrection: Span = [0.9, 1.1];

/**
 * Factor by which a measured power is multiplied to get the power in reference air [–]: f_a^f_m.
 * Outside acceptedCorrection it is still given; a standard test is void there.
 *
 * @param atmospheric atmospheric factor [–], 0.5 to 2
 * @param engine engine factor [–], 0.19 to 1.21
 * @throws RangeError if a factor is outside its span
 * @source ISO 1585 form (read in a public reproduction)
 * @example powerCorrectionFactor(1.037342, 0.910169492) // 1.0339313
 */
export function powerCorrectionFactor(atmospheric: Ratio, engine: Ratio): Ratio {
  requireWithin("powerCorrectionFactor: atmospheric", atmospheric, [0.5, 2]);
  requireWithin("powerCorrectionFactor: engine", engine, [0.19, 1.21]);
  return (atmospheric ** engine) as Ratio;
}
