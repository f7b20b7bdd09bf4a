import type { Slopes } from "../../numeric";
import type { Closure } from "./balance";
import { marginAt } from "./limits";
import { requireBlowing } from "./operatingPoint";
import type { Limit, OperatingSetting, OperatingState, OperatingTrial } from "./operatingState";
import { tolerances } from "./setting";
import { type Solved, solved, type WarmStart } from "./solved";
import { between, onward } from "./trials";

/** Excess air at which the climb begins: light load, at which only what never depends on load is over its limit. */
const lightExcessAir = 6;

/** Each step of the climb adds this share of fuel, and each look beyond the end of it this. */
const stride = 1.5;
const look = 1.03;

/** How far a limit may be met outside of two steps between which it was passed: they are not closed as far as it is. */
const roughly = 1e-4;

/** A margin this close to 0 is met. */
const met = 1e-7;

const mostSteps = 40;

/** States after which a limit is no longer met by Newton's method, but by halving. */
const mostStates = 100;

/** Points nearer than this, in the logarithm of fuel, do not tell where the next one lies. */
const nearby = 0.01;

/** What a climb in load came to. */
export interface Climb {
  readonly found: Solved;
  /** limit that is met there; "balance" where none was found beyond */
  readonly bindingId: string;
  /** a balance with a little more fuel, to see what comes next; undefined where there is none */
  readonly beyond: Solved | undefined;
}

/** Adds fuel from light load until the first limit is met. A limit counts from where it was once kept. */
export function climb(setting: OperatingSetting): Climb {
  const rough: OperatingSetting = { ...setting, tolerance: tolerances.step };
  let below = requireBlowing(solved(rough, { kind: "excessAir", excessAirRatio: lightExcessAir }));
  let before: Solved | undefined;
  const kept = new Set<string>();
  let step = stride;
  for (let steps = 0; steps < mostSteps; steps++) {
    for (const limit of setting.limits) if (marginAt(limit, below.state) > 0) kept.add(limit.id);
    const above = tried(below.setting, fuelled(below.state, step), {
      trial: ahead(before, below, step),
      ...(before && { slopes: below.slopes }),
    });
    if (!above) {
      if (step < 1.01) return { found: closed(below), bindingId: "balance", beyond: undefined };
      step = 1 + (step - 1) / 3;
      continue;
    }
    const crossing = firstCrossing(below.state, above.state, kept, setting);
    if (crossing) return settled(below, above, crossing, kept);
    before = below;
    below = above;
  }
  throw new RangeError(
    `no balance: no limit was met up to ${(1000 * below.state.trial.fuelFlow).toFixed(1)} g/s of fuel`,
  );
}

/** Where more fuel is likely to lead, from the last two points. */
function ahead(before: Solved | undefined, { state }: Solved, factor: number): OperatingTrial {
  if (!before) return state.trial;
  const [from, to] = [before.state.trial, state.trial];
  const rise = Math.log(to.fuelFlow / from.fuelFlow);
  return rise > nearby ? onward(from, to, Math.log(factor) / rise) : to;
}

/** A step on the way, closed as far as an answer wants it. */
function closed({ setting, state: { trial }, slopes }: Solved): Solved {
  return requireBlowing(solved(closely(setting), { kind: "fuelFlow", fuelFlow: trial.fuelFlow }, { trial, slopes }));
}

function closely(setting: OperatingSetting): OperatingSetting {
  return { ...setting, tolerance: tolerances.answer };
}

interface Crossing {
  readonly limit: Limit;
  /** where along the step it lies, by the chord [–] */
  readonly share: number;
}

/** The limit that is passed first between two states, of those that were kept once. */
function firstCrossing(
  from: OperatingState,
  to: OperatingState,
  kept: ReadonlySet<string>,
  setting: OperatingSetting,
): Crossing | undefined {
  let first: Crossing | undefined;
  for (const limit of setting.limits) {
    const there = marginAt(limit, to);
    if (!kept.has(limit.id) || there >= -met) continue;
    const margin = marginAt(limit, from);
    const share = margin <= 0 ? 0 : margin / (margin - there);
    if (!first || share < first.share) first = { limit, share };
  }
  return first;
}

/** The point at which a limit is just met, after making sure that no other is passed there. */
function settled(below: Solved, above: Solved, crossing: Crossing, kept: ReadonlySet<string>): Climb {
  let aim: Crossing | undefined = crossing;
  let upper = above;
  for (let turns = 0; aim && turns < 8; turns++) {
    const found = meeting(below, upper, aim);
    const earlier = firstCrossing(
      below.state,
      found.state,
      new Set([...kept].filter((id) => id !== aim!.limit.id)),
      below.setting,
    );
    if (!earlier) {
      const start = { trial: ahead(below, found, look), slopes: slopesAtGivenFuel(found) };
      return { found, bindingId: aim.limit.id, beyond: lookedBeyond(found, start) };
    }
    upper = found;
    aim = earlier;
  }
  throw new RangeError("no balance: limits bind in turns");
}

/** The point between two at which one limit is just met: by Newton's method, or by halving where that strays. */
function meeting(below: Solved, above: Solved, { limit, share }: Crossing): Solved {
  const margin = (state: OperatingState) => marginAt(limit, state);
  const trial = between(below.state.trial, above.state.trial, share);
  const [least, most] = [below.state.trial.fuelFlow, above.state.trial.fuelFlow];
  const setting = closely(below.setting);
  const found = tried({ ...setting, mostStates }, { kind: "limit", margin }, { trial });
  if (found) {
    const { fuelFlow } = found.state.trial;
    if (fuelFlow >= least * (1 - roughly) && fuelFlow <= most * (1 + roughly)) return found;
  }
  let [low, high] = [closed(below), above];
  for (let halvings = 0; halvings < 60; halvings++) {
    const [from, to] = [low.state.trial.fuelFlow, high.state.trial.fuelFlow];
    if (to - from <= 1e-12 * to) break;
    const middle = tried(setting, { kind: "fuelFlow", fuelFlow: (from + to) / 2 }, { trial: low.state.trial });
    if (!middle) break;
    if (margin(middle.state) > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** A balance with a little more fuel than a climb ended with. */
export function lookedBeyond(found: Solved, start: WarmStart): Solved | undefined {
  return tried({ ...found.setting, tolerance: tolerances.comparison }, fuelled(found.state, look), start);
}

/** Slopes of a point with its fuel given: where a limit closed it, without the fuel's column and the limit's row. */
function slopesAtGivenFuel({ slopes, setting, state }: Solved): Slopes | undefined {
  const closedBlowers = setting.bypassesOpen.filter((open) => !open).length;
  const warmed = setting.warmers.filter((by) => by >= 0).length;
  const unknowns = 2 + state.trial.wheelSpeeds.length + closedBlowers + warmed;
  if (slopes.length === unknowns) return slopes;
  const fuel = slopes.length - 2;
  return slopes.slice(0, -1).map((row) => row.filter((_, i) => i !== fuel));
}

function fuelled(state: OperatingState, factor: number): Closure {
  return { kind: "fuelFlow", fuelFlow: state.trial.fuelFlow * factor };
}

/** A balance from a warm start alone, or nothing. */
export function tried(setting: OperatingSetting, closure: Closure, start: WarmStart): Solved | undefined {
  try {
    return requireBlowing(solved(setting, closure, start));
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
