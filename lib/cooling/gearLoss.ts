import { type Fraction, type Power, requireNotNegative, requirePositive, requireWithin } from "../quantity";

export interface GearLossInputs {
  /** power into the gear [W], 0 or above */
  readonly power: Power;
  /** power out of the gear over power in [–], above 0 to 1 */
  readonly efficiency: Fraction;
  /** share of the loss that the oil carries to its cooler, the rest leaving by the case [–], 0 to 1; 1 if left out */
  readonly shareToOil?: Fraction | undefined;
}

/**
 * Heat that a reduction gear's oil must carry to its cooler [W]: Q = s (1 − η) P.
 * Marine reversing gears lose about 2–4 % of full power (common practice, no source). The loss is not quite
 * proportional to power: churning stays at light load, so size the cooler at full power.
 *
 * @param gear power [W], efficiency [–], share of the loss to oil [–]
 * @throws RangeError if an argument is outside its span
 * @source energy balance
 * @example gearOilHeat({ power: 300000, efficiency: 0.97 }) // 9000
 */
export function gearOilHeat({ power, efficiency, shareToOil = 1 as Fraction }: GearLossInputs): Power {
  requireNotNegative("gearOilHeat: power", power, "W");
  requirePositive("gearOilHeat: efficiency", efficiency);
  requireWithin("gearOilHeat: efficiency", efficiency, [0, 1]);
  requireWithin("gearOilHeat: shareToOil", shareToOil, [0, 1]);
  return (shareToOil * (1 - efficiency) * power) as Power;
}
