import { cell, structure } from "../../lib/graph";
import type { Power, Ratio } from "../../lib/quantity";
import { demand } from "../boost/demand";
import { ambientHumidityRatio, ambientTemperature, ratedSpeed } from "../brief/cells";
import { fuelReturnHeat } from "../fuel-delivery/cells";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import { type BalanceInputs, balanceOf, type MarineBalance } from "./balanceOf";
import { frictionHeatToOil, gearEfficiency, wallHeatRadiated, wallHeatToOil } from "./inputs";
import { engineOfDemand, type SolvedEngine } from "./solvedEngine";

/** What splits the heat of any point, gathered. */
export const balanceSetup = structure("balanceSetup", {
  label: "Shares of wall and friction heat, gear and fuel, gathered",
  from: {
    frictionHeatToOil,
    wallHeatToOil,
    wallHeatRadiated,
    gearEfficiency,
    fuelReturnHeat,
    fuelInUse,
    ambientTemperature,
  },
  compute: (at): BalanceInputs => ({
    split: {
      frictionHeatToOil: at.frictionHeatToOil,
      wallHeatToOil: at.wallHeatToOil,
      wallHeatRadiated: at.wallHeatRadiated,
    },
    gearEfficiency: at.gearEfficiency,
    fuelReturnHeat: at.fuelReturnHeat,
    fuel: at.fuelInUse,
    ambientTemperature: at.ambientTemperature,
  }),
  formula: "\\text{inputs gathered}",
  source: "definition",
});

/** The engine at the promised power, as a heat balance reads it. */
export const promisedEngine = structure("promisedEngine", {
  label: "The engine at the promised power, for its heat balance",
  from: { demand, ratedSpeed, ambientHumidityRatio },
  compute: ({ demand, ratedSpeed, ambientHumidityRatio }): SolvedEngine =>
    engineOfDemand(demand, ratedSpeed, ambientHumidityRatio),
  formula: "\\text{cells gathered}",
  source: "definition",
});

export const marineBalance = structure("marineBalance", {
  label: "Where every kilowatt goes",
  from: { promisedEngine, balanceSetup },
  compute: ({ promisedEngine, balanceSetup }): MarineBalance => balanceOf(promisedEngine, balanceSetup),
  formula: "\\dot m_f\\,H_u = \\eta_g P_b + P_x + (P_{fp} - Q_f) + \\sum Q",
  source: "first law for a steady flow",
  assumptions: [
    "Heat counts above the air outside, the fuel by its lower heating value: the vapour in the exhaust leaves as vapour.",
    "Oil takes the turbochargers' bearing loss along; blower and pumping power come back as charge heat and exhaust.",
    "Heat of condensation in the charge coolers is left out here, and counted along the sea-water line.",
  ],
});

export const balanceGap = cell("balanceGap", {
  label: "Heat balance closed to within",
  kind: "ratio",
  symbol: "r_Q",
  from: { marineBalance },
  compute: ({ marineBalance: { unaccounted, fuel } }) => (Math.abs(unaccounted) / fuel) as Ratio,
  formula: "r_Q = \\frac{\\left|\\dot m_f H_u - \\sum P - \\sum Q\\right|}{\\dot m_f H_u}",
  source: "definition",
});

export const exhaustLatent = cell("exhaustLatent", {
  label: "Heat that the exhaust's moisture would give up by condensing",
  kind: "power",
  hint: "heat",
  symbol: "Q_{lat}",
  from: { marineBalance },
  compute: ({ marineBalance }) => marineBalance.latent,
  formula: "Q_{lat} = \\dot m_v\\,\\Delta h_v",
  source: "balance of elements; heat of evaporation at 25 °C, IAPWS (from memory)",
  assumptions: [
    "It lies outside a balance of lower heating values; cold sea water in a wet exhaust wins a part of it back.",
  ],
});

export const roomHeat = cell("roomHeat", {
  label: "Heat from the engine's surface to the room",
  kind: "power",
  hint: "heat",
  symbol: "Q_r",
  from: { marineBalance },
  compute: ({ marineBalance }) =>
    marineBalance.lines
      .filter(({ goal }) => goal === "room")
      .reduce<number>((sum, { power }) => sum + power, 0) as Power,
  formula: "Q_r = \\lambda_{wr}\\,\\lambda_{w,u}\\,\\dot m_f H_u + P_{bl}\\,(1 - \\eta_{mb})",
  source: "first law",
});
