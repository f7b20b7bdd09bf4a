import type { Slopes } from "../../numeric";
import { requirePositive } from "../../quantity/guard";
import type { RotationalSpeed } from "../../quantity/kinds";
import { type AttainablePoint, describeClimb } from "./attainable";
import { type Climb, climb, lookedBeyond, tried } from "./climb";
import type { GasSource } from "./gasSource";
import { marginAt } from "./limits";
import type { OperatingBuild } from "./operatingBuild";
import { solvedOrRefused } from "./operatingPoint";
import type { OperatingSetting, OperatingState, OperatingTrial } from "./operatingState";
import { atSpeed, operatingSetting } from "./setting";
import type { Solved, WarmStart } from "./solved";
import { continued, type LogarithmsAtSpeed, logarithmsOf, trialOf } from "./trials";

/** What a speed of a sweep came to: the most the parts give there, or why there is nothing. */
export type SweepPoint =
  | ({ readonly ok: true } & AttainablePoint)
  | { readonly ok: false; readonly engineSpeed: RotationalSpeed; readonly refusal: string };

/** States after which a climb from the speed before is given up, and one from light load begun. */
const mostStates = 50;

/** A climb of the speed before, from which the next one begins. */
interface Before {
  readonly climb: Climb;
  /** ends of the climbs at the last few speeds at which the same limit bound, that of this climb at the end */
  readonly ends: readonly LogarithmsAtSpeed[];
  /** steps from there to the look beyond, where there is one */
  readonly steps: readonly LogarithmsAtSpeed[];
}

/** Speeds through which a curve leads on to the next one. */
const mostKnown = 4;

/**
 * The most that chosen parts give at each of several speeds [W, –]: attainable at each, every one begun from the one
 * before. A speed without a balance says why, and does not stop the others.
 *
 * @param build everything from the open air to the exhaust pipe, and the limits
 * @param speeds crankshaft speeds [rev/s], each above 0; neighbours should lie close
 * @param gases where the gases come from; lib/fluid if left out
 * @throws RangeError if a speed is not above zero, or an argument of the build is outside its span
 * @source conservation of mass; first law on every element
 * @example sweep(inventedOperatingBuild, [40, 45, 50]).length // 3
 */
export function sweep(
  build: OperatingBuild,
  speeds: readonly RotationalSpeed[],
  gases?: GasSource,
): readonly SweepPoint[] {
  for (const engineSpeed of speeds) requirePositive("sweep: engineSpeed", engineSpeed, "rev/s");
  const [first] = speeds;
  if (first === undefined) return [];
  const common = operatingSetting(build, first, gases);
  let before: Before | undefined;
  return speeds.map((engineSpeed): SweepPoint => {
    const setting = atSpeed(common, build, engineSpeed);
    try {
      const found: Climb = (before && followed(setting, before)) ?? solvedOrRefused(() => climb(setting), "attainable");
      before = remembered(found, engineSpeed, before);
      return { ok: true, ...describeClimb(found) };
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      before = undefined;
      return { ok: false, engineSpeed, refusal: error.message };
    }
  });
}

/** A climb with what is known of those before it, as far as the same limit bound. */
function remembered(found: Climb, engineSpeed: number, before: Before | undefined): Before {
  const alike = before?.climb.bindingId === found.bindingId ? before : undefined;
  const others = (all: readonly LogarithmsAtSpeed[] = []) =>
    all.slice(1 - mostKnown).filter((each) => each.engineSpeed !== engineSpeed);
  const end = logarithmsOf(found.found.state.trial);
  const beyond = found.beyond && logarithmsOf(found.beyond.state.trial);
  const step = beyond?.map((each, i) => each - end[i]!);
  return {
    climb: found,
    ends: [...others(alike?.ends), { engineSpeed, logarithms: end }],
    steps: [...others(alike?.steps), ...(step ? [{ engineSpeed, logarithms: step }] : [])],
  };
}

/**
 * The climb of a speed, from that of the speed before: where the same limit binds, or one that is passed there, and it is
 * met on the way up, the climb itself can be left out.
 */
function followed(fresh: OperatingSetting, before: Before): Climb | undefined {
  const { climb: last } = before;
  if (last.bindingId === "balance") return undefined;
  const setting = { ...fresh, bypassesOpen: last.found.setting.bypassesOpen };
  let trial = carried(before, fresh.engineSpeed);
  let slopes: Slopes | undefined = last.found.slopes;
  let binding = setting.limits.find(({ id }) => id === last.bindingId);
  for (let turns = 0; binding && turns < 3; turns++) {
    const limit = binding;
    const margin = (state: OperatingState) => marginAt(limit, state);
    const found = tried({ ...setting, mostStates }, { kind: "limit", margin }, { trial, slopes });
    if (!found) return undefined;
    let worst = -1e-7;
    binding = undefined;
    for (const each of setting.limits) {
      const left = each === limit ? 0 : marginAt(each, found.state);
      if (left >= worst) continue;
      worst = left;
      binding = each;
    }
    if (!binding) {
      const beyond = lookedBeyond(found, startBeyond(found, before));
      if (!beyond || margin(beyond.state) > 0) return undefined; // it was met on the way down
      return { found, bindingId: limit.id, beyond };
    }
    trial = found.state.trial;
    slopes = undefined;
  }
  return undefined;
}

/** A start for the look beyond: as far from the climb's end as the speeds before let expect. */
function startBeyond({ setting, state: { trial } }: Solved, { climb, steps }: Before): WarmStart {
  if (steps.length === 0) return { trial };
  const step = continued(steps, setting.engineSpeed);
  const reached = logarithmsOf(trial).map((each, i) => each + step[i]!);
  return { trial: trialOf(reached, trial), slopes: climb.beyond?.slopes };
}

/** A trial at the next speed, from those before. */
function carried({ climb, ends }: Before, engineSpeed: number): OperatingTrial {
  const { trial } = climb.found.state;
  if (ends.length > 1) return trialOf(continued(ends, engineSpeed), trial);
  const faster = engineSpeed / ends[0]!.engineSpeed;
  return { ...trial, airFlow: trial.airFlow * faster, fuelFlow: trial.fuelFlow * faster };
}
