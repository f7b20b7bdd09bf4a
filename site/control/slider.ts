import type { QuantityInput } from "../../lib/graph";
import { h, setAttribute } from "../dom";
import { openedInputs, type Session, writtenInput } from "../state";
import { keySteps } from "./keys";
import { trackOf } from "./track";

/** The range's own scale; values lie along it by the input's track. */
const fullScale = 10_000;

/** A native slider for an input, with a tick where the build was opened. */
export function slider(input: QuantityInput, session: Session): { readonly element: HTMLElement; refresh(): void } {
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
  const element = h("span", { class: "track" }, range, tick);
  const value = (): number => session.inputs[input.key] as number;
  let held = false;

  const begin = (): void => {
    if (held) return;
    held = true;
    session.begin(input.key);
  };
  const end = (): void => {
    if (!held) return;
    held = false;
    session.end();
    refresh();
  };
  range.addEventListener("pointerdown", begin);
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
    begin();
    session.set(input.key, track.moved(value(), steps));
  });

  const refresh = (): void => {
    const position = track.position(value());
    const opened = track.position(openedInputs(session.state)[input.key] as number);
    // While the hand is on it the thumb stays under the hand.
    if (!(held && range.matches(":active"))) {
      const text = String(Math.round(position * fullScale * 100) / 100);
      if (range.value !== text) range.value = text;
    }
    element.style.setProperty("--at", position.toFixed(4));
    element.style.setProperty("--opened", opened.toFixed(4));
    setAttribute(range, "aria-valuetext", `${writtenInput(session.state.units, input, value()).text}`);
  };
  return { element, refresh };
}
