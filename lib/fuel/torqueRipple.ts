import { type Count, type Ratio, requireWithin } from "../quantity";

/** Torque of a plunger pump over one turn, against its mean. */
export interface TorqueRipple {
  /** highest torque over the mean [–] */
  readonly peak: Ratio;
  /** lowest torque over the mean [–] */
  readonly trough: Ratio;
}

/**
 * Highest and lowest torque of a plunger pump over its mean [–]. Plungers on an even cam of sine shape press one after
 * the other; each asks for a half wave, and m = ⌊(z + 1)/2⌋ of them together for (π/z) sin(m π/z)/sin(π/z) of the mean.
 * Lobes do not matter, only how many strokes follow each other evenly. The squeeze at the start of a stroke, which cuts
 * the wave's front, and strokes metered below full are left out: both leave the peak as it is.
 *
 * @param plungers plungers that press one after the other, evenly [–], 1 to 24, whole
 * @throws RangeError if the plungers are no whole number within the span
 * @source sum of half waves; J. Ivantysyn, M. Ivantysynova, Hydrostatic Pumps and Motors (2001), on flow pulsation (from memory)
 * @example torqueRipple(3).peak // 1.0472
 */
export function torqueRipple(plungers: Count): TorqueRipple {
  requireWithin("torqueRipple: plungers", plungers, [1, 24]);
  if (!Number.isInteger(plungers)) {
    throw new RangeError(`torqueRipple: plungers is ${plungers}; it must be a whole number`);
  }
  const pressing = Math.floor((plungers + 1) / 2);
  const step = Math.PI / plungers;
  const crest = plungers === 1 ? 1 : Math.sin(pressing * step) / Math.sin(step);
  // Between two crests of the sum lies one step of an even pump, half a step of an odd one.
  const apart = plungers % 2 === 0 ? step : step / 2;
  const trough = plungers <= 2 ? 0 : crest * Math.cos(apart);
  return { peak: (step * crest) as Ratio, trough: (step * trough) as Ratio };
}
