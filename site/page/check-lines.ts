import type { Cell, Check } from "../../lib/graph";
import { boxed, h, setAttribute, setChildren, setText } from "../dom";
import { written } from "../state";
import { checkName } from "./check-name";
import { contained } from "./crash";
import type { Desk } from "./desk";
import { limitPlace } from "./limit-place";
import type { Gathering } from "./parts";
import { sameCheck, type Standings } from "./standings";

interface Row {
  readonly element: HTMLElement;
  show(check: Check): void;
}

/**
 * The checks found inside a value with parts, a small line each, in the order in which the cell gives them.
 *
 * @param watches keys of the nodes whose change they show
 * @param gathering of what stands around them
 */
export function checkLines(
  desk: Desk,
  standings: Standings,
  cell: Cell,
  watches: readonly string[],
  gathering: Gathering,
): { readonly element: HTMLElement; refresh(): void } {
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
  /** A line is a part of its own, so that it follows a moving hand alone. */
  const addRow = (index: number): void => {
    const added = row();
    const refresh = (): void => {
      const check = standings.inOrder(cell)[index];
      if (check) added.show(check);
    };
    rows.push(added);
    gathering.add({ element: added.element, watches, refresh: contained(`The limits within "${cell.label}"`, element, refresh) });
    refresh();
  };
  return {
    element,
    refresh: () => {
      const { length } = standings.inOrder(cell);
      while (rows.length < length) addRow(rows.length);
      setChildren(element, rows.slice(0, length).map((each) => each.element));
      setAttribute(element, "hidden", length === 0);
    },
  };
}
