import type { Count, Length, Ratio, RotationalSpeed, Velocity } from "../quantity";
import type { BeltContact, BeltRun, Rotation } from "./beltLayout";
import { beltRun } from "./beltRun";
import { backIdlerPitchRadius, flatIdlerPitchRadius, pitchDiameter } from "./pulley";
import { beltSpeed, driveRatio, rotationSeenOnShaftEnd } from "./speeds";
import type { ToothProfile } from "./toothProfiles";

/** A pulley of a drive and the unit behind it. */
export interface DriveMember {
  /** what the page calls it; unique in a drive */
  readonly unit: string;
  /** what it is: "crank", "fuel pump", …; free words, by which others find it */
  readonly role: string;
  /** the face of the belt that lies on it */
  readonly contact: BeltContact;
  /** teeth of its pulley [–]; 0 for a smooth one */
  readonly teeth: Count;
  /** diameter of a smooth pulley's face [m]; not read for a toothed one */
  readonly diameter: Length;
  /** axis, to the right of the crank seen from the front [m] */
  readonly x: Length;
  /** axis, above the crank [m] */
  readonly y: Length;
  /** the way its shaft end points */
  readonly shaftEnd: "forward" | "rearward";
  /** the way it must turn, seen on its own shaft end */
  readonly mustTurn: Rotation | "either";
  /** speed below which it does not do its work [rev/s] */
  readonly lowestSpeed: RotationalSpeed;
  /** speed that it stands for long [rev/s] */
  readonly highestSpeed: RotationalSpeed;
}

/** Engine speeds at which a drive is looked at. */
export interface DriveSpeeds {
  readonly idle: RotationalSpeed;
  readonly rated: RotationalSpeed;
  readonly maximum: RotationalSpeed;
}

/** A drive: its members in belt order, crank first, its belt and its speeds. */
export interface DriveTrain {
  readonly members: readonly DriveMember[];
  readonly profile: ToothProfile;
  /** the way the crank turns, seen from the front of the engine */
  readonly crankRotation: Rotation;
  readonly speeds: DriveSpeeds;
}

/** A member as it runs. */
export interface DrivenMember extends DriveMember {
  /** its turns in one turn of the crank [–] */
  readonly ratio: Ratio;
  /** its speed at the engine's idle, rated and maximum speed [rev/s] */
  readonly at: DriveSpeeds;
  /** the way it turns, seen on its own shaft end */
  readonly turns: Rotation;
  /** whether that is the way it must turn */
  readonly turnsRightly: boolean;
}

/** A drive as it runs. */
export interface RunningDrive {
  readonly run: BeltRun;
  readonly members: readonly DrivenMember[];
  /** speed of the belt at rated and maximum engine speed [m/s] */
  readonly beltSpeed: { readonly rated: Velocity; readonly maximum: Velocity };
}

/**
 * Everything that a drive's layout fixes [ratios –, speeds rev/s, lengths m]: belt run, ratio, speeds and rotation.
 *
 * @param train members in belt order with the crank first, belt profile, rotation and engine speeds [rev/s]
 * @throws RangeError if the crank is not first, a name stands twice, or the belt cannot be laid (see beltRun)
 * @source tooth ratios and exact tangents; see driveRatio and beltRun
 * @example runningDrive({ profile: curvilinear8, crankRotation: "clockwise", speeds: { idle: 12, rated: 50, maximum: 55 }, members: [{ unit: "Crank", role: "crank", contact: "toothed", teeth: 50, x: 0, y: 0, shaftEnd: "forward", mustTurn: "either" }, { unit: "Pump", role: "pump", contact: "toothed", teeth: 40, x: 0, y: 0.3, shaftEnd: "forward", mustTurn: "either" }] }).members[1].at.rated // 62.5
 */
