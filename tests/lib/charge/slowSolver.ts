import {
  type BlowerElement,
  blowerShaftPower,
  blowerVolumetricEfficiency,
  blowerWorkPerTurn,
  type CompressorBankElement,
  chargeCoolerOutlet,
  coolingEffectiveness,
  type OperatingBuild,
  pressureAfterTurbine,
  sprayOutlet,
  turbineExpansionRatio,
  turbineWork,
  wastegateFraction,
} from "../../../lib/charge";
import {
  exhaustTemperature,
  frictionMeanEffectivePressure,
  frictionPower,
  meanPistonSpeed,
  peakCylinderPressure,
  pumpingPower,
  restrictionLoss,
} from "../../../lib/engine";
import { burntGas, type Gas, moistAir, stoichiometricAirFuelRatio } from "../../../lib/fluid";

/** What the slow solver settles at. */
export interface Settled {
  readonly airFlow: number;
  readonly wheelSpeeds: readonly number[];
  readonly blowerRatios: readonly number[];
  readonly brakePower: number;
  readonly exhaustPressure: number;
  readonly steps: number;
}

/**
 * An operating point at a given fuel flow by fixed-point steps as small as it takes: more air where the engine draws more
 * than flows, more pressure behind a blower that delivers more, faster wheels where the turbine has power to spare.
 * It shares the elements' functions with operatingPoint, but neither its march, its equations, its exhaust gas nor its method.
 */
export function settled(
  build: OperatingBuild,
  engineSpeed: number,
  fuelFlow: number,
  open: readonly boolean[],
): Settled | undefined {
  for (const [pace, start] of [
    [1, 0.4],
    [0.25, 0.4],
    [0.25, 0.65],
    [0.06, 0.4],
  ] as const) {
    const found = paced(build, engineSpeed, fuelFlow, open, pace, start);
    if (found) return found;
  }
  return undefined;
}

function paced(
  build: OperatingBuild,
  engineSpeed: number,
  fuelFlow: number,
  open: readonly boolean[],
  pace: number,
  start: number,
): Settled | undefined {
  const banks = build.path.filter((element) => element.kind === "compressorBank");
  // enough air to begin with that the fuel burns
  const least = 1.3 * stoichiometricAirFuelRatio(build.fuel) * fuelFlow;
  let logFlow = Math.log(Math.max((build.engine.displacement * engineSpeed * 1.3) / 2, least));
  const logSpeeds = banks.map(({ compressor }) => Math.log(start * compressor.speedSpan[1]));
  const logRatios = open.map((isOpen) => (isOpen ? 0 : 0.2));
  let pumping = 0;
  let heats: Readonly<Record<string, number>> = {};
  for (let steps = 0; steps < 2500 / pace; steps++) {
    const trial = once(
      build,
      engineSpeed,
      fuelFlow,
      Math.exp(logFlow),
      logSpeeds.map(Math.exp),
      logRatios.map(Math.exp),
      open,
      pumping,
      heats,
    );
    if (!trial) return undefined;
    const { engine, blowers, shafts, brakePower, exhaustPressure } = trial;
    const cooled = Object.entries(trial.heats).map(([name, heat]) => (heat - (heats[name] ?? 0)) / 1e5);
    const errors = [engine, ...blowers, ...shafts, (trial.pumping - pumping) / 1e5, ...cooled].map(Math.abs);
    if (Math.max(...errors) < 1e-9) {
      return {
        airFlow: Math.exp(logFlow),
        wheelSpeeds: logSpeeds.map(Math.exp),
        blowerRatios: logRatios.map(Math.exp),
        brakePower,
        exhaustPressure,
        steps,
      };
    }
    const small = (x: number) => Math.min(0.02 * pace, Math.max(-0.02 * pace, x));
    logFlow += small(0.25 * pace * engine);
    for (let i = 0; i < logRatios.length; i++) logRatios[i]! += small(0.25 * pace * (blowers[i] ?? 0));
    for (let i = 0; i < logSpeeds.length; i++) logSpeeds[i]! += small(0.1 * pace * shafts[i]!);
    heats = trial.heats;
    pumping += 0.4 * Math.sqrt(pace) * (trial.pumping - pumping);
  }
  return undefined;
}

