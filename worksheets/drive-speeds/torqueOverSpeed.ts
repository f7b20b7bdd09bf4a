import type { Pressure, RotationalSpeed, Torque, VolumePerStroke } from "../../lib/quantity";
import type { DeliveryPoint } from "../fuel-delivery/deliverySweep";
import { sweptAt } from "../fuel-delivery/sweptAt";

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
  /** least excess air at a speed, over that at the promised one [–] */
  readonly excessAirShare: (speed: RotationalSpeed) => number;
}

/**
 * Torque at the blower's shaft at an engine speed [N·m]: displacement times the rise, M ∝ p₃ (π_b − 1). Blower and engine
 * are geared together, so that the ratio stays; p₃ goes with the air for each stroke, which is the fuel of the full-load
 * map times the least excess air, and sinks no lower than the air outside. Beyond the promised speed the governor takes the fuel away
 * before the turbochargers slow down: there the torque stays.
 */
export function blowerTorqueAt(duty: BlowerDuty, sweep: readonly DeliveryPoint[], speed: RotationalSpeed): Torque {
  const { torque, inletPressure, ambientPressure, ratedSpeed, injectedVolume, excessAirShare } = duty;
  if (speed >= ratedSpeed) return torque;
  const fuel = sweptAt(sweep, speed, ({ perStroke }) => perStroke) / injectedVolume;
  return (torque * Math.max(fuel * excessAirShare(speed), Math.min(1, ambientPressure / inletPressure))) as Torque;
}
