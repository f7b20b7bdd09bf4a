import type { Rotation } from "./beltLayout";
import type { DriveMember } from "./driveMember";

/** A driven unit as it turns. */
export interface TurningUnit extends Pick<DriveMember, "unit" | "contact" | "shaftEnd" | "mustTurn" | "teeth"> {
  /** the way it turns, seen on its own shaft end */
  readonly turns: Rotation;
}

/**
 * Ways to cure a unit that is driven backwards, in words; none where it turns as it must.
 * Each change reverses it once: the other face of the belt, the other face of the plate, or a unit of the other hand.
 *
 * @param unit how it turns and must turn, the face of its belt and where its shaft end points
 * @source geometry: contact with the other face, and a mirrored view, each reverse rotation
 * @example rotationCures({ unit: "Fuel pump", contact: "toothed", shaftEnd: "forward", mustTurn: "clockwise", teeth: 60, turns: "counterclockwise" }).length // 3
 */
export function rotationCures({ unit, contact, shaftEnd, mustTurn, teeth, turns }: TurningUnit): readonly string[] {
  if (mustTurn === "either" || mustTurn === turns) return [];
  const toothed = contact === "toothed";
  const face = toothed
    ? `run it on the back of the belt${teeth > 0 ? ", with a smooth pulley, if its load is small enough for friction" : ""}`
    : "run it on the toothed or ribbed face of the belt";
  return [
    `hang it on the other face of the plate, with its shaft end ${shaftEnd === "forward" ? "rearward" : "forward"}`,
    face,
    `take a ${unit.toLowerCase()} built to turn ${turns}`,
  ];
}
