import type { Pressure, RotationalSpeed, Torque, VolumePerStroke } from "../../lib/quantity";
import type { DeliveryPoint } from "../fuel-delivery/deliverySweep";

/** A value of the fuel sheet's sweep at any engine speed: straight between its speeds, and beyond its ends as it is there. */
export function sweptAt(
  sweep: readonly DeliveryPoint[],
  speed: RotationalSpeed,
  read: (point: DeliveryPoint) => number,
): number {
  const after = sweep.findIndex(({ engineSpeed }) => engineSpeed >= speed);
  if (after < 0) return read(sweep.at(-1)!);
  if (after === 0) return read(sweep[0]!);
  const [from, to] = [sweep[after - 1]!, sweep[after]!];
  const share = (speed - from.engineSpeed) / (to.engineSpeed - from.engineSpeed);
  return read(from) + share * (read(to) - read(from));
}

/** What the blower's torque at other speeds follows from. */
export interface BlowerDuty {
  /** torque at its shaft at the promised speed [N·m] */
  readonly torque: Torque;
  /** pressure before it there [Pa] */
  readonly inletPressure: Pressure;
  readonly ambientPressure: Pressure;
  readonly ratedSpeed: RotationalSpeed;
  /** fuel for one stroke at the promised speed and power */
  readonly injectedVolume: VolumePerStroke;
}

/**
 * Torque at the blower's shaft at an engine speed [N·m]: displacement times the rise, M ∝ p₃ (π_b − 1). Blower and engine
 * are geared together, so that the ratio stays; with the excess air kept, p₃ goes with the fuel for each stroke of the
 * full-load map, and sinks no lower than the air outside. Beyond the promised speed the governor takes the fuel away
 * before the turbochargers slow down: there the torque stays.
 */
export function blowerTorqueAt(duty: BlowerDuty, sweep: readonly DeliveryPoint[], speed: RotationalSpeed): Torque {
  const { torque, inletPressure, ambientPressure, ratedSpeed, injectedVolume } = duty;
  if (speed >= ratedSpeed) return torque;
  const fuel = sweptAt(sweep, speed, ({ perStroke }) => perStroke) / injectedVolume;
  return (torque * Math.max(fuel, Math.min(1, ambientPressure / inletPressure))) as Torque;
}
