import type { Fraction, MassFlow, RotationalSpeed } from "../../quantity/kinds";
import type { CompressorField } from "./compressorField";
import { type FitError, fitErrors } from "./fitErrors";
import { fitSpeedLine, type LinePoint, type SpeedGroup, type SpeedLine, speedGroups } from "./fitSpeedLine";
import { linePoint, MapField } from "./mapField";
import { type CompressorPoints, parseCompressorPoints } from "./parseCompressorPoints";

/** A field through measured points, and how well it meets them. */
export interface CompressorMap {
  readonly field: CompressorField;
  /** the points of the file, as read */
  readonly points: CompressorPoints;
  /** corrected speeds of the fitted lines [rev/s] */
  readonly lineSpeeds: readonly RotationalSpeed[];
  /** misses at points that were left out of the fit one by one, the ends of the lines apart */
  readonly leftOut: FitError;
  /** the same at the ends of the lines, where leaving out means to extrapolate */
  readonly leftOutAtEnds: FitError;
  /** misses of the fit at the points that made it */
  readonly fitted: FitError;
}

/** Fewest points that make a speed line, and lines that make a map. */
const fewestPoints = 3;
const fewestLines = 2;

/**
 * Field of a compressor through measured points [–, J/kg, kg/s]. Each speed line is fitted by least squares:
 * head = top − drop t^bend from its leftmost (surge) to its rightmost (choke) point, which never rises with flow; and
 * work as a parabola in t, which makes the efficiency their quotient. Between lines the coefficients follow monotone
 * cubics of speed, in terms in which similar flows agree; beyond the slowest and fastest line similarity is taken,
 * but for surge, which below the slowest line comes to no flow at no rise along a straight line over the rise.
 * The surge line runs through the leftmost points, so it is no better than the courage of whoever measured.
 *
 * @param text the file, as parseCompressorPoints reads it
 * @throws RangeError with the numbers of all lines that cannot be used, or if points do not make two lines of three, or if lines cross
 * @source least squares; Fritsch and Carlson (1980) between the lines; the shape of a line is our own choice
 * @example compressorMap(inventedCompressorPoints).field.at(0.3, 1600).pressureRatio // 2.267
 */
export function compressorMap(text: string): CompressorMap {
  const points = parseCompressorPoints(text);
  const { refused, reference, name, tipDiameter } = points;
  if (refused.length > 0 || !reference) {
    const told = refused.map(({ line, message }) => (line > 0 ? `line ${line}: ${message}` : message));
    throw new RangeError(`compressorMap: ${told.join("; ")}`);
  }
  const groups = speedGroups(points.points);
  requireLines(groups);
  const measured = groups.map((group) => group.points.map((point) => linePoint(point, reference)));
  const lines = groups.map(({ speed }, i) => fitSpeedLine(speed, measured[i]!));
  requireFalling(groups, lines);
  const fieldOf = (drawn: readonly SpeedLine[], uncertainty = unknown) =>
    new MapField({ name, reference, tipDiameter, uncertainty }, drawn);
  const errors = fitErrors(
    groups,
    (i: number, left: readonly LinePoint[]) =>
      fieldOf(lines.map((line, j) => (i === j ? fitSpeedLine(line.speed, left) : line))),
    measured,
    fieldOf(lines),
  );
  const field = fieldOf(lines, {
    efficiency: Math.max(errors.leftOut.efficiency, 0.005) as Fraction,
    pressureRise: Math.max(errors.leftOut.pressureRise, 0.005) as Fraction,
    surgeFlow: 0.05 as Fraction,
    basis: "points left out of the fit one by one; surge flow: our judgement, no source",
  });
  requireUncrossed(field, lines);
  return { field, points, lineSpeeds: lines.map(({ speed }) => speed as RotationalSpeed), ...errors };
}

const unknown = { efficiency: 0 as Fraction, pressureRise: 0 as Fraction, surgeFlow: 0 as Fraction, basis: "" };

function requireLines(groups: readonly SpeedGroup[]): void {
  for (const { points } of groups) {
    if (points.length < fewestPoints) {
      const numbers = points.map(({ line }) => line).join(" and ");
      throw new RangeError(
        `compressorMap: line ${numbers}: ${points.length === 1 ? "one point" : "two points"} at ${(60 * points[0]!.speed).toFixed(0)} rev/min; a speed line needs at least ${fewestPoints}`,
      );
    }
    points.slice(1).forEach((point, i) => {
      if (point.flow === points[i]!.flow) {
        throw new RangeError(`compressorMap: line ${point.line}: same flow and speed as line ${points[i]!.line}`);
      }
    });
  }
  if (groups.length < fewestLines) {
    throw new RangeError(`compressorMap: there are ${groups.length} speed lines; a map needs at least ${fewestLines}`);
  }
}

function requireFalling(groups: readonly SpeedGroup[], lines: readonly SpeedLine[]): void {
  lines.forEach(({ top, drop, work }, i) => {
    const speed = `${(60 * groups[i]!.speed).toFixed(0)} rev/min`;
    if (!(top - drop > -0.02 * top))
      throw new RangeError(`compressorMap: the line of ${speed} falls below a pressure ratio of 1`);
    if (!(work[0] > 0 && work[0] + work[1] + work[2] > 0)) {
      throw new RangeError(
        `compressorMap: the line of ${speed} would work backwards; its efficiencies do not fit its pressure ratios`,
      );
    }
  });
}

/** Passes when a faster wheel gives more pressure at every flow that two lines share. */
function requireUncrossed(field: CompressorField, lines: readonly SpeedLine[]): void {
  lines.slice(1).forEach((fast, i) => {
    const slow = lines[i]!;
    const from = Math.max(slow.left * slow.speed, fast.left * fast.speed);
    const to = slow.right * slow.speed;
    for (let share = 0; share <= 1 && to > from; share += 0.1) {
      const flow = (from + share * (to - from)) as MassFlow;
      const ratio = (speed: number) => field.at(flow, speed as RotationalSpeed).pressureRatio;
      if (ratio(fast.speed) > ratio(slow.speed)) continue;
      throw new RangeError(
        `compressorMap: the lines of ${(60 * slow.speed).toFixed(0)} and ${(60 * fast.speed).toFixed(0)} rev/min cross at ${flow.toFixed(3)} kg/s`,
      );
    }
  });
}
