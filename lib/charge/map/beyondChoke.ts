/** Where a speed line ends at choke, and how it comes in there. */
export interface ChokeEnd {
  /** corrected flow at choke [kg/s] */
  readonly flow: number;
  /** logarithm of the pressure ratio there [–] */
  readonly logRatio: number;
  /** fall of that logarithm with flow there [s/kg], 0 or above */
  readonly steepness: number;
  /** corrected flow that chokes the standing throat [kg/s] */
  readonly throatFlow: number;
}

/** Limit of the throttling, as a logarithm of the ratio: no trial of a solver takes all the pressure. */
const mostThrottled = 4;

/**
 * Logarithm of the pressure ratio beyond choke [–]: the line goes on along its tangent, and levels off at a little
 * below a ratio of 1, where the wheel is no more than a throttle that costs the velocity head of its throat.
 * No measurement stands behind it: it keeps a solver on its way, and says that such a point is no place to be.
 */
export function logRatioBeyondChoke(end: ChokeEnd, flow: number): number {
  const past = flow - end.flow;
  const fall = 1.3 * end.logRatio + 0.02;
  const tangent = fall > 0 ? fall * Math.expm1((-end.steepness * past) / fall) : 0;
  // half of γ M², M ≈ 0.58 of the flow over that which chokes the throat
  const throttled = (0.7 * 0.58 ** 2 * (flow * flow - end.flow * end.flow)) / (end.throatFlow * end.throatFlow);
  return end.logRatio + tangent - throttled / (1 + throttled / mostThrottled);
}
