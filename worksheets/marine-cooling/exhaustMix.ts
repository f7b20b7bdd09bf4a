import { type ExhaustMixInputs, exhaustVapourFraction } from "../../lib/cooling";
import { burntGas, type DieselFuel, seaWater } from "../../lib/fluid";
import type { Fraction, MassFlow, Pressure, Temperature, VolumeFlow } from "../../lib/quantity";
import type { SolvedEngine } from "./solvedEngine";

/** The water that is led into the exhaust. */
export interface InjectedWater {
  readonly rawWaterFlow: VolumeFlow;
  readonly seaTemperature: Temperature;
  readonly salinity: Fraction;
  /** as it leaves the last exchanger */
  readonly discharge: Temperature;
}

/** Exhaust of a solved point and all the raw water, before they meet. */
export function exhaustMixOf(
  { excessAirRatio, humidityRatio, exhaustFlow, pipeTemperature }: SolvedEngine,
  { rawWaterFlow, seaTemperature, salinity, discharge }: InjectedWater,
  fuel: DieselFuel,
  pressure: Pressure,
): ExhaustMixInputs {
  const mix = { excessAirRatio, humidityRatio, fuel };
  const sea = seaWater(salinity);
  return {
    gas: burntGas(mix),
    gasFlow: exhaustFlow,
    gasTemperature: pipeTemperature,
    // The pump draws its volume at the sea's temperature; the mass stays.
    waterFlow: (rawWaterFlow * sea.density(seaTemperature)) as MassFlow,
    waterTemperature: discharge,
    waterSpecificHeat: sea.specificHeat(seaTemperature),
    pressure,
    vapourFraction: exhaustVapourFraction(mix),
  };
}
