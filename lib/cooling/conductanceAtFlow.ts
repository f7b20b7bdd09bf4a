import {
  type Fraction,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type ThermalConductance,
} from "../quantity";

/** An exchanger at the flows for which its UA was stated, and what stands against the heat there. */
export interface RatedConductance {
  /** UA when clean, at the rated flows of both streams [W/K], above 0 */
  readonly conductance: ThermalConductance;
  /** share of the resistance that lies on the cold stream's side at the rated flows [–], 0 to 1 */
  readonly coldShare: Fraction;
  /** exponent of the cold stream's flow [–], 0 to 1; 0.8 if left out */
  readonly coldExponent?: number | undefined;
  /** exponent of the hot stream's flow [–], 0 to 1; 0.6 if left out */
  readonly hotExponent?: number | undefined;
}

/** How an exchanger is run. */
export interface ExchangerDuty {
  /** cold flow over the rated one [–], 0 or above */
  readonly coldRatio: Ratio;
  /** hot flow over the rated one [–], 0 or above */
  readonly hotRatio: Ratio;
  /** fouling resistance over the clean resistance at the rated flows, R U [–], 0 or above; 0 if left out */
  readonly fouling?: Ratio | undefined;
}

/**
 * UA at other flows than the rated ones [W/K]: 1/UA = [s (ṁ_c,r/ṁ_c)^0.8 + (1 − s)(ṁ_h,r/ṁ_h)^0.6 + R U]/UA_r.
 * 0 where a stream stands still. Turbulent flow in tubes goes with the power 0.8 of the flow, flow across tubes with
 * about 0.6; the wall's own resistance is left out, laminar oil and changed viscosity too.
 *
 * @param rated UA when clean and how its resistance is shared [W/K, –]
 * @param duty flows over the rated ones, and fouling [–]
 * @throws RangeError if an argument is outside its span
 * @source F. W. Dittus, L. M. K. Boelter (1930) for 0.8; A. Žukauskas (1972) for 0.6 across tube banks (both from memory)
 * @example conductanceAtFlow({ conductance: 4000, coldShare: 0.5 }, { coldRatio: 0.5, hotRatio: 1 }) // 2918.54
 */
export function conductanceAtFlow(rated: RatedConductance, duty: ExchangerDuty): ThermalConductance {
  const { conductance, coldShare, coldExponent = 0.8, hotExponent = 0.6 } = rated;
  requirePositive("conductanceAtFlow: conductance", conductance, "W/K");
  requireWithin("conductanceAtFlow: coldShare", coldShare, [0, 1]);
  requireWithin("conductanceAtFlow: coldExponent", coldExponent, [0, 1]);
  requireWithin("conductanceAtFlow: hotExponent", hotExponent, [0, 1]);
  requireNotNegative("conductanceAtFlow: coldRatio", duty.coldRatio);
  requireNotNegative("conductanceAtFlow: hotRatio", duty.hotRatio);
  requireNotNegative("conductanceAtFlow: fouling", duty.fouling ?? 0);
  if (duty.coldRatio === 0 || duty.hotRatio === 0) return 0 as ThermalConductance;
  const cold = coldShare * duty.coldRatio ** -coldExponent;
  const hot = (1 - coldShare) * duty.hotRatio ** -hotExponent;
  return (conductance / (cold + hot + (duty.fouling ?? 0))) as ThermalConductance;
}
