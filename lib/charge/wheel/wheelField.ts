import type { Span } from "../../quantity/guard";
import type {
  Angle,
  Area,
  Fraction,
  Length,
  MassFlow,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  SpecificHeat,
  Velocity,
} from "../../quantity/kinds";
import type { MapReference } from "../correctedFlow";
import { logRatioBeyondChoke } from "../map/beyondChoke";
import type { CompressorField, CompressorPoint, FieldUncertainty } from "../map/compressorField";
import { inducerChokeFlow } from "./inducerChoke";
import { type LineShape, peakPolytropicEfficiency, shapeOffPeak } from "./stageEfficiency";

/** From slow to fast wheels. */
export type SlowToFast = readonly [slow: number, fast: number];

/** Constants that bend the speed lines of an estimated field. */
export interface WheelShape {
  /** tip Mach number half-way between slow and fast [–] */
  readonly blendMachNumber: number;
  /** width of that change [–] */
  readonly blendWidth: number;
  /** bend of the efficiency below its peak [–] */
  readonly lowBend: SlowToFast;
  /** share of the efficiency that choke takes [–] */
  readonly chokeLoss: SlowToFast;
  /** bend of the efficiency above its peak [–] */
  readonly highBend: SlowToFast;
  /** best flow over flow at choke [–] */
  readonly peakOverChoke: SlowToFast;
  /** tip Mach number half-way between slow and fast, and the width of that change, for surge [–] */
  readonly surgeBlend: readonly [machNumber: number, width: number];
  /** flow at surge over best flow [–] */
  readonly surgeOverPeak: SlowToFast;
  /** meridional velocity at the tip over tip speed, at the best flow [–] */
  readonly peakExitFlowCoefficient: number;
  /** disc friction: its work coefficient times the flow coefficient, over the work of the blades [–] */
  readonly discFriction: number;
}

interface WheelParts {
  readonly name: string;
  readonly reference: MapReference;
  readonly tipDiameter: Length;
  readonly throatDiameter: number;
  readonly throatArea: number;
  readonly slip: Fraction;
  readonly backsweep: Angle;
  readonly sizeDebit: Fraction;
  readonly shape: WheelShape;
  readonly uncertainty: FieldUncertainty;
}

const gasConstant = 287.05 as SpecificHeat;
const gamma = 1.4 as Ratio;

/** Share of the way from peak to choke at which a speed line goes on along its tangent: at choke itself it is vertical. */
const tangentFrom = 0.97;

/** Flow coefficient at the end of slow lines over that of choke at the blend Mach number [–]. Common practice, no source. */
const slowEnd = 1.15;

/** Tip Mach numbers that the correlations were made for [–]. */
const machSpan: Span = [0.3, 1.8];

/** A speed line of the estimate, in flow coefficients. */
interface Line extends LineShape {
  readonly mach: number;
  readonly tipSpeed: number;
  /** corrected flow per flow coefficient [kg/s] */
  readonly flowScale: number;
  readonly surge: number;
  readonly peakEfficiency: number;
}

/** Polytropic efficiency at a flow coefficient. */
function efficiencyAt(line: Line, flow: number): number {
  return line.peakEfficiency * shapeOffPeak(flow, line);
}

function logistic(x: number): number {
  return 1 / (1 + Math.exp(-x));
}

function blend(ends: SlowToFast, fast: number): number {
  return ends[0] + fast * (ends[1] - ends[0]);
}

/** The field behind wheelEstimate. */
export class WheelField implements CompressorField {
  readonly name: string;
  readonly reference: MapReference;
  readonly tipDiameter: Length;
  readonly speedSpan: Span;
  readonly uncertainty: FieldUncertainty;
  private readonly parts: WheelParts;
  private readonly sound: number;
  private readonly throatFlow: number;
  private readonly tangentOfBacksweep: number;
  /** flow coefficient at which slow speed lines end */
  private readonly slowEnd: number;
  #lastLine: { readonly speed: number; readonly line: Line } | undefined;

  constructor(parts: WheelParts) {
    this.parts = parts;
    this.name = parts.name;
    this.reference = parts.reference;
    this.tipDiameter = parts.tipDiameter;
    this.uncertainty = parts.uncertainty;
    this.sound = Math.sqrt(gamma * gasConstant * parts.reference.temperature);
    this.tangentOfBacksweep = Math.tan(parts.backsweep);
    const [slowest, fastest] = machSpan;
    const turn = Math.PI * parts.tipDiameter;
    this.speedSpan = [(slowest * this.sound) / turn, (fastest * this.sound) / turn];
    this.throatFlow = inducerChokeFlow({
      area: parts.throatArea as Area,
      bladeSpeed: 0 as Velocity,
      temperature: parts.reference.temperature,
      pressure: parts.reference.pressure,
      gasConstant,
      ratioOfSpecificHeats: gamma,
    });
    const blendSpeed = (parts.shape.blendMachNumber * this.sound) / turn;
    this.slowEnd = (slowEnd * this.choked(blendSpeed)) / this.flowScale(blendSpeed * turn);
  }

