import {
  type Force,
  type Length,
  type MassPerLength,
  requireNotNegative,
  requirePositive,
  type Torque,
  type Velocity,
} from "../quantity";
import type { BeltRun } from "./beltLayout";

/** Torque that each driven unit takes from the belt, by pulley name [N·m]; a unit that drives the belt is negative. */
export type UnitTorques = Readonly<Record<string, Torque>>;

/** A run and what its units ask of it. */
export interface LoadedRun {
  readonly run: BeltRun;
  /** torque taken by the units, by pulley name [N·m]; what is not named runs free */
  readonly torques: UnitTorques;
}

/** A loaded run and the tension it keeps behind the crank. */
export interface TightenedRun extends LoadedRun {
  /** tension of the span that leaves the crank [N], above 0 */
  readonly slackTension: Force;
}

/** Tensions around a run. */
export interface SpanTensions {
  /** tension of each span, in the order of the run's spans [N] */
  readonly spans: readonly Force[];
  /** pull that the crank must put into the belt [N] */
  readonly effectivePull: Force;
  /** torque that the belt takes from the crank [N·m] */
  readonly crankTorque: Torque;
}

/**
 * Pull along the belt that a torque asks for [N]: F = 2 T / d.
 *
 * @param torque torque of the pulley [N·m], 0 or above
 * @param pitchDiameter its pitch diameter [m], above 0
 * @throws RangeError if the torque is negative or the diameter not above 0
 * @source definition
 * @example effectivePull(45, 0.0814873) // 1104.467
 */
export function effectivePull(torque: Torque, pitchDiameter: Length): Force {
  requireNotNegative("effectivePull: torque", torque, "N·m");
  requirePositive("effectivePull: pitchDiameter", pitchDiameter, "m");
  return ((2 * torque) / pitchDiameter) as Force;
}

/**
 * Tension of every span around a run [N]: along the travel it rises by T / r at each driven pulley, and falls at the
 * crank, which is the first pulley, by the sum of those rises. The slack span leaves the crank.
 * Friction of idlers, work of bending and the belt's weight are left out; the tension of a running belt is the whole
 * tension, centrifugal part included.
 *
 * @param loaded run, torques by pulley name [N·m] and tension behind the crank [N]
 * @throws RangeError if a torque belongs to no driven pulley of the run, or a span would go slack
 * @source statics of the belt
 * @example spanTensions({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.04, contact: "toothed" }] }), torques: { blower: 40 }, slackTension: 300 }).crankTorque // 50
 */
export function spanTensions({ run, torques, slackTension }: TightenedRun): SpanTensions {
  requirePositive("spanTensions: slackTension", slackTension, "N");
  const rises = pullRises("spanTensions", { run, torques });
  const spans = rises.map((rise, i) => {
    const tension = slackTension + rise;
    if (tension > 0) return tension as Force;
    const { from, to } = run.spans[i]!;
    throw new RangeError(
      `spanTensions: tension from ${from} to ${to} is ${Number(tension.toPrecision(4))} N; slackTension must exceed ${Number((-rise).toPrecision(4))} N to keep that span tight`,
    );
  });
  const pull = rises.at(-1)!;
  return {
    spans,
    effectivePull: pull as Force,
    crankTorque: (pull * run.pulleys[0]!.pitchRadius) as Torque,
  };
}

/**
 * Tension that the belt's own inertia takes up on every arc [N]: T_c = m′ v². It presses on no pulley.
 *
 * @param massPerLength mass of a metre of the belt in its actual width [kg/m], above 0
 * @param beltSpeed speed of the belt [m/s], 0 or above
 * @throws RangeError if the mass is not above 0 or the speed negative
 * @source Shigley, Mechanical Engineering Design, chapter on flexible elements (from memory)
 * @example centrifugalTension(0.171, 35.2) // 211.876
 */
export function centrifugalTension(massPerLength: MassPerLength, beltSpeed: Velocity): Force {
  requirePositive("centrifugalTension: massPerLength", massPerLength, "kg/m");
  requireNotNegative("centrifugalTension: beltSpeed", beltSpeed, "m/s");
  return (massPerLength * beltSpeed ** 2) as Force;
}

/**
 * Rise of tension of each span above that of the first [N]. For use within lib/drive.
 * @throws RangeError naming a torque whose pulley is not in the run, or is the crank
 */
export function pullRises(name: string, { run, torques }: LoadedRun): readonly number[] {
  for (const [pulley, torque] of Object.entries(torques)) {
    const at = run.pulleys.findIndex((candidate) => candidate.name === pulley);
    if (at < 0) throw new RangeError(`${name}: torque of ${pulley} has no pulley in the run`);
    if (at === 0) throw new RangeError(`${name}: ${pulley} drives the belt; its torque follows from the others`);
    if (!Number.isFinite(torque))
      throw new RangeError(`${name}: torque of ${pulley} is ${torque} N·m; it must be finite`);
  }
  let rise = 0;
  return run.pulleys.map((pulley) => {
    rise += (torques[pulley.name] ?? 0) / pulley.pitchRadius;
    return rise;
  });
}

/** Passes one tension above zero for each span. @throws RangeError naming the span */
export function requireSpanTensions(name: string, run: BeltRun, spans: readonly Force[]): void {
  if (spans.length !== run.spans.length) {
    throw new RangeError(`${name}: spans are ${spans.length}; the run has ${run.spans.length}`);
  }
  run.spans.forEach(({ from, to }, i) => {
    requirePositive(`${name}: tension from ${from} to ${to}`, spans[i]!, "N");
  });
}
