import { type Pressure, requireWithin, type Span, type SpecificEnergy, type Temperature } from "../quantity";

/** Temperatures of the saturation line [K]: over ice from −50 °C, over liquid water from 0 °C to the critical point. */
export const saturationTemperatureSpan: Span = [273.15 - 50, 647.096];

/** Pressure of the vapour over liquid water at 0 °C [Pa], where boiling ends and frost begins. */
export const freezingVapourPressure = 611.212677 as Pressure;

const freezing = 273.15; // K

/** Coefficients n₁ to n₁₀ of the saturation line, every digit of the source (read in public implementations). */
const n1 = 0.11670521452767e4;
const n2 = -0.72421316703206e6;
const n3 = -0.17073846940092e2;
const n4 = 0.1202082470247e5;
const n5 = -0.32325550322333e7;
const n6 = 0.1491510861353e2;
const n7 = -0.48232657361591e4;
const n8 = 0.40511340542057e6;
const n9 = -0.23855557567849;
const n10 = 0.65017534844798e3;

/**
 * Pressure of water vapour at saturation [Pa], over liquid water from 0 °C, over ice below.
 * Weather stations state humidity over supercooled water even below 0 °C: at −10 °C that saturation is 10 % higher than this one.
 * The small rise under the pressure of air (0.4 % at 1 bar) is left out. At 0 °C the two formulas are 0.01 % apart.
 *
 * @param temperature temperature [K], 223.15 to 647.096
 * @throws RangeError outside saturationTemperatureSpan
 * @source IAPWS Industrial Formulation 1997 (R7-97), region 4, equation 30; ice: IAPWS R14-08 (2011), equation 6 (read in public implementations)
 * @example saturationVapourPressure(300) // 3536.58941
 */
export function saturationVapourPressure(temperature: Temperature): Pressure {
  requireWithin("saturationVapourPressure: temperature", temperature, saturationTemperatureSpan, "K");
  if (temperature < freezing) return overIce(temperature) as Pressure;
  const theta = temperature + n9 / (temperature - n10);
  const a = (theta + n1) * theta + n2;
  const b = (n3 * theta + n4) * theta + n5;
  const c = (n6 * theta + n7) * theta + n8;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return (1e6 * root * root * root * root) as Pressure;
}

/** Vapour pressure of ice [Pa]: IAPWS R14-08, equation 6, θ over the triple point. */
function overIce(temperature: number): number {
  const theta = temperature / 273.16;
  const sum =
    -0.212144006e2 * theta ** 0.333333333e-2 +
    0.273203819e2 * theta ** 0.120666667e1 -
    0.61059813e1 * theta ** 0.170333333e1;
  return 611.657 * Math.exp(sum / theta);
}

/** Pressures of the saturation line [Pa], at the ends of saturationTemperatureSpan. */
export const saturationPressureSpan: Span = [overIce(saturationTemperatureSpan[0]), 22.064e6];

/**
 * Temperature at which vapour of a pressure is saturated [K]: the inverse of saturationVapourPressure. From 611.213 Pa up it
 * is where water boils, in closed form; below, where frost forms.
 *
 * @param pressure absolute pressure of the vapour [Pa], 3.936 to 22.064e6
 * @throws RangeError outside saturationPressureSpan
 * @source IAPWS Industrial Formulation 1997 (R7-97), region 4, equation 31; ice: IAPWS R14-08 solved by Newton's method
 * @example saturationTemperature(1e5) // 372.755919
 */
export function saturationTemperature(pressure: Pressure): Temperature {
  requireWithin("saturationTemperature: pressure", pressure, saturationPressureSpan, "Pa");
  if (pressure < freezingVapourPressure) return frostTemperature(pressure) as Temperature;
  const beta = Math.sqrt(Math.sqrt(pressure / 1e6));
  const e = (beta + n3) * beta + n6;
  const f = (n1 * beta + n4) * beta + n7;
  const g = (n2 * beta + n5) * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return ((n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2) as Temperature;
}

/**
 * Newton's method for 1/T over ln p, which is all but straight (slope R/L, 461.5/2.834e6 per kelvin): seven steps reach
 * the last digit. The gap of 0.01 % between the two formulas belongs to 0 °C.
 */
function frostTemperature(pressure: number): number {
  let t = freezing;
  for (let i = 0; i < 7; i++) t = 1 / (1 / t + (461.5 / 2.834e6) * Math.log(overIce(t) / pressure));
  return Math.min(freezing, Math.max(saturationTemperatureSpan[0], t));
}

/** Temperatures for which heatOfVaporization answers [K]. */
export const vaporizationSpan: Span = [saturationTemperatureSpan[0], 273.15 + 150];

/**
 * Heat that turns water of a temperature into saturated vapour of the same temperature [J/kg]: liquid water from 0 °C, ice
 * below, which takes the heat of melting too, a step of 0.333 MJ/kg.
 *
 * @param temperature temperature [K], 223.15 to 423.15
 * @throws RangeError outside vaporizationSpan
 * @source own fit of the fourth degree in °C to IAPWS R7-97, regions 1 and 2 on the saturation line, largest gap 0.002 %; ice:
 * R. R. Rogers, M. K. Yau, A Short Course in Cloud Physics (1989), table 2.1 as a quadratic (from memory)
 * @example heatOfVaporization(313.15) // 2.40599e6
 */
export function heatOfVaporization(temperature: Temperature): SpecificEnergy {
  requireWithin("heatOfVaporization: temperature", temperature, vaporizationSpan, "K");
  const t = temperature - 273.15;
  if (temperature < freezing) return (2834.1e3 - t * (0.29e3 + t * 4)) as SpecificEnergy;
  const slope = -2.36756861e3 + t * (2.31726419e-1 + t * (-7.98463307e-3 - t * 1.94835316e-5));
  return (2.50088553e6 + t * slope) as SpecificEnergy;
}
