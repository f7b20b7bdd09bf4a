import {
  type Gas,
  gasReferenceTemperature,
  heatOfVaporization,
  moistAir,
  saturationHumidityRatio,
  saturationTemperatureSpan,
  saturationVapourPressure,
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

/** Charge hotter than this is not asked about its water [K]: at any pressure of a charge it boils. */
const hottest = 600;

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
  /** the charge with some water in it, and the vapour that it could still hold */
  const wetted = (evaporated: number) => {
    const gas = evaporated > 0 ? moistGas((humidityRatio + evaporated) as Ratio) : before;
    const enthalpy = (brought + evaporated * water) / (1 + humidityRatio + evaporated);
    // less than none where evaporation would chill the charge below any table
    if (enthalpy < gas.enthalpy(coldest)) return { gas, temperature: coldest, room: -1 };
    const after = evaporated > 0 ? gas.temperatureAtEnthalpy(enthalpy as SpecificEnergy) : temperature;
    return { gas, temperature: after, room: held(after, pressure) - humidityRatio - evaporated };
  };

  const offered = (spray.waterFlow * spray.evaporationEfficiency) / dryAirFlow;
  const most = Math.min(offered, mostHumid - humidityRatio);
  let evaporated = Math.max(0, most);
  let outlet = wetted(evaporated);
  const saturated = evaporated > 0 && outlet.room < 0;
  if (saturated) {
    const name = "sprayOutlet: vapour at saturation";
    const none = wetted(0).room <= 0;
    evaporated = none ? 0 : brentRoot((x) => wetted(x).room, [0, most], { name, tolerance: 1e-13 }).root;
    outlet = wetted(evaporated);
  }
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

/** Most vapour that the charge holds; where water boils, as much as anyone likes. */
function held(temperature: Temperature, pressure: Pressure): number {
  if (temperature > hottest) return 1;
  if (temperature < saturationTemperatureSpan[0]) return 0;
  if (saturationVapourPressure(temperature) >= pressure) return 1;
  return saturationHumidityRatio({ temperature, pressure });
}
