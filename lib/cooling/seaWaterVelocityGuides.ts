import type { Length, Velocity } from "../quantity";

/** A velocity that sea water should not pass, and for what. */
export interface SeaWaterVelocityGuide {
  /** pipe or tube, in the words of the trade */
  readonly item: string;
  /** highest velocity for lasting service [m/s] */
  readonly highestVelocity: Velocity;
  /** smallest bore for which the figure is given [m]; 0 where none is named */
  readonly smallestBore: Length;
  /** where the figure comes from */
  readonly source: string;
}

/**
 * Highest velocities of clean sea water. The copper–nickel pipe figures hold for bores of 100 mm and larger ONLY:
 * smaller bores, tight bends, sand, sulphides in polluted harbours and standing water all call for less. For small
 * craft, whose pipes are nearly always below 100 mm, they are ceilings never to be aimed at.
 */
export const seaWaterVelocityGuides: readonly SeaWaterVelocityGuide[] = [
  {
    item: "90/10 copper–nickel pipe",
    highestVelocity: 3.5 as Velocity,
    smallestBore: 0.1 as Length,
    source: "BS MA 18 (1973), as quoted by a public page on copper–nickel",
  },
  {
    item: "70/30 copper–nickel pipe",
    highestVelocity: 4 as Velocity,
    smallestBore: 0.1 as Length,
    source: "BS MA 18 (1973), as quoted by a public page on copper–nickel",
  },
  {
    item: "70/30 copper–nickel exchanger tube",
    highestVelocity: 3 as Velocity,
    smallestBore: 0 as Length,
    source: "public page on copper–nickel",
  },
  {
    item: "90/10 copper–nickel exchanger tube",
    highestVelocity: 2.4 as Velocity,
    smallestBore: 0 as Length,
    source: "common practice, no source (from memory)",
  },
  {
    item: "aluminium-brass exchanger tube",
    highestVelocity: 2 as Velocity,
    smallestBore: 0 as Length,
    source: "common practice, no source (from memory)",
  },
  {
    item: "titanium exchanger tube or plate",
    highestVelocity: 5 as Velocity,
    smallestBore: 0 as Length,
    source: "common practice, no source (from memory)",
  },
  {
    item: "copper pipe",
    highestVelocity: 1 as Velocity,
    smallestBore: 0 as Length,
    source: "common practice, no source (from memory)",
  },
];

/**
 * Lowest velocity wanted in copper–nickel [m/s], below which silt settles and growth takes hold. A public page on
 * copper–nickel says 1; a second guideline says 0.5 to 1.
 */
export const lowestSeaWaterVelocity = 1 as Velocity;

/** Highest velocity in a copper–nickel fire main that runs now and then [m/s]; public page on copper–nickel. */
export const fireMainVelocity = 12 as Velocity;
