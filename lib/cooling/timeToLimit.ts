import {
  type Power,
  requireFinite,
  requireNotNegative,
  requirePositive,
  type Temperature,
  type Time,
} from "../quantity";

export interface WarmingInputs {
  /** heat that one kelvin takes up, of the liquid and the metal that warms with it [J/K], above 0 */
  readonly heatCapacity: number;
  /** heat that goes on coming in [W], 0 or above */
  readonly heat: Power;
  /** heat passed on at a temperature [W], growing with it */
  readonly passed: (temperature: Temperature) => Power;
  /** temperature at the start [K], above 0 */
  readonly start: Temperature;
  /** temperature that must not be passed [K] */
  readonly limit: Temperature;
}

/** Intervals between start and limit; the integrand is smooth but where a thermostat begins or ends to open. */
const intervals = 200;

/**
 * Time until a lump of coolant and metal reaches a limit [s]: t = ∫ C dT/(Q − Q_passed(T)) from start to limit; 0 where
 * it is past the limit already, Infinity where it settles below.
 * One temperature for the whole lump and heat that stays as it is: a first estimate, and a favourable one for metal
 * next to the gas, which is hotter sooner.
 *
 * @param warming heat capacity [J/K], heat coming in and passed on [W], start and limit [K]
 * @throws RangeError if an argument is outside its span
 * @source first law for a lump of one temperature; Incropera et al., Fundamentals of Heat and Mass Transfer, ch. 5 (from memory)
 * @example timeToLimit({ heatCapacity: 100000, heat: 10000, passed: () => 0, start: 360, limit: 370 }) // 100
 */
export function timeToLimit({ heatCapacity, heat, passed, start, limit }: WarmingInputs): Time {
  requirePositive("timeToLimit: heatCapacity", heatCapacity, "J/K");
  requireNotNegative("timeToLimit: heat", heat, "W");
  requirePositive("timeToLimit: start", start, "K");
  requireFinite("timeToLimit: limit", limit, "K");
  if (start >= limit) return 0 as Time;
  const step = (limit - start) / intervals;
  let sum = 0;
  for (let i = 0; i < intervals; i++) {
    // midpoints, so that neither end is asked: a balance just at the limit is never reached
    const gain = heat - passed((start + (i + 0.5) * step) as Temperature);
    if (!(gain > 0)) return Number.POSITIVE_INFINITY as Time;
    sum += step / gain;
  }
  if (!(heat - passed(limit) > 0)) return Number.POSITIVE_INFINITY as Time;
  return (heatCapacity * sum) as Time;
}
