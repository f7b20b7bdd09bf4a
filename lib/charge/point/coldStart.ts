import { brentRoot, newtonSystem } from "../../numeric";
import type { MassFlow, RotationalSpeed } from "../../quantity/kinds";
import type { CompressorBankElement } from "../path/elements";
import type { PathUnknowns } from "../path/marchState";
import { pathMarch } from "../path/pathMarch";
import type { OperatingSetting, OperatingTrial } from "./operatingState";
import { banksOf, blowersOf } from "./setting";

/** Speeds from which a cold balance is tried, as shares of the fastest that each compressor's field knows. */
export const coldSpeeds = [0.6, 0.35, 0.8, 0.2, 0.95] as const;

/**
 * A start for a balance from nothing: all wheels at a share of their fastest speed, and the flow and blower ratios at
 * which engine and blowers then pass the same air.
 *
 * @throws RangeError if there is no such flow
 */
export function coldStart(setting: OperatingSetting, share: number, excessAirRatio: number): OperatingTrial {
  const { build, surroundings, stoichiometric } = setting;
  const wheelSpeeds = banksOf(build.path).map(({ compressor }) => share * compressor.speedSpan[1]);
  const unknowns = pathBalance(setting, firstGuess(setting, wheelSpeeds));
  const fuelFlow = unknowns.airFlow / (1 + surroundings.humidityRatio) / (stoichiometric * excessAirRatio);
  return { ...unknowns, fuelFlow, brakeShare: 0.8 };
}

function pathBalance(setting: OperatingSetting, guess: PathUnknowns): PathUnknowns {
  const { build, engineSpeed, bypassesOpen } = setting;
  const { engine } = build;
  const unknownsAt = (x: readonly number[]): PathUnknowns => {
    let next = 1;
    return {
      airFlow: Math.exp(x[0]!),
      wheelSpeeds: guess.wheelSpeeds,
      blowerRatios: bypassesOpen.map((open) => (open ? 1 : Math.exp(x[next++]!))),
      sinkWarmings: guess.sinkWarmings,
    };
  };
  const equations = (x: readonly number[]): number[] => {
    const { manifold, blowers } = pathMarch(build.path, setting, unknownsAt(x));
    const density = manifold.pressure / (manifold.gas.gasConstant * manifold.temperature);
    const drawn = (engine.volumetricEfficiency * engine.displacement * engineSpeed * density) / 2;
    const residuals = [Math.log(drawn / manifold.massFlow)];
    for (const { mismatch, bypassOpen } of blowers) if (!bypassOpen) residuals.push(mismatch);
    return residuals;
  };
  const name = "no balance of flow";
  if (bypassesOpen.every((open) => open)) {
    // the flow alone is unknown, and what marches through falls short of what the engine draws from some flow on
    const middle = Math.log(guess.airFlow);
    const mismatch = (logFlow: number) => equations([logFlow])[0]!;
    return unknownsAt([brentRoot(mismatch, [middle - 4, middle + 3], { name, tolerance: 1e-3 }).root]);
  }
  const start = [Math.log(guess.airFlow), ...guess.blowerRatios.filter((_, i) => !bypassesOpen[i]).map(Math.log)];
  return unknownsAt(newtonSystem(equations, start, { name, tolerance: 1e-3 }).root);
}

/** Pressures from the fields at the middle of their lines, and from volumes for the blowers. */
function firstGuess(setting: OperatingSetting, wheelSpeeds: readonly number[]): PathUnknowns {
  const { build, engineSpeed, surroundings, gas, bypassesOpen } = setting;
  const banks = banksOf(build.path);
  const engineVolume = (build.engine.volumetricEfficiency * build.engine.displacement * engineSpeed) / 2;
  const flowAt = (ratio: number) => ((surroundings.pressure * ratio) / (gas.gasConstant * 320)) * engineVolume;
  let boost = 1;
  banks.forEach((bank, i) => {
    boost *= bankRatio(bank, wheelSpeeds[i]!);
  });
  let before = 1;
  let volume = 0;
  const blowerRatios = blowersOf(build.path).map(({ blower, bypassShare = 0 }, i) => {
    if (bypassesOpen[i]) return 1;
    volume = 0.88 * (1 - bypassShare) * blower.displacementPerTurn * blower.driveRatio * engineSpeed;
    // before the turbochargers a blower has to fill what they then compress
    const behind = build.path.findIndex((element) => element.kind === "blower") < firstBank(build) ? boost : 1;
    const ratio = Math.min(Math.max(volume / engineVolume / behind / before, 0.8), 5);
    before *= ratio;
    return ratio;
  });
  return { airFlow: flowAt(boost * before), wheelSpeeds, blowerRatios, sinkWarmings: setting.warmers.map(() => 0) };
}

function firstBank({ path }: OperatingSetting["build"]): number {
  return path.findIndex((element) => element.kind === "compressorBank");
}

function bankRatio({ compressor }: CompressorBankElement, speed: number): number {
  const corrected = speed as RotationalSpeed;
  const middle = 0.5 * (compressor.surgeFlow(corrected) + compressor.chokeFlow(corrected));
  return compressor.at(middle as MassFlow, corrected).pressureRatio;
}
