import { requirePositive, requireWithin } from "../quantity/guard";
import type { Pressure, Ratio } from "../quantity/kinds";

/** What sets the pressure at the end of compression. */
export interface CompressionStroke {
  /** absolute pressure in the intake manifold, taken for the cylinder's at intake closing [Pa], above 0 */
  readonly manifoldPressure: Pressure;
  /** volume at intake closing over clearance volume, below the geometric ratio [–], 1 to 30 */
  readonly effectiveCompressionRatio: Ratio;
  /** polytropic exponent of compression [–], 1 to 1.5; 1.33 to 1.37 is usual */
  readonly compressionExponent: Ratio;
}

/**
 * Pressure at the end of compression without fire [Pa]: p = p_manifold r^n.
 *
 * @param stroke manifold pressure, effective ratio and exponent [Pa, –, –]
 * @throws RangeError if an argument is outside its span
 * @source polytropic change of state; J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §9.5 (from memory)
 * @example compressionPressure({ manifoldPressure: 2.5e5, effectiveCompressionRatio: 16.5, compressionExponent: 1.35 }) // 11003816
 */
export function compressionPressure(stroke: CompressionStroke): Pressure {
  const { manifoldPressure, effectiveCompressionRatio, compressionExponent } = stroke;
  requirePositive("compressionPressure: manifoldPressure", manifoldPressure, "Pa");
  requireWithin("compressionPressure: effectiveCompressionRatio", effectiveCompressionRatio, [1, 30]);
  requireWithin("compressionPressure: compressionExponent", compressionExponent, [1, 1.5]);
  return (manifoldPressure * effectiveCompressionRatio ** compressionExponent) as Pressure;
}

/** Compression, and how far the fire lifts the pressure above it. */
export interface FiringStroke extends CompressionStroke {
  /** peak pressure over pressure at the end of compression [–], 1 to 3; 1.2 to 1.6 is usual, common practice, no source */
  readonly firingRiseRatio: Ratio;
}

/**
 * Highest pressure in the cylinder [Pa], an estimate: compression pressure times a firing-rise ratio.
 * Injection timing and rate decide the ratio; only a pressure trace tells it.
 *
 * @param stroke manifold pressure, effective ratio, exponent and firing rise [Pa, –, –, –]
 * @throws RangeError if an argument is outside its span
 * @source common practice, no source
 * @example peakCylinderPressure({ manifoldPressure: 4e5, effectiveCompressionRatio: 13, compressionExponent: 1.35, firingRiseRatio: 1.4 }) / 1e5 // 178.654
 */
export function peakCylinderPressure(stroke: FiringStroke): Pressure {
  requireWithin("peakCylinderPressure: firingRiseRatio", stroke.firingRiseRatio, [1, 3]);
  return (compressionPressure(stroke) * stroke.firingRiseRatio) as Pressure;
}
