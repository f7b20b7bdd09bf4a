import {
  type Count,
  type Fraction,
  type Ratio,
  requirePositive,
  type Temperature,
  type TemperatureDifference,
} from "../quantity";
import type { FlowArrangement } from "./arrangement";
import { transferUnitsFor } from "./transferUnits";

export interface EndTemperatures {
  /** temperature of the hot stream going in [K], above 0 */
  readonly hotInlet: Temperature;
  /** temperature of the hot stream coming out [K], above coldInlet */
  readonly hotOutlet: Temperature;
  /** temperature of the cold stream going in [K], above 0 */
  readonly coldInlet: Temperature;
  /** temperature of the cold stream coming out [K], coldInlet to below hotInlet */
  readonly coldOutlet: Temperature;
}

export interface LogMeanInputs extends EndTemperatures {
  readonly arrangement: "counterflow" | "parallelFlow";
}

export interface CorrectionInputs extends EndTemperatures {
  readonly arrangement: FlowArrangement;
  /** shells in series, whole number, more than 1 for shellAndTube only [–], 1 to 12 */
  readonly shells?: Count | undefined;
}

/**
 * Logarithmic mean of the temperature differences at the two ends of an exchanger [K]: (a − b)/ln(a/b), a where equal.
 * Heat = UA times this, for pure counterflow and pure parallel flow with constant properties.
 *
 * @param ends arrangement, hot and cold temperatures at both ends [K]
 * @throws RangeError if the streams would meet or cross in temperature at an end
 * @source definition; Incropera et al., Fundamentals of Heat and Mass Transfer, §11.3 (section from memory)
 * @example logMeanTemperatureDifference({ arrangement: "counterflow", hotInlet: 368.15, hotOutlet: 353.15, coldInlet: 298.15, coldOutlet: 318.15 }) // 52.4603
 */
export function logMeanTemperatureDifference(ends: LogMeanInputs): TemperatureDifference {
  const { arrangement, hotInlet, hotOutlet, coldInlet, coldOutlet } = ends;
  const along = arrangement === "parallelFlow";
  const first = along ? hotInlet - coldInlet : hotInlet - coldOutlet;
  const second = along ? hotOutlet - coldOutlet : hotOutlet - coldInlet;
  requirePositive(`logMeanTemperatureDifference: ${along ? "inlet" : "hot end"} difference`, first, "K");
  requirePositive(`logMeanTemperatureDifference: ${along ? "outlet" : "cold end"} difference`, second, "K");
  if (first === second) return first as TemperatureDifference;
  return ((second - first) / Math.log1p((second - first) / first)) as TemperatureDifference;
}

/**
 * Correction factor F to the counterflow log mean for another arrangement [–], above 0 to 1: transfer units that
 * counterflow would need over those that this arrangement needs between the same four temperatures.
 * For shell and tube this equals the usual closed form in P and R, and for any other arrangement its chart. A factor
 * below about 0.75–0.8 tells that small errors in temperature cost much surface: take more shells.
 *
 * @param ends arrangement, hot and cold temperatures at both ends [K], shells
 * @throws RangeError if no surface, however large, reaches these temperatures in this arrangement
 * @source definition of F; Fakheri, J. Heat Transfer 125 (2003) 527–530 for the shell-and-tube form (from memory); the
 * 0.75–0.8 is common practice, no source
 * @example meanDifferenceCorrection({ arrangement: "shellAndTube", hotInlet: 368.15, hotOutlet: 353.15, coldInlet: 298.15, coldOutlet: 318.15 }) // 0.981551
 */
export function meanDifferenceCorrection(ends: CorrectionInputs): Fraction {
  const { arrangement, hotInlet, hotOutlet, coldInlet, coldOutlet, shells } = ends;
  const hotDrop = hotInlet - hotOutlet;
  const coldRise = coldOutlet - coldInlet;
  const reach = hotInlet - coldInlet;
  requirePositive("meanDifferenceCorrection: hotInlet − coldInlet", reach, "K");
  // The stream of smaller capacity rate changes most, so the larger change belongs to it.
  const largest = Math.max(hotDrop, coldRise);
  requirePositive("meanDifferenceCorrection: larger temperature change", largest, "K");
  const effectiveness = (largest / reach) as Fraction;
  const capacityRatio = (Math.min(hotDrop, coldRise) / largest) as Ratio;
  const counterflow = transferUnitsFor({ arrangement: "counterflow", effectiveness, capacityRatio });
  return (counterflow / transferUnitsFor({ arrangement, effectiveness, capacityRatio, shells })) as Fraction;
}
