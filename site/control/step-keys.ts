import type { QuantityInput } from "../../lib/graph";
import { h } from "../dom";
import type { Controlled } from "./controlled";
import { handOn } from "./hand";
import { trackOf } from "./track";

/** A key held this long repeats, and then so often, in milliseconds. */
const untilRepeat = 400;
const everyRepeat = 70;

/** Two large keys beside a slider, for fingers: one step a press, and more while they are held. */
export function stepKeys(input: QuantityInput, { session, locks }: Controlled): { readonly element: HTMLElement; refresh(): void } {
  const track = trackOf(input);
  const hand = handOn(session, input.key);
  let timer: number | undefined;

  const move = (by: number): void => session.set(input.key, track.moved(session.inputs[input.key] as number, by));
  const release = (): void => {
    window.clearTimeout(timer);
    timer = undefined;
    hand.leave();
  };
  const key = (by: number, sign: string, words: string): HTMLButtonElement => {
    let pressed = false;
    const repeat = (): void => {
      move(by);
      timer = window.setTimeout(repeat, everyRepeat);
    };
    const button = h("button", { type: "button", class: "step-key", "aria-label": `${input.label}: ${words}` }, sign);
    button.addEventListener("pointerdown", (event) => {
      if (event.button !== 0 || button.disabled) return;
      pressed = true;
      hand.take();
      move(by);
      timer = window.setTimeout(repeat, untilRepeat);
    });
    for (const end of ["pointerup", "pointercancel", "pointerleave"] as const) button.addEventListener(end, release);
    // A press of a key or of a reader's own device comes as a bare click.
    button.addEventListener("click", () => {
      if (!pressed) move(by);
      pressed = false;
    });
    button.addEventListener("contextmenu", (event) => event.preventDefault());
    return button;
  };
  const less = key(-1, "−", "one step less");
  const more = key(1, "+", "one step more");
  return {
    element: h("span", { class: "step-keys" }, less, more),
    refresh: () => {
      const value = session.inputs[input.key] as number;
      const locked = locks.has(input.key);
      less.disabled = locked || value <= input.span[0];
      more.disabled = locked || value >= input.span[1];
      if (timer !== undefined && (less.disabled || more.disabled)) release();
    },
  };
}
