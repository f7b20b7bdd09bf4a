import { radio, select } from "@observablehq/inputs";
import type { ChoiceInput } from "../../lib/graph";
import { setAttribute } from "../dom";
import type { Session } from "../state";

/** Up to this many possibilities stand open beside each other. */
const mostOpen = 3;
const longestOpen = 40;

/** A choice: radio buttons while they are few and short, else a list. */
export function choiceControl(input: ChoiceInput, session: Session): { readonly element: HTMLElement; refresh(): void } {
  const keys = Object.keys(input.options);
  const length = keys.reduce((sum, key) => sum + input.options[key]!.length, 0);
  const open = keys.length <= mostOpen && length <= longestOpen;
  const value = (): string => session.inputs[input.key] as string;
  const form = (open ? radio : select)(keys, { value: value(), format: (key) => input.options[key]! });
  form.addEventListener("input", () => {
    if (form.value !== null && form.value !== value()) session.set(input.key, form.value);
  });
  setAttribute(form, "data-input", input.key);
  if (open) {
    const group = form.firstElementChild!;
    setAttribute(group, "role", "radiogroup");
    setAttribute(group, "aria-label", input.label);
  } else {
    setAttribute(form.querySelector("select")!, "aria-label", input.label);
  }
  return {
    element: form,
    refresh: () => {
      if (form.value !== value()) form.value = value();
    },
  };
}
