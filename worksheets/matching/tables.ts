import type { LimitMargin } from "../../lib/charge";
import { type Block, tabulated } from "../sheet";
import { attained, matched } from "./solved";

/** What stops the engine first, and what would stop it next. */
export const bindingTable: Block = tabulated({
  key: "binding-limits",
  title: "What stops it first, and what comes next",
  of: attained,
  columns: [{ label: "As fuel is added" }, { label: "Limit" }, { label: "Met at", kind: "power" }],
  rows: ({ binding, next, violated }) => [
    ...violated.map(({ name }) => ["passed at every load", name, "no load is allowed"]),
    ["met first", binding.name, binding.brakePower],
    next ? ["next behind it", next.name, next.brakePower] : ["next behind it", "none in sight", "–"],
  ],
});

/** Every limit at the match, the tightest first. */
export const roomTable: Block = tabulated({
  key: "limits-at-the-match",
  title: "Room left to every limit at the match, the tightest first",
  of: matched,
  columns: [{ label: "Limit" }, { label: "Room left, of the limit", kind: "fraction" }, { label: "Standing" }],
  rows: ({ margins }) =>
    [...margins].sort((a, b) => a.margin - b.margin).map((limit) => [limit.name, limit.margin, standingOf(limit)]),
});

/** Margins this small are the solver's rounding. */
const rounding = 1e-7;

function standingOf({ margin }: LimitMargin): string {
  if (margin < -rounding) return "passed";
  return margin < rounding ? "just met" : "kept";
}

/** The charge along its path. */
export const stationsTable: Block = tabulated({
  key: "matched-stations",
  title: "The charge at the match, station by station",
  of: matched,
  columns: [
    { label: "Station" },
    { label: "No." },
    { label: "Pressure", kind: "pressure", hint: "boost" },
    { label: "Temperature", kind: "temperature" },
    { label: "Flow", kind: "massFlow" },
    { label: "Share of the rise", kind: "fraction" },
  ],
  rows: ({ stations }) =>
    stations.map(({ name, number, pressure, temperature, massFlow, share }) => [
      name,
      String(number),
      pressure,
      temperature,
      massFlow,
      share ?? "–",
    ]),
});

/** Every bank of turbochargers. */
export const banksTable: Block = tabulated({
  key: "matched-banks",
  title: "Turbochargers at the match, bank by bank",
  of: matched,
  columns: [
    { label: "Bank" },
    { label: "Corrected flow, each", kind: "massFlow" },
    { label: "Pressure ratio", kind: "ratio" },
    { label: "Compressor", kind: "fraction" },
    { label: "Wheel speed", kind: "rotationalSpeed" },
    { label: "Tip speed", kind: "velocity" },
    { label: "From surge", kind: "fraction" },
    { label: "From choke", kind: "fraction" },
    { label: "Expansion ratio", kind: "ratio" },
    { label: "Turbine", kind: "fraction" },
    { label: "Past it", kind: "fraction" },
  ],
  rows: ({ banks }) =>
    banks.map((bank) => [
      bank.extrapolated ? `${bank.name}, outside its field` : bank.name,
      bank.correctedFlow,
      bank.pressureRatio,
      bank.compressorEfficiency,
      bank.wheelSpeed,
      bank.tipSpeed ?? "not known",
      bank.surgeMargin,
      bank.chokeMargin,
      bank.expansionRatio,
      bank.turbineEfficiency,
      bank.wastegateFraction,
    ]),
});

/** Every charge cooler, and the water it wrings out. */
export const coolersTable: Block = tabulated({
  key: "matched-coolers",
  title: "Charge coolers at the match",
  of: matched,
  columns: [
    { label: "Cooler" },
    { label: "Stream comes at", kind: "temperature" },
    { label: "Effectiveness", kind: "fraction" },
    { label: "Heat", kind: "power", hint: "heat" },
    { label: "Pressure loss", kind: "pressureDifference" },
    { label: "Water condensed", kind: "massFlow", hint: "small" },
  ],
  rows: ({ coolers }) =>
    coolers.map(({ name, sinkTemperature, effectiveness, heat, latentHeat, pressureLoss, condensateFlow }) => [
      name,
      sinkTemperature,
      effectiveness,
      heat + latentHeat,
      pressureLoss,
      condensateFlow,
    ]),
});
