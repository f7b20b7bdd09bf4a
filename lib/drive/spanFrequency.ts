import {
  type Force,
  type Frequency,
  type Length,
  type MassPerLength,
  requireNotNegative,
  requirePositive,
  type Velocity,
} from "../quantity";

/** A straight piece of belt between two pulleys. */
export interface TautSpan {
  /** whole tension, centrifugal part included [N], above 0 */
  readonly tension: Force;
  /** mass of a metre of the belt in its actual width [kg/m], above 0 */
  readonly massPerLength: MassPerLength;
  /** free length [m], above 0 */
  readonly spanLength: Length;
  /** speed of the belt [m/s], 0 or above; 0, at rest, if left out */
  readonly beltSpeed?: Velocity;
}

/**
 * Lowest natural frequency of a span [Hz]: at rest f = c / (2 L), running f = (c² − v²) / (2 L c), with c = √(T / m′).
 * The stiffness of the belt against bending is left out, which raises the frequency of short spans.
 *
 * @param span tension [N], mass per length [kg/m], free length [m] and belt speed [m/s]
 * @throws RangeError if the belt runs as fast as waves run along it, or an argument lies outside its span
 * @source F. R. Archibald and A. G. Emslie, The vibration of a string having a uniform motion along its length,
 *   Journal of Applied Mechanics 25 (1958) (from memory)
 * @example spanFrequency({ tension: 600, massPerLength: 0.2, spanLength: 0.3 }) // 91.2871
 */
export function spanFrequency({ tension, massPerLength, spanLength, beltSpeed }: TautSpan): Frequency {
  const speed = beltSpeed ?? 0;
  requirePositive("spanFrequency: tension", tension, "N");
  requirePositive("spanFrequency: massPerLength", massPerLength, "kg/m");
  requirePositive("spanFrequency: spanLength", spanLength, "m");
  requireNotNegative("spanFrequency: beltSpeed", speed, "m/s");
  const waveSpeed = Math.sqrt(tension / massPerLength);
  if (speed >= waveSpeed) {
    throw new RangeError(
      `spanFrequency: beltSpeed is ${speed} m/s; it must be below ${Number(waveSpeed.toPrecision(4))} m/s, the speed of waves at this tension`,
    );
  }
  return (((waveSpeed - speed) * (waveSpeed + speed)) / (2 * spanLength * waveSpeed)) as Frequency;
}

/** What is heard of a plucked span at rest. */
export interface PluckedSpan extends Omit<TautSpan, "tension" | "beltSpeed"> {
  /** lowest natural frequency [Hz], above 0 */
  readonly frequency: Frequency;
}

/**
 * Tension of a belt at rest from the note of a plucked span [N]: T = 4 m′ L² f².
 * Never pluck or touch a belt that can turn: lock the engine first.
 *
 * @param span frequency [Hz], mass per length [kg/m] and free length [m]
 * @throws RangeError if an argument is not above 0
 * @source taut string, inverse of spanFrequency at rest
 * @example tensionFromFrequency({ frequency: 91.287093, massPerLength: 0.2, spanLength: 0.3 }) // 600
 */
export function tensionFromFrequency({ frequency, massPerLength, spanLength }: PluckedSpan): Force {
  requirePositive("tensionFromFrequency: frequency", frequency, "Hz");
  requirePositive("tensionFromFrequency: massPerLength", massPerLength, "kg/m");
  requirePositive("tensionFromFrequency: spanLength", spanLength, "m");
  return (4 * massPerLength * (spanLength * frequency) ** 2) as Force;
}
