import {
  type Count,
  type Length,
  type Ratio,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  type Velocity,
} from "../quantity";
import type { Rotation } from "./beltLayout";
import { requireTeeth } from "./pulley";

/** Two toothed pulleys on one belt. */
export interface ToothedPair {
  /** teeth of the driving pulley [–], whole */
  readonly driverTeeth: Count;
  /** teeth of the driven pulley [–], whole */
  readonly drivenTeeth: Count;
}

/**
 * Driven turns per turn of the driver [–]: z₁ / z₂. Above 1 the driven shaft is the faster. A toothed belt does not slip.
 *
 * @param pair teeth of both pulleys [–]
 * @throws RangeError if either is not a whole number of teeth
 * @source ISO 5294 (from memory)
 * @example driveRatio({ driverTeeth: 72, drivenTeeth: 36 }) // 2
 */
export function driveRatio({ driverTeeth, drivenTeeth }: ToothedPair): Ratio {
  requireTeeth("driveRatio: driverTeeth", driverTeeth);
  requireTeeth("driveRatio: drivenTeeth", drivenTeeth);
  return (driverTeeth / drivenTeeth) as Ratio;
}

/** Two toothed pulleys on one belt, and the speed of the first. */
export interface DrivenPair extends ToothedPair {
  /** speed of the driving pulley [rev/s], 0 or above */
  readonly driverSpeed: RotationalSpeed;
}

/**
 * Speed of a driven shaft [rev/s]: n₂ = n₁ z₁ / z₂.
 *
 * @param drive driver's speed [rev/s], 0 or above, and teeth of both pulleys [–]
 * @throws RangeError if the speed is negative or either pulley has no whole number of teeth
 * @source ISO 5294 (from memory)
 * @example drivenSpeed({ driverSpeed: 105, driverTeeth: 72, drivenTeeth: 36 }) // 210
 */
export function drivenSpeed({ driverSpeed, ...pair }: DrivenPair): RotationalSpeed {
  requireNotNegative("drivenSpeed: driverSpeed", driverSpeed, "rev/s");
  return (driverSpeed * driveRatio(pair)) as RotationalSpeed;
}

/**
 * Speed of the belt along its pitch line [m/s]: v = π d n.
 *
 * @param pitchDiameter pitch diameter of any pulley on it [m], above 0
 * @param speed that pulley's speed [rev/s], 0 or above
 * @throws RangeError if the diameter is not above 0 or the speed negative
 * @source definition
 * @example beltSpeed(0.112045, 100) // 35.2
 */
export function beltSpeed(pitchDiameter: Length, speed: RotationalSpeed): Velocity {
  requirePositive("beltSpeed: pitchDiameter", pitchDiameter, "m");
  requireNotNegative("beltSpeed: speed", speed, "rev/s");
  return (Math.PI * pitchDiameter * speed) as Velocity;
}

/** What a driven unit and the engine allow. */
export interface RatioWindowInputs {
  /** speed that the unit needs at idle [rev/s], above 0 */
  readonly minimumSpeed: RotationalSpeed;
  /** speed that the unit stands at the engine's top speed [rev/s], above 0 */
  readonly maximumSpeed: RotationalSpeed;
  /** engine speed at idle [rev/s], above 0 */
  readonly idle: RotationalSpeed;
  /** highest engine speed [rev/s], at least idle */
  readonly top: RotationalSpeed;
}

/** Drive ratios that suit a unit, in driven turns per crank turn. */
export interface RatioWindow {
  readonly lowest: Ratio;
  readonly highest: Ratio;
  /** true where no ratio does both; then the lowest exceeds the highest */
  readonly empty: boolean;
}

/**
 * Drive ratios that turn a unit fast enough at idle and not too fast at top speed [–]: n_min/idle to n_max/top.
 * An empty window is an answer, not a fault.
 *
 * @param needs speeds of unit and engine [rev/s]
 * @throws RangeError if a speed is not above 0 or the top speed lies below idle
 * @source interval arithmetic
 * @example ratioWindow({ minimumSpeed: 25, maximumSpeed: 133.333333, idle: 11.6666667, top: 50 }).lowest // 2.14286
 */
export function ratioWindow({ minimumSpeed, maximumSpeed, idle, top }: RatioWindowInputs): RatioWindow {
  requirePositive("ratioWindow: minimumSpeed", minimumSpeed, "rev/s");
  requirePositive("ratioWindow: maximumSpeed", maximumSpeed, "rev/s");
  requirePositive("ratioWindow: idle", idle, "rev/s");
  if (!(top >= idle && top < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`ratioWindow: top is ${top} rev/s; it must be at least the idle speed, ${idle} rev/s`);
  }
  const lowest = (minimumSpeed / idle) as Ratio;
  const highest = (maximumSpeed / top) as Ratio;
  return { lowest, highest, empty: lowest > highest };
}

/** A unit on the accessory plate. */
export interface MountedUnit {
  /** +1 where its pulley turns with the crank, −1 where against it, as a belt run tells */
  readonly sense: 1 | -1;
  /** the way the crank turns, seen from the front of the engine */
  readonly crankRotation: Rotation;
  /** the way its shaft end points: forward where it hangs behind the plate, rearward where it stands in front */
  readonly shaftEnd: "forward" | "rearward";
}

/**
 * The way a unit turns as seen when looking at its own shaft end [clockwise or counterclockwise].
 * A unit hung on the other face of the plate points its shaft the other way, and so needs the other rotation.
 *
 * @param unit its sense in the run, the crank's rotation and where its shaft end points [–]
 * @source geometry: a mirrored view reverses rotation
 * @example rotationSeenOnShaftEnd({ sense: 1, crankRotation: "clockwise", shaftEnd: "rearward" }) === "counterclockwise" ? 1 : 0 // 1
 */
export function rotationSeenOnShaftEnd({ sense, crankRotation, shaftEnd }: MountedUnit): Rotation {
  const reversals = (sense === 1 ? 0 : 1) + (shaftEnd === "forward" ? 0 : 1);
  if (reversals % 2 === 0) return crankRotation;
  return crankRotation === "clockwise" ? "counterclockwise" : "clockwise";
}
