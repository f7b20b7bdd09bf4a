import { type Ratio, type RotationalSpeed, requireNotNegative, requirePositive } from "../quantity";

/** What a unit asks for, and the engine's speeds. */
export interface UnitWindow {
  /** speed below which it does not do its work [rev/s], 0 where none is stated */
  readonly lowestSpeed: RotationalSpeed;
  /** speed that it stands for long [rev/s], 0 where none is stated */
  readonly highestSpeed: RotationalSpeed;
  /** speed at which it may come apart [rev/s], 0 where none is stated */
  readonly burstSpeed: RotationalSpeed;
  /** engine speeds at which these are held against it [rev/s], above 0 */
  readonly engine: {
    readonly idle: RotationalSpeed;
    readonly maximum: RotationalSpeed;
    readonly overspeed: RotationalSpeed;
  };
}

/** Drive ratios that suit a unit over the whole of the engine's speeds, in its turns per crank turn. */
export interface AllowedRatios {
  readonly lowest: Ratio;
  /** infinite where no speed limits it */
  readonly highest: Ratio;
  /** which speed sets the highest */
  readonly set: "highest speed" | "burst speed" | "nothing";
  /** true where no ratio does; then the lowest exceeds the highest */
  readonly empty: boolean;
}

/**
 * Drive ratios that suit a unit at every engine speed [–]: n_low/idle to the least of n_high/maximum and n_burst/overspeed.
 * An empty range is an answer, not a fault: then the unit, or the engine's own range, must be another.
 *
 * @param unit the unit's three speeds and the engine's [rev/s]
 * @throws RangeError if an engine speed is not above 0 or a unit's speed is negative
 * @source interval arithmetic
 * @example ratiosAllowed({ lowestSpeed: 10, highestSpeed: 60, burstSpeed: 75, engine: { idle: 12.5, maximum: 50, overspeed: 60 } }).highest // 1.2
 */
export function ratiosAllowed({ lowestSpeed, highestSpeed, burstSpeed, engine }: UnitWindow): AllowedRatios {
  requireNotNegative("ratiosAllowed: lowestSpeed", lowestSpeed, "rev/s");
  requireNotNegative("ratiosAllowed: highestSpeed", highestSpeed, "rev/s");
  requireNotNegative("ratiosAllowed: burstSpeed", burstSpeed, "rev/s");
  requirePositive("ratiosAllowed: idle", engine.idle, "rev/s");
  requirePositive("ratiosAllowed: maximum", engine.maximum, "rev/s");
  requirePositive("ratiosAllowed: overspeed", engine.overspeed, "rev/s");
  const lowest = lowestSpeed / engine.idle;
  const running = highestSpeed > 0 ? highestSpeed / engine.maximum : Number.POSITIVE_INFINITY;
  const burst = burstSpeed > 0 ? burstSpeed / engine.overspeed : Number.POSITIVE_INFINITY;
  const highest = Math.min(running, burst);
  return {
    lowest: lowest as Ratio,
    highest: highest as Ratio,
    set: highest === Number.POSITIVE_INFINITY ? "nothing" : burst < running ? "burst speed" : "highest speed",
    empty: lowest > highest,
  };
}
