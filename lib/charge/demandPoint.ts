import { airFlowForFuel, brakeMeanEffectivePressure, exhaustHeat, humidAirFlow } from "../engine";
import { burntGas, type Gas, stoichiometricAirFuelRatio } from "../fluid";
import { brentRoot, type Slopes } from "../numeric";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type { Area, MassFlow, Power, Ratio, RotationalSpeed } from "../quantity/kinds";
import { type BalancedMarch, balancePath } from "./balancePath";
import { chargeOf } from "./chargePath";
import type { DemandBuild, DemandExhaust, DemandPoint } from "./demandBuild";
import { type DemandState, type DemandTrial, demandState } from "./demandState";
import { describePath, requireCharging } from "./describePath";
import { type Attempt, fuelBracket, surplus } from "./fuelBracket";
import { nozzleArea } from "./nozzle";

/** A power wanted at a speed. */
export interface WantedPower {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** power at the flywheel [W], 0 or above */
  readonly brakePower: Power;
}

/**
 * What a wanted power at a speed asks for [kg/s, Pa, K, W]: the fuel flow at which gross indicated power equals
 * brake + friction + accessories + blower + pumping + fuel pump, with the air, blower, turbines and back pressure that
 * this fuel flow brings. Turbines and compressors are given by efficiencies: whether chosen wheels can do it is another
 * question. Steady mean values. Where blower and engine, with idle turbochargers, already take more air than wanted,
 * that air is used and `air` says so. Of two solutions the one of less fuel is given.
 *
 * @param build everything from the open air to the exhaust pipe
 * @param wanted engine speed and brake power [rev/s, W]
 * @throws RangeError by name: the blower would be a restriction, not enough exhaust energy, no balance of power, or an argument outside its span
 * @source conservation of mass; first law on every element; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (balance of the shaft, from memory)
 * @example demandPoint(inventedBuild, { engineSpeed: 3200 / 60, brakePower: 708e3 }).fuelFlow // 0.04329
 */
export function demandPoint(build: DemandBuild, { engineSpeed, brakePower }: WantedPower): DemandPoint {
  const charge = requireBuild(build, engineSpeed);
  requireNotNegative("demandPoint: brakePower", brakePower, "W");
  const { fuel, surroundings } = build;
  const { humidityRatio } = surroundings;
  const stoichiometric = stoichiometricAirFuelRatio(fuel);
  const airPerFuel = build.excessAirRatio * stoichiometric * (1 + humidityRatio);

  const idling = balancePath(build, charge, engineSpeed, { turbochargerRatio: 1 });
  const onIdleAir: Attempt = (fuelFlow) => {
    const excessAirRatio = idling.airFlow / (1 + humidityRatio) / stoichiometric / fuelFlow;
    const trial = { engineSpeed, brakePower, charge, fuelFlow, excessAirRatio, path: idling };
    return { trial, outcome: demandState(build, trial) };
  };
  const wantedMix = { excessAirRatio: build.excessAirRatio, humidityRatio, fuel };
  const exhaustGas = burntGas(wantedMix);
  let nearest: BalancedMarch | undefined;
  const onWantedAir: Attempt = (fuelFlow) => {
    const dryAirFlow = airFlowForFuel({
      fuelFlow: fuelFlow as MassFlow,
      excessAirRatio: build.excessAirRatio,
      stoichiometricAirFuelRatio: stoichiometric,
    });
    const airFlow = humidAirFlow(dryAirFlow, humidityRatio);
    nearest = balancePath(build, charge, engineSpeed, { airFlow }, scaled(nearest ?? idling, airFlow, nearest?.slopes));
    const { excessAirRatio } = build;
    const trial = { engineSpeed, brakePower, charge, fuelFlow, excessAirRatio, path: nearest, exhaustGas };
    return { trial, outcome: demandState(build, trial) };
  };

  const idleFuel = idling.airFlow / airPerFuel;
  const idleAirSuffices = surplus(onIdleAir(idleFuel).outcome) >= 0;
  const attempt = remembered(idleAirSuffices ? onIdleAir : onWantedAir);
  const bracket = idleAirSuffices
    ? ([(idleFuel * build.excessAirRatio) / mostExcessAir, idleFuel] as const)
    : fuelBracket(attempt, idleFuel);
  const found = brentRoot((fuelFlow) => surplus(attempt(fuelFlow).outcome), bracket, {
    tolerance: 1e-14 * bracket[1],
    name: "demandPoint: balance of power",
  });
  const { trial, outcome } = attempt(found.root);
  requireCharging(trial.path);
  if ("starved" in outcome) throw outcome.starved;
  return described(build, trial, outcome, idleAirSuffices, found.iterations);
}

/** A start for the path of another air flow: pressures grow with the flow, and the blower's ratio hardly does. */
function scaled(path: BalancedMarch, airFlow: number, slopes: Slopes | undefined) {
  const { turbochargerRatio, blowerRatio, sinkWarming } = path;
  const ratio = (turbochargerRatio * airFlow) / path.airFlow;
  return { airFlow, turbochargerRatio: ratio, blowerRatio, sinkWarming, ...(slopes && { slopes }) };
}

