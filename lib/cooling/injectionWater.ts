import { type MassFlow, requireWithin, type Temperature } from "../quantity";
import { exhaustGasSpan, type InjectionInputs, requireInjection } from "./exhaustMixing";
import { evaporationToSaturation, liquidEnthalpy, vapourEnthalpy } from "./exhaustVapour";

export interface InjectionWaterInputs extends InjectionInputs {
  /** highest temperature of the mix [K], above waterTemperature and at most gasTemperature */
  readonly temperatureLimit: Temperature;
  /** whether water evaporates until the gas is saturated, or not at all */
  readonly evaporation: "saturated" | "none";
}

/**
 * Sea water that must be injected to bring exhaust down to a limit [kg/s]: the balances of exhaustMixSaturated and
 * exhaustMixWithoutEvaporation, solved for the water.
 * LAY OUT BY "none". Each kilogram that evaporates takes up as much heat as 20 kg warmed by 30 K, so that with perfect
 * evaporation a trickle seems to be enough: saturated exhaust of 430 °C hardly passes 65 °C. A real spray misses part
 * of the gas, and that part burns the hose. "saturated" is there to tell what the mix of a generous injection will be.
 * Below the dew point of the exhaust (about 37 °C at twice the air) the vapour of combustion condenses and asks for
 * more than "none". What an anti-siphon valve or a side stream takes away does not cool.
 *
 * @param injection gas, gas flow [kg/s], temperatures [K], water's specific heat [J/(kg·K)], pressure [Pa], limit [K]
 * @throws RangeError if an argument is outside its span; the limit must be above the water's temperature
 * @source energy balance and Dalton's law
 * @example injectionWater({ gas: dryAir, gasFlow: 0.25, gasTemperature: 700, waterTemperature: 305, waterSpecificHeat: 3990, pressure: 101325, vapourFraction: 0, temperatureLimit: 333.15, evaporation: "none" }) // 0.8455
 */
export function injectionWater(injection: InjectionWaterInputs): MassFlow {
  requireInjection("injectionWater", injection);
  const { gas, gasFlow, gasTemperature, waterTemperature, waterSpecificHeat, temperatureLimit, evaporation } =
    injection;
  requireWithin("injectionWater: temperatureLimit", temperatureLimit, [exhaustGasSpan[0], gasTemperature], "K");
  if (!(temperatureLimit > waterTemperature)) {
    throw new RangeError(
      `injectionWater: temperatureLimit is ${Number(temperatureLimit.toPrecision(5))} K; ` +
        `it must be above the water's ${Number(waterTemperature.toPrecision(5))} K`,
    );
  }
  const gasHeat = gasFlow * (gas.enthalpy(gasTemperature) - gas.enthalpy(temperatureLimit));
  const warming = waterSpecificHeat * (temperatureLimit - waterTemperature);
  if (evaporation === "none") return (gasHeat / warming) as MassFlow;

  const toSaturation = evaporationToSaturation(injection, temperatureLimit);
  const vapour = vapourEnthalpy(temperatureLimit);
  const allGone = gasHeat / (vapour - liquidEnthalpy(waterTemperature, waterSpecificHeat));
  if (allGone <= toSaturation) return allGone as MassFlow; // the mix stays dry
  const evaporationHeat = toSaturation * (vapour - liquidEnthalpy(temperatureLimit, waterSpecificHeat));
  return ((gasHeat - evaporationHeat) / warming) as MassFlow;
}
