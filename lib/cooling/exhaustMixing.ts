import type { Gas } from "../fluid";
import { brentRoot } from "../numeric";
import {
  type Fraction,
  type MassFlow,
  type Pressure,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Span,
  type SpecificHeat,
  type Temperature,
  type VolumeFlow,
} from "../quantity";
import { evaporationToSaturation, liquidEnthalpy, steamGasConstant, vapourEnthalpy } from "./exhaustVapour";

/** Exhaust gas, and the state of the sea water that is led into it. */
export interface InjectionInputs {
  /** the exhaust gas, with the water vapour of combustion in it */
  readonly gas: Gas;
  /** mass flow of the gas [kg/s], above 0 */
  readonly gasFlow: MassFlow;
  /** gas in front of the injection [K], 273.16 to 1500 */
  readonly gasTemperature: Temperature;
  /** sea water in front of the injection [K], 271 to 372 */
  readonly waterTemperature: Temperature;
  /** specific heat of the sea water [J/(kg·K)], above 0; about 3990 in the open sea */
  readonly waterSpecificHeat: SpecificHeat;
  /** absolute pressure behind the injection [Pa], 50 to 500 kPa */
  readonly pressure: Pressure;
  /** share of water vapour in the gas before injection, by volume [–], 0 to 0.3; see exhaustVapourFraction */
  readonly vapourFraction: Fraction;
}

export interface ExhaustMixInputs extends InjectionInputs {
  /** mass flow of the sea water [kg/s], 0 or above */
  readonly waterFlow: MassFlow;
}

/** Gas and water behind the injection, in balance with each other. */
export interface ExhaustMix {
  /** common temperature of gas and water [K] */
  readonly temperature: Temperature;
  /** water that evaporated [kg/s]; below 0 where vapour of combustion condensed */
  readonly evaporated: MassFlow;
  /** water that runs on as liquid [kg/s] */
  readonly liquid: MassFlow;
  /** volume of gas and vapour [m³/s], which sets the velocity in the hose */
  readonly gasVolumeFlow: VolumeFlow;
}

/** Temperatures of gas before the injection [K]. */
export const exhaustGasSpan: Span = [273.16, 1500];
/** Temperatures of the water before the injection [K]. */
export const injectionWaterSpan: Span = [271, 372];
/** Absolute pressures behind the injection [Pa]. */
export const exhaustPressureSpan: Span = [5e4, 5e5];
/** Shares of water vapour in the gas before the injection, by volume [–]. */
export const exhaustVapourSpan: Span = [0, 0.3];

/**
 * Exhaust mixed with injected sea water, nothing evaporating [K]: ṁ_g [h(T_g) − h(T)] = ṁ_w c (T − T_w).
 * Where water is scarce the true mix is cooler, since water evaporates; with plenty of cold water it is a little
 * warmer, since vapour of combustion condenses. When the water fails, a hose feels the dry gas, whatever stands here.
 *
 * @param mix gas, flows [kg/s], temperatures [K], specific heat of the water [J/(kg·K)], pressure [Pa]
 * @throws RangeError if an argument is outside its span
 * @source energy balance
 * @example exhaustMixWithoutEvaporation({ gas: dryAir, gasFlow: 0.25, gasTemperature: 700, waterFlow: 2, waterTemperature: 305, waterSpecificHeat: 3990, pressure: 101325, vapourFraction: 0 }).temperature // 317.40
 */
export function exhaustMixWithoutEvaporation(mix: ExhaustMixInputs): ExhaustMix {
  requireMix("exhaustMixWithoutEvaporation", mix);
  const { gas, gasFlow, gasTemperature, waterFlow, waterTemperature, waterSpecificHeat } = mix;
  const heatIn = gas.enthalpy(gasTemperature);
  const excess = (t: number) =>
    gasFlow * (heatIn - gas.enthalpy(t as Temperature)) - waterFlow * waterSpecificHeat * (t - waterTemperature);
  const temperature = brentRoot(
    excess,
    [Math.min(gasTemperature, waterTemperature), Math.max(gasTemperature, waterTemperature)],
    { name: "exhaustMixWithoutEvaporation: temperature" },
  ).root;
  return mixAt(mix, temperature as Temperature, 0);
}

