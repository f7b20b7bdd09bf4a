import { type Cell, type Evaluation, isRefusal } from "../../lib/graph";
import type { Sheet } from "../../worksheets/sheet";
import { h, symbol } from "../dom";
import type { Desk } from "../page/desk";
import { typeset } from "../page/math";
import { type Measured, written } from "../state";
import { explanationOf, filledIn, type Symbols, symbolsOf, texQuantity } from "../trace";
import { mathLength } from "./math-length";

/** The appendix: for every result of some sheets its formula, the values put in, and where the formula comes from. */
export function tracePages(desk: Desk, evaluation: Evaluation, sheets: readonly Sheet[]): HTMLElement {
  const symbols = symbolsOf(desk.graph);
  const sections = sheets.map((sheet) => {
    const cells = desk.graph.cells.filter(({ key }) => desk.places.get(key)?.sheet === sheet);
    const letter = desk.places.get(cells[0]?.key ?? "")?.letter ?? "";
    return cells.length === 0 ? [] : [h("h3", {}, h("span", { class: "letter" }, letter), " ", sheet.title), ...cells.map((cell) => trace(desk, evaluation, symbols, cell))];
  });
  return h(
    "section",
    { class: "paper-sheet paper-traces" },
    h("header", {}, h("h2", {}, "Workings"), h("p", { class: "answers" }, "Where every result comes from. Temperatures in formulas count from absolute zero.")),
    ...sections.flat(),
  );
}

function trace(desk: Desk, evaluation: Evaluation, symbols: Symbols, cell: Cell): HTMLElement {
  const { units } = desk.session.state;
  const value = evaluation.get(cell);
  const known = cell.kind !== undefined && !isRefusal(value) && typeof value === "number";
  const filled = filledIn(cell, symbols, evaluation, units);
  const left = cell.symbol ?? "";
  const result = known ? `= ${texQuantity(written(units, cell as Measured, value as number))}` : "";
  const formula = h("div", { class: "formula" });
  const { formula: declared, source } = explanationOf(cell);
  fitted(formula, declared);
  const substituted = h("div", { class: "formula" });
  // The result stands on the filled-in line where that line gives it, and with its symbol elsewhere.
  const explicit = filled !== undefined && (filled.left === "" || filled.left.replace(/[{}\s]/g, "") === left.replace(/[{}\s]/g, ""));
  if (explicit) fitted(substituted, `= ${filled.right} ${result}`);
  else if (filled) fitted(substituted, `${filled.left} = ${filled.right}`);
  const apart = h("div", { class: "formula" });
  if (known && !explicit) fitted(apart, `${left} ${result}`);
  const within = (filled?.named ?? []).flatMap(({ symbol: tex, label, value: amount }, i) => [i === 0 ? "" : "; ", symbol(tex), ` ${label}${amount === undefined ? "" : `, ${amount}`}`]);
  return h(
    "div",
    { class: "paper-trace" },
    h("p", { class: "name" }, cell.label),
    formula,
    substituted,
    apart,
    within.length > 0 && h("p", { class: "paper-source" }, ...within),
    h("p", { class: "paper-source" }, source),
  );
}

/** Type size of formulas, widest line that fits at that size in letters, the smallest size, and that of formulas in several lines [pt]. */
const [usual, letters, smallest, inLines] = [11, 58, 8, 9.5];

/** Sets a formula in type small enough for the column, or in several lines: paper has no scroll bar. */
function fitted(place: HTMLElement, tex: string): void {
  typeset(place, tex);
  const length = mathLength(place);
  if (length <= letters) return;
  const size = (usual * letters) / length;
  place.style.fontSize = `${(size < smallest ? inLines : size).toFixed(1)}pt`;
  if (size >= smallest) return;
  typeset(place, tex, true);
  place.classList.add("in-lines");
}
