/** A number at the head of a typed text, as decimal text for Number(), and what follows it. */
export type TypedNumber =
  | { readonly ok: true; readonly decimal: string; readonly rest: string }
  | { readonly ok: false; readonly reason: string };

const vulgarFractions: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

const notANumber = { ok: false, reason: "is not a number" } as const;
const notGrouped = {
  ok: false,
  reason: "is not a number: its commas, points and spaces do not fall on thousands",
} as const;

/** Digits with points and commas; spaces, apostrophes and underscores only before a group of exactly three digits. */
const digitRun = /^(?:\d|[.,](?=\d)|(?<=\d)[\s'’_](?=\d{3}(?!\d)))+/;
const fractionRun = /^(?:(\d+)(?:\s+|-))?(\d+)\s?[/⁄]\s?(\d+)(?![\d.,])/;
const exponentRun = /^(?:e|\s?[×x·*]\s?10\^)([+-]?\d+)/i;

/**
 * Reads the number at the head of a text: decimals with point or comma, thousands, exponents, fractions ("1 1/2").
 * One comma before exactly three digits, with nothing else to show that commas are decimal, is read as thousands:
 * "1,250" is 1250, while "1,25", "0,250", "1250,125" and "1 250,125" have decimal commas.
 *
 * @param text text as typed
 */
export function readNumber(text: string): TypedNumber {
  const plain = text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign]}`)
    .replace(/−/g, "-")
    .trim();
  const sign = /^[+-]?\s*/.exec(plain)![0];
  const unsigned = plain.slice(sign.length);
  const minus = sign.startsWith("-") ? "-" : "";
  const fraction = fractionRun.exec(unsigned);
  if (fraction) return fromFraction(minus, fraction, unsigned.slice(fraction[0].length));
  const run = digitRun.exec(unsigned)?.[0];
  if (!run) return notANumber;
  const decimal = fromDigits(run);
  if (decimal === undefined) return notGrouped;
  const afterDigits = unsigned.slice(run.length);
  const exponent = exponentRun.exec(afterDigits);
  return finite(`${minus}${decimal}e${Number(exponent?.[1] ?? 0)}`, afterDigits.slice(exponent?.[0].length ?? 0));
}

function fromFraction(minus: string, [, whole = "0", above, below]: RegExpExecArray, rest: string): TypedNumber {
  if (Number(below) === 0) return { ok: false, reason: "is not a number: it divides by zero" };
  return finite(`${minus}${Number(whole) + Number(above) / Number(below)}`, rest);
}

function finite(decimal: string, rest: string): TypedNumber {
  if (Number.isFinite(Number(decimal))) return { ok: true, decimal, rest: rest.trim() };
  return { ok: false, reason: "is too large a number" };
}

/** Decimal text with a point, or undefined where separators do not fall on thousands. */
function fromDigits(run: string): string | undefined {
  const mark = decimalMark(run);
  const at = mark === undefined ? run.length : run.lastIndexOf(mark);
  const whole = run.slice(0, at);
  const decimals = run.slice(at + 1);
  if (/\D/.test(decimals)) return undefined;
  if (/\D/.test(whole) && !/^\d{1,3}(?:([.,\s'’_])\d{3})(?:\1\d{3})*$/.test(whole)) return undefined;
  return `${whole.replace(/\D/g, "") || "0"}.${decimals || "0"}`;
}

/** The sign that separates decimals in this run, if any. */
function decimalMark(run: string): "." | "," | undefined {
  const commas = run.split(",").length - 1;
  const points = run.split(".").length - 1;
  if (commas > 0 && points > 0) return run.lastIndexOf(",") > run.lastIndexOf(".") ? "," : ".";
  if (points === 1) return ".";
  if (commas === 1 && !/^[1-9]\d{0,2},\d{3}$/.test(run)) return ",";
  return undefined;
}
