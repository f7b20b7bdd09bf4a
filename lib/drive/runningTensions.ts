import { type Force, requireNotNegative, requirePositive } from "../quantity";
import type { BeltRun } from "./beltLayout";
import { meanAlong } from "./installationTension";
import { type LoadedRun, pullRises } from "./tension";

/** A loaded run, how tight it was set, and what keeps it so. */
export interface HeldRun extends LoadedRun {
  /** tension of the belt at rest [N], above 0 */
  readonly restTension: Force;
  /** centrifugal tension at the speed in question [N], 0 or above */
  readonly centrifugalTension: Force;
  /** name of a pulley kept by a spring; where it is left out all centres are locked */
  readonly sprung?: string;
}

/** Tensions of a running belt, slack or not. */
export interface HeldTensions {
  /** tension of each span, in the order of the run's spans, centrifugal part included [N] */
  readonly spans: readonly Force[];
  /** pull that the crank puts into the belt [N] */
  readonly effectivePull: Force;
  /** what the loosest span has above the centrifugal tension [N]; negative where it would hang loose */
  readonly pressing: Force;
  /** place of the loosest span in the run's spans */
  readonly loosest: number;
}

/**
 * Tension of every span of a running belt as it was set [N]. Locked centres keep the belt's stretch, so the mean tension
 * along the belt stays; a spring keeps the force of its pulley, so the spans beside it stay at the rest tension, and all
 * rise by the centrifugal one. A span that comes out loose is told by `pressing`, not refused.
 * Warm centre distances, settling and the spring's own travel are left out.
 *
 * @param held run, torques by pulley name [N·m], rest and centrifugal tension [N], and a sprung pulley if there is one
 * @throws RangeError if the rest tension is not above 0, the centrifugal one negative, or a name is not in the run
 * @source linear elasticity; statics of the belt
 * @example runningTensions({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), torques: { blower: 40 }, restTension: 700, centrifugalTension: 50 }).pressing // 250
 */
export function runningTensions({ run, torques, restTension, centrifugalTension, sprung }: HeldRun): HeldTensions {
  requirePositive("runningTensions: restTension", restTension, "N");
  requireNotNegative("runningTensions: centrifugalTension", centrifugalTension, "N");
  const rises = pullRises("runningTensions", { run, torques });
  const slack =
    sprung === undefined
      ? restTension - meanAlong(run, rises)
      : restTension + centrifugalTension - rises[placeOf(run, sprung)]!;
  const spans = rises.map((rise) => (slack + rise) as Force);
  const least = Math.min(...spans);
  return {
    spans,
    effectivePull: rises.at(-1)! as Force,
    pressing: (least - centrifugalTension) as Force,
    loosest: spans.indexOf(least as Force),
  };
}

/**
 * Rest tension that leaves the loosest span of a running belt a wanted tension above the centrifugal one [N].
 * All tensions go one to one with the rest tension, so it is the one that was set, and what is missing.
 *
 * @param held the run as it was set, with its loads
 * @param least what the loosest span shall have above the centrifugal tension [N], 0 or above
 * @throws RangeError as runningTensions does, or if the wanted tension is negative
 * @source linear elasticity; statics of the belt
 * @example restTensionNeeded({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), torques: { blower: 40 }, restTension: 700, centrifugalTension: 50 }, 100) // 550
 */
export function restTensionNeeded(held: HeldRun, least: Force): Force {
  requireNotNegative("restTensionNeeded: least", least, "N");
  return (held.restTension + least - runningTensions(held).pressing) as Force;
}

/** The span that leaves a pulley, which has the same tension as the one that meets it where the pulley runs free. */
function placeOf({ pulleys }: BeltRun, name: string): number {
  const at = pulleys.findIndex((pulley) => pulley.name === name);
  if (at >= 0) return at;
  throw new RangeError(`runningTensions: no pulley of the run is called ${name}`);
}
