import type { QuantityInput } from "../../lib/graph";
import { h, runningNumber, setAttribute, setText } from "../dom";
import { writtenInput } from "../state";
import type { Controlled } from "./controlled";
import { entry, refusedWords } from "./entry";
import { keySteps } from "./keys";
import { trackOf } from "./track";

/** Pixels of dragging from one end of the span to the other. */
const fullDrag = 480;
/** Movement below which a press is a press. */
const slop = 3;

/** A number in a sentence that can be dragged sideways, stepped by keys, or typed after Enter. */
export function handle(input: QuantityInput, { session, locks, ambient }: Controlled): { readonly element: HTMLElement; refresh(): void } {
  const track = trackOf(input);
  const grip = h("span", {
    class: "handle",
    role: "slider",
    tabindex: 0,
    "aria-label": input.label,
    "data-input": input.key,
    title: `${input.label}: drag, arrow keys, or Enter to type; t for its trace`,
  });
  const text = runningNumber(grip);
  const element = h("span", { class: "handle-place" }, grip);
  const value = (): number => session.inputs[input.key] as number;
  let from: { readonly x: number; readonly position: number; moved: boolean } | undefined;
  let stepping = false;

  const endSteps = (): void => {
    if (!stepping) return;
    stepping = false;
    session.end();
  };
  const release = (): void => {
    if (!from) return;
    const { moved } = from;
    from = undefined;
    grip.classList.remove("held");
    session.end();
    if (!moved) type();
  };

  grip.addEventListener("pointerdown", (event) => {
    if (event.button !== 0 || locks.has(input.key)) return;
    grip.setPointerCapture(event.pointerId);
    from = { x: event.clientX, position: track.position(value()), moved: false };
    grip.classList.add("held");
    session.begin(input.key);
  });
  grip.addEventListener("pointermove", (event) => {
    if (!from) return;
    const distance = event.clientX - from.x;
    if (!from.moved && Math.abs(distance) < slop) return;
    from.moved = true;
    session.set(input.key, track.value(Math.max(0, from.position + distance / fullDrag)));
  });
  grip.addEventListener("pointerup", release);
  grip.addEventListener("pointercancel", release);
  grip.addEventListener("blur", endSteps);
  grip.addEventListener("keyup", endSteps);
  grip.addEventListener("keydown", (event) => {
    if (locks.has(input.key)) return;
    if (event.key === "Enter") {
      event.preventDefault();
      return type();
    }
    if (event.key === "Backspace") return session.reset(input.key);
    const steps = keySteps(event);
    if (steps === undefined) return;
    event.preventDefault();
    if (!stepping) session.begin(input.key);
    stepping = true;
    session.set(input.key, track.moved(value(), steps));
  });

  const type = (): void => {
    endSteps();
    const shown = writtenInput(session.state.units, input, value());
    const remark = h("span", { class: "handle-remark", role: "status" });
    const field = h("input", { type: "text", class: "handle-field", inputmode: "decimal", "aria-label": input.label, autocomplete: "off" });
    field.value = shown.text;
    field.size = Math.max(6, shown.text.length + 1);
    let open = true;
    const close = (refocus: boolean): void => {
      open = false;
      element.replaceChildren(grip);
      refresh();
      if (refocus) grip.focus();
    };
    const commit = (refocus: boolean): void => {
      if (!open) return;
      const typed = entry(input, input.key, field.value, session.state.units, ambient());
      if (!typed.ok) {
        setAttribute(remark, "data-preview", undefined);
        setText(remark, refusedWords(typed.message, shown.text));
        setAttribute(field, "aria-invalid", "true");
        return;
      }
      close(refocus);
      session.set(input.key, typed.value);
    };
    field.addEventListener("keydown", (event) => {
      if (event.key === "Enter") commit(true);
      if (event.key === "Escape") close(true);
      event.stopPropagation();
    });
    field.addEventListener("input", () => {
      setAttribute(field, "aria-invalid", undefined);
      const typed = entry(input, input.key, field.value, session.state.units, ambient());
      setAttribute(remark, "data-preview", true);
      setText(remark, typed.ok && typed.readAs !== field.value.trim() ? `= ${typed.readAs}` : "");
    });
    field.addEventListener("blur", () => {
      if (open && field.getAttribute("aria-invalid")) close(false);
      else commit(false);
    });
    element.replaceChildren(field, remark);
    field.focus();
    field.select();
  };

  const refresh = (): void => {
    const { units } = session.state;
    const [lowest, highest] = input.span;
    const shown = writtenInput(units, input, value());
    text.show(shown.text);
    setAttribute(grip, "aria-valuemin", lowest);
    setAttribute(grip, "aria-valuemax", highest);
    setAttribute(grip, "aria-valuenow", value());
    setAttribute(grip, "aria-disabled", locks.has(input.key) ? "true" : undefined);
    setAttribute(grip, "aria-valuetext", shown.text);
  };
  return { element, refresh };
}
