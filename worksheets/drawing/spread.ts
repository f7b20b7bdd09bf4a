/** A label that wants a place on a line. */
export interface Wanted {
  /** Where its middle should lie. */
  readonly at: number;
  readonly size: number;
}

/**
 * Middles of labels along a line: as near to where they want to be as leaves them apart and inside the span.
 * If they do not fit, they run over the far end, still apart.
 *
 * @param wanted the labels, in any order
 * @param span the line's ends
 * @param gap room between neighbours
 */
export function spread(wanted: readonly Wanted[], [low, high]: readonly [number, number], gap = 6): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]!.at - wanted[b]!.at || a - b);
  const middles = wanted.map(({ at }) => at);
  let free = high;
  for (const i of order.slice().reverse()) {
    const { size } = wanted[i]!;
    middles[i] = Math.min(middles[i]!, free - size / 2);
    free = middles[i]! - size / 2 - gap;
  }
  free = low;
  for (const i of order) {
    const { size } = wanted[i]!;
    middles[i] = Math.max(middles[i]!, free + size / 2);
    free = middles[i]! + size / 2 + gap;
  }
  return middles;
}

/**
 * Rows for labels that may not move sideways: each in the first row in which it touches none before it.
 *
 * @param wanted the labels; the first come first
 * @param gap room between neighbours
 */
export function rowsFor(wanted: readonly Wanted[], gap = 8): readonly number[] {
  const taken: { row: number; from: number; to: number }[] = [];
  return wanted.map(({ at, size }) => {
    const [from, to] = [at - size / 2 - gap, at + size / 2 + gap];
    let row = 0;
    while (taken.some((other) => other.row === row && other.from < to && from < other.to)) row += 1;
    taken.push({ row, from: from + gap, to: to - gap });
    return row;
  });
}
