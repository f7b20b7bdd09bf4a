import { type DrivePick, type DrivePicks, drivePicks, isToothed, type UnitTorques } from "../../lib/drive";
import type { Count, Fraction, Length, Ratio } from "../../lib/quantity";
import { moverOf } from "./fitting";
import type { LaidFrontBelt } from "./frontBelts";
import type { RatioRange } from "./ratioRanges";
import type { UnitLoad } from "./unitLoads";

/** What a pick is made from. */
export interface Picking {
  readonly beltRuns: readonly LaidFrontBelt[];
  readonly unitLoads: readonly UnitLoad[];
  readonly ratioRanges: readonly RatioRange[];
  readonly pickRole: string;
  readonly pickRatio: Ratio;
  readonly pickTolerance: Fraction;
  readonly pickCrankFewest: Count;
  readonly pickCrankMost: Count;
  readonly meshLeast: Count;
  readonly clearanceLeast: Length;
  readonly fittingSlack: Length;
  readonly stretchShare: Fraction;
  readonly serviceFactor: Ratio;
}

/** Picks for one unit of the front, or in words why there can be none. */
export type FrontPicks =
  | { readonly belt: LaidFrontBelt; readonly unit: string; readonly found: DrivePicks; readonly none?: undefined }
  | { readonly none: string };

/** Most teeth of a unit's pulley that are looked at. */
const mostTeeth = 90 as Count;

const lastPicks = new WeakMap<readonly LaidFrontBelt[], { readonly of: Picking; readonly picks: FrontPicks }>();

/** The picks for what is asked; a picture, its words and its numbers ask one after another, and are answered once. */
export function frontPicks(at: Picking): FrontPicks {
  const last = lastPicks.get(at.beltRuns);
  if (last !== undefined && (Object.keys(at) as (keyof Picking)[]).every((key) => Object.is(at[key], last.of[key]))) {
    return last.picks;
  }
  const picks = picked(at);
  lastPicks.set(at.beltRuns, { of: at, picks });
  return picks;
}

function picked(at: Picking): FrontPicks {
  const belt = at.beltRuns.find(({ members }) => members.some(({ role }) => role === at.pickRole));
  if (belt === undefined) return { none: "No pulley of the table is this unit's." };
  const { section, run, members, name } = belt;
  const member = members.find(({ role }) => role === at.pickRole)!;
  if (!isToothed(section) || member.teeth === 0) return { none: `${member.unit} has no teeth: picks are for toothed belts.` };
  if (run === undefined) return { none: `${name} cannot lie as drawn: ${belt.fault}.` };
  if (at.pickCrankFewest > at.pickCrankMost) return { none: "The fewest teeth of the crank pulley are more than the most." };

  const mover = moverOf(belt);
  const torques: UnitTorques = Object.fromEntries(
    at.unitLoads.filter((load) => load.belt === belt.mark).map(({ unit, torque }) => [unit, torque]),
  );
  const ratios = Object.fromEntries(
    at.ratioRanges.filter((range) => range.belt === name).map(({ unit, lowest, highest }) => [unit, [lowest, highest]]),
  ) as Readonly<Record<string, readonly [Ratio, Ratio]>>;
  const row = belt.belt;
  const found = drivePicks({
    drawn: belt,
    unit: member.unit,
    ratio: at.pickRatio,
    tolerance: at.pickTolerance as number as Ratio,
    driver: [at.pickCrankFewest, at.pickCrankMost],
    driven: [Math.min(section.leastTeeth, member.teeth) as Count, mostTeeth],
    tensioner: {
      pulley: mover.member.unit,
      motion: mover.motion,
      reach: row.slide,
      fittingSlack: at.fittingSlack,
      stretch: (at.stretchShare * run.length) as Length,
    },
    highestSpeed: members[0]!.at.maximum,
    limits: {
      teethInMesh: at.meshLeast,
      clearance: at.clearanceLeast,
      beltSpeed: row.speedLimit,
      ratios,
    },
    load: {
      torques,
      serviceFactor: at.serviceFactor,
      speed: members[0]!.at.rated,
      allowablePull: row.allowablePull,
      baseWidth: row.baseWidth,
      baseMassPerLength: row.baseMass,
      width: row.width,
    },
  });
  return { belt, unit: member.unit, found };
}

/** Why a pick stands where it does, in words. */
export function reasonOf(pick: DrivePick, text: (kind: "length" | "velocity", value: number) => string): string {
  const off = Math.abs(pick.off);
  const ratio = off < 5e-5 ? "the very ratio" : `ratio ${(100 * off).toFixed(off < 0.001 ? 2 : 1)} % ${pick.off > 0 ? "high" : "low"}`;
  const belt = pick.belt.standard ? "a standard belt" : "a belt that is not in the list";
  const moved = Math.abs(pick.travel) < 5e-5 ? "tensioner as drawn" : `tensioner ${text("length", Math.abs(pick.travel))} from where it is drawn`;
  return `${ratio}, ${belt}, ${moved}`;
}
