import {
  type ElectricCurrent,
  type Fraction,
  type Power,
  requireNotNegative,
  requireWithin,
} from "../quantity";

/** A load that runs for a share of the time. */
export interface DutyLoad {
  /** current while it is on [A], 0 or above */
  readonly current: ElectricCurrent;
  /** share of the time that it is on [–], 0 to 1 */
  readonly share: Fraction;
}

/**
 * Mean current of loads that are on for a share of the time [A]: Σ I x. What is drawn at once may be more.
 *
 * @param loads currents [A] and shares of the time [–]
 * @throws RangeError if a current is negative or a share outside 0 to 1
 * @source definition of the mean
 * @example meanCurrent([{ current: 20, share: 1 }, { current: 30, share: 0.5 }]) // 35
 */
export function meanCurrent(loads: readonly DutyLoad[]): ElectricCurrent {
  return loads.reduce((sum, { current, share }) => {
    requireNotNegative("meanCurrent: current", current, "A");
    requireWithin("meanCurrent: share", share, [0, 1]);
    return sum + current * share;
  }, 0) as ElectricCurrent;
}

/**
 * Heat that hydraulic oil takes up [W]: the power at the pump's shaft less the work that leaves with its loads.
 *
 * @param shaftPower power at the pump's shaft [W], 0 or above
 * @param usefulPower work that the loads carry away [W], 0 up to the shaft power
 * @throws RangeError if a power is negative, or the loads carry away more than the shaft takes
 * @source first law
 * @example hydraulicHeat(4900, 220) // 4680
 */
export function hydraulicHeat(shaftPower: Power, usefulPower: Power): Power {
  requireNotNegative("hydraulicHeat: shaftPower", shaftPower, "W");
  requireNotNegative("hydraulicHeat: usefulPower", usefulPower, "W");
  if (usefulPower > shaftPower) {
    throw new RangeError(
      `hydraulicHeat: usefulPower is ${Number(usefulPower.toPrecision(4))} W; the pump's shaft takes only ${Number(shaftPower.toPrecision(4))} W: loads must be fewer or their shares smaller, or the working pressure higher`,
    );
  }
  return (shaftPower - usefulPower) as Power;
}
