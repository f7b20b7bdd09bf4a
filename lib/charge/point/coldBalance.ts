import { type Balance, balance, type Closure } from "./balance";
import { coldSpeeds, coldStart } from "./coldStart";
import type { OperatingSetting } from "./operatingState";

/** Excess air of light loads, from which any other load is approached [–]. */
const lightLoads = [2.5, 5, 10, 1.6] as const;

/** Excess air at which the approach of a power or a fuel flow gives up [–]. */
const leanest = 60;
const richest = 1;

/** Ratio of excess air between two steps of the approach; it is halved in logarithm where a step fails. */
const stride = 0.85;
const leastStride = 0.98;

/** Steps after which an approach gives up. */
const mostSteps = 40;

/**
 * A balance from nothing: at the excess air that is asked for from several wheel speeds, or else at light load and from there
 * step by step to what is asked for.
 *
 * @throws RangeError "no balance: …" with how far the approach came
 */
export function cold(setting: OperatingSetting, closure: Closure): Balance {
  if (closure.kind === "excessAir") {
    const direct = fromNothing(setting, closure.excessAirRatio);
    if (direct) return direct;
  }
  let nearest: Balance | undefined;
  for (const excessAirRatio of lightLoads) {
    nearest = fromNothing(setting, excessAirRatio);
    if (nearest) break;
  }
  if (!nearest)
    throw new RangeError(
      "no balance: engine, blowers and turbochargers pass no common flow, even at light load; look for a compressor, a turbine or a blower far too small or too large for the engine",
    );
  return closure.kind === "excessAir"
    ? approachedMixture(setting, nearest, closure.excessAirRatio)
    : approachedLoad(setting, nearest, closure);
}

function fromNothing(setting: OperatingSetting, excessAirRatio: number): Balance | undefined {
  const shares = setting.build.path.some(({ kind }) => kind === "compressorBank") ? coldSpeeds : [1];
  for (const share of shares) {
    const found = attempt(() => {
      return balance(setting, { kind: "excessAir", excessAirRatio }, coldStart(setting, share, excessAirRatio));
    });
    if (found) return found;
  }
  return undefined;
}

function attempt(solve: () => Balance): Balance | undefined {
  try {
    return solve();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** From one excess air to another, step by step. */
function approachedMixture(setting: OperatingSetting, from: Balance, wanted: number): Balance {
  let nearest = from;
  let step = stride;
  for (let steps = 0; Math.abs(nearest.state.excessAirRatio / wanted - 1) > 1e-12; steps++) {
    const next = stepped(setting, nearest, wanted, step);
    if (next) nearest = next;
    else if (step < leastStride && steps < mostSteps) step = Math.sqrt(step);
    else throw new RangeError(`no balance: ${cameTo(nearest)}; ${remedy}`);
  }
  return nearest;
}

function stepped(setting: OperatingSetting, from: Balance, wanted: number, step: number): Balance | undefined {
  const now = from.state.excessAirRatio;
  const excessAirRatio = wanted < now ? Math.max(wanted, now * step) : Math.min(wanted, now / step);
  return attempt(() => balance(setting, { kind: "excessAir", excessAirRatio }, from.state.trial));
}

type LoadClosure = Exclude<Closure, { readonly kind: "excessAir" }>;

/** From a light load to a power, fuel flow or limit: along mixtures until the load is passed, and then at once. */
function approachedLoad(setting: OperatingSetting, from: Balance, closure: LoadClosure): Balance {
  const missing = ({ state }: Balance) => {
    if (closure.kind === "fuelFlow") return closure.fuelFlow - state.trial.fuelFlow;
    return closure.kind === "brakePower" ? closure.brakePower - state.brake : closure.margin(state);
  };
  const closed = ({ state: { trial } }: Balance) => {
    const start = closure.kind === "fuelFlow" ? { ...trial, fuelFlow: closure.fuelFlow } : trial;
    return attempt(() => balance(setting, closure, start));
  };
  const direct = closed(from);
  if (direct) return direct;
  let nearest = from;
  let step = stride;
  const richer = missing(from) > 0;
  for (let steps = 0; steps < mostSteps; steps++) {
    const next = stepped(setting, nearest, richer ? richest : leanest, step);
    if (next && missing(next) > 0 === richer) nearest = next;
    else {
      const reached = next && (closed(next) ?? closed(nearest));
      if (reached) return reached;
      if (step >= leastStride) break;
      step = Math.sqrt(step);
    }
    if (Math.abs(nearest.state.excessAirRatio / (richer ? richest : leanest) - 1) < 1e-9) {
      throw new RangeError(
        `no balance: ${cameTo(nearest)}, and ${richer ? "there is no air for more fuel" : "no engine fires on less fuel"}`,
      );
    }
  }
  throw new RangeError(`no balance: ${cameTo(nearest)}; ${remedy}`);
}

/** What would bring a balance back. */
const remedy = "ask for less load, a larger turbine, or a wastegate that opens sooner";

/** Where an approach ended, in words. */
function cameTo({ state }: Balance): string {
  const wheels = state.march.banks.map(({ element, speed }) => `${element.name} at ${speed.toFixed(0)} rev/s`);
  const found = `found up to ${(1000 * state.trial.fuelFlow).toFixed(2)} g/s of fuel, excess air ${state.excessAirRatio.toFixed(3)} and ${(state.brake / 1000).toFixed(1)} kW`;
  return wheels.length === 0 ? found : `${found} with ${wheels.join(", ")}`;
}
