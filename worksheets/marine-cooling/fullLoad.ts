import { type AttainablePoint, attainable, type OperatingBuild, operatingPoint } from "../../lib/charge";
import type { Fraction, Power, Ratio, RotationalSpeed } from "../../lib/quantity";
import { type BalanceInputs, balanceOf, type MarineBalance } from "./balanceOf";
import { engineOfParts } from "./solvedEngine";
import { type CylinderSetup, wallHeatOf } from "./wallHeatOf";

/** The heat balance at a speed and power, or why there is none. */
export type BalancePoint = {
  readonly speed: RotationalSpeed;
  readonly brakePower: Power;
} & (
  | { readonly refused: string }
  | {
      readonly balance: MarineBalance;
      /** part of the fuel's power that goes into the walls, by the correlation as calibrated */
      readonly wallShare: Fraction;
      readonly excessAirRatio: Ratio;
    }
);

/** Chosen parts, and what shares their heat out. */
export interface PartsAndShares {
  readonly matchBuild: OperatingBuild;
  readonly balanceSetup: BalanceInputs;
  readonly cylinderSetup: CylinderSetup;
  readonly wallHeatCalibration: Ratio;
}

/** The chosen parts at a speed under a part of the most that they give there. */
export function fullLoadPointAt(at: PartsAndShares, speed: RotationalSpeed, load: number): BalancePoint {
  try {
    return pointBelow(at, attainable(at.matchBuild, speed), load);
  } catch (error) {
    return refusedAt(speed, error);
  }
}

/** The same where the most that they give is known already. */
export function pointBelow(at: PartsAndShares, most: AttainablePoint, load: number): BalancePoint {
  const { engineSpeed, point: full, binding } = most;
  try {
    if (!(full.brakePower > 0)) {
      throw new RangeError(`the parts give no power at this speed; what stops them is ${binding.name.toLowerCase()}`);
    }
    const brakePower = (load * full.brakePower) as Power;
    const wanted = { engineSpeed, load: { kind: "brakePower", brakePower } } as const;
    const first = load === 1 ? full : operatingPoint(at.matchBuild, { ...wanted, near: full });
    const wallShare = (at.wallHeatCalibration * wallHeatOf(at.cylinderSetup, engineOfParts(first)).share) as Fraction;
    const engine = { ...at.matchBuild.engine, heatToWallsShare: wallShare };
    const solved = engineOfParts(operatingPoint({ ...at.matchBuild, engine }, { ...wanted, near: first }));
    const { excessAirRatio } = solved;
    return { speed: engineSpeed, brakePower, balance: balanceOf(solved, at.balanceSetup), wallShare, excessAirRatio };
  } catch (error) {
    return refusedAt(engineSpeed, error);
  }
}

function refusedAt(speed: RotationalSpeed, error: unknown): BalancePoint {
  if (!(error instanceof RangeError)) throw error;
  return { speed, brakePower: 0 as Power, refused: error.message };
}
