import { h } from "../dom";

interface RadioGroup {
  readonly legend: string;
  readonly name: string;
  readonly options: Readonly<Record<string, string>>;
  readonly onchange: (key: string) => void;
}

/** A few possibilities beside each other, one of them chosen. */
export function radioGroup({ legend, name, options, onchange }: RadioGroup): { readonly element: HTMLElement; show(key: string): void } {
  const radios = new Map(
    Object.keys(options).map((key) => [key, h("input", { type: "radio", name, value: key, onchange: () => onchange(key) })]),
  );
  const element = h(
    "fieldset",
    { class: "radio-group" },
    h("legend", { class: "aside" }, legend),
    ...[...radios].map(([key, radio]) => h("label", {}, radio, h("span", {}, options[key]!))),
  );
  return {
    element,
    show: (key) => {
      const radio = radios.get(key);
      if (radio && !radio.checked) radio.checked = true;
    },
  };
}
