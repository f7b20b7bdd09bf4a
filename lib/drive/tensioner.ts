import { brentRoot } from "../numeric";
import { type Angle, type Length, requirePositive } from "../quantity";
import type { BeltLayout, BeltRun } from "./beltLayout";
import { beltRun } from "./beltRun";

/** A run with one pulley that can be slid, and the belt that shall fit. */
export interface SlidingTensioner {
  readonly layout: BeltLayout;
  /** name of the pulley that slides */
  readonly pulley: string;
  /** direction of the slide, counterclockwise from the x axis, seen from the front [rad] */
  readonly direction: Angle;
  /** how far it may go along that direction from where the layout has it, lowest and highest [m] */
  readonly travel: readonly [lowest: Length, highest: Length];
  /** pitch length of the belt [m], above 0 */
  readonly beltLength: Length;
}

/** Where a sliding pulley closes a run on its belt. */
export interface TensionerPosition {
  /** how far along its direction from where the layout has it [m] */
  readonly travel: Length;
  /** belt taken up for each metre of slide [–], at this position */
  readonly takeUp: number;
  /** the closed run */
  readonly run: BeltRun;
}

/** Positions tried along the slide before the root is closed in on. */
const steps = 48;

/**
 * Where a sliding pulley closes a run on a belt of given length [travel in m]: the root of L(travel) − L.
 * Of several answers the one nearest to the drawn position. Parts of the slide where no belt can lie are passed over.
 * The take-up is (t_in − t_out)·e with the unit vectors of the two spans along the travel and of the slide.
 *
 * @param tensioner layout, sliding pulley, its slide and the belt, lengths in [m]
 * @throws RangeError naming the pulley, with the lengths that can be reached, or with the reason why none can
 * @source elementary geometry
 * @example tensionerPosition({ layout: { travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }, pulley: "blower", direction: 1.5707963268, travel: [0, 0.1], beltLength: 0.96 }).travel // 0.0229204
 */
export function tensionerPosition(tensioner: SlidingTensioner): TensionerPosition {
  const { layout, pulley, direction } = tensioner;
  requireTensioner(tensioner);
  const runAt = (distance: number) => beltRun(slid(layout, pulley, direction, distance));

  const roots = nearRoots(tensioner, runAt) ?? allRoots(tensioner, runAt);
  const distance = roots.reduce((best, root) => (Math.abs(root) < Math.abs(best) ? root : best));
  const run = runAt(distance);
  const at = run.pulleys.findIndex(({ name }) => name === pulley);
  const takeUp = Math.cos(run.spans.at(at - 1)!.direction - direction) - Math.cos(run.spans[at]!.direction - direction);
  return { travel: distance as Length, takeUp, run };
}

interface Tried {
  readonly distance: number;
  readonly length: number | undefined;
}

/**
 * Roots next to the drawn position, looked for outward from it step by step: most belts close there.
 * Undefined where the drawn position lies outside the travel, or a part on which no belt can lie is met first.
 */
function nearRoots(tensioner: SlidingTensioner, runAt: (distance: number) => BeltRun): readonly number[] | undefined {
  const [lowest, highest] = tensioner.travel;
  if (!(lowest <= 0 && highest >= 0)) return undefined;
  const step = (highest - lowest) / steps;
  const drawn = { distance: 0, length: lengthOrNothing(runAt, 0) };
  let [below, above]: Tried[] = [drawn, drawn];
  while (below!.distance > lowest || above!.distance < highest) {
    const next = [Math.max(lowest, below!.distance - step), Math.min(highest, above!.distance + step)].map(
      (distance) => ({ distance, length: lengthOrNothing(runAt, distance) }),
    );
    if ([below!, above!, ...next].some(({ length }) => length === undefined)) return undefined;
    const brackets = [
      [next[0]!, below!],
      [above!, next[1]!],
    ].filter(([from, to]) => (from!.length! - tensioner.beltLength) * (to!.length! - tensioner.beltLength) <= 0);
    if (brackets.length > 0) {
      return brackets.map(([from, to]) => rootWithin(tensioner, runAt, from!.distance, to!.distance));
    }
    [below, above] = next;
  }
  return undefined;
}

