import { cell, structure } from "../../lib/graph";
import type { Ratio } from "../../lib/quantity";
import { fuelReturnFlow } from "../fuel-delivery/cells";
import { fuelTemperature } from "../fuel-delivery/inputs";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import { marineBalance, ownEngine } from "./balance";
import type { MarineBalance } from "./balanceOf";
import { type CircuitSetup, type CircuitState, heatsOf } from "./circuitState";
import {
  branchFlow,
  chargeCooledBy,
  cleanCoefficient,
  exchangerSeaFlow,
  foulingResistance,
  fuelCooler,
  gearCooler,
  gearOilFlow,
  glycolShare,
  jacketCooledBy,
  jacketExchanger,
  jacketFlow,
  keelCooler,
  loopCooler,
  loopFlow,
  loopTemperature,
  oilCooler,
  oilDensity,
  oilFlow,
  oilSpecificHeat,
  rawWaterLine,
  salinity,
  seaSideShare,
  strainerBlocked,
  thermostatOpens,
  thermostatSpan,
} from "./inputs";
import { rawWaterFlow, rawWaterInlet } from "./rawWater";

/** Heat of one line of the heat balance. */
const heatOf = ({ lines }: MarineBalance, key: string) => lines.find((line) => line.key === key)!.power;

export const jacketHeat = cell("jacketHeat", {
  label: "Heat into the jacket water",
  kind: "power",
  hint: "heat",
  symbol: "Q_j",
  from: { marineBalance },
  compute: ({ marineBalance }) => heatOf(marineBalance, "jacket"),
  formula: "Q_j = (1 - \\lambda_{wo} - \\lambda_{wr})\\,\\lambda_{w,u}\\,\\dot m_f H_u + (1 - \\lambda_{fo})\\,P_f",
  source: "first law; shares of wall and friction heat are the build's own",
});

export const oilHeat = cell("oilHeat", {
  label: "Heat into the engine oil",
  kind: "power",
  hint: "heat",
  symbol: "Q_o",
  from: { marineBalance },
  compute: ({ marineBalance }) => heatOf(marineBalance, "oil"),
  formula:
    "Q_o = \\lambda_{wo}\\,\\lambda_{w,u}\\,\\dot m_f H_u + \\lambda_{fo}\\,P_f + P_c\\left(\\frac{1}{\\eta_m} - 1\\right)",
  source: "first law; the turbochargers' bearings are cooled by the engine's oil",
});

export const gearHeat = cell("gearHeat", {
  label: "Heat into the gear oil",
  kind: "power",
  hint: "heat",
  symbol: "Q_g",
  from: { marineBalance },
  compute: ({ marineBalance }) => heatOf(marineBalance, "gear"),
  formula: "Q_g = (1 - \\eta_g)\\,P_b",
  source: "first law",
});

/** Exchangers and circuits, gathered. */
export const circuitSetup = structure("circuitSetup", {
  label: "Exchangers, circuits and their liquids, gathered",
  from: {
    rawWaterLine,
    branchFlow,
    strainerBlocked,
    exchangerSeaFlow,
    seaSideShare,
    foulingResistance,
    cleanCoefficient,
    salinity,
    jacketCooledBy,
    jacketFlow,
    glycolShare,
    thermostatOpens,
    thermostatSpan,
    jacketExchanger,
    keelCooler,
    chargeCooledBy,
    loopTemperature,
    loopFlow,
    loopCooler,
    oilFlow,
    oilDensity,
    oilSpecificHeat,
    oilCooler,
    gearOilFlow,
    gearCooler,
    fuelCooler,
    fuelReturnFlow,
    fuelInUse,
    fuelTemperature,
  },
  compute: ({ fuelInUse, ...at }): CircuitSetup => ({ ...at, fuel: fuelInUse }),
  formula: "\\text{inputs gathered}",
  source: "definition",
});

/** What the engine gives at the promised power, and the warmest sea. */
export const circuitState = structure("circuitState", {
  label: "Heat, flow and sea at the promised power",
  from: { rawWaterInlet, rawWaterFlow, marineBalance, ownEngine },
  compute: ({ rawWaterInlet, rawWaterFlow, marineBalance, ownEngine }): CircuitState => ({
    seaTemperature: rawWaterInlet,
    rawWaterFlow,
    speedRatio: 1 as Ratio,
    ...heatsOf(ownEngine, marineBalance),
  }),
  formula: "\\text{cells gathered}",
  source: "definition",
  assumptions: [
    "Charge coolers of one kind count as one; water that falls out of the charge gives them its heat of condensation on top.",
  ],
});
