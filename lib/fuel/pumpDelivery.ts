import {
  type BulkModulus,
  type Fraction,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from "../quantity";

/** What keeps a plunger pump from delivering its displacement. */
export interface PumpLosses {
  /** volume left above the plunger at the end of its stroke, over the stroke's volume [–], 0 to 5 */
  readonly deadVolumeShare: Fraction;
  /** pressure rise across the pump [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** bulk modulus of the fuel, mean over that rise [Pa], above 0; Infinity for a fuel that does not yield */
  readonly bulkModulus: BulkModulus;
  /** volume lost past the plungers, at outlet pressure, over the displacement [–], 0 to 0.5 */
  readonly leakageShare: Fraction;
}

/** Volumetric efficiency of a pump, counted in two ways. */
export interface PumpDelivery {
  /** delivered volume, at outlet pressure, over displacement [–] */
  readonly atOutlet: Fraction;
  /** delivered mass over the mass of a displacement full of fuel from the inlet [–] */
  readonly byMass: Fraction;
}

/**
 * Volumetric efficiency of a plunger pump for a compressible liquid [–]: by mass 1 − c (ρ₂/ρ₁ − 1) − leakage·ρ₂/ρ₁, with
 * c the share of dead volume and ρ₂/ρ₁ = e^(Δp/K); by volume at outlet pressure that over ρ₂/ρ₁. They differ by the
 * squeeze of the fuel, about a tenth at 1600 bar: say which one a figure is.
 * Slow valves, starved filling and the yielding of steel are left out; they cost most at high speed.
 *
 * @param losses dead volume and leakage [–], pressure rise and bulk modulus [Pa]
 * @throws RangeError if an argument lies outside its span, or nothing would be delivered
 * @source mass balance of the pumping chamber with constant mean bulk modulus
 * @example pumpDelivery({ deadVolumeShare: 0.3125, pressureRise: 1600e5, bulkModulus: 1.5e9, leakageShare: 0.02 }).byMass // 0.942573
 */
export function pumpDelivery(losses: PumpLosses): PumpDelivery {
  requireLosses("pumpDelivery", losses);
  const { deadVolumeShare, pressureRise, bulkModulus, leakageShare } = losses;
  const squeeze = Math.exp(pressureRise / bulkModulus);
  const byMass = 1 - deadVolumeShare * (squeeze - 1) - leakageShare * squeeze;
  requireDelivery("pumpDelivery", byMass, losses);
  return { atOutlet: (byMass / squeeze) as Fraction, byMass: byMass as Fraction };
}

/**
 * The usual first-order form of the efficiency by volume at outlet pressure [–]: 1 − (1 + c) Δp/K − leakage.
 * For comparison with handbooks: it reads 0.007 lower than pumpDelivery in the example, and ever lower above.
 *
 * @param losses dead volume and leakage [–], pressure rise and bulk modulus [Pa]
 * @throws RangeError if an argument lies outside its span, or nothing would be delivered
 * @source first order in Δp/K of pumpDelivery
 * @example firstOrderDelivery({ deadVolumeShare: 0.3125, pressureRise: 1600e5, bulkModulus: 1.5e9, leakageShare: 0.02 }) // 0.84
 */
export function firstOrderDelivery(losses: PumpLosses): Fraction {
  requireLosses("firstOrderDelivery", losses);
  const { deadVolumeShare, pressureRise, bulkModulus, leakageShare } = losses;
  const delivery = 1 - ((1 + deadVolumeShare) * pressureRise) / bulkModulus - leakageShare;
  requireDelivery("firstOrderDelivery", delivery, losses);
  return delivery as Fraction;
}

function requireLosses(name: string, { deadVolumeShare, pressureRise, bulkModulus, leakageShare }: PumpLosses): void {
  requireWithin(`${name}: deadVolumeShare`, deadVolumeShare, [0, 5]);
  requireNotNegative(`${name}: pressureRise`, pressureRise, "Pa");
  if (bulkModulus !== Number.POSITIVE_INFINITY) requirePositive(`${name}: bulkModulus`, bulkModulus, "Pa");
  requireWithin(`${name}: leakageShare`, leakageShare, [0, 0.5]);
}

function requireDelivery(name: string, delivery: number, { deadVolumeShare, pressureRise }: PumpLosses): void {
  if (delivery > 0) return;
  throw new RangeError(
    `${name}: pressureRise is ${Number(pressureRise.toPrecision(6))} Pa; with a dead volume of ${Number(deadVolumeShare.toPrecision(3))} strokes nothing would be delivered`,
  );
}
