import { manifoldDensityNeeded, restrictionLoss } from "../engine";
import type { Gas } from "../fluid";
import type {
  Fraction,
  MassFlow,
  Power,
  Pressure,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
} from "../quantity/kinds";
import { displaced } from "./blower";
import { type ChargeCooler, chargeCoolerOutlet } from "./chargeCooler";
import type { ChargePathBuild } from "./chargePathBuild";
import { compressed } from "./compressor";

/** What a march along the charge path needs beside the build. */
export interface MarchUnknowns {
  readonly airFlow: number;
  readonly turbochargerRatio: number;
  /** 1 with an open bypass */
  readonly blowerRatio: number;
  /** warming of the first cooler's sink [K] */
  readonly sinkWarming: number;
}

/** States met on the march, and how far blower and engine are from passing the flow that marched. */
export interface March extends MarchUnknowns {
  readonly filterOutletPressure: Pressure;
  readonly compressorOutletPressure: Pressure;
  readonly compressorOutletTemperature: Temperature;
  readonly compressorWork: SpecificEnergy;
  readonly coolerBeforeBlower: ReturnType<typeof chargeCoolerOutlet>;
  readonly blowerGasPower: Power;
  readonly blowerFilling: Fraction;
  readonly blowerOutletPressure: Pressure;
  readonly blowerOutletTemperature: Temperature;
  readonly coolerAfterBlower: ReturnType<typeof chargeCoolerOutlet>;
  /** logarithm of the flow that the blower delivers over the one that marched; 0 with an open bypass */
  readonly blowerMismatch: number;
  /** logarithm of the manifold density over the one at which the engine draws the flow that marched */
  readonly engineMismatch: number;
}

/**
 * The states along the charge path, explicitly from the open air to the manifold, for a trial of its unknowns.
 * Ratios below 1 are followed too, so that a solver may come from there; who shows a result must refuse them.
 * Fields are written out, not spread: this is the innermost call of every sweep, and spreading made it ten times slower.
 */
export function march(build: ChargePathBuild, gas: Gas, engineSpeed: RotationalSpeed, trial: MarchUnknowns): March {
  const { surroundings, turbochargers, blower, engine } = build;
  const massFlow = trial.airFlow as MassFlow;
  const ambientDensity = gas.density(surroundings.temperature, surroundings.pressure);
  const filterLoss = restrictionLoss(build.filter, massFlow, ambientDensity);
  const filterOutletPressure = remaining("filter", surroundings.pressure, filterLoss);

  const efficiency = turbochargers.compressorEfficiency;
  const wheel = compressed(gas, surroundings.temperature, trial.turbochargerRatio, efficiency);
  const compressorOutletPressure = (filterOutletPressure * trial.turbochargerRatio) as Pressure;

  const first = warmed(build.coolerBeforeBlower, trial.sinkWarming);
  const coolerBeforeBlower = chargeCoolerOutlet(first, {
    massFlow,
    temperature: wheel.outletTemperature,
    pressure: compressorOutletPressure,
    gas,
  });

  const { temperature: inletTemperature, pressure: inletPressure } = coolerBeforeBlower;
  const blowerSpeed = (blower.driveRatio * engineSpeed) as RotationalSpeed;
  const pressureRatio = trial.blowerRatio as Ratio;
  const moved = displaced(blower, { blowerSpeed, inletPressure, inletTemperature, pressureRatio, gas });
  const blowerGasPower = (blower.bypassOpen ? 0 : moved.gasPower) as Power;
  const blowerOutletEnthalpy = (gas.enthalpy(inletTemperature) + blowerGasPower / massFlow) as SpecificEnergy;
  const blowerOutletTemperature = blower.bypassOpen
    ? inletTemperature
    : gas.temperatureAtEnthalpy(blowerOutletEnthalpy);
  const blowerOutletPressure = (inletPressure * trial.blowerRatio) as Pressure;

  const coolerAfterBlower = chargeCoolerOutlet(build.coolerAfterBlower, {
    massFlow,
    temperature: blowerOutletTemperature,
    pressure: blowerOutletPressure,
    gas,
  });
  const drawn = manifoldDensityNeeded({
    airFlow: massFlow,
    volumetricEfficiency: engine.volumetricEfficiency,
    displacement: engine.displacement,
    engineSpeed,
  });
  const filled = gas.density(coolerAfterBlower.temperature, coolerAfterBlower.pressure);
  return {
    airFlow: trial.airFlow,
    turbochargerRatio: trial.turbochargerRatio,
    blowerRatio: trial.blowerRatio,
    sinkWarming: trial.sinkWarming,
    filterOutletPressure,
    compressorOutletPressure,
    compressorOutletTemperature: wheel.outletTemperature,
    compressorWork: wheel.specificWork,
    coolerBeforeBlower,
    blowerGasPower,
    blowerFilling: moved.volumetricEfficiency,
    blowerOutletPressure,
    blowerOutletTemperature,
    coolerAfterBlower,
    blowerMismatch: blower.bypassOpen ? 0 : Math.log(moved.massFlow / massFlow),
    engineMismatch: Math.log(filled / drawn),
  };
}

function warmed(cooler: ChargeCooler, warming: number): ChargeCooler {
  if (warming === 0) return cooler;
  const { effectiveness, restriction, sinkTemperature } = cooler;
  return { effectiveness, restriction, sinkTemperature: (sinkTemperature + warming) as Temperature };
}

function remaining(what: string, pressure: Pressure, loss: number): Pressure {
  const left = pressure - loss;
  if (left > 0) return left as Pressure;
  throw new RangeError(`chargePath: the ${what} would take ${(loss / 1000).toFixed(1)} kPa, more than there is; check its loss and the flow at which that was measured, or ask for less air`);
}
