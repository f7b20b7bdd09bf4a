import { cell } from "../../../lib/graph";
import type { GaugePressure, Pressure, PressureDifference } from "../../../lib/quantity";
import { ambientPressure } from "../../brief/cells";
import { inletPressureNeeded, suctionLeast } from "../inputs";
import { fuelState } from "./fuelAtPump";
import { supplyVolumeFlow } from "./supplyFlow";
import { supplyLine } from "./supplyLine";

export const suctionPressure = cell("suctionPressure", {
  label: "Pressure before the lift pump",
  kind: "pressure",
  hint: "boost",
  symbol: "p_{su}",
  from: { supplyLine },
  compute: ({ supplyLine }) => parting(supplyLine.stations[2]!.pressure, "suctionPressure", "the suction line"),
  formula:
    "p_{su} = p_0 - \\rho_f\\,g\\,h_{su} - \\left(f\\,\\frac{l_{su}}{d_s} + \\zeta_{su}\\right)\\frac{\\rho_f v_s^2}{2}",
  source: "hydrostatics; Darcy and Weisbach",
  limits: [{ component: "lift pump", side: "least", bound: suctionLeast }],
});

export const vapourMargin = cell("vapourMargin", {
  label: "That pressure above the fuel's vapour pressure",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_{vap}",
  from: { suctionPressure, fuelState },
  compute: ({ suctionPressure, fuelState }) => (suctionPressure - fuelState.vapourPressure) as PressureDifference,
  formula: "\\Delta p_{vap} = p_{su} - p_{vap}(T_f)",
  source: "US EPA, AP-42, chapter 7.1 (from memory)",
  assumptions: ["Diesel fuel's vapour pressure is some hundred pascal: air comes out of it long before vapour does."],
});

export const liftPressure = cell("liftPressure", {
  label: "Pressure behind the lift pump at this flow",
  kind: "gaugePressure",
  hint: "boost",
  symbol: "p_l",
  from: { supplyLine, ambientPressure },
  compute: ({ supplyLine, ambientPressure }) =>
    (parting(supplyLine.stations[3]!.pressure, "liftPressure", "the suction line") - ambientPressure) as GaugePressure,
  formula: "p_l = p_{su} - p_0 + p_{l,0} - (p_{l,0} - p_{l,r})\\left(\\frac{q_s}{q_l}\\right)^2",
  source: "parabola through two points of the pump's curve: common practice, no source",
});

export const inletPressure = cell("inletPressure", {
  label: "Pressure at the high-pressure pump's inlet",
  kind: "gaugePressure",
  hint: "boost",
  symbol: "p_i",
  from: { supplyLine, ambientPressure },
  compute: ({ supplyLine, ambientPressure }) =>
    (parting(supplyLine.stations.at(-1)!.pressure, "inletPressure", "line, filter and cooler") -
      ambientPressure) as GaugePressure,
  formula: "p_i = p_l - \\Delta p_f - \\Delta p_s - \\Delta p_k",
  source: "sum of losses",
  assumptions: ["Lift pump and inlet stand at one height."],
  limits: [{ component: "high-pressure pump inlet", side: "least", bound: inletPressureNeeded }],
});

export const supplyReached = cell("supplyReached", {
  label: "Supply flow at which the inlet would just have its pressure",
  kind: "volumeFlow",
  hint: "fuel",
  symbol: "q_{s,max}",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.reach,
  formula: "q_{s,max} = q_s|_{p_i = p_{i,min}}",
  source: "where the lift pump's curve crosses the line's",
  limits: [{ component: "lift pump", side: "least", bound: supplyVolumeFlow }],
});

/** Fuel does not bear a pull: short of vacuum it parts. */
function parting(pressure: Pressure, name: string, where: string): Pressure {
  if (pressure > 0) return pressure;
  throw new RangeError(
    `${name}: ${where} would lose ${bars(-pressure)} more than there is, and the fuel would part; take a wider or shorter line, a cleaner filter or a stronger pump`,
  );
}

const bars = (pressure: number) => `${(pressure / 1e5).toFixed(1)} bar`;
