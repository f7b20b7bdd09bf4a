import { type Count, type Force, type Length, type Ratio, requirePositive, type Velocity } from "../quantity";
import { beltsNear, type OfferedBelt, tensionerFit } from "./beltFit";
import type { BeltLayout, BeltRun } from "./beltLayout";
import { beltRun } from "./beltRun";
import { isToothed } from "./beltSection";
import { beltWidthNeeded } from "./beltWidth";
import { type DrivePick, type DrivePicks, type PickInputs, type PickRefusal, pickRefusals } from "./drivePick";
import { clearances } from "./layoutFindings";
import { pitchDiameter } from "./pulley";
import type { TensionerPosition } from "./tensioner";
import { type ToothPair, toothPairs } from "./toothPairs";
import type { ToothProfile } from "./toothProfiles";

/** Cost of a ratio at the edge of what is allowed, of a tensioner at the end of its way, and of a belt not in the list. */
const costs = { ratio: 1, travel: 0.5, unlisted: 0.75 };

/**
 * Pulleys and belts for one unit of a toothed belt, best first: every pair of whole teeth that gives the ratio wanted,
 * with every standard belt that closes the run within the tensioner's way, and the nearest belt of whole teeth beside.
 * What is kept: every other unit's range of ratios, belt speed, teeth in mesh, room, and the width's rating.
 * The cost is the ratio's error over the tolerance, half the tensioner's travel over its reach, and 3/4 for a belt that is
 * not in the list of standard lengths: a choice of ours, common practice, no source. Price and stock are left out.
 *
 * @param wanted the belt as drawn, the unit, ratio and tolerance [–], teeth allowed [–], tensioner [m], limits and load
 * @throws RangeError if the belt is not toothed, has no toothed unit of that name, or the ratio or tolerance is not above 0
 * @source enumeration; exact tangents; ISO 5295 for the width (from memory)
 * @example drivePicks({ drawn: drawnBelt({ name: "Belt A", section: curvilinear8, crankRotation: "clockwise", members: [{ unit: "Crank", role: "crank", contact: "toothed", teeth: 40, x: 0, y: 0 }, { unit: "Pump", role: "pump", contact: "toothed", teeth: 30, x: 0, y: 0.3 }] }), unit: "Pump", ratio: 4 / 3, tolerance: 0.001, driver: [40, 40], driven: [22, 60], tensioner: { pulley: "Pump", motion: { direction: 1.5707963268 }, reach: 0.03, fittingSlack: 0.01, stretch: 0.002 }, highestSpeed: 50, limits: { teethInMesh: 6, clearance: 0.01, beltSpeed: 40, ratios: {} }, load: { torques: { Pump: 20 }, serviceFactor: 1.5, speed: 50, allowablePull: 900, baseWidth: 0.02, baseMassPerLength: 0.11, width: 0.03 } }).picks[0].belt.length // 0.88
 */
export function drivePicks(wanted: PickInputs): DrivePicks {
  const { drawn, unit, ratio, tolerance, driver, driven } = wanted;
  requirePositive("drivePicks: ratio", ratio);
  requirePositive("drivePicks: tolerance", tolerance);
  const { section } = drawn;
  if (!isToothed(section)) throw new RangeError(`drivePicks: ${drawn.name} is ribbed; picks are for toothed belts`);
  const at = drawn.members.findIndex((member, i) => i > 0 && member.unit === unit && member.teeth > 0);
  if (at < 0) throw new RangeError(`drivePicks: ${drawn.name} has no toothed unit called ${unit}`);

  const within = [ratio * (1 - tolerance), ratio * (1 + tolerance)] as unknown as readonly [Ratio, Ratio];
  const pairs = toothPairs({ ratios: within, driver, driven });
  const refused = Object.fromEntries(pickRefusals.map((reason) => [reason, 0])) as Record<PickRefusal, number>;
  const picks: DrivePick[] = [];
  for (const pair of pairs) {
    const found = picksOf({ ...wanted, section, at }, pair);
    if (typeof found === "string") refused[found] += 1;
    else picks.push(...found);
  }
  picks.sort((a, b) => a.cost - b.cost || a.driverTeeth - b.driverTeeth || a.belt.length - b.belt.length);
  return { picks, pairs: pairs.length, refused };
}

interface Search extends PickInputs {
  readonly section: ToothProfile;
  /** place of the unit in the belt */
  readonly at: number;
}

