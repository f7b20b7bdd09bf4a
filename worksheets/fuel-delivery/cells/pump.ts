import { type PlungerPump, pumpAtSpeed, pumpDisplacement as pumpDisplacementOf } from "../../../lib/fuel";
import { cell, structure } from "../../../lib/graph";
import type { Fraction, MassFlow, PressureDifference, RotationalSpeed } from "../../../lib/quantity";
import { ratedSpeed } from "../../brief/cells";
import { drivenPumps } from "../drivenPumps";
import {
  deadVolumeShare,
  plungerDiameter,
  plungerGap,
  plungerSeal,
  plungerStroke,
  pumpLobes,
  pumpMechanicalEfficiency,
  pumpPlungers,
  railPressure,
  viscousShare,
} from "../inputs";
import { fuelState } from "./fuelAtPump";

export const pumpDisplacement = cell("pumpDisplacement", {
  label: "Displacement of the high-pressure pump",
  kind: "volumePerTurn",
  hint: "small",
  symbol: "V_p",
  from: { plungers: pumpPlungers, bore: plungerDiameter, stroke: plungerStroke, lobes: pumpLobes },
  compute: pumpDisplacementOf,
  formula: "V_p = z_p\\,z_l\\,\\frac{\\pi}{4}\\,d_p^2\\,s_p",
  source: "geometry",
});

export const pumpBuild = structure("pumpBuild", {
  label: "One high-pressure pump as built",
  from: {
    pumpPlungers,
    plungerDiameter,
    plungerStroke,
    pumpLobes,
    deadVolumeShare,
    plungerGap,
    plungerSeal,
    pumpMechanicalEfficiency,
    viscousShare,
    ratedSpeed,
    drivenPumps,
  },
  compute: (at): PlungerPump => ({
    plungers: at.pumpPlungers,
    bore: at.plungerDiameter,
    stroke: at.plungerStroke,
    lobes: at.pumpLobes,
    deadVolumeShare: at.deadVolumeShare,
    gap: at.plungerGap,
    sealLength: at.plungerSeal,
    mechanicalEfficiency: at.pumpMechanicalEfficiency,
    viscousShare: at.viscousShare,
    referenceSpeed: (at.ratedSpeed * at.drivenPumps.pumps[0]!.ratio) as RotationalSpeed,
  }),
  formula: "\\text{inputs gathered}",
  source: "definition",
});

export const pumpRun = structure("pumpRun", {
  label: "The high-pressure pumps at the promised speed",
  from: { pumpBuild, drivenPumps, ratedSpeed, railPressure, fuelState },
  compute: ({ pumpBuild, drivenPumps, ratedSpeed, railPressure, fuelState }) =>
    drivenPumps.pumps.map(({ ratio }) =>
      pumpAtSpeed(pumpBuild, {
        pumpSpeed: (ratedSpeed * ratio) as RotationalSpeed,
        pressureRise: railPressure as number as PressureDifference,
        bulkModulus: fuelState.meanModulus,
        inletDensity: fuelState.density,
        dynamicViscosity: fuelState.dynamicViscosity,
      }),
    ),
  formula:
    "\\dot m = V_p\\,n_f\\,\\rho_f\\left[1 - \\kappa\\left(e^{p_r/K_f} - 1\\right)\\right] - \\dot m_{leak}",
  source: "mass balance of the pumping chamber; leakage through an annulus, H. E. Merritt (1967) (from memory)",
  assumptions: [
    "The inlet valve fills the chamber; yielding of steel is left out.",
    "A plunger leaks for the half of the time in which it is under pressure; the fuel there thickens with pressure, doubling at 1000 bar (from memory).",
  ],
});

export const pumpFilling = cell("pumpFilling", {
  label: "High-pressure pump, volumetric efficiency by mass",
  kind: "fraction",
  symbol: "\\eta_{vp}",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun[0]!.byMass as number as Fraction,
  formula:
    "\\eta_{vp} = 1 - \\kappa\\left(e^{p_r/K_f} - 1\\right) - \\frac{\\dot m_{leak}}{V_p\\,n_f\\,\\rho_f}",
  source: "mass balance of the pumping chamber with constant mean bulk modulus",
  assumptions: ["Of the first pump, if there are several."],
});

export const pumpLeakFlow = cell("pumpLeakFlow", {
  label: "Fuel that leaks past the plungers",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_{leak}",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun.reduce((sum, { leakage }) => sum + leakage, 0) as MassFlow,
  formula:
    "\\dot m_{leak} = \\frac{z_p}{2}\\,\\frac{\\pi\\,d_p\\,h_p^3}{12\\,l_p}\\int_0^{p_r}\\frac{dp}{\\nu(p)}",
  source: "H. E. Merritt, Hydraulic Control Systems (1967), §3-2 (from memory)",
  assumptions: ["The third power of the gap makes of this an estimate."],
});
