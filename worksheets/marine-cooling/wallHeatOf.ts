import { closedCycle, type WallHeatCorrelation } from "../../lib/engine";
import type {
  Count,
  CrankAngle,
  Energy,
  Fraction,
  Length,
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
  readonly wallHeatCorrelation: WallHeatCorrelation;
}

/** Rod of usual length: 1.65 strokes. Common practice, no source; the heat hardly feels it. */
const rodPerStroke = 1.65;

/** Mean ratio of specific heats of burning gas, from memory of textbooks. */
const gamma = 1.33 as Ratio;

/** Share of the fuel's heat that the correlation gives to the walls between closing and opening of the valves. */
export function wallHeatShareOf(
  setup: CylinderSetup,
  engine: SolvedEngine,
  correlation: WallHeatCorrelation = setup.wallHeatCorrelation,
): Fraction {
  const fuelHeat = ((2 * engine.fuelPower) / (engine.speed * setup.cylinders)) as Energy; // a cycle takes two turns
  const { wallHeat } = closedCycle({
    bore: setup.bore,
    stroke: setup.stroke,
    rodLength: (rodPerStroke * setup.stroke) as Length,
    effectiveCompressionRatio: setup.effectiveCompressionRatio,
    engineSpeed: engine.speed,
    pressure: engine.manifoldPressure,
    temperature: engine.manifoldTemperature,
    fuelHeat,
    intakeCloses: (setup.intakeCloses - Math.PI) as CrankAngle,
    exhaustOpens: (Math.PI - setup.exhaustOpens) as CrankAngle,
    burnStarts: -setup.burnStarts as CrankAngle,
    burnDuration: setup.burnDuration,
    burnForm: 1,
    burnExponent: 6.908,
    wallTemperature: setup.wallTemperature,
    ratioOfSpecificHeats: gamma,
    correlation,
    step: (Math.PI / 45) as CrankAngle,
  });
  return (wallHeat / fuelHeat) as Fraction;
}
