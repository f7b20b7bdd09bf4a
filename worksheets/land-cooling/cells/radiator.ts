import type { ClosedCircuit } from "../../../lib/cooling";
import { cell, structure } from "../../../lib/graph";
import {
  glycolShare,
  jacketFlow,
  jacketTemperature,
  thermostatOpens,
  thermostatSpan,
} from "../../marine-cooling/inputs";
import { landCooledBy } from "../inputs";
import { circuitAt, limitingAirOf } from "../radiatorAt";
import { coreAir } from "./core";
import { landHeat } from "./landHeat";
import { radiatorFrom } from "./radiatorFrom";

/** The engine's water on land. */
export const circuitFrom = { landHeat, jacketFlow, glycolShare, thermostatOpens, thermostatSpan };

export const radiatorCircuit = structure("radiatorCircuit", {
  label: "Engine water through the radiator",
  from: { ...radiatorFrom, ...circuitFrom, coreAir, landCooledBy, jacketTemperature },
  compute: (at): ClosedCircuit => circuitAt(at, at.coreAir),
  formula: "Q_{land} = \\epsilon\\,C_{min}\\,(T_j - T_0 - \\Delta T_k)",
  source:
    "crossflow, both streams unmixed, W. M. Kays, A. L. London, Compact Heat Exchangers (from memory); energy balance",
  assumptions: [
    "85 % of the resistance lies on the air's side, and falls with the square root of its flow by mass (finned cores: 0.4 to 0.6): common practice, no source.",
  ],
  checks: ({ hot }, { landCooledBy, jacketTemperature }) =>
    landCooledBy === "radiator"
      ? [
          {
            component: "radiator",
            label: "Engine water on land",
            kind: "temperature",
            side: "most",
            value: hot,
            bound: jacketTemperature,
          },
        ]
      : [],
});

export const radiatorWater = cell("radiatorWater", {
  label: "Engine water would settle at, with the radiator",
  kind: "temperature",
  symbol: "T_{j,r}",
  from: { radiatorCircuit },
  compute: ({ radiatorCircuit }) => radiatorCircuit.hot,
  formula: "T_{j,r} = T_0 + \\Delta T_k + \\frac{Q_{land}}{\\epsilon\\,C_{min}(\\theta)}",
  source: "energy balance",
});

export const limitingAir = cell("limitingAir", {
  label: "Hottest day at which it stays at its limit",
  kind: "temperature",
  symbol: "T_{0,lim}",
  from: { ...radiatorFrom, ...circuitFrom, coreAir, jacketTemperature },
  compute: (at) => limitingAirOf(at, at.coreAir, at.jacketTemperature),
  formula: "T_{0,lim} = T_{j,lim} - \\frac{Q_{land}}{\\epsilon\\,C_{min}} - \\Delta T_k",
  source: "energy balance, thermostat fully open",
  assumptions: ["Air flow and heat as on this day; hotter air is thinner, which costs a little more."],
});
