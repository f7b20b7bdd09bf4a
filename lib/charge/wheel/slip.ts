import { requireWithin, type Span } from "../../quantity/guard";
import type { Angle, Count, Fraction, Ratio } from "../../quantity/kinds";

/** Blade counts for which the slip formulas answer [–]; with splitters an effective count, full blades and half of the splitters. */
export const bladeCountSpan: Span = [4, 60];

/** Backsweep of the blades at the tip, from radial [rad]. */
export const backsweepSpan: Span = [0, 1.2];

/**
 * Slip of a wheel with radial blades [–]: σ = 1 − 0.63 π/Z, so that c_θ2 = σ u₂ − c_m2 tan β₂.
 *
 * @param blades effective number of blades at the tip [–], 4 to 60
 * @throws RangeError if the number is outside its span
 * @source J. D. Stanitz (1952), as S. L. Dixon, C. A. Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 7, quote it (from memory)
 * @example stanitzSlip(17) // 0.8835763
 */
export function stanitzSlip(blades: Count): Fraction {
  requireWithin("stanitzSlip: blades", blades, bladeCountSpan);
  return (1 - (0.63 * Math.PI) / blades) as Fraction;
}

/** Blades of a wheel, as far as slip asks. */
export interface BladedWheel {
  /** effective number of blades at the tip [–], 4 to 60 */
  readonly blades: Count;
  /** backsweep at the tip, from radial [rad], 0 to 1.2 */
  readonly backsweep: Angle;
  /** mean inducer radius over tip radius [–], 0 to 0.99 */
  readonly radiusRatio: Ratio;
}

/**
 * Slip of a wheel with radial or backswept blades [–]: σ = 1 − √cos β₂/Z^0.7, less where the inlet radius ratio is above
 * ε = e^(−8.16 cos β₂/Z): there it is multiplied by 1 − ((r₁/r₂ − ε)/(1 − ε))³.
 *
 * @param wheel blades, backsweep and radius ratio [–, rad, –]
 * @throws RangeError if an argument is outside its span
 * @source F. J. Wiesner, A Review of Slip Factors for Centrifugal Impellers, J. Eng. Power 89 (1967) (read in public implementations)
 * @example wiesnerSlip({ blades: 20, backsweep: 0.6981317, radiusRatio: 0.75 }) // 0.8922123
 */
export function wiesnerSlip({ blades, backsweep, radiusRatio }: BladedWheel): Fraction {
  requireWithin("wiesnerSlip: blades", blades, bladeCountSpan);
  requireWithin("wiesnerSlip: backsweep", backsweep, backsweepSpan, "rad");
  requireWithin("wiesnerSlip: radiusRatio", radiusRatio, [0, 0.99]);
  const slip = 1 - Math.sqrt(Math.cos(backsweep)) / blades ** 0.7;
  const limit = Math.exp((-8.16 * Math.cos(backsweep)) / blades);
  if (radiusRatio <= limit) return slip as Fraction;
  return (slip * (1 - ((radiusRatio - limit) / (1 - limit)) ** 3)) as Fraction;
}
