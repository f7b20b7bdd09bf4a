import { type Count, type Length, requirePositive } from "../quantity";

/**
 * Whole number of belt teeth nearest to a length [–]: L / p, rounded.
 *
 * @param length wanted pitch length [m], above 0
 * @param pitch distance from tooth to tooth [m], above 0
 * @throws RangeError if an argument is not above 0
 * @source a synchronous belt has a whole number of teeth
 * @example nearestBeltTeeth(0.8805, 0.008) // 110
 */
export function nearestBeltTeeth(length: Length, pitch: Length): Count {
  requirePositive("nearestBeltTeeth: length", length, "m");
  requirePositive("nearestBeltTeeth: pitch", pitch, "m");
  return Math.max(1, Math.round(length / pitch)) as Count;
}

/**
 * The length in a list that is nearest to a wanted one [m]; of two equally near the shorter.
 *
 * @param length wanted pitch length [m], above 0
 * @param list lengths that can be had [m], at least one
 * @throws RangeError if the length is not above 0 or the list is empty
 * @source plain comparison; the list is the user's
 * @example nearestStandardLength(0.9, [0.8, 0.88, 0.96]) // 0.88
 */
export function nearestStandardLength(length: Length, list: readonly Length[]): Length {
  requirePositive("nearestStandardLength: length", length, "m");
  if (list.length === 0) throw new RangeError("nearestStandardLength: list is empty; it must hold at least one length");
  return [...list].sort((a, b) => Math.abs(a - length) - Math.abs(b - length) || a - b)[0]!;
}
