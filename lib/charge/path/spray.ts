import {
  type Gas,
  gasReferenceTemperature,
  heatOfVaporization,
  moistAir,
  saturationHumidityRatio,
  saturationTemperatureSpan,
} from "../../fluid";
import { brentRoot } from "../../numeric";
import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { Fraction, MassFlow, Pressure, Ratio, SpecificEnergy, Temperature } from "../../quantity/kinds";

/** Water sprayed into the charge. */
export interface WaterSpray {
  /** flow of water [kg/s], 0 or above */
  readonly waterFlow: MassFlow;
  /** temperature of the water [K], 273.15 to 373.15 */
  readonly waterTemperature: Temperature;
  /** part of the water that has time to evaporate, if the charge can hold it [–], 0 to 1 */
  readonly evaporationEfficiency: Fraction;
}

/** Charge that meets a spray. */
export interface SprayedCharge {
  /** flow of dry air [kg/s], above 0 */
  readonly dryAirFlow: MassFlow;
  /** temperature [K], within the gas's span */
  readonly temperature: Temperature;
  /** pressure [Pa], above 0 */
  readonly pressure: Pressure;
  /** water vapour per kilogram of dry air [kg/kg], 0 to 0.2 */
  readonly humidityRatio: Ratio;
  /** the charge as it comes; made from its humidity if left out */
  readonly gas?: Gas;
  /** makes moist air of a humidity; moistAir if left out */
  readonly moistGas?: (humidityRatio: Ratio) => Gas;
}

/** Charge after a spray. */
export interface SprayOutlet {
  readonly temperature: Temperature;
  readonly humidityRatio: Ratio;
  /** the charge with its new vapour */
  readonly gas: Gas;
  /** water that evaporates [kg/s] */
  readonly evaporatedFlow: MassFlow;
  /** water that stays liquid [kg/s] */
  readonly liquidFlow: MassFlow;
  /** whether the charge could hold no more */
  readonly saturated: boolean;
  /** enthalpy that the evaporated water brings, as liquid, against vapour at 298.15 K [W] */
  readonly waterEnthalpy: number;
}

const liquidSpecificHeat = 4186; // J/(kg·K)

/** Charge colder than this holds no vapour worth the name [K]. */
const coldest = 225 as Temperature;

/** Humidity ratios that the moist gases answer for [kg/kg]. */
const mostHumid = 0.2;

/**
 * Charge after a water spray [K, kg/kg]: (1 + w₁) h₁(T₁) + Δw h_water = (1 + w₂) h₂(T₂), at the pressure of the place, and at
 * most to saturation there. Liquid water that is left over is drained, and neither cools nor burns here.
 *
 * @param spray flow, temperature and evaporation of the water [kg/s, K, –]
 * @param charge flow, state and humidity [kg/s, K, Pa, kg/kg]
 * @throws RangeError if an argument is outside its span or the charge is too cold for the tables of saturation
 * @source first law for a steady flow; ASHRAE Handbook, Fundamentals, psychrometrics (adiabatic saturation, from memory)
 * @example sprayOutlet({ waterFlow: 0.01, waterTemperature: 300, evaporationEfficiency: 1 }, { dryAirFlow: 1, temperature: 420, pressure: 2.5e5, humidityRatio: 0.01 }).temperature // 394.69
 */
export function sprayOutlet(spray: WaterSpray, charge: SprayedCharge): SprayOutlet {
  const { dryAirFlow, temperature, pressure, humidityRatio, moistGas = moistAir } = charge;
  requireNotNegative("sprayOutlet: waterFlow", spray.waterFlow, "kg/s");
  requireWithin("sprayOutlet: waterTemperature", spray.waterTemperature, [273.15, 373.15], "K");
  requireWithin("sprayOutlet: evaporationEfficiency", spray.evaporationEfficiency, [0, 1]);
  requirePositive("sprayOutlet: dryAirFlow", dryAirFlow, "kg/s");
  const before = charge.gas ?? moistGas(humidityRatio);
  const water = waterEnthalpy(spray.waterTemperature);
  const brought = (1 + humidityRatio) * before.enthalpy(temperature);
  const after = (evaporated: number) => {
    const gas = moistGas((humidityRatio + evaporated) as Ratio);
    const enthalpy = (brought + evaporated * water) / (1 + humidityRatio + evaporated);
    return { gas, temperature: gas.temperatureAtEnthalpy(enthalpy as SpecificEnergy) };
  };
  /** vapour that the charge could still hold */
  const room = (evaporated: number) => {
    const gas = moistGas((humidityRatio + evaporated) as Ratio);
    const enthalpy = (brought + evaporated * water) / (1 + humidityRatio + evaporated);
    // less than none where evaporation would chill the charge below any table
    if (enthalpy < gas.enthalpy(coldest)) return -1;
    return held(after(evaporated).temperature, pressure) - humidityRatio - evaporated;
  };

  const offered = (spray.waterFlow * spray.evaporationEfficiency) / dryAirFlow;
  const most = Math.min(offered, mostHumid - humidityRatio);
  const name = "sprayOutlet: vapour at saturation";
  const saturated = most > 0 && room(most) < 0;
  const evaporated = !saturated ? most : room(0) <= 0 ? 0 : brentRoot(room, [0, most], { name }).root;
  const outlet = evaporated > 0 ? after(evaporated) : { gas: before, temperature };
  return {
    temperature: outlet.temperature,
    humidityRatio: (humidityRatio + evaporated) as Ratio,
    gas: outlet.gas,
    evaporatedFlow: (evaporated * dryAirFlow) as MassFlow,
    liquidFlow: (spray.waterFlow - evaporated * dryAirFlow) as MassFlow,
    saturated: saturated || most < offered,
    waterEnthalpy: evaporated * dryAirFlow * water,
  };
}

/** Enthalpy of liquid water against its vapour at the gases' reference temperature [J/kg]. */
function waterEnthalpy(temperature: number): number {
  return liquidSpecificHeat * (temperature - gasReferenceTemperature) - heatOfVaporization(gasReferenceTemperature);
}

/** Most vapour that the charge holds; above boiling as much as anyone likes. */
function held(temperature: Temperature, pressure: Pressure): number {
  if (temperature > 453) return 1;
  if (temperature < saturationTemperatureSpan[0]) return 0;
  try {
    return saturationHumidityRatio({ temperature, pressure });
  } catch (error) {
    if (error instanceof RangeError && temperature > 300) return 1; // it boils
    throw error;
  }
}
