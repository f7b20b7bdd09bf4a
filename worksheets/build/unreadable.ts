/** Why a build file cannot be read; the message begins with the path of the field that is to blame. */
export class Unreadable extends Error {
  constructor(path: string, words: string) {
    super(plainLine(`${path}: ${words}`));
  }
}

/** A field's path with one step more: "installations" and 1 and "label" are "installations[1].label". */
export function stepped(path: string, step: string | number): string {
  if (typeof step === "number") return `${path}[${step}]`;
  if (!/^[\p{L}_$][\p{L}\p{N}_$]*$/u.test(step)) return `${path}[${quoted(step)}]`;
  return path === "" ? step : `${path}.${step}`;
}

/** A text in quotes on one line, shortened where it is long. */
export function quoted(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);
}

/** A value of a JSON file in a few words, for messages. */
export function described(value: unknown): string {
  if (typeof value === "string") return quoted(value);
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" && value !== null ? "an object" : `${value}`;
}

/** Whether a value of a JSON file is an object with named fields. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A text on one line: what a file holds may bring line ends and terminal codes with it. */
export function plainLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]/gu, "�");
}
