import { type Fraction, type Power, requireNotNegative, requirePositive } from "../quantity";

/** A part of an engine's running hours. */
export interface DutyPart {
  /** part of the running hours [–], 0 or above; the parts need not add up to 1 */
  readonly share: number;
  /** power at the flywheel [W], 0 or above */
  readonly power: Power;
}

/**
 * Load factor of a duty [–]: mean power over the hours, over the rated one. What ratings are granted by.
 *
 * @param parts shares of the running hours, with power [–, W]
 * @param ratedPower power against which it is taken [W], above 0
 * @throws RangeError if an argument is outside its span, or the shares are all zero
 * @source definition
 * @example dutyLoadFactor([{ share: 0.5, power: 300000 }, { share: 0.5, power: 100000 }], 400000) // 0.5
 */
export function dutyLoadFactor(parts: readonly DutyPart[], ratedPower: Power): Fraction {
  requirePositive("dutyLoadFactor: ratedPower", ratedPower, "W");
  let [time, work] = [0, 0];
  for (const { share, power } of parts) {
    requireNotNegative("dutyLoadFactor: share", share);
    requireNotNegative("dutyLoadFactor: power", power, "W");
    time += share;
    work += share * power;
  }
  if (!(time > 0)) throw new RangeError("dutyLoadFactor: no part has any running hours; give one a share");
  return (work / time / ratedPower) as Fraction;
}
