import { type BurntMix, burntGasComposition, type Gas, gasOf, saturationVapourPressure } from "../fluid";
import type { Fraction, MassFlow, Pressure, Temperature } from "../quantity";

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
