import type { Leaf } from "../../worksheets/board";
import { h } from "../dom";

/** Which of several belts is worked on: a few possibilities beside each other, unseen where there is but one. */
export function createLeaves(name: string, choose: (key: string) => void) {
  const legend = h("legend", { class: "aside" }, "Worked on");
  const element = h("fieldset", { class: "radio-group leaves" }, legend);
  let told = "";

  const show = (leaves: readonly Leaf[], chosen: string): void => {
    const now = JSON.stringify(leaves);
    if (now !== told) {
      told = now;
      const labels = leaves.map(({ key, label }) => {
        const radio = h("input", { type: "radio", name: `leaf-${name}`, value: key, onchange: () => choose(key) });
        return h("label", {}, radio, h("span", {}, label));
      });
      element.replaceChildren(legend, ...labels);
      element.hidden = leaves.length < 2;
    }
    for (const radio of element.querySelectorAll("input")) if (radio.value === chosen && !radio.checked) radio.checked = true;
  };
  return { element, show };
}
