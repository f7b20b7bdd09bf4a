import type { QuantityInput } from "../../lib/graph";
import { h, setAttribute, setText } from "../dom";
import { writtenInput } from "../state";
import type { Controlled } from "./controlled";
import { entry, refusedWords } from "./entry";
import { handOn } from "./hand";
import { keySteps } from "./keys";
import { trackOf } from "./track";

/** A number of more characters than this wants more room than its column has. */
const column = 7;

export interface QuantityField {
  readonly field: HTMLInputElement;
  readonly unit: HTMLElement;
  /** What is wrong with the text typed, or how it was read. */
  readonly remark: HTMLElement;
  refresh(): void;
}

/**
 * A text field for an input. It takes any unit of the kind and commits on Enter or when left; Escape gives the old text
 * back. A text that cannot be read stays in the field, with words beneath; the old value stays in force.
 */
export function quantityField(input: QuantityInput, { session, locks, ambient }: Controlled): QuantityField {
  const track = trackOf(input);
  const remarkId = `remark-${input.key}`;
  const remark = h("p", { class: "remark", id: remarkId, role: "status", hidden: true });
  const unit = h("span", { class: "unit", "aria-hidden": "true" });
  const field = h("input", {
    type: "text",
    class: "field number",
    id: `field-${input.key}`,
    inputmode: "decimal",
    autocomplete: "off",
    spellcheck: "false",
    "data-input": input.key,
    "aria-describedby": remarkId,
  });
  const hand = handOn(session, input.key);
  const read = () => entry(input, input.key, field.value, session.state.units, ambient());
  let dirty = false;

  const value = (): number => session.inputs[input.key] as number;
  const say = (words: string, preview = false): void => {
    setText(remark, words);
    setAttribute(remark, "data-preview", preview);
    remark.hidden = words === "";
  };
  const calm = (): void => {
    dirty = false;
    setAttribute(field, "data-typing", undefined);
    say("");
    setAttribute(field, "aria-invalid", undefined);
    refresh();
  };
  const commit = (): void => {
    if (!dirty) return;
    const typed = read();
    if (!typed.ok) {
      setAttribute(field, "aria-invalid", "true");
      say(refusedWords(typed.message, writtenInput(session.state.units, input, value()).text));
      return;
    }
    calm();
    session.set(input.key, typed.value);
    refresh();
  };

  field.addEventListener("input", () => {
    dirty = true;
    setAttribute(field, "aria-invalid", undefined);
    const typed = read();
    const plain = /^[\d\s.,+\-−\u202f]*$/.test(field.value);
    setAttribute(field, "data-typing", plain ? "number" : "words");
    say(typed.ok && !plain ? `= ${typed.readAs}` : "", true);
  });
  field.addEventListener("focus", () => field.select());
  field.addEventListener("blur", () => {
    hand.leave();
    commit();
  });
  field.addEventListener("keyup", hand.leave);
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter") {
      commit();
      if (!dirty) field.select();
    } else if (event.key === "Escape" && dirty) {
      event.stopPropagation();
      calm();
      field.select();
    } else if (!dirty && (event.key === "ArrowUp" || event.key === "ArrowDown")) {
      event.preventDefault();
      if (locks.has(input.key)) return;
      hand.take();
      session.set(input.key, track.moved(value(), keySteps(event)!));
    }
  });

  const refresh = (): void => {
    const shown = writtenInput(session.state.units, input, value());
    setText(unit, shown.unit);
    setAttribute(field, "aria-label", `${input.label}${shown.unit && `, ${shown.unit}`}`);
    field.readOnly = locks.has(input.key);
    if (!dirty && field.value !== shown.number) {
      field.value = shown.number;
      setAttribute(field, "data-long", shown.number.length > column);
    }
  };
  return { field, unit, remark, refresh };
}
