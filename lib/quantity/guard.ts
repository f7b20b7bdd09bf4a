/** Lowest and highest value that a function answers for, both allowed. */
export type Span = readonly [lowest: number, highest: number];

/**
 * Passes when `value` lies within `span`; NaN does not.
 *
 * @param name the function and its argument, as in "beltWrap: centreDistance"
 * @param value the number to hold against the span
 * @param span lowest and highest allowed value
 * @param unit SI unit, for the message
 * @throws RangeError that names argument, value and bounds
 */
export function requireWithin(name: string, value: number, span: Span, unit = ""): void {
  if (value >= span[0] && value <= span[1]) return;
  throw new RangeError(`${name} is ${written(value, unit)}; it must be ${bounds(span, unit)}`);
}

/** Passes when `value` is a finite number above zero. @throws RangeError that names argument and value */
export function requirePositive(name: string, value: number, unit = ""): void {
  if (value > 0 && value < Number.POSITIVE_INFINITY) return;
  throw new RangeError(`${name} is ${written(value, unit)}; it must be above 0${unit && ` ${unit}`}`);
}

/** Passes when `value` is a finite number, zero or above. @throws RangeError that names argument and value */
export function requireNotNegative(name: string, value: number, unit = ""): void {
  if (value >= 0 && value < Number.POSITIVE_INFINITY) return;
  throw new RangeError(`${name} is ${written(value, unit)}; it must be 0${unit && ` ${unit}`} or above`);
}

/** Passes when `value` is a finite number. @throws RangeError that names argument and value */
export function requireFinite(name: string, value: number, unit = ""): void {
  if (Number.isFinite(value)) return;
  throw new RangeError(`${name} is ${written(value, unit)}; it must be a finite number`);
}

function bounds([lowest, highest]: Span, unit: string): string {
  if (highest === Number.POSITIVE_INFINITY) return `at least ${written(lowest, unit)}`;
  if (lowest === Number.NEGATIVE_INFINITY) return `at most ${written(highest, unit)}`;
  return `${Number(lowest.toPrecision(6))} to ${written(highest, unit)}`;
}

function written(value: number, unit: string): string {
  return `${Number(value.toPrecision(6))}${unit && ` ${unit}`}`;
}
