import { brakeMeanEffectivePressure, brakeTorque } from "../../engine";
import type { Area, Fraction, MassFlow, Power, Ratio, Temperature, Torque, Velocity } from "../../quantity/kinds";
import { chargeCondensate, coolerHeat } from "../chargeCooler";
import type { MarchedBlower, MarchedCooler, MarchedSpray } from "../path/marchState";
import { limitMargins } from "./limits";
import type {
  BankResult,
  BlowerWork,
  CoolerWork,
  OperatingConvergence,
  OperatingPoint,
  PathStation,
  SprayWork,
} from "./operatingResult";
import type { OperatingState } from "./operatingState";
import type { Solved } from "./solved";
import type { TurbineState } from "./turbineState";

/** A closed balance as its reader wants it. */
export function describePoint(found: Solved): OperatingPoint {
  const { setting, state } = found;
  const { build, engineSpeed } = setting;
  const { march, cylinders, trial } = state;
  const { displacement } = build.engine;
  const brakePower = state.brake as Power;
  const dryAirFlow = (trial.airFlow / (1 + build.surroundings.humidityRatio)) as MassFlow;
  const mean = (power: number) =>
    brakeMeanEffectivePressure({ power: Math.abs(power) as Power, displacement, engineSpeed }) * Math.sign(power);
  return {
    engineSpeed,
    brakePower,
    torque: brakeTorque(brakePower, engineSpeed),
    fuelFlow: trial.fuelFlow as MassFlow,
    airFlow: trial.airFlow as MassFlow,
    dryAirFlow,
    excessAirRatio: state.excessAirRatio as Ratio,
    stations: stationsOf(state, build.path),
    manifoldPressure: march.manifold.pressure,
    manifoldTemperature: march.manifold.temperature,
    banks: state.turbines.map(bankOf),
    blowers: march.blowers.map(blowerOf),
    coolers: coolersOf(march.coolers, dryAirFlow),
    sprays: march.sprays.map((spray) => sprayOf(spray, march.states[build.path.indexOf(spray.element)]!.temperature)),
    powers: {
      brake: brakePower,
      friction: cylinders.friction,
      accessories: build.accessoryPower,
      blower: state.blowers as Power,
      pumping: state.pumping as Power,
      fuelPump: state.fuelPump as Power,
      indicated: state.needed as Power,
      fuel: (trial.fuelFlow * build.fuel.lowerHeatingValue) as Power,
    },
    peakPressure: cylinders.peakPressure,
    frictionMeanEffectivePressure: cylinders.frictionMeanEffectivePressure,
    brakeMeanEffectivePressure: mean(state.brake) as OperatingPoint["brakeMeanEffectivePressure"],
    exhaustFlow: state.exhaustFlow,
    exhaustTemperature: state.exhaustTemperature,
    backPressure: state.exhaustPressure,
    pipePressure: state.pipePressure,
    pipeTemperature: state.pipeTemperature,
    heatToWalls: state.heatToWalls as Power,
    exhaustHeat: exhaustHeatOf(found) as Power,
    margins: limitMargins(setting.limits, state),
    convergence: convergenceOf(found),
  };
}

function stationsOf({ march }: OperatingState, path: Solved["setting"]["build"]["path"]): readonly PathStation[] {
  const whole = Math.log(march.manifold.pressure / march.states[0]!.pressure);
  return march.states.map(({ pressure, temperature, massFlow, humidityRatio }, number) => {
    const element = path[number - 1];
    const ratio = number === 0 ? 1 : pressure / march.states[number - 1]!.pressure;
    return {
      number,
      after: element?.kind,
      name: element ? `After ${element.name}` : "Open air",
      pressure,
      temperature,
      massFlow,
      humidityRatio,
      pressureRatio: ratio as Ratio,
      share: whole === 0 ? undefined : ((Math.log(ratio) / whole) as Fraction),
    };
  });
}

function bankOf(turbine: TurbineState): BankResult {
  const { bank, work } = turbine;
  const { element, correctedFlow, correctedSpeed, point, inlet, outlet, speed } = bank;
  const { compressor, turbine: wheel } = element;
  const { gas, temperature } = inlet;
  const ideal = gas.enthalpy(gas.isentropicTemperature(temperature, point.pressureRatio)) - gas.enthalpy(temperature);
  const actual = gas.enthalpy(outlet.temperature) - gas.enthalpy(temperature);
  const surge = compressor.surgeFlow(correctedSpeed);
  const choke = compressor.chokeFlow(correctedSpeed);
  const { tipDiameter } = compressor;
  return {
    name: element.name,
    wheelSpeed: speed,
    tipSpeed: tipDiameter === undefined ? undefined : ((Math.PI * tipDiameter * speed) as Velocity),
    correctedFlow,
    correctedSpeed,
    pressureRatio: point.pressureRatio,
    compressorEfficiency: (ideal / actual) as Fraction,
    extrapolated: point.extrapolated,
    surgeMargin: (1 - surge / correctedFlow) as Fraction,
    chokeMargin: (1 - correctedFlow / choke) as Fraction,
    compressorPower: bank.power,
    turbinePower: turbine.power,
    turbineEfficiency: work.efficiency,
    speedRatio: work.speedRatio,
    expansionRatio: turbine.expansionRatio,
    turbineInletPressure: turbine.inletPressure,
    turbineInletTemperature: turbine.inletTemperature,
    turbineOutletTemperature: turbine.outletTemperature,
    wastegateFraction: turbine.wastegateFraction,
    turbineAreaEach: (wheel.entryArea * wheel.entries) as Area,
  };
}

