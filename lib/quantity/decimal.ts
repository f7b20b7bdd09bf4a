/**
 * The number that a decimal text means after its point is moved, rounded once: "85.3" by −2 is 0.853.
 * Multiplying by 0.01 instead would round twice and can end one digit away from what was typed.
 *
 * @param decimal a decimal number as JavaScript writes it, with or without exponent
 * @param places places by which the point moves to the right [–]
 * @example shiftDecimal("85.3", -2) // 0.853
 */
export function shiftDecimal(decimal: string, places: number): number {
  const [mantissa = "", exponent = "0"] = decimal.toLowerCase().split("e");
  return Number(`${mantissa}e${Number(exponent) + places}`);
}

/**
 * The exponent of a power of ten, or undefined for any other number: 3 for 1000, −2 for 0.01.
 *
 * @param factor a number above zero [–]
 * @example powerOfTen(1e-3) // -3
 */
export function powerOfTen(factor: number): number | undefined {
  const exponent = Math.round(Math.log10(factor));
  return Number(`1e${exponent}`) === factor ? exponent : undefined;
}

const closeness = 1e-15; // a few times the spacing of doubles
const largestNumerator = 2 ** 40;

/**
 * Numerator and denominator of a conversion factor that is a plain fraction: [254, 10000] for 0.0254, [5, 9] for 5/9.
 * Multiplying by one and dividing by the other then gives 0.0381 for 1.5 in, where 1.5 · 0.0254 ends in …95.
 * Only denominators that occur in definitions are tried; any other factor stands over 1.
 *
 * @param factor a number above zero [–]
 * @example fractionNear(0.0254)[1] // 10000
 */
export function fractionNear(factor: number): readonly [numerator: number, denominator: number] {
  for (const step of [1, 9, 60, 3600]) {
    for (let places = 0; places <= 12; places += 1) {
      const denominator = step * 10 ** places;
      const numerator = Math.round(factor * denominator);
      if (numerator > largestNumerator) break;
      if (Math.abs(numerator / denominator / factor - 1) <= closeness) return [numerator, denominator];
    }
  }
  return [factor, 1];
}
