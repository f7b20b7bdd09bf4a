import {
  type Count,
  type Density,
  type Mass,
  type MassFlow,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type VolumePerStroke,
} from "../quantity";

/** An engine and the fuel it burns. */
export interface FuelledEngine {
  /** fuel flow of the whole engine [kg/s], 0 or above */
  readonly fuelFlow: MassFlow;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** number of cylinders [–], 1 to 64 */
  readonly cylinders: Count;
}

/**
 * Fuel that a cylinder of a four-stroke engine gets for one working stroke [kg]: m = 2 ṁ / (N z).
 * Cylinders are taken to share alike; pilot and late injections are counted in.
 *
 * @param engine fuel flow [kg/s], speed [rev/s] and cylinders [–]
 * @throws RangeError if an argument lies outside its span, or the cylinders are no whole number
 * @source definition; one working stroke in two turns
 * @example fuelMassPerStroke({ fuelFlow: 25 / 3600, engineSpeed: 50, cylinders: 6 }) // 4.62963e-5
 */
export function fuelMassPerStroke({ fuelFlow, engineSpeed, cylinders }: FuelledEngine): Mass {
  requireNotNegative("fuelMassPerStroke: fuelFlow", fuelFlow, "kg/s");
  requirePositive("fuelMassPerStroke: engineSpeed", engineSpeed, "rev/s");
  requireWithin("fuelMassPerStroke: cylinders", cylinders, [1, 64]);
  if (!Number.isInteger(cylinders)) {
    throw new RangeError(`fuelMassPerStroke: cylinders is ${cylinders}; it must be a whole number`);
  }
  return ((2 * fuelFlow) / (engineSpeed * cylinders)) as Mass;
}

/**
 * Volume of the fuel of one stroke [m³]: V = m / ρ. The density is that of the state in which the volume is counted:
 * fuel at rail pressure fills several per cent less than at 1 bar, warm fuel more than cold.
 *
 * @param mass fuel of one stroke [kg], 0 or above
 * @param density density of the fuel where the volume is counted [kg/m³], above 0
 * @throws RangeError if the mass is negative or the density not above 0
 * @source definition
 * @example fuelVolumePerStroke(4.62963e-5, 850) // 5.44662e-8
 */
export function fuelVolumePerStroke(mass: Mass, density: Density): VolumePerStroke {
  requireNotNegative("fuelVolumePerStroke: mass", mass, "kg");
  requirePositive("fuelVolumePerStroke: density", density, "kg/m³");
  return (mass / density) as VolumePerStroke;
}
