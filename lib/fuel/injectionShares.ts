import {
  type Count,
  type Fraction,
  type Mass,
  requireNotNegative,
  requireWithin,
  type VolumePerStroke,
} from "../quantity";

/** Fuel of one stroke, and how it is shared between injections. */
export interface InjectionShares {
  /** fuel of one stroke, all injections together [m³], 0 or above */
  readonly volumePerStroke: VolumePerStroke;
  /** part that goes in before the main injection [–], 0 to 1 */
  readonly pilotShare: Fraction;
  /** part that goes in after it [–], 0 to 1; with the pilot at most 1 */
  readonly afterShare: Fraction;
}

/** The injections of one stroke [m³]. */
export interface SharedInjections {
  readonly pilot: VolumePerStroke;
  readonly main: VolumePerStroke;
  readonly after: VolumePerStroke;
}

/**
 * Fuel of pilot, main and after injection [m³]: shares of the stroke's fuel; the main one gets what is left.
 *
 * @param shares fuel of one stroke [m³], pilot and after share [–]
 * @throws RangeError if an argument lies outside its span or both shares together exceed 1
 * @source definition
 * @example sharedInjections({ volumePerStroke: 250e-9, pilotShare: 0.04, afterShare: 0.1 }).main // 2.15e-7
 */
export function sharedInjections({ volumePerStroke, pilotShare, afterShare }: InjectionShares): SharedInjections {
  requireNotNegative("sharedInjections: volumePerStroke", volumePerStroke, "m³");
  requireWithin("sharedInjections: pilotShare", pilotShare, [0, 1]);
  requireWithin("sharedInjections: afterShare", afterShare, [0, 1]);
  requireWithin("sharedInjections: pilotShare and afterShare together", pilotShare + afterShare, [0, 1]);
  const pilot = volumePerStroke * pilotShare;
  const after = volumePerStroke * afterShare;
  return {
    pilot: pilot as VolumePerStroke,
    main: (volumePerStroke - pilot - after) as VolumePerStroke,
    after: after as VolumePerStroke,
  };
}

/** Cylinders that do not share quite alike. */
export interface UnevenCylinders {
  /** fuel of one stroke, mean of all cylinders [kg], 0 or above */
  readonly meanMass: Mass;
  /** what the fullest cylinder gets above the mean, over the mean [–], 0 to 0.5 */
  readonly imbalance: Fraction;
  /** number of cylinders [–], 1 to 64 */
  readonly cylinders: Count;
}

/**
 * Fuel of the fullest cylinder, and what is left on average for each of the others [kg]: m (1 + δ) and m (1 − δ/(z − 1)).
 * A single cylinder has nobody to take from, and gets the mean.
 *
 * @param uneven mean fuel of one stroke [kg], imbalance and cylinders [–]
 * @throws RangeError if an argument lies outside its span, or the cylinders are no whole number
 * @source mass balance
 * @example fullestCylinder({ meanMass: 200e-6, imbalance: 0.04, cylinders: 6 }).fullest // 0.000208
 */
export function fullestCylinder({ meanMass, imbalance, cylinders }: UnevenCylinders): {
  readonly fullest: Mass;
  readonly others: Mass;
} {
  requireNotNegative("fullestCylinder: meanMass", meanMass, "kg");
  requireWithin("fullestCylinder: imbalance", imbalance, [0, 0.5]);
  requireWithin("fullestCylinder: cylinders", cylinders, [1, 64]);
  if (!Number.isInteger(cylinders)) {
    throw new RangeError(`fullestCylinder: cylinders is ${cylinders}; it must be a whole number`);
  }
  if (cylinders === 1) return { fullest: meanMass, others: meanMass };
  return {
    fullest: (meanMass * (1 + imbalance)) as Mass,
    others: (meanMass * (1 - imbalance / (cylinders - 1))) as Mass,
  };
}
