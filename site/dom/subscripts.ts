import { h } from "./h";

/** Letters with an index in running words, as p_4 or T_w,0. */
const indexed = /(\p{L}+)_([\p{L}\d]+(?:,[\p{L}\d]+)*)/gu;

/** A text in which symbols with an index are set as symbols: "p_4 is …". */
export function withSubscripts(text: string): readonly (string | HTMLElement)[] {
  const pieces: (string | HTMLElement)[] = [];
  let at = 0;
  for (const { 0: whole, 1: letters = "", 2: index = "", index: from } of text.matchAll(indexed)) {
    pieces.push(text.slice(at, from), h("i", { class: "symbol-in-words" }, letters, h("sub", {}, index)));
    at = from + whole.length;
  }
  return [...pieces, text.slice(at)].filter((piece) => piece !== "");
}
