import type { DemandState, DemandTrial, StarvedTrial } from "./demandState";

type Outcome = DemandState | StarvedTrial;

/** Powers of a trial of fuel flow, with the path it ran on. */
export type Attempt = (fuelFlow: number) => { readonly trial: DemandTrial; readonly outcome: Outcome };

/** Power given less power needed; turbines that starve would need back pressure without end. */
export function surplus(outcome: Outcome): number {
  return "starved" in outcome ? -outcome.needed : outcome.given - outcome.needed;
}

/**
 * Two fuel flows around the lowest balance of power. Each trial takes what the last one needed and a little more: the
 * powers grow slower than the fuel, or there is no balance.
 */
export function fuelBracket(attempt: Attempt, least: number): readonly [number, number] {
  let below = attempt(least);
  let nearest = below;
  let starving: typeof below | undefined;
  for (let trials = 0; trials < 60 && below.trial.fuelFlow < 50 * least; trials++) {
    const { trial, outcome } = below;
    const wanted = (1.02 * trial.fuelFlow * outcome.needed) / outcome.given;
    let above: typeof below;
    try {
      above = attempt(Math.min(Math.max(wanted, 1.02 * trial.fuelFlow), 4 * trial.fuelFlow));
    } catch (error) {
      if (error instanceof RangeError)
        throw starving ? starved(starving) : unbalanced(nearest, trials === 0 ? error.message : undefined);
      throw error;
    }
    if (surplus(above.outcome) > 0) return [trial.fuelFlow, above.trial.fuelFlow];
    if (outOfReach(above.outcome)) {
      if (above.outcome.given < 1.25 * above.outcome.needed) starving ??= above; // beyond, the numbers mean little
      if (trials > 20) break;
    } else if (nearness(above.outcome) > nearness(nearest.outcome)) nearest = above;
    below = above;
  }
  throw starving ? starved(starving) : unbalanced(nearest);
}

/** Whether the exhaust starves the turbines though the fuel would do for everything but pumping. */
function outOfReach(outcome: Outcome): boolean {
  return "starved" in outcome && outcome.given > outcome.needed;
}

function nearness({ given, needed }: Outcome): number {
  return given / needed;
}

/** What would bring a balance back. */
const remedy = "ask for less power or less excess air, or give the engine more speed or displacement, or the stages better efficiency";

function starved({ trial, outcome }: ReturnType<Attempt>): RangeError {
  const cause = "starved" in outcome ? outcome.starved.message : "";
  return new RangeError(`demandPoint: no balance of power; ${situation(trial, outcome)}: ${cause}; ${remedy}`);
}

function unbalanced({ trial, outcome }: ReturnType<Attempt>, beyond?: string): RangeError {
  return new RangeError(
    `demandPoint: no balance of power; what the charge takes grows as fast as the fuel, nearest ${situation(trial, outcome)}${beyond ? `; beyond it, ${beyond}` : ""}; ${remedy}`,
  );
}

function situation({ path, fuelFlow }: DemandTrial, outcome: Outcome): string {
  const { given, needed } = outcome;
  const before =
    "starved" in outcome ? "" : ` and ${(outcome.turbineInletPressure / 1e5).toFixed(1)} bar before the turbines`;
  return `at ${(1000 * fuelFlow).toFixed(1)} g/s of fuel, where the cylinders give ${kilowatts(given)} of ${kilowatts(needed)} needed, with turbochargers at pressure ratio ${path.turbochargerRatio.toFixed(2)}${before}`;
}

function kilowatts(power: number): string {
  return `${(power / 1000).toFixed(0)} kW`;
}
