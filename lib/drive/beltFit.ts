import { type Length, requirePositive } from "../quantity";
import type { BeltLayout, BeltRun } from "./beltLayout";
import { beltRun } from "./beltRun";
import { type BeltSection, isToothed } from "./beltSection";
import { takeUpOf, type TensionerPosition } from "./tensioner";
import { layoutMoved, type TensionerMotion } from "./tensionerMotion";

/** A run as drawn, the pulley that takes it up, and the belt that shall fit. */
export interface FitInputs {
  readonly layout: BeltLayout;
  /** the layout's belt as drawn */
  readonly run: BeltRun;
  /** name of the pulley that takes up */
  readonly pulley: string;
  readonly motion: TensionerMotion;
  /** how far it may be looked for, each way [m], above 0 */
  readonly reach: Length;
  /** pitch length of the belt [m], above 0 */
  readonly beltLength: Length;
}

/** Below this difference a belt fits [m]: a ten-thousandth of a micrometre. */
const closeEnough = 1e-10;

/** Takes up less than this share of its way, and a pulley closes nothing from where it stands [–]. */
const leastTakeUp = 1e-3;

/**
 * Where a pulley on a slide or an arm closes a run on a belt, starting from where it is drawn [travel in m].
 * Newton's method with the exact take-up, a few runs long: quick, and true to the side on which the pulley stands. It
 * does not search beyond a place where no belt can lie, as tensionerPosition does.
 *
 * @param fit layout and run as drawn, pulley, motion, reach and belt length [m]
 * @throws RangeError with the length that it came to, if the belt is not met within reach on the pulley's own side
 * @source Newton's method on the exact length
 * @example tensionerFit({ ...((layout) => ({ layout, run: beltRun(layout) }))({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), pulley: "blower", motion: { direction: 1.5707963268 }, reach: 0.1, beltLength: 0.96 }).travel // 0.0229204
 */
export function tensionerFit({ layout, run, pulley, motion, reach, beltLength }: FitInputs): TensionerPosition {
  requirePositive("tensionerFit: reach", reach, "m");
  requirePositive("tensionerFit: beltLength", beltLength, "m");
  const drawn = takeUpOf(run, pulley, motion);
  let at: TensionerPosition = { travel: 0 as Length, takeUp: drawn, run };
  for (let step = 0; step < 16; step++) {
    const left = beltLength - at.run.length;
    if (Math.abs(left) < closeEnough) return at;
    // On the other side of the place of least length the belt closes too, but not from here.
    if (Math.abs(at.takeUp) < leastTakeUp || at.takeUp * drawn < 0) break;
    const travel = Math.min(reach, Math.max(-reach, at.travel + left / at.takeUp));
    if (travel === at.travel) break;
    const next = nearestRun({ layout, pulley, motion }, at.travel, travel);
    if (next === undefined) break;
    at = { ...next, takeUp: takeUpOf(next.run, pulley, motion) };
  }
  throw new RangeError(
    `tensionerFit: beltLength is ${Number(beltLength.toPrecision(6))} m; moving ${pulley} came to ${Number(at.run.length.toPrecision(6))} m at ${Number(at.travel.toPrecision(4))} m from where it is drawn`,
  );
}

/** The run at a place along the pulley's way, or on the way there where no belt can lie so far. */
function nearestRun(moved: Pick<FitInputs, "layout" | "pulley" | "motion">, from: number, to: number) {
  for (let part = 1; part > 0.1; part /= 2) {
    const travel = from + part * (to - from);
    const run = runAt(moved, travel);
    if (run !== undefined) return { travel: travel as Length, run };
  }
  return undefined;
}

function runAt({ layout, pulley, motion }: Pick<FitInputs, "layout" | "pulley" | "motion">, travel: number) {
  try {
    return beltRun(layoutMoved(layout, pulley, motion, travel));
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** A belt that can be had. */
export interface OfferedBelt {
  /** pitch length [m] */
  readonly length: Length;
  /** whether it stands in the list of standard lengths, rather than only being a whole number of teeth */
  readonly standard: boolean;
}

/**
 * Toothed belts near a run's length, the shortest first [m]: the whole tooth count nearest to it, and the standard
 * lengths next below and above. Nothing for a ribbed belt, which is sold in steps of a few millimetres.
 *
 * @param section the belt in section, lengths in [m]
 * @param length the run's length [m], above 0
 * @throws RangeError if the length is not above 0
 * @source lengths of ISO 13050 (from memory); a toothed belt has a whole number of teeth
 * @example beltsNear(curvilinear14, 1.397)[0].length // 1.19
 */
export function beltsNear(section: BeltSection, length: Length): readonly OfferedBelt[] {
  requirePositive("beltsNear: length", length, "m");
  if (!isToothed(section)) return [];
  const { pitch, standardLengths } = section;
  const teeth = (belt: number) => Math.round(belt / pitch);
  const nearest = Math.max(1, teeth(length));
  const counts = standardLengths.map(teeth);
  const below = Math.max(...counts.filter((count) => count * pitch <= length));
  const above = Math.min(...counts.filter((count) => count * pitch > length));
  const wanted = [...new Set([below, nearest, above])].filter(Number.isFinite).sort((a, b) => a - b);
  return wanted.map((count) => ({ length: (count * pitch) as Length, standard: counts.includes(count) }));
}
