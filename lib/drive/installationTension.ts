import { type Force, requireNotNegative, requirePositive } from "../quantity";
import type { BeltRun } from "./beltLayout";
import { type LoadedRun, pullRises, requireSpanTensions } from "./tension";

/** Tensions of a running belt, and how its length is taken up. */
export interface RunningTensions {
  readonly run: BeltRun;
  /** tension of each span, in the order of the run's spans, centrifugal part included [N] */
  readonly spans: readonly Force[];
  /** centrifugal tension at that speed [N], 0 or above; 0 if left out */
  readonly centrifugalTension?: Force;
  /** "fixed" where all centres are locked, "loaded" where a spring or a weight keeps the force of a tensioner */
  readonly takeUp: "fixed" | "loaded";
}

/** A run that is loaded after it has been tightened with its centres locked. */
export interface InstalledRun extends LoadedRun {
  /** tension of the belt at rest, the same in all spans [N], above 0 */
  readonly installationTension: Force;
}

/**
 * Tension at which the belt must be set at rest to run with given tensions [N].
 * Locked centres keep the belt's stretch, so the mean tension along its length stays: ΣT L / ΣL, on arcs the mean of
 * both sides. A loaded tensioner keeps the pressure on the pulleys, so the centrifugal part comes off: that less T_c.
 * Settling of teeth and cords, heat and the growth of warm centre distances are left out.
 *
 * @param running run, span tensions and centrifugal tension [N], and how length is taken up
 * @throws RangeError if there are not as many tensions as spans, one is not above 0, or none is left at rest
 * @source linear elasticity; for two equal arcs "loaded" is Shigley's F_i = (F₁ + F₂)/2 − F_c (from memory)
 * @example installationTension({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), spans: [300, 1100], takeUp: "fixed" }) // 700
 */
export function installationTension({ run, spans, centrifugalTension, takeUp }: RunningTensions): Force {
  const centrifugal = centrifugalTension ?? 0;
  requireNotNegative("installationTension: centrifugalTension", centrifugal, "N");
  requireSpanTensions("installationTension", run, spans);
  const tension = meanAlong(run, spans) - (takeUp === "loaded" ? centrifugal : 0);
  requirePositive("installationTension: tension left at rest", tension, "N");
  return tension as Force;
}

/**
 * Tension behind the crank once the load is on, after the belt was set at rest with its centres locked [N].
 * The rises at the driven pulleys are laid around the run so that the mean tension along the belt stays.
 *
 * @param installed run, torques by pulley name [N·m] and tension at rest [N]
 * @throws RangeError if the belt was set so loosely that the slack span would lose all tension
 * @source linear elasticity
 * @example slackTensionUnderLoad({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), torques: { blower: 40 }, installationTension: 700 }) // 300
 */
export function slackTensionUnderLoad({ run, torques, installationTension }: InstalledRun): Force {
  requirePositive("slackTensionUnderLoad: installationTension", installationTension, "N");
  const meanRise = meanAlong(run, pullRises("slackTensionUnderLoad", { run, torques }));
  const slack = installationTension - meanRise;
  if (slack > 0) return slack as Force;
  throw new RangeError(
    `slackTensionUnderLoad: installationTension is ${installationTension} N; it must be above ${Number(meanRise.toPrecision(4))} N to keep the span behind the crank tight`,
  );
}

/** Mean of the spans' tensions along the belt, on arcs the mean of both sides. For use within lib/drive. */
export function meanAlong({ pulleys, spans, length }: BeltRun, tensions: readonly number[]): number {
  const straight = spans.reduce((sum, span, i) => sum + span.length * tensions[i]!, 0);
  const curved = pulleys.reduce(
    (sum, { pitchRadius, wrap }, i) => sum + (pitchRadius * wrap * (tensions.at(i - 1)! + tensions[i]!)) / 2,
    0,
  );
  return (straight + curved) / length;
}
