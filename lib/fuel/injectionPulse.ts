import {
  type Area,
  type CrankAngle,
  type Density,
  type Pressure,
  type Ratio,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Time,
  type VolumeFlow,
  type VolumePerStroke,
} from "../quantity";
import type { NeedleRamps } from "./injectionDuration";
import { nozzleFlow } from "./nozzle";

/** A nozzle that sprays into a cylinder whose pressure changes with the crank. */
export interface SprayingNozzle extends NeedleRamps {
  /** area of all holes [m²], above 0 */
  readonly area: Area;
  /** flow over that of a loss-free jet [–], 0.3 to 1 */
  readonly dischargeCoefficient: Ratio;
  /** absolute pressure before the holes [Pa], above the cylinder's at all angles */
  readonly railPressure: Pressure;
  /** density of the fuel, where the volume is counted [kg/m³], above 0 */
  readonly density: Density;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** absolute pressure in the cylinder at a crank angle after top dead centre [rad → Pa] */
  readonly cylinderPressure: (angle: CrankAngle) => Pressure;
}

/** One injection out of a stroke. */
export interface InjectionPulse {
  /** crank angle at which fuel begins to flow, after top dead centre, negative before [rad], −2 to 2 */
  readonly start: CrankAngle;
  /** fuel that it brings [m³], 0 or above */
  readonly volume: VolumePerStroke;
}

/** A crank angle and the flow there. */
export interface RatePoint {
  readonly angle: CrankAngle;
  readonly flow: VolumeFlow;
}

/** An injection as it runs. */
export interface InjectedPulse {
  readonly start: CrankAngle;
  /** crank angle at which the flow ends, after top dead centre [rad] */
  readonly end: CrankAngle;
  /** time from the first fuel to the last [s] */
  readonly duration: Time;
  /** most that the needle opens, over full opening [–] */
  readonly opening: Ratio;
  /** the flow along the crank, from 0 back to 0 */
  readonly rate: readonly RatePoint[];
}

/** Parts into which the flow with open needle is cut, for Simpson's rule and for the rate's points: even. */
const parts = 8;

/** Crank angle beyond which no injection is looked for [rad]. */
const longest = 0.75 * Math.PI;

/**
 * An injection against the cylinder's own pressure: Q(θ) = a(t) C_d A √(2 (p_rail − p_cyl(θ))/ρ), with a rising and
 * falling along straight ramps between 0 and 1; it ends where its integral is the volume wanted [rad, s, m³/s].
 * If ramps are longer than the injection, the needle turns back before it is fully open. Waves in the pipes and
 * throttling at the needle's seat are left out, and the rail's pressure is taken as steady.
 *
 * @param nozzle holes [m², –], pressures [Pa], density [kg/m³], speed [rev/s] and ramps [s]
 * @param pulse start [rad] and volume [m³]
 * @throws RangeError if an argument lies outside its span, the cylinder's pressure reaches the rail's, or the injection
 * would last more than 135 degrees
 * @source orifice equation, see nozzleFlow; Simpson's rule in time
 * @example injectedPulse({ area: 1.608495e-7, dischargeCoefficient: 0.8, railPressure: 1600e5, density: 830, engineSpeed: 40, cylinderPressure: () => 120e5 }, { start: -0.2, volume: 180e-9 }).end // 0.388702
 */
export function injectedPulse(nozzle: SprayingNozzle, { start, volume }: InjectionPulse): InjectedPulse {
  requireWithin("injectedPulse: start", start, [-2, 2], "rad");
  requireNotNegative("injectedPulse: volume", volume, "m³");
  requirePositive("injectedPulse: engineSpeed", nozzle.engineSpeed, "rev/s");
  const { openingTime = 0, closingTime = 0 } = nozzle;
  requireNotNegative("injectedPulse: openingTime", openingTime, "s");
  requireNotNegative("injectedPulse: closingTime", closingTime, "s");
  const { railPressure, area, dischargeCoefficient, density } = nozzle;
  const turn = 2 * Math.PI * nozzle.engineSpeed; // rad/s
  const fullFlow = (time: number): number =>
    nozzleFlow({
      area,
      dischargeCoefficient,
      railPressure,
      density,
      cylinderPressure: nozzle.cylinderPressure((start + turn * time) as CrankAngle),
    });
  if (volume === 0) {
    return { start, end: start, duration: 0 as Time, opening: 0 as Ratio, rate: [] };
  }
  const course = (duration: number) => needleCourse({ duration, openingTime, closingTime });
  const passed = (duration: number) => integral(course(duration), fullFlow);

  // Newton's method from the flow at the start: one more instant with open needle brings a(t) Q more.
  const ramps = openingTime + closingTime;
  const full = volume / fullFlow(0);
  let duration = full >= ramps / 2 ? full + ramps / 2 : Math.sqrt(2 * full * ramps);
  requireEnding(turn * duration);
  for (let i = 0; i < 12; i++) {
    const { opening } = course(duration);
    const step = (passed(duration) - volume) / (opening * fullFlow(duration - (closingTime * opening) / 2));
    duration -= step;
    requireEnding(turn * duration);
    if (Math.abs(step) < 1e-13 + 1e-11 * duration) break;
  }
  const found = course(duration);
  const rate = [
    { time: 0, lift: 0 },
    ...Array.from({ length: parts + 1 }, (_, i) => ({
      time: found.opened + (i / parts) * (found.closing - found.opened),
      lift: found.opening,
    })),
    { time: duration, lift: 0 },
  ];
  return {
    start,
    end: (start + turn * duration) as CrankAngle,
    duration: duration as Time,
    opening: found.opening as Ratio,
    rate: rate.map(({ time, lift }) => ({
      angle: (start + turn * time) as CrankAngle,
      flow: (lift === 0 ? 0 : lift * fullFlow(time)) as VolumeFlow,
    })),
  };
}

function requireEnding(angle: number): void {
  if (angle < longest) return;
  throw new RangeError(
    `injectedPulse: the injection would last ${Number(((angle * 180) / Math.PI).toPrecision(3))} degrees of crank angle; it must end within 135: give it larger holes, more pressure or less fuel`,
  );
}

interface NeedleCourse {
  readonly duration: number;
  /** when the needle has opened as far as it will, and when it begins to close [s] */
  readonly opened: number;
  readonly closing: number;
  /** how far it opens [–] */
  readonly opening: number;
}

function needleCourse(at: { duration: number; openingTime: number; closingTime: number }): NeedleCourse {
  const { duration, openingTime, closingTime } = at;
  const opening = Math.min(1, duration / (openingTime + closingTime || Number.MIN_VALUE));
  return { duration, opening, opened: opening * openingTime, closing: duration - opening * closingTime };
}

/** Volume that passes: ramps by Simpson's rule of their product, the open needle in even parts. */
function integral({ duration, opened, closing, opening }: NeedleCourse, flow: (time: number) => number): number {
  const opens = (opened * opening * (2 * flow(opened / 2) + flow(opened))) / 6;
  const closes = ((duration - closing) * opening * (flow(closing) + 2 * flow((closing + duration) / 2))) / 6;
  const step = (closing - opened) / parts;
  if (step <= 0) return opens + closes;
  let sum = flow(opened) + flow(closing);
  for (let i = 1; i < parts; i++) sum += (i % 2 === 1 ? 4 : 2) * flow(opened + i * step);
  return opens + closes + (opening * sum * step) / 3;
}
