import { brentRoot } from "../numeric";
import { requirePositive } from "../quantity/guard";
import type { Area, Ratio } from "../quantity/kinds";
import type { DemandBuild, DemandPoint } from "./demandBuild";
import { demandPoint, type WantedPower } from "./demandPoint";

/** Excess air between which a turbine's answer is looked for [–]. */
const leanest = 12;
const richest = 1.02;
/** Steps of excess air on the way to the bracket [–]. */
const stride = 1.12;

/** Stands for a turbine without expansion, whose nozzle could be as wide as one likes, and for one without end. */
const far = 8;

/**
 * What a wanted power asks for while the turbines' nozzle stays as it is: the excess air at which the effective nozzle
 * area that each turbine needs equals a given one. With one area from the rated point this is the engine off its rated
 * point: at light load and low speed the turbines give less, in thin or warm air the mixture grows richer.
 * Efficiencies stay as the build states them; waste gates stay as they are.
 *
 * @param build everything from the open air to the exhaust pipe; its excess air is where the search begins
 * @param wanted engine speed and brake power [rev/s, W]
 * @param turbineAreaEach effective nozzle area of one turbine [m²], above 0
 * @throws RangeError by name: no excess air gives this area, or as demandPoint
 * @source conservation of mass through a nozzle of fixed area; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (from memory)
 * @example demandAtTurbineArea(inventedBuild, { engineSpeed: 3200 / 60, brakePower: 708e3 }, demandPoint(inventedBuild, { engineSpeed: 3200 / 60, brakePower: 708e3 }).exhaust.turbineAreaEach).fuelFlow // 0.04329
 */
export function demandAtTurbineArea(build: DemandBuild, wanted: WantedPower, turbineAreaEach: Area): DemandPoint {
  requirePositive("demandAtTurbineArea: turbineAreaEach", turbineAreaEach, "m²");
  const known = new Map<number, DemandPoint>();
  const pointAt = (excessAirRatio: number): DemandPoint => {
    const before = known.get(excessAirRatio);
    if (before) return before;
    const point = demandPoint({ ...build, excessAirRatio: excessAirRatio as Ratio }, wanted);
    known.set(excessAirRatio, point);
    return point;
  };
  /** above 0 where the turbine would have to be wider than it is: more air is driven then */
  const tooWide = (excessAirRatio: number): number => {
    try {
      const point = pointAt(excessAirRatio);
      const area = point.exhaust.turbineAreaEach;
      return area === undefined ? far : Math.log(area / turbineAreaEach);
    } catch (error) {
      if (error instanceof RangeError) return -far; // the exhaust has not the energy for so much air
      throw error;
    }
  };
  const start = Math.min(Math.max(build.excessAirRatio, richest), leanest);
  const near = secant(tooWide, start);
  if (near !== undefined) return pointAt(near);
  const wide = tooWide(start) > 0;
  let [from, to] = [start as number, start as number];
  for (let trial = start as number; ; ) {
    trial = wide ? Math.min(trial * stride, leanest) : Math.max(trial / stride, richest);
    from = to;
    to = trial;
    if (tooWide(trial) > 0 !== wide) break;
    if (trial === leanest || trial === richest) {
      throw new RangeError(
        `no balance: with this turbine the engine would need an excess air beyond ${trial}; ${wide ? "the turbine is far too tight" : "the turbine is too wide, or the power too high, for the air that comes"}`,
      );
    }
  }
  const found = brentRoot(tooWide, [from, to], { name: "demandAtTurbineArea: excess air", tolerance: 1e-7 });
  return pointAt(found.root);
}

/** A root near the start by a few secants in the logarithm, or nothing: a bracket is looked for then. */
function secant(f: (x: number) => number, start: number): number | undefined {
  let [before, now] = [Math.log(start * 1.02), Math.log(start)];
  let [fBefore, fNow] = [f(Math.exp(before)), f(Math.exp(now))];
  for (let step = 0; step < 6; step++) {
    if (Math.abs(fNow) < 1e-7) return Math.exp(now);
    const slope = (fNow - fBefore) / (now - before);
    if (!(Math.abs(fNow) < far && Math.abs(fBefore) < far && slope < 0)) return undefined;
    const next = now - fNow / slope;
    if (!(Math.abs(next - now) < 0.4 && next > Math.log(richest) && next < Math.log(leanest))) return undefined;
    [before, fBefore, now] = [now, fNow, next];
    fNow = f(Math.exp(now));
  }
  return Math.abs(fNow) < 1e-6 ? Math.exp(now) : undefined;
}
