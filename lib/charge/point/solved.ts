import type { Slopes } from "../../numeric";
import { type Balance, balance, type Closure } from "./balance";
import { coldSpeeds, coldStart } from "./coldStart";
import type { OperatingSetting, OperatingTrial } from "./operatingState";
import { bypassOf } from "./setting";

/** A closed balance with the setting of its bypasses. */
export interface Solved extends Balance {
  readonly setting: OperatingSetting;
}

/** Where to begin, and slopes that may still hold. */
export interface WarmStart {
  readonly trial: OperatingTrial;
  readonly slopes?: Slopes | undefined;
}

/** Ratios this close below 1 are rounding of 1. */
const roundingOfOne = 1e-9;

/**
 * The balance of a setting, from a warm start or from nothing; automatic bypasses are opened or closed until they stand
 * as the balance wants them.
 *
 * @throws RangeError "no balance: …" with the cause
 */
export function solved(
  setting: OperatingSetting,
  closure: Closure,
  warm?: WarmStart,
  starts: "warm only" | "any" = "any",
): Solved {
  let current = setting;
  let start = warm;
  for (let turns = 0; turns <= 2 * setting.bypassesOpen.length; turns++) {
    const found = closed(current, closure, start, starts);
    const wanted = bypassesWanted(found);
    if (wanted.every((open, i) => open === current.bypassesOpen[i])) return { ...found, setting: current };
    current = { ...current, bypassesOpen: wanted };
    start = { trial: found.state.trial };
  }
  throw new RangeError("no balance: a bypass neither stays open nor closed");
}

function bypassesWanted({ state }: Balance): readonly boolean[] {
  return state.march.blowers.map(({ element, bypassOpen, pressureRatio, surplus }) => {
    if (bypassOf(element) !== "automatic") return bypassOpen;
    return bypassOpen ? surplus <= roundingOfOne : pressureRatio < 1 - roundingOfOne;
  });
}

function closed(
  setting: OperatingSetting,
  closure: Closure,
  warm: WarmStart | undefined,
  starts: "warm only" | "any",
): Balance {
  let cause: RangeError | undefined;
  const attempt = (start: () => WarmStart): Balance | undefined => {
    try {
      const { trial, slopes } = start();
      return balance(setting, closure, trial, slopes);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      cause ??= error;
      return undefined;
    }
  };
  const warmly = warm && attempt(() => warm);
  if (warmly) return warmly;
  if (cause && starts === "warm only") throw cause;
  const guess = closure.kind === "excessAir" ? closure.excessAirRatio : 2;
  const shares = setting.build.path.some(({ kind }) => kind === "compressorBank") ? coldSpeeds : [1];
  for (const share of shares) {
    const coldly = attempt(() => ({ trial: withFuel(coldStart(setting, share, guess), setting, closure) }));
    if (coldly) return coldly;
  }
  throw cause ?? new RangeError("no balance: no start was found");
}

function withFuel(trial: OperatingTrial, { build }: OperatingSetting, closure: Closure): OperatingTrial {
  if (closure.kind === "fuelFlow") return { ...trial, fuelFlow: closure.fuelFlow };
  if (closure.kind !== "brakePower") return trial;
  const perFuel = 0.8 * build.engine.grossIndicatedEfficiency * build.fuel.lowerHeatingValue;
  return { ...trial, fuelFlow: Math.max(closure.brakePower / perFuel, 0.1 * trial.fuelFlow) };
}
