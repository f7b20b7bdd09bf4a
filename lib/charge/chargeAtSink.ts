import { requirePositive, requireWithin } from "../quantity/guard";
import type { Fraction, Power, Temperature, ThermalConductance } from "../quantity/kinds";

/** A charge path between compressors and manifold at a known point, and another temperature of what cools it. */
export interface ChargeAtSinkInputs {
  /** charge leaving the compressors [K], above 0 */
  readonly compressorOutlet: Temperature;
  /** charge entering the blower at the known point [K], above 0 */
  readonly blowerInlet: Temperature;
  /** charge leaving the blower at the known point [K], above 0 */
  readonly blowerOutlet: Temperature;
  /** effectiveness of the cooler before the blower [–], 0 to 1 */
  readonly effectivenessBefore: Fraction;
  /** effectiveness of the cooler behind it [–], 0 to 1 */
  readonly effectivenessAfter: Fraction;
  /** cooling stream reaching the cooler behind the blower, which it meets first [K], above 0 */
  readonly sink: Temperature;
  /** heat capacity rate of the charge [W/K], above 0 */
  readonly chargeCapacityRate: ThermalConductance;
  /** warming of the stream between the coolers for each watt of the one behind the blower [K/W], 0 or above */
  readonly sinkWarmingPerWatt: number;
}

/** The charge with the other stream. */
export interface ChargeAtSink {
  readonly blowerInlet: Temperature;
  readonly blowerOutlet: Temperature;
  readonly manifold: Temperature;
  /** heat taken out before and behind the blower [W] */
  readonly heatBefore: Power;
  readonly heatAfter: Power;
}

/**
 * Charge temperatures and cooler heats with a warmer or colder cooling stream [K, W], the flow, the compressors' outlet
 * and the blower's ratio of temperatures left as they were: T = T_in − ε (T_in − T_sink) in both coolers. A first answer
 * to a cold harbour; the engine's own change of flow with the density is left out.
 *
 * @param known temperatures of a known point, effectiveness and the other stream [K, –, W/K]
 * @throws RangeError if an argument is outside its span
 * @source definition of effectiveness
 * @example chargeAtSink({ compressorOutlet: 440, blowerInlet: 340, blowerOutlet: 400, effectivenessBefore: 0.75, effectivenessAfter: 0.8, sink: 278, chargeCapacityRate: 700, sinkWarmingPerWatt: 0 }).manifold // 297.341
 */
export function chargeAtSink(known: ChargeAtSinkInputs): ChargeAtSink {
  const { compressorOutlet, effectivenessBefore, effectivenessAfter, sink, chargeCapacityRate } = known;
  for (const name of ["compressorOutlet", "blowerInlet", "blowerOutlet", "sink"] as const)
    requirePositive(`chargeAtSink: ${name}`, known[name], "K");
  requireWithin("chargeAtSink: effectivenessBefore", effectivenessBefore, [0, 1]);
  requireWithin("chargeAtSink: effectivenessAfter", effectivenessAfter, [0, 1]);
  requirePositive("chargeAtSink: chargeCapacityRate", chargeCapacityRate, "W/K");
  requireWithin("chargeAtSink: sinkWarmingPerWatt", known.sinkWarmingPerWatt, [0, 1], "K/W");
  const blowing = known.blowerOutlet / known.blowerInlet;
  // T3 = T2 − ε1 (T2 − T_s − w C ε2 (b T3 − T_s)), linear in T3
  const warming = known.sinkWarmingPerWatt * chargeCapacityRate * effectivenessAfter;
  const blowerInlet =
    (compressorOutlet * (1 - effectivenessBefore) + effectivenessBefore * sink * (1 - warming)) /
    (1 - effectivenessBefore * warming * blowing);
  const blowerOutlet = blowing * blowerInlet;
  const manifold = blowerOutlet - effectivenessAfter * (blowerOutlet - sink);
  return {
    blowerInlet: blowerInlet as Temperature,
    blowerOutlet: blowerOutlet as Temperature,
    manifold: manifold as Temperature,
    heatBefore: (chargeCapacityRate * (compressorOutlet - blowerInlet)) as Power,
    heatAfter: (chargeCapacityRate * (blowerOutlet - manifold)) as Power,
  };
}
