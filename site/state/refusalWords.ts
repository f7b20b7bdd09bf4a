import { type DisplayHint, type KindName, type Quantity, together, toSI, type UnitSymbol, unitNamed, writeQuantity } from "../../lib/quantity";
import { type UnitChoice, unitSymbol } from "./units";

/** Units in which refusals name numbers, and what is read for them. A kelvin is a temperature or a difference: see below. */
const readings: Readonly<Record<string, { readonly kind: KindName; readonly hint?: DisplayHint; readonly named?: string }>> = {
  "kg/s": { kind: "massFlow" },
  "g/s": { kind: "massFlow", hint: "small" },
  "kg/h": { kind: "massFlow", hint: "fuel" },
  "m³/s": { kind: "volumeFlow" },
  "m³/rev": { kind: "volumePerTurn" },
  "rev/s": { kind: "rotationalSpeed" },
  "rev/min": { kind: "rotationalSpeed", named: "rpm" },
  "m²/s": { kind: "kinematicViscosity" },
  "m/s": { kind: "velocity" },
  "Pa·s": { kind: "dynamicViscosity" },
  "kg/m³": { kind: "density" },
  "J/kg": { kind: "specificEnergy" },
  "W/K": { kind: "thermalConductance" },
  "N·m": { kind: "torque" },
  kPa: { kind: "pressureDifference" },
  Pa: { kind: "pressureDifference" },
  bar: { kind: "pressureDifference", hint: "boost" },
  "°C": { kind: "temperature" },
  kW: { kind: "power" },
  rad: { kind: "angle" },
  mm: { kind: "length" },
  "m³": { kind: "volume" },
  "m²": { kind: "area" },
  m: { kind: "length", hint: "large" },
  W: { kind: "power" },
  N: { kind: "force" },
  K: { kind: "temperatureDifference" },
};

const number = String.raw`[-−]?\d+(?:\.\d+)?(?:e[-+]?\d+)?`;
const unit = [...Object.keys(readings)].sort((a, b) => b.length - a.length).join("|");
const quantities = new RegExp(String.raw`(?<![\w.])(?:(${number}) to )?(${number}) (${unit})(?![\p{L}\d/·²³(])`, "gu");
/** "hot temperature is 387.674 K; it must be 285.15 to 383.15 K". */
const bounded = new RegExp(`([^;:]+) is ${number} (${unit}); it must [^;:]*`, "gu");

/**
 * A refusal's words with their numbers in the units on the page, and with names of arguments as words: lib speaks SI.
 *
 * A value and its bounds keep four digits, or as many as tell them apart; other numbers have three or four. What is
 * read in its unit already stays as it is. Kelvins are turned only where the words before say what they count.
 */
export function refusalWords(words: string, units: UnitChoice): string {
  const spaced = words.replace(/(?<![\p{L}])[a-z]{2,}(?:[A-Z][a-z]+)+(?!\p{L})/gu, (name) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`));
  const clauses = [...spaced.matchAll(bounded)].map(({ index, 0: text, 1: subject }) => ({ from: index, to: index + text.length, text, subject: subject! }));
  const pieces: string[] = [];
  let at = 0;
  for (const clause of clauses) {
    pieces.push(inUnits(spaced.slice(at, clause.from), units, plainReading), boundedInUnits(clause.text, clause.subject, units));
    at = clause.to;
  }
  return [...pieces, inUnits(spaced.slice(at), units, plainReading)].join("");
}

interface Reading {
  readonly kind: KindName;
  readonly hint?: DisplayHint | undefined;
  /** Fewest digits shown. */
  readonly digits: number;
}

type ReadingOf = (symbol: string, texts: readonly string[]) => Reading | undefined;

/** In running words a kelvin may count from absolute zero or not, and stays. */
const plainReading: ReadingOf = (symbol, texts) =>
  symbol === "K" ? undefined : { ...readings[symbol]!, digits: Math.min(4, Math.max(3, ...texts.map(digitsIn))) };

function boundedInUnits(text: string, subject: string, units: UnitChoice): string {
  const largest = Math.max(...[...text.matchAll(new RegExp(number, "gu"))].map(([digits]) => Math.abs(Number(digits.replace("−", "-")))));
  const readingOf = (digits: number): ReadingOf => (symbol) => ({ ...boundedReading(symbol, subject, largest), digits });
  const short = inUnits(text, units, readingOf(4));
  return countOf(short) === countOf(text) ? short : inUnits(text, units, readingOf(9));
}

/** How many different numbers a text names. */
function countOf(text: string): number {
  return new Set(text.match(new RegExp(number, "gu"))).size;
}

function boundedReading(symbol: string, subject: string, largest: number): Omit<Reading, "digits"> {
  if (symbol === "K") return { kind: /difference|rise|less|change|approach|−/i.test(subject) ? "temperatureDifference" : "temperature" };
  if (symbol === "Pa") return { kind: "pressureDifference", ...(largest >= 1e6 && { hint: "rail" }) };
  if (symbol === "m") return { kind: "length", ...(largest >= 10 && { hint: "large" }) };
  if (symbol === "W") return { kind: "power", ...(largest < 1000 && { hint: "small" }) };
  return readings[symbol]!;
}

function inUnits(text: string, units: UnitChoice, readingOf: ReadingOf): string {
  return text.replace(quantities, (whole, low: string | undefined, high: string, spelt: string) => {
    const symbol = readings[spelt]?.named ?? spelt;
    const reading = readingOf(spelt, low === undefined ? [high] : [low, high]);
    if (!reading) return whole.replace(/ (?=\S+$)/, "\u00a0");
    const target = unitSymbol(units, { kind: reading.kind, ...(reading.hint !== undefined && { hint: reading.hint }) });
    const ends = [low, high].map((digits) => (digits === undefined || target === symbol ? digits : writtenIn(reading, digits, symbol, target).number));
    const last = together(ends[1]!, unitNamed(reading.kind, target).written);
    return ends[0] === undefined ? last : `${ends[0]} to ${last}`;
  });
}

function writtenIn({ kind, digits }: Reading, text: string, symbol: string, target: UnitSymbol<KindName>) {
  const value = toSI(unitNamed(kind, symbol as UnitSymbol<KindName>), text.replace("−", "-")) as Quantity<KindName>;
  return writeQuantity(kind, value, { unit: target, digits, thousands: false });
}

function digitsIn(text: string): number {
  return text.replace(/e.*$/, "").replace(/^[-−]?0*\.?0*/, "").replace(".", "").length;
}
