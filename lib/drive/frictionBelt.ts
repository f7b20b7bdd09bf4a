import {
  type Angle,
  type Force,
  type Length,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Velocity,
} from "../quantity";

/** A friction belt on one pulley. */
export interface FrictionContact {
  /** friction as the groove makes it felt, from grooveFriction [–], above 0 */
  readonly friction: Ratio;
  /** arc of contact [rad], 0 or above */
  readonly wrap: Angle;
}

/** A friction belt on one pulley, and the tight side's tension. */
export interface FrictionDrive extends FrictionContact {
  /** whole tension of the tight span [N], above the centrifugal one */
  readonly tightTension: Force;
  /** centrifugal tension [N], 0 or above */
  readonly centrifugalTension: Force;
}

/** A friction belt on one pulley as it runs. */
export interface RunningDriveBelt extends FrictionDrive {
  /** speed of the belt [m/s], 0 or above */
  readonly beltSpeed: Velocity;
}

/** A friction belt on one pulley and how tight it was set. */
export interface TightenedContact extends FrictionContact {
  /** tension of the belt at rest [N], above 0 */
  readonly installationTension: Force;
}

/**
 * Friction as a grooved pulley makes it felt [–]: μ / sin(groove / 2).
 * A flat belt, or the back of a ribbed one, has a groove of π. Ribbed belts have about 40° (ISO 9981, from memory).
 *
 * @param friction coefficient of friction of belt on pulley [–], above 0
 * @param groove angle between the flanks of a groove [rad], above 0 to π
 * @throws RangeError if the friction is not above 0 or the groove outside its span
 * @source Shigley, Mechanical Engineering Design, chapter on flexible elements (from memory)
 * @example grooveFriction(0.35, 0.6981317) // 1.023332
 */
export function grooveFriction(friction: Ratio, groove: Angle): Ratio {
  requirePositive("grooveFriction: friction", friction);
  requireWithin("grooveFriction: groove", groove, [0.05, Math.PI], "rad");
  return (friction / Math.sin(groove / 2)) as Ratio;
}

/**
 * Highest ratio of the tensions either side of a pulley before a belt slips [–]: e^(μ φ). Tensions less the
 * centrifugal one.
 *
 * @param contact friction as felt [–] and arc of contact [rad]
 * @throws RangeError if the friction is not above 0 or the arc negative
 * @source Euler and Eytelwein; Shigley, Mechanical Engineering Design (from memory)
 * @example tensionRatioLimit({ friction: 1.02333154, wrap: 3.14159265 }) // 24.9006
 */
export function tensionRatioLimit({ friction, wrap }: FrictionContact): Ratio {
  requirePositive("tensionRatioLimit: friction", friction);
  requireNotNegative("tensionRatioLimit: wrap", wrap, "rad");
  return Math.exp(friction * wrap) as Ratio;
}

/**
 * Least tension of the slack span at which a belt does not slip [N]: T_c + (T₁ − T_c) / e^(μ φ).
 *
 * @param drive friction [–], arc [rad], tight and centrifugal tension [N]
 * @throws RangeError if the tight tension does not exceed the centrifugal one, or an argument lies outside its span
 * @source Shigley, Mechanical Engineering Design, chapter on flexible elements (from memory)
 * @example leastSlackTension({ friction: 1.02333154, wrap: 3.14159265, tightTension: 900, centrifugalTension: 75 }) // 108.132
 */
export function leastSlackTension({ tightTension, centrifugalTension, ...contact }: FrictionDrive): Force {
  requireNotNegative("leastSlackTension: centrifugalTension", centrifugalTension, "N");
  requireAbove("leastSlackTension: tightTension", tightTension, centrifugalTension);
  return (centrifugalTension + (tightTension - centrifugalTension) / tensionRatioLimit(contact)) as Force;
}

/**
 * Most power that a friction belt carries before it slips [W]: (T₁ − T₂) v with the least slack tension T₂.
 *
 * @param drive friction [–], arc [rad], tight and centrifugal tension [N], belt speed [m/s]
 * @throws RangeError as leastSlackTension does, or if the belt speed is negative
 * @source Shigley, Mechanical Engineering Design, chapter on flexible elements (from memory)
 * @example frictionBeltPower({ friction: 1.02333154, wrap: 3.14159265, tightTension: 900, centrifugalTension: 75, beltSpeed: 25 }) // 19796.7
 */
export function frictionBeltPower({ beltSpeed, ...drive }: RunningDriveBelt): Power {
  requireNotNegative("frictionBeltPower: beltSpeed", beltSpeed, "m/s");
  return ((drive.tightTension - leastSlackTension(drive)) * beltSpeed) as Power;
}

