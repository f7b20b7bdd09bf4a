import type { Length, Ratio, RotationalSpeed, Velocity } from "../quantity";
import type { BeltLayout, BeltRun, Rotation } from "./beltLayout";
import { beltRun } from "./beltRun";
import type { BeltSection } from "./beltSection";
import { crankOf, type DriveMember, memberPitchRadius, memberRatio } from "./driveMember";
import { beltSpeed, rotationSeenOnShaftEnd } from "./speeds";

/** Engine speeds at which a drive is looked at. */
export interface DriveSpeeds {
  readonly idle: RotationalSpeed;
  readonly cruise: RotationalSpeed;
  readonly rated: RotationalSpeed;
  readonly maximum: RotationalSpeed;
  /** above the maximum: downhill, or when a load falls off */
  readonly overspeed: RotationalSpeed;
}

/** A belt: its members in the order in which it meets them, crank first. */
export interface BeltDrive<Member extends DriveMember = DriveMember> {
  /** what the page calls it */
  readonly name: string;
  readonly section: BeltSection;
  readonly members: readonly Member[];
  /** the way the crank turns, seen from the front of the engine */
  readonly crankRotation: Rotation;
  /** engine speeds [rev/s] */
  readonly speeds: DriveSpeeds;
}

/** How a member turns, whatever the engine's speed. */
export interface Turning {
  /** its turns in one turn of the crank [–] */
  readonly ratio: Ratio;
  /** the way it turns, seen on its own shaft end */
  readonly turns: Rotation;
  /** whether that is the way it must turn */
  readonly turnsRightly: boolean;
}

/** How a member runs. */
export interface Driven extends Turning {
  /** its speed at each of the engine's speeds [rev/s] */
  readonly at: DriveSpeeds;
}

export type DrivenMember<Member extends DriveMember = DriveMember> = Member & Driven;

/** A belt as it lies, whatever the engine's speed. */
export interface DrawnBelt<Member extends DriveMember = DriveMember> {
  readonly name: string;
  readonly section: BeltSection;
  /** the way the belt goes around, seen from the front */
  readonly travel: Rotation;
  /** in belt order, crank first */
  readonly members: readonly (Member & Turning)[];
  /** its pulleys, one for each member, whether or not a belt can lie on them */
  readonly layout: BeltLayout;
  /** the belt drawn tight; absent where none can lie */
  readonly run?: BeltRun;
  /** why no belt can lie, in words that name pulley and distance; absent where one can */
  readonly fault?: string;
}

/** A belt as it lies and runs. */
export interface LaidBelt<Member extends DriveMember = DriveMember> extends DrawnBelt<Member> {
  readonly members: readonly DrivenMember<Member>[];
  /** speed of the belt at each of the engine's speeds [m/s] */
  readonly beltSpeed: { readonly [At in keyof DriveSpeeds]: Velocity };
}

/**
 * What a belt's layout fixes at any speed [ratios –, lengths m]: run, ratios and rotation.
 * Where no belt can lie on the pulleys the run is left out, and the fault says why; ratios and rotation stand.
 *
 * @param drive members in belt order with the crank first, section and rotation, lengths in [m]
 * @throws RangeError if the crank is not first, or a pulley's size is none (see memberPitchRadius)
 * @source tooth ratios and exact tangents; see memberRatio and beltRun
 * @example drawnBelt({ name: "Belt A", section: curvilinear8, crankRotation: "clockwise", members: [{ unit: "Crank", role: "crank", contact: "toothed", teeth: 50, x: 0, y: 0, shaftEnd: "forward", mustTurn: "either" }, { unit: "Pump", role: "pump", contact: "toothed", teeth: 50, x: 0, y: 0.3, shaftEnd: "forward", mustTurn: "either" }] }).run.length // 1
 */
