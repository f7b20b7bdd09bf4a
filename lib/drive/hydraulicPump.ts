import {
  type Fraction,
  type Power,
  type PressureDifference,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Time,
  type Torque,
  type Volume,
  type VolumeFlow,
  type VolumePerTurn,
} from "../quantity";

/** Efficiencies from here to 1 are believed. */
const efficiencySpan = [0.05, 1] as const;

/** A positive-displacement pump for oil, and what turns it. */
export interface PumpSpeed {
  /** volume displaced in one turn [m³], above 0 */
  readonly displacement: VolumePerTurn;
  /** shaft speed [rev/s], 0 or above */
  readonly speed: RotationalSpeed;
  /** delivered over displaced volume [–], 0.05 to 1 */
  readonly volumetricEfficiency: Fraction;
}

/** A positive-displacement pump under pressure. */
export interface PumpPressure {
  /** volume displaced in one turn [m³], above 0 */
  readonly displacement: VolumePerTurn;
  /** pressure rise across the pump [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** torque without loss over torque with it [–], 0.05 to 1 */
  readonly mechanicalEfficiency: Fraction;
}

/**
 * Flow that a hydraulic pump delivers [m³/s]: Q = D n η_v.
 *
 * @param pump displacement [m³], speed [rev/s] and volumetric efficiency [–]
 * @throws RangeError if an argument lies outside its span
 * @source ISO 4391 (from memory)
 * @example hydraulicFlow({ displacement: 10e-6, speed: 25, volumetricEfficiency: 0.92 }) // 0.00023
 */
export function hydraulicFlow({ displacement, speed, volumetricEfficiency }: PumpSpeed): VolumeFlow {
  requirePositive("hydraulicFlow: displacement", displacement, "m³");
  requireNotNegative("hydraulicFlow: speed", speed, "rev/s");
  requireWithin("hydraulicFlow: volumetricEfficiency", volumetricEfficiency, efficiencySpan);
  return (displacement * speed * volumetricEfficiency) as VolumeFlow;
}

/**
 * Torque at a hydraulic pump's shaft [N·m]: T = D Δp / (2 π η_hm). It does not depend on speed, nor on whether the
 * flow is put to use or thrown off by a relief or flow-control valve.
 *
 * @param pump displacement [m³], pressure rise [Pa] and mechanical efficiency [–]
 * @throws RangeError if an argument lies outside its span
 * @source ISO 4391 (from memory)
 * @example hydraulicTorque({ displacement: 10e-6, pressureRise: 100e5, mechanicalEfficiency: 0.9 }) // 17.68388
 */
export function hydraulicTorque({ displacement, pressureRise, mechanicalEfficiency }: PumpPressure): Torque {
  requirePositive("hydraulicTorque: displacement", displacement, "m³");
  requireNotNegative("hydraulicTorque: pressureRise", pressureRise, "Pa");
  requireWithin("hydraulicTorque: mechanicalEfficiency", mechanicalEfficiency, efficiencySpan);
  return ((displacement * pressureRise) / (2 * Math.PI * mechanicalEfficiency)) as Torque;
}

/**
 * Power at a hydraulic pump's shaft [W]: P = D n Δp / η_hm, which is 2 π n T.
 *
 * @param pump displacement [m³], speed [rev/s], pressure rise [Pa] and mechanical efficiency [–]
 * @throws RangeError if an argument lies outside its span
 * @source ISO 4391 (from memory)
 * @example hydraulicShaftPower({ displacement: 10e-6, speed: 25, pressureRise: 100e5, mechanicalEfficiency: 0.9 }) // 2777.778
 */
export function hydraulicShaftPower({ speed, ...pump }: PumpPressure & Pick<PumpSpeed, "speed">): Power {
  requireNotNegative("hydraulicShaftPower: speed", speed, "rev/s");
  return (2 * Math.PI * speed * hydraulicTorque(pump)) as Power;
}

/**
 * Heat that oil takes up when it falls through a pressure drop without doing work [W]: Q Δp, as over a relief valve.
 *
 * @param flow volume flow [m³/s], 0 or above
 * @param pressureDrop pressure lost [Pa], 0 or above
 * @throws RangeError if an argument is negative
 * @source first law
 * @example reliefHeat(0.00023, 100e5) // 2300
 */
export function reliefHeat(flow: VolumeFlow, pressureDrop: PressureDifference): Power {
  requireNotNegative("reliefHeat: flow", flow, "m³/s");
  requireNotNegative("reliefHeat: pressureDrop", pressureDrop, "Pa");
  return (flow * pressureDrop) as Power;
}

/**
 * Flow that steering asks for [m³/s]: the cylinder's volume from lock to lock over the time it may take.
 * Leakage of the valve is left out.
 *
 * @param cylinderVolume volume swept from lock to lock [m³], above 0
 * @param time time from lock to lock [s], above 0
 * @throws RangeError if an argument is not above 0
 * @source definition
 * @example steeringFlow(250e-6, 2.5) // 0.0001
 */
export function steeringFlow(cylinderVolume: Volume, time: Time): VolumeFlow {
  requirePositive("steeringFlow: cylinderVolume", cylinderVolume, "m³");
  requirePositive("steeringFlow: time", time, "s");
  return (cylinderVolume / time) as VolumeFlow;
}

/** A flow that a pump must give at its slowest. */
export interface FlowDemand {
  /** flow wanted [m³/s], above 0 */
  readonly flow: VolumeFlow;
  /** slowest shaft speed at which it is wanted [rev/s], above 0 */
  readonly speed: RotationalSpeed;
  /** delivered over displaced volume there [–], 0.05 to 1 */
  readonly volumetricEfficiency: Fraction;
}

/**
 * Displacement that a pump needs for a flow [m³ per turn]: D = Q / (n η_v).
 *
 * @param demand flow [m³/s], speed [rev/s] and volumetric efficiency [–]
 * @throws RangeError if an argument lies outside its span
 * @source ISO 4391 (from memory)
 * @example displacementForFlow({ flow: 1e-4, speed: 11.6666667, volumetricEfficiency: 0.9 }) // 9.52381e-6
 */
export function displacementForFlow({ flow, speed, volumetricEfficiency }: FlowDemand): VolumePerTurn {
  requirePositive("displacementForFlow: flow", flow, "m³/s");
  requirePositive("displacementForFlow: speed", speed, "rev/s");
  requireWithin("displacementForFlow: volumetricEfficiency", volumetricEfficiency, efficiencySpan);
  return (flow / (speed * volumetricEfficiency)) as VolumePerTurn;
}
