import { radio } from "@observablehq/inputs";
import type { ChoiceInput } from "../../lib/graph";
import { h, setAttribute } from "../dom";
import type { Session } from "../state";

/** Up to this many possibilities stand open beside each other. */
const mostOpen = 3;
const longestOpen = 40;

interface ChoiceControl {
  readonly element: HTMLElement;
  refresh(): void;
}

/** A choice: radio buttons while they are few and short, else a list. */
export function choiceControl(input: ChoiceInput, session: Session): ChoiceControl {
  const words = Object.values<string>(input.options);
  const length = words.reduce((sum, { length }) => sum + length, 0);
  return words.length <= mostOpen && length <= longestOpen ? openChoice(input, session) : listedChoice(input, session);
}

function openChoice(input: ChoiceInput, session: Session): ChoiceControl {
  const value = (): string => session.inputs[input.key] as string;
  const form = radio(Object.keys(input.options), { value: value(), format: (key) => input.options[key]! });
  form.addEventListener("input", () => {
    if (form.value !== null && form.value !== value()) session.set(input.key, form.value);
  });
  setAttribute(form, "data-input", input.key);
  const group = form.firstElementChild!;
  setAttribute(group, "role", "radiogroup");
  setAttribute(group, "aria-label", input.label);
  return {
    element: form,
    refresh: () => {
      if (form.value !== value()) form.value = value();
    },
  };
}

/** A list of our own: that of the Inputs package sets a style attribute, which the content policy forbids. */
function listedChoice(input: ChoiceInput, session: Session): ChoiceControl {
  const options = Object.entries<string>(input.options).map(([key, text]) => h("option", { value: key }, text));
  const list = h(
    "select",
    { "data-input": input.key, "aria-label": input.label, onchange: () => session.set(input.key, list.value) },
    ...options,
  );
  return {
    element: list,
    refresh: () => {
      const value = session.inputs[input.key] as string;
      if (list.value !== value) list.value = value;
    },
  };
}
