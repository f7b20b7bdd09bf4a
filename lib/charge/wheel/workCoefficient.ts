import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { Angle, Fraction, Ratio } from "../../quantity/kinds";
import { backsweepSpan } from "./slip";

/** Flow at the tip of a wheel, and what drags on its back. */
export interface TipFlow {
  /** slip, as stanitzSlip or wiesnerSlip give it [–], 0 to 1 */
  readonly slip: Fraction;
  /** backsweep of the blades at the tip, from radial [rad], 0 to 1.2 */
  readonly backsweep: Angle;
  /** meridional velocity at the tip over tip speed [–], 0 or above */
  readonly exitFlowCoefficient: Ratio;
  /** flow coefficient ṁ/(ρ₀₁ u₂ D₂²) [–], above 0 */
  readonly flowCoefficient: Ratio;
  /** disc friction: its work coefficient times the flow coefficient, over the work of the blades [–], 0 or above; 0.002 to 0.005 is usual */
  readonly discFriction: Ratio;
}

/**
 * Work of a wheel over the square of its tip speed [–]: λ = (σ − φ₂ tan β₂)(1 + k/φ), without swirl at the inlet.
 *
 * @param tip slip, backsweep, flow and disc friction [–, rad, –]
 * @throws RangeError if an argument is outside its span
 * @source M. V. Casey, C. J. Robinson, A Method to Estimate the Performance Map of a Centrifugal Compressor Stage, J. Turbomachinery 135 (2013) (from memory)
 * @example workCoefficient({ slip: 0.88, exitFlowCoefficient: 0.28, backsweep: 0.5235988, discFriction: 0.003, flowCoefficient: 0.09 }) // 0.74228665
 */
export function workCoefficient(tip: TipFlow): Ratio {
  requireWithin("workCoefficient: slip", tip.slip, [0, 1]);
  requireWithin("workCoefficient: backsweep", tip.backsweep, backsweepSpan, "rad");
  requireNotNegative("workCoefficient: exitFlowCoefficient", tip.exitFlowCoefficient);
  requirePositive("workCoefficient: flowCoefficient", tip.flowCoefficient);
  requireNotNegative("workCoefficient: discFriction", tip.discFriction);
  const blades = tip.slip - tip.exitFlowCoefficient * Math.tan(tip.backsweep);
  return (blades * (1 + tip.discFriction / tip.flowCoefficient)) as Ratio;
}
