import type { ChoiceInput, Input, QuantityInput, TableInput } from "../../lib/graph";
import { choiceControl, lockKey, quantityField, slider, stepKeys, tableControl } from "../control";
import { h, setAttribute, symbol } from "../dom";
import { openedInputs, writtenInput } from "../state";
import type { Desk, Part } from "./desk";
import { ownMark } from "./own-mark";
import { traceToggle } from "./toggle";
import type { Traces } from "./traces";

/** An input on its ruled line: name, symbol, field, slider, and whether it was changed. */
export function inputLine(desk: Desk, traces: Traces, input: Input, id: string): Part {
  switch (input.type) {
    case "quantity":
      return quantityLine(desk, traces, input, id);
    case "choice":
      return chosenLine(desk, traces, input, id, choiceControl(input, desk.session));
    case "table":
      return chosenLine(desk, traces, input, id, tableControl(input, desk));
  }
}

function quantityLine(desk: Desk, traces: Traces, input: QuantityInput, id: string): Part {
  const toggle = traceToggle(traces, input, id);
  const typed = quantityField(input, desk);
  const drawn = slider(input, desk);
  const steps = stepKeys(input, desk);
  const lock = lockKey(input, desk);
  const reset = resetButton(desk, input);
  const own = ownMark(desk, input);
  const element = h(
    "div",
    { class: "line of-input", id, "data-key": input.key },
    toggle.button,
    h("label", { class: "name", for: typed.field.id }, input.label),
    input.symbol ? symbol(input.symbol) : h("span", { class: "symbol" }),
    h("span", { class: "value" }, h("span", { class: "field-place" }, typed.field), " ", typed.unit),
    h("span", { class: "control" }, drawn.element, steps.element, lock.element, reset.element, own.element),
    typed.remark,
    toggle.body,
  );
  const refresh = (): void => {
    for (const part of [typed, drawn, steps, lock, reset, own]) part.refresh();
    setAttribute(element, "data-locked", desk.locks.has(input.key));
  };
  return { element, watches: [input.key], refresh };
}

function chosenLine(
  desk: Desk,
  traces: Traces,
  input: ChoiceInput | TableInput,
  id: string,
  control: { readonly element: HTMLElement; refresh(): void },
): Part {
  const toggle = traceToggle(traces, input, id);
  const reset = resetButton(desk, input);
  const own = ownMark(desk, input);
  const element = h(
    "div",
    { class: `line of-${input.type}`, id, "data-key": input.key },
    toggle.button,
    h("span", { class: "name" }, input.label),
    ...(input.type === "choice"
      ? [h("span", { class: "control" }, control.element, reset.element, own.element)]
      : [h("span", { class: "control" }, reset.element, own.element), control.element]),
    toggle.body,
  );
  const refresh = (): void => {
    for (const part of [control, reset, own]) part.refresh();
  };
  return { element, watches: [input.key], refresh };
}

/** Appears where a value differs from the build as it was opened; puts it back. */
function resetButton(desk: Desk, input: Input): { readonly element: HTMLElement; refresh(): void } {
  const { session } = desk;
  const element = h("button", { type: "button", class: "reset", onclick: () => session.reset(input.key) }, "•");
  return {
    element,
    refresh: () => {
      const opened = openedInputs(session.state)[input.key];
      const changed = !Object.is(opened, session.inputs[input.key]);
      element.classList.toggle("changed", changed);
      element.disabled = !changed;
      if (!changed) return;
      const words = `${input.label}: changed. Press to go back to ${openedWords(desk, input, opened)}.`;
      setAttribute(element, "title", words);
      setAttribute(element, "aria-label", words);
    },
  };
}

function openedWords(desk: Desk, input: Input, value: unknown): string {
  if (input.type === "quantity") return writtenInput(desk.session.state.units, input, value as number).text;
  return input.type === "choice" ? (input.options[value as string] ?? "the first") : "the rows it was opened with";
}
