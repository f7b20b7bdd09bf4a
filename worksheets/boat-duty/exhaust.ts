import {
  type ExhaustMix,
  type ExhaustMixInputs,
  exhaustMixSaturated,
  exhaustMixWithoutEvaporation,
  pipeVelocity,
} from "../../lib/cooling";
import { cell, type StatedCheck, structure } from "../../lib/graph";
import type { Length, MassFlow, PressureDifference, Temperature } from "../../lib/quantity";
import { ambientPressure } from "../brief/cells";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import { ownEngine } from "../marine-cooling/balance";
import { rawWaterDischarge } from "../marine-cooling/circuit";
import { exhaustMixOf } from "../marine-cooling/exhaustMix";
import {
  exhaustHose,
  exhaustVelocityLimit,
  injectionHeight,
  salinity,
  seaTemperature,
  wetExhaustLimit,
} from "../marine-cooling/inputs";
import { rawWaterFlow } from "../marine-cooling/rawWater";
import { exhaustKind, exhaustPressureLimit, loadedSinkage, riserLeast } from "./inputs";

/** Water in an open line boils about here. */
const boilingSeaWater = 371 as Temperature;

const celsius = (temperature: Temperature) => `${(temperature - 273.15).toFixed(1)} °C`;

/** Exhaust and the sea water led into it, mixed both ways. */
export interface WetExhaust {
  readonly inputs: ExhaustMixInputs;
  readonly none: ExhaustMix;
  readonly saturated: ExhaustMix;
}

export const wetExhaust = structure("wetExhaust", {
  label: "Exhaust and the sea water led into it",
  from: {
    ownEngine,
    rawWaterFlow,
    rawWaterDischarge,
    seaTemperature,
    salinity,
    ambientPressure,
    fuelInUse,
  },
  compute: (at): WetExhaust => {
    if (at.rawWaterDischarge >= boilingSeaWater) {
      throw new RangeError(
        `wetExhaust: the sea water would reach ${celsius(at.rawWaterDischarge)} in the exchangers and boil; give it more flow or less heat`,
      );
    }
    const inputs = exhaustMixOf(
      at.ownEngine,
      { ...at, discharge: at.rawWaterDischarge },
      at.fuelInUse,
      at.ambientPressure,
    );
    return { inputs, none: exhaustMixWithoutEvaporation(inputs), saturated: exhaustMixSaturated(inputs) };
  },
  formula:
    "\\dot m_{ex}\\left[h_{ex}(T_7) - h_{ex}(T)\\right] + \\dot m_w h_w(T_w) = e\\,h_v(T) + (\\dot m_w - e)\\,h_w(T), \\qquad e = 0 \\text{ or to saturation}",
  source: "energy balance and Dalton's law",
  assumptions: ["All the raw water is led into the exhaust; what an anti-siphon valve lets off does not cool it."],
});

export const wetExhaustTemperature = cell("wetExhaustTemperature", {
  label: "Wet exhaust, nothing evaporating",
  kind: "temperature",
  symbol: "T_x",
  from: { wetExhaust },
  compute: ({ wetExhaust }) => wetExhaust.none.temperature,
  formula: "\\dot m_{ex}\\left[h_{ex}(T_7) - h_{ex}(T_x)\\right] = \\rho_w\\,q_w\\,c_w\\,(T_x - T_w)",
  source: "energy balance",
  assumptions: ["Lay out by this one: evaporation cools further only where the spray reaches all the gas."],
});

export const wetExhaustSaturated = cell("wetExhaustSaturated", {
  label: "Wet exhaust, gas saturated with vapour",
  kind: "temperature",
  symbol: "T_{x,s}",
  from: { wetExhaust },
  compute: ({ wetExhaust }) => wetExhaust.saturated.temperature,
  formula: "\\text{as } T_x \\text{, with evaporation to saturation at } p_0",
  source: "energy balance and Dalton's law",
});

export const waterEvaporated = cell("waterEvaporated", {
  label: "Sea water that evaporates into the saturated gas",
  kind: "massFlow",
  hint: "small",
  symbol: "e",
  from: { wetExhaust },
  compute: ({ wetExhaust }) => Math.abs(wetExhaust.saturated.evaporated) as MassFlow,
  formula: "e = \\left|\\dot m_{v}(T_{x,s}) - \\dot m_{v,7}\\right|",
  source: "Dalton's law",
  assumptions: [
    "Where the mix is colder than the exhaust's own dew point, it is vapour of combustion that condenses instead.",
  ],
});

export const wetExhaustVelocity = cell("wetExhaustVelocity", {
  label: "Gas velocity in the wet hose",
  kind: "velocity",
  hint: "duct",
  symbol: "v_x",
  from: { wetExhaust, exhaustHose },
  compute: ({ wetExhaust, exhaustHose }) => pipeVelocity(wetExhaust.saturated.gasVolumeFlow, exhaustHose),
  formula: "v_x = \\frac{4\\,q_x}{\\pi\\,d_x^2}",
  source: "definition",
  assumptions: [
    "q_x is the volume flow of the saturated gas at the barometer's pressure.",
    "The water runs along the bottom and takes a few per cent of the bore, which is left out.",
  ],
});

export const wetHose = structure("wetHose", {
  label: "The wet hose and what it may have",
  from: { wetExhaustTemperature, wetExhaustVelocity, exhaustKind, wetExhaustLimit, exhaustVelocityLimit },
  compute: ({ wetExhaustTemperature: temperature, wetExhaustVelocity: velocity }) => ({ temperature, velocity }),
  formula: "T_x \\le T_{x,lim}, \\qquad v_x \\le v_{x,lim}",
  source: "definition",
  assumptions: ["Where the exhaust is dry there is no hose, and nothing to hold."],
  checks: ({ temperature, velocity }, { exhaustKind, wetExhaustLimit, exhaustVelocityLimit }): readonly StatedCheck[] => {
    if (exhaustKind === "dry") return [];
    const hose = { component: "wet exhaust hose", side: "most" } as const;
    return [
      { ...hose, label: "Wet exhaust in the hose", kind: "temperature", value: temperature, bound: wetExhaustLimit },
      { ...hose, label: "Gas in the wet hose", kind: "velocity", hint: "duct", value: velocity, bound: exhaustVelocityLimit },
    ];
  },
});

export const exhaustBackPressure = cell("exhaustBackPressure", {
  label: "Back pressure behind the turbines, at the promised power",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_7",
  from: { ownEngine, ambientPressure },
  compute: ({ ownEngine, ambientPressure }) => (ownEngine.pipePressure - ambientPressure) as PressureDifference,
  formula: "\\Delta p_7 = p_7 - p_0",
  source: "definition; the loss at the flow stated, carried to this flow and density by the charge path",
  limits: [{ component: "turbines", side: "most", bound: exhaustPressureLimit }],
});

export const riserHeight = cell("riserHeight", {
  label: "Injection above the loaded waterline",
  kind: "length",
  hint: "duct",
  symbol: "z_r",
  from: { injectionHeight, loadedSinkage },
  compute: ({ injectionHeight, loadedSinkage }) => {
    if (!(injectionHeight > loadedSinkage)) {
      throw new RangeError(
        `riserHeight: the injection stands ${injectionHeight.toFixed(2)} m above the sea and the loaded boat lies ${loadedSinkage.toFixed(2)} m deeper: the sea would run into the engine; raise the injection`,
      );
    }
    return (injectionHeight - loadedSinkage) as Length;
  },
  formula: "z_r = z_x - z_{load}",
  source: "definition",
  limits: [{ component: "exhaust riser", side: "least", bound: riserLeast }],
});
