import { type CompressorField, compressorMap, wheelEstimate } from "../../lib/charge";
import { structure } from "../../lib/graph";
import type { Angle, Count, Fraction, Length } from "../../lib/quantity";
import {
  bankABacksweep,
  bankABlades,
  bankAExducer,
  bankAInducer,
  bankASizeDebit,
  bankBBacksweep,
  bankBBlades,
  bankBCompressorPoints,
  bankBCompressorSource,
  bankBExducer,
  bankBInducer,
  bankBSizeDebit,
  compressorPoints,
  compressorSource,
} from "./inputs";
import { inRows, type PointRow, pointsText } from "./points";

const estimateSource =
  "M. V. Casey, C. J. Robinson, A Method to Estimate the Performance Map of a Centrifugal Compressor Stage, J. Turbomachinery 135 (2013) (forms from memory)";

const estimateDoubt =
  "From sizes alone it is a published estimate: ±4 points of efficiency, ±8 % of the pressure rise, and ±25 % of the flow at surge, which is much less certain than the rest: it is taken as nearly straight over the pressure ratio, as at modest Mach numbers (Turbomachinery Magazine 65, 2025, no. 6), from no flow at no rise (common practice, no source).";

const fieldSource = `${estimateSource}; through measured points by least squares along each speed line`;

const fieldAssumptions = [
  estimateDoubt,
  "Through measured points it is as good as they are; the surge line runs through the leftmost of each speed line.",
  "Beyond its slowest and fastest speed, and outside surge and choke, the field is drawn on and marked as such; below the slowest speed surge comes to no flow at no rise along a straight line.",
];

export const bankACompressor = structure("bankACompressor", {
  label: "First bank, what its compressor does",
  from: {
    source: compressorSource,
    points: compressorPoints,
    inducer: bankAInducer,
    exducer: bankAExducer,
    blades: bankABlades,
    backsweep: bankABacksweep,
    sizeDebit: bankASizeDebit,
  },
  compute: ({ source, points, ...wheel }) => fieldOf("first bank", wheel, source, points),
  formula: "\\left(\\pi,\\ \\eta\\right) = f\\left(\\dot m_{cor},\\ n_{cor}\\right)",
  source: fieldSource,
  assumptions: fieldAssumptions,
});

export const bankBCompressor = structure("bankBCompressor", {
  label: "Second bank, what its compressor does",
  from: {
    source: bankBCompressorSource,
    points: bankBCompressorPoints,
    inducer: bankBInducer,
    exducer: bankBExducer,
    blades: bankBBlades,
    backsweep: bankBBacksweep,
    sizeDebit: bankBSizeDebit,
  },
  compute: ({ source, points, ...wheel }) => fieldOf("second bank", wheel, source, points),
  formula: "\\left(\\pi,\\ \\eta\\right) = f\\left(\\dot m_{cor},\\ n_{cor}\\right)",
  source: fieldSource,
  assumptions: fieldAssumptions,
});

interface WheelSizes {
  readonly inducer: Length;
  readonly exducer: Length;
  readonly blades: Count;
  readonly backsweep: Angle;
  readonly sizeDebit: Fraction;
}

function fieldOf(
  name: string,
  wheel: WheelSizes,
  source: "wheel" | "points",
  points: readonly PointRow[],
): CompressorField {
  if (source === "wheel") return estimated(name, wheel);
  try {
    return compressorMap(pointsText(points, wheel.exducer)).field;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new RangeError(`measured points of the ${name}: ${inRows(error.message)}`);
  }
}

function estimated(name: string, { inducer, exducer, ...blades }: WheelSizes): CompressorField {
  return wheelEstimate({ name, inducerDiameter: inducer, exducerDiameter: exducer, ...blades });
}

