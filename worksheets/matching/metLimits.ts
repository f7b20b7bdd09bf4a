import type { LimitMargin, OperatingPoint } from "../../lib/charge";
import type { Power } from "../../lib/quantity";

/** A limit, and the power at which it would be met if no other were. */
export interface MetLimit {
  readonly id: string;
  readonly name: string;
  /** [W] */
  readonly brakePower: Power;
}

/** The limits of a build at a speed, in the order in which more load meets them. */
export interface MetLimits {
  readonly inOrder: readonly MetLimit[];
  /** limits that are passed whatever the load, such as a blower that turns too fast */
  readonly always: readonly LimitMargin[];
}

/** Fall of a margin that is none: a limit that does not feel the load. */
const unfelt = 1e-9;

/** A margin this far below nothing is past, and not rounding. */
const past = -1e-7;

/**
 * Powers at which limits are met, along straight lines from each solved point at a speed to the next [W]: where the
 * margin first falls through zero, and beyond the points along the first line or the last.
 *
 * @param points two or more, by rising load
 */
export function metLimits(points: readonly OperatingPoint[]): MetLimits {
  const met: MetLimit[] = [];
  const always: LimitMargin[] = [];
  points.at(-1)!.margins.forEach((limit, i) => {
    const margins = points.map((point) => point.margins[i]!.margin);
    if (margins.every((margin) => margin < past) && margins[0]! - margins.at(-1)! <= unfelt) {
      always.push(limit);
      return;
    }
    const crossed = margins.findIndex((margin, j) => j > 0 && margins[j - 1]! >= 0 && margin < 0);
    const end = crossed > 0 ? crossed : margins[0]! < 0 ? 1 : margins.length - 1;
    const [before, after] = [margins[end - 1]!, margins[end]!];
    if (before - after <= unfelt) return;
    const [from, to] = [points[end - 1]!.brakePower, points[end]!.brakePower];
    const brakePower = from + (before / (before - after)) * (to - from);
    met.push({ id: limit.id, name: limit.name, brakePower: Math.max(0, brakePower) as Power });
  });
  return { inOrder: met.sort((a, b) => a.brakePower - b.brakePower), always };
}
