import { h, setText, symbol } from "../dom";
import type { Named } from "../trace";

/** What symbols of a formula stand for that no line bears: sign, value and words. */
export function withinTable(): { readonly element: HTMLElement; show(named: readonly Named[]): void } {
  const body = h("tbody");
  const element = h("table", { class: "where", hidden: true }, h("caption", {}, "within"), body);
  let told = "";
  let values: readonly HTMLElement[] = [];
  return {
    element,
    show: (named) => {
      const signs = named.map(({ symbol: tex, label }) => `${tex} ${label}`).join("\n");
      if (signs !== told) {
        told = signs;
        element.hidden = named.length === 0;
        values = named.map(() => h("td", { class: "where-value" }));
        body.replaceChildren(...named.map(({ symbol: tex, label }, i) => h("tr", {}, h("td", {}, symbol(tex)), values[i]!, h("th", { scope: "row" }, label))));
      }
      for (const [i, { value }] of named.entries()) setText(values[i]!, value ?? "–");
    },
  };
}
