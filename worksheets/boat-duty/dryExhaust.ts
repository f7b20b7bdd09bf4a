import { laggedPipe } from "../../lib/cooling";
import { cell, structure } from "../../lib/graph";
import type { Fraction, HeatTransferCoefficient, Temperature } from "../../lib/quantity";
import { ownEngine } from "../marine-cooling/balance";
import { dryBore, dryInRoom, exhaustKind, lagging, laggingConductivity, outsideAir, surfaceLimit } from "./inputs";

/** What the standard lets a room be warmer than outside [K]. */
export const roomRise = 12.5;
/** Of a surface of cloth; common practice, no source. */
export const clothEmissivity = 0.9 as Fraction;
/** To still air; common practice, no source. */
export const stillAirConvection = 6 as HeatTransferCoefficient;

/** Surface of a lagged dry pipe in the engine room, and its heat. */
export const dryExhaust = structure("dryExhaust", {
  label: "Dry pipe with its lagging",
  from: {
    ownEngine,
    outsideAir,
    dryBore,
    dryInRoom,
    lagging,
    laggingConductivity,
    exhaustKind,
    surfaceLimit,
  },
  compute: (at) =>
    laggedPipe({
      gasTemperature: at.ownEngine.pipeTemperature,
      roomTemperature: (at.outsideAir + roomRise) as Temperature,
      pipeDiameter: at.dryBore,
      thickness: at.lagging,
      length: at.dryInRoom,
      conductivity: at.laggingConductivity,
      emissivity: clothEmissivity,
      convection: stillAirConvection,
    }),
  formula:
    "\\frac{2\\pi k_l\\,(T_7 - T_l)}{\\ln(d_o/d_{dr})} = \\pi d_o\\left[h\\,(T_l - T_{room}) + \\epsilon\\sigma\\,(T_l^4 - T_{room}^4)\\right]",
  source: "Incropera et al., Fundamentals of Heat and Mass Transfer, chapters 3 and 12 (from memory)",
  assumptions: [
    "Still air, 6 W/(m²·K), and a surface of cloth, ε = 0.9: common practice, no source; the room 12.5 K warmer than outside.",
    "Flanges, hangers and bellows are hotter than the lagging between them.",
  ],
  checks: ({ surfaceTemperature }, { exhaustKind, surfaceLimit }) =>
    exhaustKind === "dry"
      ? [
          {
            component: "lagging",
            label: "Surface of the lagging",
            kind: "temperature",
            side: "most",
            value: surfaceTemperature,
            bound: surfaceLimit,
          },
        ]
      : [],
});

export const laggingSurface = cell("laggingSurface", {
  label: "Surface of the lagging, were the exhaust dry",
  kind: "temperature",
  symbol: "T_l",
  from: { dryExhaust },
  compute: ({ dryExhaust }) => dryExhaust.surfaceTemperature,
  formula: "T_l = T_7 - \\frac{Q_l\\,\\ln(d_o/d_{dr})}{2\\pi k_l\\,l_{dr,r}}",
  source: "energy balance",
});

export const laggingHeat = cell("laggingHeat", {
  label: "Its heat to the engine room",
  kind: "power",
  hint: "heat",
  symbol: "Q_l",
  from: { dryExhaust },
  compute: ({ dryExhaust }) => dryExhaust.heat,
  formula: "Q_l = \\pi d_o\\,l_{dr,r}\\left[h\\,(T_l - T_{room}) + \\epsilon\\sigma\\,(T_l^4 - T_{room}^4)\\right]",
  source: "energy balance",
});
