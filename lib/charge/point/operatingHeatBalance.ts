import { type HeatBalance, heatBalance } from "../../engine";
import type { Power } from "../../quantity/kinds";
import type { HeatSplit } from "../demandHeatBalance";
import type { OperatingPoint } from "./operatingResult";

/**
 * Heat balance of an operating point [W, –]: where the power of its fuel goes, closed to rounding. Water that a spray
 * evaporates counts with the exhaust, in which its vapour leaves.
 *
 * @param point what chosen parts give at a speed and load
 * @param split shares of friction and wall heat [–]
 * @throws RangeError if a share is outside 0 to 1
 * @source first law for a steady flow
 * @example operatingHeatBalance(operatingPoint(inventedOperatingBuild, { engineSpeed: 50, load: { kind: "brakePower", brakePower: 6e5 } }), { frictionHeatToOil: 0.6, wallHeatToOil: 0.2, wallHeatRadiated: 0.1 }).parts[0].share // 0.3755
 */
export function operatingHeatBalance(point: OperatingPoint, split: HeatSplit): HeatBalance {
  const { powers, banks, blowers, coolers } = point;
  const sum = <T>(all: readonly T[], power: (each: T) => number) =>
    all.reduce((total, each) => total + power(each), 0) as Power;
  return heatBalance({
    fuelPower: powers.fuel,
    brakePower: powers.brake,
    accessoryPower: powers.accessories,
    fuelPumpPower: powers.fuelPump,
    frictionPower: powers.friction,
    heatToWalls: point.heatToWalls,
    chargeCoolerHeat: sum(coolers, ({ heat }) => heat),
    exhaustHeat: point.exhaustHeat,
    blowerMechanicalLoss: sum(blowers, ({ shaftPower, gasPower }) => shaftPower - gasPower),
    turbochargerMechanicalLoss: sum(banks, ({ turbinePower, compressorPower }) => turbinePower - compressorPower),
    ...split,
  });
}
