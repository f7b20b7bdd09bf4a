import type { Column, QuantityInput } from "../../lib/graph";

type Field = Pick<QuantityInput, "kind" | "span" | "step" | "scale"> | Extract<Column, { type: "quantity" }>;

/** How an input's values lie along a slider, and how keys step through them. */
export interface Track {
  /** Where a value lies, from 0 at the left end to 1 at the right. */
  position(value: number): number;
  /** The value at a place, brought to a whole number of steps from the lower end. */
  value(position: number): number;
  /** The value so many steps further, held within the ends; parts of a step are allowed except in counts. */
  moved(value: number, steps: number): number;
  /** Whether a value may be entered. */
  holds(value: number): boolean;
}

/** The track of a quantity's field. */
export function trackOf(field: Field): Track {
  const [lowest, highest] = field.span as readonly [number, number];
  const { kind, step } = field;
  const onLog = "scale" in field && field.scale === "log";
  const within = (value: number): number => Math.min(highest, Math.max(lowest, value));
  const along = onLog
    ? (position: number) => lowest * (highest / lowest) ** position
    : (position: number) => lowest + position * (highest - lowest);
  const snapped = (value: number): number => clean(lowest + Math.round((value - lowest) / step) * step);

  return {
    position: (value) => {
      const share = onLog ? Math.log(value / lowest) / Math.log(highest / lowest) : (value - lowest) / (highest - lowest);
      return Math.min(1, Math.max(0, share));
    },
    value: (position) => (position >= 1 ? highest : within(snapped(along(position)))),
    moved: (value, steps) => {
      const count = kind === "count" ? Math.sign(steps) * Math.max(1, Math.round(Math.abs(steps))) : steps;
      return within(clean(value + count * step));
    },
    holds: (value) => value >= lowest && value <= highest && (kind !== "count" || Number.isInteger(value)),
  };
}

/** Drops the noise that sums of steps leave in the last digits. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