  at(correctedFlow: MassFlow, correctedSpeed: RotationalSpeed): CompressorPoint {
    const line = this.line(correctedSpeed);
    const flow = correctedFlow / line.flowScale;
    const last = line.peak + tangentFrom * (line.choke - line.peak);
    const within = Math.min(flow, last);
    const work = this.work(line, within);
    const heated = Math.log1p((gamma - 1) * work * line.mach ** 2);
    const exponent = gamma / (gamma - 1);
    let logRatio = exponent * efficiencyAt(line, within) * heated;
    if (flow > last) {
      const step = 1e-4 * (line.choke - line.peak);
      const before = last - step;
      const logBefore =
        exponent * efficiencyAt(line, before) * Math.log1p((gamma - 1) * this.work(line, before) * line.mach ** 2);
      const end = {
        flow: last * line.flowScale,
        logRatio,
        steepness: Math.max(0, (logBefore - logRatio) / (step * line.flowScale)),
        throatFlow: this.throatFlow,
      };
      logRatio = logRatioBeyondChoke(end, correctedFlow);
    }
    const [slowest, fastest] = this.speedSpan;
    return {
      pressureRatio: Math.exp(logRatio) as Ratio,
      correctedWork: (work * line.tipSpeed ** 2) as SpecificEnergy,
      efficiency: (Math.expm1(logRatio / exponent) / Math.expm1(heated)) as Fraction,
      extrapolated: flow < line.surge || flow > line.choke || correctedSpeed < slowest || correctedSpeed > fastest,
    };
  }

  surgeFlow(correctedSpeed: RotationalSpeed): MassFlow {
    const line = this.line(correctedSpeed);
    return (line.surge * line.flowScale) as MassFlow;
  }

  chokeFlow(correctedSpeed: RotationalSpeed): MassFlow {
    const line = this.line(correctedSpeed);
    return (line.choke * line.flowScale) as MassFlow;
  }

  /** inducerChokeFlow in terms of that of the standing throat, which the constructor asked for: γ = 1.4 makes its power a cube. */
  private choked(correctedSpeed: number): number {
    const mach = (Math.PI * this.parts.throatDiameter * correctedSpeed) / this.sound;
    const relative = 1 + 0.5 * (gamma - 1) * mach * mach;
    return this.throatFlow * relative * relative * relative;
  }

  private flowScale(tipSpeed: number): number {
    const { reference, tipDiameter } = this.parts;
    return (reference.pressure / (gasConstant * reference.temperature)) * tipSpeed * tipDiameter ** 2;
  }

  /** The line of the last speed is kept: a solver asks for it again and again. */
  private line(correctedSpeed: number): Line {
    if (this.#lastLine?.speed !== correctedSpeed) {
      this.#lastLine = { speed: correctedSpeed, line: this.drawn(correctedSpeed) };
    }
    return this.#lastLine.line;
  }

  private drawn(correctedSpeed: number): Line {
    const { shape, tipDiameter, sizeDebit } = this.parts;
    const tipSpeed = Math.PI * tipDiameter * correctedSpeed;
    const mach = tipSpeed / this.sound;
    const fast = logistic((mach - shape.blendMachNumber) / shape.blendWidth);
    const fastSurge = logistic((mach - shape.surgeBlend[0]) / shape.surgeBlend[1]);
    const flowScale = this.flowScale(tipSpeed);
    // Slow wheels run out of incidence before their throat chokes: the two ends are joined by a smooth least of both.
    const throat = this.choked(correctedSpeed) / flowScale;
    const square = (throat / this.slowEnd) ** 2;
    const choke = throat / Math.sqrt(Math.sqrt(Math.sqrt(1 + square * square * square * square)));
    const peak = blend(shape.peakOverChoke, fast) * choke;
    // The correlation is asked inside its span: at low speed the choke flow of a wide inducer leaves it.
    const asked = Math.min(Math.max(peak, 0.01), 0.13) as Ratio;
    return {
      mach,
      tipSpeed,
      flowScale,
      choke,
      peak,
      surge: blend(shape.surgeOverPeak, fastSurge) * peak,
      lowBend: blend(shape.lowBend, fast),
      chokeLoss: blend(shape.chokeLoss, fast),
      highBend: blend(shape.highBend, fast),
      peakEfficiency: peakPolytropicEfficiency(asked, Math.min(mach, 2.5) as Ratio) - sizeDebit,
    };
  }

  /** Work coefficient: Euler work falls with flow; disc friction counts as a power that does not depend on it. */
  private work(line: Line, flow: number): number {
    const { slip, shape } = this.parts;
    const blades = slip - shape.peakExitFlowCoefficient * (flow / line.peak) * this.tangentOfBacksweep;
    const atPeak = slip - shape.peakExitFlowCoefficient * this.tangentOfBacksweep;
    return Math.max(blades, 0.3 * atPeak) + (shape.discFriction * atPeak) / Math.max(flow, 0.1 * line.peak);
  }
}
