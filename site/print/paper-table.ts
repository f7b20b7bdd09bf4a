import { h } from "../dom";

export interface PaperColumn {
  readonly label: string;
  /** Symbol of its unit; empty for words and bare numbers. */
  readonly unit: string;
  readonly type: "quantity" | "text";
}

/** Most rows that are kept on one page. */
const mostTogether = 8;

/** Most columns that stand side by side on a page. */
const mostColumns = 7;

/** A table on paper; one with more columns than a page is wide for is told row by row. */
export function paperTable(title: string, columns: readonly PaperColumn[], rows: readonly (readonly string[])[]): HTMLElement {
  return columns.length > mostColumns ? records(title, columns, rows) : table(title, columns, rows);
}

function table(title: string, columns: readonly PaperColumn[], rows: readonly (readonly string[])[]): HTMLElement {
  const heading = ({ label, unit, type }: PaperColumn) => h("th", { scope: "col", "data-type": type }, label, " ", h("span", { class: "unit" }, unit));
  return h(
    "table",
    { class: rows.length > mostTogether ? "paper-table" : "paper-table is-short" },
    h("caption", {}, title),
    h("thead", {}, h("tr", {}, ...columns.map(heading))),
    h("tbody", {}, ...rows.map((row) => h("tr", {}, ...row.map((entry, i) => h("td", { "data-type": columns[i]!.type }, entry))))),
  );
}

function records(title: string, columns: readonly PaperColumn[], rows: readonly (readonly string[])[]): HTMLElement {
  const entryOf = (entry: string, i: number) => {
    const { label, unit } = columns[i]!;
    return h("span", { class: "paper-entry" }, `${label} `, h("strong", {}, unit === "" ? entry : `${entry} ${unit}`));
  };
  const recordOf = (row: readonly string[]) =>
    h("li", {}, ...row.flatMap((entry, i) => (entry === "" ? [] : i === 0 ? [entryOf(entry, i)] : [" · ", entryOf(entry, i)])));
  return h("div", { class: "paper-records" }, h("p", { class: "paper-caption" }, title), h("ol", {}, ...rows.map(recordOf)));
}