export function drawnBelt<Member extends DriveMember>(drive: Omit<BeltDrive<Member>, "speeds">): DrawnBelt<Member> {
  const { name, section, members, crankRotation } = drive;
  const crank = crankOf(name, members);
  const layout: BeltLayout = {
    travel: crankRotation,
    pulleys: members.map((member) => ({
      name: member.unit,
      x: member.x,
      y: member.y,
      contact: member.contact,
      pitchRadius: memberPitchRadius(section, member),
      ...(member.teeth > 0 && { teeth: member.teeth }),
    })),
  };
  const turning = members.map((member): Member & Turning => {
    const sense = member.contact === crank.contact ? 1 : -1;
    const turns = rotationSeenOnShaftEnd({ sense, crankRotation, shaftEnd: member.shaftEnd });
    const turnsRightly = member.mustTurn === "either" || member.mustTurn === turns;
    return { ...member, ratio: memberRatio(section, crank, member), turns, turnsRightly };
  });
  return { name, section, travel: crankRotation, members: turning, layout, ...runOrFault(layout) };
}

/**
 * A belt that has been drawn, at the engine's speeds [rev/s, m/s].
 *
 * @param drawn the belt as it lies
 * @param speeds engine speeds [rev/s], 0 or above
 * @throws RangeError if a speed is negative
 * @source n = i N; v = π d N
 * @example beltAtSpeeds(drawnBelt({ name: "Belt A", section: curvilinear8, crankRotation: "clockwise", members: [{ unit: "Crank", role: "crank", contact: "toothed", teeth: 50, x: 0, y: 0, shaftEnd: "forward", mustTurn: "either" }, { unit: "Pump", role: "pump", contact: "toothed", teeth: 40, x: 0, y: 0.3, shaftEnd: "forward", mustTurn: "either" }] }), { idle: 12, cruise: 40, rated: 50, maximum: 55, overspeed: 60 }).beltSpeed.rated // 20
 */
export function beltAtSpeeds<Member extends DriveMember>(
  drawn: DrawnBelt<Member>,
  speeds: DriveSpeeds,
): LaidBelt<Member> {
  const crankDiameter = (2 * drawn.layout.pulleys[0]!.pitchRadius) as Length;
  return {
    ...drawn,
    members: drawn.members.map((member) => ({
      ...member,
      at: atEach(speeds, (speed) => (speed * member.ratio) as RotationalSpeed),
    })),
    beltSpeed: atEach(speeds, (speed) => beltSpeed(crankDiameter, speed)),
  };
}

/**
 * Everything that a belt's layout and the engine's speeds fix [ratios –, speeds rev/s and m/s, lengths m].
 *
 * @param drive members in belt order with the crank first, section, rotation and engine speeds [rev/s]
 * @throws RangeError as drawnBelt and beltAtSpeeds do
 * @source see drawnBelt and beltAtSpeeds
 * @example laidBelt({ name: "Belt A", section: curvilinear8, crankRotation: "clockwise", speeds: { idle: 12, cruise: 40, rated: 50, maximum: 55, overspeed: 60 }, members: [{ unit: "Crank", role: "crank", contact: "toothed", teeth: 50, x: 0, y: 0, shaftEnd: "forward", mustTurn: "either" }, { unit: "Pump", role: "pump", contact: "toothed", teeth: 40, x: 0, y: 0.3, shaftEnd: "forward", mustTurn: "either" }] }).members[1].at.rated // 62.5
 */
export function laidBelt<Member extends DriveMember>(drive: BeltDrive<Member>): LaidBelt<Member> {
  return beltAtSpeeds(drawnBelt(drive), drive.speeds);
}

/** The run of a layout, or in words why there is none. */
function runOrFault(layout: BeltLayout): { readonly run: BeltRun } | { readonly fault: string } {
  try {
    return { run: beltRun(layout) };
  } catch (error) {
    if (error instanceof RangeError) return { fault: error.message.replace(/^beltRun: /, "") };
    throw error;
  }
}

function atEach<T>(speeds: DriveSpeeds, f: (speed: RotationalSpeed) => T): { readonly [At in keyof DriveSpeeds]: T } {
  const { idle, cruise, rated, maximum, overspeed } = speeds;
  return { idle: f(idle), cruise: f(cruise), rated: f(rated), maximum: f(maximum), overspeed: f(overspeed) };
}
