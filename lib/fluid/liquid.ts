import {
  type Density,
  type DynamicViscosity,
  type Pressure,
  requireWithin,
  type Span,
  type SpecificHeat,
  type Temperature,
  type ThermalConductivity,
} from "../quantity";
import { freezingVapourPressure, saturationPressureSpan, saturationTemperature } from "./saturation";

/** A liquid that carries heat away, at the pressures of a cooling circuit (about 1 to 5 bar). */
export interface Liquid {
  readonly name: string;
  /** temperatures for which the liquid answers [K] */
  readonly temperatureSpan: Span;
  /** temperature at which ice begins to form, at 1 bar [K] */
  readonly freezingTemperature: Temperature;
  /** vapour pressure over that of pure water of the same temperature [–] */
  readonly vapourPressureRatio: number;
  density(temperature: Temperature): Density;
  specificHeat(temperature: Temperature): SpecificHeat;
  dynamicViscosity(temperature: Temperature): DynamicViscosity;
  conductivity(temperature: Temperature): ThermalConductivity;
}

/**
 * Temperature at which ice begins to form in a liquid at 1 bar [K]. Slush flows below it for some kelvins in glycol; supercooling is left out.
 *
 * @param liquid the liquid [–]
 * @source as the liquid says
 * @example freezingTemperature(glycolCoolant(0.5)) // 236.15
 */
export function freezingTemperature(liquid: Liquid): Temperature {
  return liquid.freezingTemperature;
}

/**
 * Temperature at which a liquid boils under a pressure [K]: the saturation temperature of water at p over the liquid's vapour pressure ratio.
 * An opened cap at this temperature throws out boiling coolant: a pressurised circuit is opened cold.
 *
 * @param liquid the liquid [–]
 * @param pressure absolute pressure [Pa], 611.213 to 22.064e6, less in proportion to the ratio
 * @throws RangeError outside that span
 * @source Raoult's law for the water in the liquid; IAPWS R7-97, region 4
 * @example boilingTemperature(water, 101325) // 373.124
 */
export function boilingTemperature(liquid: Liquid, pressure: Pressure): Temperature {
  const ratio = liquid.vapourPressureRatio;
  const span = [freezingVapourPressure * ratio, saturationPressureSpan[1] * ratio] as const;
  requireWithin(`boilingTemperature of ${liquid.name}: pressure`, pressure, span, "Pa");
  return saturationTemperature((pressure / ratio) as Pressure);
}
