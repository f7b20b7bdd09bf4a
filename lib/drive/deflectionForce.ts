import { type Force, type Length, requireNotNegative, requirePositive } from "../quantity";

/** A span pushed in at its middle. */
export interface PushedSpan {
  /** tension of the belt at rest [N], above 0 */
  readonly tension: Force;
  /** free length of the span [m], above 0 */
  readonly spanLength: Length;
  /** how far it is pushed in [m], 0 or above */
  readonly deflection: Length;
}

/**
 * Force that pushes the middle of a span in by so much [N]: F = 4 T δ / √(l² + 4 δ²).
 * The tension is taken not to rise by the push, and the belt's own stiffness is left out: both make the true force a
 * little greater. A sixty-fourth of the span, 16 mm for each metre, is common practice, no source.
 *
 * @param span tension [N], free length [m] and deflection [m]
 * @throws RangeError if an argument lies outside its span
 * @source statics of a string
 * @example deflectionForce({ tension: 640, spanLength: 0.32, deflection: 0.005 }) // 39.98048
 */
export function deflectionForce({ tension, spanLength, deflection }: PushedSpan): Force {
  requirePositive("deflectionForce: tension", tension, "N");
  requirePositive("deflectionForce: spanLength", spanLength, "m");
  requireNotNegative("deflectionForce: deflection", deflection, "m");
  return ((4 * tension * deflection) / Math.hypot(spanLength, 2 * deflection)) as Force;
}
