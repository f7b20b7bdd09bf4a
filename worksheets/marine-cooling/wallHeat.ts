import { cell, structure } from "../../lib/graph";
import type { Energy, Ratio } from "../../lib/quantity";
import { wallHeatInUse } from "../boost/demand";
import { effectiveCompressionRatio } from "../boost/inputs";
import { bore, cylinders, stroke } from "../brief/cells";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import { ownEngine } from "./balance";
import {
  burnDuration,
  burnStarts,
  crownSurface,
  exhaustOpens,
  intakeCloses,
  portBore,
  portLength,
  portTemperature,
  wallHeatCorrelation,
  wallTemperature,
} from "./inputs/wallHeat";
import { type CylinderSetup, type WallHeat, wallHeatOf } from "./wallHeatOf";

/** The cylinder as the correlation asks for it. */
export const cylinderSetup = structure("cylinderSetup", {
  label: "Cylinder, valves, port and burning, gathered",
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
    crownSurface,
    portBore,
    portLength,
    portTemperature,
    wallHeatCorrelation,
    fuelInUse,
  },
  compute: (at): CylinderSetup => at,
  formula: "\\text{inputs gathered}",
  source: "definition",
});

export const wallHeatParts = structure("wallHeatParts", {
  label: "Heat into the walls by the correlation, part by part",
  from: { cylinderSetup, ownEngine },
  compute: ({ cylinderSetup, ownEngine }): WallHeat => wallHeatOf(cylinderSetup, ownEngine),
  formula:
    "Q = z_c\\frac{N}{2}\\oint h\\,A\\,(T - T_{wall})\\,dt + z_c\\,\\dot m_x c_x (T_6 - T_{xp})\\left(e^{N_{xp}} - 1\\right)",
  source:
    "G. F. Hohenberg, SAE 790825 (1979); G. Woschni, SAE 670931 (1967); W. J. D. Annand, Proc. IMechE 177 (1963); single zone of constant γ, burning after Vibe (all from memory); ports: C. Depcik, D. Assanis, SAE 2002-01-0372 (abstract)",
  assumptions: [
    "The gas that is compressed is the mass that the air sheet draws in, at the manifold's pressure: it is warmer than the manifold by what walls and residual gas gave it.",
    "While the valves are open the gas is first exhaust let down to the turbines' pressure, then charge, which the walls warm; the blow-down and the overlap are left out.",
    "γ is 1.33 throughout, the rod 1.65 strokes long. The ports' heat is good to a half, the cylinders' to a third: Annand gives about a quarter more than Hohenberg, Woschni a quarter less.",
  ],
});

export const wallHeatByCorrelation = cell("wallHeatByCorrelation", {
  label: "Fuel energy into the walls, by the correlation",
  kind: "fraction",
  symbol: "\\lambda_{w,c}",
  from: { wallHeatParts },
  compute: ({ wallHeatParts }) => wallHeatParts.share,
  formula: "\\lambda_{w,c} = \\frac{Q_{closed} + Q_{open} + Q_{ports}}{\\dot m_f\\,H_u}",
  source: "sum over the cycle",
});

export const wallHeatCalibration = cell("wallHeatCalibration", {
  label: "Share of wall heat in use over the correlation's",
  kind: "ratio",
  symbol: "c_w",
  from: { wallHeatInUse, wallHeatByCorrelation },
  compute: ({ wallHeatInUse, wallHeatByCorrelation }) => {
    if (!(wallHeatByCorrelation > 0)) {
      throw new RangeError(
        `wallHeatCalibration: the correlation gives ${(100 * wallHeatByCorrelation).toFixed(1)} % of the fuel's heat to the walls; with walls as hot as the gas there is nothing to calibrate: lower their temperature`,
      );
    }
    return (wallHeatInUse / wallHeatByCorrelation) as Ratio;
  },
  formula: "c_w = \\frac{\\lambda_{w,u}}{\\lambda_{w,c}}",
  source: "definition",
  assumptions: [
    "The share in use is yours: estimated, or from a heat measured on a brake. Away from the promised power the correlation scaled by c_w takes its place.",
  ],
  validity: [
    {
      of: "result",
      span: [0.6, 1.8],
      note: "The published correlations differ from each other by a half; outside this the share, the measurement or the engine's data are to be looked at: common practice, no source.",
    },
  ],
});

/** Heat that the fuel of one cycle sets free in one cylinder, for those who want to follow the correlation. */
export const cycleFuelHeat = cell("cycleFuelHeat", {
  label: "Heat of the fuel for one cylinder and cycle",
  kind: "energy",
  hint: "small",
  symbol: "Q",
  from: { ownEngine, cylinders },
  compute: ({ ownEngine, cylinders }) => ((2 * ownEngine.fuelPower) / (ownEngine.speed * cylinders)) as Energy,
  formula: "Q = \\frac{2\\,\\dot m_f\\,H_u}{z_c\\,N}",
  source: "definition, four-stroke engine",
});
