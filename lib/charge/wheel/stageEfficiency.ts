import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { Fraction, Ratio } from "../../quantity/kinds";

/**
 * Highest polytropic efficiency of a good stage of industrial size [–] at a flow coefficient and tip Mach number:
 * below φ = 0.08 0.86 (1 − 27 d² − 5000 d⁴), above it 0.86 (1 − 10 d²), d = φ − 0.08;
 * from M = 0.8 less by 0.05 P + 3 P², P = φ (M − 0.8). Small wheels with their clearances lie several points lower.
 *
 * @param flowCoefficient ṁ/(ρ₀₁ u₂ D₂²) at the best flow [–], 0.01 to 0.16
 * @param tipMachNumber tip speed over the velocity of sound at the inlet's total temperature [–], 0 to 2.5
 * @throws RangeError if an argument is outside its span
 * @source M. V. Casey, C. J. Robinson, J. Turbomachinery 135 (2013); coefficients read in a public program that attributes them to the paper
 * @example peakPolytropicEfficiency(0.1, 1.4) // 0.84276
 */
export function peakPolytropicEfficiency(flowCoefficient: Ratio, tipMachNumber: Ratio): Fraction {
  requireWithin("peakPolytropicEfficiency: flowCoefficient", flowCoefficient, [0.01, 0.16]);
  requireWithin("peakPolytropicEfficiency: tipMachNumber", tipMachNumber, [0, 2.5]);
  const d = flowCoefficient - 0.08;
  const slow = d < 0 ? 1 - 27 * d ** 2 - 5000 * d ** 4 : 1 - 10 * d ** 2;
  const fast = flowCoefficient * Math.max(0, tipMachNumber - 0.8);
  return (0.86 * slow - 0.05 * fast - 3 * fast ** 2) as Fraction;
}

/** A flow on a speed line, and the bends of the line. */
export interface OffPeak {
  /** flow coefficient [–], 0 to that at choke */
  readonly flowCoefficient: Ratio;
  /** flow coefficient of the best efficiency on the line [–], above 0 */
  readonly peakFlowCoefficient: Ratio;
  /** flow coefficient at choke [–], above that of the peak */
  readonly chokeFlowCoefficient: Ratio;
  /** bend below the peak [–], 1 or above */
  readonly lowBend: Ratio;
  /** how much of the efficiency choke takes [–], above 0 */
  readonly chokeLoss: Ratio;
  /** bend above the peak [–], 1 or above */
  readonly highBend: Ratio;
}

/**
 * Efficiency over that at the peak of its speed line [–]: below the peak (1 − (1 − φ/φ_p)^D)^(1/D), above it
 * 1 − G + G (1 − ((φ − φ_p)/(φ_c − φ_p))^H)^(1/H). With G above 1 it is negative at choke.
 *
 * @param line flow, peak, choke and bends [–]
 * @throws RangeError if an argument is outside its span
 * @source M. V. Casey, C. J. Robinson, J. Turbomachinery 135 (2013) (form from memory)
 * @example efficiencyShape({ flowCoefficient: 0.05, peakFlowCoefficient: 0.08, chokeFlowCoefficient: 0.1, lowBend: 2, chokeLoss: 0.6, highBend: 2.5 }) // 0.9270248
 */
export function efficiencyShape(line: OffPeak): Ratio {
  const { flowCoefficient, peakFlowCoefficient, chokeFlowCoefficient, lowBend, chokeLoss, highBend } = line;
  requirePositive("efficiencyShape: peakFlowCoefficient", peakFlowCoefficient);
  requirePositive("efficiencyShape: choke less peak", chokeFlowCoefficient - peakFlowCoefficient);
  requireWithin("efficiencyShape: flowCoefficient", flowCoefficient, [0, chokeFlowCoefficient]);
  requireWithin("efficiencyShape: lowBend", lowBend, [1, 20]);
  requireWithin("efficiencyShape: highBend", highBend, [1, 20]);
  requireNotNegative("efficiencyShape: chokeLoss", chokeLoss);
  return shapeOffPeak(flowCoefficient, {
    peak: peakFlowCoefficient,
    choke: chokeFlowCoefficient,
    lowBend,
    chokeLoss,
    highBend,
  }) as Ratio;
}

/** A speed line in plain numbers, as OffPeak has them. */
export interface LineShape {
  readonly peak: number;
  readonly choke: number;
  readonly lowBend: number;
  readonly chokeLoss: number;
  readonly highBend: number;
}

/** As efficiencyShape, unguarded, for what asks it often. */
export function shapeOffPeak(flow: number, { peak, choke, lowBend, chokeLoss, highBend }: LineShape): number {
  if (flow <= peak) return (1 - (1 - flow / peak) ** lowBend) ** (1 / lowBend);
  const share = (flow - peak) / (choke - peak);
  return 1 - chokeLoss + chokeLoss * (1 - share ** highBend) ** (1 / highBend);
}
