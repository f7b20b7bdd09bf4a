import { cell, structure } from "../../lib/graph";
import type { Energy, Power, Ratio } from "../../lib/quantity";
import { demand } from "../boost/demand";
import { effectiveCompressionRatio, wallHeatShare } from "../boost/inputs";
import { ambientHumidityRatio, ambientTemperature, bore, cylinders, ratedSpeed, stroke } from "../brief/cells";
import { fuelReturnHeat } from "../fuel-delivery/cells";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import { type BalanceInputs, balanceOf, type MarineBalance } from "./balanceOf";
import {
  burnDuration,
  burnStarts,
  exhaustOpens,
  frictionHeatToOil,
  gearEfficiency,
  intakeCloses,
  wallHeatCorrelation,
  wallHeatRadiated,
  wallHeatToOil,
  wallTemperature,
} from "./inputs";
import { engineOfDemand, type SolvedEngine } from "./solvedEngine";
import { type CylinderSetup, wallHeatShareOf } from "./wallHeatOf";

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

/** The cylinder as the correlation asks for it. */
export const cylinderSetup = structure("cylinderSetup", {
  label: "Cylinder, valves and burning, gathered",
  from: {
    bore,
    stroke,
    cylinders,
    effectiveCompressionRatio,
    intakeCloses,
    exhaustOpens,
    burnStarts,
    burnDuration,
    wallTemperature,
    wallHeatCorrelation,
  },
  compute: (at): CylinderSetup => at,
  formula: "\\text{inputs gathered}",
  source: "definition",
});

export const wallHeatByCorrelation = cell("wallHeatByCorrelation", {
  label: "Fuel energy into the cylinder's walls, by the correlation",
  kind: "fraction",
  symbol: "\\lambda_{w,c}",
  from: { cylinderSetup, promisedEngine },
  compute: ({ cylinderSetup, promisedEngine }) => wallHeatShareOf(cylinderSetup, promisedEngine),
  formula: "\\lambda_{w,c} = \\frac{1}{Q}\\int h\\,A\\,(T - T_{wall})\\,dt",
  source:
    "G. F. Hohenberg, SAE 790825 (1979); G. Woschni, SAE 670931 (1967); W. J. D. Annand, Proc. IMechE 177 (1963); single zone of constant γ, burning after Vibe (all from memory)",
  assumptions: [
    "From the closing of the intake to the opening of the exhaust: ports and gas exchange are not in it, and take a further tenth to a third.",
    "γ is 1.33 throughout, the rod 1.65 strokes long; the state at closing is the manifold's.",
  ],
});

export const wallHeatCalibration = cell("wallHeatCalibration", {
  label: "Your share of wall heat over the correlation's",
  kind: "ratio",
  symbol: "c_w",
  from: { wallHeatShare, wallHeatByCorrelation },
  compute: ({ wallHeatShare, wallHeatByCorrelation }) => {
    if (!(wallHeatByCorrelation > 0)) {
      throw new RangeError(
        `wallHeatCalibration: the correlation gives ${(100 * wallHeatByCorrelation).toFixed(1)} % of the fuel's heat to the walls; with walls as hot as the gas there is nothing to calibrate: lower their temperature`,
      );
    }
    return (wallHeatShare / wallHeatByCorrelation) as Ratio;
  },
  formula: "c_w = \\frac{\\lambda_w}{\\lambda_{w,c}}",
  source: "definition",
  assumptions: [
    "The share λ_w is yours: estimated, or measured on a brake as jacket heat less friction. Away from the promised power the correlation scaled by c_w takes its place.",
  ],
  validity: [
    {
      of: "result",
      span: [0.5, 2.2],
      note: "The published correlations differ by a factor of two; outside it one of the two is wrong: common practice, no source.",
    },
  ],
});

/** Heat that the fuel of one cycle sets free in one cylinder, for those who want to follow the correlation. */
export const cycleFuelHeat = cell("cycleFuelHeat", {
  label: "Heat of the fuel for one cylinder and cycle",
  kind: "energy",
  hint: "small",
  symbol: "Q",
  from: { demand, ratedSpeed, cylinders },
  compute: ({ demand, ratedSpeed, cylinders }) => ((2 * demand.powers.fuel) / (ratedSpeed * cylinders)) as Energy,
  formula: "Q = \\frac{2\\,\\dot m_f\\,H_u}{z_c\\,N}",
  source: "definition, four-stroke engine",
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
  formula: "Q_r = \\lambda_{wr}\\,\\lambda_w\\,\\dot m_f H_u + P_{bl}\\,(1 - \\eta_{mb})",
  source: "first law",
});
