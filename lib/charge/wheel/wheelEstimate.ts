import { requireWithin } from "../../quantity/guard";
import type { Angle, Count, Fraction, Length, Ratio, RotationalSpeed, Velocity } from "../../quantity/kinds";
import { type MapReference, mapReferences } from "../correctedFlow";
import type { CompressorField, FieldUncertainty } from "../map/compressorField";
import { backsweepSpan, bladeCountSpan, stanitzSlip, wiesnerSlip } from "./slip";
import { WheelField, type WheelShape } from "./wheelField";

/** A compressor wheel as a caliper tells it, and what a maker may say of it. */
export interface CompressorWheel {
  readonly name: string;
  /** tip diameter of the inducer [m], 0.015 to 0.3 */
  readonly inducerDiameter: Length;
  /** tip diameter of the exducer [m], 0.02 to 0.5, above that of the inducer */
  readonly exducerDiameter: Length;
  /** hub diameter at the inducer over its tip diameter [–], 0.1 to 0.6; 0.3 if left out */
  readonly hubRatio?: Ratio;
  /** effective number of blades at the tip: full blades and half of the splitters [–], 4 to 60 */
  readonly blades: Count;
  /** backsweep of the blades at the tip, from radial [rad], 0 to 1.2 */
  readonly backsweep: Angle;
  /** slip, "wiesner", "stanitz" (radial blades) or a number [–], 0.6 to 1; wiesner if left out */
  readonly slip?: Fraction | "wiesner" | "stanitz";
  /** polytropic efficiency lost to size and clearance against a good industrial stage [–], 0 to 0.2; 0.07 if left out */
  readonly sizeDebit?: Fraction;
  /** effective throat over the annulus between hub and inducer tip [–], 0.4 to 0.9; 0.65 if left out */
  readonly throatShare?: Fraction;
  /** the constants of the estimate that rest on memory; rememberedWheelShape if left out */
  readonly shape?: WheelShape;
  /** inlet state to which the field is referred; 298 K and 100 kPa if left out */
  readonly reference?: MapReference;
}

/**
 * Constants of the estimate that were not read in their source: editable, low confidence. Surge lies at a sixth of the
 * flow at choke on slow lines and at six tenths on fast ones, so that over pressure ratio its line is nearly straight from
 * no flow at no rise: a slow wheel stalls without surging. Lines are bent below their peak so that they are flat at surge.
 * @source M. V. Casey, C. J. Robinson, J. Turbomachinery 135 (2013) for the forms (from memory); E. M. Greitzer, Surge and
 * Rotating Stall in Axial Flow Compressors, J. Eng. Power 98 (1976) for surge that goes with tip speed (from memory);
 * Turbomachinery Magazine 65 (2025) no. 6 for a surge line that is nearly straight at modest Mach numbers (an excerpt read);
 * the places of surge, low bends, throat share and tip flow are common practice, no source
 */
export const rememberedWheelShape: WheelShape = {
  blendMachNumber: 0.95,
  blendWidth: 0.12,
  lowBend: [3, 2],
  chokeLoss: [2, 0.3],
  highBend: [2, 3.5],
  peakOverChoke: [0.65, 0.9],
  surgeBlend: [1.25, 0.35],
  surgeOverPeak: [0.2, 0.85],
  peakExitFlowCoefficient: 0.28,
  discFriction: 0.003,
};

/** What the estimate claims: the paper's 2 per cent hold after calibration to a measured map, which nobody did here. */
const uncertainty: FieldUncertainty = {
  efficiency: 0.04 as Fraction,
  pressureRise: 0.08 as Fraction,
  surgeFlow: 0.25 as Fraction,
  basis:
    "Casey and Robinson state 2 % on efficiency and pressure ratio after calibration, and much less certainty for surge; without calibration twice that and more is taken here (our judgement, no source)",
};

/**
 * Field of a compressor from the sizes of its wheel [–, J/kg, kg/s]: Euler work with slip, backsweep and disc friction;
 * peak efficiency by flow coefficient and tip Mach number less a debit for size; the shape of each speed line between
 * surge and choke; choke of the inducer. γ = 1.4 and R = 287.05 J/(kg·K) at the reference state. An estimate for choosing
 * between wheels, not a map: above all, surge is a guess.
 *
 * @param wheel diameters, blades, and what is known beside them [m, –, rad]
 * @throws RangeError if an argument is outside its span, or the inducer is not smaller than the exducer
 * @source M. V. Casey, C. J. Robinson, A Method to Estimate the Performance Map of a Centrifugal Compressor Stage, J. Turbomachinery 135 (2013) (forms from memory)
 * @example wheelEstimate({ name: "56/76", inducerDiameter: 0.056, exducerDiameter: 0.076, blades: 10, backsweep: 0.6 }).at(0.4, 1800).pressureRatio // 2.39
 */
export function wheelEstimate(wheel: CompressorWheel): CompressorField {
  const { inducerDiameter, exducerDiameter, hubRatio = 0.3 as Ratio, blades, backsweep } = wheel;
  const { sizeDebit = 0.07 as Fraction, throatShare = 0.65 as Fraction, shape = rememberedWheelShape } = wheel;
  requireWithin("wheelEstimate: inducerDiameter", inducerDiameter, [0.015, 0.3], "m");
  requireWithin("wheelEstimate: exducerDiameter", exducerDiameter, [0.02, 0.5], "m");
  requireWithin("wheelEstimate: inducer over exducer diameter", inducerDiameter / exducerDiameter, [0.3, 0.95]);
  requireWithin("wheelEstimate: hubRatio", hubRatio, [0.1, 0.6]);
  requireWithin("wheelEstimate: blades", blades, bladeCountSpan);
  requireWithin("wheelEstimate: backsweep", backsweep, backsweepSpan, "rad");
  requireWithin("wheelEstimate: sizeDebit", sizeDebit, [0, 0.2]);
  requireWithin("wheelEstimate: throatShare", throatShare, [0.4, 0.9]);
  const slip = slipOf(wheel, Math.hypot(inducerDiameter, hubRatio * inducerDiameter) / Math.SQRT2 / exducerDiameter);
  requireWithin("wheelEstimate: slip", slip, [0.6, 1]);
  return new WheelField({
    name: wheel.name,
    reference: wheel.reference ?? mapReferences[0]!,
    tipDiameter: exducerDiameter,
    throatDiameter: Math.hypot(inducerDiameter, hubRatio * inducerDiameter) / Math.SQRT2,
    throatArea: throatShare * (Math.PI / 4) * inducerDiameter ** 2 * (1 - hubRatio ** 2),
    slip,
    backsweep,
    sizeDebit,
    shape,
    uncertainty,
  });
}

function slipOf({ slip = "wiesner", blades, backsweep }: CompressorWheel, radiusRatio: number): Fraction {
  if (slip === "stanitz") return stanitzSlip(blades);
  if (slip === "wiesner") return wiesnerSlip({ blades, backsweep, radiusRatio: radiusRatio as Ratio });
  return slip;
}

/**
 * Speed of a wheel's tip [m/s]: u = π D N.
 *
 * @param tipDiameter diameter at the tip [m]
 * @param speed wheel speed [rev/s]
 * @throws nothing
 * @source definition
 * @example tipSpeed(0.076, 1500) // 358.14
 */
export function tipSpeed(tipDiameter: Length, speed: RotationalSpeed): Velocity {
  return (Math.PI * tipDiameter * speed) as Velocity;
}
