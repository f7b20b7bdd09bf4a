import { airExponent, airHeat, gasConstant } from "../lib/graph/fixture";

export interface BareInputs {
  readonly ratedPower: number;
  readonly engineSpeed: number;
  readonly displacement: number;
  readonly cylinders: number;
  readonly fuelConsumption: number;
  readonly airFuelRatio: number;
  readonly filling: number;
  readonly ambientPressure: number;
  readonly ambientTemperature: number;
  readonly designTemperature: number;
  readonly efficiency: number;
  readonly effectiveness: number;
  readonly coolantTemperature: number;
  readonly stages: string;
  readonly accessoryRun: readonly { readonly name: string; readonly teeth: number; readonly load: number }[];
}

/** The air demand of the tests' small graph as one plain function: what it costs without cells, names and refusals. */
export function bareAirDemand(at: BareInputs) {
  const fuelFlow = at.ratedPower * at.fuelConsumption;
  const airFlow = fuelFlow * at.airFuelRatio;
  const exhaustFlow = airFlow + fuelFlow;
  const sweptFlow = (at.displacement * at.engineSpeed) / 2;
  const chargeDensity = airFlow / (at.filling * sweptFlow);
  const manifoldPressure = chargeDensity * gasConstant * at.designTemperature;
  const pressureRatio = manifoldPressure / at.ambientPressure;
  if (!(pressureRatio >= 1)) throw new RangeError("pressureRatio: below 1");
  const stageRatio = at.stages === "two" ? Math.sqrt(pressureRatio) : pressureRatio;
  const stageRise = (at.ambientTemperature * (stageRatio ** airExponent - 1)) / at.efficiency;
  const deliveryTemperature = at.ambientTemperature + (at.stages === "two" ? 2 * stageRise : stageRise);
  const chargeTemperature = deliveryTemperature - at.effectiveness * (deliveryTemperature - at.coolantTemperature);
  const compressorPower = airFlow * airHeat * (deliveryTemperature - at.ambientTemperature);
  const coolerDuty = airFlow * airHeat * (deliveryTemperature - chargeTemperature);
  const coolerRoom = chargeTemperature - at.coolantTemperature;
  const meanPressure = at.ratedPower / sweptFlow;
  const torque = at.ratedPower / (2 * Math.PI * at.engineSpeed);
  const cylinderPower = at.ratedPower / at.cylinders;
  const pulleys = at.accessoryRun.map(({ name, teeth, load }) => ({
    name,
    speed: (at.engineSpeed * 60) / teeth,
    load,
  }));
  const accessoryPower = pulleys.reduce((sum, { load }) => sum + load, 0);
  const accessoryShare = accessoryPower / at.ratedPower;
  return {
    fuelFlow,
    airFlow,
    exhaustFlow,
    sweptFlow,
    chargeDensity,
    manifoldPressure,
    pressureRatio,
    stageRatio,
    stageRise,
    deliveryTemperature,
    chargeTemperature,
    compressorPower,
    coolerDuty,
    coolerRoom,
    meanPressure,
    torque,
    cylinderPower,
    pulleys,
    accessoryPower,
    accessoryShare,
  };
}
