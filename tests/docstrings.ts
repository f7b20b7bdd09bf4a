/** The docstrings of exported functions, taken apart. */
import type { Source } from "./sources";

export interface Docstring {
  /** Path of the file, and the function's name. */
  readonly path: string;
  readonly name: string;
  /** The declaration up to its body, on one line. */
  readonly signature: string;
  /** Words before the first tag; empty where there is no docstring. */
  readonly summary: string;
  /** Each tag's text, in order. */
  readonly tags: readonly { readonly tag: string; readonly text: string }[];
}

/** A line of an example: a call, and what it gives. */
export interface Example {
  readonly expression: string;
  readonly shown: string;
}

const declaration = /(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*)?^export function (\w+)/gm;

/** The docstrings of all functions that a file exports. */
export function docstringsOf({ path, text }: Source): readonly Docstring[] {
  return [...text.matchAll(declaration)].map((match) => {
    const [whole, comment = "", name = ""] = match;
    const from = match.index + whole.lastIndexOf("export function");
    const body = comment
      .split("\n")
      .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
      .join("\n");
    const [summary = "", ...tagged] = body.split(/^(?=@\w+)/m);
    const tags = tagged.map((each) => {
      const [, tag = "", words = ""] = /^@(\w+)\s*([\s\S]*)$/.exec(each) ?? [];
      return { tag, text: words.trim() };
    });
    return { path, name, signature: signatureAt(text, from), summary: oneLine(summary), tags };
  });
}

/** The examples of a docstring. @throws SyntaxError where one is not of the form "call // result" on one line */
export function examplesOf({ path, name, tags }: Docstring): readonly Example[] {
  return tags
    .filter(({ tag }) => tag === "example")
    .map(({ text }) => {
      const [, expression, shown] = /^(.+\S)\s+\/\/ (\S.*)$/.exec(text) ?? [];
      if (expression && shown && !text.includes("\n")) return { expression, shown: shown.replace("−", "-") };
      throw new SyntaxError(`${path}: the example of ${name} is not "call // result" on one line: ${oneLine(text)}`);
    });
}

/** The kind of result that a signature names, such as "Pressure"; empty where it names none. */
export function resultType({ signature }: Docstring): string {
  return /\):\s*([^()]+)$/.exec(signature)?.[1]?.trim() ?? "";
}

/**
 * Whether a result is the one shown, to the digits shown: "0.216" stands for 0.2155 to 0.2165.
 *
 * @param result what the call gave
 * @param shown a number, a text in quotes, true or false
 */
export function agrees(result: unknown, shown: string): boolean {
  const number = /^(-?\d+(?:\.(\d+))?)(?:e(-?\d+))?$/i.exec(shown);
  if (!number) return JSON.stringify(result) === shown;
  const [, , decimals = "", exponent = "0"] = number;
  const lastDigit = 10 ** (Number(exponent) - decimals.length);
  // The tiny rest is for a value that lies half-way in decimal and a bit off in binary.
  return typeof result === "number" && Math.abs(result - Number(shown)) <= lastDigit * (0.5 + 1e-9);
}

/** The text from a declaration to the brace that opens its body. */
function signatureAt(text: string, from: number): string {
  let depth = 0;
  for (let at = text.indexOf("(", from); at < text.length; at++) {
    const sign = text[at]!;
    if ("([{".includes(sign)) {
      // After the parameters, the first brace that does not begin a type opens the body.
      if (sign === "{" && depth === 0 && !/[:|&<]\s*$/.test(text.slice(from, at))) return oneLine(text.slice(from, at));
      depth++;
    }
    if (")]}".includes(sign)) depth--;
  }
  return oneLine(text.slice(from));
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
