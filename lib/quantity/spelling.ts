/** Words that people write for the same unit; looked up letter run by letter run, in lower case. */
const words: Readonly<Record<string, string>> = {
  per: "/",
  minute: "min",
  minutes: "min",
  mins: "min",
  hour: "h",
  hours: "h",
  hr: "h",
  hrs: "h",
  second: "s",
  seconds: "s",
  sec: "s",
  secs: "s",
  litre: "l",
  litres: "l",
  liter: "l",
  liters: "l",
  ltr: "l",
  gallon: "gal",
  gallons: "gal",
  gals: "gal",
  imperial: "imp",
  pound: "lb",
  pounds: "lb",
  lbs: "lb",
  ounces: "ounce",
  inch: "in",
  inches: "in",
  foot: "ft",
  feet: "ft",
  yards: "yard",
  miles: "mile",
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  millimetre: "mm",
  millimetres: "mm",
  millimeter: "mm",
  millimeters: "mm",
  centimetre: "cm",
  centimetres: "cm",
  centimeter: "cm",
  centimeters: "cm",
  kilometre: "km",
  kilometres: "km",
  kilometer: "km",
  kilometers: "km",
  microns: "micron",
  cubic: "cu",
  square: "sq",
  gram: "g",
  grams: "g",
  kilogram: "kg",
  kilograms: "kg",
  kgs: "kg",
  tonnes: "tonne",
  newtons: "n",
  newton: "n",
  pascals: "pascal",
  kilopascal: "kpa",
  kilopascals: "kpa",
  bars: "bar",
  watt: "w",
  watts: "w",
  kilowatt: "kw",
  kilowatts: "kw",
  horsepower: "hp",
  joules: "joule",
  kwhr: "kwh",
  hphr: "hph",
  btus: "btu",
  volts: "volt",
  amps: "amp",
  amperes: "ampere",
  degree: "deg",
  degrees: "deg",
  celsius: "c",
  centigrade: "c",
  fahrenheit: "f",
  kelvin: "k",
  kelvins: "k",
  radians: "radian",
  revolution: "rev",
  revolutions: "rev",
  revs: "rev",
  turn: "rev",
  turns: "rev",
  strokes: "stroke",
  mercury: "hg",
  absolute: "abs",
  gage: "gauge",
  delta: "Δ",
};

/**
 * One spelling for the many ways of writing a unit, case kept: spaces, dots, hyphens and brackets drop out,
 * raised figures come down, plural and written-out words become symbols.
 *
 * @param text unit as typed
 */
export function plainSpelling(text: string): string {
  return text
    .replace(/′′|''|″|”|“/g, '"')
    .replace(/[′’]/g, "'")
    .replace(/[Δ∆]/g, "Δ")
    .replace(/[µμ]/g, "µ")
    .replace(/[º˚]/g, "°")
    .normalize("NFKC") // ² and ³ become figures, both signs of micro become one
    .replace(/[a-z]+/gi, (word) => lookedUp(word))
    .replace(/°/g, "deg")
    .replace(/[\s.,·⋅•∙*^()[\]{}_\-‐‑–]+/g, "");
}

/** The plain spelling in lower case: what decides, unless case tells two units apart. */
export function foldedSpelling(text: string): string {
  return plainSpelling(text).toLowerCase();
}

/**
 * Number of letters to change, add, leave out or swap with a neighbour to turn one spelling into another.
 *
 * @param from a spelling
 * @param to another
 * @example lettersApart("psj", "psi") // 1
 */
export function lettersApart(from: string, to: string): number {
  let before: number[] = [];
  let row = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const same = from[i - 1] === to[j - 1];
      let least = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) least = Math.min(least, before[j - 2]! + 1);
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[to.length]!;
}

function lookedUp(word: string): string {
  const lower = word.toLowerCase();
  return Object.hasOwn(words, lower) ? words[lower]! : word;
}
