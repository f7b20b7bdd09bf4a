import {
  type DynamicViscosity,
  requireWithin,
  type Span,
  type Temperature,
  type ThermalConductivity,
} from "../quantity";

/** Temperatures for which the transport properties of air are given [K]. */
export const airTransportSpan: Span = [200, 1500];

/**
 * Dynamic viscosity of air [Pa·s]: μ = 1.458e-6 T^1.5/(T + 110.4). Hardly depends on pressure; humidity lowers it by 1 % at most.
 * Other sets of constants differ by up to 0.5 %; against tables it reads about 2 % low at 1000 K (from memory).
 *
 * @param temperature temperature [K], 200 to 1500
 * @throws RangeError outside airTransportSpan
 * @source Sutherland's formula with the constants of ISO 2533:1975 (from memory)
 * @example airViscosity(288.15) // 1.78938e-5
 */
export function airViscosity(temperature: Temperature): DynamicViscosity {
  requireWithin("airViscosity: temperature", temperature, airTransportSpan, "K");
  return ((1.458e-6 * temperature * Math.sqrt(temperature)) / (temperature + 110.4)) as DynamicViscosity;
}

/**
 * Thermal conductivity of air [W/(m·K)]: k = 2.648151e-3 T^1.5/(T + 245.4·10^(−12/T)).
 *
 * @param temperature temperature [K], 200 to 1500
 * @throws RangeError outside airTransportSpan
 * @source ISO 2533:1975 (constants from memory)
 * @example airConductivity(288.15) // 0.0253428
 */
export function airConductivity(temperature: Temperature): ThermalConductivity {
  requireWithin("airConductivity: temperature", temperature, airTransportSpan, "K");
  const damped = temperature + 245.4 * 10 ** (-12 / temperature);
  return ((2.648151e-3 * temperature * Math.sqrt(temperature)) / damped) as ThermalConductivity;
}