function blowerOf(marched: MarchedBlower): BlowerWork {
  const { element, bypassOpen, pressureRatio, speed, volumetricEfficiency, gasPower, shaftPower, outlet } = marched;
  return {
    name: element.name,
    bypassOpen,
    bypassShare: (bypassOpen ? 1 : (element.bypassShare ?? 0)) as Fraction,
    pressureRatio,
    speed,
    volumetricEfficiency,
    gasPower,
    shaftPower,
    shaftTorque: (shaftPower / (2 * Math.PI * speed)) as Torque,
    outletTemperature: outlet.temperature,
  };
}

/** The coolers along the path; to each comes the vapour that those before it have left. */
function coolersOf(coolers: readonly MarchedCooler[], dryAirFlow: MassFlow): readonly CoolerWork[] {
  let condensed = 0; // kg of water for each kg of dry air
  return coolers.map((cooler) => {
    const work = coolerOf(cooler, dryAirFlow, condensed);
    condensed += work.condensateFlow / dryAirFlow;
    return work;
  });
}

function coolerOf(cooler: MarchedCooler, dryAirFlow: MassFlow, condensedBefore: number): CoolerWork {
  const { element, sinkWarming, effectiveness, pressureLoss, outlet } = cooler;
  const { temperature, pressure } = outlet;
  const humidityRatio = (outlet.humidityRatio - condensedBefore) as Ratio;
  const { condensateFlow, latentHeat } = chargeCondensate({ dryAirFlow, humidityRatio, temperature, pressure });
  return {
    name: element.name,
    sinkTemperature: (element.cooling.sinkTemperature + sinkWarming) as Temperature,
    sinkWarming,
    effectiveness,
    heat: heatOf(cooler),
    pressureLoss,
    condensateFlow,
    latentHeat,
  };
}

function heatOf({ inlet, outlet }: MarchedCooler): Power {
  return coolerHeat(inlet, outlet.temperature);
}

function sprayOf({ element, sprayed }: MarchedSpray, before: number): SprayWork {
  return {
    name: element.name,
    waterFlow: element.spray.waterFlow,
    evaporatedFlow: sprayed.evaporatedFlow,
    saturated: sprayed.saturated,
    temperatureDrop: before - sprayed.temperature,
  };
}

function exhaustHeatOf({ setting, state }: Solved): number {
  const { surroundings, gas } = setting;
  const out = state.exhaustFlow * state.exhaustGas.enthalpy(state.pipeTemperature);
  return out - state.trial.airFlow * gas.enthalpy(surroundings.temperature) - waterEnthalpy(state);
}

function waterEnthalpy({ march }: OperatingState): number {
  return march.sprays.reduce((sum, { sprayed }) => sum + sprayed.waterEnthalpy, 0);
}

/** Residuals over the boundary of the whole engine, apart from the equations that the solver closed. */
function convergenceOf(found: Solved): OperatingConvergence {
  const { setting, state } = found;
  const { trial, march, exhaustFlow } = state;
  const water = march.sprays.reduce((sum, { sprayed }) => sum + sprayed.evaporatedFlow, 0);
  const inward = trial.airFlow + water + trial.fuelFlow;
  const fuelPower = trial.fuelFlow * setting.build.fuel.lowerHeatingValue;
  const coolers = march.coolers.reduce((sum, cooler) => sum + heatOf(cooler), 0);
  const bearings = state.turbines.reduce((sum, { power, bank }) => sum + power - bank.power, 0);
  const blowerLoss = march.blowers.reduce((sum, { shaftPower, gasPower }) => sum + shaftPower - gasPower, 0);
  const left =
    state.brake +
    state.cylinders.friction +
    setting.build.accessoryPower +
    state.fuelPump +
    blowerLoss +
    state.heatToWalls +
    coolers +
    bearings +
    exhaustHeatOf(found);
  return {
    residual: found.residual,
    iterations: found.iterations,
    massResidual: (exhaustFlow - inward) / inward,
    energyResidual: (fuelPower - left) / fuelPower,
  };
}
