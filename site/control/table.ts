import type { Column, TableInput } from "../../lib/graph";
import { h, setAttribute, setText } from "../dom";
import { type Session, unitSymbol, writtenInput } from "../state";
import type { Controlled } from "./controlled";
import { type Pressure, unitNamed } from "../../lib/quantity";
import { entry, refusedWords } from "./entry";
import { tableFile } from "./tableFile";

type Row = Readonly<Record<string, unknown>>;

interface RowView {
  readonly element: HTMLTableRowElement;
  refresh(row: Row, index: number, count: number): void;
}

/** More columns than this stand in several rows under their names. */
const mostAcross = 6;

/** An editor for a list of like things: a table with a control in every place, and rows that can be added, taken away and moved. */
export function tableControl(input: TableInput, controlled: Controlled): { readonly element: HTMLElement; refresh(): void } {
  const { session } = controlled;
  const columns = Object.entries(input.columns);
  const [fewest, most] = input.rows;
  const rows = (): readonly Row[] => session.inputs[input.key] as readonly Row[];
  const put = (next: readonly Row[]): void => session.set(input.key, next);
  const views: RowView[] = [];

  const body = h("tbody");
  const headings = columns.map(([name, column]) => ({ name, column, unit: h("span", { class: "unit" }) }));
  const remark = h("p", { class: "remark", role: "status", hidden: true });
  const say = (words: string): void => {
    setText(remark, words);
    remark.hidden = words === "";
  };
  const add = h("button", { type: "button", class: "quiet", onclick: () => put([...rows(), rows().at(-1) ?? input.value[0]!]) }, "Add a row");
  const fromFile = tableFile(input, { system: () => session.state.units.system, put, say });
  const table = h(
    "table",
    { class: "entries" },
    h("caption", { class: "aside" }, input.label),
    h(
      "thead",
      {},
      h(
        "tr",
        {},
        h("th", { scope: "col", class: "ordinal" }, h("span", { class: "aside" }, "Row")),
        ...headings.map(({ column, unit }) =>
          h("th", { scope: "col", "data-type": column.type, ...(column.note && { title: column.note }) }, column.label, " ", unit),
        ),
        h("th", { scope: "col" }, h("span", { class: "aside" }, "Order")),
      ),
    ),
    body,
  );
  const element = h(
    "div",
    { class: "table-input", "data-many": columns.length > mostAcross, "data-input": input.key, role: "group", "aria-label": input.label },
    h("div", { class: "wide" }, table),
    remark,
    h("p", { class: "table-foot" }, add, ...fromFile),
  );

  const rowView = (): RowView => {
    let at = 0;
    const change = (name: string, value: unknown): void => put(rows().map((row, i) => (i === at ? { ...row, [name]: value } : row)));
    const cells = columns.map(([name, column]) => cellControl(column, controlled, say, (value) => change(name, value)));
    const move = (by: number): void => {
      const next = [...rows()];
      const [taken] = next.splice(at, 1);
      next.splice(at + by, 0, taken!);
      put(next);
      views[at + by]?.element.querySelector<HTMLElement>(by < 0 ? ".up" : ".down")?.focus();
    };
    const take = (): void => {
      put(rows().filter((_, i) => i !== at));
      (views[Math.min(at, views.length - 1)]?.element.querySelector<HTMLElement>(".take") ?? add).focus();
    };
    const up = h("button", { type: "button", class: "quiet up", onclick: () => move(-1) }, "↑");
    const down = h("button", { type: "button", class: "quiet down", onclick: () => move(1) }, "↓");
    const remove = h("button", { type: "button", class: "quiet take", onclick: take }, "×");
    const ordinal = h("th", { scope: "row", class: "ordinal" });
    const places = cells.map(({ element: control }, i) => h("td", { "data-type": columns[i]![1].type }, control));
    return {
      element: h(
        "tr",
        {},
        ordinal,
        ...places,
        h("td", { class: "order" }, up, down, remove),
      ),
      refresh: (row, index, count) => {
        at = index;
        setText(ordinal, String(index + 1));
        for (const [i, place] of places.entries()) setAttribute(place, "data-label", labelOf(columns[i]![1], session));
        for (const [i, [name, column]] of columns.entries()) cells[i]!.show(row[name], `${column.label}, row ${index + 1}`);
        setAttribute(up, "disabled", index === 0);
        setAttribute(down, "disabled", index === count - 1);
        setAttribute(remove, "disabled", count <= fewest);
        setAttribute(up, "aria-label", `Move row ${index + 1} up`);
        setAttribute(down, "aria-label", `Move row ${index + 1} down`);
        setAttribute(remove, "aria-label", `Take row ${index + 1} away`);
      },
    };
  };

  const refresh = (): void => {
    const now = rows();
    while (views.length > now.length) views.pop()!.element.remove();
    while (views.length < now.length) {
      const view = rowView();
      views.push(view);
      body.append(view.element);
    }
    for (const [i, row] of now.entries()) views[i]!.refresh(row, i, now.length);
    for (const { column, unit } of headings) {
      if (column.type === "quantity") setText(unit, unitNamed(column.kind, unitSymbol(session.state.units, column)).written);
    }
    setAttribute(add, "disabled", now.length >= most);
  };
  return { element, refresh };
}

