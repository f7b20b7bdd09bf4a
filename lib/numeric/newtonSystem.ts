/** How to look for the root of a system, and what to call it in an error. */
export interface SystemSearch {
  /** largest residual left in any equation [–]; 1e-12 if left out */
  readonly tolerance?: number;
  /** longest step of any unknown in one iteration [–]; 0.5 if left out, which suits logarithms of ratios */
  readonly longestStep?: number;
  /** the function and what it looks for, as in "chargePath: balance" */
  readonly name?: string;
  /** evaluations of the equations after which it gives up [–]; as many as it likes if left out */
  readonly mostEvaluations?: number | undefined;
  /** slopes of a system solved before that was much like this one; measured anew if left out */
  readonly slopes?: Slopes | undefined;
}

/** Change of each equation (row) with each unknown (column). */
export type Slopes = readonly (readonly number[])[];

/** A root of a system, and how well it was found. */
export interface SystemRoot {
  /** the unknowns at the root */
  readonly root: readonly number[];
  /** largest absolute residual of the equations there */
  readonly residual: number;
  /** steps taken */
  readonly iterations: number;
  /** slopes near the root, to begin the next system with */
  readonly slopes: Slopes;
}

type Equations = (unknowns: readonly number[]) => readonly number[];

const mostIterations = 60;
const mostHalvings = 40;

/** A step on old slopes must bring the residual down to this share, or the slopes are measured again. */
const goodEnough = 0.5;

/**
 * Where as many smooth equations as unknowns are all zero [–]: Newton's method with slopes by differences, corrected
 * after each step by Broyden's rule while that goes well, each step shortened until the residual falls.
 * Equations and unknowns should be of the order of one (logarithms of ratios).
 * The equations may throw a RangeError where they have no answer: a step that leads there is shortened too.
 *
 * @param equations residuals at given unknowns [–], as many as there are unknowns
 * @param start unknowns to begin with, where the equations must answer [–]
 * @param search tolerance, longest step, evaluations, name and slopes to begin with [–]
 * @throws RangeError by name, with the residual reached, if no step lowers the residual any more
 * @source J. E. Dennis, R. B. Schnabel, Numerical Methods for Unconstrained Optimization and Nonlinear Equations (1983), ch. 6 and 8 (from memory)
 * @example newtonSystem(([x, y]) => [x * y - 2, x - y - 1], [1.5, 1.5]).root[0] // 2
 */
export function newtonSystem(
  equations: Equations,
  start: readonly number[],
  search: SystemSearch = {},
): SystemRoot {
  const { tolerance = 1e-12, longestStep = 0.5, name = "newtonSystem: root", slopes: known } = search;
  const { mostEvaluations = Number.POSITIVE_INFINITY } = search;
  let point = start;
  let values = equations(point);
  let evaluations = 1;
  let size = largest(values);
  let measured = known === undefined;
  let slopes = known;
  if (!slopes) {
    slopes = measuredSlopes(equations, point, values);
    evaluations += point.length;
  }
  for (let iterations = 0; iterations < mostIterations && evaluations < mostEvaluations; iterations++) {
    if (size <= tolerance) return { root: point, residual: size, iterations, slopes };
    const step = solved(slopes, values);
    const fullShare = Math.min(1, longestStep / largest(step));
    let share = fullShare;
    let reached: readonly number[] | undefined;
    let reachedValues: readonly number[] | undefined;
    // old slopes get one try, fresh ones every halving
    for (let halvings = measured ? mostHalvings : 1; halvings > 0; halvings--) {
      const trial = stepped(point, step, share);
      const trialValues = answered(equations, trial);
      evaluations++;
      if (trialValues && largest(trialValues) < size) {
        reached = trial;
        reachedValues = trialValues;
        break;
      }
      share /= 2;
    }
    if (!reached || !reachedValues) {
      if (measured) break;
      slopes = measuredSlopes(equations, point, values);
      evaluations += point.length;
      measured = true;
      continue;
    }
    const reachedSize = largest(reachedValues);
    const well = share === 1 && reachedSize <= goodEnough * size;
    if (reachedSize > tolerance) {
      slopes = well
        ? broyden(slopes, point, reached, reachedValues)
        : measuredSlopes(equations, reached, reachedValues);
      if (!well) evaluations += point.length;
      measured = !well;
    }
    point = reached;
    values = reachedValues;
    size = reachedSize;
  }
  throw new RangeError(`${name} was not found; the largest residual left is ${Number(size.toPrecision(3))}`);
}

/** Largest absolute value; NaN if any is not a number, so that no comparison holds for it. */
function largest(values: readonly number[]): number {
  let most = 0;
  for (const value of values) {
    const size = Math.abs(value);
    if (!(size <= most)) most = size;
    if (Number.isNaN(most)) return most;
  }
  return most;
}

function stepped(point: readonly number[], step: readonly number[], share: number): readonly number[] {
  const reached = new Array<number>(point.length);
  for (let i = 0; i < reached.length; i++) reached[i] = point[i]! - share * step[i]!;
  return reached;
}

function answered(equations: Equations, point: readonly number[]): readonly number[] | undefined {
  try {
    return equations(point);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function measuredSlopes(equations: Equations, point: readonly number[], values: readonly number[]): Slopes {
  const rows = values.map(() => new Array<number>(point.length).fill(0));
  // The last unknowns first: equations may know again what the first of them alone decide.
  for (let j = point.length - 1; j >= 0; j--) {
    const h = 1e-7 * Math.max(1, Math.abs(point[j]!));
    const moved = equations(point.map((x, i) => (i === j ? x + h : x)));
    for (let i = 0; i < rows.length; i++) rows[i]![j] = (moved[i]! - values[i]!) / h;
  }
  return rows;
}

/** Slopes after a full step: J + F(new) sᵀ/(sᵀ s), since the linear model had promised F(new) = 0. */
function broyden(
  slopes: Slopes,
  from: readonly number[],
  to: readonly number[],
  valuesThere: readonly number[],
): Slopes {
  const step = stepped(to, from, 1);
  let square = 0;
  for (const each of step) square += each * each;
  const corrected: number[][] = [];
  for (let i = 0; i < slopes.length; i++) {
    const row = slopes[i]!.slice();
    const missed = valuesThere[i]! / square;
    for (let j = 0; j < row.length; j++) row[j]! += missed * step[j]!;
    corrected.push(row);
  }
  return corrected;
}

/** The x of slopes x = values: Gaussian elimination, with the largest pivot of each column. */
function solved(slopes: Slopes, values: readonly number[]): number[] {
  const n = values.length;
  const rows: number[][] = [];
  for (let i = 0; i < n; i++) {
    const row = slopes[i]!.slice();
    row.push(values[i]!);
    rows.push(row);
  }
  for (let j = 0; j < n; j++) {
    let pivot = j;
    for (let i = j + 1; i < n; i++) if (Math.abs(rows[i]![j]!) > Math.abs(rows[pivot]![j]!)) pivot = i;
    const row = rows[pivot]!;
    rows[pivot] = rows[j]!;
    rows[j] = row;
    for (let i = j + 1; i < n; i++) {
      const factor = rows[i]![j]! / row[j]!;
      for (let k = j; k <= n; k++) rows[i]![k]! -= factor * row[k]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let j = n - 1; j >= 0; j--) {
    let rest = rows[j]![n]!;
    for (let k = j + 1; k < n; k++) rest -= rows[j]![k]! * x[k]!;
    x[j] = rest / rows[j]![j]!;
  }
  return x;
}
