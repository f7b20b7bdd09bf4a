import { mapReferences, type MapReference, parseCompressorPoints } from "../../lib/charge";
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
  // physical flow and speed at the file's reference state, seen from the table's
  const cooler = Math.sqrt(tableReference.temperature / reference.temperature);
  const denser = tableReference.pressure / reference.pressure;
  return points.map(({ flow, pressureRatio, efficiency, speed }) => ({
    flow: ((flow * denser) / cooler) as MassFlow,
    pressureRatio: pressureRatio as Ratio,
    efficiency: efficiency as Fraction,
    speed: (speed * cooler) as RotationalSpeed,
  }));
}

/**
 * Points of a like wheel of another size and trim, rounded as a test bench would write them: speed falls with the size,
 * while tip speed, ratio and efficiency stay.
 *
 * @param size over that of the wheel whose points these are [–]
 * @param flow over that of the wheel whose points these are; the square of the size for the same trim [–]
 */
export function resized(rows: readonly PointRow[], size: number, flow: number): readonly PointRow[] {
  return rows.map((row) => ({
    ...row,
    flow: (Math.round(row.flow * flow * 1000) / 1000) as MassFlow,
    speed: ((Math.round((row.speed / size) * 0.6) * 100) / 60) as RotationalSpeed,
  }));
}

/** Every other speed line of some points, the slowest and those after it. */
export function everyOtherSpeed(rows: readonly PointRow[]): readonly PointRow[] {
  const speeds = [...new Set(rows.map(({ speed }) => speed))];
  return rows.filter(({ speed }) => speeds.indexOf(speed) % 2 === 0);
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
