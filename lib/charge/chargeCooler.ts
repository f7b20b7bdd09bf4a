import { type RatedRestriction, restrictionLoss } from "../engine";
import {
  dewPoint,
  dryAir,
  type Gas,
  heatOfVaporization,
  saturationHumidityRatio,
  saturationPressureSpan,
  saturationTemperatureSpan,
  vapourPressure,
} from "../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  Density,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  Temperature,
} from "../quantity/kinds";

/** A charge cooler, as far as the charge sees it. */
export interface ChargeCooler {
  /** cooling of the charge over the most that its sink allows [–], 0 to 1 */
  readonly effectiveness: Fraction;
  /** temperature at which the sink enters: cooling water or outside air [K] */
  readonly sinkTemperature: Temperature;
  /** a measured pressure loss [kg/s, kg/m³, Pa] */
  readonly restriction: RatedRestriction;
}

/** Charge that enters a cooler. */
export interface CoolerInlet {
  /** flow of charge [kg/s], above 0 */
  readonly massFlow: MassFlow;
  /** temperature [K], within the gas's span */
  readonly temperature: Temperature;
  /** pressure [Pa], above 0 */
  readonly pressure: Pressure;
  /** the charge [–]; dry air if left out */
  readonly gas?: Gas;
}

/** Charge that leaves a cooler. */
export interface CoolerOutlet {
  /** temperature [K] */
  readonly temperature: Temperature;
  /** pressure [Pa] */
  readonly pressure: Pressure;
  /** heat given up, negative where the sink is the hotter [W] */
  readonly heat: Power;
  /** pressure lost [Pa] */
  readonly pressureLoss: PressureDifference;
}

/**
 * Outlet of a charge cooler [K, Pa, W]: T = T_in − ε (T_in − T_sink), the pressure loss from its rated point at the
 * density of inlet pressure and mean temperature. The charge is taken as the stream of smaller heat capacity.
 * Condensation is left out here: see chargeCondensate.
 *
 * @param cooler effectiveness, sink and rated pressure loss [–, K, Pa]
 * @param inlet flow, temperature, pressure and gas [kg/s, K, Pa]
 * @throws RangeError if an argument is outside its span, or the pressure loss leaves no pressure
 * @source W. M. Kays, A. L. London, Compact Heat Exchangers (definition of effectiveness, from memory)
 * @example chargeCoolerOutlet({ effectiveness: 0.75, sinkTemperature: 300, restriction: { massFlow: 0.6, density: 2, pressureLoss: 9000 } }, { massFlow: 0.5, temperature: 450, pressure: 2.5e5 }).temperature // 337.5
 */
export function chargeCoolerOutlet(cooler: ChargeCooler, inlet: CoolerInlet): CoolerOutlet {
  const { effectiveness, sinkTemperature } = cooler;
  const { massFlow, temperature, pressure, gas = dryAir } = inlet;
  requireWithin("chargeCoolerOutlet: effectiveness", effectiveness, [0, 1]);
  requirePositive("chargeCoolerOutlet: sinkTemperature", sinkTemperature, "K");
  const entering = { massFlow, temperature, pressure, gas };
  const { temperature: outlet, pressureLoss } = cooledBy(cooler, entering);
  const left = (pressure - pressureLoss) as Pressure;
  requirePositive("chargeCoolerOutlet: pressure left after the loss", left, "Pa");
  return { temperature: outlet, pressure: left, heat: coolerHeat(entering, outlet), pressureLoss };
}

/** Temperature behind a cooler, and the pressure that it takes, unguarded: what a balance of flow asks for. */
export function cooledBy(
  { effectiveness, sinkTemperature, restriction }: ChargeCooler,
  { massFlow, temperature, pressure, gas }: Required<CoolerInlet>,
): Pick<CoolerOutlet, "temperature" | "pressureLoss"> {
  const outlet = (temperature - effectiveness * (temperature - sinkTemperature)) as Temperature;
  const density = pressure / (gas.gasConstant * 0.5 * (temperature + outlet));
  return { temperature: outlet, pressureLoss: restrictionLoss(restriction, massFlow, density as Density) };
}

/** Heat that a charge gives up on its way to another temperature [W]. */
export function coolerHeat({ massFlow, temperature, gas }: Required<CoolerInlet>, outlet: Temperature): Power {
  return (massFlow * (gas.enthalpy(temperature) - gas.enthalpy(outlet))) as Power;
}

/** Moist charge after a cooler. */
export interface CooledCharge {
  /** flow of dry air [kg/s], 0 or above */
  readonly dryAirFlow: MassFlow;
  /** water vapour per kilogram of dry air before the cooler [kg/kg], 0 to 0.2 */
  readonly humidityRatio: Ratio;
  /** temperature after the cooler [K], within the span of saturationVapourPressure */
  readonly temperature: Temperature;
  /** pressure after the cooler [Pa], above 0 */
  readonly pressure: Pressure;
}

/** Water that a charge cooler wrings out of the charge. */
export interface Condensate {
  /** whether any vapour condenses */
  readonly condenses: boolean;
  /** temperature below which it would [K]; undefined for air so dry that frost comes before dew */
  readonly dewPoint: Temperature | undefined;
  /** liquid water [kg/s] */
  readonly condensateFlow: MassFlow;
  /** heat that condensation adds to the cooler's duty [W] */
  readonly latentHeat: Power;
}

/**
 * Water condensed in a charge cooler [kg/s], and its heat [W]: ṁ (w − w_sat(T, p)) where that is above zero.
 * Pressure raises the dew point: boost can wring water out of a day that is far from foggy. Below freezing, what air
 * holds at 0 °C is taken: what freezes out beyond is left out.
 *
 * @param charge dry air, humidity and state after the cooler [kg/s, kg/kg, K, Pa]
 * @throws RangeError if an argument is outside its span
 * @source ASHRAE Handbook, Fundamentals, psychrometrics (from memory)
 * @example chargeCondensate({ dryAirFlow: 1, humidityRatio: 0.0204, temperature: 308.15, pressure: 3.5e5 }).condensateFlow // 0.0102
 */
export function chargeCondensate(charge: CooledCharge): Condensate {
  const { dryAirFlow, humidityRatio, temperature, pressure } = charge;
  requireNotNegative("chargeCondensate: dryAirFlow", dryAirFlow, "kg/s");
  requireWithin("chargeCondensate: humidityRatio", humidityRatio, [0, 0.2], "kg/kg");
  if (vapourPressure({ pressure, humidityRatio }) < saturationPressureSpan[0]) {
    return { condenses: false, dewPoint: undefined, condensateFlow: 0 as MassFlow, latentHeat: 0 as Power };
  }
  const dew = dewPoint({ pressure, humidityRatio });
  if (temperature >= dew) {
    return { condenses: false, dewPoint: dew, condensateFlow: 0 as MassFlow, latentHeat: 0 as Power };
  }
  const liquid = Math.max(temperature, saturationTemperatureSpan[0]) as Temperature;
  const held = saturationHumidityRatio({ temperature: liquid, pressure });
  const condensateFlow = dryAirFlow * (humidityRatio - held);
  return {
    condenses: true,
    dewPoint: dew,
    condensateFlow: condensateFlow as MassFlow,
    latentHeat: (condensateFlow * heatOfVaporization(liquid)) as Power,
  };
}
