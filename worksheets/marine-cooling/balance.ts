import { type DemandBuild, demandPoint } from "../../lib/charge";
import { cell, structure } from "../../lib/graph";
import type { Fraction, Power, Ratio, RotationalSpeed } from "../../lib/quantity";
import { fuelPumpPower } from "../air-demand/cells";
import { demandBuild } from "../boost/demand";
import { ambientTemperature, ratedPower, ratedSpeed } from "../brief/cells";
import { fuelReturnHeat } from "../fuel-delivery/cells";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import { attained, matched } from "../matching/solved";
import { type BalanceInputs, balanceOf, type MarineBalance } from "./balanceOf";
import { frictionHeatToOil, gearEfficiency, heatsFrom, wallHeatRadiated, wallHeatToOil } from "./inputs";
import { engineOfDemand, engineOfParts, type SolvedEngine } from "./solvedEngine";

/** What splits the heat of any point, gathered. */
export const balanceSetup = structure("balanceSetup", {
  label: "Shares of wall and friction heat, gear and fuel, gathered",
  from: {
    frictionHeatToOil,
    wallHeatToOil,
    wallHeatRadiated,
    gearEfficiency,
    fuelReturnHeat,
    fuelPumpPower,
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
    fuelReturnShare: (at.fuelPumpPower > 0 ? at.fuelReturnHeat / at.fuelPumpPower : 0) as Fraction,
    fuel: at.fuelInUse,
    ambientTemperature: at.ambientTemperature,
  }),
  formula: "\\text{inputs gathered}",
  source: "definition",
  assumptions: ["Of the fuel pump's power the returning fuel carries the same part at every speed and load."],
});

/** The engine as the boat has it: the chosen parts, with the promised power on them, or what the promise asks for. */
export const ownEngine = structure("ownEngine", {
  label: "The engine at the promised power, for its heat balance",
  from: { heatsFrom, matched, attained, demandBuild, ratedSpeed, ratedPower },
  compute: ({ heatsFrom, matched, attained, demandBuild, ratedSpeed, ratedPower }): SolvedEngine => {
    if (heatsFrom === "promise") return promisedAt(demandBuild, ratedSpeed, ratedPower);
    if (Math.abs(matched.brakePower / ratedPower - 1) < 1e-9) return engineOfParts(matched);
    const kilowatts = (power: Power) => `${(power / 1000).toFixed(0)} kW`;
    throw new RangeError(
      `ownEngine: the chosen parts do not carry the promised ${kilowatts(ratedPower)} at ${(60 * ratedSpeed).toFixed(0)} rev/min; they reach ${kilowatts(attained.binding.brakePower)}, where ${attained.binding.name.toLowerCase()} stops them: choose other parts on the sheet of the match, or take the heat of the promise until they are chosen`,
    );
  },
  formula: "\\text{the match at } P_b",
  source: "as the match, or as the boost",
  assumptions: [
    "Heat, air and exhaust are those of the chosen parts, here as at every other speed and load; they take what air comes. The promise asks for its least excess air instead, and has no other speeds.",
    "Limits of the match bend nothing here: its own sheet says which of them are passed.",
  ],
});

/** The engine as the sheet of the boost has it: what the promise asks for, whatever parts give it. */
export const promisedEngine = structure("promisedEngine", {
  label: "The engine as the promise asks for it, to stand beside the chosen parts",
  from: { demandBuild, ratedSpeed, ratedPower },
  compute: ({ demandBuild, ratedSpeed, ratedPower }): SolvedEngine => promisedAt(demandBuild, ratedSpeed, ratedPower),
  formula: "\\text{as on the sheet of the boost}",
  source: "conservation of mass and first law on every element",
});

function promisedAt(build: DemandBuild, engineSpeed: RotationalSpeed, brakePower: Power): SolvedEngine {
  return engineOfDemand(demandPoint(build, { engineSpeed, brakePower }), engineSpeed, build.surroundings.humidityRatio);
}

export const marineBalance = structure("marineBalance", {
  label: "Where every kilowatt goes",
  from: { ownEngine, balanceSetup },
  compute: ({ ownEngine, balanceSetup }): MarineBalance => balanceOf(ownEngine, balanceSetup),
  formula: "\\dot m_f\\,H_u = \\eta_g P_b + P_x + (P_{fp} - Q_f) + \\sum Q",
  source: "first law for a steady flow",
  assumptions: [
    "Heat counts above the air outside, the fuel by its lower heating value: the vapour in the exhaust leaves as vapour.",
    "Oil takes the turbochargers' bearing loss along; blower and pumping power come back as charge heat and exhaust.",
    "Heat of condensation in the charge coolers is left out here, and counted along the sea-water line.",
  ],
});

/** The heat balance, line by line, and that of what the promise asks for. */
export const balanceBeside = structure("balanceBeside", {
  label: "The heat balance beside that of the promise",
  from: { marineBalance, promisedEngine, balanceSetup },
  compute: ({ marineBalance: { lines }, promisedEngine, balanceSetup }) => {
    const promised = balanceOf(promisedEngine, balanceSetup).lines;
    return lines.map((line, i) => ({ ...line, promised: promised[i]!.power }));
  },
  formula: "\\text{both heat balances}",
  source: "first law for a steady flow",
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