/** Every root along the slide. @throws RangeError with the lengths that can be reached, where there is none */
function allRoots(tensioner: SlidingTensioner, runAt: (distance: number) => BeltRun): readonly number[] {
  const { travel, beltLength } = tensioner;
  const [lowest, highest] = travel;
  const tried = Array.from({ length: steps + 1 }, (_, i) => {
    const distance = i === steps ? highest : lowest + ((highest - lowest) * i) / steps;
    return { distance, length: lengthOrNothing(runAt, distance) };
  });
  const closed = withEdges(tried, runAt);
  const roots = closed.flatMap(({ distance, length }, i) => {
    const next = closed[i + 1];
    if (length === undefined || next?.length === undefined) return [];
    if ((length - beltLength) * (next.length - beltLength) > 0) return [];
    return [rootWithin(tensioner, runAt, distance, next.distance)];
  });
  if (roots.length === 0) throw new RangeError(refusal(tensioner, closed, runAt));
  return roots;
}

function rootWithin(
  { pulley, beltLength }: SlidingTensioner,
  runAt: (distance: number) => BeltRun,
  from: number,
  to: number,
): number {
  if (from === to) return from;
  return brentRoot((distance) => runAt(distance).length - beltLength, [from, to], {
    name: `tensionerPosition: travel of ${pulley}`,
    tolerance: 1e-12,
  }).root;
}

function requireTensioner({ layout, pulley, direction, travel, beltLength }: SlidingTensioner): void {
  requirePositive("tensionerPosition: beltLength", beltLength, "m");
  if (!Number.isFinite(direction))
    throw new RangeError(`tensionerPosition: direction is ${direction} rad; it must be finite`);
  if (!(travel[0] < travel[1] && Number.isFinite(travel[1] - travel[0]))) {
    throw new RangeError(
      `tensionerPosition: travel is ${travel[0]} to ${travel[1]} m; the second must exceed the first`,
    );
  }
  if (!layout.pulleys.some(({ name }) => name === pulley)) {
    throw new RangeError(`tensionerPosition: no pulley of the layout is called ${pulley}`);
  }
}

function slid(layout: BeltLayout, moved: string, direction: number, distance: number): BeltLayout {
  const pulleys = layout.pulleys.map((pulley) =>
    pulley.name === moved
      ? {
          ...pulley,
          x: (pulley.x + distance * Math.cos(direction)) as Length,
          y: (pulley.y + distance * Math.sin(direction)) as Length,
        }
      : pulley,
  );
  return { ...layout, pulleys };
}

function lengthOrNothing(runAt: (distance: number) => BeltRun, distance: number): number | undefined {
  try {
    return runAt(distance).length;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The positions tried, with the last possible one added wherever the run opens or closes between two of them. */
function withEdges(tried: readonly Tried[], runAt: (distance: number) => BeltRun): readonly Tried[] {
  return tried.flatMap((here, i) => {
    const next = tried[i + 1];
    if (next === undefined || (here.length === undefined) === (next.length === undefined)) return [here];
    let [possible, impossible] = here.length === undefined ? [next, here] : [here, next];
    for (let halving = 0; halving < 40; halving++) {
      const distance = (possible.distance + impossible.distance) / 2;
      const length = lengthOrNothing(runAt, distance);
      if (length === undefined) impossible = { distance, length };
      else possible = { distance, length };
    }
    return [here, possible];
  });
}

function refusal(
  { pulley, travel, beltLength }: SlidingTensioner,
  closed: readonly Tried[],
  runAt: (distance: number) => BeltRun,
): string {
  const lengths = closed.flatMap(({ length }) => (length === undefined ? [] : [length]));
  if (lengths.length === 0) {
    try {
      runAt(travel[0]);
    } catch (error) {
      return `tensionerPosition: no belt can lie anywhere along the slide of ${pulley}; at its start ${(error as Error).message}`;
    }
  }
  const written = (length: number) => Number(length.toPrecision(6));
  return `tensionerPosition: beltLength is ${written(beltLength)} m; sliding ${pulley} reaches ${written(Math.min(...lengths))} to ${written(Math.max(...lengths))} m`;
}
