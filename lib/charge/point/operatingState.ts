import { exhaustTemperature, pumpingPower } from "../../engine";
import type { Gas } from "../../fluid";
import type {
  Fraction,
  KindName,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Temperature,
} from "../../quantity/kinds";
import { type CylinderLoad, cylinderLoad } from "../cylinderLoad";
import type { PathMarch, PathUnknowns } from "../path/marchState";
import { type PathSetting, pathMarch } from "../path/pathMarch";
import { pressureAfterTurbine } from "../turbine";
import type { OperatingBuild } from "./operatingBuild";
import { type TurbineState, turbineState, turbineTemperatures } from "./turbineState";

/** A limit of a build: what it looks at, and where it lies. */
export interface Limit {
  /** kind of limit and, for parts of the path, the place of the part, as in "wheelSpeed:2" */
  readonly id: string;
  /** name for readers */
  readonly name: string;
  /** kind of quantity of value and limit */
  readonly kind: KindName;
  readonly sense: "at most" | "at least";
  readonly value: (state: OperatingState) => number;
  readonly limit: (state: OperatingState) => number;
}

/** A build at a speed, with what does not change while its balance is sought. */
export interface OperatingSetting extends PathSetting {
  readonly build: OperatingBuild;
  readonly stoichiometric: number;
  readonly burnt: (humidityRatio: Ratio) => Gas;
  /** of each cooler: the place among the coolers of the one that warms its stream, or −1 */
  readonly warmers: readonly number[];
  readonly limits: readonly Limit[];
  /** largest residual that a balance may leave, relative */
  readonly tolerance: number;
  /** states after which a balance is given up; as many as it takes if left out */
  readonly mostStates?: number;
}

/** What a trial of a balance consists of. */
export interface OperatingTrial extends PathUnknowns {
  /** [kg/s] */
  readonly fuelFlow: number;
  /** brake power over gross indicated power [–] */
  readonly brakeShare: number;
}

/** All that one trial leads to, and how far each of its balances is from closed. */
export interface OperatingState {
  /** crankshaft speed [rev/s] */
  readonly engineSpeed: RotationalSpeed;
  readonly trial: OperatingTrial;
  readonly march: PathMarch;
  readonly cylinders: CylinderLoad;
  readonly excessAirRatio: number;
  readonly exhaustGas: Gas;
  readonly exhaustFlow: MassFlow;
  /** before the first turbine, and without turbines after the cylinders */
  readonly exhaustTemperature: Temperature;
  readonly exhaustPressure: Pressure;
  /** in the order of the banks along the charge path */
  readonly turbines: readonly TurbineState[];
  readonly pipePressure: Pressure;
  readonly pipeTemperature: Temperature;
  readonly brake: number;
  readonly blowers: number;
  readonly fuelPump: number;
  readonly pumping: number;
  readonly heatToWalls: number;
  /** gross indicated power that the fuel gives [W] */
  readonly given: number;
  /** gross indicated power that is needed [W] */
  readonly needed: number;
  /** logarithm of the manifold density over that at which the engine draws what marched */
  readonly engineMismatch: number;
}

/**
 * All that a trial leads to.
 *
 * @param marched a march of the same path with the same air flow, wheel speeds and ratios, if it is known
 */
export function operatingState(
  setting: OperatingSetting,
  trial: OperatingTrial,
  marched?: PathMarch,
): OperatingState {
  const { build, engineSpeed } = setting;
  const { engine, fuel } = build;
  const march = marched ?? pathMarch(build.path, setting, trial);
  const { manifold } = march;
  const fuelFlow = trial.fuelFlow as MassFlow;
  const dryAirFlow = trial.airFlow / (1 + build.surroundings.humidityRatio);
  const excessAirRatio = dryAirFlow / (setting.stoichiometric * fuelFlow);
  const airPerFuel = setting.stoichiometric * (1 + manifold.humidityRatio);
  const products = (1 + airPerFuel) / (1 + excessAirRatio * airPerFuel);
  const exhaustGas = manifold.gas.blendedWith(setting.burnt(manifold.humidityRatio), products as Fraction);
  const exhaustFlow = (manifold.massFlow + fuelFlow) as MassFlow;

  const cylinders = cylinderLoad(engine, engineSpeed, manifold.pressure);
  const fuelPower = fuelFlow * fuel.lowerHeatingValue;
  const given = engine.grossIndicatedEfficiency * fuelPower;
  const heatToWalls = engine.heatToWallsShare * fuelPower;
  const brake = trial.brakeShare * given;
  let blowers = 0;
  for (const { shaftPower } of march.blowers) blowers += shaftPower;
  const fuelPump = build.fuelPumpWork * fuelFlow;
  const netGasPower = brake + cylinders.friction + build.accessoryPower + blowers + fuelPump;
  const temperature = exhaustTemperature({
    fuelFlow,
    lowerHeatingValue: fuel.lowerHeatingValue,
    airFlow: manifold.massFlow,
    manifoldTemperature: manifold.temperature,
    netGasPower: netGasPower as Power,
    heatToWalls: heatToWalls as Power,
    charge: manifold.gas,
    exhaustGas,
  });

  const temperatures = turbineTemperatures(march.banks, exhaustGas, exhaustFlow, temperature);
  const pipeTemperature = temperatures.at(-1)!;
  const pipePressure = pressureAfterTurbine({
    ambientPressure: build.surroundings.pressure,
    exhaustFlow,
    temperature: pipeTemperature,
    ratedFlow: build.exhaustPipe.massFlow,
    ratedDensity: build.exhaustPipe.density,
    ratedLoss: build.exhaustPipe.pressureLoss,
    gas: exhaustGas,
  });
  const turbines: TurbineState[] = [];
  let pressure = pipePressure;
  // The first bank along the charge path stands last in the exhaust.
  for (const bank of march.banks) {
    const before = temperatures[march.banks.length - 1 - turbines.length]!;
    const after = temperatures[march.banks.length - turbines.length]!;
    const state = turbineState(bank, { gas: exhaustGas, flow: exhaustFlow, before, after, outletPressure: pressure });
    turbines.push(state);
    pressure = state.inletPressure;
  }
  const pumping = pumpingPower({
    exhaustPressure: pressure,
    manifoldPressure: manifold.pressure,
    displacement: engine.displacement,
    engineSpeed,
    valveLoss: engine.valveLoss ?? (0 as PressureDifference),
    gainCounts: build.pumpingGainCounts,
  });
  const drawn = engine.volumetricEfficiency * engine.displacement * engineSpeed;
  const density = manifold.pressure / (manifold.gas.gasConstant * manifold.temperature);
  return {
    engineSpeed,
    trial,
    march,
    cylinders,
    excessAirRatio,
    exhaustGas,
    exhaustFlow,
    exhaustTemperature: temperature,
    exhaustPressure: pressure,
    turbines,
    pipePressure,
    pipeTemperature,
    brake,
    blowers,
    fuelPump,
    pumping,
    heatToWalls,
    given,
    needed: netGasPower + pumping,
    engineMismatch: Math.log((density * drawn) / (2 * manifold.massFlow)),
  };
}
