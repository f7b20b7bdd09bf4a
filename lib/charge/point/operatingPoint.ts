import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { RotationalSpeed } from "../../quantity/kinds";
import { mostLossShare } from "../path/pathMarch";
import type { Closure } from "./balance";
import { describePoint } from "./describePoint";
import type { GasSource } from "./gasSource";
import type { Load, OperatingBuild } from "./operatingBuild";
import type { OperatingPoint } from "./operatingResult";
import type { OperatingTrial } from "./operatingState";
import { bypassOf, operatingSetting } from "./setting";
import { type Solved, solved } from "./solved";

/** A speed, and what the engine is asked for there. */
export interface OperatingQuestion {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** full load by excess air, a power at the flywheel or a fuel flow; full load at the least excess air of the limits if left out */
  readonly load?: Load;
  /** a point of the same build, from which alone the balance is sought; from nothing if left out */
  readonly near?: OperatingPoint;
}

/**
 * What chosen parts give at a speed and load [kg/s, Pa, K, W, rev/s]: the loop of air, exhaust, turbines, back pressure,
 * blower power and fuel, closed. Wheel speeds follow from the balance of each shaft, flows from engine, blowers and
 * turbines, temperatures from the first law; every limit of the build is held against the point, and none bends it: see
 * attainable for the most that all limits allow. Steady mean values; pulses and heat soaked through housings are left out.
 * Of several solutions the one nearest to middling wheel speeds is found.
 *
 * @param build everything from the open air to the exhaust pipe, and the limits
 * @param question engine speed and load, and a point to begin from [rev/s, –, W or kg/s]
 * @param gases where the gases come from; lib/fluid if left out
 * @throws RangeError "operatingPoint: no balance: …" with the cause, or an argument outside its span
 * @source conservation of mass; first law on every element; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (balance of the shaft, from memory)
 * @example operatingPoint(inventedOperatingBuild, { engineSpeed: 50, load: { kind: "excessAir", excessAirRatio: 1.65 } }).brakePower / 1000 // 691.48
 */
export function operatingPoint(
  build: OperatingBuild,
  { engineSpeed, load, near }: OperatingQuestion,
  gases?: GasSource,
): OperatingPoint {
  const cold = operatingSetting(build, engineSpeed, gases);
  const closure = closureOf(load ?? fullLoad(cold.build));
  return describePoint(
    solvedOrRefused(() => {
      if (near === undefined) return requireCharging(solved(cold, closure));
      const setting = { ...cold, bypassesOpen: near.blowers.map(({ bypassOpen }) => bypassOpen) };
      return requireCharging(solved(setting, closure, { trial: trialOf(build, near) }));
    }),
  );
}

/** The trial that led to a point. */
function trialOf({ engine, fuel }: OperatingBuild, point: OperatingPoint): OperatingTrial {
  const { airFlow, fuelFlow, banks, blowers, coolers, brakePower } = point;
  return {
    airFlow,
    wheelSpeeds: banks.map(({ wheelSpeed }) => wheelSpeed),
    blowerRatios: blowers.map(({ pressureRatio }) => pressureRatio),
    sinkWarmings: coolers.map(({ sinkWarming }) => sinkWarming),
    fuelFlow,
    brakeShare: brakePower / (engine.grossIndicatedEfficiency * fuelFlow * fuel.lowerHeatingValue),
  };
}

function fullLoad({ limits }: OperatingBuild): Load {
  return { kind: "excessAir", excessAirRatio: limits.leastExcessAirRatio };
}

function closureOf(load: Load): Closure {
  switch (load.kind) {
    case "excessAir":
      requireWithin("operatingPoint: excessAirRatio", load.excessAirRatio, [1, 50]);
      return load;
    case "brakePower":
      requireNotNegative("operatingPoint: brakePower", load.brakePower, "W");
      return load;
    case "fuelFlow":
      requirePositive("operatingPoint: fuelFlow", load.fuelFlow, "kg/s");
      return load;
  }
}

/** Passes a balance in which no closed blower holds the air back. */
export function requireBlowing(found: Solved): Solved {
  for (const { element, bypassOpen, pressureRatio } of found.state.march.blowers) {
    if (bypassOpen || pressureRatio >= 1 - 10 * found.setting.tolerance || bypassOf(element) === "automatic") continue;
    throw new RangeError(
      `no balance: pressure ratio of ${element.name} is ${pressureRatio.toPrecision(4)}; it would be a restriction: open its bypass, drive it faster or take a larger one`,
    );
  }
  return found;
}

/** Passes a balance in which nothing that should charge the engine holds its air back. */
function requireCharging(found: Solved): Solved {
  requireBlowing(found);
  const { states, banks } = found.state.march;
  const { path } = found.setting.build;
  path.forEach((element, i) => {
    const left = states[i + 1]!.pressure / states[i]!.pressure;
    if ((element.kind !== "restriction" && element.kind !== "cooler") || left > 1 - mostLossShare) return;
    throw new RangeError(`no balance: ${element.name} would take more than half of the pressure before it; give it more room, or check the flow at which its loss was measured`);
  });
  for (const { element, point } of banks) {
    if (point.pressureRatio > 0.8) continue;
    throw new RangeError(
      `no balance: ${element.name} would throttle, at a pressure ratio of ${point.pressureRatio.toFixed(3)}; its compressors are too small for this flow: take larger or more of them, or smaller turbines that spin them faster`,
    );
  }
  return found;
}

/** Puts the name of the function before what a solver refused. */
export function solvedOrRefused<T>(solve: () => T, name = "operatingPoint"): T {
  try {
    return solve();
  } catch (error) {
    if (!(error instanceof RangeError) || error.message.startsWith(`${name}: `)) throw error;
    const { message } = error;
    throw new RangeError(message.startsWith("no balance") ? `${name}: ${message}` : `${name}: no balance: ${message}`);
  }
}
