import type { KindName, Pressure, Quantity } from "./kinds";
import { refusals } from "./refusals";
import { plainSpelling } from "./spelling";
import { readNumber } from "./typedNumber";
import { otherKindSpelled, unitSpelled } from "./unitSpellings";
import { type BareSymbol, toSI, type Unit, type UnitSymbol, unitNamed } from "./units";

/** What the field knows about the text typed into it. */
export interface ParsingOptions<K extends KindName> {
  /** unit that counts where none is typed */
  readonly unit: UnitSymbol<K>;
  /** ambient pressure [Pa]; with it a gauge pressure may be typed for an absolute one, and the other way round */
  readonly ambient?: Pressure;
}

/** A quantity with the unit in which it was typed, or words that say what is wrong with the text. */
export type ParsedQuantity<K extends KindName> =
  | { readonly ok: true; readonly value: Quantity<K>; readonly unit: BareSymbol<K> }
  | { readonly ok: false; readonly message: string };

/** Five feet three and a half: 5'-3 1/2", 5 ft 3.5 in. */
const feetAndInches =
  /^([+\-−]?)\s*(\d+)\s*(?:'|′|’|ft\.?|foot|feet)\s*-?\s*(\d.*?)\s*(?:"|″|”|''|′′|in\.?|inch|inches)$/i;

/**
 * Reads what a person types: a number, and a unit of the kind or none.
 * Numbers are read as by readNumber ("1,250" is 1250, "1,25" is 1.25); units in any usual spelling and case.
 * Bare "bar" is taken as the kind of the field; "bar a" and "bar g" are held to it.
 * Sums and formulas are not read.
 *
 * @param kind kind of quantity that the field takes
 * @param text text as typed
 * @param options unit of the field, and ambient pressure if gauge and absolute may stand for each other
 * @example parseQuantity("pressure", "2.4 bar", { unit: "kPa" }).value // 240000
 */
export function parseQuantity<K extends KindName>(
  kind: K,
  text: string,
  options: ParsingOptions<K>,
): ParsedQuantity<K> {
  const refuse = refusals(kind, text);
  if (text.trim() === "") return refuse.empty(unitNamed(kind, options.unit));
  const parts = kind === "length" ? feetAndInches.exec(text.trim()) : null;
  if (parts) return fromFeetAndInches(kind, text, parts);

  const number = readNumber(text);
  if (!number.ok) return refuse.because(number.reason);
  const { decimal } = number;
  // A bare ° in a temperature field is the degree of that field.
  const rest = number.rest === "°" && kind.startsWith("temperature") ? "" : number.rest;
  const otherKind = rest === "" ? undefined : otherKindSpelled(kind, rest);
  if (otherKind && options.ambient !== undefined) {
    const shifted = acrossAmbient(kind, otherKind, { decimal, typedUnit: rest, ambient: options.ambient });
    if (shifted) return settled(kind, text, shifted.value, shifted.unit);
  }
  if (otherKind) return refuse.otherKind(otherKind);
  const unit = rest === "" ? unitNamed(kind, options.unit) : unitSpelled(kind, rest);
  if (!unit) return refuse.unknownUnit(Number(decimal), rest, unitNamed(kind, options.unit));
  if (prefixMistaken(rest, unit)) return refuse.prefix(Number(decimal), rest, unit);
  return settled(kind, text, toSI(unit, decimal), unit);
}

function fromFeetAndInches<K extends KindName>(kind: K, text: string, parts: RegExpExecArray): ParsedQuantity<K> {
  const [, sign = "", feet = "", inchText = ""] = parts;
  const inches = readNumber(inchText);
  if (!inches.ok || inches.rest !== "") return refusals(kind, text).because("is not a length in feet and inches");
  const total = (sign === "" || sign === "+" ? 1 : -1) * (12 * Number(feet) + Number(inches.decimal));
  const inch = unitNamed("length", "in");
  return settled(kind, text, toSI(inch, total), inch);
}

interface Crossing {
  readonly decimal: string;
  readonly typedUnit: string;
  readonly ambient: Pressure;
}

/** Gauge typed for absolute, or absolute for gauge, moved by the ambient pressure. */
function acrossAmbient(
  kind: KindName,
  typedKind: KindName,
  { decimal, typedUnit, ambient }: Crossing,
): { value: number; unit: Unit } | undefined {
  const toAbsolute = kind === "pressure" && typedKind === "gaugePressure";
  const toGauge = kind === "gaugePressure" && typedKind === "pressure";
  if (!toAbsolute && !toGauge) return undefined;
  const unit = unitSpelled(typedKind, typedUnit)!;
  return { value: toSI(unit, decimal) + (toAbsolute ? ambient : -ambient), unit };
}

/** The last checks, which hold for the value whatever its unit. */
function settled<K extends KindName>(kind: K, text: string, value: number, unit: Unit): ParsedQuantity<K> {
  const refuse = refusals(kind, text);
  if (!Number.isFinite(value)) return refuse.because("is too large a number");
  if (kind === "temperature" && value < 0) return refuse.because("lies below absolute zero, −273.15 °C");
  if (kind === "pressure" && value < 0) return refuse.belowVacuum(unit);
  if (kind === "count" && !Number.isInteger(value)) return refuse.because("is not a whole number");
  // Adding zero turns −0 into 0.
  return { ok: true, value: (value + 0) as Quantity<K>, unit: unit.symbol as BareSymbol<K> };
}

/**
 * True where the typed m or M is, letter for letter, the other prefix: mPa for MPa, Mm for mm.
 * All small (mpa) or all large letters (MM) pass.
 */
function prefixMistaken(typed: string, unit: Unit): boolean {
  const [plain, symbol] = [plainSpelling(typed), plainSpelling(unit.symbol)];
  const sameButFirst = plain !== symbol && plain.slice(1) === symbol.slice(1);
  return sameButFirst && /^[mM](?:W|Pa|J|bar|m|L|s|g|N|V|A)(?![a-z])/.test(plain) && /^[mM]/.test(symbol);
}
