import { ticks } from "d3";
import type { RotationalSpeed } from "../../../lib/quantity";

/** About so many round speeds make a sweep. */
const speedCount = 18;

/** Speeds that an engine must know. */
export interface EngineSpeeds {
  readonly idleSpeed: RotationalSpeed;
  readonly ratedSpeed: RotationalSpeed;
  readonly maximumSpeed: RotationalSpeed;
}

/** Speeds from idle to the highest [rev/s]: round ones in rev/min, and idle, promised and highest themselves. */
export function sweepSpeeds({ idleSpeed, ratedSpeed, maximumSpeed }: EngineSpeeds): readonly RotationalSpeed[] {
  const own = [...new Set([idleSpeed, ratedSpeed, maximumSpeed])];
  const [low, high] = [Math.min(...own), Math.max(...own)];
  const round = ticks(60 * low, 60 * high, speedCount);
  const near = 0.3 * ((round[1] ?? high) - (round[0] ?? low));
  const between = round.filter((turns) => own.every((other) => Math.abs(turns - 60 * other) > near));
  return [...own, ...between.map((turns) => turns / 60)].sort((a, b) => a - b) as RotationalSpeed[];
}
