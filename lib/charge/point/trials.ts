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
  const next = (now: number, earlier: number) => now * (now / earlier) ** share;
  return {
    airFlow: next(to.airFlow, from.airFlow),
    wheelSpeeds: to.wheelSpeeds.map((speed, i) => next(speed, from.wheelSpeeds[i]!)),
    blowerRatios: to.blowerRatios.map((ratio, i) => next(ratio, from.blowerRatios[i]!)),
    fuelFlow: next(to.fuelFlow, from.fuelFlow),
    brakeShare: to.brakeShare + share * (to.brakeShare - from.brakeShare),
  };
}
