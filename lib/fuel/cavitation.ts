import { type Pressure, type Ratio, requireNotNegative, requirePositive, requireWithin } from "../quantity";

/** A hole of a nozzle, and the pressures either side. */
export interface NozzleHole {
  /** absolute pressure before the hole [Pa], above that behind it */
  readonly upstreamPressure: Pressure;
  /** absolute pressure behind the hole [Pa], above the vapour pressure */
  readonly downstreamPressure: Pressure;
  /** vapour pressure of the fuel [Pa], 0 or above; some hundred pascal for diesel, next to nothing here */
  readonly vapourPressure: Pressure;
  /** rounding radius of the inlet over the hole's diameter [–], 0 to 0.14 */
  readonly inletRounding: Ratio;
  /** discharge coefficient of the hole while it does not cavitate [–], 0.3 to 1 */
  readonly fullHoleDischarge: Ratio;
  /** contraction of the jet at a sharp inlet [–], 0.55 to 0.7; 0.611, from memory, if left out */
  readonly sharpContraction?: Ratio;
}

/** How a hole flows. */
export interface HoleFlow {
  /** area of the contracted jet over the hole's [–] */
  readonly contraction: Ratio;
  /** K = (p₁ − p_v)/(p₁ − p₂) [–]; it falls towards 1 as pressure rises */
  readonly cavitationNumber: Ratio;
  /** value of K below which the hole cavitates [–] */
  readonly criticalNumber: Ratio;
  readonly cavitating: boolean;
  /** discharge coefficient, against √(2 (p₁ − p₂)/ρ) [–] */
  readonly dischargeCoefficient: Ratio;
}

/**
 * Whether a nozzle's hole cavitates, and its discharge coefficient [–]: K = (p₁ − p_v)/(p₁ − p₂) against
 * K_crit = (C_d/C_c)², C_c^−2 = C_c0^−2 − 11.4 r/D; below it C_d = C_c √K, and the flow C_c A √(2 ρ (p₁ − p_v)) no longer
 * depends on the pressure behind the hole. Needle lift, taper of the hole and hydraulic flip are left out.
 *
 * @param hole pressures [Pa], rounding and discharge of the hole [–]
 * @throws RangeError if the pressures do not fall from before to behind to vapour, or an argument lies outside its span
 * @source W. H. Nurick, Orifice cavitation and its effect on spray mixing, J. Fluids Engineering 98 (1976) 681 (from memory)
 * @example nozzleCavitation({ upstreamPressure: 1000e5, downstreamPressure: 100e5, vapourPressure: 2000, inletRounding: 0.05, fullHoleDischarge: 0.84 }).dischargeCoefficient // 0.725891
 */
export function nozzleCavitation(hole: NozzleHole): HoleFlow {
  const { upstreamPressure, downstreamPressure, vapourPressure, inletRounding, fullHoleDischarge } = hole;
  const sharpContraction = hole.sharpContraction ?? 0.611;
  requireNotNegative("nozzleCavitation: vapourPressure", vapourPressure, "Pa");
  requirePositive("nozzleCavitation: downstreamPressure above vapour", downstreamPressure - vapourPressure, "Pa");
  requirePositive("nozzleCavitation: pressure drop", upstreamPressure - downstreamPressure, "Pa");
  requireWithin("nozzleCavitation: inletRounding", inletRounding, [0, 0.14]);
  requireWithin("nozzleCavitation: fullHoleDischarge", fullHoleDischarge, [0.3, 1]);
  requireWithin("nozzleCavitation: sharpContraction", sharpContraction, [0.55, 0.7]);

  const contraction = 1 / Math.sqrt(sharpContraction ** -2 - 11.4 * inletRounding);
  const cavitationNumber = (upstreamPressure - vapourPressure) / (upstreamPressure - downstreamPressure);
  const criticalNumber = (fullHoleDischarge / contraction) ** 2;
  const cavitating = cavitationNumber < criticalNumber;
  return {
    contraction: contraction as Ratio,
    cavitationNumber: cavitationNumber as Ratio,
    criticalNumber: criticalNumber as Ratio,
    cavitating,
    dischargeCoefficient: (cavitating ? contraction * Math.sqrt(cavitationNumber) : fullHoleDischarge) as Ratio,
  };
}
