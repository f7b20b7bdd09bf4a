import type { Gas } from "../fluid";
import { newtonSystem, type Slopes } from "../numeric";
import type { RotationalSpeed } from "../quantity/kinds";
import type { ChargePathBuild, Convergence } from "./chargePathBuild";
import { type March, type MarchUnknowns, march } from "./march";

/** Which of two unknowns is given: the flow of air, vapour included, or the turbochargers' pressure ratio. */
export type Given = { readonly airFlow: number } | { readonly turbochargerRatio: number };

/** A march at whose end blower and engine pass the same flow. */
export interface BalancedMarch extends March {
  readonly convergence: Convergence;
  /** to begin the next balance of the same build with */
  readonly slopes: Slopes;
}

/** Kelvins of sink warming that weigh as much as a factor of e in flow or ratio. */
const warmingScale = 100;

/**
 * The march at which blower and engine pass the flow that marches, by Newton's method in logarithms.
 * `start`, a balance of the same build with the same one given, shortens the way; it does not change the answer beyond
 * the tolerance.
 */
export function balancePath(
  build: ChargePathBuild,
  gas: Gas,
  engineSpeed: RotationalSpeed,
  given: Given,
  start: MarchUnknowns & { readonly slopes?: Slopes } = firstGuess(build, gas, engineSpeed, given),
): BalancedMarch {
  const bypassed = build.blower.bypassOpen === true;
  const inSeries = build.sinkWarmingPerWatt > 0;
  const flowIsGiven = "airFlow" in given;

  const unknownsAt = (x: readonly number[]): MarchUnknowns => {
    let next = 0;
    const free = Math.exp(x[next++]!);
    return {
      airFlow: flowIsGiven ? given.airFlow : free,
      turbochargerRatio: flowIsGiven ? free : given.turbochargerRatio,
      blowerRatio: bypassed ? 1 : Math.exp(x[next++]!),
      sinkWarming: inSeries ? x[next]! * warmingScale : 0,
    };
  };
  let latest: { readonly at: readonly number[]; readonly reached: March } | undefined;
  const equations = (x: readonly number[]): number[] => {
    const reached = march(build, gas, engineSpeed, unknownsAt(x));
    latest = { at: x, reached };
    const residuals = [reached.engineMismatch];
    if (!bypassed) residuals.push(reached.blowerMismatch);
    if (inSeries) {
      const warming = build.sinkWarmingPerWatt * reached.coolerAfterBlower.heat;
      residuals.push((reached.sinkWarming - warming) / warmingScale);
    }
    return residuals;
  };

  const first = [Math.log(flowIsGiven ? start.turbochargerRatio : start.airFlow)];
  if (!bypassed) first.push(Math.log(start.blowerRatio));
  if (inSeries) first.push(start.sinkWarming / warmingScale);
  const { root, residual, iterations, slopes } = newtonSystem(equations, first, {
    name: "chargePath: balance of flow",
    slopes: start.slopes,
  });
  const reached = latest?.at === root ? latest.reached : march(build, gas, engineSpeed, unknownsAt(root));
  return { ...reached, convergence: { residual, iterations }, slopes };
}

/** Temperatures near the coolers' sinks, and from them ratios by conservation of mass. */
function firstGuess(build: ChargePathBuild, gas: Gas, engineSpeed: number, given: Given): MarchUnknowns {
  const { surroundings, blower, engine } = build;
  const blowerInlet = build.coolerBeforeBlower.sinkTemperature + 25;
  const manifold = build.coolerAfterBlower.sinkTemperature + 25;
  const engineVolume = (engine.volumetricEfficiency * engine.displacement * engineSpeed) / 2;
  const blowerVolume = 0.9 * blower.displacementPerTurn * blower.driveRatio * engineSpeed;
  const blowerRatio = blower.bypassOpen ? 1 : (blowerVolume / engineVolume) * (manifold / blowerInlet);
  const flowAtOpenAir = ((surroundings.pressure * blowerRatio) / (gas.gasConstant * manifold)) * engineVolume;
  const flowIsGiven = "airFlow" in given;
  return {
    airFlow: flowIsGiven ? given.airFlow : flowAtOpenAir * given.turbochargerRatio,
    turbochargerRatio: flowIsGiven ? given.airFlow / flowAtOpenAir : given.turbochargerRatio,
    blowerRatio: Math.min(Math.max(blowerRatio, 0.7), 6),
    sinkWarming: 0,
  };
}
