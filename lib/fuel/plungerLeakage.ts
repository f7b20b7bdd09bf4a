import {
  type DynamicViscosity,
  type Length,
  type PressureDifference,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type VolumeFlow,
} from "../quantity";

/** A plunger in its barrel, with pressure at one end. */
export interface PlungerGap {
  /** diameter of the plunger [m], above 0 */
  readonly diameter: Length;
  /** half the difference of diameters, widened as it is under pressure [m], 0 or above, well below the diameter */
  readonly gap: Length;
  /** length over which it seals [m], above 0 */
  readonly sealLength: Length;
  /** pressure that it holds [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** dynamic viscosity of the fuel without pressure [Pa·s], above 0 */
  readonly dynamicViscosity: DynamicViscosity;
  /** growth of viscosity with pressure [1/Pa], 0 to 5e-8; 7e-9 if left out */
  readonly pressureCoefficient?: number;
  /** distance of the axes over the gap [–], 0 centred to 1 touching; 0 if left out */
  readonly eccentricity?: Ratio;
}

/** Growth of viscosity with pressure that doubles it at 100 MPa [1/Pa]: from memory of diesel fuels. */
export const usualPressureCoefficient = 7e-9;

/**
 * Leakage past a plunger [m³/s]: Q = π d h³ (1 + 1.5 e²) Φ/(12 L), with Φ = ∫dp/μ = (1 − e^(−αΔp))/(α μ₀) for a viscosity
 * μ₀ e^(αp). Laminar; the widening of the gap along the plunger, the film's own heat, and the drag of the moving plunger
 * are left out: the gap's third power makes of this an estimate.
 *
 * @param plunger diameter, gap and sealing length [m], pressure [Pa], viscosity [Pa·s] and its growth [1/Pa]
 * @throws RangeError if an argument lies outside its span, or the gap exceeds a hundredth of the diameter
 * @source H. E. Merritt, Hydraulic Control Systems (1967), §3-2 (from memory); C. Barus, American J. of Science 45 (1893) 87
 * for the viscosity (from memory); the powers of gap, length, diameter and pressure as measured by A. M. Rothrock, E. T.
 * Marsh, NACA Report 477 (1934)
 * @example plungerLeakage({ diameter: 0.02, gap: 20e-6, sealLength: 0.02, pressureRise: 210e5, dynamicViscosity: 0.02, pressureCoefficient: 0 }) // 2.19911e-6
 */
export function plungerLeakage(plunger: PlungerGap): VolumeFlow {
  const { diameter, gap, sealLength, pressureRise, dynamicViscosity } = plunger;
  const { pressureCoefficient = usualPressureCoefficient, eccentricity = 0 } = plunger;
  requirePositive("plungerLeakage: diameter", diameter, "m");
  requireWithin("plungerLeakage: gap", gap, [0, diameter / 100], "m");
  requirePositive("plungerLeakage: sealLength", sealLength, "m");
  requireNotNegative("plungerLeakage: pressureRise", pressureRise, "Pa");
  requirePositive("plungerLeakage: dynamicViscosity", dynamicViscosity, "Pa·s");
  requireWithin("plungerLeakage: pressureCoefficient", pressureCoefficient, [0, 5e-8], "1/Pa");
  requireWithin("plungerLeakage: eccentricity", eccentricity, [0, 1]);
  const thickened =
    pressureCoefficient === 0
      ? pressureRise
      : -Math.expm1(-pressureCoefficient * pressureRise) / pressureCoefficient;
  const wall = (Math.PI * diameter * gap ** 3 * (1 + 1.5 * eccentricity ** 2)) / (12 * sealLength);
  return ((wall * thickened) / dynamicViscosity) as VolumeFlow;
}
