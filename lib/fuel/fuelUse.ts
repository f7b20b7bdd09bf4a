import {
  type Fraction,
  type Mass,
  type MassFlow,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Time,
  type Velocity,
} from "../quantity";

/** An engine at the point from which its consumption is carried to others. */
export interface ConsumptionAnchor {
  /** fuel flow there [kg/s], above 0 */
  readonly fuelFlow: MassFlow;
  /** power at the flywheel there [W], above 0 */
  readonly brakePower: Power;
  /** gross indicated power there [W], above the power at the flywheel */
  readonly indicatedPower: Power;
}

/** Another point of the same engine, in shares of that one. */
export interface LoadPoint {
  /** engine speed over that of the anchor [–], 0 to 1.5 */
  readonly speedShare: Fraction;
  /** power at the flywheel over that of the anchor [–], 0 to 1.5 */
  readonly powerShare: Fraction;
  /** exponent with which the inner losses grow with speed [–], 0 to 4; 2 if left out */
  readonly lossExponent?: Ratio;
}

/**
 * Fuel flow at part load [kg/s]: ṁ_r (P + L ν^x)/(P_r + L), with L = P_i − P_r all that stands between the pistons and
 * the flywheel, ν the share of speed. Gross indicated efficiency is taken as the same everywhere, as a Willans line does;
 * real engines lose a few per cent of it at little load. At standstill and no load it is 0.
 *
 * @param anchor fuel flow [kg/s] and powers [W] where they are known
 * @param point shares of speed and power, exponent of the losses [–]
 * @throws RangeError if an argument lies outside its span
 * @source P. W. Willans's line, as in textbooks (from memory); exponent 2: friction, blower and pumps: common practice, no source
 * @example fuelFlowAtLoad({ fuelFlow: 0.04, brakePower: 700e3, indicatedPower: 840e3 }, { speedShare: 0.8, powerShare: 0.512 }) // 0.0213333
 */
export function fuelFlowAtLoad(anchor: ConsumptionAnchor, point: LoadPoint): MassFlow {
  const { fuelFlow, brakePower, indicatedPower } = anchor;
  const { speedShare, powerShare, lossExponent = 2 } = point;
  requirePositive("fuelFlowAtLoad: fuelFlow", fuelFlow, "kg/s");
  requirePositive("fuelFlowAtLoad: brakePower", brakePower, "W");
  requireWithin("fuelFlowAtLoad: speedShare", speedShare, [0, 1.5]);
  requireWithin("fuelFlowAtLoad: powerShare", powerShare, [0, 1.5]);
  requireWithin("fuelFlowAtLoad: lossExponent", lossExponent, [0, 4]);
  const losses = indicatedPower - brakePower;
  requireNotNegative("fuelFlowAtLoad: indicatedPower above brakePower", losses, "W");
  return ((fuelFlow * (brakePower * powerShare + losses * speedShare ** lossExponent)) / indicatedPower) as MassFlow;
}

/** A flow of fuel at a speed, the speed in shares of an anchor's. */
export interface FuelledPoint {
  /** engine speed over that of the anchor [–], 0 to 1.5 */
  readonly speedShare: Fraction;
  /** fuel flow [kg/s], 0 or above */
  readonly fuelFlow: MassFlow;
  /** exponent with which the inner losses grow with speed [–], 0 to 4; 2 if left out */
  readonly lossExponent?: Ratio;
}

/**
 * Power at the flywheel that a flow of fuel gives [W]: ṁ P_i/ṁ_r − L ν^x, the inverse of fuelFlowAtLoad; negative where
 * the fuel does not turn the engine over.
 *
 * @param anchor fuel flow [kg/s] and powers [W] where they are known
 * @param point share of speed, fuel flow [kg/s], exponent of the losses [–]
 * @throws RangeError if an argument lies outside its span
 * @source as fuelFlowAtLoad
 * @example powerOfFuel({ fuelFlow: 0.04, brakePower: 700e3, indicatedPower: 840e3 }, { speedShare: 0.8, fuelFlow: 0.0213333 }) // 358399
 */
export function powerOfFuel(anchor: ConsumptionAnchor, point: FuelledPoint): Power {
  const { brakePower, indicatedPower } = anchor;
  const { speedShare, fuelFlow, lossExponent = 2 } = point;
  requirePositive("powerOfFuel: the anchor's fuelFlow", anchor.fuelFlow, "kg/s");
  requireNotNegative("powerOfFuel: fuelFlow", fuelFlow, "kg/s");
  requireWithin("powerOfFuel: speedShare", speedShare, [0, 1.5]);
  requireWithin("powerOfFuel: lossExponent", lossExponent, [0, 4]);
  requireNotNegative("powerOfFuel: indicatedPower above brakePower", indicatedPower - brakePower, "W");
  const losses = (indicatedPower - brakePower) * speedShare ** lossExponent;
  return ((fuelFlow / anchor.fuelFlow) * indicatedPower - losses) as Power;
}

/** A part of a day's work. */
export interface DutyPhase {
  /** part of the time, by weight: all of them are brought to 1 [–], 0 or above */
  readonly timeShare: Fraction;
  /** fuel flow in it [kg/s], 0 or above */
  readonly fuelFlow: MassFlow;
  /** speed over ground or water in it [m/s], 0 or above */
  readonly way: Velocity;
}

/** A day's work, on average. */
export interface MeanDuty {
  /** mean fuel flow [kg/s] */
  readonly fuelFlow: MassFlow;
  /** mean speed over ground or water [m/s] */
  readonly way: Velocity;
}

/**
 * Mean fuel flow [kg/s] and mean speed [m/s] of a duty cycle: Σ τ ṁ/Σ τ and Σ τ v/Σ τ. Warming up and what is burnt
 * between phases are left out.
 *
 * @param phases their shares of time [–], flows [kg/s] and speeds [m/s]
 * @throws RangeError if an argument is negative, or all shares of time are 0
 * @source weighted mean
 * @example meanDuty([{ timeShare: 0.25, fuelFlow: 0.04, way: 20 }, { timeShare: 0.75, fuelFlow: 0.01, way: 8 }]).fuelFlow // 0.0175
 */
export function meanDuty(phases: readonly DutyPhase[]): MeanDuty {
  let [time, fuel, way] = [0, 0, 0];
  for (const phase of phases) {
    requireNotNegative("meanDuty: timeShare", phase.timeShare);
    requireNotNegative("meanDuty: fuelFlow", phase.fuelFlow, "kg/s");
    requireNotNegative("meanDuty: way", phase.way, "m/s");
    time += phase.timeShare;
    fuel += phase.timeShare * phase.fuelFlow;
    way += phase.timeShare * phase.way;
  }
  requirePositive("meanDuty: sum of timeShare", time);
  return { fuelFlow: (fuel / time) as MassFlow, way: (way / time) as Velocity };
}

/**
 * Time for which a quantity of fuel lasts [s]: m/ṁ.
 *
 * @param mass fuel that may be used [kg], 0 or above
 * @param fuelFlow mean fuel flow [kg/s], above 0
 * @throws RangeError if an argument lies outside its span
 * @source mass balance
 * @example fuelEndurance(300, 0.0175) // 17142.86
 */
export function fuelEndurance(mass: Mass, fuelFlow: MassFlow): Time {
  requireNotNegative("fuelEndurance: mass", mass, "kg");
  requirePositive("fuelEndurance: fuelFlow", fuelFlow, "kg/s");
  return (mass / fuelFlow) as Time;
}