/**
 * Most pull that a belt carries from a given tension at rest [N]: 2 F_i (e^(μ φ) − 1) / (e^(μ φ) + 1).
 * The centrifugal tension is left out.
 *
 * @param contact friction as felt [–], arc [rad] and tension at rest [N]
 * @throws RangeError if the tension or the friction is not above 0 or the arc negative
 * @source Shigley, Mechanical Engineering Design, chapter on flexible elements (from memory)
 * @example greatestPull({ friction: 0.8, wrap: 3, installationTension: 282 }) // 470.181
 */
export function greatestPull({ installationTension, ...contact }: TightenedContact): Force {
  requirePositive("greatestPull: installationTension", installationTension, "N");
  // tanh(x/2) is (e^x − 1)/(e^x + 1), and does not overflow for a long arc.
  return (2 * installationTension * Math.tanh(Math.log(tensionRatioLimit(contact)) / 2)) as Force;
}

/** A friction belt as it runs. */
export interface RunningFriction {
  /** whole tension of the tight span [N] */
  readonly tightTension: Force;
  /** whole tension of the slack span [N], above the centrifugal one */
  readonly slackTension: Force;
  /** centrifugal tension [N], 0 or above */
  readonly centrifugalTension: Force;
  /** arc of contact [rad], above 0 */
  readonly wrap: Angle;
}

/**
 * Friction that a running belt makes use of [–]: ln((T₁ − T_c)/(T₂ − T_c)) / φ. Above what is there, it slips.
 *
 * @param running tight, slack and centrifugal tension [N], arc of contact [rad]
 * @throws RangeError if the slack tension does not exceed the centrifugal one, or the tight not the slack one
 * @source Shigley, Mechanical Engineering Design, chapter on flexible elements (from memory)
 * @example frictionInUse({ tightTension: 420, slackTension: 194.9107, centrifugalTension: 25.65, wrap: 3.0165111 }) // 0.28039
 */
export function frictionInUse({ tightTension, slackTension, centrifugalTension, wrap }: RunningFriction): Ratio {
  requireNotNegative("frictionInUse: centrifugalTension", centrifugalTension, "N");
  requireAbove("frictionInUse: slackTension", slackTension, centrifugalTension);
  requireWithin("frictionInUse: tightTension", tightTension, [slackTension, Number.POSITIVE_INFINITY], "N");
  requirePositive("frictionInUse: wrap", wrap, "rad");
  return (Math.log((tightTension - centrifugalTension) / (slackTension - centrifugalTension)) / wrap) as Ratio;
}

/** Two ribbed pulleys on one belt. */
export interface RibbedPair {
  /** diameter over the ribs' reference line of the driver [m], above 0 */
  readonly driverDiameter: Length;
  /** the same of the driven pulley [m], above 0 */
  readonly drivenDiameter: Length;
  /** from that reference line out to the belt's cord [m], 0 or above */
  readonly cordOffset: Length;
  /** part of the speed lost to creep and slip [–], 0 to 0.2 */
  readonly slip: Ratio;
}

/**
 * Driven turns per driver turn of a ribbed belt [–]: (d₁ + 2 h)/(d₂ + 2 h) · (1 − slip).
 * Slip of 1 to 2 % is common practice, no source.
 *
 * @param pair both diameters and the cord's offset [m], slip [–]
 * @throws RangeError if a diameter is not above 0, the offset negative or the slip outside its span
 * @source ISO 9981 for the effective diameter (from memory)
 * @example ribbedDriveRatio({ driverDiameter: 0.18, drivenDiameter: 0.06, cordOffset: 0.0015, slip: 0.01 }) // 2.87571
 */
export function ribbedDriveRatio({ driverDiameter, drivenDiameter, cordOffset, slip }: RibbedPair): Ratio {
  requirePositive("ribbedDriveRatio: driverDiameter", driverDiameter, "m");
  requirePositive("ribbedDriveRatio: drivenDiameter", drivenDiameter, "m");
  requireNotNegative("ribbedDriveRatio: cordOffset", cordOffset, "m");
  requireWithin("ribbedDriveRatio: slip", slip, [0, 0.2]);
  return (((driverDiameter + 2 * cordOffset) / (drivenDiameter + 2 * cordOffset)) * (1 - slip)) as Ratio;
}

function requireAbove(name: string, tension: number, centrifugal: number): void {
  if (tension > centrifugal && tension < Number.POSITIVE_INFINITY) return;
  throw new RangeError(`${name} is ${tension} N; it must exceed the centrifugal tension, ${centrifugal} N`);
}
