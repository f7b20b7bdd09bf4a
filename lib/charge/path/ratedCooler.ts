import { brentRoot } from "../../numeric";
import { requirePositive, requireWithin } from "../../quantity/guard";
import type { Fraction, MassFlow, Ratio, Temperature, ThermalConductance } from "../../quantity/kinds";

/**
 * Effectiveness of an exchanger from its transfer units and capacity ratio [–], as a law of flow arrangement. A sink much
 * larger than the charge makes all arrangements alike: see largeSink.
 */
export type EffectivenessLaw = (transferUnits: number, capacityRatio: number) => number;

/** A charge cooler as one rated point tells it. */
export interface CoolerRating {
  /** flow of charge at the rated point [kg/s], above 0 */
  readonly massFlow: MassFlow;
  /** cooling of the charge over the most that its sink allows, there [–], above 0 to below 1 */
  readonly effectiveness: Fraction;
  /** specific heat of the charge times its flow, there [W/K], above 0 */
  readonly chargeCapacityRate: ThermalConductance;
  /** specific heat of the sink times its flow, there; see coolingAtSinkFlow for another flow [W/K], above 0 */
  readonly sinkCapacityRate: ThermalConductance;
  /** part of the resistance to heat that lies on the charge's side, there [–], 0 to 1 */
  readonly chargeSideShare: Fraction;
  /** effectiveness by transfer units and capacity ratio; largeSink if left out */
  readonly law?: EffectivenessLaw;
}

/** A charge cooler whose conductance scales with flow from its rated point. */
export interface RatedCooling {
  readonly kind: "rated";
  /** conductance UA at the rated point [W/K] */
  readonly conductance: ThermalConductance;
  readonly massFlow: MassFlow;
  readonly sinkCapacityRate: ThermalConductance;
  readonly chargeSideShare: Fraction;
  readonly law: EffectivenessLaw;
  /** temperature at which the sink enters [K] */
  readonly sinkTemperature: Temperature;
}

/** 1 − e^(−N): the sink stays at its temperature. */
export const largeSink: EffectivenessLaw = (transferUnits) => -Math.expm1(-transferUnits);

/** More transfer units than any cooler has [–]. */
const mostUnits = 50;

/**
 * A charge cooler from one rated point [W/K]: the transfer units that give the rated effectiveness, and from them UA.
 *
 * @param rating flows, effectiveness and arrangement of the rated point [kg/s, –, W/K]
 * @param sinkTemperature temperature at which the sink enters [K], above 0
 * @throws RangeError if an argument is outside its span, or the arrangement cannot reach the effectiveness
 * @source W. M. Kays, A. L. London, Compact Heat Exchangers (method of transfer units, from memory)
 * @example ratedCooling({ massFlow: 1, effectiveness: 0.8, chargeCapacityRate: 1010, sinkCapacityRate: 8000, chargeSideShare: 0.8 }, 300).conductance // 1625.5
 */
export function ratedCooling(rating: CoolerRating, sinkTemperature: Temperature): RatedCooling {
  const { massFlow, effectiveness, chargeCapacityRate, sinkCapacityRate, chargeSideShare, law = largeSink } = rating;
  requirePositive("ratedCooling: massFlow", massFlow, "kg/s");
  requireWithin("ratedCooling: effectiveness", effectiveness, [0.001, 0.999]);
  requirePositive("ratedCooling: chargeCapacityRate", chargeCapacityRate, "W/K");
  requirePositive("ratedCooling: sinkCapacityRate", sinkCapacityRate, "W/K");
  requireWithin("ratedCooling: chargeSideShare", chargeSideShare, [0, 1]);
  requirePositive("ratedCooling: sinkTemperature", sinkTemperature, "K");
  const least = Math.min(chargeCapacityRate, sinkCapacityRate);
  const wanted = (effectiveness * chargeCapacityRate) / least;
  const ratio = least / Math.max(chargeCapacityRate, sinkCapacityRate);
  const reached = law(mostUnits, ratio);
  if (!(reached >= wanted)) {
    const most = (100 * reached * least) / chargeCapacityRate;
    throw new RangeError(
      `ratedCooling: effectiveness is ${(100 * effectiveness).toFixed(1)} %; this arrangement reaches no more than ${most.toFixed(1)} % with these flows: state less, give it more cooling flow, or lead the two streams against each other`,
    );
  }
  const { root } = brentRoot((units) => law(units, ratio) - wanted, [0, mostUnits], {
    name: "ratedCooling: transfer units of the rated effectiveness",
  });
  return {
    kind: "rated",
    conductance: (root * least) as ThermalConductance,
    massFlow,
    sinkCapacityRate,
    chargeSideShare,
    law,
    sinkTemperature,
  };
}

