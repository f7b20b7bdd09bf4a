import {
  type DemandPoint,
  demandHeatBalance,
  type HeatSplit,
  type OperatingPoint,
  operatingHeatBalance,
} from "../../lib/charge";
import type { HeatBalance } from "../../lib/engine";
import type { MassFlow, Power, Pressure, Ratio, RotationalSpeed, Temperature } from "../../lib/quantity";

/** A solved point of the engine as a heat balance reads it, whether a power was asked for or chosen parts gave it. */
export interface SolvedEngine {
  readonly speed: RotationalSpeed;
  readonly brakePower: Power;
  readonly fuelPower: Power;
  readonly excessAirRatio: Ratio;
  /** water vapour of the charge over its dry air; what a spray adds is in it */
  readonly humidityRatio: Ratio;
  readonly manifoldPressure: Pressure;
  readonly manifoldTemperature: Temperature;
  /** into the cylinders, vapour included */
  readonly chargeFlow: MassFlow;
  readonly exhaustFlow: MassFlow;
  /** before the first turbine */
  readonly backPressure: Pressure;
  readonly exhaustTemperature: Temperature;
  /** behind the last turbine */
  readonly pipeTemperature: Temperature;
  readonly intercoolerHeat: Power;
  readonly aftercoolerHeat: Power;
  readonly point: DemandPoint | OperatingPoint;
}

/** Where its fuel's power goes. */
export function heatBalanceOf({ point }: SolvedEngine, split: HeatSplit): HeatBalance {
  return "banks" in point ? operatingHeatBalance(point, split) : demandHeatBalance(point, split);
}

/** What a wanted power asks for. */
export function engineOfDemand(point: DemandPoint, speed: RotationalSpeed, humidityRatio: Ratio): SolvedEngine {
  const { path, exhaust, powers } = point;
  return {
    speed,
    brakePower: powers.brake,
    fuelPower: powers.fuel,
    excessAirRatio: point.excessAirRatio,
    humidityRatio,
    manifoldPressure: path.manifoldPressure,
    manifoldTemperature: path.manifoldTemperature,
    chargeFlow: (exhaust.flow - point.fuelFlow) as MassFlow,
    exhaustFlow: exhaust.flow,
    backPressure: exhaust.turbineInletPressure,
    exhaustTemperature: exhaust.turbineInletTemperature,
    pipeTemperature: exhaust.turbineOutletTemperature,
    intercoolerHeat: path.coolerBeforeBlower.heat,
    aftercoolerHeat: path.coolerAfterBlower.heat,
    point,
  };
}

/** What chosen parts give; coolers of one kind count together. */
export function engineOfParts(point: OperatingPoint): SolvedEngine {
  const coolers = (kind: string) =>
    point.coolers.reduce((sum, { name, heat }) => sum + (name.startsWith(kind) ? heat : 0), 0) as Power;
  return {
    speed: point.engineSpeed,
    brakePower: point.brakePower,
    fuelPower: point.powers.fuel,
    excessAirRatio: point.excessAirRatio,
    humidityRatio: point.stations.at(-1)!.humidityRatio,
    manifoldPressure: point.manifoldPressure,
    manifoldTemperature: point.manifoldTemperature,
    chargeFlow: (point.exhaustFlow - point.fuelFlow) as MassFlow,
    exhaustFlow: point.exhaustFlow,
    backPressure: point.backPressure,
    exhaustTemperature: point.exhaustTemperature,
    pipeTemperature: point.pipeTemperature,
    intercoolerHeat: coolers("intercooler"),
    aftercoolerHeat: coolers("aftercooler"),
    point,
  };
}
