import { brentRoot } from "../numeric";
import {
  type Fraction,
  type Pressure,
  type Ratio,
  requirePositive,
  requireWithin,
  type Span,
  type Temperature,
} from "../quantity";
import { vapourToAirMolarMass } from "./air";
import {
  saturationPressureSpan,
  saturationTemperature,
  saturationTemperatureSpan,
  saturationVapourPressure,
} from "./saturation";

/** Air as a weather station gives it. */
export interface WeatherAir {
  /** dry-bulb temperature [K], 223.15 to 647.096, below boiling at the pressure */
  readonly temperature: Temperature;
  /** pressure of air and vapour together [Pa], above 0 */
  readonly pressure: Pressure;
  /** vapour pressure over saturation pressure at the temperature, over ice below 0 °C [–], 0 to 1 */
  readonly relativeHumidity: Fraction;
}

/** Moist air of known temperature and make-up. */
export interface MoistAirState {
  /** dry-bulb temperature [K], 223.15 to 647.096 */
  readonly temperature: Temperature;
  /** pressure of air and vapour together [Pa], above 0 */
  readonly pressure: Pressure;
  /** water vapour [kg per kg of dry air], 0 or above */
  readonly humidityRatio: Ratio;
}

/** Pressure and make-up of moist air. */
export type MoistAirMix = Pick<MoistAirState, "pressure" | "humidityRatio">;

const fractionSpan: Span = [0, 1];

/** Humidity ratios that a mix may have [kg/kg]: far beyond saturated air, short of steam with a trace of air. */
const mixSpan: Span = [0, 100];

/**
 * Water vapour in air [kg per kg of dry air]: W = 0.62196 pᵥ/(p − pᵥ), pᵥ = φ p_sat(T).
 * Perfect-gas mixing; real air at 1 bar holds about 0.5 % more at saturation.
 *
 * @param state temperature [K], pressure [Pa] and relative humidity [–]
 * @throws RangeError outside the spans, and where the vapour alone would have the pressure: the water boils
 * @source ASHRAE Handbook Fundamentals (2017), chapter 1, equation 20 (from memory); saturation by IAPWS R7-97
 * @example humidityRatio({temperature: 298.15, pressure: 100000, relativeHumidity: 0.3}) // 0.00597119
 */
export function humidityRatio({ temperature, pressure, relativeHumidity }: WeatherAir): Ratio {
  requirePositive("humidityRatio: pressure", pressure, "Pa");
  requireWithin("humidityRatio: relativeHumidity", relativeHumidity, fractionSpan);
  return ratioAt("humidityRatio", pressure, relativeHumidity * saturationVapourPressure(temperature), temperature);
}

/**
 * Partial pressure of the vapour in moist air [Pa]: pᵥ = p W/(0.62196 + W).
 *
 * @param state pressure [Pa] and humidity ratio [kg/kg]
 * @throws RangeError if the pressure is not above 0 or the humidity ratio is negative or above 100
 * @source ASHRAE Handbook Fundamentals (2017), chapter 1, equation 36 (from memory)
 * @example vapourPressure({pressure: 101325, humidityRatio: 0.01}) // 1603.333
 */
export function vapourPressure({ pressure, humidityRatio }: MoistAirMix): Pressure {
  requirePositive("vapourPressure: pressure", pressure, "Pa");
  requireWithin("vapourPressure: humidityRatio", humidityRatio, mixSpan, "kg/kg");
  return ((pressure * humidityRatio) / (vapourToAirMolarMass + humidityRatio)) as Pressure;
}

/**
 * Temperature at which moist air, cooled at its pressure, begins to drop water, below 0 °C frost [K]. Compression raises it.
 *
 * @param state pressure [Pa] and humidity ratio [kg/kg]
 * @throws RangeError if the air is so dry that not even frost forms above −50 °C (vapour pressure below 3.936 Pa)
 * @source IAPWS R7-97, region 4, and R14-08, at the partial pressure of the vapour
 * @example dewPoint({pressure: 280000, humidityRatio: 0.01626}) // 312.503
 */
export function dewPoint(state: MoistAirMix): Temperature {
  const vapour = vapourPressure(state);
  if (vapour >= saturationPressureSpan[0]) return saturationTemperature(vapour);
  throw new RangeError(
    `dewPoint: humidityRatio is ${Number(state.humidityRatio.toPrecision(6))} kg/kg; at ${Number(state.pressure.toPrecision(6))} Pa it must be at least ${Number(ratioAt("dewPoint", state.pressure, saturationPressureSpan[0], saturationTemperatureSpan[0]).toPrecision(6))} kg/kg, or there is neither dew nor frost above ${Number(saturationTemperatureSpan[0].toPrecision(6))} K`,
  );
}