/** Excess air beyond which no engine fires, and no burnt gas is told from air: less fuel is not looked for. */
const mostExcessAir = 900;

/** Bracketing and root finding ask twice for the same fuel flow. */
function remembered(attempt: Attempt): Attempt {
  const known = new Map<number, ReturnType<Attempt>>();
  return (fuelFlow) => {
    const before = known.get(fuelFlow);
    if (before) return before;
    const now = attempt(fuelFlow);
    known.set(fuelFlow, now);
    return now;
  };
}

function requireBuild(build: DemandBuild, engineSpeed: RotationalSpeed): Gas {
  const { engine, turbochargers } = build;
  requireWithin("demandPoint: excessAirRatio", build.excessAirRatio, [1, 20]);
  requireNotNegative("demandPoint: accessoryPower", build.accessoryPower, "W");
  requireNotNegative("demandPoint: fuelPumpWork", build.fuelPumpWork, "J/kg");
  requireWithin("demandPoint: grossIndicatedEfficiency", engine.grossIndicatedEfficiency, [0.05, 0.65]);
  requireWithin("demandPoint: heatToWallsShare", engine.heatToWallsShare, [0, 0.6]);
  requireWithin(
    "demandPoint: grossIndicatedEfficiency and heatToWallsShare together",
    engine.grossIndicatedEfficiency + engine.heatToWallsShare,
    [0, 1],
  );
  requireWithin("demandPoint: turbineEfficiency", turbochargers.turbineEfficiency, [0.2, 1]);
  requireWithin("demandPoint: mechanicalEfficiency", turbochargers.mechanicalEfficiency, [0.5, 1]);
  requireWithin("demandPoint: wastegateFraction", turbochargers.wastegateFraction ?? 0, [0, 0.95]);
  requirePositive("demandPoint: exhaustPipe massFlow", build.exhaustPipe.massFlow, "kg/s");
  requirePositive("demandPoint: exhaustPipe density", build.exhaustPipe.density, "kg/m³");
  requireNotNegative("demandPoint: exhaustPipe pressureLoss", build.exhaustPipe.pressureLoss, "Pa");
  return chargeOf(build, engineSpeed);
}

function described(
  build: DemandBuild,
  trial: DemandTrial,
  state: DemandState,
  onIdleAir: boolean,
  iterations: number,
): DemandPoint {
  const { engineSpeed, fuelFlow, path, charge } = trial;
  const brakePower = trial.brakePower as Power;
  return {
    air: onIdleAir ? "more than wanted" : "as wanted",
    excessAirRatio: trial.excessAirRatio as Ratio,
    fuelFlow: fuelFlow as MassFlow,
    powers: {
      brake: brakePower,
      friction: state.friction as Power,
      accessories: build.accessoryPower,
      blower: state.blower as Power,
      pumping: state.pumping as Power,
      fuelPump: state.fuelPump as Power,
      indicated: state.needed as Power,
      fuel: (fuelFlow * build.fuel.lowerHeatingValue) as Power,
    },
    path: describePath(build, charge, engineSpeed, path),
    exhaust: describedExhaust(build, trial, state),
    peakPressure: state.peakPressure,
    frictionMeanEffectivePressure: state.frictionMeanEffectivePressure,
    brakeMeanEffectivePressure: brakeMeanEffectivePressure({
      power: brakePower,
      displacement: build.engine.displacement,
      engineSpeed,
    }),
    heatToWalls: state.heatToWalls as Power,
    convergence: {
      residual: Math.max(Math.abs(surplus(state)) / state.needed, path.convergence.residual),
      iterations,
    },
  };
}

function describedExhaust(build: DemandBuild, trial: DemandTrial, state: DemandState): DemandExhaust {
  const { path, charge } = trial;
  const { turbine, exhaustGas, turbineInletTemperature, turbineInletPressure, turbineOutletPressure } = state;
  const flow = (path.airFlow + trial.fuelFlow) as MassFlow;
  const { count, wastegateFraction = 0 } = build.turbochargers;
  let turbineAreaEach: Area | undefined;
  if (turbine.expansionRatio > 1 + 1e-9) {
    turbineAreaEach = nozzleArea(((flow * (1 - wastegateFraction)) / count) as MassFlow, {
      pressure: turbineInletPressure,
      temperature: turbineInletTemperature,
      downstreamPressure: turbineOutletPressure,
      gasConstant: exhaustGas.gasConstant,
      ratioOfSpecificHeats: exhaustGas.ratioOfSpecificHeats(turbineInletTemperature),
    });
  }
  return {
    flow,
    turbineInletTemperature,
    turbineInletPressure,
    turbineOutletTemperature: turbine.outletTemperature,
    turbineOutletPressure,
    expansionRatio: turbine.expansionRatio,
    turbinePower: turbine.turbinePower,
    bearingLoss: turbine.mechanicalLoss,
    turbineAreaEach,
    heat: exhaustHeat({
      exhaustFlow: flow,
      exhaustTemperature: turbine.outletTemperature,
      airFlow: path.airFlow as MassFlow,
      ambientTemperature: build.surroundings.temperature,
      charge,
      exhaustGas,
    }),
  };
}
