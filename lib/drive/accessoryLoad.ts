import {
  type ElectricCurrent,
  type Fraction,
  type Power,
  type Ratio,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Torque,
  type Voltage,
} from "../quantity";
import { type SpeedCurve, valueAtSpeed } from "./speedCurve";

/** An alternator under electrical load. */
export interface LoadedAlternator {
  /** voltage at its terminals [V], above 0 */
  readonly voltage: Voltage;
  /** current drawn [A], 0 or above */
  readonly current: ElectricCurrent;
  /** speed of its shaft [rev/s], within the curve */
  readonly speed: RotationalSpeed;
  /** electrical power over shaft power [–], by shaft speed [rev/s]; from its maker or a test */
  readonly efficiencyCurve: SpeedCurve<Fraction>;
}

/** What a belt-driven unit takes from its own shaft. */
export interface ShaftLoad {
  /** power at the shaft [W] */
  readonly power: Power;
  /** torque at the shaft [N·m] */
  readonly torque: Torque;
}

/** What an alternator takes from its shaft. */
export interface AlternatorLoad extends ShaftLoad {
  /** efficiency read from the curve [–] */
  readonly efficiency: Fraction;
}

/**
 * Power and torque at an alternator's shaft for an electrical load [W, N·m]: P = U I / η(n), T = P / (2 π n).
 * Whether the alternator can give that current at that speed is another question: see alternatorCurrent. Windage at
 * no load is left out.
 *
 * @param alternator voltage [V], current [A], shaft speed [rev/s] and efficiency curve [–]
 * @throws RangeError if the speed lies outside the curve, or the efficiency read there is not above 0 and at most 1
 * @source definition of efficiency; the curve is the user's
 * @example alternatorLoad({ voltage: 14.2, current: 90, speed: 60, efficiencyCurve: [{ speed: 50, value: 0.68 }, { speed: 75, value: 0.65 }] }).power // 1913.174
 */
export function alternatorLoad({ voltage, current, speed, efficiencyCurve }: LoadedAlternator): AlternatorLoad {
  requirePositive("alternatorLoad: voltage", voltage, "V");
  requireNotNegative("alternatorLoad: current", current, "A");
  requirePositive("alternatorLoad: speed", speed, "rev/s");
  const efficiency = valueAtSpeed("alternatorLoad: efficiencyCurve", efficiencyCurve, speed);
  requireWithin("alternatorLoad: efficiency", efficiency, [0.01, 1]);
  const power = (voltage * current) / efficiency;
  return { efficiency, power: power as Power, torque: (power / (2 * Math.PI * speed)) as Torque };
}

/** An alternator's own limit. */
export interface AlternatorOutput {
  /** shaft speed below which it gives nothing [rev/s], 0 or above */
  readonly cutInSpeed: RotationalSpeed;
  /** highest current [A], by shaft speed [rev/s], from the cut-in speed on; from its maker or a test */
  readonly currentCurve: SpeedCurve<ElectricCurrent>;
}

/**
 * Highest current that an alternator gives at a shaft speed [A]: nothing below the cut-in speed, then its curve.
 *
 * @param output cut-in speed [rev/s] and current [A] by speed
 * @param speed shaft speed [rev/s], 0 up to the end of the curve
 * @throws RangeError if the speed is negative or lies outside the curve
 * @source linear interpolation; the curve is the user's
 * @example alternatorCurrent({ cutInSpeed: 20, currentCurve: [{ speed: 20, value: 0 }, { speed: 50, value: 90 }] }, 40) // 60
 */
export function alternatorCurrent(
  { cutInSpeed, currentCurve }: AlternatorOutput,
  speed: RotationalSpeed,
): ElectricCurrent {
  requireNotNegative("alternatorCurrent: cutInSpeed", cutInSpeed, "rev/s");
  requireNotNegative("alternatorCurrent: speed", speed, "rev/s");
  if (speed < cutInSpeed) return 0 as ElectricCurrent;
  return valueAtSpeed("alternatorCurrent: currentCurve", currentCurve, speed);
}

/** A unit behind its belt. */
export interface BeltDrivenLoad extends ShaftLoad {
  /** power delivered over power taken from the crank [–], above 0 to 1 */
  readonly beltEfficiency: Fraction;
  /** unit turns per crank turn [–], above 0 */
  readonly driveRatio: Ratio;
}

/**
 * Power and torque that a belt-driven unit takes from the crank [W, N·m]: P / η_b and T i / η_b.
 *
 * @param load power [W] and torque [N·m] at the unit's shaft, belt efficiency [–] and drive ratio [–]
 * @throws RangeError if an argument lies outside its span
 * @source conservation of energy
 * @example loadOnCrank({ power: 1913.174, torque: 5.074851, beltEfficiency: 0.97, driveRatio: 2.6 }).torque // 13.60269
 */
export function loadOnCrank({ power, torque, beltEfficiency, driveRatio }: BeltDrivenLoad): ShaftLoad {
  requireNotNegative("loadOnCrank: power", power, "W");
  requireNotNegative("loadOnCrank: torque", torque, "N·m");
  requireWithin("loadOnCrank: beltEfficiency", beltEfficiency, [0.01, 1]);
  requirePositive("loadOnCrank: driveRatio", driveRatio);
  return { power: (power / beltEfficiency) as Power, torque: ((torque * driveRatio) / beltEfficiency) as Torque };
}
