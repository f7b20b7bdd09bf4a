import type { Gas } from "../../fluid";
import { type GasSource, plainGases } from "./gasSource";

/** Gases that count how often they are asked for a property. */
export interface CountingGases {
  readonly gases: GasSource;
  /** evaluations of any property so far, and gases made */
  readonly count: () => { readonly properties: number; readonly gases: number };
}

const counted = [
  "specificHeat",
  "enthalpy",
  "entropy",
  "temperatureAtEnthalpy",
  "temperatureAtEntropy",
  "isentropicTemperature",
  "ratioOfSpecificHeats",
  "density",
  "speedOfSound",
] as const;

/**
 * Gases for operatingPoint that count the property evaluations asked of them [–]. They cost nothing where they are not used.
 *
 * @param source the gases behind them; those of lib/fluid if left out
 * @throws nothing
 * @source definition
 * @example countingGases().count().properties // 0
 */
export function countingGases(source: GasSource = plainGases): CountingGases {
  let properties = 0;
  let gases = 0;
  const counting = (gas: Gas): Gas => {
    gases++;
    const heard: Gas = Object.create(gas) as Gas;
    for (const name of counted) {
      const method = (gas[name] as unknown as (...args: number[]) => number).bind(gas);
      Object.defineProperty(heard, name, {
        value: (...args: number[]) => {
          properties++;
          return method(...args);
        },
      });
    }
    heard.blendedWith = (other, share) => counting(gas.blendedWith(other, share));
    return heard;
  };
  return {
    gases: {
      charge: (humidityRatio) => counting(source.charge(humidityRatio)),
      burnt: (humidityRatio, fuel) => counting(source.burnt(humidityRatio, fuel)),
    },
    count: () => ({ properties, gases }),
  };
}
