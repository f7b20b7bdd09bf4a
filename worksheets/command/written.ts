import {
  type DisplayHint,
  displayUnit,
  type KindName,
  type Quantity,
  type UnitSystem,
  writeQuantity,
} from "../../lib/quantity";

/** A value as number and unit, in the unit in which the trade reads it. */
export function written(
  kind: KindName,
  value: number,
  system: UnitSystem,
  hint?: DisplayHint,
): readonly [number: string, unit: string] {
  // A bound may be infinite, for which there are no digits.
  if (!Number.isFinite(value)) return [`${value}`, ""];
  const { number, unit } = writeQuantity(kind, value as Quantity<KindName>, { unit: displayUnit(kind, system, hint) });
  return [number, unit];
}
