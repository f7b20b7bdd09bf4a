import { type AttainablePoint, attainable, type OperatingBuild, type SweepPoint } from "../../../lib/charge";
import type { ValuesOf } from "../../../lib/graph";
import type { RotationalSpeed } from "../../../lib/quantity";
import { idleSpeed, maximumSpeed, ratedPower, ratedSpeed } from "../../brief/cells";
import { matchBuild } from "../match";
import { speedRun } from "../runs";

/** What the figures over engine speed read. */
export const runFrom = { matchBuild, speedRun, idleSpeed, ratedSpeed, maximumSpeed, ratedPower };

export type RunValues = ValuesOf<typeof runFrom>;

/** The chosen parts over the engine's speeds. */
export interface Run extends RunValues {
  /** By rising speed. */
  readonly points: readonly SweepPoint[];
}

/** Sweeps with the leaps in them closed in on; several figures read the same one. */
const closed = new WeakMap<readonly SweepPoint[], readonly SweepPoint[]>();

/** A sweep with more speeds where the power leaps from one to the next. */
export function runOf(values: RunValues): Run {
  const swept = values.speedRun.answer();
  let points = closed.get(swept);
  if (!points) {
    points = swept.flatMap((point, i) => [...closingIn(values.matchBuild, swept[i - 1], point), point]);
    closed.set(swept, points);
  }
  return { ...values, points };
}

/** Speeds between which a leap lies are looked at until they are this near [rev/s]. */
const leapWidth = 0.5;

/** Points that close in on leaps between two speeds, by rising speed; none if there is no leap. */
function closingIn(build: OperatingBuild, before: SweepPoint | undefined, after: SweepPoint): readonly SweepPoint[] {
  if (!before || !isLeap(before, after) || after.engineSpeed - before.engineSpeed <= leapWidth) return [];
  // Whole turns a minute: they are read.
  const middle = Math.round(30 * (before.engineSpeed + after.engineSpeed)) / 60;
  const point = tried(build, middle as RotationalSpeed);
  if (!point) return [];
  return [...closingIn(build, before, point), point, ...closingIn(build, point, after)];
}

function tried(build: OperatingBuild, engineSpeed: RotationalSpeed): SweepPoint | undefined {
  try {
    return { ok: true, ...attainable(build, engineSpeed) };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Power that grows or falls this many times faster than speed does not run through: another limit is met first. */
const leap = 1.25;

/** Whether the parts do something else altogether at the next speed, so that no line joins the two. */
export function isLeap(from: SweepPoint, to: SweepPoint): boolean {
  if (!from.ok || !to.ok || !attained(from) || !attained(to) || from.binding.id === to.binding.id) return false;
  const grown = to.point.brakePower / from.point.brakePower;
  const faster = to.engineSpeed / from.engineSpeed;
  return !(grown < leap * faster && grown * leap > 1 / faster);
}

/** What the parts give at a speed; undefined where there is no balance, no load is allowed, or the engine must be driven. */
export function attained(point: SweepPoint): AttainablePoint | undefined {
  return point.ok && point.violated.length === 0 && point.point.brakePower > 0 ? point : undefined;
}

/** What the parts give at the promised speed; undefined where they give nothing. */
export function promisedOf({ points, ratedSpeed }: Run): AttainablePoint | undefined {
  const here = points.find(({ engineSpeed }) => engineSpeed === ratedSpeed);
  return here && attained(here);
}

/** Whether the parts give nothing at any speed. */
export function isEmpty({ points }: Run): boolean {
  return points.every((point) => !attained(point));
}

/** What a speed of the sweep is to the engine. */
export function placeOf({ idleSpeed, ratedSpeed, maximumSpeed }: Run, speed: number): string {
  if (speed === ratedSpeed) return "promised speed";
  if (speed === idleSpeed) return "idle speed";
  if (speed === maximumSpeed) return "highest speed";
  return "between";
}
