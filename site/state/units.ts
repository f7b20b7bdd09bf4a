import {
  type DisplayHint,
  displayUnit,
  type KindName,
  type Quantity,
  raised,
  together,
  type UnitSymbol,
  type UnitSystem,
  type WrittenQuantity,
  writeQuantity,
} from "../../lib/quantity";

/** Units in which the page is read. Numbers themselves stay in SI whatever is chosen here. */
export interface UnitChoice {
  readonly system: UnitSystem;
  /** Symbols chosen line by line, by key. */
  readonly own: Readonly<Record<string, string>>;
}

/** What has a unit: a line, by its key, or any number of some kind. */
export interface Measured {
  readonly key?: string;
  readonly kind: KindName;
  readonly hint?: string;
}

interface Writing {
  readonly digits?: number;
  /** Keep zeros at the end, so that a number that moves does not jump. */
  readonly steady?: boolean;
}

/** Symbol of the unit in which something is read. */
export function unitSymbol(choice: UnitChoice, { key, kind, hint }: Measured): UnitSymbol<KindName> {
  const own = key === undefined ? undefined : choice.own[key];
  return (own ?? displayUnit(kind, choice.system, hint as DisplayHint | undefined)) as UnitSymbol<KindName>;
}

/** A value as it is read: number and unit, and both in one text that no line breaks. */
export function written(
  choice: UnitChoice,
  measured: Measured,
  value: number,
  { digits = 4, steady = false }: Writing = {},
): WrittenQuantity {
  if (!Number.isFinite(value)) return { number: "–", unit: "", text: "–" };
  const { number, unit } = writeQuantity(measured.kind, value as Quantity<KindName>, {
    unit: unitSymbol(choice, measured),
    digits,
    trailingZeros: steady && measured.kind !== "count",
  });
  return { number, unit, text: together(raised(number), unit) };
}

/** An input's value as its field shows it: five digits, no zeros at the end. */
export function writtenInput(choice: UnitChoice, measured: Measured, value: number): WrittenQuantity {
  return written(choice, measured, value, { digits: 5 });
}
