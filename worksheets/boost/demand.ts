import { type DemandBuild, demandPoint } from "../../lib/charge";
import { wallShareFromJacket } from "../../lib/engine";
import { moistAir } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type { Power } from "../../lib/quantity";
import { ambientHumidityRatio, ratedPower, ratedSpeed } from "../brief/cells";
import { frictionHeatToOil, wallHeatRadiated, wallHeatToOil } from "../marine-cooling/inputs";
import { measuredFuelFlow, measuredJacketHeat, wallHeatFrom } from "../marine-cooling/inputs/wallHeat";
import { wallHeatShare } from "./inputs";
import { statedBuild } from "./statedBuild";

export const wallHeatInUse = cell("wallHeatInUse", {
  label: "Share of wall heat in use",
  kind: "fraction",
  symbol: "\\lambda_{w,u}",
  from: {
    wallHeatFrom,
    wallHeatShare,
    measuredJacketHeat,
    measuredFuelFlow,
    frictionHeatToOil,
    wallHeatToOil,
    wallHeatRadiated,
    statedBuild,
    ratedSpeed,
    ratedPower,
  },
  compute: ({ wallHeatFrom, wallHeatShare, measuredJacketHeat, measuredFuelFlow, statedBuild, ...at }) => {
    if (wallHeatFrom === "stated") return wallHeatShare;
    const { powers } = demandPoint(statedBuild, { engineSpeed: at.ratedSpeed, brakePower: at.ratedPower });
    return wallShareFromJacket({
      jacketHeat: measuredJacketHeat,
      fuelPower: (measuredFuelFlow * statedBuild.fuel.lowerHeatingValue) as Power,
      frictionPower: powers.friction,
      frictionHeatToOil: at.frictionHeatToOil,
      wallHeatToOil: at.wallHeatToOil,
      wallHeatRadiated: at.wallHeatRadiated,
    });
  },
  formula:
    "\\lambda_{w,u} = \\lambda_w \\text{ stated, or } \\frac{Q_{j,m} - (1 - \\lambda_{fo})\\,P_f}{(1 - \\lambda_{wo} - \\lambda_{wr})\\,\\dot m_{f,m}\\,H_u} \\text{ measured}",
  source: "first law",
  assumptions: [
    "Friction is that of the promised power with the share stated; it hardly feels the share.",
    "Oil and radiation keep the shares stated: measure the oil's heat too, and set its share until both agree.",
  ],
});

/** The build as the demand loop wants it, but for speed and power. */
export const demandBuild = structure("demandBuild", {
  label: "Engine, charge path and exhaust, gathered",
  from: { statedBuild, wallHeatInUse },
  compute: ({ statedBuild, wallHeatInUse }): DemandBuild => ({
    ...statedBuild,
    engine: { ...statedBuild.engine, heatToWallsShare: wallHeatInUse },
  }),
  formula: "\\text{cells gathered}",
  source: "definition",
});

export const demand = structure("demand", {
  label: "Fuel, air and charge, solved as one loop",
  from: { demandBuild, ratedSpeed, ratedPower },
  compute: ({ demandBuild, ratedSpeed, ratedPower }) =>
    demandPoint(demandBuild, { engineSpeed: ratedSpeed, brakePower: ratedPower }),
  formula: "\\eta_i\\,\\dot m_f\\,H_u = P_b + P_f + P_x + P_{bl} + P_{pump} + P_{fp}",
  source:
    "conservation of mass and first law on every element; turbine and compressor balance after Watson and Janota (1982, from memory)",
  assumptions: [
    "Steady mean values; the pulses of single cylinders are left out.",
    "Compressors and turbines are given by their efficiencies; whether the wheels chosen reach them at this point is for their maps to say.",
  ],
});

/** The gas in the charge path. */
export const charge = structure("charge", {
  label: "Charge air",
  from: { ambientHumidityRatio },
  compute: ({ ambientHumidityRatio }) => moistAir(ambientHumidityRatio),
  formula: "\\text{dry air and } w_0 \\text{ of vapour}",
  source: "McBride, Zehe and Gordon, NASA/TP-2002-211556 (2002)",
});
