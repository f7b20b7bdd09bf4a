import {
  cylinderPressureDuringInjection,
  jetVelocity as jetVelocityOf,
  nozzleArea as nozzleAreaOf,
  nozzleCavitation,
  nozzleFlow as nozzleFlowOf,
} from "../../../lib/fuel";
import { cell, structure } from "../../../lib/graph";
import type { Ratio } from "../../../lib/quantity";
import { manifoldPressure } from "../../boost/cells";
import { compressionExponent, effectiveCompressionRatio, firingRise } from "../../boost/inputs";
import { holeDiameter, inletRounding, nozzleDischarge, nozzleHoles, railPressure } from "../inputs";
import { fuelDensityAtPump } from "../pumpWork";
import { fuelState } from "./fuelAtPump";

export const cylinderPressure = cell("cylinderPressure", {
  label: "Mean cylinder pressure during injection",
  kind: "pressure",
  hint: "boost",
  symbol: "p_z",
  from: { manifoldPressure, effectiveCompressionRatio, compressionExponent, firingRiseRatio: firingRise },
  compute: (stroke) => cylinderPressureDuringInjection(stroke).mean,
  formula: "p_z = p_5\\,\\varepsilon^{\\,n_c}\\,\\frac{1 + \\alpha}{2}",
  source: "common practice, no source: an estimate between compression and peak pressure",
});

export const nozzleArea = cell("nozzleArea", {
  label: "Area of one nozzle's holes",
  kind: "area",
  hint: "small",
  symbol: "A_h",
  from: { nozzleHoles, holeDiameter },
  compute: ({ nozzleHoles, holeDiameter }) => nozzleAreaOf(nozzleHoles, holeDiameter),
  formula: "A_h = z_h\\,\\frac{\\pi}{4}\\,d_h^2",
  source: "geometry",
});

export const jetVelocity = cell("jetVelocity", {
  label: "Velocity of the jets",
  kind: "velocity",
  symbol: "v_j",
  from: { railPressure, cylinderPressure, density: fuelDensityAtPump },
  compute: jetVelocityOf,
  formula: "v_j = \\sqrt{\\frac{2\\,(p_r - p_z)}{\\rho_f}}",
  source: "Bernoulli; a liquid that does not yield",
  assumptions: ["The pressure in the nozzle is the rail's; waves in the pipes are left out."],
});

export const holeFlow = structure("holeFlow", {
  label: "How a nozzle's hole flows, and whether it cavitates",
  from: { railPressure, cylinderPressure, fuelState, inletRounding, nozzleDischarge },
  compute: ({ railPressure, cylinderPressure, fuelState, inletRounding, nozzleDischarge }) =>
    nozzleCavitation({
      upstreamPressure: railPressure,
      downstreamPressure: cylinderPressure,
      vapourPressure: fuelState.vapourPressure,
      inletRounding,
      fullHoleDischarge: nozzleDischarge as number as Ratio,
    }),
  formula:
    "K_c = \\frac{p_r - p_{vap}}{p_r - p_z}, \\qquad C_d = C_c\\sqrt{K_c} \\text{ where } K_c < \\left(\\frac{C_{d,0}}{C_c}\\right)^2",
  source: "W. H. Nurick, J. Fluids Engineering 98 (1976) 681 (from memory)",
  assumptions: ["C_c⁻² = 0.611⁻² − 11.4 r_h; a taper of the hole, which hinders cavitation, is left out."],
});

export const cavitationNumber = cell("cavitationNumber", {
  label: "Cavitation number of the holes",
  kind: "ratio",
  symbol: "K_c",
  from: { holeFlow },
  compute: ({ holeFlow }) => holeFlow.cavitationNumber,
  formula: "K_c = \\frac{p_r - p_{vap}}{p_r - p_z}",
  source: "W. H. Nurick (1976) (from memory)",
});

export const cavitationCritical = cell("cavitationCritical", {
  label: "Cavitation number below which they cavitate",
  kind: "ratio",
  symbol: "K_{c,0}",
  from: { holeFlow },
  compute: ({ holeFlow }) => holeFlow.criticalNumber,
  formula: "K_{c,0} = C_{d,0}^2\\left(0.611^{-2} - 11.4\\,r_h\\right)",
  source: "W. H. Nurick (1976) (from memory)",
  assumptions: ["A cavitating hole keeps its flow whatever the cylinder's pressure does, and wears."],
});

export const dischargeMet = cell("dischargeMet", {
  label: "Discharge coefficient at this pressure",
  kind: "ratio",
  symbol: "C_d",
  from: { holeFlow },
  compute: ({ holeFlow }) => holeFlow.dischargeCoefficient,
  formula: "C_d = \\min\\left(C_{d,0},\\ C_c\\sqrt{K_c}\\right)",
  source: "W. H. Nurick (1976) (from memory)",
});

export const nozzleFlow = cell("nozzleFlow", {
  label: "Flow of one nozzle, needle open",
  kind: "volumeFlow",
  hint: "small",
  symbol: "q_n",
  from: {
    area: nozzleArea,
    dischargeCoefficient: dischargeMet,
    railPressure,
    cylinderPressure,
    density: fuelDensityAtPump,
  },
  compute: nozzleFlowOf,
  formula: "q_n = C_d\\,A_h\\,v_j",
  source: "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), chapter 10 (from memory)",
  assumptions: [
    "By volume at the density of the pump's inlet, like the quantity that has to pass; the squeeze of the fuel, left out, takes some 2 % off it.",
  ],
});
