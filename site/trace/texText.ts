import type { WrittenQuantity } from "../../lib/quantity";

const escapes: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash ",
  "^": "\\textasciicircum ",
  "~": "\\textasciitilde ",
};

/** Words set upright in a formula, whatever signs they hold. */
export function texText(words: string): string {
  const safe = words.replace(/[\\^~]/g, (sign) => escapes[sign]!).replace(/[%#$&_{}]/g, (sign) => `\\${sign}`);
  return `\\text{${safe}}`;
}

/** A written number with its unit, in TeX: "1 234.5 kg/min" as 1\\,234.5\\,\\text{kg/min}. */
export function texQuantity({ number, unit }: WrittenQuantity): string {
  const [mantissa = "", exponent] = number.split("e");
  const digits = mantissa.replace(/\u202f/g, "\\,").replace(/−/g, "-");
  const figures = exponent === undefined ? digits : `${digits}\\cdot 10^{${exponent.replace(/−/g, "-")}}`;
  return unit === "" ? figures : `${figures}\\,${texText(unit)}`;
}
