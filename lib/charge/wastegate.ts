import type { Fraction, Pressure } from "../quantity/kinds";

/** A wastegate that always leads the same part of the exhaust past its turbine. */
export interface FixedWastegate {
  readonly kind: "fixed";
  /** part of the exhaust led past the turbine [–], 0 to 0.95 */
  readonly fraction: Fraction;
}

/** A wastegate whose spring gives way to the pressure after the bank's compressors. */
export interface SprungWastegate {
  readonly kind: "sprung";
  /** absolute pressure at which it begins to open [Pa], above 0 */
  readonly opensAt: Pressure;
  /** absolute pressure at which it is fully open [Pa], above opensAt */
  readonly fullyOpenAt: Pressure;
  /** part of the exhaust that it then leads past the turbine [–], 0 to 0.95 */
  readonly mostFraction: Fraction;
}

export type Wastegate = FixedWastegate | SprungWastegate;

/**
 * Part of the exhaust that a wastegate leads past its turbine [–]. A sprung one opens between its two pressures along
 * 3 s² − 2 s³, s the share of the way, so that neither end has a corner.
 *
 * @param wastegate fixed or sprung [–, Pa]; none if left out
 * @param pressure absolute pressure after the compressors [Pa]
 * @throws nothing
 * @source common practice, no source
 * @example wastegateFraction({ kind: "sprung", opensAt: 2e5, fullyOpenAt: 3e5, mostFraction: 0.4 }, 2.5e5) // 0.2
 */
export function wastegateFraction(wastegate: Wastegate | undefined, pressure: Pressure): Fraction {
  if (!wastegate) return 0 as Fraction;
  if (wastegate.kind === "fixed") return wastegate.fraction;
  const { opensAt, fullyOpenAt, mostFraction } = wastegate;
  const share = Math.min(1, Math.max(0, (pressure - opensAt) / (fullyOpenAt - opensAt)));
  return (mostFraction * share * share * (3 - 2 * share)) as Fraction;
}
