import type { Cell, Check } from "../../lib/graph";
import { boxed, h, setAttribute, setText } from "../dom";
import { written } from "../state";
import { checkName } from "./check-name";
import type { Desk } from "./desk";
import { limitPlace } from "./limit-place";
import { sameCheck, type Standings } from "./standings";

interface Row {
  readonly element: HTMLElement;
  show(check: Check): void;
}

/** The checks found inside a value with parts, a small line each, in the order in which the cell gives them. */
export function checkLines(desk: Desk, standings: Standings, cell: Cell): { readonly element: HTMLElement; refresh(): void } {
  const element = h("ul", { class: "check-lines", "aria-label": `Limits within ${cell.label}` });
  const rows: Row[] = [];
  const row = (): Row => {
    const name = h("span", { class: "name" });
    const number = boxed("number");
    const unit = h("span", { class: "unit" });
    const bound = boxed("bound");
    const limit = limitPlace();
    return {
      element: h("li", { class: "check-line" }, name, h("span", { class: "value" }, number.element, " ", unit), bound.element, limit.element),
      show: (check) => {
        const { units } = desk.session.state;
        const shown = written(units, check, check.value, { steady: true });
        setText(name, checkName(check));
        number.show(shown.number);
        setText(unit, shown.unit);
        bound.show(`${check.side === "most" ? "≤" : "≥"} ${written(units, check, check.bound).number}`);
        const held = sameCheck(check, standings.held(cell));
        limit.show([check], held ? [held] : [], false);
      },
    };
  };
  return {
    element,
    refresh: () => {
      const inOrder = standings.inOrder(cell);
      while (rows.length > inOrder.length) rows.pop()!.element.remove();
      while (rows.length < inOrder.length) {
        const added = row();
        rows.push(added);
        element.append(added.element);
      }
      for (const [i, check] of inOrder.entries()) rows[i]!.show(check);
      setAttribute(element, "hidden", inOrder.length === 0);
    },
  };
}
