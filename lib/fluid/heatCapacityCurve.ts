import type { HeatCapacityCoefficients } from "./species";

/**
 * cp(T) of a gas over one span of temperature, with its two integrals, in J and kg:
 * cp = a₁T⁻² + a₂T⁻¹ + a₃ + a₄T + a₅T² + a₆T³ + a₇T⁴.
 */
export class HeatCapacityCurve {
  /** a₁ to a₇, then the constants of enthalpy and entropy: in one list, so that a blend is made quickly */
  private readonly a: readonly number[];

  private constructor(coefficients: readonly number[]) {
    this.a = coefficients;
  }

  /** The curve whose enthalpy and entropy have the given values at one temperature. */
  static through(
    coefficients: HeatCapacityCoefficients,
    at: { temperature: number; enthalpy: number; entropy: number },
  ): HeatCapacityCurve {
    const bare = new HeatCapacityCurve([...coefficients, 0, 0]);
    const enthalpyConstant = at.enthalpy - bare.enthalpy(at.temperature);
    const entropyConstant = at.entropy - bare.entropy(at.temperature);
    return new HeatCapacityCurve([...coefficients, enthalpyConstant, entropyConstant]);
  }

  /** The curve of two gases mixed by mass: cp, enthalpy and entropy are the means of theirs. */
  static blend({ a }: HeatCapacityCurve, { a: b }: HeatCapacityCurve, share: number): HeatCapacityCurve {
    const rest = 1 - share;
    return new HeatCapacityCurve([
      rest * a[0]! + share * b[0]!,
      rest * a[1]! + share * b[1]!,
      rest * a[2]! + share * b[2]!,
      rest * a[3]! + share * b[3]!,
      rest * a[4]! + share * b[4]!,
      rest * a[5]! + share * b[5]!,
      rest * a[6]! + share * b[6]!,
      rest * a[7]! + share * b[7]!,
      rest * a[8]! + share * b[8]!,
    ]);
  }

  specificHeat(t: number): number {
    const a = this.a;
    return (a[0]! / t + a[1]!) / t + a[2]! + t * (a[3]! + t * (a[4]! + t * (a[5]! + t * a[6]!)));
  }

  /** ∫ cp dT */
  enthalpy(t: number): number {
    const a = this.a;
    const power = a[2]! + t * (a[3]! / 2 + t * (a[4]! / 3 + t * (a[5]! / 4 + (t * a[6]!) / 5)));
    return a[7]! - a[0]! / t + a[1]! * Math.log(t) + t * power;
  }

  /** ∫ cp dT/T */
  entropy(t: number): number {
    const a = this.a;
    const power = a[3]! + t * (a[4]! / 2 + t * (a[5]! / 3 + (t * a[6]!) / 4));
    return a[8]! - (a[0]! / (2 * t) + a[1]!) / t + a[2]! * Math.log(t) + t * power;
  }
}
