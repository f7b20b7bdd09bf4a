import { type BurntMix, burntGasComposition, type Gas, gasOf, saturationVapourPressure } from "../fluid";
import {
  type Fraction,
  type MassFlow,
  type Power,
  type Pressure,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Temperature,
} from "../quantity";

/** Pure water vapour, for what evaporates into exhaust. */
const steam: Gas = gasOf("water vapour", { nitrogen: 0, oxygen: 0, argon: 0, carbonDioxide: 0, waterVapour: 1 });

/** The zero of enthalpy of every gas and, here, of liquid water [K]. */
const zero = 298.15 as Temperature;

/** Heat of evaporation of water at 25 °C [J/kg]. @source IAPWS steam tables (from memory: 2441.7 kJ/kg) */
const evaporationHeatAtZero = 2441.7e3;

/** Above this temperature the vapour pressure of water exceeds 7 bar, beyond any pressure in a wet exhaust [K]. */
const surelyBoiling = 440;

/**
 * Share of water vapour in diesel exhaust before injection, by volume [–]: water of the fuel's hydrogen and of the damp
 * air over all products.
 *
 * @param mix excess air [–], humidity of the air [kg/kg] and fuel
 * @throws RangeError as burntGas does
 * @source balance of elements
 * @example exhaustVapourFraction({ excessAirRatio: 2 }) // 0.0641
 */
export function exhaustVapourFraction(mix: BurntMix): Fraction {
  const amounts = burntGasComposition(mix);
  const all = amounts.nitrogen + amounts.oxygen + amounts.argon + amounts.carbonDioxide + amounts.waterVapour;
  return (amounts.waterVapour / all) as Fraction;
}

/** Enthalpy of water vapour above liquid water at 25 °C [J/kg]. */
export function vapourEnthalpy(temperature: Temperature): number {
  return evaporationHeatAtZero + steam.enthalpy(temperature);
}

/** Enthalpy of injected water above liquid water at 25 °C [J/kg]. */
export function liquidEnthalpy(temperature: Temperature, specificHeat: number): number {
  return specificHeat * (temperature - zero);
}

/** Gas constant of water vapour [J/(kg·K)]. */
export const steamGasConstant: number = steam.gasConstant;

/** The gas as it comes, for what it can take up. */
export interface DampGas {
  readonly gas: Gas;
  readonly gasFlow: MassFlow;
  readonly vapourFraction: Fraction;
  readonly pressure: Pressure;
}

/**
 * Water that evaporates into a gas until it is saturated [kg/s]; below zero where its own vapour condenses; infinite
 * where water boils at the gas's pressure. Moles of vapour: (y₀ n + x)/(n + x) = p_sat/p.
 */
export function evaporationToSaturation(damp: DampGas, temperature: Temperature): number {
  const { gas, gasFlow, vapourFraction, pressure } = damp;
  if (temperature >= surelyBoiling) return Number.POSITIVE_INFINITY;
  const share = saturationVapourPressure(temperature) / pressure;
  if (share >= 1) return Number.POSITIVE_INFINITY;
  // n = ṁ_g R_g/R_u and the mass of a mole of water is R_u/R_v, so the molar gas constant cancels.
  return ((gasFlow * gas.gasConstant) / steamGasConstant) * ((share - vapourFraction) / (1 - share));
}

export interface VapourCarried {
  /** the exhaust gas, with its vapour in it */
  readonly gas: Gas;
  /** mass flow of the gas [kg/s], above 0 */
  readonly gasFlow: MassFlow;
  /** share of vapour in it, by volume [–], 0 to 0.3 */
  readonly vapourFraction: Fraction;
  /** temperature at which it leaves [K], 200 to 2500 */
  readonly temperature: Temperature;
  /** temperature of the surroundings [K], 200 to 2500 */
  readonly ambientTemperature: Temperature;
}

/** Heat that the water vapour of an exhaust takes along. */
export interface VapourHeat {
  /** water vapour by mass [kg/s] */
  readonly flow: MassFlow;
  /** heat of the vapour above that at the surroundings' temperature [W] */
  readonly sensible: Power;
  /** heat that it would give up by condensing at 25 °C, outside a balance of lower heating values [W] */
  readonly latent: Power;
}

/**
 * Heat that the water vapour of an exhaust takes along [kg/s, W]: ṁ_v = y ṁ R/R_v, ṁ_v [h_v(T) − h_v(T_0)], and the heat
 * of condensation, which is what the higher heating value counts beyond the lower one (and the damp of the air with it).
 *
 * @param carried gas, flow, vapour share and temperatures [kg/s, –, K]
 * @throws RangeError if an argument is outside its span
 * @source balance of amounts; heat of evaporation 2441.7 kJ/kg at 25 °C, IAPWS steam tables (from memory)
 * @example exhaustVapourHeat({ gas: burntGas({ excessAirRatio: 2 }), gasFlow: 0.8, vapourFraction: exhaustVapourFraction({ excessAirRatio: 2 }), temperature: 700, ambientTemperature: 298.15 }).flow // 0.031868
 */
export function exhaustVapourHeat(carried: VapourCarried): VapourHeat {
  const { gas, gasFlow, vapourFraction, temperature, ambientTemperature } = carried;
  requirePositive("exhaustVapourHeat: gasFlow", gasFlow, "kg/s");
  requireWithin("exhaustVapourHeat: vapourFraction", vapourFraction, [0, 0.3]);
  requireNotNegative("exhaustVapourHeat: ambientTemperature", ambientTemperature, "K");
  const flow = (vapourFraction * gasFlow * gas.gasConstant) / steamGasConstant;
  return {
    flow: flow as MassFlow,
    sensible: (flow * (steam.enthalpy(temperature) - steam.enthalpy(ambientTemperature))) as Power,
    latent: (flow * evaporationHeatAtZero) as Power,
  };
}
