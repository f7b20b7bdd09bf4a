import {
  type Area,
  type CrankAngle,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  type Time,
  type VolumeFlow,
  type VolumePerStroke,
} from "../quantity";
import { nozzleFlow, type OpenNozzle } from "./nozzle";

/** How long the needle takes to open and to close. Left out, it is taken to move at once, which flatters the duration. */
export interface NeedleRamps {
  /** time from shut to full flow [s], 0 or above; 0 if left out. 0.2 to 0.4 ms is common practice, no source */
  readonly openingTime?: Time;
  /** time from full flow to shut [s], 0 or above; 0 if left out */
  readonly closingTime?: Time;
}

/** A quantity to inject, and the flow of the open nozzle. */
export interface Injection extends NeedleRamps {
  /** fuel of one stroke, at the density of the flow [m³], 0 or above */
  readonly volumePerStroke: VolumePerStroke;
  /** flow with open needle [m³/s], above 0 */
  readonly nozzleFlow: VolumeFlow;
}

/**
 * Time for which a nozzle is open to inject a quantity [s]. The flow rises and falls along straight ramps, each of which
 * delivers half of what full flow would: t = V/Q + (t_o + t_c)/2. A quantity below Q (t_o + t_c)/2 is injected before the
 * needle is fully open: t = √(2 V (t_o + t_c)/Q).
 *
 * @param injection volume [m³], flow [m³/s] and ramps [s]
 * @throws RangeError if the flow is not above 0 or another argument negative
 * @source trapezium and triangle of flow over time
 * @example injectionDuration({ volumePerStroke: 180e-9, nozzleFlow: 7.684518e-5 }) // 0.00234237
 */
export function injectionDuration(injection: Injection): Time {
  const { volumePerStroke, nozzleFlow: flow } = injection;
  requireNotNegative("injectionDuration: volumePerStroke", volumePerStroke, "m³");
  requirePositive("injectionDuration: nozzleFlow", flow, "m³/s");
  const ramps = rampTime("injectionDuration", injection);
  const full = volumePerStroke / flow;
  return (full >= ramps / 2 ? full + ramps / 2 : Math.sqrt(2 * full * ramps)) as Time;
}

/**
 * Crank angle that passes in a time [rad]: 2 π N t.
 *
 * @param duration time [s], 0 or above
 * @param engineSpeed crankshaft speed [rev/s], 0 or above
 * @throws RangeError if an argument is negative
 * @source definition
 * @example crankAngleOf(0.002342372, 40) // 0.588702
 */
export function crankAngleOf(duration: Time, engineSpeed: RotationalSpeed): CrankAngle {
  requireNotNegative("crankAngleOf: duration", duration, "s");
  requireNotNegative("crankAngleOf: engineSpeed", engineSpeed, "rev/s");
  return (2 * Math.PI * engineSpeed * duration) as CrankAngle;
}

/** A quantity that must be injected within a crank angle. */
export interface InjectionWindow extends NeedleRamps, Omit<OpenNozzle, "area"> {
  /** fuel of one stroke, at the density given [m³], above 0 */
  readonly volumePerStroke: VolumePerStroke;
  /** crank angle that injection may take, ramps included [rad], above 0 */
  readonly window: CrankAngle;
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
}

/**
 * Area of holes with which a quantity goes in within a crank angle [m²]; the inverse of injectionDuration.
 *
 * @param wanted volume [m³], window [rad], speed [rev/s], pressures [Pa], density [kg/m³], discharge [–] and ramps [s]
 * @throws RangeError if an argument lies outside its span
 * @source see injectionDuration and nozzleFlow
 * @example nozzleAreaForWindow({ volumePerStroke: 180e-9, window: 0.5887023, engineSpeed: 40, dischargeCoefficient: 0.8, railPressure: 1600e5, cylinderPressure: 120e5, density: 830 }) // 1.608495e-7
 */
export function nozzleAreaForWindow(wanted: InjectionWindow): Area {
  const { volumePerStroke, window, engineSpeed, dischargeCoefficient, railPressure, cylinderPressure, density } =
    wanted;
  requirePositive("nozzleAreaForWindow: volumePerStroke", volumePerStroke, "m³");
  requirePositive("nozzleAreaForWindow: window", window, "rad");
  requirePositive("nozzleAreaForWindow: engineSpeed", engineSpeed, "rev/s");
  const state = { railPressure, cylinderPressure, density };
  const time = window / (2 * Math.PI * engineSpeed);
  const ramps = rampTime("nozzleAreaForWindow", wanted);
  const fullFlowTime = time >= ramps ? time - ramps / 2 : time ** 2 / (2 * ramps);
  const flowOfUnitArea = nozzleFlow({ ...state, dischargeCoefficient, area: 1 as Area });
  return (volumePerStroke / (flowOfUnitArea * fullFlowTime)) as Area;
}

function rampTime(name: string, { openingTime, closingTime }: NeedleRamps): number {
  const opening = openingTime ?? 0;
  const closing = closingTime ?? 0;
  requireNotNegative(`${name}: openingTime`, opening, "s");
  requireNotNegative(`${name}: closingTime`, closing, "s");
  return opening + closing;
}
