import {
  type Area,
  type Count,
  type Density,
  type Length,
  type Pressure,
  type Ratio,
  requirePositive,
  requireWithin,
  type Velocity,
  type VolumeFlow,
} from "../quantity";

/** Pressures either side of a nozzle, and what runs through it. */
export interface NozzleState {
  /** absolute pressure before the holes [Pa], above the cylinder's */
  readonly railPressure: Pressure;
  /** absolute pressure in the cylinder, mean during injection [Pa], above 0 */
  readonly cylinderPressure: Pressure;
  /** density of the fuel in the holes [kg/m³], above 0 */
  readonly density: Density;
}

/** A nozzle with open needle. */
export interface OpenNozzle extends NozzleState {
  /** area of all holes of the nozzle [m²], above 0 */
  readonly area: Area;
  /** flow over that of a loss-free jet through the same area [–], 0.3 to 1; 0.75 to 0.85 with rounded inlets */
  readonly dischargeCoefficient: Ratio;
}

/**
 * Area of all holes of a nozzle [m²]: n π d² / 4.
 *
 * @param holes number of holes [–], 1 to 30
 * @param diameter diameter of a hole [m], above 0
 * @throws RangeError if the holes are no whole number within the span, or the diameter not above 0
 * @source geometry
 * @example nozzleArea(8, 0.00016) // 1.608495e-7
 */
export function nozzleArea(holes: Count, diameter: Length): Area {
  requireWithin("nozzleArea: holes", holes, [1, 30]);
  if (!Number.isInteger(holes)) throw new RangeError(`nozzleArea: holes is ${holes}; it must be a whole number`);
  requirePositive("nozzleArea: diameter", diameter, "m");
  return ((holes * Math.PI * diameter ** 2) / 4) as Area;
}

/**
 * Velocity of a loss-free jet into the cylinder [m/s]: √(2 Δp / ρ). Compressibility of the fuel is left out.
 *
 * @param state pressures [Pa] and density [kg/m³]
 * @throws RangeError if the rail pressure does not exceed the cylinder's, or an argument is not above 0
 * @source Bernoulli
 * @example jetVelocity({ railPressure: 1600e5, cylinderPressure: 120e5, density: 830 }) // 597.182
 */
export function jetVelocity({ railPressure, cylinderPressure, density }: NozzleState): Velocity {
  requirePositive("jetVelocity: cylinderPressure", cylinderPressure, "Pa");
  requirePositive("jetVelocity: density", density, "kg/m³");
  if (!(railPressure > cylinderPressure && railPressure < Number.POSITIVE_INFINITY)) {
    throw new RangeError(
      `jetVelocity: railPressure is ${Number(railPressure.toPrecision(6))} Pa; it must exceed the cylinder pressure, ${Number(cylinderPressure.toPrecision(6))} Pa`,
    );
  }
  return Math.sqrt((2 * (railPressure - cylinderPressure)) / density) as Velocity;
}

/**
 * Volume flow of a nozzle with open needle [m³/s]: Q = C_d A √(2 Δp / ρ), counted at the density given.
 * Pressure waves in the pipe and throttling at the needle's seat are left out.
 *
 * @param nozzle area [m²], discharge coefficient [–], pressures [Pa] and density [kg/m³]
 * @throws RangeError if an argument lies outside its span
 * @source Heywood, Internal Combustion Engine Fundamentals (1988), chapter 10 (from memory)
 * @example nozzleFlow({ area: 1.608495e-7, dischargeCoefficient: 0.8, railPressure: 1600e5, cylinderPressure: 120e5, density: 830 }) // 7.68452e-5
 */
export function nozzleFlow({ area, dischargeCoefficient, ...state }: OpenNozzle): VolumeFlow {
  requirePositive("nozzleFlow: area", area, "m²");
  requireWithin("nozzleFlow: dischargeCoefficient", dischargeCoefficient, [0.3, 1]);
  return (dischargeCoefficient * area * jetVelocity(state)) as VolumeFlow;
}
