import { type Area, type Fraction, requireNotNegative, requirePositive, type ThermalConductance } from "../quantity";

export interface FouledSurface {
  /** UA of the clean exchanger [W/K], above 0 */
  readonly cleanConductance: ThermalConductance;
  /** surface to which the fouling resistance belongs [m²], above 0 */
  readonly area: Area;
  /** fouling resistance of both sides, referred to that surface [m²·K/W], 0 or above */
  readonly foulingResistance: number;
}

/**
 * UA of an exchanger whose surface has fouled [W/K]: 1/UA = 1/UA_clean + R/A.
 * Resistances often used for design: sea water below 50 °C about 0.0001, above 50 °C 0.0002, treated closed coolant
 * 0.0002, engine oil 0.0002 m²·K/W. Growth in a warm harbour passes these within a season; clean on
 * a fixed date (common practice, no source).
 *
 * @param surface clean UA [W/K], area [m²], fouling resistance [m²·K/W]
 * @throws RangeError if an argument is outside its span
 * @source definition; resistances: Incropera et al., Fundamentals of Heat and Mass Transfer, table 11.1 (from memory)
 * @example fouledConductance({ cleanConductance: 5000, area: 4, foulingResistance: 0.0002 }) // 4000
 */
export function fouledConductance(surface: FouledSurface): ThermalConductance {
  requireSurface("fouledConductance", surface);
  const { cleanConductance, area, foulingResistance } = surface;
  return (1 / (1 / cleanConductance + foulingResistance / area)) as ThermalConductance;
}

/**
 * Cleanliness of a fouled exchanger [–], above 0 to 1: UA over UA_clean.
 *
 * @param surface clean UA [W/K], area [m²], fouling resistance [m²·K/W]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example cleanliness({ cleanConductance: 5000, area: 4, foulingResistance: 0.0002 }) // 0.8
 */
export function cleanliness(surface: FouledSurface): Fraction {
  return (fouledConductance(surface) / surface.cleanConductance) as Fraction;
}

function requireSurface(caller: string, { cleanConductance, area, foulingResistance }: FouledSurface): void {
  requirePositive(`${caller}: cleanConductance`, cleanConductance, "W/K");
  requirePositive(`${caller}: area`, area, "m²");
  requireNotNegative(`${caller}: foulingResistance`, foulingResistance, "m²·K/W");
}
