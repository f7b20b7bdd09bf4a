import { type Pressure, requireWithin, type Span, type Temperature } from "../quantity";

/** Temperatures of the vapour pressure's line [K]: −20 to 100 °C; its table ends at 38 °C. */
export const fuelVapourSpan: Span = [273.15 - 20, 273.15 + 100];

/**
 * Vapour pressure of diesel fuel [Pa]: p = e^(12.101 − 8907/T) psi with T in degrees Rankine, a line through the table
 * for distillate fuel oil No. 2. It stays below a thousandth of the air's pressure to 70 °C: what comes out of fuel on a
 * pump's suction side is air that was dissolved in it, long before vapour. Gasoline in the fuel changes all of this.
 *
 * @param temperature temperature [K], 253.15 to 373.15
 * @throws RangeError outside fuelVapourSpan
 * @source US EPA, AP-42, chapter 7.1, table 7.1-2 and its constants (from memory)
 * @example fuelVapourPressure(310.928) // 152.14
 */
export function fuelVapourPressure(temperature: Temperature): Pressure {
  requireWithin("fuelVapourPressure: temperature", temperature, fuelVapourSpan, "K");
  return (6894.757293168 * Math.exp(12.101 - 8907 / (1.8 * temperature))) as Pressure;
}
