import type { OperatingTrial } from "./operatingState";

/** A trial on the straight line between two, or beyond them: share 0 is the first, 1 the second. */
export function between(from: OperatingTrial, to: OperatingTrial, share: number): OperatingTrial {
  const mean = (a: number, b: number) => a + share * (b - a);
  return {
    airFlow: mean(from.airFlow, to.airFlow),
    wheelSpeeds: from.wheelSpeeds.map((speed, i) => mean(speed, to.wheelSpeeds[i]!)),
    blowerRatios: from.blowerRatios.map((ratio, i) => mean(ratio, to.blowerRatios[i]!)),
    fuelFlow: mean(from.fuelFlow, to.fuelFlow),
    brakeShare: mean(from.brakeShare, to.brakeShare),
  };
}

/** A trial beyond two, along powers of their ratios: onward by a share of the way from the first to the second. */
export function onward(from: OperatingTrial, to: OperatingTrial, share: number): OperatingTrial {
  return blended([from, to], [-share, 1 + share]);
}

/** A trial found at a speed. */
export interface TrialAtSpeed {
  readonly engineSpeed: number;
  readonly trial: OperatingTrial;
}

/** A trial at another speed, on the curve of lowest order through those at some speeds, in logarithms. */
export function continued(known: readonly TrialAtSpeed[], engineSpeed: number): OperatingTrial {
  const weights = known.map((one) =>
    known.reduce((weight, other) => {
      return other === one ? weight : (weight * (engineSpeed - other.engineSpeed)) / (one.engineSpeed - other.engineSpeed);
    }, 1),
  );
  return blended(
    known.map(({ trial }) => trial),
    weights,
  );
}

/** Trials multiplied together, each to the power of its weight; the brake's share, which may be nothing, adds up. */
function blended(trials: readonly OperatingTrial[], weights: readonly number[]): OperatingTrial {
  const product = (value: (trial: OperatingTrial) => number) =>
    Math.exp(trials.reduce((sum, trial, i) => sum + weights[i]! * Math.log(value(trial)), 0));
  const [{ wheelSpeeds, blowerRatios }] = trials as readonly [OperatingTrial];
  return {
    airFlow: product(({ airFlow }) => airFlow),
    wheelSpeeds: wheelSpeeds.map((_, j) => product((trial) => trial.wheelSpeeds[j]!)),
    blowerRatios: blowerRatios.map((_, j) => product((trial) => trial.blowerRatios[j]!)),
    fuelFlow: product(({ fuelFlow }) => fuelFlow),
    brakeShare: trials.reduce((sum, { brakeShare }, i) => sum + weights[i]! * brakeShare, 0),
  };
}
