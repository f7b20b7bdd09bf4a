import { excessAirRatio } from "../air-demand/inputs";
import { wallHeatInUse } from "../boost/demand";
import { matchedExcessAir } from "../matching/cells";
import type { Block } from "../sheet";
import { heading, lines, prose, tabulated } from "../sheet";
import {
  balanceBeside,
  balanceGap,
  balanceSetup,
  exhaustLatent,
  marineBalance,
  ownEngine,
  promisedEngine,
  roomHeat,
} from "./balance";
import { propellerCurve } from "./curve";
import { gearHeat, jacketHeat, oilHeat } from "./heats";
import { frictionHeatToOil, gearEfficiency, heatsFrom, wallHeatRadiated, wallHeatToOil } from "./inputs";
import { cycleFuelHeat, cylinderSetup, wallHeatByCorrelation, wallHeatCalibration, wallHeatParts } from "./wallHeat";
import {
  burnDuration,
  burnStarts,
  crownSurface,
  exhaustOpens,
  intakeCloses,
  measuredFuelFlow,
  measuredJacketHeat,
  portBore,
  portLength,
  portTemperature,
  wallHeatCorrelation,
  wallHeatFrom,
  wallTemperature,
} from "./inputs/wallHeat";

/** Where the heat goes, and how a correlation carries it to other loads. */
export const heatBlocks: readonly Block[] = [
  heading("Where the heat goes"),
  prose`Of the fuel's power nothing is lost: what all lines leave over is ${balanceGap} of it. Heat reaches the water through the cylinder walls, from friction, out of the charge, by the gear and the fuel. Shares of wall and friction heat are estimates of yours until a heat balance has been measured.`,
  prose`The chosen parts pass ${matchedExcessAir} times the air that the fuel needs, where the promise asks for ${excessAirRatio}. Which of the two is taken at the promised power holds for all of this sheet, for the cold sea, what fails, and the exhaust; along both curves above, and at any other speed and load, it is the parts. What the promise alone would ask of the water stands beside it in the table.`,
  ...lines(
    heatsFrom,
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
    ownEngine,
    marineBalance,
    balanceGap,
    promisedEngine,
    balanceBeside,
  ),
  tabulated({
    key: "heatBalance",
    title: "The heat balance, line by line",
    of: balanceBeside,
    columns: [
      { label: "Part" },
      { label: "Power", kind: "power", hint: "heat" },
      { label: "Share of the fuel", kind: "fraction" },
      { label: "Goes to" },
      { label: "Of the promise", kind: "power", hint: "heat" },
    ],
    rows: (lines) => lines.map(({ name, power, share, goal, promised }) => [name, power, share, goalNames[goal], promised]),
  }),
  heading("Heat to the walls: stated, measured, and by a published correlation"),
  prose`How much of the fuel goes into the walls is stated on the sheet of the boost, or follows from a heat into the jacket that was measured on a brake: ${wallHeatInUse} at present. The correlation chosen gives ${wallHeatByCorrelation} to cylinders and exhaust ports; the share in use is ${wallHeatCalibration} times that. So scaled, the correlation carries the share to every other load and speed. Published correlations differ by a half from one to the next, and water-cooled manifolds or turbine housings come on top: trust a measurement before any of them.`,
  ...lines(wallHeatFrom, measuredJacketHeat, measuredFuelFlow, wallHeatInUse, wallHeatCorrelation),
  tabulated({
    key: "wallHeatParts",
    title: "Heat into the walls by the correlation",
    of: wallHeatParts,
    columns: [
      { label: "While" },
      { label: "Heat", kind: "power", hint: "heat" },
      { label: "Share of the fuel", kind: "fraction" },
    ],
    rows: ({ valvesClosed, valvesOpen, ports, share }) => {
      const all = valvesClosed + valvesOpen + ports;
      const row = (name: string, heat: number) => [name, heat, (heat / all) * share];
      return [
        row("all valves are closed", valvesClosed),
        row("gas is exchanged", valvesOpen),
        row("exhaust passes the ports", ports),
        row("all together", all),
      ];
    },
  }),
  ...lines(
    wallHeatByCorrelation,
    wallHeatCalibration,
    intakeCloses,
    exhaustOpens,
    burnStarts,
    burnDuration,
    wallTemperature,
    crownSurface,
    portBore,
    portLength,
    portTemperature,
    cylinderSetup,
    cycleFuelHeat,
    wallHeatParts,
    propellerCurve,
  ),
];

const goalNames = { work: "propeller", sea: "sea water", away: "exhaust, drives", room: "engine room" } as const;
