import type { MeasuredPoint } from "./parseCompressorPoints";

/** A measured point as the fit of its speed line sees it: similar flows, heads and works fall together at all speeds. */
export interface LinePoint {
  /** corrected flow over speed [kg] */
  readonly flow: number;
  /** ideal work over the square of the speed, in units of cp T_ref [s²] */
  readonly head: number;
  /** actual work over the square of the speed [J·s²/kg] */
  readonly work: number;
}

/**
 * A fitted speed line: with t = 0 at its leftmost and 1 at its rightmost point, head = top − drop t^bend, so that it never
 * rises with flow and nowhere bends upward, and work = work₀ + work₁ t + work₂ t².
 */
export interface SpeedLine {
  readonly speed: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly drop: number;
  readonly bend: number;
  readonly work: readonly [number, number, number];
}

/** Points of one speed, and that speed: the mean of theirs. */
export interface SpeedGroup {
  readonly speed: number;
  readonly points: readonly MeasuredPoint[];
}

/** Speeds that differ by less than this share belong to one line. */
const sameSpeed = 0.02;

/** Measured points by speed line, from slow to fast, each from small to large flow. */
export function speedGroups(points: readonly MeasuredPoint[]): readonly SpeedGroup[] {
  const groups: MeasuredPoint[][] = [];
  for (const point of [...points].sort((a, b) => a.speed - b.speed)) {
    const last = groups.at(-1);
    if (last && point.speed < last[0]!.speed * (1 + sameSpeed)) last.push(point);
    else groups.push([point]);
  }
  return groups.map((group) => ({
    speed: group.reduce((sum, { speed }) => sum + speed, 0) / group.length,
    points: group.sort((a, b) => a.flow - b.flow),
  }));
}

const bendSpan = [1.2, 12] as const;

/** The speed line of least squares through at least three points; through fewer than five its work is straight. */
export function fitSpeedLine(speed: number, points: readonly LinePoint[]): SpeedLine {
  const left = points[0]!.flow;
  const right = points.at(-1)!.flow;
  const t = points.map(({ flow }) => (flow - left) / (right - left));
  const heads = points.map(({ head }) => head);
  const line = (bend: number) =>
    straight(
      t.map((x) => x ** bend),
      heads,
    );
  const bend = leastOf((logBend) => line(Math.exp(logBend)).error, Math.log(bendSpan[0]), Math.log(bendSpan[1]));
  const { start, slope } = line(Math.exp(bend));
  // points that rise with flow all along make a level line through their mean
  const top = slope < 0 ? start : heads.reduce((sum, head) => sum + head, 0) / heads.length;
  const works = points.map(({ work }) => work);
  return {
    speed,
    left,
    right,
    top,
    drop: Math.max(0, -slope),
    bend: Math.exp(bend),
    work: points.length < 5 ? straightWork(t, works) : bentWork(t, works),
  };
}

function straight(x: readonly number[], y: readonly number[]) {
  const n = x.length;
  const meanX = x.reduce((sum, each) => sum + each, 0) / n;
  const meanY = y.reduce((sum, each) => sum + each, 0) / n;
  let square = 0;
  let product = 0;
  x.forEach((each, i) => {
    square += (each - meanX) ** 2;
    product += (each - meanX) * (y[i]! - meanY);
  });
  const slope = product / square;
  const start = meanY - slope * meanX;
  const error = y.reduce((sum, each, i) => sum + (each - start - slope * x[i]!) ** 2, 0);
  return { start, slope, error };
}

function straightWork(t: readonly number[], works: readonly number[]): readonly [number, number, number] {
  const { start, slope } = straight(t, works);
  return [start, slope, 0];
}

/** A parabola by least squares: straight lines through t² and the works, each less its own straight line in t. */
function bentWork(t: readonly number[], works: readonly number[]): readonly [number, number, number] {
  const squares = t.map((x) => x * x);
  const base = straight(t, squares);
  const line = straight(t, works);
  const rest = squares.map((square, i) => square - base.start - base.slope * t[i]!);
  const curvature =
    works.reduce((sum, work, i) => sum + work * rest[i]!, 0) / rest.reduce((sum, each) => sum + each * each, 0);
  return [line.start - curvature * base.start, line.slope - curvature * base.slope, curvature];
}

/** Argument of the least value: a scan, since there may be two valleys, then golden sections around its best. */
function leastOf(f: (x: number) => number, from: number, to: number): number {
  const steps = 40;
  const width = (to - from) / steps;
  let best = from;
  for (let i = 1; i <= steps; i++) if (f(from + i * width) < f(best)) best = from + i * width;
  let a = Math.max(from, best - width);
  let b = Math.min(to, best + width);
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 30; i++) {
    const low = b - golden * (b - a);
    const high = a + golden * (b - a);
    if (f(low) < f(high)) b = high;
    else a = low;
  }
  return (a + b) / 2;
}