export function runningDrive({ members, profile, crankRotation, speeds }: DriveTrain): RunningDrive {
  const crank = crankOf(members);
  const run = beltRun({
    travel: crankRotation,
    pulleys: members.map((member) => ({
      name: member.unit,
      x: member.x,
      y: member.y,
      contact: member.contact,
      pitchRadius: pitchRadius(member, profile),
      ...(member.teeth > 0 && { teeth: member.teeth }),
    })),
  });
  const crankDiameter = pitchDiameter(profile.pitch, crank.teeth);
  const driven = members.map((member, i): DrivenMember => {
    const { pitchRadius: radius, sense } = run.pulleys[i]!;
    const ratio = (
      member.teeth > 0
        ? driveRatio({ driverTeeth: crank.teeth, drivenTeeth: member.teeth })
        : crankDiameter / (2 * radius)
    ) as Ratio;
    const turns = rotationSeenOnShaftEnd({ sense, crankRotation, shaftEnd: member.shaftEnd });
    return {
      ...member,
      ratio,
      at: {
        idle: (speeds.idle * ratio) as RotationalSpeed,
        rated: (speeds.rated * ratio) as RotationalSpeed,
        maximum: (speeds.maximum * ratio) as RotationalSpeed,
      },
      turns,
      turnsRightly: member.mustTurn === "either" || member.mustTurn === turns,
    };
  });
  return {
    run,
    members: driven,
    beltSpeed: {
      rated: beltSpeed(crankDiameter, speeds.rated),
      maximum: beltSpeed(crankDiameter, speeds.maximum),
    },
  };
}

/**
 * Turns, in one turn of the crank, of every toothed member with a role [–]; none, where the drive has no such member.
 * From the teeth alone: whether the belt fits is another question.
 *
 * @param members members of a drive, crank first
 * @param role the role looked for
 * @throws RangeError if the crank is not first
 * @source see driveRatio
 * @example ratiosOfRole([{ unit: "Crank", role: "crank", teeth: 50 }, { unit: "Pump", role: "pump", teeth: 40 }], "pump")[0] // 1.25
 */
export function ratiosOfRole(
  members: readonly Pick<DriveMember, "unit" | "role" | "teeth">[],
  role: string,
): readonly Ratio[] {
  const crank = crankOf(members);
  return members
    .filter((member) => member.role === role && member.teeth > 0)
    .map((member) => driveRatio({ driverTeeth: crank.teeth, drivenTeeth: member.teeth }));
}

/**
 * Turns of the one member with a role in one turn of the crank [–]; the first, where there are several.
 *
 * @param members members of a drive, crank first
 * @param role the role looked for
 * @throws RangeError if the crank is not first, or no toothed member has that role
 * @source see driveRatio
 * @example ratioOfRole([{ unit: "Crank", role: "crank", teeth: 50 }, { unit: "Pump", role: "pump", teeth: 60 }], "pump") // 0.8333333
 */
export function ratioOfRole(members: readonly Pick<DriveMember, "unit" | "role" | "teeth">[], role: string): Ratio {
  const ratio = ratiosOfRole(members, role)[0];
  if (ratio !== undefined) return ratio;
  throw new RangeError(`ratioOfRole: no toothed pulley of the belt has the role ${role}; it must have one`);
}

function crankOf<Member extends Pick<DriveMember, "unit" | "role" | "teeth">>(members: readonly Member[]): Member {
  const crank = members[0];
  if (crank?.role === "crank" && crank.teeth > 0) return crank;
  throw new RangeError(
    `drive: the first pulley is ${crank ? crank.unit : "missing"}; it must be the crank's, with teeth`,
  );
}

function pitchRadius(member: DriveMember, profile: ToothProfile): Length {
  if (member.teeth > 0) return (pitchDiameter(profile.pitch, member.teeth) / 2) as Length;
  const radius = (member.diameter / 2) as Length;
  return member.contact === "back" ? backIdlerPitchRadius(profile, radius) : flatIdlerPitchRadius(profile, radius);
}
