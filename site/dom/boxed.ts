import { h, setAttribute, setText } from "./h";

/** A place for a text that changes often. */
export interface Boxed {
  readonly element: HTMLElement;
  show(text: string): void;
}

/**
 * A text in a box whose size does not depend on it: writing into it lays out the box alone, and nothing around it. The
 * place gives the size: one line high, as wide as its column.
 *
 * @param name class of the place
 */
export function boxed(name: string): Boxed {
  const inner = h("span", { class: "boxed" });
  return {
    element: h("span", { class: `${name} box` }, inner),
    show: (text) => setText(inner, text),
  };
}

/** Rest after which a box takes a smaller size, in milliseconds: a number that loses a digit in passing moves nothing. */
const settling = 400;

/** A number at the start of a text, with the spaces and the point in it. */
const leadingNumber = /^[−-]?\d(?:[\d.\u202f]*\d)?/;

/**
 * Writes a text that begins with a number into an element of the running text. The number stands in a box as wide as its
 * digits, so that the sentence is laid out anew only when their count grows, or has grown less for a while.
 *
 * @param element what the text is written into; nothing else may write there
 */
export function runningNumber(element: HTMLElement): { show(text: string): void } {
  const number = boxed("running");
  const rest = h("span");
  let width = 0;
  let shrinks: ReturnType<typeof setTimeout> | undefined;
  const take = (next: number): void => {
    width = next;
    setAttribute(number.element, "hidden", next === 0);
    number.element.style.width = `${next}ch`;
  };
  take(0);
  return {
    show: (text) => {
      const [digits = ""] = leadingNumber.exec(text) ?? [];
      if (element.firstChild === null) element.append(number.element, rest);
      number.show(digits);
      setText(rest, text.slice(digits.length));
      const next = widthOf(digits);
      if (shrinks !== undefined) clearTimeout(shrinks);
      shrinks = undefined;
      if (next > width || next === 0) take(next);
      else if (next < width) shrinks = setTimeout(take, settling, next);
    },
  };
}

/** In digits' widths: points and thin spaces are about half as wide, and a minus is wider. */
function widthOf(digits: string): number {
  return [...digits].reduce((sum, sign) => sum + (/[.\u202f]/.test(sign) ? 0.5 : sign === "−" ? 1.35 : 1), 0);
}
