import { requireNotNegative, requirePositive } from "../quantity/guard";
import type { Power, Pressure, PressureDifference, RotationalSpeed, Volume } from "../quantity/kinds";
import { powerFromMeanEffectivePressure } from "./brakeOutput";

/** The pressures between which a four-stroke engine pumps its gas. */
export interface PumpingState {
  /** absolute pressure in the exhaust manifold [Pa], above 0 */
  readonly exhaustPressure: Pressure;
  /** absolute pressure in the intake manifold [Pa], above 0 */
  readonly manifoldPressure: Pressure;
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** pressure lost in intake and exhaust valves together [Pa], 0 or above; 0 if left out */
  readonly valveLoss?: PressureDifference;
  /** whether an exhaust pressure below the manifold's pushes the pistons (true) or is lost in the valves (false); true if left out */
  readonly gainCounts?: boolean;
}

/**
 * Power spent on the exchange of gas [W]: P = (p_exhaust − p_manifold + valve loss) V N/2; negative where the manifold
 * pressure drives the pistons. Without `gainCounts` a negative result is given as 0.
 * Pressure waves, blow-down and valve timing are left out.
 *
 * @param state pressures, displacement, speed, and what counts [Pa, m³, rev/s]
 * @throws RangeError if a pressure, the displacement or the speed is not above zero
 * @source J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §5.3 (ideal pumping loop, from memory)
 * @example pumpingPower({ exhaustPressure: 3e5, manifoldPressure: 4e5, displacement: 0.01, engineSpeed: 50 }) // -25000
 */
export function pumpingPower(state: PumpingState): Power {
  const { exhaustPressure, manifoldPressure, displacement, engineSpeed, valveLoss = 0, gainCounts = true } = state;
  requirePositive("pumpingPower: exhaustPressure", exhaustPressure, "Pa");
  requirePositive("pumpingPower: manifoldPressure", manifoldPressure, "Pa");
  requireNotNegative("pumpingPower: valveLoss", valveLoss, "Pa");
  const loop = exhaustPressure - manifoldPressure + valveLoss;
  const meanEffectivePressure = (gainCounts ? loop : Math.max(0, loop)) as PressureDifference;
  return powerFromMeanEffectivePressure({ meanEffectivePressure, displacement, engineSpeed });
}
