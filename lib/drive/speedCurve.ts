import { type RotationalSpeed, requireNotNegative } from "../quantity";

/** One point of a curve over speed. */
export interface SpeedPoint<Value extends number> {
  /** shaft speed [rev/s], 0 or above */
  readonly speed: RotationalSpeed;
  /** what holds at that speed, in its own unit */
  readonly value: Value;
}

/** Points of a curve over speed, in rising order of speed, as read from a maker's sheet or a test. */
export type SpeedCurve<Value extends number> = readonly SpeedPoint<Value>[];

/**
 * Value of a curve at a speed, straight between its points [the curve's own unit]. It is not carried on beyond its ends.
 *
 * @param name the function and the curve, for the message
 * @param curve points in rising order of speed [rev/s], at least two
 * @param speed shaft speed [rev/s], within the curve
 * @throws RangeError if the speed lies outside the curve, or the points do not rise
 * @source linear interpolation
 * @example valueAtSpeed("efficiency", [{ speed: 50, value: 0.68 }, { speed: 75, value: 0.65 }], 60) // 0.668
 */
export function valueAtSpeed<Value extends number>(
  name: string,
  curve: SpeedCurve<Value>,
  speed: RotationalSpeed,
): Value {
  const first = curve[0];
  const last = curve.at(-1);
  if (first === undefined || last === undefined || curve.length < 2) {
    throw new RangeError(`${name}: curve has ${curve.length} points; it must have at least 2`);
  }
  curve.forEach((point, i) => {
    requireNotNegative(`${name}: speed of point ${i + 1}`, point.speed, "rev/s");
    if (!Number.isFinite(point.value))
      throw new RangeError(`${name}: value of point ${i + 1} is ${point.value}; it must be finite`);
    if (i > 0 && !(point.speed > curve[i - 1]!.speed)) {
      throw new RangeError(
        `${name}: speed of point ${i + 1} is ${point.speed} rev/s; it must exceed that of the point before`,
      );
    }
  });
  if (!(speed >= first.speed && speed <= last.speed)) {
    throw new RangeError(
      `${name}: speed is ${Number(speed.toPrecision(6))} rev/s; the curve runs from ${Number(first.speed.toPrecision(6))} to ${Number(last.speed.toPrecision(6))} rev/s`,
    );
  }
  const above = Math.max(
    1,
    curve.findIndex((point) => point.speed >= speed),
  );
  const [low, high] = [curve[above - 1]!, curve[above]!];
  return (low.value + ((high.value - low.value) * (speed - low.speed)) / (high.speed - low.speed)) as Value;
}
