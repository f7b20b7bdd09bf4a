import { restrictionLoss } from "../../engine";
import type { Gas } from "../../fluid";
import type { Fraction, MassFlow, Power, Pressure, Ratio, RotationalSpeed, SpecificEnergy, Temperature } from "../../quantity/kinds";
import { blowerShaftPower, displaced } from "../blower";
import { cooledBy } from "../chargeCooler";
import type { Surroundings } from "../chargePathBuild";
import type { BlowerElement, ChargeElement, CompressorBankElement, CoolerElement, SprayElement } from "./elements";
import type {
  ChargeState,
  MarchedBank,
  MarchedBlower,
  MarchedCooler,
  MarchedSpray,
  PathMarch,
  PathUnknowns,
} from "./marchState";
import { coolingEffectiveness } from "./ratedCooler";
import { sprayOutlet } from "./spray";

/** What a path stands in: the air, and what turns its blowers. */
export interface PathSetting {
  readonly surroundings: Surroundings;
  readonly engineSpeed: RotationalSpeed;
  /** the charge at the inlet */
  readonly gas: Gas;
  /** makes the charge of another humidity, behind a spray */
  readonly moistGas: (humidityRatio: Ratio) => Gas;
  /** for each blower, whether its bypass is open */
  readonly bypassesOpen: readonly boolean[];
}

/**
 * The states along a path of elements, explicitly from the open air to the manifold, for a trial of its unknowns. Ratios
 * below 1 are followed too, so that a solver may come from there.
 */
export function pathMarch(path: readonly ChargeElement[], setting: PathSetting, trial: PathUnknowns): PathMarch {
  const { surroundings, gas } = setting;
  const states: ChargeState[] = [];
  const banks: MarchedBank[] = [];
  const blowers: MarchedBlower[] = [];
  const coolers: MarchedCooler[] = [];
  const sprays: MarchedSpray[] = [];
  let state: ChargeState = {
    pressure: surroundings.pressure,
    temperature: surroundings.temperature,
    massFlow: trial.airFlow as MassFlow,
    humidityRatio: surroundings.humidityRatio,
    gas,
  };
  states.push(state);
  for (const element of path) {
    switch (element.kind) {
      case "restriction": {
        const density = state.gas.density(state.temperature, state.pressure);
        const loss = restrictionLoss(element.restriction, state.massFlow, density);
        state = moved(state, lessened(state.pressure, loss), state.temperature);
        break;
      }
      case "compressorBank": {
        const bank = compressed(element, state, trial.wheelSpeeds[banks.length]!);
        banks.push(bank);
        state = bank.outlet;
        break;
      }
      case "cooler": {
        const cooler = cooled(element, state, trial.sinkWarmings[coolers.length]!);
        coolers.push(cooler);
        state = cooler.outlet;
        break;
      }
      case "spray": {
        const sprayed = wetted(element, state, setting.moistGas);
        sprays.push(sprayed);
        state = sprayed.outlet;
        break;
      }
      case "blower": {
        const i = blowers.length;
        const blower = setting.bypassesOpen[i]
          ? unloaded(element, state, setting.engineSpeed)
          : blown(element, state, setting.engineSpeed, trial.blowerRatios[i]!);
        blowers.push(blower);
        state = blower.outlet;
        break;
      }
      case "plenum":
        break;
    }
    states.push(state);
  }
  return { states, banks, blowers, coolers, sprays, manifold: state };
}

function moved(state: ChargeState, pressure: Pressure, temperature: ChargeState["temperature"]): ChargeState {
  const { massFlow, humidityRatio, gas } = state;
  return { pressure, temperature, massFlow, humidityRatio, gas };
}

function compressed(element: CompressorBankElement, inlet: ChargeState, speed: number): MarchedBank {
  const { compressor, count } = element;
  const { reference } = compressor;
  const { gas, temperature, massFlow } = inlet;
  const warmth = temperature / reference.temperature;
  const hotter = Math.sqrt(warmth);
  const correctedFlow = ((massFlow / count) * hotter * (reference.pressure / inlet.pressure)) as MassFlow;
  const correctedSpeed = (speed / hotter) as RotationalSpeed;
  const point = compressor.at(correctedFlow, correctedSpeed);
  const specificWork = point.correctedWork * warmth;
  const outletTemperature = gas.temperatureAtEnthalpy((gas.enthalpy(temperature) + specificWork) as SpecificEnergy);
  const pressure = (inlet.pressure * point.pressureRatio) as Pressure;
  return {
    element,
    speed: speed as RotationalSpeed,
    correctedFlow,
    correctedSpeed,
    point,
    power: (massFlow * specificWork) as Power,
    inlet,
    outlet: moved(inlet, pressure, outletTemperature),
  };
}

