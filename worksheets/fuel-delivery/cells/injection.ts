import { crankAngleOf, injectionDuration as injectionDurationOf, nozzleAreaForWindow } from "../../../lib/fuel";
import { cell, structure } from "../../../lib/graph";
import type { Length } from "../../../lib/quantity";
import { ratedSpeed } from "../../brief/cells";
import { injectionWindow, needleClosing, needleOpening, nozzleHoles, railPressure } from "../inputs";
import { fuelDensityAtPump } from "../pumpWork";
import { injectedVolume } from "./fuelOfStroke";
import { cylinderPressure, dischargeMet, nozzleFlow } from "./nozzle";

export const injectionTime = cell("injectionTime", {
  label: "Injection lasts, all fuel at one go",
  kind: "time",
  hint: "small",
  symbol: "t_i",
  from: {
    volumePerStroke: injectedVolume,
    nozzleFlow,
    openingTime: needleOpening,
    closingTime: needleClosing,
  },
  compute: injectionDurationOf,
  formula: "t_i = \\frac{V_f}{q_n} + \\frac{t_{no} + t_{nc}}{2}",
  source: "trapezium of flow over time",
  assumptions: [
    "For quantities too small to open the needle fully, t_i = √(2 (t_no + t_nc) V_f/q_n).",
    "Against the mean pressure in the cylinder; the timeline below follows the crank.",
  ],
});

export const injectionAngle = cell("injectionAngle", {
  label: "Injection lasts, in crank angle",
  kind: "crankAngle",
  symbol: "\\theta_i",
  from: { injectionTime, ratedSpeed },
  compute: ({ injectionTime, ratedSpeed }) => crankAngleOf(injectionTime, ratedSpeed),
  formula: "\\theta_i = 360^\\circ\\,N\\,t_i",
  source: "definition",
  limits: [{ component: "injectors", side: "most", bound: injectionWindow }],
});

/** What the nozzle's size for the window is found from. */
export const windowed = structure("windowed", {
  label: "Fuel, window and pressures that size the holes",
  from: {
    injectedVolume,
    injectionWindow,
    ratedSpeed,
    dischargeMet,
    railPressure,
    cylinderPressure,
    fuelDensityAtPump,
    needleOpening,
    needleClosing,
  },
  compute: (at) => ({
    volumePerStroke: at.injectedVolume,
    window: at.injectionWindow,
    engineSpeed: at.ratedSpeed,
    dischargeCoefficient: at.dischargeMet,
    railPressure: at.railPressure,
    cylinderPressure: at.cylinderPressure,
    density: at.fuelDensityAtPump,
    openingTime: at.needleOpening,
    closingTime: at.needleClosing,
  }),
  formula: "\\text{inputs gathered}",
  source: "definition",
});

export const holeDiameterNeeded = cell("holeDiameterNeeded", {
  label: "Hole diameter that just fits the window",
  kind: "length",
  hint: "small",
  symbol: "d_{h,0}",
  from: { windowed, nozzleHoles },
  compute: ({ windowed, nozzleHoles }) =>
    Math.sqrt((4 * nozzleAreaForWindow(windowed)) / (Math.PI * nozzleHoles)) as Length,
  formula: "\\theta_i(d_{h,0}) = \\theta_{lim}",
  source: "the chain from the holes to the crank angle, taken backwards",
});
