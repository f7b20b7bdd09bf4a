import { powerOfTen, shiftDecimal } from "./decimal";
import { displayUnit } from "./display";
import { requireFinite, requireWithin } from "./guard";
import { type KindName, kinds, type Quantity } from "./kinds";
import { fromSI, toSI, type Unit, type UnitSymbol, unitNamed, unitsOf } from "./units";

/** How a quantity is to be written. */
export interface WritingOptions<K extends KindName> {
  /** symbol of the unit to write in */
  readonly unit: UnitSymbol<K>;
  /** significant digits [–], 1 to 15; figures before the decimal point are always written in full */
  readonly digits?: number;
  /** keep zeros at the end ("2.400"), so that a column of readings stays in line */
  readonly trailingZeros?: boolean;
  /** thin spaces between thousands from five figures on; on unless set to false */
  readonly thousands?: boolean;
}

/** A quantity in words for reading; `text` is number and unit with a space between. */
export interface WrittenQuantity {
  readonly number: string;
  readonly unit: string;
  readonly text: string;
}

const usualDigits = 4;
const digitsSpan = [1, 15] as const;
/** Readings outside this span are written with an exponent. */
const plainSpan = [1e-6, 1e12] as const;

/**
 * A quantity as a person reads it: about four significant digits, a true minus, thin spaces between thousands.
 * What is written can be typed back (parseQuantity), but is rounded; writeExactly is not.
 *
 * @param kind kind of quantity
 * @param value the quantity [SI unit of the kind], finite
 * @param options unit and digits
 * @throws RangeError if the value is not a finite number or digits lie outside 1 to 15
 * @example Number(writeQuantity("pressure", 240e3, { unit: "bar" }).number) // 2.4
 */
export function writeQuantity<K extends KindName>(
  kind: K,
  value: NoInfer<Quantity<K>>,
  { unit: symbol, digits = usualDigits, trailingZeros = false, thousands = true }: WritingOptions<K>,
): WrittenQuantity {
  requireFinite(`writeQuantity: ${kinds[kind].name}`, value, kinds[kind].unit);
  requireWithin("writeQuantity: digits", digits, digitsSpan);
  const unit = unitNamed(kind, symbol);
  const rounded = roundedText(fromSI(unit, value), digits);
  const plain = trailingZeros ? rounded : withoutTrailingZeros(rounded);
  return assembled(typeset(thousands ? withThousands(plain) : plain), unit);
}

/**
 * A quantity as text from which parseQuantity gives back the very same number (zero loses its sign).
 * Written in a unit that people read, of either system, where a unit of ten's powers or at most twelve digits do it,
 * else in the SI unit of the kind. Only pure numbers are written without unit: a fraction in plain form (symbol "")
 * reads back in a field that is plain too.
 *
 * @param kind kind of quantity
 * @param value the quantity [SI unit of the kind], finite
 * @param symbol unit to try first, else the usual metric one
 * @throws RangeError if the value is not a finite number
 * @example Number(writeExactly("length", 0.1016, "in").split(" ")[0]) // 4
 */
export function writeExactly<K extends KindName>(kind: K, value: NoInfer<Quantity<K>>, symbol?: UnitSymbol<K>): string {
  requireFinite(`writeExactly: ${kinds[kind].name}`, value, kinds[kind].unit);
  for (const candidate of [symbol, displayUnit(kind, "SI"), displayUnit(kind, "US")]) {
    if (candidate === undefined) continue;
    const unit = unitNamed(kind, candidate as UnitSymbol<K>);
    const reading = exactReading(unit, value);
    if (reading !== undefined) return assembled(typeset(reading), unit).text;
  }
  return assembled(typeset(plainDecimal(String(value))), unitOfSI(kind)).text;
}

/** Decimal text that toSI turns into exactly this value, if one of twelve digits does or only the point moves. */
function exactReading(unit: Unit, value: number): string | undefined {
  const places = unit.offset === 0 ? powerOfTen(unit.factor) : undefined;
  if (places !== undefined) {
    const moved = movedPoint(String(value), -places);
    return Number.isFinite(Number(moved)) ? plainDecimal(moved) : undefined;
  }
  const reading = fromSI(unit, value);
  for (let digits = 1; digits <= 12; digits += 1) {
    const text = reading.toPrecision(digits);
    if (toSI(unit, text) === value) return plainDecimal(withoutTrailingZeros(text));
  }
  return undefined;
}

