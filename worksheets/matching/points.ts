import {
  type CompressorField,
  correctedFlow,
  correctedSpeed,
  type MapReference,
  mapReferences,
  parseCompressorPoints,
} from "../../lib/charge";
import type { Fraction, MassFlow, Ratio, RotationalSpeed } from "../../lib/quantity";

/** A measured point of a compressor as the table on the sheet holds it. */
export interface PointRow {
  readonly flow: MassFlow;
  readonly pressureRatio: Ratio;
  readonly efficiency: Fraction;
  readonly speed: RotationalSpeed;
}

/** The state to which the rows of the table are referred: 298 K and 100 kPa. */
export const tableReference: MapReference = mapReferences[0]!;

/**
 * Rows of measured points from the text of a file, brought from the file's reference state to 298 K and 100 kPa.
 *
 * @param text a file as parseCompressorPoints reads it
 * @throws RangeError naming every line that cannot be used
 */
export function pointRows(text: string): readonly PointRow[] {
  const { points, reference, refused } = parseCompressorPoints(text);
  if (refused.length > 0 || !reference) {
    const told = refused.map(({ line, message }) => (line > 0 ? `line ${line}: ${message}` : message));
    throw new RangeError(told.join("; "));
  }
  if (points.length === 0) throw new RangeError("there are no points under the header");
  // what passes at the file's reference state, as the table's shows it
  return points.map(({ flow, pressureRatio, efficiency, speed }) => ({
    flow: correctedFlow(flow as MassFlow, reference, tableReference),
    pressureRatio: pressureRatio as Ratio,
    efficiency: efficiency as Fraction,
    speed: correctedSpeed(speed as RotationalSpeed, reference.temperature, tableReference),
  }));
}

/** Places along a speed line, from surge to where the bench stops. */
const alongLine = [0, 0.3, 0.6, 0.85, 1] as const;

/** Efficiency below which no bench goes on towards choke. */
const leastEfficiency = 0.55;

/**
 * Points of a field as a test bench would write them down: flow, ratio, efficiency and speed rounded.
 *
 * @param field what the compressor does
 * @param speeds corrected speeds of the lines, in turns a minute
 */
export function writtenDown(field: CompressorField, speeds: readonly number[]): readonly PointRow[] {
  return speeds.flatMap((turns) => {
    const speed = (turns / 60) as RotationalSpeed;
    const [surge, choke] = [field.surgeFlow(speed), field.chokeFlow(speed)];
    let last: number = choke;
    while (last > surge && field.at(last as MassFlow, speed).efficiency < leastEfficiency) last -= 0.005 * (choke - surge);
    return alongLine.map((share): PointRow => {
      const flow = rounded((surge + share * (last - surge)) * 60, 0.1) / 60;
      const { pressureRatio, efficiency } = field.at(flow as MassFlow, speed);
      return {
        flow: flow as MassFlow,
        pressureRatio: rounded(pressureRatio, 0.001) as Ratio,
        efficiency: rounded(efficiency, 0.001) as Fraction,
        speed,
      };
    });
  });
}

/** To whole multiples of a step that is a tenth, a hundredth and so on, without tails of digits. */
function rounded(value: number, step: number): number {
  const times = Math.round(1 / step);
  return Math.round(value * times) / times;
}

/** The text of a file that holds the rows, for the fit; the row's number is that of its line less one. */
export function pointsText(rows: readonly PointRow[], wheelDiameter: number): string {
  const plain = (value: number) => value.toFixed(12);
  return [
    "corrected flow [kg/s], pressure ratio, efficiency, wheel speed [rev/s]",
    ...rows.map(({ flow, pressureRatio, efficiency, speed }) =>
      [flow, pressureRatio, efficiency, speed].map(plain).join(", "),
    ),
    `reference: ${tableReference.temperature} K, ${tableReference.pressure} Pa`,
    `wheel diameter: ${plain(wheelDiameter)} m`,
  ].join("\n");
}

/** A refusal of the fit with the rows of the table in place of a file's lines. */
export function inRows(message: string): string {
  return message
    .replace(/^compressorMap: /, "")
    .replaceAll(/\bline (\d+)(?: and (\d+))?/g, (_, first: string, second?: string) =>
      second === undefined ? `row ${Number(first) - 1}` : `rows ${Number(first) - 1} and ${Number(second) - 1}`,
    );
}
