import { dryAir } from "../../fluid";
import type { Span } from "../../quantity/guard";
import type {
  Fraction,
  Length,
  MassFlow,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
} from "../../quantity/kinds";
import type { MapReference } from "../correctedFlow";
import { logRatioBeyondChoke } from "./beyondChoke";
import type { CompressorField, CompressorPoint, FieldUncertainty } from "./compressorField";
import type { LinePoint, SpeedLine } from "./fitSpeedLine";
import { curveAt, type MonotoneCurve, monotoneCurve } from "./monotoneCurve";
import type { MeasuredPoint } from "./parseCompressorPoints";

/** (γ − 1)/γ that turns head into pressure ratio and back; any fixed value would do. */
const exponent = 2 / 7;

/** Work is taken as constant this far left of surge, where nothing was measured. */
const leftmostWork = -0.3;

const drawn = ["left", "right", "top", "drop", "bend", "work0", "work1", "work2"] as const;

/** A measured point in terms in which all speeds look alike. */
export function linePoint(point: MeasuredPoint, reference: MapReference): LinePoint {
  const { flow, pressureRatio, efficiency, speed } = point;
  const ideal = dryAir.enthalpy(
    dryAir.isentropicTemperature(reference.temperature as Temperature, pressureRatio as Ratio),
  );
  return {
    flow: flow / speed,
    head: Math.expm1(exponent * Math.log(pressureRatio)) / speed ** 2,
    work: (ideal - dryAir.enthalpy(reference.temperature)) / efficiency / speed ** 2,
  };
}

interface MapParts {
  readonly name: string;
  readonly reference: MapReference;
  readonly tipDiameter: Length | undefined;
  readonly uncertainty: FieldUncertainty;
}

/** The field through fitted speed lines; what bends them changes with speed along monotone curves. */
export class MapField implements CompressorField {
  readonly name: string;
  readonly reference: MapReference;
  readonly tipDiameter: Length | undefined;
  readonly speedSpan: Span;
  readonly uncertainty: FieldUncertainty;
  private readonly curves: Readonly<Record<(typeof drawn)[number], MonotoneCurve>>;
  private readonly throatFlow: number;
  #lastLine: SpeedLine | undefined;

  constructor(parts: MapParts, lines: readonly SpeedLine[]) {
    this.name = parts.name;
    this.reference = parts.reference;
    this.tipDiameter = parts.tipDiameter;
    this.uncertainty = parts.uncertainty;
    const speeds = lines.map(({ speed }) => speed);
    const curve = (value: (line: SpeedLine) => number) => monotoneCurve(speeds, lines.map(value));
    this.curves = {
      left: curve(({ left }) => left),
      right: curve(({ right }) => right),
      top: curve(({ top }) => top),
      drop: curve(({ drop }) => drop),
      bend: curve(({ bend }) => bend),
      work0: curve(({ work }) => work[0]),
      work1: curve(({ work }) => work[1]),
      work2: curve(({ work }) => work[2]),
    };
    this.speedSpan = [speeds[0]!, speeds.at(-1)!];
    const fastest = lines.at(-1)!;
    // a standing throat chokes at about three quarters of what a fast wheel swallows
    this.throatFlow = 0.75 * fastest.right * fastest.speed;
  }

  at(correctedFlow: MassFlow, correctedSpeed: RotationalSpeed): CompressorPoint {
    const line = this.line(correctedSpeed);
    const square = correctedSpeed * correctedSpeed;
    const t = (correctedFlow / correctedSpeed - line.left) / (line.right - line.left);
    const within = Math.min(Math.max(t, 0), 1);
    let logRatio = Math.log1p((line.top - line.drop * within ** line.bend) * square) / exponent;
    if (t > 1) {
      const flow = line.right * correctedSpeed;
      const slope = (line.drop * line.bend * square) / ((line.right - line.left) * correctedSpeed);
      const steepness = slope / Math.exp(exponent * logRatio) / exponent;
      logRatio = logRatioBeyondChoke({ flow, logRatio, steepness, throatFlow: this.throatFlow }, correctedFlow);
    }
    const s = Math.min(Math.max(t, leftmostWork), 1);
    const correctedWork = (line.work[0] + s * (line.work[1] + s * line.work[2])) * square;
    const { temperature } = this.reference;
    const ideal = dryAir.specificHeat(temperature) * temperature * Math.expm1(exponent * logRatio);
    const [slowest, fastest] = this.speedSpan;
    return {
      pressureRatio: Math.exp(logRatio) as Ratio,
      correctedWork: correctedWork as SpecificEnergy,
      efficiency: (ideal / correctedWork) as Fraction,
      extrapolated: t < 0 || t > 1 || correctedSpeed < slowest || correctedSpeed > fastest,
    };
  }

  /** Below the slowest line surge falls with the rise of pressure, as the square of the speed: a slow wheel stalls without surging. */
  surgeFlow(correctedSpeed: RotationalSpeed): MassFlow {
    const slower = Math.min(1, correctedSpeed / this.speedSpan[0]);
    return (this.line(correctedSpeed).left * correctedSpeed * slower) as MassFlow;
  }

  chokeFlow(correctedSpeed: RotationalSpeed): MassFlow {
    return (this.line(correctedSpeed).right * correctedSpeed) as MassFlow;
  }

  /** The line of the last speed is kept: a solver asks for it again and again. */
  private line(speed: number): SpeedLine {
    if (this.#lastLine?.speed !== speed) {
      const { curves } = this;
      this.#lastLine = {
        speed,
        left: curveAt(curves.left, speed),
        right: curveAt(curves.right, speed),
        top: curveAt(curves.top, speed),
        drop: curveAt(curves.drop, speed),
        bend: curveAt(curves.bend, speed),
        work: [curveAt(curves.work0, speed), curveAt(curves.work1, speed), curveAt(curves.work2, speed)],
      };
    }
    return this.#lastLine;
  }
}