/**
 * Cooling of the charge over the most that the sink allows [–], at another flow: UA = UA_r/(s (ṁ_r/ṁ)^0.8 + 1 − s), s the
 * charge's share of the resistance, and the sink's side as it was.
 *
 * @param cooling the cooler, as ratedCooling gives it
 * @param massFlow flow of charge [kg/s], above 0
 * @param chargeCapacityRate specific heat of the charge times its flow [W/K], above 0
 * @throws nothing beyond what its callers guard
 * @source F. P. Incropera et al., Fundamentals of Heat and Mass Transfer (exponent 0.8 of turbulent flow in passages, from memory)
 * @example coolingEffectiveness(ratedCooling({ massFlow: 1, effectiveness: 0.8, chargeCapacityRate: 1010, sinkCapacityRate: 8000, chargeSideShare: 0.8 }, 300), 0.5, 505) // 0.867449
 */
export function coolingEffectiveness(cooling: RatedCooling, massFlow: MassFlow, chargeCapacityRate: number): Ratio {
  const { sinkCapacityRate, chargeSideShare: share } = cooling;
  const conductance = cooling.conductance / (share * (cooling.massFlow / massFlow) ** 0.8 + 1 - share);
  const least = Math.min(chargeCapacityRate, sinkCapacityRate);
  const ratio = least / Math.max(chargeCapacityRate, sinkCapacityRate);
  return ((cooling.law(conductance / least, ratio) * least) / chargeCapacityRate) as Ratio;
}

/**
 * A charge cooler with another flow of its sink [W/K]: both the sink's capacity for heat and its side of the conductance
 * follow, UA = UA_r/(s (ṁ_r/ṁ)^0.8 + (1 − s) f^−0.8), f the sink's flow over that of the rated point.
 *
 * @param cooling the cooler, as ratedCooling gives it
 * @param flow flow of the sink over that of the rated point [–], above 0
 * @throws RangeError if the flow is not above zero
 * @source F. P. Incropera et al., Fundamentals of Heat and Mass Transfer (exponent 0.8 of turbulent flow in passages, from memory)
 * @example coolingEffectiveness(coolingAtSinkFlow(ratedCooling({ massFlow: 1, effectiveness: 0.8, chargeCapacityRate: 1010, sinkCapacityRate: 8000, chargeSideShare: 0.8 }, 300), 0.5), 1, 1010) // 0.75382
 */
export function coolingAtSinkFlow(cooling: RatedCooling, flow: Ratio): RatedCooling {
  requirePositive("coolingAtSinkFlow: flow", flow);
  const { conductance, chargeSideShare, sinkCapacityRate } = cooling;
  const resistance = chargeSideShare + (1 - chargeSideShare) * flow ** -0.8; // over that of the rated point
  return {
    ...cooling,
    conductance: (conductance / resistance) as ThermalConductance,
    chargeSideShare: (chargeSideShare / resistance) as Fraction,
    sinkCapacityRate: (sinkCapacityRate * flow) as ThermalConductance,
  };
}
