import { figures } from "../../worksheets/drawing";
import type { FigureTable } from "../../worksheets/sheet";
import { h } from "../dom";

/** Digits of the numbers; the file that can be saved has more. */
const digits = 6;

/** A figure's numbers as a table of the page, for those who read them rather than see them. */
export function numbersTable(title: string, { columns, rows }: FigureTable): HTMLTableElement {
  const typeOf = (i: number) => (rows.some((row) => typeof row[i] === "number") ? "number" : "words");
  const headings = columns.map((column, i) => {
    const [label, unit] = typeof column === "string" ? [column, ""] : column;
    return h("th", { scope: "col", "data-type": typeOf(i) }, label, unit !== "" && " ", unit !== "" && h("span", { class: "unit" }, unit));
  });
  return h(
    "table",
    { class: "figures" },
    h("caption", { class: "aside" }, `${title}: numbers`),
    h("thead", {}, h("tr", {}, ...headings)),
    h(
      "tbody",
      {},
      ...rows.map((row) =>
        h(
          "tr",
          {},
          ...row.map((entry, i) =>
            i === 0
              ? h("th", { scope: "row" }, String(entry))
              : h("td", { "data-type": typeOf(i) }, typeof entry === "number" ? figures(entry, digits) : entry),
          ),
        ),
      ),
    ),
  );
}
