import {
  type Density,
  type MassFlow,
  type Power,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type SpecificHeat,
  type Temperature,
  type TemperatureDifference,
} from "../quantity";

/** Fuel that falls in pressure without doing work. */
export interface Throttling {
  /** pressure lost [Pa], 0 or above */
  readonly pressureDrop: PressureDifference;
  /** temperature before [K], above 0 */
  readonly temperature: Temperature;
  /** density [kg/m³], above 0 */
  readonly density: Density;
  /** specific heat [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
  /** volumetric expansion [1/K], 0 to 0.003; about 0.0008 for diesel */
  readonly expansion: number;
}

/**
 * Rise of temperature of a liquid that is throttled [K]: Δp (1 − α T)/(ρ c_p), at constant enthalpy. The bracket is what
 * expansion takes back: without it the rise reads a third too high for diesel. Properties are taken as constant: give
 * those of the mean pressure. Vapour that forms and heat to the walls are left out.
 *
 * @param throttling pressure drop [Pa], temperature [K], density [kg/m³], specific heat [J/(kg·K)] and expansion [1/K]
 * @throws RangeError if an argument lies outside its span
 * @source first law for steady flow; Joule–Thomson coefficient of a liquid
 * @example throttlingRise({ pressureDrop: 1600e5, temperature: 313, density: 835, specificHeat: 2000, expansion: 0.00083 }) // 70.9183
 */
export function throttlingRise(throttling: Throttling): TemperatureDifference {
  const { pressureDrop, temperature, density, specificHeat, expansion } = throttling;
  requireNotNegative("throttlingRise: pressureDrop", pressureDrop, "Pa");
  requirePositive("throttlingRise: temperature", temperature, "K");
  requirePositive("throttlingRise: density", density, "kg/m³");
  requirePositive("throttlingRise: specificHeat", specificHeat, "J/(kg·K)");
  requireWithin("throttlingRise: expansion", expansion, [0, 0.003], "1/K");
  return ((pressureDrop * (1 - expansion * temperature)) / (density * specificHeat)) as TemperatureDifference;
}

/** Fuel on its way back to the tank. */
export interface ReturnFlow {
  /** flow [kg/s], 0 or above */
  readonly massFlow: MassFlow;
  /** specific heat [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
  /** how much warmer it comes back than it left [K] */
  readonly temperatureRise: TemperatureDifference;
}

/**
 * Heat that returning fuel carries to the tank [W]: ṁ c_p ΔT. Negative where a cooler brings it back colder.
 *
 * @param flow flow [kg/s], specific heat [J/(kg·K)] and temperature rise [K]
 * @throws RangeError if the flow is negative, the specific heat not above 0 or the rise not finite
 * @source first law
 * @example returnHeat({ massFlow: 0.05, specificHeat: 2000, temperatureRise: 25 }) // 2500
 */
export function returnHeat({ massFlow, specificHeat, temperatureRise }: ReturnFlow): Power {
  requireNotNegative("returnHeat: massFlow", massFlow, "kg/s");
  requirePositive("returnHeat: specificHeat", specificHeat, "J/(kg·K)");
  if (!Number.isFinite(temperatureRise)) {
    throw new RangeError(`returnHeat: temperatureRise is ${temperatureRise} K; it must be finite`);
  }
  return (massFlow * specificHeat * temperatureRise) as Power;
}

/** One of several flows that meet. */
export interface FuelStream {
  /** flow [kg/s], 0 or above */
  readonly massFlow: MassFlow;
  /** temperature [K], above 0 */
  readonly temperature: Temperature;
}

/**
 * Temperature of flows that have mixed [K]: Σ ṁ T / Σ ṁ. Their specific heats are taken as the same.
 *
 * @param streams flows [kg/s] and temperatures [K]
 * @throws RangeError if a flow is negative, all of them are 0, or a temperature is not above 0
 * @source first law
 * @example mixedTemperature([{ massFlow: 0.01, temperature: 350 }, { massFlow: 0.03, temperature: 310 }]) // 320
 */
export function mixedTemperature(streams: readonly FuelStream[]): Temperature {
  streams.forEach(({ massFlow, temperature }, i) => {
    requireNotNegative(`mixedTemperature: massFlow of stream ${i + 1}`, massFlow, "kg/s");
    requirePositive(`mixedTemperature: temperature of stream ${i + 1}`, temperature, "K");
  });
  const total = streams.reduce((sum, { massFlow }) => sum + massFlow, 0);
  requirePositive("mixedTemperature: sum of flows", total, "kg/s");
  return (streams.reduce((sum, { massFlow, temperature }) => sum + massFlow * temperature, 0) / total) as Temperature;
}