/** A column's name with the unit shown. */
function labelOf(column: Column, session: Session): string {
  if (column.type !== "quantity") return column.label;
  const unit = unitNamed(column.kind, unitSymbol(session.state.units, column)).written;
  return unit === "" ? column.label : `${column.label}, ${unit}`;
}

interface CellControl {
  readonly element: HTMLElement;
  show(value: unknown, label: string): void;
}

function cellControl(column: Column, { session, ambient }: Controlled, say: (words: string) => void, put: (value: unknown) => void): CellControl {
  if (column.type === "choice") {
    const options = Object.entries(column.options).map(([key, words]) => h("option", { value: key }, words));
    const list = h("select", { onchange: () => put(list.value) }, ...options);
    return {
      element: list,
      show: (value, label) => {
        if (list.value !== value) list.value = value as string;
        setAttribute(list, "aria-label", label);
      },
    };
  }
  const quantity = column.type === "quantity";
  const field = h("input", {
    type: "text",
    class: quantity ? "field number" : "field",
    autocomplete: "off",
    spellcheck: "false",
    ...(quantity ? { inputmode: "decimal" } : { maxlength: column.longest }),
  });
  let dirty = false;
  let latest: unknown;
  let name = "";
  const shown = (): string => (quantity ? writtenInput(session.state.units, column, latest as number).number : (latest as string));
  const restore = (): void => {
    dirty = false;
    setAttribute(field, "data-typing", undefined);
    setAttribute(field, "aria-invalid", undefined);
    if (field.value !== shown()) field.value = shown();
  };
  const commit = (): void => {
    if (!dirty) return;
    const typed = read(column, field.value, session, ambient());
    if (!typed.ok) {
      setAttribute(field, "aria-invalid", "true");
      say(`${name}: ${refusedWords(typed.message, shown())}`);
      return;
    }
    say("");
    dirty = false;
    setAttribute(field, "data-typing", undefined);
    setAttribute(field, "aria-invalid", undefined);
    if (Object.is(typed.value, latest)) restore();
    else put(typed.value);
  };
  field.addEventListener("input", () => {
    dirty = true;
    setAttribute(field, "data-typing", true);
  });
  field.addEventListener("focus", () => field.select());
  field.addEventListener("blur", commit);
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter") commit();
    if (event.key === "Escape" && dirty) {
      event.stopPropagation();
      say("");
      restore();
    }
  });
  return {
    element: field,
    show: (value, label) => {
      latest = value;
      name = label;
      setAttribute(field, "aria-label", label);
      if (!dirty) restore();
    },
  };
}

function read(column: Exclude<Column, { type: "choice" }>, text: string, session: Session, barometer: Pressure | undefined) {
  if (column.type === "quantity") return entry(column, undefined, text, session.state.units, barometer);
  const trimmed = text.trim();
  if (trimmed === "") return { ok: false, message: "a name must stand here." } as const;
  return { ok: true, value: trimmed.slice(0, column.longest) } as const;
}
