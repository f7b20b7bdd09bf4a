import { type Ratio, requireWithin, type Span } from "../quantity";
import type { Gas } from "./gas";
import { gasOf } from "./gasOf";
import { type Composition, species } from "./species";

/** Amounts in a mole of dry air [mol]. @source NASA/TP-2002-211556 (2002), the composition of its entry Air */
export const dryAirComposition: Composition = {
  nitrogen: 0.78084,
  oxygen: 0.209476,
  argon: 0.009365,
  carbonDioxide: 0.000319,
  waterVapour: 0,
};

/** Dry air: R = 287.05 J/(kg·K), cp = 1004.7 J/(kg·K) at 298.15 K. */
export const dryAir: Gas = gasOf("dry air", dryAirComposition);

/** Molar mass of water over that of dry air [–], 0.62196: humidity ratio per ratio of partial pressures. */
export const vapourToAirMolarMass = (species.waterVapour.molarMass / dryAir.molarMass) as Ratio;

/** Humidity ratios for which the moist gases answer [kg/kg]. */
export const humidityRatioSpan: Span = [0, 0.2];

/**
 * Air with water vapour in it [–]. Liquid water, if the air could not hold so much vapour, is not looked for: see saturationHumidityRatio.
 *
 * @param humidityRatio water vapour [kg per kg of dry air], 0 to 0.2
 * @throws RangeError outside humidityRatioSpan
 * @source NASA/TP-2002-211556 (2002), mixture by amount of substance
 * @example moistAir(0.01).gasConstant // 288.778
 */
export function moistAir(humidityRatio: Ratio): Gas {
  requireWithin("moistAir: humidityRatio", humidityRatio, humidityRatioSpan, "kg/kg");
  return gasOf(`moist air of ${Number(humidityRatio.toPrecision(3))} kg/kg`, moistAirComposition(humidityRatio));
}

/**
 * Amounts in as much moist air as holds one mole of dry air [mol].
 *
 * @param humidityRatio water vapour [kg per kg of dry air], 0 or above
 * @source definition of the humidity ratio
 * @example moistAirComposition(0.01).waterVapour // 0.0160781
 */
export function moistAirComposition(humidityRatio: number): Composition {
  return { ...dryAirComposition, waterVapour: humidityRatio / vapourToAirMolarMass };
}