/**
 * Exhaust mixed with injected sea water, which evaporates until the gas is saturated or the water is gone:
 * ṁ_g [h(T_g) − h(T)] + ṁ_w h_l(T_w) = e h_v(T) + (ṁ_w − e) h_l(T), with e from p_sat(T)/p.
 * A hose comes close to this a few bores behind a good injection elbow; a poor spray leaves dry hot gas along the top.
 * The salt lowers the vapour pressure by 2 %, which is left out. Wet exhaust hose is usually laid out for 40–70 °C of
 * the mix (common practice, no source) and its limits (ISO 13363, SAE J2006) speak of the MIXED temperature. Fit an
 * alarm behind the injection: when the water fails, hose and muffler burn through within a minute or two and let in
 * exhaust gas (carbon monoxide) and, below the waterline, the sea (common practice, no source).
 *
 * @param mix gas, flows [kg/s], temperatures [K], water's specific heat [J/(kg·K)], pressure [Pa], vapour share [–]
 * @throws RangeError if an argument is outside its span, or the gas comes below its own dew point
 * @source energy balance and Dalton's law
 * @example exhaustMixSaturated({ gas: dryAir, gasFlow: 0.25, gasTemperature: 700, waterFlow: 0.5, waterTemperature: 305, waterSpecificHeat: 3990, pressure: 101325, vapourFraction: 0 }).temperature // 325.00
 */
export function exhaustMixSaturated(mix: ExhaustMixInputs): ExhaustMix {
  requireMix("exhaustMixSaturated", mix);
  const { gas, gasFlow, gasTemperature, waterFlow, waterTemperature, waterSpecificHeat } = mix;
  if (evaporationToSaturation(mix, gasTemperature) < 0) {
    throw new RangeError(
      `exhaustMixSaturated: gasTemperature is ${Number(gasTemperature.toPrecision(5))} K; ` +
        `it must be above the dew point of its vapour share of ${Number(mix.vapourFraction.toPrecision(3))}`,
    );
  }
  const heatIn =
    gasFlow * gas.enthalpy(gasTemperature) + waterFlow * liquidEnthalpy(waterTemperature, waterSpecificHeat);
  const evaporated = (t: Temperature) => Math.min(waterFlow, evaporationToSaturation(mix, t));
  const excess = (at: number) => {
    const t = at as Temperature;
    const e = evaporated(t);
    return (
      heatIn -
      gasFlow * gas.enthalpy(t) -
      e * vapourEnthalpy(t) -
      (waterFlow - e) * liquidEnthalpy(t, waterSpecificHeat)
    );
  };
  // Without water the gas stays as it came; dry gas and much water can end below the water's own temperature.
  const temperature = brentRoot(excess, [exhaustGasSpan[0], Math.max(gasTemperature, waterTemperature)], {
    name: "exhaustMixSaturated: temperature",
  }).root as Temperature;
  return mixAt(mix, temperature, evaporated(temperature));
}

export function requireInjection(caller: string, mix: InjectionInputs): void {
  requirePositive(`${caller}: gasFlow`, mix.gasFlow, "kg/s");
  requireWithin(`${caller}: gasTemperature`, mix.gasTemperature, exhaustGasSpan, "K");
  requireWithin(`${caller}: waterTemperature`, mix.waterTemperature, injectionWaterSpan, "K");
  requirePositive(`${caller}: waterSpecificHeat`, mix.waterSpecificHeat, "J/(kg·K)");
  requireWithin(`${caller}: pressure`, mix.pressure, exhaustPressureSpan, "Pa");
  requireWithin(`${caller}: vapourFraction`, mix.vapourFraction, exhaustVapourSpan);
}

function requireMix(caller: string, mix: ExhaustMixInputs): void {
  requireInjection(caller, mix);
  requireNotNegative(`${caller}: waterFlow`, mix.waterFlow, "kg/s");
}

function mixAt(mix: ExhaustMixInputs, temperature: Temperature, evaporated: number): ExhaustMix {
  const { gas, gasFlow, waterFlow, pressure } = mix;
  const perTemperature = gasFlow * gas.gasConstant + evaporated * steamGasConstant;
  return {
    temperature,
    evaporated: evaporated as MassFlow,
    liquid: (waterFlow - evaporated) as MassFlow,
    gasVolumeFlow: ((perTemperature * temperature) / pressure) as VolumeFlow,
  };
}
