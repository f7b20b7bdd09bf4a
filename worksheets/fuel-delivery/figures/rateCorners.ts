/** Corners of the rate of injection: crank angle after its start, and rate over that of the open nozzle. */
export interface RateCorner {
  readonly angle: number;
  readonly rate: number;
}

/**
 * The rate of injection as the sheet takes it: a trapezium with like ramps, or a triangle if the needle turns back
 * before it is fully open.
 *
 * @param angle crank angle from first to last fuel [rad]
 * @param ramps crank angle of both ramps together [rad]
 */
export function rateCorners(angle: number, ramps: number): readonly RateCorner[] {
  const rise = Math.min(ramps, angle) / 2;
  const rate = ramps > angle ? angle / ramps : 1;
  return [
    { angle: 0, rate: 0 },
    { angle: rise, rate },
    { angle: angle - rise, rate },
    { angle, rate: 0 },
  ];
}
