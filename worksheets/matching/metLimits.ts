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
 * Powers at which limits are met, along the straight line between two solved points at one speed [W].
 *
 * @param light a point at less load
 * @param full a point at more load
 */
export function metLimits(light: OperatingPoint, full: OperatingPoint): MetLimits {
  const met: MetLimit[] = [];
  const always: LimitMargin[] = [];
  full.margins.forEach((limit, i) => {
    const before = light.margins[i]!.margin;
    const fall = before - limit.margin;
    if (fall > unfelt) {
      const brakePower = light.brakePower + (before / fall) * (full.brakePower - light.brakePower);
      met.push({ id: limit.id, name: limit.name, brakePower: Math.max(0, brakePower) as Power });
    } else if (limit.margin < past && before < past) always.push(limit);
  });
  return { inOrder: met.sort((a, b) => a.brakePower - b.brakePower), always };
}