/** The belts for one pair of pulleys, or what it fails by. */
function picksOf(search: Search, pair: ToothPair): readonly DrivePick[] | PickRefusal {
  const { drawn, section, limits, tensioner, at } = search;
  const spoilt = drawn.members.some(({ unit, teeth, role }, i) => {
    const range = limits.ratios[unit];
    if (range === undefined || i === 0 || role === "idler" || teeth === 0) return false;
    const turns = pair.driverTeeth / (i === at ? pair.drivenTeeth : teeth);
    return turns < range[0] || turns > range[1];
  });
  if (spoilt) return "another unit's speed";
  const beltSpeed = (pair.driverTeeth * section.pitch * search.highestSpeed) as Velocity;
  if (beltSpeed > limits.beltSpeed) return "belt speed";
  const layout = layoutWith(search, pair);
  const run = runOrNothing(layout);
  if (run === undefined) return "no belt can lie";
  const mesh = fewestInMesh(run);
  if (mesh < limits.teethInMesh) return "teeth in mesh";
  const widthNeeded = widthOf(search, run);
  if (widthNeeded === undefined || widthNeeded > search.load.width) return "width";
  if (clearances(run)[0]!.gap < limits.clearance) return "room";

  const picks = beltsInReach(section, run.length, tensioner.reach).flatMap((offered): readonly DrivePick[] => {
    const position = positionFor(search, layout, run, offered.length);
    if (position === undefined || !hasWay(search, position)) return [];
    const teeth = Math.round(offered.length / section.pitch) as Count;
    const off = pair.ratio / search.ratio - 1;
    const cost =
      (costs.ratio * Math.abs(off)) / search.tolerance +
      (costs.travel * Math.abs(position.travel)) / tensioner.reach +
      (offered.standard ? 0 : costs.unlisted);
    return [
      {
        ...pair,
        off: off as Ratio,
        belt: { ...offered, teeth },
        travel: position.travel,
        beltSpeed,
        teethInMesh: fewestInMesh(position.run),
        widthNeeded,
        cost,
      },
    ];
  });
  return picks.length > 0 ? picks : "no belt in reach";
}

function layoutWith({ drawn, section, at }: Search, { driverTeeth, drivenTeeth }: ToothPair): BeltLayout {
  const pulleys = drawn.layout.pulleys.map((pulley, i) => {
    if (i !== 0 && i !== at) return pulley;
    const teeth = i === 0 ? driverTeeth : drivenTeeth;
    return { ...pulley, teeth, pitchRadius: (pitchDiameter(section.pitch, teeth) / 2) as Length };
  });
  return { ...drawn.layout, pulleys };
}

function fewestInMesh({ pulleys }: BeltRun): Count {
  const meshes = pulleys.flatMap(({ teethInMesh }) => (teethInMesh === undefined ? [] : [teethInMesh]));
  return Math.min(...meshes) as Count;
}

/** Width that the units' pull asks for [m]; nothing where no width carries it. */
function widthOf({ section, load }: Search, run: BeltRun): Length | undefined {
  const pull = run.pulleys.reduce((sum, { name, pitchRadius }) => sum + (load.torques[name] ?? 0) / pitchRadius, 0);
  return orNothing(() =>
    beltWidthNeeded({
      section,
      pull: (pull * load.serviceFactor) as Force,
      allowablePull: load.allowablePull,
      baseWidth: load.baseWidth,
      baseMassPerLength: load.baseMassPerLength,
      beltSpeed: (2 * Math.PI * run.pulleys[0]!.pitchRadius * load.speed) as Velocity,
      teethInMesh: fewestInMesh(run),
    }),
  );
}

/** Standard belts, and the nearest of whole teeth, that lie no farther off than a tensioner can ever take up. */
function beltsInReach(section: ToothProfile, length: Length, reach: Length): readonly OfferedBelt[] {
  const listed = section.standardLengths.map((belt) => ({ length: belt, standard: true }));
  const nearest = beltsNear(section, length).filter(({ standard }) => !standard);
  // A pulley takes up at most two metres of belt for each metre that it moves: both its spans, straight on.
  return [...listed, ...nearest].filter((belt) => Math.abs(belt.length - length) <= 2 * reach);
}

function positionFor({ tensioner }: Search, layout: BeltLayout, run: BeltRun, beltLength: Length) {
  const { pulley, motion, reach } = tensioner;
  return orNothing(() => tensionerFit({ layout, run, pulley, motion, reach, beltLength }));
}

/** Whether the way suffices to slip the belt on, and to follow its stretch. */
function hasWay({ tensioner }: Search, { travel, takeUp }: TensionerPosition): boolean {
  const { reach, fittingSlack, stretch } = tensioner;
  const back = Math.abs(travel - fittingSlack / takeUp);
  const on = Math.abs(travel + stretch / takeUp);
  return Math.max(back, on) <= reach;
}

function runOrNothing(layout: BeltLayout): BeltRun | undefined {
  return orNothing(() => beltRun(layout));
}

function orNothing<T>(f: () => T): T | undefined {
  try {
    return f();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
