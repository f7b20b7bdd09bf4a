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
 * Middles of labels along a line that leave them apart and in order, moved as little as can be: labels that touch are
 * shifted together to both sides. If they do not fit, they run over the far end, still apart.
 *
 * @param wanted the labels, in ascending order of where they want to be
 * @param span the line's ends
 * @param gap room between neighbours
 */
export function gathered(wanted: readonly Wanted[], [low, high]: readonly [number, number], gap = 6): readonly number[] {
  // Where each would lie if all before it had no width: in that measure they need only be in order.
  let before = 0;
  const offsets = wanted.map(({ size }, i) => {
    before += i === 0 ? 0 : wanted[i - 1]!.size / 2 + gap + size / 2;
    return before;
  });
  const blocks: { sum: number; count: number }[] = [];
  for (const [i, { at }] of wanted.entries()) {
    blocks.push({ sum: at - offsets[i]!, count: 1 });
    while (blocks.length > 1 && mean(blocks.at(-2)!) > mean(blocks.at(-1)!)) {
      const { sum, count } = blocks.pop()!;
      const last = blocks.pop()!;
      blocks.push({ sum: last.sum + sum, count: last.count + count });
    }
  }
  const [first, last] = [wanted[0]?.size ?? 0, wanted.at(-1)?.size ?? 0];
  const [least, most] = [low + first / 2, high - last / 2 - (offsets.at(-1) ?? 0)];
  return blocks
    .flatMap((block) => Array.from({ length: block.count }, () => mean(block)))
    .map((at, i) => Math.max(least, Math.min(most, at)) + offsets[i]!);
}

function mean({ sum, count }: { readonly sum: number; readonly count: number }): number {
  return sum / count;
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
