import type { Column, Columns, RowOf, TableInput } from "../../lib/graph";
import { h, runningNumber, setAttribute, setText } from "../dom";
import type { Session } from "../state";
import { entryText, isLong, labelOf, unitOf } from "./tableCell";

type Row = Readonly<Record<string, unknown>>;

/** Columns of a folded row, where its table names none. */
const mostNamed = 6;

/** The columns that a folded row shows: those that tell one row of the table from another. */
export function briefColumns({ columns, brief }: TableInput): readonly (readonly [name: string, column: Column])[] {
  const names = brief ?? Object.keys(columns).slice(0, mostNamed);
  return names.map((name) => [name, columns[name]!]);
}

/**
 * Widths of a folded row's places, alike in every row whatever stands in it, as a grid's template: each as wide as its
 * longest word at least, and wider the more it may hold.
 */
export function briefTemplate(columns: readonly Column[]): string {
  return columns
    .filter((column, i) => !standsBelow(column, i))
    .map((column) => `minmax(${(leastSigns(column) * 0.5).toFixed(2)}rem, ${mostSigns(column)}fr)`)
    .join(" ");
}

/** The names of those columns over the folded rows. */
export function briefHead(input: TableInput, session: Session): { readonly element: HTMLTableRowElement; refresh(): void } {
  const columns = briefColumns(input).map(([, column]) => column);
  const places = columns.map((column, i) => {
    const unit = h("span", { class: "unit" });
    return { column, unit, element: h("th", { scope: "col", "data-type": column.type, "data-below": standsBelow(column, i) }, column.label, " ", unit) };
  });
  return {
    element: h("tr", { class: "brief-head" }, ...places.map(({ element }) => element)),
    refresh: () => {
      for (const { column, unit } of places) setText(unit, unitOf(column, session));
    },
  };
}

/** A folded row: a button with what tells the row from others, which opens the row and folds it again. */
export function briefRow(
  input: TableInput,
  session: Session,
  toggle: () => void,
): { readonly element: HTMLTableCellElement; readonly button: HTMLButtonElement; refresh(row: Row, rows: readonly Row[]): void; show(open: boolean): void } {
  const places = briefColumns(input).map(([name, column], i) => {
    const label = h("span", { class: "aside" });
    const text = h("span");
    const number = column.type === "quantity" ? runningNumber(text) : { show: (words: string) => setText(text, words) };
    return { name, column, label, number, element: h("span", { "data-type": column.type, "data-below": standsBelow(column, i) }, label, text) };
  });
  const button = h("button", { type: "button", class: "fold", onclick: toggle }, ...places.map(({ element }) => element));
  return {
    element: h("td", { class: "brief" }, button),
    button,
    refresh: (row, rows) => {
      for (const { name, column, label, number } of places) {
        setText(label, `${labelOf(column, session)} `);
        number.show(input.unread?.(row as RowOf<Columns>, name, rows as readonly RowOf<Columns>[]) ? "–" : entryText(column, session, row[name]));
      }
    },
    show: (open) => setAttribute(button, "aria-expanded", String(open)),
  };
}

/** A long text that does not name the row stands in a line of its own. */
function standsBelow(column: Column, index: number): boolean {
  return index > 0 && isLong(column);
}

/** Signs for which there is always room. */
const leastOf = { quantity: 5.5, text: 9, choice: 3 } as const;

/** Signs of the longest word that must stand on one line. */
function leastSigns(column: Column): number {
  const texts = column.type === "choice" ? [column.label, ...Object.values(column.options)] : [column.label];
  const longest = Math.max(...texts.flatMap((text) => text.split(" ")).map((word) => word.length));
  return Math.max(leastOf[column.type], longest);
}

/** Signs of the longest text that is usual. */
function mostSigns(column: Column): number {
  if (column.type === "quantity") return 8;
  if (column.type === "text") return Math.min(24, column.longest);
  return Math.max(3, ...Object.values(column.options).map((words) => words.length));
}