function once(
  build: OperatingBuild,
  engineSpeed: number,
  fuelFlow: number,
  airFlow: number,
  speeds: readonly number[],
  ratios: readonly number[],
  open: readonly boolean[],
  pumpingBefore: number,
  heatsBefore: Readonly<Record<string, number>>,
) {
  const { surroundings, engine, fuel } = build;
  let p: number = surroundings.pressure;
  let t: number = surroundings.temperature;
  let w: number = surroundings.humidityRatio;
  let gas: Gas = moistAir(w as never);
  let m = airFlow;
  let shaft = 0;
  const blowers: number[] = [];
  const powers: number[] = [];
  const afterBank: number[] = [];
  const heats: Record<string, number> = {};
  try {
    for (const element of build.path) {
      switch (element.kind) {
        case "restriction":
          p -= restrictionLoss(element.restriction, m as never, gas.density(t as never, p as never));
          break;
        case "compressorBank": {
          const { reference } = element.compressor;
          const speed = speeds[powers.length]!;
          const corrected = ((m / element.count) * Math.sqrt(t / reference.temperature) * reference.pressure) / p;
          const point = element.compressor.at(
            corrected as never,
            (speed / Math.sqrt(t / reference.temperature)) as never,
          );
          const work = (point.correctedWork * t) / reference.temperature;
          t = gas.temperatureAtEnthalpy((gas.enthalpy(t as never) + work) as never);
          p *= point.pressureRatio;
          powers.push(work * m);
          afterBank.push(p);
          break;
        }
        case "cooler": {
          const { cooling, restriction, warmedBy } = element;
          const warming = warmedBy ? warmedBy.perWatt * (heatsBefore[warmedBy.cooler] ?? 0) : 0;
          const sinkTemperature = (cooling.sinkTemperature + warming) as never;
          const effectiveness =
            cooling.kind === "fixed"
              ? cooling.effectiveness
              : coolingEffectiveness(cooling, m as never, m * gas.specificHeat(t as never));
          const outlet = chargeCoolerOutlet(
            { effectiveness: effectiveness as never, sinkTemperature, restriction },
            { massFlow: m as never, temperature: t as never, pressure: p as never, gas },
          );
          heats[element.name] = outlet.heat;
          t = outlet.temperature;
          p = outlet.pressure;
          break;
        }
        case "spray": {
          const dryAirFlow = m / (1 + w);
          const outlet = sprayOutlet(element.spray, {
            dryAirFlow: dryAirFlow as never,
            temperature: t as never,
            pressure: p as never,
            humidityRatio: w as never,
          });
          t = outlet.temperature;
          w = outlet.humidityRatio;
          gas = moistAir(w as never);
          m = dryAirFlow * (1 + w);
          break;
        }
        case "blower": {
          const i = blowers.length;
          const did = open[i]
            ? idle(element, engineSpeed)
            : driven(element, engineSpeed, { p, t, m, gas, ratio: ratios[i]! });
          blowers.push(did.mismatch);
          shaft += did.shaftPower;
          t = did.t ?? t;
          if (!open[i]) p *= ratios[i]!;
          break;
        }
      }
    }
    const drawn =
      (engine.volumetricEfficiency * gas.density(t as never, p as never) * engine.displacement * engineSpeed) / 2;
    const peakPressure = peakCylinderPressure({ ...engine, manifoldPressure: p as never });
    const friction = frictionPower({
      frictionMeanEffectivePressure: frictionMeanEffectivePressure({
        peakPressure,
        meanPistonSpeed: meanPistonSpeed(engine.stroke, engineSpeed as never),
      }),
      displacement: engine.displacement,
      engineSpeed: engineSpeed as never,
    });
    const fuelPower = fuelFlow * fuel.lowerHeatingValue;
    const given = engine.grossIndicatedEfficiency * fuelPower;
    const lambda = airFlow / (1 + surroundings.humidityRatio) / stoichiometricAirFuelRatio(fuel) / fuelFlow;
    const exhaust = burntGas({ excessAirRatio: lambda as never, humidityRatio: w as never, fuel });
    const flow = m + fuelFlow;
    let hot: number = exhaustTemperature({
      fuelFlow: fuelFlow as never,
      lowerHeatingValue: fuel.lowerHeatingValue,
      airFlow: m as never,
      manifoldTemperature: t as never,
      netGasPower: (given - pumpingBefore) as never,
      heatToWalls: (engine.heatToWallsShare * fuelPower) as never,
      charge: gas,
      exhaustGas: exhaust,
    });
    const banks = build.path.filter((element) => element.kind === "compressorBank");
    const temperatures = [hot];
    for (let i = banks.length - 1; i >= 0; i--) {
      hot = exhaust.temperatureAtEnthalpy(
        (exhaust.enthalpy(hot as never) - powers[i]! / banks[i]!.mechanicalEfficiency / flow) as never,
      );
      temperatures.unshift(hot);
    }
    let back: number = pressureAfterTurbine({
      ambientPressure: surroundings.pressure,
      exhaustFlow: flow as never,
      temperature: hot as never,
      ratedFlow: build.exhaustPipe.massFlow,
      ratedDensity: build.exhaustPipe.density,
      ratedLoss: build.exhaustPipe.pressureLoss,
      gas: exhaust,
    });
    const shafts = banks.map((bank: CompressorBankElement, i) => {
      const before = temperatures[i + 1]! as never;
      const through = flow * (1 - wastegateFraction(bank.wastegate, afterBank[i]! as never));
      const expansionRatio = turbineExpansionRatio(bank.turbine, {
        massFlow: through / bank.count,
        temperature: before,
        downstreamPressure: back as never,
        gasConstant: exhaust.gasConstant,
        ratioOfSpecificHeats: exhaust.ratioOfSpecificHeats(before),
      });
      back *= expansionRatio;
      const { specificWork } = turbineWork(bank.turbine, {
        speed: speeds[i]! as never,
        temperature: before,
        expansionRatio,
        gas: exhaust,
      });
      return (through * specificWork * bank.mechanicalEfficiency) / powers[i]! - 1;
    });
    const pumping = pumpingPower({
      exhaustPressure: back as never,
      manifoldPressure: p as never,
      displacement: engine.displacement,
      engineSpeed: engineSpeed as never,
      gainCounts: build.pumpingGainCounts,
    });
    const brakePower = given - friction - build.accessoryPower - shaft - build.fuelPumpWork * fuelFlow - pumping;
    return { engine: Math.log(drawn / m), blowers, shafts, pumping, brakePower, exhaustPressure: back, heats };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function idle({ blower }: BlowerElement, engineSpeed: number) {
  const shaftPower = blowerShaftPower(blower, (blower.driveRatio * engineSpeed) as never, 0 as never);
  return { mismatch: 0, shaftPower: shaftPower as number, t: undefined };
}

function driven(
  { blower, bypassShare = 0 as never }: BlowerElement,
  engineSpeed: number,
  { p, t, m, gas, ratio }: { p: number; t: number; m: number; gas: Gas; ratio: number },
) {
  const blowerSpeed = (blower.driveRatio * engineSpeed) as never;
  const { displacementPerTurn } = blower;
  const ratioOfSpecificHeats = gas.ratioOfSpecificHeats(t as never);
  const work =
    blowerWorkPerTurn({
      ...blower,
      inletPressure: p as never,
      dischargePressure: (p * ratio) as never,
      ratioOfSpecificHeats,
    }) * blowerSpeed;
  const before = gas.enthalpy(t as never);
  const after = before + work / m;
  const inletTemperature = gas.temperatureAtEnthalpy(((1 - bypassShare) * before + bypassShare * after) as never);
  const filling = blowerVolumetricEfficiency(blower.filling, {
    pressureRatio: ratio as never,
    blowerSpeed,
    displacementPerTurn,
    inletTemperature,
    gasConstant: gas.gasConstant,
    ratioOfSpecificHeats: gas.ratioOfSpecificHeats(inletTemperature),
  });
  const delivered =
    (1 - bypassShare) * filling * gas.density(inletTemperature, p as never) * displacementPerTurn * blowerSpeed;
  return {
    mismatch: Math.log(delivered / m),
    shaftPower: blowerShaftPower(blower, blowerSpeed, work as never) as number,
    t: gas.temperatureAtEnthalpy(after as never) as number,
  };
}
