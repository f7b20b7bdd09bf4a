import {
  closedCycle,
  exhaustPortHeat,
  gasExchangeHeat,
  temperatureAtClosing,
  type WallHeatCorrelation,
} from "../../lib/engine";
import { burntGas, type DieselFuel } from "../../lib/fluid";
import type {
  Count,
  CrankAngle,
  Energy,
  Fraction,
  Length,
  Mass,
  MassFlow,
  Power,
  Ratio,
  Temperature,
} from "../../lib/quantity";
import type { SolvedEngine } from "./solvedEngine";

/** What the correlation asks of the engine beside the solved point. */
export interface CylinderSetup {
  readonly bore: Length;
  readonly stroke: Length;
  readonly cylinders: Count;
  readonly effectiveCompressionRatio: Ratio;
  readonly intakeCloses: CrankAngle;
  readonly exhaustOpens: CrankAngle;
  readonly burnStarts: CrankAngle;
  readonly burnDuration: CrankAngle;
  readonly wallTemperature: Temperature;
  readonly crownSurface: Ratio;
  readonly portBore: Length;
  readonly portLength: Length;
  readonly portTemperature: Temperature;
  readonly wallHeatCorrelation: WallHeatCorrelation;
  readonly fuelInUse: DieselFuel;
}

/** Heat into the walls of all cylinders, by the part of the cycle [W], and all of it over the fuel's power. */
export interface WallHeat {
  readonly valvesClosed: Power;
  readonly valvesOpen: Power;
  readonly ports: Power;
  readonly share: Fraction;
}

/** Rod of usual length: 1.65 strokes. Common practice, no source; the heat hardly feels it. */
const rodPerStroke = 1.65;

/** Mean ratio of specific heats of burning gas, from memory of textbooks. */
const gamma = 1.33 as Ratio;

/** Heat that the correlations give to the walls of cylinders and exhaust ports. */
export function wallHeatOf(setup: CylinderSetup, engine: SolvedEngine): WallHeat {
  const cyclesPerSecond = (engine.speed * setup.cylinders) / 2; // a cycle takes two turns
  const fuelHeat = (engine.fuelPower / cyclesPerSecond) as Energy;
  const charge = (engine.chargeFlow / cyclesPerSecond) as Mass;
  const cylinder = {
    bore: setup.bore,
    stroke: setup.stroke,
    rodLength: (rodPerStroke * setup.stroke) as Length,
    effectiveCompressionRatio: setup.effectiveCompressionRatio,
    intakeCloses: (setup.intakeCloses - Math.PI) as CrankAngle,
    crownSurface: setup.crownSurface,
  };
  const common = {
    ...cylinder,
    engineSpeed: engine.speed,
    exhaustOpens: (Math.PI - setup.exhaustOpens) as CrankAngle,
    wallTemperature: setup.wallTemperature,
    ratioOfSpecificHeats: gamma,
    correlation: setup.wallHeatCorrelation,
  };
  const { manifoldPressure: pressure } = engine;
  const closed = closedCycle({
    ...common,
    pressure,
    temperature: temperatureAtClosing(cylinder, pressure, charge),
    fuelHeat,
    burnStarts: -setup.burnStarts as CrankAngle,
    burnDuration: setup.burnDuration,
    burnForm: 1,
    burnExponent: 6.908,
    step: (Math.PI / 45) as CrankAngle,
  });
  const open = gasExchangeHeat({
    ...common,
    endPressure: closed.endPressure,
    endTemperature: closed.endTemperature,
    exhaustPressure: engine.backPressure,
    chargePressure: pressure,
    chargeTemperature: engine.manifoldTemperature,
  });
  const { excessAirRatio, humidityRatio } = engine;
  const port = exhaustPortHeat({
    flow: (engine.exhaustFlow / setup.cylinders) as MassFlow,
    specificHeat: burntGas({ excessAirRatio, humidityRatio, fuel: setup.fuelInUse }).specificHeat(
      engine.exhaustTemperature,
    ),
    outletTemperature: engine.exhaustTemperature,
    bore: setup.portBore,
    length: setup.portLength,
    wallTemperature: setup.portTemperature,
  });
  const valvesClosed = (closed.wallHeat * cyclesPerSecond) as Power;
  const valvesOpen = (open * cyclesPerSecond) as Power;
  const ports = (port * setup.cylinders) as Power;
  return { valvesClosed, valvesOpen, ports, share: ((valvesClosed + valvesOpen + ports) / engine.fuelPower) as Fraction };
}
