import type { HeatCapacityCoefficients } from "./species";

/**
 * cp(T) of a gas over one span of temperature, with its two integrals, in J and kg:
 * cp = a₁T⁻² + a₂T⁻¹ + a₃ + a₄T + a₅T² + a₆T³ + a₇T⁴.
 */
export class HeatCapacityCurve {
  private readonly a1: number;
  private readonly a2: number;
  private readonly a3: number;
  private readonly a4: number;
  private readonly a5: number;
  private readonly a6: number;
  private readonly a7: number;
  private readonly h0: number;
  private readonly s0: number;

  /** The curve whose enthalpy and entropy have the given values at one temperature. */
  constructor(coefficients: HeatCapacityCoefficients, at: { temperature: number; enthalpy: number; entropy: number }) {
    [this.a1, this.a2, this.a3, this.a4, this.a5, this.a6, this.a7] = coefficients;
    this.h0 = 0;
    this.s0 = 0;
    this.h0 = at.enthalpy - this.enthalpy(at.temperature);
    this.s0 = at.entropy - this.entropy(at.temperature);
  }

  specificHeat(t: number): number {
    return (this.a1 / t + this.a2) / t + this.a3 + t * (this.a4 + t * (this.a5 + t * (this.a6 + t * this.a7)));
  }

  /** ∫ cp dT */
  enthalpy(t: number): number {
    const power = this.a3 + t * (this.a4 / 2 + t * (this.a5 / 3 + t * (this.a6 / 4 + (t * this.a7) / 5)));
    return this.h0 - this.a1 / t + this.a2 * Math.log(t) + t * power;
  }

  /** ∫ cp dT/T */
  entropy(t: number): number {
    const power = this.a4 + t * (this.a5 / 2 + t * (this.a6 / 3 + (t * this.a7) / 4));
    return this.s0 - (this.a1 / (2 * t) + this.a2) / t + this.a3 * Math.log(t) + t * power;
  }
}
