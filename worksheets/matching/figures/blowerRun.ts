import { type BlowerElement, type BlowerWork, type SweepPoint, sweep } from "../../../lib/charge";
import { attained, type Run } from "./run";

/** The blowers of a path. */
export function blowersOf({ matchBuild }: Run): readonly BlowerElement[] {
  return matchBuild.path.filter((element) => element.kind === "blower");
}

/** What the blowers do at a speed; undefined where the parts give nothing. */
export function blowersAt(point: SweepPoint): readonly BlowerWork[] | undefined {
  return attained(point)?.point.blowers;
}

/** Power that the crank gives to all blowers [W]. */
export function blowerPower(blowers: readonly BlowerWork[]): number {
  return blowers.reduce((sum, { shaftPower }) => sum + shaftPower, 0);
}

/** Torque at the shaft of the blower that asks for most [N·m]. */
export function blowerTorque(blowers: readonly BlowerWork[]): number {
  return Math.max(0, ...blowers.map(({ shaftTorque }) => shaftTorque));
}

/** Sweeps with the bypass closed, by the sweep that has it open somewhere. */
const withoutBypass = new WeakMap<readonly SweepPoint[], readonly SweepPoint[]>();

/** The same speeds with the bypass held closed; undefined where it is closed at all of them as it is. */
export function closedRun(run: Run): readonly SweepPoint[] | undefined {
  const { points, matchBuild } = run;
  const opens = points.some((point) => blowersAt(point)?.some(({ bypassOpen }) => bypassOpen));
  if (!opens) return undefined;
  let closed = withoutBypass.get(points);
  if (!closed) {
    const path = matchBuild.path.map((element) =>
      element.kind === "blower" ? { ...element, bypass: "closed" as const } : element,
    );
    closed = sweep(
      { ...matchBuild, path },
      points.map(({ engineSpeed }) => engineSpeed),
    );
    withoutBypass.set(points, closed);
  }
  return closed;
}
