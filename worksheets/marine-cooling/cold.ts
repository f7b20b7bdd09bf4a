import { type ChargeAtSink, chargeAtSink, chargeCondensate } from "../../lib/charge";
import { cell, structure } from "../../lib/graph";
import type { MassFlow, Ratio, Temperature, ThermalConductance } from "../../lib/quantity";
import { airFlow } from "../air-demand/cells";
import { manifoldPressure, manifoldTemperature } from "../boost/cells";
import { aftercoolerEffectiveness, intercoolerEffectiveness } from "../boost/inputs";
import { ambientHumidityRatio } from "../brief/cells";
import { jacketOf } from "./circuit";
import type { CircuitState } from "./circuitState";
import { circuitSetup, circuitState } from "./heats";
import { chargeCooledBy, chargeTemperatureLeast, coldSeaTemperature, loopTemperature } from "./inputs";
import { type MarineNetwork, networkAt } from "./networkAt";
import { chargeWaterWarming } from "./rawWater";

/** The charge path and the circuits in the coldest sea, at the promised power. */
export interface ColdCircuit extends MarineNetwork {
  readonly charge: ChargeAtSink;
}

export const coldCircuit = structure("coldCircuit", {
  label: "The same in the coldest sea",
  from: {
    circuitSetup,
    circuitState,
    coldSeaTemperature,
    aftercoolerEffectiveness,
    intercoolerEffectiveness,
    chargeCooledBy,
    loopTemperature,
    chargeWaterWarming,
  },
  compute: (at): ColdCircuit => {
    const { intercooler, aftercooler } = at.circuitState;
    const cold = at.coldSeaTemperature;
    const charge = chargeAtSink({
      compressorOutlet: intercooler.hotInlet,
      blowerInlet: intercooler.hotOutlet,
      blowerOutlet: aftercooler.hotInlet,
      effectivenessBefore: at.intercoolerEffectiveness,
      effectivenessAfter: at.aftercoolerEffectiveness,
      sink: at.chargeCooledBy === "loop" ? at.loopTemperature : cold,
      chargeCapacityRate: chargeRate([intercooler, aftercooler]),
      sinkWarmingPerWatt: at.chargeWaterWarming,
    });
    const network = networkAt(at.circuitSetup, {
      ...at.circuitState,
      seaTemperature: cold,
      intercooler: { heat: charge.heatBefore, hotInlet: intercooler.hotInlet, hotOutlet: charge.blowerInlet },
      aftercooler: { heat: charge.heatAfter, hotInlet: charge.blowerOutlet, hotOutlet: charge.manifold },
    });
    return { ...network, charge };
  },
  formula: "\\text{as the line, at } T_{sea,c}",
  source: "energy balance; definition of effectiveness",
  assumptions: [
    "The engine passes the same air and power; the charge coolers keep their effectiveness, the jacket its thermostat.",
    "A loop of fresh water holds its own temperature, whatever the sea.",
  ],
});

function chargeRate(coolers: readonly CircuitState["aftercooler"][]): ThermalConductance {
  const cooling = coolers.filter(({ heat, hotInlet, hotOutlet }) => heat > 0 && hotInlet > hotOutlet);
  if (cooling.length === 0)
    throw new RangeError("coldCircuit: no charge cooler takes out any heat; there is nothing to overcool");
  const rates = cooling.map(({ heat, hotInlet, hotOutlet }) => heat / (hotInlet - hotOutlet));
  return Math.min(...rates) as ThermalConductance; // condensation swells the other
}

export const coldChargeTemperature = cell("coldChargeTemperature", {
  label: "Charge in the manifold in the coldest sea",
  kind: "temperature",
  symbol: "T_{5,c}",
  from: { coldCircuit },
  compute: ({ coldCircuit }) => coldCircuit.charge.manifold,
  formula: "T_{5,c} = T_{4,c} - \\epsilon_2\\,(T_{4,c} - T_{sea,c})",
  source: "definition of effectiveness",
  limits: [{ component: "charge coolers", side: "least", bound: chargeTemperatureLeast }],
});

const condensateAt = (
  at: {
    readonly airFlow: MassFlow;
    readonly ambientHumidityRatio: Ratio;
    readonly manifoldPressure: Parameters<typeof chargeCondensate>[0]["pressure"];
  },
  temperature: Temperature,
) =>
  chargeCondensate({
    dryAirFlow: (at.airFlow / (1 + at.ambientHumidityRatio)) as MassFlow,
    humidityRatio: at.ambientHumidityRatio,
    temperature,
    pressure: at.manifoldPressure,
  });

export const chargeDewPoint = cell("chargeDewPoint", {
  label: "Dew point of the charge under boost",
  kind: "temperature",
  symbol: "T_{dew}",
  from: { airFlow, ambientHumidityRatio, manifoldPressure, manifoldTemperature },
  compute: ({ manifoldTemperature, ...at }) => {
    const { dewPoint } = condensateAt(at, manifoldTemperature);
    if (dewPoint === undefined) {
      throw new RangeError("chargeDewPoint: this air is so dry that frost comes before dew, even under boost");
    }
    return dewPoint;
  },
  formula: "T_{dew} = T_s\\left(\\frac{w_0\\,p_5}{0.62195 + w_0}\\right)",
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
  from: { coldChargeTemperature, airFlow, ambientHumidityRatio, manifoldPressure },
  compute: ({ coldChargeTemperature, ...at }) => condensateAt(at, coldChargeTemperature).condensateFlow,
  formula: "\\dot m_{k,c} = \\dot m_d\\,\\max\\left(0,\\ w_0 - w_s(T_{5,c}, p_5)\\right)",
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
