import type { ValuesOf } from "../../../lib/graph";
import { deliverySweep } from "../../fuel-delivery/deliverySweep";
import { blowersAt, blowerTorque } from "../../matching/figures/blowerRun";
import { isLeap, placeOf, runFrom, runOf } from "../../matching/figures/run";
import { beltRuns } from "../beltRuns";
import { type UnitLoad, unitLoads } from "../unitLoads";
import { engineSpeeds } from "./engineSpeeds";

/** What the torques over engine speed are read from. */
export const torqueFrom = { ...runFrom, unitLoads, beltRuns, deliverySweep };

export type TorqueValues = ValuesOf<typeof torqueFrom>;

export interface TorqueAt {
  /** of the engine */
  readonly speed: number;
  readonly torque: number;
}

/** Torque at the blower's shaft with the most that the match's parts give. */
export interface BlowerAt extends TorqueAt {
  /** what the speed is to the engine */
  readonly place: string;
  /** no line joins it to the one before: another limit stops the parts there */
  readonly apart: boolean;
}

/** Units that are given a load. */
export const loaded = (loads: readonly UnitLoad[]): readonly UnitLoad[] => loads.filter(({ torque }) => torque > 0);

/** A unit's torque at the engine's five speeds, as its belt is reckoned with. */
export function atFiveSpeeds({ torqueAt }: UnitLoad, { beltRuns }: TorqueValues): readonly TorqueAt[] {
  const speeds = beltRuns[0]!.members[0]!.at;
  return engineSpeeds.map(({ key }) => ({ speed: speeds[key], torque: torqueAt[key] }));
}

/** Points of a unit's line: the fuel pump's at every speed of the fuel sheet's sweep, and beyond; those at the five speeds else. */
export function linePoints(unit: UnitLoad, at: TorqueValues): readonly TorqueAt[] {
  const five = [...atFiveSpeeds(unit, at)].sort((a, b) => a.speed - b.speed);
  if (unit.role !== "fuelPump") return five;
  const place = at.unitLoads.filter(({ role }) => role === "fuelPump").indexOf(unit);
  const swept = at.deliverySweep.map(({ engineSpeed, torques }) => ({ speed: engineSpeed, torque: torques[place]! }));
  const [low, high] = [swept[0]!.speed, swept.at(-1)!.speed];
  return [...five.filter(({ speed }) => speed < low), ...swept, ...five.filter(({ speed }) => speed > high)];
}

/** The blower with the most that the match's parts give, by rising speed; nothing where no blower is driven. */
export function solvedBlower(at: TorqueValues): readonly BlowerAt[] {
  if (!at.unitLoads.some(({ role }) => role === "blower")) return [];
  const run = runOf(at);
  return run.points.flatMap((point, i): readonly BlowerAt[] => {
    const blowers = blowersAt(point);
    if (blowers === undefined) return [];
    const before = run.points[i - 1];
    const apart = before === undefined || blowersAt(before) === undefined || isLeap(before, point);
    return [{ speed: point.engineSpeed, torque: blowerTorque(blowers), place: placeOf(run, point.engineSpeed), apart }];
  });
}
