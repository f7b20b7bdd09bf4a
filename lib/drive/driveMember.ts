import type { Count, Length, Ratio, RotationalSpeed } from "../quantity";
import type { BeltContact, Rotation } from "./beltLayout";
import { type BeltSection, isToothed } from "./beltSection";
import { backIdlerPitchRadius, flatIdlerPitchRadius, pitchDiameter } from "./pulley";
import { driveRatio } from "./speeds";

/** What sizes a pulley. */
export interface PulleySize {
  /** what the page calls it; unique on a belt */
  readonly unit: string;
  /** what it is: "crank", "fuelPump", …; free words, by which others find it */
  readonly role: string;
  /** the face of the belt that lies on it */
  readonly contact: BeltContact;
  /** teeth of its pulley [–]; 0 for a smooth or ribbed one */
  readonly teeth: Count;
  /** diameter of a smooth pulley's face, or effective diameter of a ribbed one [m]; not read for a toothed one */
  readonly diameter: Length;
}

/** A pulley of a drive and the unit behind it. */
export interface DriveMember extends PulleySize {
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
  /** speed at which it may come apart [rev/s]; 0 where none is stated */
  readonly burstSpeed: RotationalSpeed;
}

/** Share of its speed that a ribbed belt loses to creep: common practice, no source. */
const ribbedSlip = 0.01;

/**
 * Radius at which a belt's pitch line or cord passes a pulley [m]. A toothed pulley by its teeth; a smooth one by its
 * face and what of the belt lies between; a ribbed one by its effective diameter.
 *
 * @param section the belt in section, lengths in [m]
 * @param pulley its teeth [–], diameter [m] and the face of the belt on it
 * @throws RangeError if there are teeth on a ribbed belt, too few or too many of them, or the diameter is not above 0
 * @source see pitchDiameter and backIdlerPitchRadius; ISO 9981 for ribbed belts (from memory)
 * @example memberPitchRadius(ribbedPK, { unit: "Fan", role: "fan", contact: "toothed", teeth: 0, diameter: 0.12 }) // 0.0615
 */
export function memberPitchRadius(section: BeltSection, pulley: PulleySize): Length {
  const { unit, contact, teeth, diameter } = pulley;
  if (!isToothed(section)) {
    if (teeth > 0) throw new RangeError(`${unit}: it has ${teeth} teeth; on a ribbed belt give a diameter and 0 teeth`);
    requireDiameter(pulley);
    return (diameter / 2 + (contact === "back" ? section.backDistance : section.cordOffset)) as Length;
  }
  if (teeth > 0) {
    if (contact === "back") throw new RangeError(`${unit}: it has ${teeth} teeth on the back of its belt; give 0 teeth`);
    return (pitchDiameter(section.pitch, teeth) / 2) as Length;
  }
  requireDiameter(pulley);
  const radius = (diameter / 2) as Length;
  return contact === "back" ? backIdlerPitchRadius(section, radius) : flatIdlerPitchRadius(section, radius);
}

/**
 * Turns of a pulley in one turn of the crank [–]: by teeth where both have them, else by the radii on which the belt
 * rolls, less 1 % of creep where a ribbed belt drives it. From the sizes alone: whether the belt fits is another question.
 *
 * @param section the belt in section
 * @param crank size of the crank's pulley
 * @param pulley size of the pulley in question
 * @throws RangeError as memberPitchRadius does
 * @source see driveRatio and ribbedDriveRatio; the creep is common practice, no source
 * @example memberRatio(curvilinear8, { unit: "Crank", role: "crank", contact: "toothed", teeth: 50 }, { unit: "Pump", role: "pump", contact: "toothed", teeth: 40 }) // 1.25
 */
export function memberRatio(section: BeltSection, crank: PulleySize, pulley: PulleySize): Ratio {
  if (crank.teeth > 0 && pulley.teeth > 0 && isToothed(section)) {
    return driveRatio({ driverTeeth: crank.teeth, drivenTeeth: pulley.teeth });
  }
  const rolling = memberPitchRadius(section, crank) / memberPitchRadius(section, pulley);
  const slips = !isToothed(section) && pulley.role !== "idler" && pulley !== crank;
  return (slips ? rolling * (1 - ribbedSlip) : rolling) as Ratio;
}

/**
 * The crank's pulley of a belt: its first member.
 *
 * @param belt what the page calls the belt
 * @param members members of a belt, crank first
 * @throws RangeError if the first is not the crank's
 * @source a belt is listed from its crank pulley on
 * @example crankOf("Belt A", [{ unit: "Crank", role: "crank", teeth: 50 }]).teeth // 50
 */
export function crankOf<Member extends PulleySize>(belt: string, members: readonly Member[]): Member {
  const crank = members[0];
  if (crank?.role === "crank") return crank;
  throw new RangeError(
    `${belt}: its first pulley is ${crank ? crank.unit : "missing"}; it must be the crank's, from which the belt is listed`,
  );
}


function requireDiameter({ unit, diameter }: PulleySize): void {
  if (diameter > 0 && diameter < Number.POSITIVE_INFINITY) return;
  throw new RangeError(`${unit}: its diameter is ${diameter} m; a pulley without teeth must have one above 0`);
}
