import { fractionNear, powerOfTen, shiftDecimal } from "./decimal";
import { requireFinite } from "./guard";
import { type KindName, kinds, type Quantity } from "./kinds";
import { suffixes, unitTables } from "./units/tables";
import type { UnitEntry, UnitSystem, UnitTable } from "./units/unit";

/** Symbols of a kind as they stand in its table: "psi" for every kind of pressure. */
export type BareSymbol<K extends KindName> = keyof (typeof unitTables)[K] & string;

/** What a program may name as a unit of kind K: the symbol, or the symbol as written ("psi" or "psi a"). */
export type UnitSymbol<K extends KindName> = K extends keyof typeof suffixes
  ? BareSymbol<K> | `${BareSymbol<K>}${(typeof suffixes)[K]}`
  : BareSymbol<K>;

/** One unit of one kind: SI value = (reading + offset) · factor. */
export interface Unit {
  readonly symbol: string;
  /** symbol as it stands behind a number: "psi g" */
  readonly written: string;
  readonly aliases: readonly string[];
  readonly factor: number;
  /** the factor as numerator and denominator, which keeps the last digit */
  readonly fraction: readonly [numerator: number, denominator: number];
  readonly offset: number;
  readonly system?: UnitSystem;
}

const unitLists = Object.fromEntries(
  (Object.keys(kinds) as KindName[]).map((kind) => [
    kind,
    Object.entries(unitTables[kind] as UnitTable).map(([symbol, entry]) => unitFrom(kind, symbol, entry)),
  ]),
) as unknown as Readonly<Record<KindName, readonly Unit[]>>;

/**
 * The units in which a quantity of this kind may be typed and read.
 *
 * @param kind kind of quantity
 * @example unitsOf("temperature").length // 4
 */
export function unitsOf(kind: KindName): readonly Unit[] {
  return unitLists[kind];
}

/**
 * The unit with this symbol, bare or as written.
 *
 * @param kind kind of quantity
 * @param symbol symbol of one of its units
 * @throws RangeError if the kind has no such unit
 * @example unitNamed("length", "in").factor // 0.0254
 */
export function unitNamed<K extends KindName>(kind: K, symbol: UnitSymbol<K>): Unit {
  const unit = unitLists[kind].find((each) => each.symbol === symbol || each.written === symbol);
  if (unit) return unit;
  throw new RangeError(`unitNamed: "${symbol}" is no unit of ${kinds[kind].name}; it must be one of its symbols`);
}

/** Kinds that have a plain unit may leave it out: quantity("count", 6). */
type UnitArgument<K extends KindName> = "" extends UnitSymbol<K> ? [unit?: UnitSymbol<K>] : [unit: UnitSymbol<K>];

/**
 * A quantity from a reading in one of its units [SI unit of the kind]: (reading + offset) · factor.
 *
 * @param kind kind of quantity
 * @param reading number as read in the unit, finite
 * @param unit symbol of a unit of this kind; pure numbers may leave it out
 * @throws RangeError if the reading is not a finite number
 * @example quantity("power", 950, "hp") // 708414.878
 */
export function quantity<K extends KindName>(kind: K, reading: number, ...[unit]: UnitArgument<K>): Quantity<K> {
  requireFinite(`quantity: ${kinds[kind].name}`, reading, unit);
  return toSI(unitNamed(kind, (unit ?? "") as UnitSymbol<K>), reading) as Quantity<K>;
}

/**
 * The reading of a quantity in one of its units: value / factor − offset.
 *
 * @param kind kind of quantity
 * @param value the quantity [SI unit of the kind]
 * @param unit symbol of a unit of this kind; pure numbers may leave it out
 * @example inUnit("temperature", 373.15, "°F") // 212.00
 */
export function inUnit<K extends KindName>(kind: K, value: NoInfer<Quantity<K>>, ...[unit]: UnitArgument<K>): number {
  return fromSI(unitNamed(kind, (unit ?? "") as UnitSymbol<K>), value);
}

/**
 * SI value of a reading: (reading + offset) · factor. Units of a power of ten move the decimal point, so that
 * "5.9 L" is 0.0059 m³ to the last digit.
 *
 * @param unit one of the units of unitsOf
 * @param reading the number read, or its decimal text
 * @example toSI(unitNamed("length", "in"), 1.5) // 0.0381
 */
export function toSI(unit: Unit, reading: number | string): number {
  const places = unit.offset === 0 ? powerOfTen(unit.factor) : undefined;
  if (places !== undefined) return shiftDecimal(String(reading), places);
  const [numerator, denominator] = unit.fraction;
  return ((Number(reading) + unit.offset) * numerator) / denominator;
}

/**
 * Reading of an SI value in a unit, the inverse of toSI to the last digit or two.
 *
 * @param unit one of the units of unitsOf
 * @param value the quantity [SI unit of the kind]
 * @example fromSI(unitNamed("length", "in"), 0.0381) // 1.5
 */
export function fromSI(unit: Unit, value: number): number {
  const [numerator, denominator] = unit.fraction;
  return (value * denominator) / numerator - unit.offset;
}

function unitFrom(kind: KindName, symbol: string, entry: UnitEntry): Unit {
  const suffix = (suffixes as Partial<Record<KindName, string>>)[kind] ?? "";
  const fraction = fractionNear(entry.factor);
  const factor = fraction[0] / fraction[1];
  return { offset: 0, ...entry, factor, fraction, symbol, written: entry.written ?? `${symbol}${suffix}` };
}
