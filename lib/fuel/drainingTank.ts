import {
  type Mass,
  type MassFlow,
  requireFinite,
  requireNotNegative,
  requirePositive,
  type SpecificHeat,
  type Temperature,
  type Time,
} from "../quantity";
import type { WarmedTank } from "./fuelTank";

/** A tank that is emptied while returning fuel warms it. */
export interface DrainingTank extends WarmedTank {
  /** fuel in the tank at the start [kg], above 0 */
  readonly startMass: Mass;
  /** flow that leaves for good, burnt [kg/s], 0 or above */
  readonly burnt: MassFlow;
  /** specific heat of the fuel [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
  /** temperature at the start [K], above 0 */
  readonly startTemperature: Temperature;
}

/**
 * Temperature of the fuel in a tank that empties, after a time [K], well mixed: with m = m₀ − ṁt,
 * T = T_s + (T₀ − T_s)(m/m₀)^(UA/(ṁ c)), T_s = T_a + Q/UA; without loss through the walls T₀ + Q ln(m₀/m)/(ṁ c).
 * Walls are taken as wetted throughout; the tank's own mass and layers of warm fuel are left out.
 *
 * @param tank heat [W], walls [W/K], surroundings and start [K], fuel [kg, J/(kg·K)] and what is burnt [kg/s]
 * @param time since the start, before the tank is empty [s], 0 or above
 * @throws RangeError if an argument lies outside its span, or the tank is empty by then
 * @source first law of a stirred tank of falling mass: m c dT/dt = Q − UA (T − T_a)
 * @example drainingTankTemperature({ heat: 2500, conductance: 0, surroundings: 298.15, startMass: 300, burnt: 0.04, specificHeat: 2000, startTemperature: 298.15 }, 3600) // 318.5852
 */
export function drainingTankTemperature(tank: DrainingTank, time: Time): Temperature {
  const { heat, conductance, surroundings, startMass, burnt, specificHeat, startTemperature } = tank;
  requireFinite("drainingTankTemperature: heat", heat, "W");
  requireNotNegative("drainingTankTemperature: conductance", conductance, "W/K");
  requirePositive("drainingTankTemperature: surroundings", surroundings, "K");
  requirePositive("drainingTankTemperature: startMass", startMass, "kg");
  requireNotNegative("drainingTankTemperature: burnt", burnt, "kg/s");
  requirePositive("drainingTankTemperature: specificHeat", specificHeat, "J/(kg·K)");
  requirePositive("drainingTankTemperature: startTemperature", startTemperature, "K");
  requireNotNegative("drainingTankTemperature: time", time, "s");
  const left = startMass - burnt * time;
  if (!(left > 0)) {
    throw new RangeError(
      `drainingTankTemperature: time is ${Number(time.toPrecision(6))} s; the tank is empty after ${Number((startMass / burnt).toPrecision(6))} s`,
    );
  }
  // ∫ dt/m, in the limit of nothing burnt t/m₀.
  const drained = burnt === 0 ? time / startMass : Math.log(startMass / left) / burnt;
  const settled = (conductance * drained) / specificHeat;
  const share = settled === 0 ? 1 : -Math.expm1(-settled) / settled;
  const slope = heat - conductance * (startTemperature - surroundings);
  return (startTemperature + (slope * drained * share) / specificHeat) as Temperature;
}
