import { brentRoot } from "../numeric";
import { type Fraction, type Ratio, requireNotNegative } from "../quantity";
import { type ExchangerCore, shellsOf, transferUnitsSpan, vast } from "./arrangement";
import { exchangerEffectiveness, joinedShells } from "./effectiveness";

export interface TransferUnitsInputs extends ExchangerCore {
  /** heat passed over the largest that temperature allows [–], 0 to below largestEffectiveness */
  readonly effectiveness: Fraction;
}

/**
 * Effectiveness that an arrangement nears as its surface grows without end [–], above 0 to 1:
 * counterflow and unmixed crossflow 1 · parallel flow 1/(1+C) · smaller side mixed 1 − e^(−1/C) ·
 * larger side mixed (1 − e^(−C))/C · one shell with two tube passes 2/(1 + C + √(1+C²)).
 *
 * @param core arrangement, capacity ratio [–], shells
 * @throws RangeError if an argument is outside its span
 * @source limits of the formulas of exchangerEffectiveness
 * @example largestEffectiveness({ arrangement: "parallelFlow", capacityRatio: 0.6 }) // 0.625
 */
export function largestEffectiveness(core: ExchangerCore): Fraction {
  return limit(core, shellsOf("largestEffectiveness", core)) as Fraction;
}

/**
 * Transfer units UA/Cmin that an effectiveness needs [–], all shells together: exchangerEffectiveness solved for N,
 * in closed form except for the two unmixed crossflows, which are solved to full precision.
 *
 * @param core arrangement, effectiveness [–], capacity ratio [–], shells
 * @throws RangeError if the arrangement cannot reach the effectiveness (the message tells the most it can), or needs
 * more than 500 transfer units for it
 * @source Kays & London, Compact Heat Exchangers; Incropera et al., Fundamentals of Heat and Mass Transfer, table 11.4
 * (formulas derived here)
 * @example transferUnitsFor({ arrangement: "counterflow", effectiveness: 0.75, capacityRatio: 1 }) // 3
 */
export function transferUnitsFor({ effectiveness, ...core }: TransferUnitsInputs): Ratio {
  const shells = shellsOf("transferUnitsFor", core);
  requireNotNegative("transferUnitsFor: effectiveness", effectiveness);
  const most = limit(core, shells);
  const where = `${core.arrangement} at capacity ratio ${Number(core.capacityRatio.toPrecision(4))}`;
  if (!(effectiveness < most)) {
    throw new RangeError(
      `transferUnitsFor: effectiveness is ${shown(effectiveness)}; ${where} stays below ${shown(most)}`,
    );
  }
  const units = needed(core, effectiveness, shells);
  if (!(units <= transferUnitsSpan[1])) {
    throw new RangeError(
      `transferUnitsFor: effectiveness is ${shown(effectiveness)}; ` +
        `${where} needs over ${transferUnitsSpan[1]} transfer units for it`,
    );
  }
  return units as Ratio;
}

function limit({ arrangement, capacityRatio: c }: ExchangerCore, shells: number): number {
  if (c < vast) return 1;
  switch (arrangement) {
    case "counterflow":
    case "crossflowUnmixed":
    case "crossflowUnmixedApproximate":
      return 1;
    case "parallelFlow":
      return 1 / (1 + c);
    case "crossflowMinimumMixed":
      return -Math.expm1(-1 / c);
    case "crossflowMaximumMixed":
      return -Math.expm1(-c) / c;
    case "shellAndTube":
      return joinedShells(2 / (1 + c + Math.hypot(1, c)), c, shells);
  }
}

function needed(core: ExchangerCore, e: number, shells: number): number {
  const c = core.capacityRatio;
  if (e === 0) return 0;
  if (c < vast) return -Math.log1p(-e);
  switch (core.arrangement) {
    case "counterflow":
      return c === 1 ? e / (1 - e) : Math.log1p((e * (1 - c)) / (1 - e)) / (1 - c);
    case "parallelFlow":
      return -Math.log1p(-e * (1 + c)) / (1 + c);
    case "crossflowMinimumMixed":
      return -Math.log1p(c * Math.log1p(-e)) / c;
    case "crossflowMaximumMixed":
      return -Math.log1p(Math.log1p(-e * c) / c);
    case "shellAndTube":
      return shells * neededInShell(ofOneShell(e, c, shells), c);
    case "crossflowUnmixed":
    case "crossflowUnmixedApproximate":
      return searched(core, e);
  }
}

/** The inverse of joinedShells. */
function ofOneShell(e: number, c: number, shells: number): number {
  if (c === 1) return e / (shells - (shells - 1) * e);
  const z = Math.expm1(Math.log1p((e * (1 - c)) / (1 - e)) / shells);
  return z / (z + (1 - c));
}

function neededInShell(e: number, c: number): number {
  const g = Math.hypot(1, c);
  return Math.log1p(2 / ((2 / e - 1 - c) / g - 1)) / g;
}

/**
 * Finds N on −ln(1 − ε), which is nearly straight in N.
 * No crossflow needs fewer units than C = 0 does, so the search starts a rounding error below that.
 */
function searched(core: ExchangerCore, e: number): number {
  const target = -Math.log1p(-e);
  if (target < 1e-15) return target;
  const most = transferUnitsSpan[1];
  const miss = (units: number) =>
    -Math.log1p(-exchangerEffectiveness({ ...core, transferUnits: units as Ratio })) - target;
  let low = Math.min(target * (1 - 1e-12), most);
  let high = Math.min(2 * target, most);
  while (miss(high) < 0) {
    if (high === most) return Number.POSITIVE_INFINITY;
    low = high;
    high = Math.min(2 * high, most);
  }
  return brentRoot(miss, [low, high], { name: "transferUnitsFor: transferUnits", tolerance: 1e-13 * high }).root;
}

function shown(value: number): number {
  return Number(value.toPrecision(4));
}
