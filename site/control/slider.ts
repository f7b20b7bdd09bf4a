import type { QuantityInput } from "../../lib/graph";
import { h, setAttribute } from "../dom";
import { openedInputs, writtenInput } from "../state";
import type { Controlled, Zone } from "./controlled";
import { handOn } from "./hand";
import { keySteps } from "./keys";
import { trackOf } from "./track";

/** The range's own scale; values lie along it by the input's track. */
const fullScale = 10_000;

/** A native slider for an input, with a tick where the build was opened, and hatched where lines would have no answer. */
export function slider(input: QuantityInput, { session, locks, zones }: Controlled): { readonly element: HTMLElement; refresh(): void } {
  const track = trackOf(input);
  const range = h("input", {
    type: "range",
    class: "slider",
    min: 0,
    max: fullScale,
    step: "any",
    "aria-label": input.label,
    "data-input": input.key,
  });
  const tick = h("span", { class: "opened-tick", "aria-hidden": "true" });
  const hatches = h("span", { class: "zones", "aria-hidden": "true" });
  const reached = h("span", { class: "reached", "aria-hidden": "true" });
  const element = h("span", { class: "track" }, reached, hatches, range, tick);
  zones.watch(input.key, (found) => {
    hatches.replaceChildren(...found.map(hatch));
    const words = found.map(({ words: each }) => each).join("; ");
    setAttribute(range, "title", words === "" ? undefined : `Hatched: ${words}.`);
    setAttribute(range, "aria-description", words === "" ? undefined : `Towards the hatched end: ${words}.`);
  });
  for (const look of ["pointerenter", "focus"] as const) range.addEventListener(look, () => zones.ask(input.key));
  const value = (): number => session.inputs[input.key] as number;
  const hand = handOn(session, input.key);
  const end = (): void => {
    if (!hand.holds) return;
    hand.leave();
    refresh();
  };
  range.addEventListener("pointerdown", hand.take);
  range.addEventListener("pointerup", end);
  range.addEventListener("pointercancel", end);
  range.addEventListener("change", end);
  range.addEventListener("blur", end);
  range.addEventListener("keyup", end);
  range.addEventListener("input", () => session.set(input.key, track.value(Number(range.value) / fullScale)));
  range.addEventListener("dblclick", () => session.reset(input.key));
  range.addEventListener("keydown", (event) => {
    if (event.key === "Backspace" || event.key === "Delete") return session.reset(input.key);
    const steps = keySteps(event);
    if (steps === undefined) return;
    event.preventDefault();
    hand.take();
    session.set(input.key, track.moved(value(), steps));
  });

  const refresh = (): void => {
    range.disabled = locks.has(input.key);
    const position = track.position(value());
    const opened = track.position(openedInputs(session.state)[input.key] as number);
    // While the hand is on it the thumb stays under the hand.
    if (!(hand.holds && range.matches(":active"))) {
      const text = String(Math.round(position * fullScale * 100) / 100);
      if (range.value !== text) range.value = text;
    }
    reached.style.setProperty("--at", position.toFixed(4));
    tick.style.setProperty("--opened", opened.toFixed(4));
    setAttribute(range, "aria-valuetext", `${writtenInput(session.state.units, input, value()).text}`);
  };
  return { element, refresh };
}

function hatch({ from, to }: Zone): HTMLElement {
  const element = h("span", { class: "zone" });
  element.style.setProperty("--from", from.toFixed(4));
  element.style.setProperty("--to", to.toFixed(4));
  return element;
}