/** Number and unit for a page: no line ends between them, nor inside the unit. */
export function together(number: string, unit: string): string {
  return unit === "" ? number : `${number}\u00a0${unbroken(unit)}`;
}

/** A number as a page sets it: "9.6e−11" is 9.6·10⁻¹¹. */
export function raised(number: string): string {
  return number.replace(/e(−?\d+)$/, (_, power: string) => `·10${[...power].map((sign) => (sign === "−" ? "⁻" : "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(sign)]!)).join("")}`);
}

/** A unit whose words no line parts. */
export function unbroken(unit: string): string {
  return unit.replaceAll(" ", "\u00a0");
}

function unitOfSI(kind: KindName): Unit {
  return unitsOf(kind).find((unit) => unit.factor === 1 && unit.offset === 0)!;
}

function assembled(number: string, unit: Unit): WrittenQuantity {
  return { number, unit: unit.written, text: unit.written === "" ? number : `${number} ${unit.written}` };
}

/** Significant digits, but never fewer than the figures before the point. */
function roundedText(reading: number, digits: number): string {
  const size = Math.abs(reading);
  if (size === 0) return (0).toFixed(digits - 1);
  if (size < plainSpan[0] || size >= plainSpan[1]) return reading.toExponential(digits - 1);
  const exponent = Number(reading.toExponential(digits - 1).split("e")[1]);
  return reading.toFixed(Math.min(100, Math.max(0, digits - 1 - exponent)));
}

/** Same number with the point moved, as text, digit for digit. */
function movedPoint(decimal: string, places: number): string {
  const [mantissa = "", exponent = "0"] = decimal.split("e");
  return `${mantissa}e${Number(exponent) + places}`;
}

/** Written out without exponent where a person would read it so; digits are only moved, never rounded. */
function plainDecimal(decimal: string): string {
  const [mantissa = "", exponentText = "0"] = decimal.split("e");
  const sign = mantissa.startsWith("-") ? "-" : "";
  const [whole = "0", decimals = ""] = mantissa.replace("-", "").split(".");
  const size = Math.abs(shiftDecimal(decimal, 0));
  const point = whole.length + Number(exponentText);
  const figures = whole + decimals;
  if (size !== 0 && (size < plainSpan[0] || size >= plainSpan[1])) {
    const first = figures.search(/[1-9]/);
    const rest = figures.slice(first + 1).replace(/0+$/, "");
    return `${sign}${figures[first]}${rest && `.${rest}`}e${point - first - 1}`;
  }
  const padded = point > 0 ? figures.padEnd(point, "0") : `0${"0".repeat(-point)}${figures}`;
  const place = Math.max(point, 1);
  const wholePart = padded.slice(0, place).replace(/^0+(?=\d)/, "");
  return `${sign}${withoutTrailingZeros(`${wholePart}.${padded.slice(place)}`)}`;
}

function withoutTrailingZeros(decimal: string): string {
  const [mantissa = "", exponent] = decimal.split("e");
  const trimmed = mantissa.includes(".") ? mantissa.replace(/\.?0*$/, "") : mantissa;
  return exponent === undefined ? trimmed : `${trimmed}e${exponent}`;
}

/** "12345.6" becomes "12 345.6"; four figures stay together. */
function withThousands(decimal: string): string {
  const [, sign = "", whole = "", rest = ""] = /^(-?)(\d+)(.*)$/.exec(decimal) ?? [];
  return whole.length < 5 ? decimal : `${sign}${whole.replace(/\B(?=(\d{3})+$)/g, "\u202f")}${rest}`;
}

/** True minus signs, none before zero, and no plus in an exponent. */
function typeset(decimal: string): string {
  const sign = decimal.startsWith("-") && /[1-9]/.test(decimal.split("e")[0] ?? "") ? "−" : "";
  return sign + decimal.replace(/^-/, "").replace("e+", "e").replace("e-", "e−");
}
