import {
  type Fraction,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type RotationalSpeed,
  type Span,
  type Torque,
} from "../quantity";

export interface PropellerLaw {
  /** power that the propeller takes from the engine at the rated speed [W], above 0 */
  readonly ratedPower: Power;
  /** engine speed at which it does [rev/s], above 0 */
  readonly ratedSpeed: RotationalSpeed;
  /** engine speed in question [rev/s], 0 or above */
  readonly speed: RotationalSpeed;
  /** exponent of speed [–], 1.5 to 4; 3 if left out */
  readonly exponent?: Ratio | undefined;
}

export interface ShaftLineInputs {
  /** engine speed [rev/s], 0 or above */
  readonly engineSpeed: RotationalSpeed;
  /** engine power at the gear's inlet [W], 0 or above */
  readonly enginePower: Power;
  /** engine turns per propeller-shaft turn [–], above 0; above 1 is a reduction */
  readonly gearRatio: Ratio;
  /** power out of the gear over power in [–], above 0 to 1 */
  readonly gearEfficiency: Fraction;
}

export interface ShaftLine {
  /** propeller-shaft speed [rev/s] */
  readonly shaftSpeed: RotationalSpeed;
  /** power behind the gear [W] */
  readonly shaftPower: Power;
  /** torque behind the gear [N·m]; 0 at standstill without power */
  readonly shaftTorque: Torque;
}

/** Span of the exponent of speed [–]. */
export const propellerExponentSpan: Span = [1.5, 4];

/**
 * Power that a propeller asks of the engine [W]: P = P_rated (n/n_rated)^x.
 * x = 3 suits a displacement hull with fixed pitch; planing hulls want about 2.3 to 2.7, and published rating curves
 * for small craft are drawn with 2.5. Steady running on a smooth sea: getting over the hump, tow and foul bottom ask
 * more.
 *
 * @param law rated power [W] and speed [rev/s], speed [rev/s], exponent [–]
 * @throws RangeError if an argument is outside its span
 * @source cube law from similar flow; other exponents common practice, no source (ISO 8665 rating curves from memory)
 * @example propellerPower({ ratedPower: 300000, ratedSpeed: 40, speed: 20 }) // 37500
 */
export function propellerPower(law: PropellerLaw): Power {
  return (law.ratedPower * shareOfPower("propellerPower", law)) as Power;
}

/**
 * Torque that a propeller asks of the engine [N·m]: T = P/(2π n) with the power of propellerPower; 0 at standstill.
 *
 * @param law rated power [W] and speed [rev/s], speed [rev/s], exponent [–]
 * @throws RangeError if an argument is outside its span
 * @source definition of power
 * @example propellerTorque({ ratedPower: 300000, ratedSpeed: 40, speed: 20 }) // 298.4155
 */
export function propellerTorque(law: PropellerLaw): Torque {
  const share = shareOfPower("propellerTorque", law);
  if (law.speed === 0) return 0 as Torque; // the exponent exceeds 1, so torque fades out with speed
  return ((law.ratedPower * share) / (2 * Math.PI * law.speed)) as Torque;
}

/**
 * Speed, power and torque behind the reduction gear: n_shaft = n_engine/i, P_shaft = η P_engine.
 * No slip; losses of stern tube and bearings are not in the gear's efficiency.
 *
 * @param line engine speed [rev/s], engine power [W], gear ratio [–], gear efficiency [–]
 * @throws RangeError if an argument is outside its span, or power is asked for at standstill
 * @source definition
 * @example shaftLine({ engineSpeed: 40, enginePower: 300000, gearRatio: 2, gearEfficiency: 0.97 }).shaftTorque // 2315.704
 */
export function shaftLine({ engineSpeed, enginePower, gearRatio, gearEfficiency }: ShaftLineInputs): ShaftLine {
  requireNotNegative("shaftLine: engineSpeed", engineSpeed, "rev/s");
  requireNotNegative("shaftLine: enginePower", enginePower, "W");
  requirePositive("shaftLine: gearRatio", gearRatio);
  requirePositive("shaftLine: gearEfficiency", gearEfficiency);
  requireWithin("shaftLine: gearEfficiency", gearEfficiency, [0, 1]);
  if (enginePower > 0) requirePositive("shaftLine: engineSpeed", engineSpeed, "rev/s");
  const shaftSpeed = engineSpeed / gearRatio;
  const shaftPower = enginePower * gearEfficiency;
  return {
    shaftSpeed: shaftSpeed as RotationalSpeed,
    shaftPower: shaftPower as Power,
    shaftTorque: (shaftPower === 0 ? 0 : shaftPower / (2 * Math.PI * shaftSpeed)) as Torque,
  };
}

function shareOfPower(caller: string, { ratedPower, ratedSpeed, speed, exponent = 3 as Ratio }: PropellerLaw): number {
  requirePositive(`${caller}: ratedPower`, ratedPower, "W");
  requirePositive(`${caller}: ratedSpeed`, ratedSpeed, "rev/s");
  requireNotNegative(`${caller}: speed`, speed, "rev/s");
  requireWithin(`${caller}: exponent`, exponent, propellerExponentSpan);
  return (speed / ratedSpeed) ** exponent;
}
