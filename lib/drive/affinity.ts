import {
  type Density,
  type Length,
  type Power,
  type PressureDifference,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  type VolumeFlow,
} from "../quantity";

/** A centrifugal pump or a fan at one point of its curve. */
export interface WheelPoint {
  /** shaft speed [rev/s], above 0 */
  readonly speed: RotationalSpeed;
  /** diameter of the wheel [m], above 0 */
  readonly diameter: Length;
  /** density of what it moves [kg/m³], above 0 */
  readonly density: Density;
  /** volume flow [m³/s], 0 or above */
  readonly flow: VolumeFlow;
  /** pressure rise [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** power at the shaft [W], 0 or above */
  readonly power: Power;
}

/**
 * The same point of a centrifugal pump's or fan's curve at another speed, size or density:
 * flow as n D³, pressure as ρ n² D², power as ρ n³ D⁵.
 * It holds for wheels of the same shape; the effect of Reynolds number, cavitation and air's compressibility is left
 * out. It is the power of that point only: what the engine sees follows from the circuit that the wheel works on.
 *
 * @param point the known point, in SI units
 * @param to the speed [rev/s], wheel diameter [m] and density [kg/m³] wanted; what is left out stays
 * @throws RangeError if a speed, diameter or density is not above 0, or a flow, pressure or power negative
 * @source affinity laws; Dixon and Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 2 (from memory)
 * @example affineWheel({ speed: 50, diameter: 0.1, density: 1000, flow: 0.005, pressureRise: 1e5, power: 800 }, { speed: 100 }).power // 6400
 */
export function affineWheel(
  point: WheelPoint,
  to: Partial<Pick<WheelPoint, "speed" | "diameter" | "density">>,
): WheelPoint {
  const wanted = { speed: point.speed, diameter: point.diameter, density: point.density, ...to };
  requireShape("affineWheel: point", point);
  requireShape("affineWheel: to", wanted);
  requireNotNegative("affineWheel: flow", point.flow, "m³/s");
  requireNotNegative("affineWheel: pressureRise", point.pressureRise, "Pa");
  requireNotNegative("affineWheel: power", point.power, "W");
  const speed = wanted.speed / point.speed;
  const size = wanted.diameter / point.diameter;
  const density = wanted.density / point.density;
  return {
    ...wanted,
    flow: (point.flow * speed * size ** 3) as VolumeFlow,
    pressureRise: (point.pressureRise * density * speed ** 2 * size ** 2) as PressureDifference,
    power: (point.power * density * speed ** 3 * size ** 5) as Power,
  };
}

function requireShape(name: string, shape: Pick<WheelPoint, "speed" | "diameter" | "density">): void {
  requirePositive(`${name}: speed`, shape.speed, "rev/s");
  requirePositive(`${name}: diameter`, shape.diameter, "m");
  requirePositive(`${name}: density`, shape.density, "kg/m³");
}
