import { type Ratio, requireWithin, type Span } from "../quantity";
import { dryAirComposition, humidityRatioSpan, moistAirComposition } from "./air";
import { type DieselFuel, oxygenPerCarbon, roadDiesel } from "./dieselFuel";
import type { Gas } from "./gas";
import { gasOf } from "./gasOf";
import type { Composition } from "./species";

/** What was burnt, and in how much air. */
export interface BurntMix {
  /** air over the air that burns the fuel without leftover [–], 1 to 1000 */
  readonly excessAirRatio: Ratio;
  /** water vapour in the air [kg per kg of dry air], 0 to 0.2; 0 if left out */
  readonly humidityRatio?: Ratio;
  /** the fuel [–]; road diesel if left out */
  readonly fuel?: DieselFuel;
}

/** Excess air for which burntGas answers [–]. Below 1 fuel is left over; above 1000 take the air itself. */
export const excessAirRatioSpan: Span = [1, 1000];

/**
 * Exhaust gas of a lean engine [–]: the products of complete combustion and the air left over.
 * CHyOz + λ(1 + y/4 − z/2) O₂ with its air → CO₂ + y/2 H₂O + (λ − 1)(1 + y/4 − z/2) O₂.
 * Leaves out carbon monoxide, soot and unburnt fuel, oxides of nitrogen, and dissociation, which counts above 1800 K.
 *
 * @param mix excess air [–], humidity of the air [kg/kg] and fuel
 * @throws RangeError outside excessAirRatioSpan, humidityRatioSpan or the spans of the fuel's make-up
 * @source balance of elements; NASA/TP-2002-211556 (2002) for the gases
 * @example burntGas({excessAirRatio: 2}).specificHeat(800) // 1152.89
 */
export function burntGas(mix: BurntMix): Gas {
  const { excessAirRatio, humidityRatio = 0 } = mix;
  const label = `burnt gas of excess air ${Number(excessAirRatio.toPrecision(3))}`;
  return gasOf(
    humidityRatio > 0 ? `${label} and humidity ${Number(humidityRatio.toPrecision(3))}` : label,
    burntGasComposition(mix),
  );
}

/**
 * Amounts of the species in burntGas [mol per mole of carbon in the fuel].
 *
 * @param mix excess air [–], humidity of the air [kg/kg] and fuel
 * @throws RangeError as burntGas does
 * @source balance of elements
 * @example burntGasComposition({excessAirRatio: 2}).waterVapour // 0.925
 */
export function burntGasComposition(mix: BurntMix): Composition {
  const { excessAirRatio, humidityRatio = 0, fuel = roadDiesel } = mix;
  requireWithin("burntGas: excessAirRatio", excessAirRatio, excessAirRatioSpan);
  requireWithin("burntGas: humidityRatio", humidityRatio, humidityRatioSpan, "kg/kg");
  const oxygen = oxygenPerCarbon(fuel);
  const airPerCarbon = (excessAirRatio * oxygen) / dryAirComposition.oxygen;
  const air = moistAirComposition(humidityRatio);
  return {
    nitrogen: airPerCarbon * air.nitrogen,
    oxygen: (excessAirRatio - 1) * oxygen,
    argon: airPerCarbon * air.argon,
    carbonDioxide: airPerCarbon * air.carbonDioxide + 1,
    waterVapour: airPerCarbon * air.waterVapour + fuel.hydrogenToCarbon / 2,
  };
}
