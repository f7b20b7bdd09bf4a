import type { DriveMember } from "../../../lib/drive";
import type { Plain } from "./plain";

/** A unit of a belt in plain numbers, at the origin and without limits unless it says otherwise. */
export const member = (unit: string, own: Partial<Plain<DriveMember>>): Plain<DriveMember> => ({
  unit,
  role: unit,
  contact: "toothed",
  teeth: 0,
  diameter: 0.1,
  x: 0,
  y: 0,
  shaftEnd: "forward",
  mustTurn: "either",
  lowestSpeed: 0,
  highestSpeed: 0,
  burstSpeed: 0,
  ...own,
});
