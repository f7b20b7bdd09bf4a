import { requireNotNegative, requirePositive } from "../quantity/guard";
import type { MassFlow, Pressure, RotationalSpeed, Temperature } from "../quantity/kinds";

/** The inlet state to which a compressor map is referred. A map without it is off by several per cent. */
export interface MapReference {
  /** name for readers */
  readonly name: string;
  /** reference total temperature [K], above 0 */
  readonly temperature: Temperature;
  /** reference total pressure [Pa], above 0 */
  readonly pressure: Pressure;
}

/** Reference states met on compressor maps. @source from memory; the third is 545 °R and 28.4 inHg, an older habit of the trade */
export const mapReferences: readonly MapReference[] = [
  { name: "298 K, 100 kPa", temperature: 298 as Temperature, pressure: 100_000 as Pressure },
  { name: "288.15 K, 101.325 kPa", temperature: 288.15 as Temperature, pressure: 101_325 as Pressure },
  {
    name: "302.8 K, 96.2 kPa",
    temperature: (545 / 1.8) as Temperature,
    pressure: (28.4 * 3386.389) as Pressure,
  },
];

/** The state of the gas at a compressor's inlet, after filter and duct. */
export interface InletState {
  /** total temperature [K], above 0 */
  readonly temperature: Temperature;
  /** total pressure [Pa], above 0 */
  readonly pressure: Pressure;
}

/**
 * Flow as a map of the given reference shows it [kg/s]: ṁ √(T/T_ref)/(p/p_ref).
 *
 * @param massFlow flow through one compressor [kg/s], 0 or above
 * @param inlet state at the compressor's inlet, after filter and duct [K, Pa]
 * @param reference the map's reference state [K, Pa]
 * @throws RangeError if the flow is negative, or a temperature or pressure not above zero
 * @source similarity of turbomachines; S. L. Dixon, C. A. Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 2 (from memory)
 * @example correctedFlow(0.35, { temperature: 303.15, pressure: 98000 }, mapReferences[0]) // 0.3602157
 */
export function correctedFlow(massFlow: MassFlow, inlet: InletState, reference: MapReference): MassFlow {
  requireNotNegative("correctedFlow: massFlow", massFlow, "kg/s");
  requireStates("correctedFlow", inlet, reference);
  const hotter = Math.sqrt(inlet.temperature / reference.temperature);
  return ((massFlow * hotter * reference.pressure) / inlet.pressure) as MassFlow;
}

/**
 * Shaft speed as a map of the given reference shows it [rev/s]: N/√(T/T_ref).
 *
 * @param speed shaft speed [rev/s], 0 or above
 * @param inletTemperature total temperature at the compressor's inlet [K], above 0
 * @param reference the map's reference state [K, Pa]
 * @throws RangeError if the speed is negative or a temperature not above zero
 * @source similarity of turbomachines
 * @example correctedSpeed(1500, 303.15, mapReferences[0]) // 1487.204
 */
export function correctedSpeed(
  speed: RotationalSpeed,
  inletTemperature: Temperature,
  reference: MapReference,
): RotationalSpeed {
  requireNotNegative("correctedSpeed: speed", speed, "rev/s");
  requirePositive("correctedSpeed: inletTemperature", inletTemperature, "K");
  requirePositive("correctedSpeed: reference temperature", reference.temperature, "K");
  return (speed / Math.sqrt(inletTemperature / reference.temperature)) as RotationalSpeed;
}

function requireStates(name: string, inlet: InletState, reference: MapReference): void {
  requirePositive(`${name}: inlet temperature`, inlet.temperature, "K");
  requirePositive(`${name}: inlet pressure`, inlet.pressure, "Pa");
  requirePositive(`${name}: reference temperature`, reference.temperature, "K");
  requirePositive(`${name}: reference pressure`, reference.pressure, "Pa");
}
