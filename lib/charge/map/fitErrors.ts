import type { Fraction, MassFlow, Ratio, RotationalSpeed } from "../../quantity/kinds";
import type { CompressorField } from "./compressorField";
import type { LinePoint, SpeedGroup } from "./fitSpeedLine";

/** Root of the mean square of a fit's misses at measured points. */
export interface FitError {
  /** of the pressure ratio less 1, relative [–] */
  readonly pressureRise: Ratio;
  /** of the efficiency [–] */
  readonly efficiency: Fraction;
  /** points that count */
  readonly points: number;
}

/** Misses of a fit at its own points, and of fits that each did without the point they are held against. */
export interface FitErrors {
  readonly fitted: FitError;
  readonly leftOut: FitError;
  readonly leftOutAtEnds: FitError;
}

type Miss = readonly [pressureRise: number, efficiency: number];

/** Points of lines that would be left with fewer than three are not left out. */
export function fitErrors(
  groups: readonly SpeedGroup[],
  refit: (lineIndex: number, left: readonly LinePoint[]) => CompressorField,
  measured: readonly (readonly LinePoint[])[],
  whole: CompressorField,
): FitErrors {
  const fitted: Miss[] = [];
  const inside: Miss[] = [];
  const ends: Miss[] = [];
  groups.forEach(({ points }, i) => {
    points.forEach((point, j) => {
      const miss = (field: CompressorField): Miss => {
        const found = field.at(point.flow as MassFlow, point.speed as RotationalSpeed);
        return [
          (found.pressureRatio - point.pressureRatio) / (point.pressureRatio - 1),
          found.efficiency - point.efficiency,
        ];
      };
      fitted.push(miss(whole));
      if (points.length < 4) return;
      const without = refit(
        i,
        measured[i]!.filter((_, k) => k !== j),
      );
      (j === 0 || j === points.length - 1 ? ends : inside).push(miss(without));
    });
  });
  return { fitted: errorOf(fitted), leftOut: errorOf(inside), leftOutAtEnds: errorOf(ends) };
}

function errorOf(misses: readonly Miss[]): FitError {
  const root = (k: 0 | 1) =>
    Math.sqrt(misses.reduce((sum, miss) => sum + miss[k] ** 2, 0) / Math.max(1, misses.length));
  return { pressureRise: root(0) as Ratio, efficiency: root(1) as Fraction, points: misses.length };
}
