import { type Density, type Length, type Pressure, requireWithin, type Span, type Temperature } from "../quantity";

/** Still dry air at an altitude. */
export interface StandardAir {
  readonly temperature: Temperature;
  readonly pressure: Pressure;
  readonly density: Density;
}

/** Geopotential altitudes of the standard troposphere [m]. */
export const standardAltitudeSpan: Span = [-2000, 11000];

/** The standard's own constants: air at altitude 0, its gas constant, gravity and fall of temperature with height. */
const groundTemperature = 288.15; // K
const groundPressure = 101325; // Pa
const gasConstant = 287.05287; // J/(kg·K)
const gravity = 9.80665; // m/s²
const lapse = 0.0065; // K/m

/**
 * Standard atmosphere at an altitude [K, Pa, kg/m³]: T = 288.15 − 0.0065 H, p = 101325 (T/288.15)^5.25588, ρ = p/(R T).
 * Dry air; altitude is geopotential (5000 m by the map are 4996 m). Weather is left out: ±3 % of pressure is common.
 *
 * @param altitude geopotential altitude [m], −2000 to 11000
 * @throws RangeError outside standardAltitudeSpan
 * @source ISO 2533:1975, Standard Atmosphere (constants from memory)
 * @example standardAtmosphere(2000).pressure // 79495.2
 */
export function standardAtmosphere(altitude: Length): StandardAir {
  requireWithin("standardAtmosphere: altitude", altitude, standardAltitudeSpan, "m");
  const temperature = groundTemperature - lapse * altitude;
  const pressure = groundPressure * (temperature / groundTemperature) ** (gravity / (gasConstant * lapse));
  return {
    temperature: temperature as Temperature,
    pressure: pressure as Pressure,
    density: (pressure / (gasConstant * temperature)) as Density,
  };
}

/**
 * Geopotential altitude of a height above the sea [m]: H = r Z/(r + Z), r = 6356766 m. Gravity's fall with height is folded into it.
 *
 * @param height geometric height above the sea [m], −2000 to 11019
 * @throws RangeError outside that span
 * @source ISO 2533:1975 (constants from memory)
 * @example geopotentialAltitude(2500) // 2499.01718
 */
export function geopotentialAltitude(height: Length): Length {
  requireWithin("geopotentialAltitude: height", height, [-2000, 11019], "m");
  return ((earthRadius * height) / (earthRadius + height)) as Length;
}

const earthRadius = 6356766; // m
