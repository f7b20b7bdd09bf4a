import type { Standing } from "../../lib/graph";
import { h, runningNumber, setAttribute, setText } from "../dom";

const shapes: Readonly<Record<Standing, string>> = { inside: "", near: "◪", past: "■" };

/** A limit this close is told to a tenth of a per cent [%]. */
const closely = 5;

/** Room left, in words: "12 % left", "3.3 % past"; with a decimal where a limit is close. */
export function marginWords(margin: number): string {
  if (margin === Number.POSITIVE_INFINITY) return "room left";
  if (margin === Number.NEGATIVE_INFINITY) return "past";
  const share = Math.abs(margin) * 100;
  const figure = share >= closely ? share.toFixed(0) : share.toFixed(1);
  return `${figure} % ${margin < 0 ? "past" : "left"}`;
}

/** Room left, and what it was where its class has changed: "3.1 % past, was 4.0 % left". */
export function classWords(now: Stood, before: Stood | undefined): string {
  const changed = before !== undefined && before.standing !== now.standing;
  return changed ? `${marginWords(now.margin)}, was ${marginWords(before.margin)}` : marginWords(now.margin);
}

interface Stood {
  readonly margin: number;
  readonly standing: Standing;
}

/** The mark of a class, never by colour alone: shape and word. */
export function standingShape(standing: Standing): string {
  return shapes[standing];
}

export interface StandingMark {
  readonly element: HTMLElement;
  show(standing: Standing, words: string): void;
}

/** Shape and words of a margin. */
export function standingMark(): StandingMark {
  const shape = h("span", { class: "shape", "aria-hidden": "true" });
  const words = h("span", { class: "words" });
  const text = runningNumber(words);
  const element = h("span", { class: "standing" }, shape, words);
  return {
    element,
    show: (standing, margin) => {
      setAttribute(element, "data-standing", standing);
      setText(shape, shapes[standing]);
      text.show(margin);
    },
  };
}
