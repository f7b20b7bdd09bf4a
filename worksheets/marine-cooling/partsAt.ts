import { type OperatingBuild, type OperatingPoint, operatingPoint } from "../../lib/charge";
import type { Fraction, Power, Ratio } from "../../lib/quantity";
import { type BalanceInputs, balanceOf, type MarineBalance } from "./balanceOf";
import { engineOfParts, type SolvedEngine } from "./solvedEngine";
import { type CylinderSetup, wallHeatOf } from "./wallHeatOf";

/** Chosen parts, and what shares their heat out. */
export interface PartsAndShares {
  readonly matchBuild: OperatingBuild;
  readonly balanceSetup: BalanceInputs;
  readonly cylinderSetup: CylinderSetup;
  readonly wallHeatCalibration: Ratio;
}

/** The chosen parts at a speed and power, and where the heat goes. */
export interface SolvedParts {
  readonly engine: SolvedEngine;
  readonly balance: MarineBalance;
  /** part of the fuel's power that goes into the walls, by the correlation as calibrated */
  readonly wallShare: Fraction;
  /** names of the match's limits that are passed there */
  readonly passed: readonly string[];
}

/**
 * The chosen parts at a speed and power, with the wall heat that the correlation gives there. Wall heat feels the load, and
 * the balance the wall heat: a second round moves it by less than a hundredth.
 *
 * @param most the most that the parts give at this speed, from which the match begins
 * @throws RangeError where the parts have no balance at that power, with the cause
 */
export function partsAt(at: PartsAndShares, most: OperatingPoint, brakePower: Power): SolvedParts {
  const wanted = { engineSpeed: most.engineSpeed, load: { kind: "brakePower", brakePower } } as const;
  const first = brakePower === most.brakePower ? most : begun(at.matchBuild, wanted, most);
  const wallShare = (at.wallHeatCalibration * wallHeatOf(at.cylinderSetup, engineOfParts(first)).share) as Fraction;
  const build = { ...at.matchBuild, engine: { ...at.matchBuild.engine, heatToWallsShare: wallShare } };
  const point = operatingPoint(build, { ...wanted, near: first });
  const engine = engineOfParts(point);
  return {
    engine,
    balance: balanceOf(engine, at.balanceSetup),
    wallShare,
    passed: point.margins.filter(({ margin }) => margin < -1e-6).map(({ name }) => name),
  };
}

/** Light load may lie too far from the most for one step: then it is sought from nothing. */
function begun(
  build: OperatingBuild,
  wanted: Parameters<typeof operatingPoint>[1],
  near: OperatingPoint,
): OperatingPoint {
  try {
    return operatingPoint(build, { ...wanted, near });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return operatingPoint(build, wanted);
  }
}
