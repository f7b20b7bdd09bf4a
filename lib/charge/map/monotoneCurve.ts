import { requireFinite } from "../../quantity/guard";

/** Slopes and values of a curve between its knots. */
export interface MonotoneCurve {
  readonly knots: readonly number[];
  readonly values: readonly number[];
  readonly slopes: readonly number[];
}

/**
 * A smooth curve through points that rises and falls only where they do [–]: piecewise cubic, slopes by the harmonic
 * mean of neighbours. One point makes a constant.
 *
 * @param knots arguments [–], rising
 * @param values values there [–], as many
 * @throws RangeError if the knots do not rise, or a value is not finite
 * @source F. N. Fritsch, R. E. Carlson, Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17 (1980); slopes after Butland (from memory)
 * @example curveAt(monotoneCurve([0, 1, 3], [0, 1, 2]), 2) // 1.548077
 */
export function monotoneCurve(knots: readonly number[], values: readonly number[]): MonotoneCurve {
  const steps = knots.slice(1).map((knot, i) => knot - knots[i]!);
  steps.forEach((step, i) => {
    if (!(step > 0))
      throw new RangeError(`monotoneCurve: knot ${i + 1} is ${knots[i + 1]}; it must be above ${knots[i]}`);
  });
  for (const value of values) requireFinite("monotoneCurve: value", value);
  const rises = steps.map((step, i) => (values[i + 1]! - values[i]!) / step);
  const slopes = values.map((_, i) => {
    const before = rises[i - 1];
    const after = rises[i];
    if (before === undefined || after === undefined) return after ?? before ?? 0;
    if (before * after <= 0) return 0;
    const [h, next] = [steps[i - 1]!, steps[i]!];
    return (3 * (h + next)) / ((2 * next + h) / before + (next + 2 * h) / after);
  });
  return { knots, values, slopes };
}

/** The curve's value; outside its knots that of the nearest. */
export function curveAt({ knots, values, slopes }: MonotoneCurve, x: number): number {
  const last = knots.length - 1;
  if (x <= knots[0]!) return values[0]!;
  if (x >= knots[last]!) return values[last]!;
  let i = 0;
  while (x > knots[i + 1]!) i++;
  const step = knots[i + 1]! - knots[i]!;
  const t = (x - knots[i]!) / step;
  const rest = 1 - t;
  const ends = rest * rest * (1 + 2 * t) * values[i]! + t * t * (1 + 2 * rest) * values[i + 1]!;
  return ends + step * t * rest * (rest * slopes[i]! - t * slopes[i + 1]!);
}
