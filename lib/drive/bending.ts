import { type Frequency, type Length, requireNotNegative, type Velocity } from "../quantity";
import type { BeltRun } from "./beltLayout";

/** How often and how sharply a belt is bent. */
export interface Bending {
  /** bends that each piece of the belt goes through in a second [Hz] */
  readonly bends: Frequency;
  /** of these, bends over the back [Hz] */
  readonly backBends: Frequency;
  /** name of the pulley around which it bends most sharply */
  readonly sharpest: string;
  /** pitch diameter of that pulley [m] */
  readonly smallestDiameter: Length;
}

/**
 * How often a piece of belt is bent [Hz], z v / L over z pulleys, and where most sharply [m].
 * Fatigue falls steeply with diameter and with every bend the other way; how many bends a belt lives through only its
 * maker can say.
 *
 * @param run a belt drawn tight, lengths in [m]
 * @param beltSpeed speed of the belt [m/s], 0 or above
 * @throws RangeError if the speed is negative
 * @source definition
 * @example bending(beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), 9.14159).bends // 20
 */
export function bending({ pulleys, length }: BeltRun, beltSpeed: Velocity): Bending {
  requireNotNegative("bending: beltSpeed", beltSpeed, "m/s");
  const turns = beltSpeed / length;
  const back = pulleys.filter(({ contact }) => contact === "back").length;
  const sharpest = pulleys.reduce((least, pulley) => (pulley.pitchRadius < least.pitchRadius ? pulley : least));
  return {
    bends: (pulleys.length * turns) as Frequency,
    backBends: (back * turns) as Frequency,
    sharpest: sharpest.name,
    smallestDiameter: (2 * sharpest.pitchRadius) as Length,
  };
}
