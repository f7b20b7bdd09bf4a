import { contours } from "d3";
import type { CompressorField } from "../../../lib/charge";
import type { MassFlow, RotationalSpeed } from "../../../lib/quantity";

/** A place in a compressor's field: how far from surge (0) to choke (1), and the corrected wheel speed [rev/s]. */
export interface FieldPlace {
  readonly across: number;
  readonly speed: number;
}

/** A place as a drawing has it. */
export interface FieldSpot {
  /** corrected flow [kg/s] */
  readonly flow: number;
  readonly pressureRatio: number;
}

/** A line of equal efficiency: the areas above it, and where it runs inside the field. */
export interface Isle {
  readonly efficiency: number;
  readonly rings: readonly (readonly FieldPlace[])[];
}

const mesh = { across: 25, speeds: 29 };

/** Flow and pressure ratio at a place. */
export function spotOf(field: CompressorField, { across, speed }: FieldPlace): FieldSpot {
  const at = speed as RotationalSpeed;
  const surge = field.surgeFlow(at);
  const flow = (surge + across * (rightEnd(field, at) - surge)) as MassFlow;
  return { flow, pressureRatio: field.at(flow, at).pressureRatio };
}

/** Where a speed line ends: at choke, or before it where it no longer compresses [kg/s]. */
function rightEnd(field: CompressorField, speed: RotationalSpeed): number {
  const ratio = (flow: number) => field.at(flow as MassFlow, speed).pressureRatio;
  const choke = field.chokeFlow(speed);
  if (ratio(choke) >= 1) return choke;
  let [low, high] = [field.surgeFlow(speed) as number, choke as number];
  for (let halvings = 0; halvings < 20; halvings += 1) {
    const middle = (low + high) / 2;
    if (ratio(middle) >= 1) low = middle;
    else high = middle;
  }
  return low;
}

/** Places from surge to choke at a speed. */
export function lineOf(speed: number, count = mesh.across): readonly FieldPlace[] {
  return Array.from({ length: count }, (_, i) => ({ across: i / (count - 1), speed }));
}

/** Places along surge (0) or choke (1), from slow to fast. */
export function edgeOf(across: number, [slow, fast]: readonly [number, number], count = 33): readonly FieldPlace[] {
  return Array.from({ length: count }, (_, i) => ({ across, speed: slow + (i / (count - 1)) * (fast - slow) }));
}

/**
 * Areas of the field above several efficiencies, between surge and choke and within a span of speeds. The lines are found
 * in a mesh of speeds and distances from surge, so that they end at the field's own edges.
 */
export function isles(
  field: CompressorField,
  [slow, fast]: readonly [number, number],
  efficiencies: (best: number) => readonly number[],
): readonly Isle[] {
  const values: number[] = [];
  const speedAt = (row: number) => slow + (row / (mesh.speeds - 1)) * (fast - slow);
  for (let row = 0; row < mesh.speeds; row += 1) {
    const speed = speedAt(row) as RotationalSpeed;
    const [surge, end] = [field.surgeFlow(speed), rightEnd(field, speed)];
    for (let column = 0; column < mesh.across; column += 1) {
      const flow = surge + (column / (mesh.across - 1)) * (end - surge);
      values.push(field.at(flow as MassFlow, speed).efficiency);
    }
  }
  const thresholds = [...efficiencies(Math.max(...values))];
  const within = (value: number, last: number) => Math.min(Math.max(value - 0.5, 0), last);
  return contours()
    .size([mesh.across, mesh.speeds])
    .thresholds(thresholds)(values)
    .map(({ value, coordinates }) => ({
      efficiency: value,
      rings: coordinates.flat().map((ring) =>
        ring.map(([x, y]) => ({
          across: within(x!, mesh.across - 1) / (mesh.across - 1),
          speed: speedAt(within(y!, mesh.speeds - 1)),
        })),
      ),
    }));
}

/** Whether a piece of an isle's shore is the field's own edge. */
export function isEdge(from: FieldPlace, to: FieldPlace, [slow, fast]: readonly [number, number]): boolean {
  return (
    (from.across === to.across && (from.across === 0 || from.across === 1)) ||
    (from.speed === to.speed && (from.speed === slow || from.speed === fast))
  );
}