/**
 * Most vapour that air can hold at a temperature and pressure [kg per kg of dry air]. What is above it turns to water.
 *
 * @param state temperature [K] and pressure [Pa]
 * @throws RangeError outside the spans, and where water boils at this pressure
 * @source ASHRAE Handbook Fundamentals (2017), chapter 1, equation 21 (from memory); saturation by IAPWS R7-97
 * @example saturationHumidityRatio({temperature: 313.15, pressure: 280000}) // 0.01684736
 */
export function saturationHumidityRatio({
  temperature,
  pressure,
}: Pick<MoistAirState, "temperature" | "pressure">): Ratio {
  requirePositive("saturationHumidityRatio: pressure", pressure, "Pa");
  return ratioAt("saturationHumidityRatio", pressure, saturationVapourPressure(temperature), temperature);
}

/**
 * Vapour pressure over saturation pressure at the temperature [–]; above 1 the air cannot hold its water.
 *
 * @param state temperature [K], pressure [Pa] and humidity ratio [kg/kg]
 * @throws RangeError outside the spans of vapourPressure and saturationVapourPressure
 * @source definition
 * @example relativeHumidity({temperature: 298.15, pressure: 100000, humidityRatio: 0.00597119}) // 0.3
 */
export function relativeHumidity({ temperature, ...mix }: MoistAirState): Ratio {
  return (vapourPressure(mix) / saturationVapourPressure(temperature)) as Ratio;
}

/**
 * Temperature to which air cools by evaporating water at its own pressure until it is saturated [K], the wet bulb t* of
 * W = ((2501 − 2.326 t*) W_sat(t*) − 1.006 (t − t*))/(2501 + 1.86 t − 4.186 t*), temperatures in °C;
 * with ice on the bulb, below 0 °C, W = ((2830 − 0.24 t*) W_sat(t*) − 1.006 (t − t*))/(2830 + 1.86 t − 2.1 t*).
 * A sling psychrometer reads it within a few tenths of a kelvin.
 *
 * @param state temperature [K], pressure [Pa] and humidity ratio [kg/kg]
 * @throws RangeError if the air holds more than it can, or if its wet bulb lies below −50 °C
 * @source ASHRAE Handbook Fundamentals (2017), chapter 1, equations 33 and 35 (from memory)
 * @example wetBulbTemperature({temperature: 298.15, pressure: 101325, humidityRatio: 0.011895}) // 292.619
 */
export function wetBulbTemperature({ temperature, pressure, humidityRatio }: MoistAirState): Temperature {
  requireWithin("wetBulbTemperature: humidityRatio", humidityRatio, mixSpan, "kg/kg");
  const dry = temperature - 273.15;
  // Surplus of vapour that the air could still hold at the bulb, over what its cooling pays for.
  const surplus = (wet: number) => {
    const t = wet - 273.15;
    const held = saturationHumidityRatio({ temperature: wet as Temperature, pressure });
    const w =
      t < 0
        ? ((2830 - 0.24 * t) * held - 1.006 * (dry - t)) / (2830 + 1.86 * dry - 2.1 * t)
        : ((2501 - 2.326 * t) * held - 1.006 * (dry - t)) / (2501 + 1.86 * dry - 4.186 * t);
    return w - humidityRatio;
  };
  const warmest = Math.min(temperature, saturationTemperature(pressure) - 0.01);
  const left = surplus(warmest);
  if (left < -saturatedSlack * humidityRatio) {
    throw new RangeError(
      `wetBulbTemperature: humidityRatio is ${Number(humidityRatio.toPrecision(6))} kg/kg; air of ${Number(temperature.toPrecision(6))} K and ${Number(pressure.toPrecision(6))} Pa cannot hold so much`,
    );
  }
  if (left <= 0) return temperature;
  const name = "wetBulbTemperature: temperature of the wet bulb [K]";
  return brentRoot(surplus, [saturationTemperatureSpan[0], warmest], { name, tolerance: 1e-9 }).root as Temperature;
}

/** Air that holds more than it can by this share is taken as saturated: rounding, not water. */
const saturatedSlack = 1e-9;

function ratioAt(name: string, pressure: number, vapour: number, temperature: number): Ratio {
  if (vapour < pressure) return ((vapourToAirMolarMass * vapour) / (pressure - vapour)) as Ratio;
  throw new RangeError(
    `${name}: pressure is ${Number(pressure.toPrecision(6))} Pa; it must be above the vapour pressure ${Number(vapour.toPrecision(6))} Pa at ${Number(temperature.toPrecision(6))} K`,
  );
}
