import { type Count, type Ratio, requirePositive } from "../quantity";
import { requireTeeth } from "./pulley";

/** Ratios wanted, and the teeth that pulleys may have. */
export interface ToothPairInputs {
  /** lowest and highest driven turns per driver turn [–], above 0 */
  readonly ratios: readonly [lowest: Ratio, highest: Ratio];
  /** fewest and most teeth of the driving pulley [–], whole */
  readonly driver: readonly [fewest: Count, most: Count];
  /** fewest and most teeth of the driven pulley [–], whole */
  readonly driven: readonly [fewest: Count, most: Count];
}

/** Two pulleys and the ratio that they give. */
export interface ToothPair {
  readonly driverTeeth: Count;
  readonly drivenTeeth: Count;
  readonly ratio: Ratio;
}

/**
 * Every pair of toothed pulleys whose ratio lies within bounds [–], by the driver's teeth and then by the driven's.
 * An empty list is an answer: no pair does it.
 *
 * @param wanted lowest and highest ratio, fewest and most teeth of either pulley [–]
 * @throws RangeError if a ratio is not above 0, or teeth are not whole numbers that a pulley may have
 * @source enumeration of whole teeth
 * @example toothPairs({ ratios: [1.99, 2.01], driver: [50, 52], driven: [22, 40] }).length // 2
 */
export function toothPairs({ ratios: [lowest, highest], driver, driven }: ToothPairInputs): readonly ToothPair[] {
  requirePositive("toothPairs: lowest ratio", lowest);
  requirePositive("toothPairs: highest ratio", highest);
  for (const teeth of [...driver, ...driven]) requireTeeth("toothPairs: teeth", teeth);
  const pairs: ToothPair[] = [];
  for (let z1 = driver[0] as number; z1 <= driver[1]; z1++) {
    // A grain of 1e-9 keeps a ratio that is met exactly.
    const fewest = Math.max(driven[0], Math.ceil(z1 / highest - 1e-9));
    const most = Math.min(driven[1], Math.floor(z1 / lowest + 1e-9));
    for (let z2 = fewest; z2 <= most; z2++) {
      pairs.push({ driverTeeth: z1 as Count, drivenTeeth: z2 as Count, ratio: (z1 / z2) as Ratio });
    }
  }
  return pairs;
}
