import { newtonSystem, type Slopes } from "../../numeric";
import { coolerHeat } from "../chargeCooler";
import type { PathMarch } from "../path/marchState";
import { type OperatingSetting, type OperatingState, type OperatingTrial, operatingState } from "./operatingState";

/** What closes the equations of a point: a given mixture, fuel or power, or a limit that is just met. */
export type Closure =
  | { readonly kind: "excessAir"; readonly excessAirRatio: number }
  | { readonly kind: "fuelFlow"; readonly fuelFlow: number }
  | { readonly kind: "brakePower"; readonly brakePower: number }
  | { readonly kind: "limit"; readonly margin: (state: OperatingState) => number };

/** A closed balance, and what helps to close the next one. */
export interface Balance {
  readonly state: OperatingState;
  readonly residual: number;
  readonly iterations: number;
  readonly slopes: Slopes;
}

/**
 * The state at which all balances close, by Newton's method: flow of engine and blowers, power of each shaft, power at
 * the pistons, streams that pass two coolers, and the closure. Unknowns are logarithms of air flow, wheel speeds, blower
 * ratios and fuel flow, the share of the brake in the indicated power, and warmings of cooling streams, where there are
 * some.
 *
 * @throws RangeError if the balance is not found from this start
 */
export function balance(setting: OperatingSetting, closure: Closure, start: OperatingTrial, slopes?: Slopes): Balance {
  const { build, bypassesOpen, warmers, stoichiometric, tolerance, mostStates } = setting;
  const banks = start.wheelSpeeds.length;
  const dryShare = 1 / (1 + build.surroundings.humidityRatio);
  const fuelIsFree = closure.kind === "brakePower" || closure.kind === "limit";
  const shareIsFree = closure.kind !== "brakePower";
  const indicatedPerFuel = build.engine.grossIndicatedEfficiency * build.fuel.lowerHeatingValue;

  const warmed: number[] = [];
  for (let i = 0; i < warmers.length; i++) if (warmers[i]! >= 0) warmed.push(i);

  const trialAt = (x: readonly number[]): OperatingTrial => {
    let next = 0;
    const airFlow = Math.exp(x[next++]!);
    const wheelSpeeds = new Array<number>(banks);
    for (let i = 0; i < banks; i++) wheelSpeeds[i] = Math.exp(x[next++]!);
    const blowerRatios = new Array<number>(bypassesOpen.length);
    for (let i = 0; i < blowerRatios.length; i++) blowerRatios[i] = bypassesOpen[i] ? 1 : Math.exp(x[next++]!);
    let { sinkWarmings } = start;
    if (warmed.length > 0) {
      const warmings = new Array<number>(warmers.length).fill(0);
      for (const i of warmed) warmings[i] = x[next++]! * warmingScale;
      sinkWarmings = warmings;
    }
    let fuelFlow: number;
    if (fuelIsFree) fuelFlow = Math.exp(x[next++]!);
    else if (closure.kind === "fuelFlow") fuelFlow = closure.fuelFlow;
    else fuelFlow = (airFlow * dryShare) / (stoichiometric * (closure as { excessAirRatio: number }).excessAirRatio);
    const brakeShare = shareIsFree
      ? x[next]!
      : (closure as { brakePower: number }).brakePower / (indicatedPerFuel * fuelFlow);
    return { airFlow, wheelSpeeds, blowerRatios, sinkWarmings, fuelFlow, brakeShare };
  };
  const alongPath = 1 + banks + bypassesOpen.filter((open) => !open).length + warmed.length;
  let latest: Asked | undefined;
  const equations = (x: readonly number[]): number[] => {
    const state = operatingState(setting, trialAt(x), sameMarch(x, latest, alongPath));
    latest = { at: x, state };
    const residuals = mismatches(state);
    for (const i of warmed) residuals.push(warmingMismatch(state, i, warmers[i]!));
    if (closure.kind === "limit") residuals.push(closure.margin(state));
    return residuals;
  };
  const x = [Math.log(start.airFlow)];
  for (const speed of start.wheelSpeeds) x.push(Math.log(speed));
  start.blowerRatios.forEach((ratio, i) => {
    if (!bypassesOpen[i]) x.push(Math.log(ratio));
  });
  for (const i of warmed) x.push(start.sinkWarmings[i]! / warmingScale);
  if (fuelIsFree) x.push(Math.log(start.fuelFlow));
  if (shareIsFree) x.push(start.brakeShare);
  const found = newtonSystem(equations, x, {
    name: "no balance: a state that closes all equations",
    tolerance,
    mostEvaluations: mostStates,
    // slopes of a point with another number of bypasses open do not fit
    slopes: slopes?.length === x.length ? slopes : undefined,
  });
  const state = latest?.at === found.root ? latest.state : operatingState(setting, trialAt(found.root));
  return { state, residual: found.residual, iterations: found.iterations, slopes: found.slopes };
}

/** A warming of this much counts as one among the unknowns [K]. */
const warmingScale = 10;

/** How far the warming of a cooler's stream is from what the cooler before it gives off. */
function warmingMismatch({ trial, march }: OperatingState, cooler: number, warmer: number): number {
  const { inlet, outlet } = march.coolers[warmer]!;
  const { perWatt } = march.coolers[cooler]!.element.warmedBy!;
  return (trial.sinkWarmings[cooler]! - perWatt * coolerHeat(inlet, outlet.temperature)) / warmingScale;
}

interface Asked {
  readonly at: readonly number[];
  readonly state: OperatingState;
}

/** The march of the state asked for before, where fuel and load alone have changed since. */
function sameMarch(x: readonly number[], before: Asked | undefined, alongPath: number): PathMarch | undefined {
  if (!before) return undefined;
  for (let i = 0; i < alongPath; i++) if (x[i] !== before.at[i]) return undefined;
  return before.state.march;
}

/** How far each balance of a state is from closed, relative: engine, blowers, shafts, pistons. */
function mismatches(state: OperatingState): number[] {
  const residuals = [state.engineMismatch];
  for (const { mismatch, bypassOpen } of state.march.blowers) if (!bypassOpen) residuals.push(mismatch);
  for (const { available, power } of state.turbines) residuals.push(softLogarithm(available / power));
  residuals.push((state.given - state.needed) / state.given);
  return residuals;
}

/** The logarithm, and below a tenth its tangent, so that a turbine that brakes is still a number. */
function softLogarithm(x: number): number {
  return x > 0.1 ? Math.log(x) : Math.log(0.1) + (x - 0.1) / 0.1;
}
