import { brentRoot } from "../numeric";
import { type Length, requirePositive } from "../quantity";
import type { BeltLayout, BeltRun } from "./beltLayout";
import { beltRun } from "./beltRun";
import { type Arm, armLength, directionOf, layoutMoved, type Slide, type TensionerMotion } from "./tensionerMotion";

/** A run with one pulley that can be moved, and the belt that shall fit. */
interface Tensioner {
  readonly layout: BeltLayout;
  /** name of the pulley that moves */
  readonly pulley: string;
  /** how far it may go from where the layout has it, lowest and highest, along its slide or its arm's circle [m] */
  readonly travel: readonly [lowest: Length, highest: Length];
  /** pitch length of the belt [m], above 0 */
  readonly beltLength: Length;
}

/** A tensioner on a slide. */
export type SlidingTensioner = Tensioner & Slide;

/** A tensioner on an arm. */
export type PivotingTensioner = Tensioner & Arm;

/** Where a pulley that moves closes a run on its belt. */
export interface TensionerPosition {
  /** how far from where the layout has it, along its slide or its arm's circle [m] */
  readonly travel: Length;
  /** belt taken up for each metre that it moves [–], at this position */
  readonly takeUp: number;
  /** the closed run */
  readonly run: BeltRun;
}

/** Positions tried along the way before the root is closed in on. */
const steps = 48;

/**
 * Where a pulley on a slide or an arm closes a run on a belt of given length [travel in m]: the root of L(travel) − L.
 * Of several answers the one nearest to the drawn position. Parts of its way where no belt can lie are passed over.
 * The take-up is (t_in − t_out)·e with the unit vectors of the two spans along the travel and of the motion.
 *
 * @param tensioner layout, pulley that moves, its slide or pivot and the belt, lengths in [m]
 * @throws RangeError naming the pulley, with the lengths that can be reached, or with the reason why none can
 * @source elementary geometry
 * @example tensionerPosition({ layout: { travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }, pulley: "blower", direction: 1.5707963268, travel: [0, 0.1], beltLength: 0.96 }).travel // 0.0229204
 */
export function tensionerPosition(tensioner: SlidingTensioner | PivotingTensioner): TensionerPosition {
  const { layout, pulley } = tensioner;
  const motion = requireTensioner(tensioner);
  const runAt = (distance: number) => beltRun(layoutMoved(layout, pulley, motion, distance));

  const roots = nearRoots(tensioner, runAt) ?? allRoots(tensioner, runAt);
  const distance = roots.reduce((best, root) => (Math.abs(root) < Math.abs(best) ? root : best));
  const run = runAt(distance);
  return { travel: distance as Length, takeUp: takeUpOf(run, pulley, motion), run };
}

/**
 * Belt taken up for each metre that a pulley of a run moves [–]: (t_in − t_out)·e, with the unit vectors of its two spans
 * along the travel and of its motion.
 *
 * @param run a belt drawn tight, lengths in [m]
 * @param pulley name of the pulley that moves [–], one of the run's
 * @param motion its slide [rad] or the pivot of its arm [m]
 * @throws RangeError if no pulley of the run has that name
 * @source elementary geometry
 * @example takeUpOf(beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), "blower", { direction: 1.5707963268 }) // 2
 */
export function takeUpOf(run: BeltRun, pulley: string, motion: TensionerMotion): number {
  const at = run.pulleys.findIndex(({ name }) => name === pulley);
  if (at < 0) throw new RangeError(`takeUpOf: no pulley of the run is called ${pulley}`);
  const direction = directionOf(run.pulleys[at]!, motion);
  return Math.cos(run.spans.at(at - 1)!.direction - direction) - Math.cos(run.spans[at]!.direction - direction);
}

interface Tried {
  readonly distance: number;
  readonly length: number | undefined;
}

/**
 * Roots next to the drawn position, looked for outward from it step by step: most belts close there.
 * Undefined where the drawn position lies outside the travel, or a part on which no belt can lie is met first.
 */
function nearRoots(tensioner: Tensioner, runAt: (distance: number) => BeltRun): readonly number[] | undefined {
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

/** Every root along the way. @throws RangeError with the lengths that can be reached, where there is none */
function allRoots(tensioner: Tensioner, runAt: (distance: number) => BeltRun): readonly number[] {
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
  { pulley, beltLength }: Tensioner,
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

/** The motion of a tensioner that is well described. @throws RangeError by name */
function requireTensioner(tensioner: SlidingTensioner | PivotingTensioner): TensionerMotion {
  const { layout, pulley, travel, beltLength } = tensioner;
  requirePositive("tensionerPosition: beltLength", beltLength, "m");
  if (!("pivot" in tensioner) && !Number.isFinite(tensioner.direction))
    throw new RangeError(`tensionerPosition: direction is ${tensioner.direction} rad; it must be finite`);
  if (!(travel[0] < travel[1] && Number.isFinite(travel[1] - travel[0]))) {
    throw new RangeError(
      `tensionerPosition: travel is ${travel[0]} to ${travel[1]} m; the second must exceed the first`,
    );
  }
  const moved = layout.pulleys.find(({ name }) => name === pulley);
  if (moved === undefined) throw new RangeError(`tensionerPosition: no pulley of the layout is called ${pulley}`);
  const arm = armLength(moved, tensioner);
  if (arm !== undefined) requirePositive(`tensionerPosition: length of the arm of ${pulley}`, arm, "m");
  return tensioner;
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
  { pulley, travel, beltLength }: Tensioner,
  closed: readonly Tried[],
  runAt: (distance: number) => BeltRun,
): string {
  const lengths = closed.flatMap(({ length }) => (length === undefined ? [] : [length]));
  if (lengths.length === 0) {
    try {
      runAt(travel[0]);
    } catch (error) {
      return `tensionerPosition: no belt can lie anywhere along the way of ${pulley}; at its start ${(error as Error).message}`;
    }
  }
  const written = (length: number) => Number(length.toPrecision(6));
  return `tensionerPosition: beltLength is ${written(beltLength)} m; moving ${pulley} reaches ${written(Math.min(...lengths))} to ${written(Math.max(...lengths))} m`;
}
