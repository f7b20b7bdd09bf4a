import { chargeCondensate, type DemandBuild, demandPoint, operatingPoint } from "../../lib/charge";
import { cell, structure } from "../../lib/graph";
import type { MassFlow, Ratio, Temperature } from "../../lib/quantity";
import { withSinkAt } from "../boat-duty/worsened";
import { demandBuild } from "../boost/demand";
import { sinkRise } from "../boost/inputs";
import { ambientHumidityRatio } from "../brief/cells";
import { matchBuild } from "../matching/match";
import { balanceSetup, ownEngine } from "./balance";
import { balanceOf } from "./balanceOf";
import { jacketOf } from "./circuit";
import { heatsOf } from "./circuitState";
import { circuitSetup, circuitState } from "./heats";
import { chargeCooledBy, chargeTemperatureLeast, coldSeaTemperature, loopTemperature } from "./inputs";
import { type MarineNetwork, networkAt } from "./networkAt";
import { engineOfDemand, engineOfParts, type SolvedEngine } from "./solvedEngine";

/** Charge and circuits in the coldest sea, at the promised power. */
export interface ColdCircuit extends MarineNetwork {
  readonly engine: SolvedEngine;
}

export const coldCircuit = structure("coldCircuit", {
  label: "The same in the coldest sea",
  from: {
    circuitSetup,
    circuitState,
    ownEngine,
    demandBuild,
    balanceSetup,
    matchBuild,
    coldSeaTemperature,
    chargeCooledBy,
    loopTemperature,
    sinkRise,
  },
  compute: (at): ColdCircuit => {
    const cold = at.coldSeaTemperature;
    const sink = at.chargeCooledBy === "loop" ? at.loopTemperature : cold + at.sinkRise;
    const { speed: engineSpeed, brakePower } = at.ownEngine;
    const { point } = at.ownEngine;
    const engine =
      "banks" in point
        ? engineOfParts(
            operatingPoint(withSinkAt(at.matchBuild, sink as Temperature), {
              engineSpeed,
              load: { kind: "brakePower", brakePower },
              near: point,
            }),
          )
        : engineOfDemand(
            demandPoint(demandAtSink(at.demandBuild, sink as Temperature), { engineSpeed, brakePower }),
            engineSpeed,
            at.demandBuild.surroundings.humidityRatio,
          );
    if (engine.intercooler.heat <= 0 && engine.aftercooler.heat <= 0) {
      throw new RangeError("coldCircuit: no charge cooler takes out any heat; there is nothing to overcool");
    }
    const state = { ...at.circuitState, ...heatsOf(engine, balanceOf(engine, at.balanceSetup)) };
    return { ...networkAt(at.circuitSetup, { ...state, seaTemperature: cold }), engine };
  },
  formula: "\\text{match and line, at } T_{sea,c}",
  source: "conservation of mass; first law on every element of the match; energy balance of the line",
  assumptions: [
    "The promised power, with the match solved anew where its coolers' stream is as cold: denser charge, a little more excess air, less work for the wheels.",
    "Pump and line pass the same volume of water as in the warmest sea; the jacket keeps its thermostat, the walls their share of the heat.",
    "A loop of fresh water holds its own temperature, whatever the sea.",
  ],
});

function demandAtSink(build: DemandBuild, sinkTemperature: Temperature): DemandBuild {
  const { coolerBeforeBlower, coolerAfterBlower } = build;
  return {
    ...build,
    coolerBeforeBlower: { ...coolerBeforeBlower, sinkTemperature },
    coolerAfterBlower: { ...coolerAfterBlower, sinkTemperature },
  };
}

export const coldChargeTemperature = cell("coldChargeTemperature", {
  label: "Charge in the manifold in the coldest sea",
  kind: "temperature",
  symbol: "T_{5,c}",
  from: { coldCircuit },
  compute: ({ coldCircuit }) => coldCircuit.engine.manifoldTemperature,
  formula: "T_{5,c} = T_{4,c} - \\epsilon_2\\,(T_{4,c} - T_{s,c})",
  source: "definition of effectiveness",
  limits: [{ component: "charge coolers", side: "least", bound: chargeTemperatureLeast }],
});

const condensateOf = (
  { airFlow, manifoldPressure: pressure, manifoldTemperature: temperature }: SolvedEngine,
  humidityRatio: Ratio,
) =>
  chargeCondensate({ dryAirFlow: (airFlow / (1 + humidityRatio)) as MassFlow, humidityRatio, temperature, pressure });

export const chargeDewPoint = cell("chargeDewPoint", {
  label: "Dew point of the charge under boost",
  kind: "temperature",
  symbol: "T_{dew}",
  from: { coldCircuit, ambientHumidityRatio },
  compute: ({ coldCircuit, ambientHumidityRatio }) => {
    const { dewPoint } = condensateOf(coldCircuit.engine, ambientHumidityRatio);
    if (dewPoint === undefined) {
      throw new RangeError("chargeDewPoint: this air is so dry that frost comes before dew, even under boost");
    }
    return dewPoint;
  },
  formula: "T_{dew} = T_s\\left(\\frac{w_0\\,p_{5,c}}{0.62195 + w_0}\\right)",
  source: "ASHRAE Handbook Fundamentals, psychrometrics (from memory)",
  assumptions: [
    "Below this temperature water falls out in the coolers: it must be drained, or it is carried into the engine.",
  ],
});

export const coldCondensate = cell("coldCondensate", {
  label: "Water falling out of the charge in the coldest sea",
  kind: "massFlow",
  hint: "small",
  symbol: "\\dot m_{k,c}",
  from: { coldCircuit, ambientHumidityRatio },
  compute: ({ coldCircuit, ambientHumidityRatio }) =>
    condensateOf(coldCircuit.engine, ambientHumidityRatio).condensateFlow,
  formula: "\\dot m_{k,c} = \\dot m_{d,c}\\,\\max\\left(0,\\ w_0 - w_s(T_{5,c}, p_{5,c})\\right)",
  source: "ASHRAE Handbook Fundamentals, psychrometrics (from memory)",
  assumptions: ["The air keeps the humidity of the brief; a cold sea usually has drier air over it."],
});

export const coldThermostat = cell("coldThermostat", {
  label: "Thermostat open in the coldest sea",
  kind: "fraction",
  symbol: "\\theta_c",
  from: { coldCircuit },
  compute: ({ coldCircuit }) => jacketOf(coldCircuit).opening,
  formula: "\\theta_c = \\theta(T_{sea,c})",
  source: "energy balance",
});
