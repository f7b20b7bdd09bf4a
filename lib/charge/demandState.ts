import { exhaustTemperature, pumpingPower } from "../engine";
import { burntGas, type Gas } from "../fluid";
import type {
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Temperature,
} from "../quantity/kinds";
import type { BalancedMarch } from "./balancePath";
import { blowerShaftPower } from "./blower";
import { cylinderLoad } from "./cylinderLoad";
import type { DemandBuild } from "./demandBuild";
import { pressureAfterTurbine, type TurbineBalance, turbineBalance } from "./turbine";

/** A trial of fuel flow on a charge path. */
export interface DemandTrial {
  readonly engineSpeed: RotationalSpeed;
  readonly brakePower: number;
  readonly fuelFlow: number;
  readonly excessAirRatio: number;
  readonly path: BalancedMarch;
  readonly charge: Gas;
  /** for the excess air of this trial; made anew if left out */
  readonly exhaustGas?: Gas | undefined;
}

/** All that one trial leads to, if the exhaust can drive the turbines. */
export interface DemandState {
  readonly peakPressure: Pressure;
  readonly frictionMeanEffectivePressure: PressureDifference;
  readonly friction: number;
  readonly blower: number;
  readonly fuelPump: number;
  readonly pumping: number;
  /** what the cylinders must give [W] */
  readonly needed: number;
  /** what this fuel gives [W] */
  readonly given: number;
  readonly heatToWalls: number;
  readonly exhaustGas: Gas;
  readonly turbineInletTemperature: Temperature;
  readonly turbineOutletPressure: Pressure;
  readonly turbineInletPressure: Pressure;
  readonly turbine: TurbineBalance;
}

/** A trial that the exhaust cannot feed, and why. */
export interface StarvedTrial {
  /** what the cylinders must give without pumping [W] */
  readonly needed: number;
  /** what this fuel gives [W] */
  readonly given: number;
  readonly starved: RangeError;
}

/**
 * Powers, exhaust and turbine of one trial. The pumping power follows explicitly: the net work of the gas is what
 * friction, drives and load take, whatever the pumping.
 */
export function demandState(build: DemandBuild, trial: DemandTrial): DemandState | StarvedTrial {
  const { engine, fuel } = build;
  const { engineSpeed, fuelFlow, path, charge } = trial;
  const { displacement } = engine;
  const manifoldPressure = path.coolerAfterBlower.pressure;
  const { peakPressure, frictionMeanEffectivePressure, friction } = cylinderLoad(engine, engineSpeed, manifoldPressure);
  const blowerSpeed = (build.blower.driveRatio * engineSpeed) as RotationalSpeed;
  const blower = blowerShaftPower(build.blower, blowerSpeed, path.blowerGasPower);
  const fuelPump = build.fuelPumpWork * fuelFlow;
  const netGasPower = (trial.brakePower + friction + build.accessoryPower + blower + fuelPump) as Power;

  const fuelPower = fuelFlow * fuel.lowerHeatingValue;
  const given = engine.grossIndicatedEfficiency * fuelPower;
  const heatToWalls = (engine.heatToWallsShare * fuelPower) as Power;
  const exhaustGas =
    trial.exhaustGas ??
    burntGas({
      excessAirRatio: trial.excessAirRatio as Ratio,
      humidityRatio: build.surroundings.humidityRatio,
      fuel,
    });
  const exhaustFlow = (path.airFlow + fuelFlow) as MassFlow;
  try {
    const turbineInletTemperature = exhaustTemperature({
      fuelFlow: fuelFlow as MassFlow,
      lowerHeatingValue: fuel.lowerHeatingValue,
      airFlow: path.airFlow as MassFlow,
      manifoldTemperature: path.coolerAfterBlower.temperature,
      netGasPower,
      heatToWalls,
      charge,
      exhaustGas,
    });
    const turbine = turbineBalance({
      compressorPower: Math.max(0, path.airFlow * path.compressorWork) as Power, // rounding at a ratio of 1
      exhaustFlow,
      inletTemperature: turbineInletTemperature,
      isentropicEfficiency: build.turbochargers.turbineEfficiency,
      mechanicalEfficiency: build.turbochargers.mechanicalEfficiency,
      wastegateFraction: build.turbochargers.wastegateFraction ?? (0 as Fraction),
      gas: exhaustGas,
    });
    const turbineOutletPressure = pressureAfterTurbine({
      ambientPressure: build.surroundings.pressure,
      exhaustFlow,
      temperature: turbine.outletTemperature,
      ratedFlow: build.exhaustPipe.massFlow,
      ratedDensity: build.exhaustPipe.density,
      ratedLoss: build.exhaustPipe.pressureLoss,
      gas: exhaustGas,
    });
    const turbineInletPressure = (turbineOutletPressure * turbine.expansionRatio) as Pressure;
    const pumping = pumpingPower({
      exhaustPressure: turbineInletPressure,
      manifoldPressure,
      displacement,
      engineSpeed,
      valveLoss: engine.valveLoss ?? (0 as PressureDifference),
      gainCounts: build.pumpingGainCounts,
    });
    return {
      peakPressure,
      frictionMeanEffectivePressure,
      friction,
      blower,
      fuelPump,
      pumping,
      needed: netGasPower + pumping,
      given,
      heatToWalls,
      exhaustGas,
      turbineInletTemperature,
      turbineOutletPressure,
      turbineInletPressure,
      turbine,
    };
  } catch (starved) {
    if (starved instanceof RangeError) return { needed: netGasPower, given, starved };
    throw starved;
  }
}
