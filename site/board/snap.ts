import type { Place } from "./camera";

/** Steps of a hand on a board, in metres. */
export interface Steps {
  /** Places that a pointer takes, and with Shift. */
  readonly fine: number;
  readonly coarse: number;
  /** What an arrow key moves, and with Shift. */
  readonly key: number;
  readonly leap: number;
}

const millimetre = 0.001;
const inch = 0.0254;

/** Round steps in the unit that lengths are read in. */
export function stepsIn(unit: string): Steps {
  return unit === "in" || unit === "ft"
    ? { fine: inch / 20, coarse: inch / 4, key: inch / 20, leap: inch / 2 }
    : { fine: millimetre, coarse: 5 * millimetre, key: millimetre, leap: 10 * millimetre };
}

export interface Snapping {
  readonly step: number;
  /** Places of other pieces; their axes draw a piece that comes near. */
  readonly others: readonly Place[];
  /** How near, in metres; 0 where axes draw nothing. */
  readonly reach: number;
  /** Ends of each coordinate. */
  readonly spans: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
}

export interface Snapped extends Place {
  /** Whether it stands level with, or above or below, another piece. */
  readonly onX: boolean;
  readonly onY: boolean;
}

/** Where a piece comes to stand that is wanted somewhere: on another's axis if that is near, else on a whole step. */
export function snapped(wanted: Place, { step, others, reach, spans }: Snapping): Snapped {
  const along = (axis: "x" | "y"): { readonly at: number; readonly on: boolean } => {
    const near = others
      .map((other) => other[axis])
      .filter((at) => Math.abs(at - wanted[axis]) <= reach)
      .sort((a, b) => Math.abs(a - wanted[axis]) - Math.abs(b - wanted[axis]))[0];
    return { at: near ?? onStep(wanted[axis], step, spans[axis]), on: near !== undefined };
  };
  const [x, y] = [along("x"), along("y")];
  return { x: x.at, y: y.at, onX: x.on, onY: y.on };
}

/** The whole step nearest to a value within a span. */
export function onStep(value: number, step: number, [lowest, highest]: readonly [number, number]): number {
  const whole = Math.round(value / step) * step;
  // Twelve digits: 0.441, not 0.44100000000000006; and no minus before a zero.
  return Number(Math.min(Math.max(whole, lowest), highest).toPrecision(12)) + 0;
}
