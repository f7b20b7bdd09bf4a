import { requirePositive } from "../quantity/guard";

/** How close a root must be found, and what to call it in an error. */
export interface RootSearch {
  /** widest bracket left around the root, in the unit of its argument [–], above 0; 1e-12 of the larger end if left out */
  readonly tolerance?: number;
  /** the function and what it looks for, as in "beltWrap: centreDistance" */
  readonly name?: string;
}

/** A root, and how well it was found. */
export interface Root {
  /** the argument at which the function crosses zero */
  readonly root: number;
  /** evaluations of the function after the two at the ends */
  readonly iterations: number;
  /** the function's value at the root */
  readonly residual: number;
}

/** Enough for plain halving of any bracket of doubles, tripled for the steps in between. */
const mostIterations = 300;

/**
 * Where a continuous function crosses zero between two points, of which it has opposite signs [–]:
 * inverse quadratic or linear interpolation where they gain ground, halving of the bracket where they do not.
 * With several crossings inside the bracket one of them is found; a jump through zero is taken for a crossing.
 *
 * @param f continuous function of one number [–]
 * @param bracket two points between which `f` changes sign [–]
 * @param search tolerance and name [–]
 * @throws RangeError by name if `f` has the same sign at both ends, or is not a number somewhere between
 * @source R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4 (from memory)
 * @example brentRoot((x) => x * x - 2, [1, 2]).root // 1.414213562
 */
export function brentRoot(
  f: (x: number) => number,
  bracket: readonly [number, number],
  { tolerance, name = "brentRoot: root" }: RootSearch = {},
): Root {
  let [a, b] = bracket;
  const finest = tolerance ?? 1e-12 * Math.max(Math.abs(a), Math.abs(b), Number.MIN_VALUE);
  requirePositive(`${name}: tolerance`, finest);
  let fa = valueAt(f, a, name);
  let fb = valueAt(f, b, name);
  if (fa === 0) return { root: a, iterations: 0, residual: fa };
  if (fb === 0) return { root: b, iterations: 0, residual: fb };
  if (fa > 0 === fb > 0) {
    throw new RangeError(
      `${name} is not between ${digits(a)} and ${digits(b)}; the balance is ${digits(fa)} at one end and ${digits(fb)} at the other, without change of sign`,
    );
  }

  let c = a; // b and c bracket the root, b is the best so far, a the one before
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (let iterations = 0; iterations < mostIterations; iterations++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + 0.5 * finest;
    const half = 0.5 * (c - b);
    if (Math.abs(half) <= least || fb === 0) return { root: b, iterations, residual: fb };

    const trial =
      Math.abs(stepBefore) >= least && Math.abs(fa) > Math.abs(fb) ? interpolated(a, b, c, fa, fb, fc) : half;
    const gains =
      trial / half > 0 && Math.abs(trial) < Math.min(1.5 * Math.abs(half) - 0.5 * least, 0.5 * Math.abs(stepBefore));
    stepBefore = gains ? step : half;
    step = gains ? trial : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : Math.sign(half) * least;
    fb = valueAt(f, b, name);
  }
  throw new RangeError(
    `${name} was not found in ${mostIterations} steps; last ${digits(b)}, where the balance is ${digits(fb)}`,
  );
}

/** Step from b to where the parabola (the line, while a and c coincide) through the inverse function meets zero. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  return -(s * ((c - b) * q * (q - r) - (b - a) * (r - 1))) / ((q - 1) * (r - 1) * (s - 1));
}

function valueAt(f: (x: number) => number, x: number, name: string): number {
  const value = f(x);
  if (Number.isNaN(value))
    throw new RangeError(`${name} could not be sought; the balance is not a number at ${digits(x)}`);
  return value;
}

function digits(value: number): string {
  return `${Number(value.toPrecision(6))}`;
}
