import type { Block } from "../sheet";
import { heading, lines, prose, tabulated } from "../sheet";
import {
  balanceGap,
  balanceSetup,
  cycleFuelHeat,
  cylinderSetup,
  exhaustLatent,
  marineBalance,
  promisedEngine,
  roomHeat,
  wallHeatByCorrelation,
  wallHeatCalibration,
} from "./balance";
import { propellerCurve } from "./curve";
import { gearHeat, jacketHeat, oilHeat } from "./heats";
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

/** Where the heat goes, and how a correlation carries it to other loads. */
export const heatBlocks: readonly Block[] = [
  heading("Where the heat goes"),
  prose`Of the fuel's power nothing is lost: the balance closes to ${balanceGap}. Heat reaches the water through the cylinder walls, from friction, out of the charge, by the gear and the fuel. Shares of wall and friction heat are estimates of yours until a heat balance has been measured.`,
  ...lines(
    wallHeatToOil,
    wallHeatRadiated,
    frictionHeatToOil,
    gearEfficiency,
    jacketHeat,
    oilHeat,
    gearHeat,
    roomHeat,
    exhaustLatent,
    balanceSetup,
    promisedEngine,
    marineBalance,
    balanceGap,
  ),
  tabulated({
    key: "heatBalance",
    title: "The heat balance, line by line",
    of: marineBalance,
    columns: [
      { label: "Part" },
      { label: "Power", kind: "power", hint: "heat" },
      { label: "Share of the fuel", kind: "fraction" },
      { label: "Goes to" },
    ],
    rows: ({ lines }) => lines.map(({ name, power, share, goal }) => [name, power, share, goalNames[goal]]),
  }),
  heading("Heat to the walls, by a published correlation"),
  prose`The share of the fuel that goes into the walls is yours to state on the sheet of the boost. A published correlation gives ${wallHeatByCorrelation} between the closing and the opening of the valves; yours is ${wallHeatCalibration} times that. So scaled, it carries the share to every other load and speed.`,
  ...lines(
    wallHeatCorrelation,
    intakeCloses,
    exhaustOpens,
    burnStarts,
    burnDuration,
    wallTemperature,
    cylinderSetup,
    cycleFuelHeat,
    wallHeatByCorrelation,
    wallHeatCalibration,
  ),
  ...lines(propellerCurve),
];

const goalNames = { work: "propeller", sea: "sea water", away: "exhaust and drives", room: "engine room" } as const;
