import { type AttainablePoint, attainable } from "../../lib/charge";
import type { Fraction, Power, Ratio, RotationalSpeed } from "../../lib/quantity";
import type { MarineBalance } from "./balanceOf";
import { type PartsAndShares, partsAt } from "./partsAt";

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
      /** names of the match's limits that are passed there */
      readonly passed: readonly string[];
    }
);

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
  const { engineSpeed: speed, point: full, binding } = most;
  try {
    if (!(full.brakePower > 0)) {
      throw new RangeError(`the parts give no power at this speed; what stops them is ${binding.name.toLowerCase()}`);
    }
    const brakePower = (load * full.brakePower) as Power;
    const { engine, ...rest } = partsAt(at, full, brakePower);
    return { speed, brakePower, ...rest, excessAirRatio: engine.excessAirRatio };
  } catch (error) {
    return refusedAt(speed, error);
  }
}

function refusedAt(speed: RotationalSpeed, error: unknown): BalancePoint {
  if (!(error instanceof RangeError)) throw error;
  return { speed, brakePower: 0 as Power, refused: error.message };
}
