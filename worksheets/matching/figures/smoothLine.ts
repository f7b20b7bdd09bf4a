import { px } from "../../drawing";
import type { Corner } from "./shapes";

/**
 * Path of a smooth line through corners, which between two of them never leaves the rectangle that they span: by length along the
 * line each coordinate is a monotone cubic (Fritsch and Carlson 1980, with Steffen's slopes, 1990), so there is no bulge at a turn.
 */
export function smoothLine(corners: readonly Corner[]): string {
  const path = corners.filter(([x, y], i) => i === 0 || x !== corners[i - 1]![0] || y !== corners[i - 1]![1]);
  const steps = path.slice(1).map(([x, y], i) => Math.hypot(x - path[i]![0], y - path[i]![1]));
  const slopes = ([0, 1] as const).map((k) => monotoneSlopes(path.map((corner) => corner[k]), steps));
  const [across, down] = [slopes[0]!, slopes[1]!];
  return path
    .map(([x, y], i) => {
      if (i === 0) return `M${px(x)},${px(y)}`;
      const [before, third] = [path[i - 1]!, steps[i - 1]! / 3];
      const first = `${px(before[0] + third * across[i - 1]!)},${px(before[1] + third * down[i - 1]!)}`;
      return `C${first},${px(x - third * across[i]!)},${px(y - third * down[i]!)},${px(x)},${px(y)}`;
    })
    .join("");
}

/** Slopes at points a step apart; level where values turn round, and nowhere steeper than a monotone cubic may be. */
function monotoneSlopes(values: readonly number[], steps: readonly number[]): readonly number[] {
  const rises = steps.map((step, i) => (values[i + 1]! - values[i]!) / step);
  return values.map((_, i) => {
    const [left, right] = [rises[i - 1], rises[i]];
    if (left === undefined || right === undefined) return left ?? right ?? 0;
    if (left * right <= 0) return 0;
    const mean = (left * steps[i]! + right * steps[i - 1]!) / (steps[i - 1]! + steps[i]!);
    return Math.sign(mean) * Math.min(Math.abs(mean), 2 * Math.abs(left), 2 * Math.abs(right));
  });
}
