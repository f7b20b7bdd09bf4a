import { type Cell, compile, graphOf, type Node } from "../lib/graph";
import * as airCells from "./air-demand/cells";
import * as airInputs from "./air-demand/inputs";
import * as intake from "./air-demand/intake";
import * as dutyCells from "./boat-duty/cells";
import * as derating from "./boat-duty/derating";
import * as boatDryExhaust from "./boat-duty/dryExhaust";
import * as boatExhaust from "./boat-duty/exhaust";
import * as boatExhaustLoss from "./boat-duty/exhaustLoss";
import * as dutyInputs from "./boat-duty/inputs";
import * as boostCells from "./boost/cells";
import * as loop from "./boost/demand";
import * as boostInputs from "./boost/inputs";
import * as statedBuild from "./boost/statedBuild";
import * as brief from "./brief/cells";
import * as accessories from "./drive-speeds/accessories";
import * as beltFits from "./drive-speeds/beltFits";
import * as beltLoads from "./drive-speeds/beltLoads";
import * as beltRuns from "./drive-speeds/beltRuns";
import * as beltTables from "./drive-speeds/beltTables";
import * as budgets from "./drive-speeds/budgets";
import * as budgetTables from "./drive-speeds/budgetTables";
import * as driveCells from "./drive-speeds/cells";
import * as driveFindings from "./drive-speeds/findings";
import * as driveInputs from "./drive-speeds/inputs";
import * as pickInputs from "./drive-speeds/pickInputs";
import * as ratioRanges from "./drive-speeds/ratioRanges";
import * as ratios from "./drive-speeds/ratios";
import * as unitLoads from "./drive-speeds/unitLoads";
import * as fuelCells from "./fuel-delivery/cells";
import * as consumption from "./fuel-delivery/consumption";
import * as deliverySweep from "./fuel-delivery/deliverySweep";
import * as drivenPumps from "./fuel-delivery/drivenPumps";
import * as fuelInputs from "./fuel-delivery/inputs";
import * as pumpChoice from "./fuel-delivery/pumpChoice";
import * as pumpWork from "./fuel-delivery/pumpWork";
import * as fuelTank from "./fuel-delivery/tank";
import * as fuelTiming from "./fuel-delivery/timing";
import * as landCells from "./land-cooling/cells";
import * as landInputs from "./land-cooling/inputs";
import * as marineBalance from "./marine-cooling/balance";
import * as balanceRuns from "./marine-cooling/balanceRuns";
import * as marineCells from "./marine-cooling/cells";
import * as marineCircuit from "./marine-cooling/circuit";
import * as marineCold from "./marine-cooling/cold";
import * as marineCurve from "./marine-cooling/curve";
import * as marineFailures from "./marine-cooling/failures";
import * as marineHeats from "./marine-cooling/heats";
import * as marineInputs from "./marine-cooling/inputs";
import * as rawWater from "./marine-cooling/rawWater";
import * as suction from "./marine-cooling/suction";
import * as wallHeat from "./marine-cooling/wallHeat";
import * as banks from "./matching/banks";
import * as matchCells from "./matching/cells";
import * as compressors from "./matching/compressors";
import * as fuelLimits from "./matching/fuelLimits";
import * as matchInputs from "./matching/inputs";
import * as matchBuild from "./matching/match";
import * as runs from "./matching/runs";
import * as solved from "./matching/solved";

/** Every input and cell of a sheet, by the sheet's key; the sheets in reading order. */
export const nodesBySheet: Readonly<Record<string, readonly Node[]>> = {
  brief: nodesOf(brief),
  "air-demand": nodesOf(airInputs, intake, airCells),
  boost: nodesOf(boostInputs, statedBuild, loop, boostCells),
  matching: nodesOf(matchInputs, compressors, banks, fuelLimits, matchBuild, solved, runs, matchCells),
  "fuel-delivery": nodesOf(
    fuelInputs,
    pumpWork,
    drivenPumps,
    fuelCells,
    fuelTiming,
    deliverySweep,
    pumpChoice,
    consumption,
    fuelTank,
  ),
  "drive-speeds": nodesOf(
    driveInputs,
    beltTables,
    budgetTables,
    pickInputs,
    beltRuns,
    ratios,
    accessories,
    driveCells,
    unitLoads,
    beltFits,
    beltLoads,
    ratioRanges,
    driveFindings,
    budgets,
  ),
  "marine-cooling": nodesOf(
    marineInputs,
    rawWater,
    suction,
    marineBalance,
    wallHeat,
    marineHeats,
    marineCircuit,
    marineCold,
    marineCells,
    marineCurve,
    balanceRuns,
    marineFailures,
  ),
  "boat-duty": nodesOf(dutyInputs, boatExhaustLoss, boatExhaust, boatDryExhaust, dutyCells, derating),
  "land-cooling": nodesOf(landInputs, landCells),
};

export const graph = graphOf(Object.values(nodesBySheet).flat());

export const program = compile(graph);

/** The cells of a sheet, in the order of their modules. */
export function cellsOf(sheet: string): readonly Cell[] {
  return (nodesBySheet[sheet] ?? []).filter((node): node is Cell => node.type === "cell");
}

function nodesOf(...modules: readonly Readonly<Record<string, unknown>>[]): readonly Node[] {
  return modules.flatMap((module) => Object.values(module)).filter(isNode);
}

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && "type" in value && "key" in value && "label" in value;
}
