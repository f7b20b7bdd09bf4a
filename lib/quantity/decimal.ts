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
