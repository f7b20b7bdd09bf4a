import { type Fraction, type Ratio, requireWithin } from "../quantity";
import { type ExchangerCore, shellsOf, transferUnitsSpan, vast } from "./arrangement";
import { crossflowUnmixedSeries } from "./crossflowUnmixed";

export interface EffectivenessInputs extends ExchangerCore {
  /** UA/Cmin, of all shells together [–], 0 to 500 */
  readonly transferUnits: Ratio;
}

/**
 * Effectiveness of a heat exchanger, heat passed over the largest that temperature allows [–], 0 to 1.
 * With N transfer units and C = Cmin/Cmax: counterflow (1 − e^(−N(1−C)))/(1 − C e^(−N(1−C))), N/(1+N) at C = 1 ·
 * parallel flow (1 − e^(−N(1+C)))/(1+C) · crossflow unmixed: Mason's series, or approximately
 * 1 − exp[(N^0.22/C)(e^(−C N^0.78) − 1)] · smaller side mixed 1 − exp[−(1 − e^(−C N))/C] ·
 * larger side mixed (1 − exp[−C(1 − e^(−N))])/C · one shell with two tube passes 2/(1 + C + G coth(N G/2)),
 * G = √(1+C²), shells joined in overall counterflow · any of them 1 − e^(−N) at C = 0.
 * Constant specific heats and one heat transfer coefficient all over; no loss to outside. The approximate crossflow
 * is up to 3.8 % too low (worst near 0.3 transfer units at C = 1) and up to 1.1 % too high (near 2.5): use the exact
 * one.
 *
 * @param core arrangement, transfer units [–], capacity ratio [–], shells
 * @throws RangeError if an argument is outside its span
 * @source Kays & London, Compact Heat Exchangers; Incropera et al., Fundamentals of Heat and Mass Transfer, table 11.3
 * (formulas from memory)
 * @example exchangerEffectiveness({ arrangement: "counterflow", transferUnits: 2, capacityRatio: 0.25 }) // 0.822766
 */
export function exchangerEffectiveness({ transferUnits, ...core }: EffectivenessInputs): Fraction {
  requireWithin("exchangerEffectiveness: transferUnits", transferUnits, transferUnitsSpan);
  const shells = shellsOf("exchangerEffectiveness", core);
  return passed(core, transferUnits, shells) as Fraction;
}

function passed({ arrangement, capacityRatio: c }: ExchangerCore, n: number, shells: number): number {
  if (n === 0) return 0;
  if (c < vast) return -Math.expm1(-n);
  switch (arrangement) {
    case "counterflow":
      return counterflow(n, c);
    case "parallelFlow":
      return -Math.expm1(-n * (1 + c)) / (1 + c);
    case "crossflowUnmixed":
      return crossflowUnmixedSeries(n, c);
    case "crossflowUnmixedApproximate":
      return -Math.expm1((n ** 0.22 / c) * Math.expm1(-c * n ** 0.78));
    case "crossflowMinimumMixed":
      return -Math.expm1(Math.expm1(-c * n) / c);
    case "crossflowMaximumMixed":
      return -Math.expm1(c * Math.expm1(-n)) / c;
    case "shellAndTube":
      return joinedShells(oneShell(n / shells, c), c, shells);
  }
}

function counterflow(n: number, c: number): number {
  const imbalance = 1 - c;
  if (imbalance === 0) return n / (1 + n);
  // Written in e^x − 1 so that nothing cancels as C nears 1.
  const drop = -Math.expm1(-n * imbalance);
  return drop / (imbalance + c * drop);
}

function oneShell(n: number, c: number): number {
  const g = Math.hypot(1, c);
  return 2 / (1 + c + g / Math.tanh((n * g) / 2));
}

/**
 * Effectiveness of equal shells in overall counterflow [–] from that of one of them:
 * with Z = ((1 − ε₁C)/(1 − ε₁))ⁿ it is (Z − 1)/(Z − C), and n ε₁/(1 + (n−1) ε₁) at C = 1.
 */
export function joinedShells(ofOneShell: number, capacityRatio: number, shells: number): number {
  const imbalance = 1 - capacityRatio;
  if (ofOneShell === 1) return 1;
  if (imbalance === 0) return (shells * ofOneShell) / (1 + (shells - 1) * ofOneShell);
  const z = Math.expm1(shells * Math.log1p((ofOneShell * imbalance) / (1 - ofOneShell)));
  return z / (z + imbalance);
}
