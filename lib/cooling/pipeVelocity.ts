import { type Length, requireNotNegative, requirePositive, type Velocity, type VolumeFlow } from "../quantity";

/**
 * Mean velocity in a round bore [m/s]: v = 4 V̇/(π d²).
 * For a wet exhaust take the gas volume alone: the water runs along the bottom and takes a few per cent of the bore.
 *
 * @param volumeFlow volume flow at the state in the pipe [m³/s], 0 or above
 * @param bore inside diameter [m], above 0
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example pipeVelocity(0.003, 0.05) // 1.527887
 */
export function pipeVelocity(volumeFlow: VolumeFlow, bore: Length): Velocity {
  requireNotNegative("pipeVelocity: volumeFlow", volumeFlow, "m³/s");
  requirePositive("pipeVelocity: bore", bore, "m");
  return ((4 * volumeFlow) / (Math.PI * bore ** 2)) as Velocity;
}

/**
 * Smallest bore that keeps the mean velocity at a limit [m]: d = √(4 V̇/(π v)).
 *
 * @param volumeFlow volume flow at the state in the pipe [m³/s], 0 or above
 * @param velocity highest mean velocity [m/s], above 0
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example boreForVelocity(0.003, 2) // 0.0437019
 */
export function boreForVelocity(volumeFlow: VolumeFlow, velocity: Velocity): Length {
  requireNotNegative("boreForVelocity: volumeFlow", volumeFlow, "m³/s");
  requirePositive("boreForVelocity: velocity", velocity, "m/s");
  return Math.sqrt((4 * volumeFlow) / (Math.PI * velocity)) as Length;
}

/**
 * Volume flow through a round bore at a mean velocity [m³/s]: V̇ = π d² v/4.
 *
 * @param velocity mean velocity [m/s], 0 or above
 * @param bore inside diameter [m], above 0
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example flowAtVelocity(3.5, 0.1) // 0.02748894
 */
export function flowAtVelocity(velocity: Velocity, bore: Length): VolumeFlow {
  requireNotNegative("flowAtVelocity: velocity", velocity, "m/s");
  requirePositive("flowAtVelocity: bore", bore, "m");
  return ((Math.PI * bore ** 2 * velocity) / 4) as VolumeFlow;
}
