import { type Count, type Ratio, requireWithin, type Span } from "../quantity";

/**
 * How the two streams of an exchanger pass each other.
 *
 * `crossflowUnmixed` is the exact series and `crossflowUnmixedApproximate` the common closed form for the same core.
 * In the two crossflows with one mixed stream the name says whether the stream of smaller or of larger heat capacity
 * rate is the mixed one. `shellAndTube` has one shell pass and two (or 4, 6, …) tube passes in each shell.
 */
export type FlowArrangement =
  | "counterflow"
  | "parallelFlow"
  | "crossflowUnmixed"
  | "crossflowUnmixedApproximate"
  | "crossflowMinimumMixed"
  | "crossflowMaximumMixed"
  | "shellAndTube";

/** The core of an exchanger: how it is passed, and how it is balanced. */
export interface ExchangerCore {
  readonly arrangement: FlowArrangement;
  /** smaller over larger heat capacity rate, Cmin/Cmax [–], 0 (one side boils, condenses or is vast) to 1 */
  readonly capacityRatio: Ratio;
  /** shells in series, whole number, more than 1 for shellAndTube only [–], 1 to 12 */
  readonly shells?: Count | undefined;
}

/** Span of transfer units, UA/Cmin. No exchanger comes near the upper end. */
export const transferUnitsSpan: Span = [0, 500];

/** Span of Cmin/Cmax [–]. */
export const capacityRatioSpan: Span = [0, 1];

/** Capacity ratio below which the larger stream might as well be endless: what it changes is below the last digit. */
export const vast = 1e-15;

/** Refuses a core that cannot be; returns its number of shells. */
export function shellsOf(caller: string, { arrangement, capacityRatio, shells }: ExchangerCore): number {
  requireWithin(`${caller}: capacityRatio`, capacityRatio, capacityRatioSpan);
  const count = shells ?? 1;
  requireWithin(`${caller}: shells`, count, arrangement === "shellAndTube" ? [1, 12] : [1, 1]);
  if (!Number.isInteger(count)) throw new RangeError(`${caller}: shells is ${count}; it must be a whole number`);
  return count;
}
