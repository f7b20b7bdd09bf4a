import { type CrankAngle, type Pressure, type Ratio, requirePositive, requireWithin } from "../quantity";

/** Pressure in a cylinder around its firing dead centre, from three numbers. */
export interface CylinderTrace {
  /** at the end of compression, without fire [Pa], above 0 */
  readonly compression: Pressure;
  /** highest, with fire [Pa], at or above that of compression */
  readonly peak: Pressure;
  /** crank angle of the highest, after top dead centre [rad], above 0 to 0.7 */
  readonly peakAngle: CrankAngle;
  /** polytropic exponent of compression and expansion [–], 1 to 1.5 */
  readonly exponent: Ratio;
  /** volume at intake closing over clearance volume [–], above 1 to 30 */
  readonly compressionRatio: Ratio;
  /** length of the rod over the crank's radius [–], 2 to 8; 3.4 if left out, common practice, no source */
  readonly rodRatio?: Ratio;
}

/**
 * Estimate of the cylinder pressure at a crank angle [Pa]: polytropic up to top dead centre, p = p_c v^−n; from there a
 * smooth rise to the peak, p_c + (p_p − p_c) s² (3 − 2 s), s = θ/θ_p; polytropic behind it, p = p_p (v_p/v)^n; v is the
 * volume over the clearance volume. An estimate for what a nozzle sprays against, and no model of combustion: heat that
 * is released behind the peak, and the delay before it, are left out.
 *
 * @param trace pressures [Pa], angle of the peak [rad], exponent, compression ratio and rod ratio [–]
 * @param crankAngle after top dead centre, negative before [rad], −π to π
 * @throws RangeError if an argument lies outside its span or the peak below the compression
 * @source slider-crank kinematics; polytropic change of state; the shape of the rise is common practice, no source
 * @example cylinderPressureAt({ compression: 120e5, peak: 170e5, peakAngle: 0.2, exponent: 1.35, compressionRatio: 14 }, 0.4) // 10581073
 */
export function cylinderPressureAt(trace: CylinderTrace, crankAngle: CrankAngle): Pressure {
  const { compression, peak, peakAngle, exponent } = trace;
  requireTrace(trace);
  requireWithin("cylinderPressureAt: crankAngle", crankAngle, [-Math.PI, Math.PI], "rad");
  if (crankAngle <= 0) return (compression * volumeShare(trace, crankAngle) ** -exponent) as Pressure;
  if (crankAngle < peakAngle) {
    const s = crankAngle / peakAngle;
    return (compression + (peak - compression) * s * s * (3 - 2 * s)) as Pressure;
  }
  const expansion = volumeShare(trace, crankAngle) / volumeShare(trace, peakAngle);
  return (peak * expansion ** -exponent) as Pressure;
}

/** Volume over clearance volume: 1 + (ε − 1)(R + 1 − cos θ − √(R² − sin² θ))/2. */
function volumeShare({ compressionRatio, rodRatio = 3.4 as Ratio }: CylinderTrace, angle: number): number {
  const travel = rodRatio + 1 - Math.cos(angle) - Math.sqrt(rodRatio ** 2 - Math.sin(angle) ** 2);
  return 1 + ((compressionRatio - 1) * travel) / 2;
}

function requireTrace(trace: CylinderTrace): void {
  const { compression, peak, peakAngle, exponent, compressionRatio, rodRatio } = trace;
  requirePositive("cylinderPressureAt: compression", compression, "Pa");
  requireWithin("cylinderPressureAt: peak", peak, [compression, Number.MAX_VALUE], "Pa");
  requireWithin("cylinderPressureAt: peakAngle", peakAngle, [1e-6, 0.7], "rad");
  requireWithin("cylinderPressureAt: exponent", exponent, [1, 1.5]);
  requireWithin("cylinderPressureAt: compressionRatio", compressionRatio, [1.001, 30]);
  if (rodRatio !== undefined) requireWithin("cylinderPressureAt: rodRatio", rodRatio, [2, 8]);
}