function cooled(element: CoolerElement, inlet: ChargeState, sinkWarming: number): MarchedCooler {
  const { cooling, restriction } = element;
  const { massFlow, temperature, pressure, gas } = inlet;
  const effectiveness = (
    cooling.kind === "fixed"
      ? cooling.effectiveness
      : coolingEffectiveness(cooling, massFlow, massFlow * gas.specificHeat(temperature))
  ) as Fraction;
  const sinkTemperature = (cooling.sinkTemperature + sinkWarming) as Temperature;
  const behind = cooledBy({ effectiveness, sinkTemperature, restriction }, inlet);
  const { pressureLoss } = behind;
  return {
    element,
    sinkWarming,
    effectiveness,
    pressureLoss,
    inlet,
    outlet: moved(inlet, lessened(pressure, pressureLoss), behind.temperature),
  };
}

function wetted(element: SprayElement, inlet: ChargeState, moistGas: PathSetting["moistGas"]): MarchedSpray {
  const { pressure, temperature, humidityRatio, gas, massFlow } = inlet;
  const dryAirFlow = (massFlow / (1 + humidityRatio)) as MassFlow;
  const sprayed = sprayOutlet(element.spray, { dryAirFlow, temperature, pressure, humidityRatio, gas, moistGas });
  const outlet: ChargeState = {
    pressure,
    temperature: sprayed.temperature,
    massFlow: (massFlow + sprayed.evaporatedFlow) as MassFlow,
    humidityRatio: sprayed.humidityRatio,
    gas: sprayed.gas,
  };
  return { element, sprayed, outlet };
}

function unloaded(element: BlowerElement, inlet: ChargeState, engineSpeed: number): MarchedBlower {
  const { blower, bypassShare = 0 } = element;
  const speed = (blower.driveRatio * engineSpeed) as RotationalSpeed;
  const idle = displaced(blower, {
    blowerSpeed: speed,
    inletPressure: inlet.pressure,
    inletTemperature: inlet.temperature,
    pressureRatio: 1 as Ratio,
    gas: inlet.gas,
  });
  return {
    element,
    bypassOpen: true,
    pressureRatio: 1 as Ratio,
    speed,
    volumetricEfficiency: idle.volumetricEfficiency,
    gasPower: 0 as Power,
    shaftPower: blowerShaftPower(blower, speed, 0 as Power),
    mismatch: 0,
    surplus: Math.log(((1 - bypassShare) * idle.massFlow) / inlet.massFlow),
    inlet,
    outlet: inlet,
  };
}

function blown(element: BlowerElement, inlet: ChargeState, engineSpeed: number, ratio: number): MarchedBlower {
  const { blower, bypassShare = 0 } = element;
  const { gas, massFlow, pressure: inletPressure } = inlet;
  const blowerSpeed = (blower.driveRatio * engineSpeed) as RotationalSpeed;
  const pressureRatio = ratio as Ratio;
  let passed = displaced(blower, { blowerSpeed, inletPressure, inletTemperature: inlet.temperature, pressureRatio, gas });
  const { gasPower } = passed;
  const before = gas.enthalpy(inlet.temperature);
  const after = (before + gasPower / massFlow) as SpecificEnergy;
  if (bypassShare > 0) {
    // what comes back through the valve warms what the blower draws
    const mixed = gas.temperatureAtEnthalpy(((1 - bypassShare) * before + bypassShare * after) as SpecificEnergy);
    passed = displaced(blower, { blowerSpeed, inletPressure, inletTemperature: mixed, pressureRatio, gas });
  }
  return {
    element,
    bypassOpen: false,
    pressureRatio,
    speed: blowerSpeed,
    volumetricEfficiency: passed.volumetricEfficiency,
    gasPower,
    shaftPower: blowerShaftPower(blower, blowerSpeed, gasPower),
    mismatch: Math.log(((1 - bypassShare) * passed.massFlow) / massFlow),
    surplus: 0,
    inlet,
    outlet: moved(inlet, (inletPressure * ratio) as Pressure, gas.temperatureAtEnthalpy(after)),
  };
}

/** Largest part of the pressure that a restriction may take; beyond it a trial is followed, but is no answer. */
export const mostLossShare = 0.5;

/** Pressure after a loss; where the loss is more than half of it, something above zero, for solvers on their way. */
function lessened(pressure: number, loss: number): Pressure {
  const share = loss / pressure;
  const left = share <= mostLossShare ? 1 - share : mostLossShare ** 2 / share;
  return (pressure * left) as Pressure;
}
