import type { RotationalSpeed } from "../../lib/quantity";

/** Speeds that an engine must know. */
export interface EngineSpeeds {
  readonly idleSpeed: RotationalSpeed;
  readonly ratedSpeed: RotationalSpeed;
  readonly maximumSpeed: RotationalSpeed;
}

/** Round steps, in turns a minute; the first that leaves no more than the most speeds is taken. */
const steps = [25, 50, 100, 200, 250, 500, 1000] as const;

const mostSpeeds = 20;

/** Speeds from idle to the highest [rev/s]: round ones in rev/min, and idle, promised and highest themselves. */
export function sweepSpeeds({ idleSpeed, ratedSpeed, maximumSpeed }: EngineSpeeds): readonly RotationalSpeed[] {
  const own = [...new Set([idleSpeed, ratedSpeed, maximumSpeed])];
  const [low, high] = [60 * Math.min(...own), 60 * Math.max(...own)];
  const step = steps.find((each) => (high - low) / each <= mostSpeeds) ?? (high - low) / mostSpeeds;
  const between: number[] = [];
  for (let turns = step * Math.ceil(low / step); turns <= high; turns += step) {
    if (own.every((other) => Math.abs(turns - 60 * other) > 0.3 * step)) between.push(turns / 60);
  }
  return [...own, ...between].sort((a, b) => a - b) as RotationalSpeed[];
}
