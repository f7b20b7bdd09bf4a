import { Unreadable } from "./unreadable";

/** Most that a file may hold [bytes] */
const mostBytes = 1_000_000;
/** A build needs five levels; what it does not know may have some of its own. */
const deepestLevel = 40;

/** A key or a plain value. In a text any sign from the space upward may stand as it is, but quotes and backslash. */
const word =
  /"[ !#-[\]-\uffff]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[ !#-[\]-\uffff]*)*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const space = /[ \t\n\r]*/y;

/**
 * The value that a JSON text stands for.
 *
 * @param text the whole file
 * @throws Unreadable when it is too large, nested too deep, or no JSON: then with line and column
 */
export function parsedJson(text: string): unknown {
  const bytes = text.length > mostBytes ? text.length : new TextEncoder().encode(text).length;
  if (bytes > mostBytes) {
    throw new Unreadable("file", `it holds ${(bytes / 1e6).toFixed(2)} MB; a build file may hold at most 1 MB`);
  }
  const body = text.startsWith("\ufeff") ? text.slice(1) : text;
  const { end, level } = walked(body);
  if (level > deepestLevel) throw new Unreadable("file", `it is nested more than ${deepestLevel} levels deep`);
  try {
    return JSON.parse(body);
  } catch {
    throw new Unreadable("file", `it is not JSON from ${placeOf(body, end)} on`);
  }
}

/**
 * How far a text is JSON, and how deep it goes. The walk keeps its own stack, so that no nesting can exhaust the
 * program's; it stops one level below the deepest allowed.
 */
function walked(text: string): { readonly end: number; readonly level: number } {
  const open: string[] = [];
  let at = 0;
  let deepest = 0;
  /** What may come next: a value, a key, or what follows a value. The first of a list or object may be its end. */
  let next: "value" | "first value" | "key" | "first key" | "after" = "value";

  const take = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0] ?? "";
    at += found.length;
    return found;
  };

  while (deepest <= deepestLevel) {
    take(space);
    const sign = text[at] ?? "";
    const begin = at;
    if (next === "after") {
      const within = open.at(-1);
      if (within === undefined) break;
      if (sign === ",") next = within === "[" ? "value" : "key";
      else if (sign === (within === "[" ? "]" : "}")) open.pop();
      else break;
      at++;
    } else if ((next === "first value" && sign === "]") || (next === "first key" && sign === "}")) {
      open.pop();
      next = "after";
      at++;
    } else if (next === "key" || next === "first key") {
      if (sign !== '"' || take(word) === "") break;
      take(space);
      if (text[at] !== ":") break;
      next = "value";
      at++;
    } else if (sign === "[" || sign === "{") {
      open.push(sign);
      deepest = Math.max(deepest, open.length);
      next = sign === "[" ? "first value" : "first key";
      at++;
    } else {
      take(word);
      if (at === begin) break;
      next = "after";
    }
  }
  return { end: at, level: deepest };
}

function placeOf(text: string, offset: number): string {
  const lines = text.slice(0, offset).split("\n");
  return `line ${lines.length}, column ${lines.at(-1)!.length + 1}`;
}
