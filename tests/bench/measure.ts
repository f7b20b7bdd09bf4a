/** How long something takes, over many runs. */

export interface Timing {
  /** Median [ms] */
  readonly p50: number;
  /** 95th percentile [ms] */
  readonly p95: number;
  readonly runs: number;
}

/** A line of the bench's table. */
export interface Measured {
  readonly what: string;
  readonly timing: Timing;
  /** Most that the 95th percentile may be [ms], where the design sets one. */
  readonly budget?: number;
  readonly note?: string;
}

/**
 * Times some work, each run by itself, after a warm-up that is not counted.
 *
 * @param work one run; gets the number of the run, and gives back something so that nothing can be left out
 * @param runs how many runs count
 * @param warmUp how many run before
 */
export function timed(work: (run: number) => unknown, runs: number, warmUp = Math.ceil(runs / 5)): Timing {
  let kept: unknown;
  for (let run = 0; run < warmUp; run++) kept = work(run);
  const times = new Float64Array(runs);
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    kept = work(run);
    times[run] = performance.now() - start;
  }
  if (kept === unheard) throw new Error("the work gave nothing back");
  return timingOf(times);
}

const unheard = Symbol("unheard");

/** Median and 95th percentile of some times [ms]. */
export function timingOf(times: ArrayLike<number>): Timing {
  const sorted = Float64Array.from(times).sort();
  return { p50: quantile(sorted, 0.5), p95: quantile(sorted, 0.95), runs: sorted.length };
}

/** The value below which a share of the sorted values lies, linear between neighbours. */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below]! + (place - below) * (sorted[above]! - sorted[below]!);
}
