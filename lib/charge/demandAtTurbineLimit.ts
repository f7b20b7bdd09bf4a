import { newtonSystem, type Slopes } from "../numeric";
import { requirePositive } from "../quantity/guard";
import type { Area, Power, Ratio, RotationalSpeed, Temperature } from "../quantity/kinds";
import type { DemandBuild, DemandPoint } from "./demandBuild";
import { demandPoint } from "./demandPoint";

/** What the turbines allow, and a point near which to look. */
export interface TurbineLimit {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** effective nozzle area of one turbine, which stays as it is [m²], above 0 */
  readonly turbineAreaEach: Area;
  /** temperature before the turbines that is to be reached [K], above 0 */
  readonly turbineInletTemperature: Temperature;
  /** power near which to begin [W], above 0 */
  readonly brakePower: Power;
  /** excess air near which to begin [–], above 1 */
  readonly excessAirRatio: Ratio;
  /** slopes of a point solved before that was much like this one; measured anew if left out */
  readonly slopes?: Slopes | undefined;
}

/** The power at which the limit is met, and slopes for the next one. */
export interface PointAtLimit {
  readonly point: DemandPoint;
  readonly slopes: Slopes;
}

/**
 * The power at which the gas before the turbines becomes as hot as it may, with turbines of given nozzle area
 * [W in powers.brake]: power and excess air solved together. It tells what warm air, a warm sea, a clogged filter or a
 * tight exhaust cost an engine that is limited by its exhaust's heat.
 * Efficiencies stay as the build states them; a limit by smoke, peak pressure or wheel speed may bind before.
 *
 * @param build everything from the open air to the exhaust pipe; its excess air is not asked for
 * @param limit speed, nozzle area, temperature and where to begin
 * @throws RangeError by name: no such power, or an argument outside its span
 * @source conservation of mass and first law on every element, as demandPoint
 * @example demandAtTurbineLimit(inventedBuild, { engineSpeed: 3200 / 60, turbineAreaEach: demandPoint(inventedBuild, { engineSpeed: 3200 / 60, brakePower: 708e3 }).exhaust.turbineAreaEach, turbineInletTemperature: demandPoint(inventedBuild, { engineSpeed: 3200 / 60, brakePower: 708e3 }).exhaust.turbineInletTemperature, brakePower: 690e3, excessAirRatio: 1.7 }).point.powers.brake / 1000 // 708.0
 */
export function demandAtTurbineLimit(build: DemandBuild, limit: TurbineLimit): PointAtLimit {
  requirePositive("demandAtTurbineLimit: turbineAreaEach", limit.turbineAreaEach, "m²");
  requirePositive("demandAtTurbineLimit: turbineInletTemperature", limit.turbineInletTemperature, "K");
  requirePositive("demandAtTurbineLimit: brakePower", limit.brakePower, "W");
  requirePositive("demandAtTurbineLimit: excessAirRatio less 1", limit.excessAirRatio - 1);
  let last: DemandPoint | undefined;
  let lastAt: readonly number[] = [];
  const pointAt = (unknowns: readonly number[]): DemandPoint => {
    if (last && unknowns.every((each, i) => each === lastAt[i])) return last;
    const excessAirRatio = (1 + Math.exp(unknowns[0]!)) as Ratio;
    last = demandPoint(
      { ...build, excessAirRatio },
      { engineSpeed: limit.engineSpeed, brakePower: Math.exp(unknowns[1]!) as Power },
    );
    lastAt = unknowns;
    return last;
  };
  const { root, slopes } = newtonSystem(
    (unknowns) => {
      const { turbineAreaEach, turbineInletTemperature } = pointAt(unknowns).exhaust;
      if (turbineAreaEach === undefined) {
        throw new RangeError(
          "demandAtTurbineLimit: the blower alone gives more air than is asked for; the turbines idle",
        );
      }
      return [
        Math.log(turbineAreaEach / limit.turbineAreaEach),
        Math.log(turbineInletTemperature / limit.turbineInletTemperature),
      ];
    },
    [Math.log(limit.excessAirRatio - 1), Math.log(limit.brakePower)],
    { name: "demandAtTurbineLimit: power and excess air", tolerance: 1e-5, longestStep: 0.3, slopes: limit.slopes },
  );
  return { point: pointAt(root), slopes };
}
