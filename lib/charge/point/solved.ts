import type { Slopes } from "../../numeric";
import { type Balance, balance, type Closure } from "./balance";
import { cold } from "./coldBalance";
import type { OperatingSetting, OperatingTrial } from "./operatingState";
import { blowersOf, bypassOf } from "./setting";

/** A closed balance with the setting of its bypasses. */
export interface Solved extends Balance {
  readonly setting: OperatingSetting;
}

/** Where to begin, and slopes that may still hold. */
export interface WarmStart {
  readonly trial: OperatingTrial;
  readonly slopes?: Slopes | undefined;
}

/** Ratios within so many tolerances below 1 are rounding of 1. */
const roundingOfOne = 10;

/**
 * The balance of a setting, from a warm start or from nothing; automatic bypasses are opened or closed until they stand
 * as the balance wants them.
 *
 * @throws RangeError "no balance: …" with the cause
 */
export function solved(setting: OperatingSetting, closure: Closure, warm?: WarmStart): Solved {
  let current = setting;
  let start = warm;
  for (let turns = 0; turns <= 2 * setting.bypassesOpen.length; turns++) {
    const found: Balance = start
      ? balance(current, closure, start.trial, start.slopes)
      : coldWithBypasses(current, closure, (opened) => {
          current = opened;
        });
    const wanted = bypassesWanted(found, roundingOfOne * setting.tolerance);
    if (wanted.every((open, i) => open === current.bypassesOpen[i])) return { ...found, setting: current };
    current = { ...current, bypassesOpen: wanted };
    // a bypass that has just closed begins at a ratio that its blower can hold
    const { trial } = found.state;
    start = { trial: { ...trial, blowerRatios: trial.blowerRatios.map((ratio) => Math.max(ratio, 1)) } };
  }
  throw new RangeError("no balance: a bypass neither stays open nor closed");
}

/** A balance from nothing; where there is none with automatic bypasses closed, with all of them open. */
function coldWithBypasses(
  setting: OperatingSetting,
  closure: Closure,
  opened: (setting: OperatingSetting) => void,
): Balance {
  try {
    return cold(setting, closure);
  } catch (error) {
    const elements = blowersOf(setting.build.path);
    const bypassesOpen = setting.bypassesOpen.map((open, i) => open || bypassOf(elements[i]!) === "automatic");
    if (!(error instanceof RangeError) || bypassesOpen.every((open, i) => open === setting.bypassesOpen[i]))
      throw error;
    const other = { ...setting, bypassesOpen };
    opened(other);
    try {
      return cold(other, closure);
    } catch {
      throw error;
    }
  }
}

function bypassesWanted({ state }: Balance, rounding: number): readonly boolean[] {
  return state.march.blowers.map(({ element, bypassOpen, pressureRatio, surplus }) => {
    if (bypassOf(element) !== "automatic") return bypassOpen;
    return bypassOpen ? surplus <= rounding : pressureRatio < 1 - rounding;
  });
}
