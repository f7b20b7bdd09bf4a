import { burntGas, type DieselFuel, type Gas, moistAir } from "../../fluid";
import type { Ratio } from "../../quantity/kinds";

/** Makes the gases of an operating point; a bench may put counting gases in their place. */
export interface GasSource {
  /** air with water vapour [kg per kg of dry air] */
  readonly charge: (humidityRatio: Ratio) => Gas;
  /** products of combustion without leftover, in air of that humidity */
  readonly burnt: (humidityRatio: Ratio, fuel: DieselFuel) => Gas;
}

/** The gases of lib/fluid. */
export const plainGases: GasSource = {
  charge: moistAir,
  burnt: (humidityRatio, fuel) => burntGas({ excessAirRatio: 1 as Ratio, humidityRatio, fuel }),
};

/** Gases that are made once for each humidity in a row: a path without spray knows only one. */
export function keptGases(source: GasSource, fuel: DieselFuel) {
  return { charge: kept(source.charge), burnt: kept((humidityRatio) => source.burnt(humidityRatio, fuel)) };
}

function kept(make: (humidityRatio: Ratio) => Gas): (humidityRatio: Ratio) => Gas {
  let last: { readonly humidityRatio: number; readonly gas: Gas } | undefined;
  let before = last;
  return (humidityRatio) => {
    if (last?.humidityRatio === humidityRatio) return last.gas;
    const found = before?.humidityRatio === humidityRatio ? before : { humidityRatio, gas: make(humidityRatio) };
    before = last;
    last = found;
    return found.gas;
  };
}
