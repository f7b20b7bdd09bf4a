import {
  type DemandPoint,
  demandHeatBalance,
  type HeatSplit,
  type OperatingPoint,
  operatingHeatBalance,
} from "../../lib/charge";
import type { HeatBalance } from "../../lib/engine";
import type { MassFlow, Power, Pressure, Ratio, RotationalSpeed, Temperature } from "../../lib/quantity";

/** The charge coolers of a kind at work. */
export interface CooledCharge {
  /** taken out of the charge as it is, and by the water that falls out of it */
  readonly heat: Power;
  readonly latentHeat: Power;
  readonly hotInlet: Temperature;
  readonly hotOutlet: Temperature;
}

/** A solved point of the engine as a heat balance reads it, whether a power was asked for or chosen parts gave it. */
export interface SolvedEngine {
  readonly speed: RotationalSpeed;
  readonly brakePower: Power;
  readonly fuelPower: Power;
  readonly fuelFlow: MassFlow;
  readonly excessAirRatio: Ratio;
  /** water vapour of the charge over its dry air; what a spray adds is in it */
  readonly humidityRatio: Ratio;
  /** drawn in from outside, vapour included */
  readonly airFlow: MassFlow;
  readonly manifoldPressure: Pressure;
  readonly manifoldTemperature: Temperature;
  /** into the cylinders, vapour included */
  readonly chargeFlow: MassFlow;
  readonly exhaustFlow: MassFlow;
  /** above that of the air and water that came in */
  readonly exhaustHeat: Power;
  /** before the first turbine */
  readonly backPressure: Pressure;
  readonly exhaustTemperature: Temperature;
  /** behind the last turbine */
  readonly pipePressure: Pressure;
  readonly pipeTemperature: Temperature;
  readonly intercooler: CooledCharge;
  readonly aftercooler: CooledCharge;
  readonly point: DemandPoint | OperatingPoint;
}

/** Where its fuel's power goes. */
export function heatBalanceOf({ point }: SolvedEngine, split: HeatSplit): HeatBalance {
  return "banks" in point ? operatingHeatBalance(point, split) : demandHeatBalance(point, split);
}

/** What a wanted power asks for. */
export function engineOfDemand(point: DemandPoint, speed: RotationalSpeed, humidityRatio: Ratio): SolvedEngine {
  const { path, exhaust, powers } = point;
  const after = (key: string) => path.stations.find((station) => station.key === key)!.temperature;
  const airFlow = (exhaust.flow - point.fuelFlow) as MassFlow;
  return {
    speed,
    brakePower: powers.brake,
    fuelPower: powers.fuel,
    fuelFlow: point.fuelFlow,
    excessAirRatio: point.excessAirRatio,
    humidityRatio,
    airFlow,
    manifoldPressure: path.manifoldPressure,
    manifoldTemperature: path.manifoldTemperature,
    chargeFlow: airFlow,
    exhaustFlow: exhaust.flow,
    exhaustHeat: exhaust.heat,
    backPressure: exhaust.turbineInletPressure,
    exhaustTemperature: exhaust.turbineInletTemperature,
    pipePressure: exhaust.turbineOutletPressure,
    pipeTemperature: exhaust.turbineOutletTemperature,
    intercooler: {
      heat: path.coolerBeforeBlower.heat,
      latentHeat: path.coolerBeforeBlower.latentHeat,
      hotInlet: after("compressorOutlet"),
      hotOutlet: after("blowerInlet"),
    },
    aftercooler: {
      heat: path.coolerAfterBlower.heat,
      latentHeat: path.coolerAfterBlower.latentHeat,
      hotInlet: after("blowerOutlet"),
      hotOutlet: path.manifoldTemperature,
    },
    point,
  };
}

/** What chosen parts give; coolers of one kind count together. */
export function engineOfParts(point: OperatingPoint): SolvedEngine {
  return {
    speed: point.engineSpeed,
    brakePower: point.brakePower,
    fuelPower: point.powers.fuel,
    fuelFlow: point.fuelFlow,
    excessAirRatio: point.excessAirRatio,
    humidityRatio: point.stations.at(-1)!.humidityRatio,
    airFlow: point.airFlow,
    manifoldPressure: point.manifoldPressure,
    manifoldTemperature: point.manifoldTemperature,
    chargeFlow: (point.exhaustFlow - point.fuelFlow) as MassFlow,
    exhaustFlow: point.exhaustFlow,
    exhaustHeat: point.exhaustHeat,
    backPressure: point.backPressure,
    exhaustTemperature: point.exhaustTemperature,
    pipePressure: point.pipePressure,
    pipeTemperature: point.pipeTemperature,
    intercooler: dutyOfCoolers(point, "intercooler"),
    aftercooler: dutyOfCoolers(point, "aftercooler"),
    point,
  };
}

/** All charge coolers of a kind as one, in which their streams of charge lie side by side. */
function dutyOfCoolers({ coolers, stations, manifoldTemperature }: OperatingPoint, kind: string): CooledCharge {
  let [heat, latentHeat, rate, inlets] = [0, 0, 0, 0];
  for (const cooler of coolers) {
    if (!cooler.name.startsWith(kind)) continue;
    const place = stations.findIndex(({ name }) => name === `After ${cooler.name}`);
    const [hotInlet, hotOutlet] = [stations[place - 1]!.temperature, stations[place]!.temperature];
    const own = hotInlet === hotOutlet ? 0 : cooler.heat / (hotInlet - hotOutlet);
    heat += cooler.heat;
    latentHeat += cooler.latentHeat;
    rate += own;
    inlets += own * hotInlet;
  }
  const hotInlet = rate > 0 ? inlets / rate : manifoldTemperature;
  const hotOutlet = rate > 0 ? hotInlet - heat / rate : hotInlet;
  return {
    heat: heat as Power,
    latentHeat: latentHeat as Power,
    hotInlet: hotInlet as Temperature,
    hotOutlet: hotOutlet as Temperature,
  };
}
