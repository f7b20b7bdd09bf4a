import {
  type Mass,
  type Power,
  requireNotNegative,
  requirePositive,
  type SpecificHeat,
  type Temperature,
  type ThermalConductance,
  type Time,
} from "../quantity";

/** A tank that is warmed by returning fuel and cooled by its surroundings. */
export interface WarmedTank {
  /** heat that the returning fuel brings [W]; see returnHeat */
  readonly heat: Power;
  /** heat lost through the walls for each kelvin above the surroundings [W/K], 0 or above */
  readonly conductance: ThermalConductance;
  /** temperature of the surroundings [K], above 0 */
  readonly surroundings: Temperature;
}

/** A tank over time. */
export interface WarmingTank extends WarmedTank {
  /** fuel in the tank, mean over the time [kg], above 0 */
  readonly fuelMass: Mass;
  /** specific heat of the fuel [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
  /** temperature at the start [K], above 0 */
  readonly startTemperature: Temperature;
  /** time since then [s], 0 or above */
  readonly time: Time;
}

/**
 * Temperature that a tank settles at [K]: T_a + Q/UA.
 *
 * @param tank heat [W], conductance of the walls [W/K] and surroundings [K]
 * @throws RangeError if the conductance or the surroundings are not above 0, or the heat is not finite
 * @source first law
 * @example settledTankTemperature({ heat: 2500, conductance: 50, surroundings: 298.15 }) // 348.15
 */
export function settledTankTemperature({ heat, conductance, surroundings }: WarmedTank): Temperature {
  requireFinite("settledTankTemperature: heat", heat);
  requirePositive("settledTankTemperature: conductance", conductance, "W/K");
  requirePositive("settledTankTemperature: surroundings", surroundings, "K");
  return (surroundings + heat / conductance) as Temperature;
}

/**
 * Temperature of the fuel in a tank after a time [K], well mixed, with steady heat:
 * T_s + (T₀ − T_s) e^(−UA t/(m c)), T_s the settled temperature; with insulated walls T₀ + Q t/(m c).
 * The tank's own mass, layers of warm fuel on top and the sinking level are left out: take the mean mass, or the least
 * to be safe. Diesel above its flash point (55 °C at least) is a fire risk in a vented tank: fit a return cooler.
 *
 * @param tank heat [W], walls [W/K], surroundings and start [K], fuel [kg, J/(kg·K)] and time [s]
 * @throws RangeError if an argument lies outside its span
 * @source first law of a stirred tank
 * @example tankTemperature({ heat: 2500, conductance: 0, surroundings: 298.15, fuelMass: 200, specificHeat: 2000, startTemperature: 298.15, time: 3600 }) // 320.65
 */
export function tankTemperature(tank: WarmingTank): Temperature {
  const { heat, conductance, surroundings, fuelMass, specificHeat, startTemperature, time } = tank;
  requireFinite("tankTemperature: heat", heat);
  requireNotNegative("tankTemperature: conductance", conductance, "W/K");
  requirePositive("tankTemperature: surroundings", surroundings, "K");
  requirePositive("tankTemperature: fuelMass", fuelMass, "kg");
  requirePositive("tankTemperature: specificHeat", specificHeat, "J/(kg·K)");
  requirePositive("tankTemperature: startTemperature", startTemperature, "K");
  requireNotNegative("tankTemperature: time", time, "s");
  const capacity = fuelMass * specificHeat;
  const settled = (conductance * time) / capacity;
  // (1 − e^−x)/x goes to 1 with insulated walls; this form has no division of nothing by nothing.
  const share = settled === 0 ? 1 : -Math.expm1(-settled) / settled;
  const slope = heat - conductance * (startTemperature - surroundings);
  return (startTemperature + (slope * time * share) / capacity) as Temperature;
}

function requireFinite(name: string, heat: number): void {
  if (!Number.isFinite(heat)) throw new RangeError(`${name} is ${heat} W; it must be finite`);
}
