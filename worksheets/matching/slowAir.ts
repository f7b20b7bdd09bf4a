import type { SlowExcessAir } from "../../lib/charge";
import type { Fraction, Ratio, RotationalSpeed } from "../../lib/quantity";

/** What two sheets know of the least air of a slow engine. */
export interface SlowAirStated {
  readonly slowExcessAir: Ratio;
  readonly fullExcessAirFrom: Fraction;
  readonly idleSpeed: RotationalSpeed;
  readonly ratedSpeed: RotationalSpeed;
}

/** Least excess air below full speed, as the match and the drive's loads reckon with it. */
export function slowAirOf({ slowExcessAir, fullExcessAirFrom, idleSpeed, ratedSpeed }: SlowAirStated): SlowExcessAir {
  return {
    leastExcessAirRatio: slowExcessAir,
    upTo: idleSpeed,
    fullFrom: Math.max(idleSpeed, fullExcessAirFrom * ratedSpeed) as RotationalSpeed,
  };
}
