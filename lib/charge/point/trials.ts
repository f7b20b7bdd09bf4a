import type { OperatingTrial } from "./operatingState";

/** A trial on the straight line between two, or beyond them: share 0 is the first, 1 the second. */
export function between(from: OperatingTrial, to: OperatingTrial, share: number): OperatingTrial {
  const mean = (a: number, b: number) => a + share * (b - a);
  return {
    airFlow: mean(from.airFlow, to.airFlow),
    wheelSpeeds: from.wheelSpeeds.map((speed, i) => mean(speed, to.wheelSpeeds[i]!)),
    blowerRatios: from.blowerRatios.map((ratio, i) => mean(ratio, to.blowerRatios[i]!)),
    sinkWarmings: from.sinkWarmings.map((warming, i) => mean(warming, to.sinkWarmings[i]!)),
    fuelFlow: mean(from.fuelFlow, to.fuelFlow),
    brakeShare: mean(from.brakeShare, to.brakeShare),
  };
}

/** A trial beyond two, along powers of their ratios: onward by a share of the way from the first to the second. */
export function onward(from: OperatingTrial, to: OperatingTrial, share: number): OperatingTrial {
  const [first, second] = [logarithmsOf(from), logarithmsOf(to)];
  return trialOf(second.map((each, i) => each + share * (each - first[i]!)), to);
}

/** Logarithms of a trial in a fixed order; at the end, as they are, the brake's share and warmings, which may be nothing. */
export function logarithmsOf(trial: OperatingTrial): number[] {
  const logarithms = [Math.log(trial.airFlow)];
  for (const speed of trial.wheelSpeeds) logarithms.push(Math.log(speed));
  for (const ratio of trial.blowerRatios) logarithms.push(Math.log(ratio));
  logarithms.push(Math.log(trial.fuelFlow), trial.brakeShare, ...trial.sinkWarmings);
  return logarithms;
}

/** The trial of some logarithms, with as many wheels and blowers as another. */
export function trialOf(logarithms: readonly number[], like: OperatingTrial): OperatingTrial {
  let next = 0;
  const airFlow = Math.exp(logarithms[next++]!);
  const wheelSpeeds: number[] = [];
  while (wheelSpeeds.length < like.wheelSpeeds.length) wheelSpeeds.push(Math.exp(logarithms[next++]!));
  const blowerRatios: number[] = [];
  while (blowerRatios.length < like.blowerRatios.length) blowerRatios.push(Math.exp(logarithms[next++]!));
  const fuelFlow = Math.exp(logarithms[next++]!);
  const brakeShare = logarithms[next++]!;
  return { airFlow, wheelSpeeds, blowerRatios, sinkWarmings: logarithms.slice(next), fuelFlow, brakeShare };
}

/** Logarithms at a speed: of a trial found there, or of the step from it to another. */
export interface LogarithmsAtSpeed {
  readonly engineSpeed: number;
  readonly logarithms: readonly number[];
}

/** Logarithms at another speed, on the curve of lowest order through those at some speeds. */
export function continued(known: readonly LogarithmsAtSpeed[], engineSpeed: number): number[] {
  const sum = new Array<number>(known[0]!.logarithms.length).fill(0);
  for (const one of known) {
    let weight = 1;
    for (const other of known) {
      if (other !== one) weight *= (engineSpeed - other.engineSpeed) / (one.engineSpeed - other.engineSpeed);
    }
    for (let i = 0; i < sum.length; i++) sum[i]! += weight * one.logarithms[i]!;
  }
  return sum;
}
