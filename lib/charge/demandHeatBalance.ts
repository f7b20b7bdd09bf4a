import { type HeatBalance, heatBalance } from "../engine";
import type { Fraction, Power } from "../quantity/kinds";
import type { DemandPoint } from "./demandBuild";

/** How the heat of the metal is shared out. */
export interface HeatSplit {
  /** part of the friction that heats oil, the rest the jacket [–], 0 to 1 */
  readonly frictionHeatToOil: Fraction;
  /** part of the wall heat that piston cooling and bearings pass to the oil [–], 0 to 1 */
  readonly wallHeatToOil: Fraction;
  /** part of the wall heat that leaves from the engine's surface [–], 0 to 1 */
  readonly wallHeatRadiated: Fraction;
}

/**
 * Heat balance of a demand point [W, –]: where the power of its fuel goes, closed to rounding.
 *
 * @param point what a wanted power asks for
 * @param split shares of friction and wall heat [–]
 * @throws RangeError if a share is outside 0 to 1
 * @source first law for a steady flow
 * @example demandHeatBalance(demandPoint(inventedBuild, { engineSpeed: 50, brakePower: 6e5 }), { frictionHeatToOil: 0.6, wallHeatToOil: 0.2, wallHeatRadiated: 0.1 }).parts[0].share // 0.3803
 */
export function demandHeatBalance(point: DemandPoint, split: HeatSplit): HeatBalance {
  const { powers, path, exhaust } = point;
  return heatBalance({
    fuelPower: powers.fuel,
    brakePower: powers.brake,
    accessoryPower: powers.accessories,
    fuelPumpPower: powers.fuelPump,
    frictionPower: powers.friction,
    heatToWalls: point.heatToWalls,
    chargeCoolerHeat: (path.coolerBeforeBlower.heat + path.coolerAfterBlower.heat) as Power,
    exhaustHeat: exhaust.heat,
    blowerMechanicalLoss: (path.blower.shaftPower - path.blower.gasPower) as Power,
    turbochargerMechanicalLoss: exhaust.bearingLoss,
    ...split,
  });
}
