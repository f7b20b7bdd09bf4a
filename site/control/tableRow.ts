import type { TableInput } from "../../lib/graph";
import { h, setAttribute, setText } from "../dom";
import type { Controlled } from "./controlled";
import { briefRow } from "./tableBrief";
import { type CellControl, cellControl, isLong, isWide, labelOf } from "./tableCell";

type Row = Readonly<Record<string, unknown>>;

/** A row of a table with its controls. */
export interface RowView {
  readonly element: HTMLTableRowElement;
  readonly isOpen: boolean;
  /** Opens or folds it; that shows only where rows are folded. */
  open(open: boolean): void;
  /** Gives its first field the focus. */
  enter(): void;
  refresh(row: Row, index: number, rows: readonly Row[]): void;
}

/** What a row asks of its table. */
export interface RowHolder {
  /** Its fields are made when it is first opened. */
  readonly late: boolean;
  change(index: number, name: string, value: unknown): void;
  move(index: number, by: number): void;
  take(index: number): void;
  opened(): void;
  say(words: string): void;
}

export function rowView(input: TableInput, controlled: Controlled, holder: RowHolder): RowView {
  const { session } = controlled;
  const columns = Object.entries(input.columns);
  let at = 0;
  let latest: Row | undefined;
  let isOpen = false;
  let fields: readonly CellControl[] = [];
  let places: readonly HTMLTableCellElement[] = [];

  const brief = briefRow(input, session, () => {
    open(!isOpen);
    holder.opened();
  });
  const up = h("button", { type: "button", class: "quiet up", onclick: () => holder.move(at, -1) }, "↑");
  const down = h("button", { type: "button", class: "quiet down", onclick: () => holder.move(at, 1) }, "↓");
  const remove = h("button", { type: "button", class: "quiet take", onclick: () => holder.take(at) }, "×");
  const ordinal = h("th", { scope: "row", class: "ordinal" });
  const order = h("td", { class: "order" }, up, down, remove);
  const element = h("tr", {}, ordinal, brief.element, order);

  const furnish = (): void => {
    fields = columns.map(([name, column]) => cellControl(column, controlled, holder.say, (value) => holder.change(at, name, value)));
    places = fields.map(({ element: field }, i) => {
      const column = columns[i]![1];
      return h("td", { "data-type": column.type, "data-wide": isWide(column), "data-long": isLong(column), ...(column.note && { title: column.note }) }, field);
    });
    order.before(...places);
    fill();
  };
  const fill = (): void => {
    if (latest === undefined) return;
    for (const [i, place] of places.entries()) setAttribute(place, "data-label", labelOf(columns[i]![1], session));
    for (const [i, field] of fields.entries()) field.show(latest[columns[i]![0]], `${columns[i]![1].label}, row ${at + 1}`);
  };
  const open = (next: boolean): void => {
    isOpen = next;
    if (isOpen && fields.length === 0) furnish();
    setAttribute(element, "data-open", isOpen);
    brief.show(isOpen);
  };

  if (!holder.late) furnish();
  open(false);
  return {
    element,
    get isOpen() {
      return isOpen;
    },
    open,
    enter: () => places[0]?.querySelector<HTMLElement>("input, select, textarea")?.focus(),
    refresh: (row, index, rows) => {
      at = index;
      latest = row;
      setText(ordinal, String(index + 1));
      brief.refresh(row, rows);
      fill();
      setAttribute(up, "disabled", index === 0);
      setAttribute(down, "disabled", index === rows.length - 1);
      setAttribute(remove, "disabled", rows.length <= input.rows[0]);
      setAttribute(up, "aria-label", `Move row ${index + 1} up`);
      setAttribute(down, "aria-label", `Move row ${index + 1} down`);
      setAttribute(remove, "aria-label", `Take row ${index + 1} away`);
    },
  };
}
