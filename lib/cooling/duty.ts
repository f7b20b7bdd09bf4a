import {
  type Fraction,
  type Length,
  type MassFlow,
  type Power,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type RotationalSpeed,
  type Time,
  type Velocity,
} from "../quantity";

/** A part of an engine's running hours. */
export interface DutyPart {
  /** part of the running hours [–], 0 or above; the parts need not add up to 1 */
  readonly share: number;
  /** power at the flywheel [W], 0 or above */
  readonly power: Power;
  /** fuel burnt [kg/s], 0 or above */
  readonly fuelFlow: MassFlow;
  /** speed of the boat [m/s], 0 or above */
  readonly boatSpeed: Velocity;
}

/** An engine's running hours taken together. */
export interface DutyMean {
  /** mean power [W] */
  readonly power: Power;
  /** mean power over the rated one [–] */
  readonly loadFactor: Fraction;
  /** mean fuel flow [kg/s] */
  readonly fuelFlow: MassFlow;
  /** mean speed of the boat [m/s] */
  readonly boatSpeed: Velocity;
}

/**
 * Mean power, load factor, fuel flow and boat speed of a duty profile [W, –, kg/s, m/s], weighted by time.
 *
 * @param parts shares of the running hours, with power, fuel and speed [–, W, kg/s, m/s]
 * @param ratedPower power against which the load factor is taken [W], above 0
 * @throws RangeError if an argument is outside its span, or the shares are all zero
 * @source definition
 * @example dutyMean([{ share: 0.5, power: 300000, fuelFlow: 0.018, boatSpeed: 10 }, { share: 0.5, power: 100000, fuelFlow: 0.006, boatSpeed: 4 }], 400000).loadFactor // 0.5
 */
export function dutyMean(parts: readonly DutyPart[], ratedPower: Power): DutyMean {
  requirePositive("dutyMean: ratedPower", ratedPower, "W");
  let [time, power, fuelFlow, boatSpeed] = [0, 0, 0, 0];
  for (const part of parts) {
    requireNotNegative("dutyMean: share", part.share);
    requireNotNegative("dutyMean: power", part.power, "W");
    requireNotNegative("dutyMean: fuelFlow", part.fuelFlow, "kg/s");
    requireNotNegative("dutyMean: boatSpeed", part.boatSpeed, "m/s");
    time += part.share;
    power += part.share * part.power;
    fuelFlow += part.share * part.fuelFlow;
    boatSpeed += part.share * part.boatSpeed;
  }
  if (!(time > 0)) throw new RangeError("dutyMean: no part of the profile has any running hours; give one a share");
  return {
    power: (power / time) as Power,
    loadFactor: (power / time / ratedPower) as Fraction,
    fuelFlow: (fuelFlow / time) as MassFlow,
    boatSpeed: (boatSpeed / time) as Velocity,
  };
}

/** A point at which fuel flow and losses are known. */
export interface WillansPoint {
  /** engine speed [rev/s], above 0 */
  readonly speed: RotationalSpeed;
  /** power at the flywheel [W], above 0 */
  readonly power: Power;
  /** power taken by friction, blower, pumps and accessories: indicated less brake [W], 0 or above */
  readonly losses: Power;
  /** fuel flow [kg/s], above 0 */
  readonly fuelFlow: MassFlow;
}

/**
 * Fuel flow at another speed and power [kg/s], by Willans' line: ṁ = ṁ_r (P + L)/(P_r + L_r) with losses in proportion
 * to the square of the speed, L = L_r (n/n_r)². One indicated efficiency throughout: near idle and with much less boost
 * an engine burns some per cent more or less.
 *
 * @param known speed, power, losses and fuel flow of a point [rev/s, W, W, kg/s]
 * @param speed engine speed [rev/s], above 0
 * @param power power at the flywheel [W], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source Willans' line, as in J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §13.2 (from memory); the square of the speed is our simplification
 * @example willansFuelFlow({ speed: 40, power: 300000, losses: 60000, fuelFlow: 0.018 }, 20, 37500) // 0.002625
 */
export function willansFuelFlow(known: WillansPoint, speed: RotationalSpeed, power: Power): MassFlow {
  requirePositive("willansFuelFlow: known speed", known.speed, "rev/s");
  requirePositive("willansFuelFlow: known power", known.power, "W");
  requireNotNegative("willansFuelFlow: losses", known.losses, "W");
  requirePositive("willansFuelFlow: fuelFlow", known.fuelFlow, "kg/s");
  requirePositive("willansFuelFlow: speed", speed, "rev/s");
  requireNotNegative("willansFuelFlow: power", power, "W");
  const losses = known.losses * (speed / known.speed) ** 2;
  return ((known.fuelFlow * (power + losses)) / (known.power + known.losses)) as MassFlow;
}

export interface RangeInputs {
  /** fuel in the tank by mass [kg], above 0 */
  readonly fuel: number;
  /** part of it that is never burnt: reserve, and what the suction leaves [–], 0 to below 1 */
  readonly reserve: Fraction;
  /** mean fuel flow of all engines [kg/s], above 0 */
  readonly fuelFlow: MassFlow;
  /** mean speed of the boat [m/s], 0 or above */
  readonly boatSpeed: Velocity;
}

/**
 * Hours and way that a tank lasts [s, m]: t = m (1 − r)/ṁ, s = v t. Wind, current and sea are left out.
 *
 * @param tank fuel [kg], reserve [–], fuel flow [kg/s] and speed [m/s]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example rangeOnTank({ fuel: 800, reserve: 0.1, fuelFlow: 0.02, boatSpeed: 10 }).distance // 360000
 */
export function rangeOnTank({ fuel, reserve, fuelFlow, boatSpeed }: RangeInputs): {
  readonly time: Time;
  readonly distance: Length;
} {
  requirePositive("rangeOnTank: fuel", fuel, "kg");
  requireWithin("rangeOnTank: reserve", reserve, [0, 0.99]);
  requirePositive("rangeOnTank: fuelFlow", fuelFlow, "kg/s");
  requireNotNegative("rangeOnTank: boatSpeed", boatSpeed, "m/s");
  const time = (fuel * (1 - reserve)) / fuelFlow;
  return { time: time as Time, distance: (boatSpeed * time) as Length };
}
