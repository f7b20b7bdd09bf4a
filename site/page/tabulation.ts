import { isRefusal, type Refusal } from "../../lib/graph";
import { unbroken, unitNamed } from "../../lib/quantity";
import type { FigureTable, FigureUnits, Tabulation, TabulationColumn } from "../../worksheets/sheet";
import { h, runningNumber, setAttribute, setText } from "../dom";
import { onceFor } from "../runtime";
import { csvFile, csvOf, saveLine } from "../figure";
import { figureUnits, refusalWords, type UnitChoice, unitSymbol, written } from "../state";
import { contained } from "./crash";
import { type Desk, nodeOf, type Part } from "./desk";
import { lineLink } from "./link";
import type { Gathering } from "./parts";

/** Rows that are on the screen, or off it, together. */
const together = 6;

/**
 * A value with parts laid out as a table, in the units shown. Places are written anew, never rebuilt.
 *
 * @param gathered parts that stand within an element
 */
export function tabulationPart(desk: Desk, gathered: (element: Element) => Gathering, { key, title, of, columns, rows }: Tabulation): Part {
  const headings = columns.map((column) => ({ column, unit: h("span", { class: "unit" }) }));
  const remark = h("p", { class: "remark", hidden: true });
  const table = h(
    "table",
    { class: "tabulation", "aria-labelledby": `title-of-table-${key}` },
    h(
      "thead",
      {},
      h("tr", {}, ...headings.map(({ column, unit }) => h("th", { scope: "col", "data-type": typeOf(column) }, column.label, " ", unit))),
    ),
  );
  const entriesOf = onceFor((value: unknown) => (isRefusal(value) ? [] : rows(value as never)));
  const entries = (): FigureTable["rows"] => entriesOf(desk.values.get(of));
  const numbers = (): FigureTable => tableIn(figureUnits(desk.session.state.units), columns, entries());
  const saves = saveLine(desk.session, title, { CSV: () => csvFile(csvOf(numbers())) });
  const heading = h("p", { class: "tabulation-title", id: `title-of-table-${key}` }, title);
  const region = h("div", { class: "wide", role: "region", tabindex: 0, "aria-label": title }, table);
  const element = h("div", { class: "tabulated", id: `table-${key}`, "data-key": of.key }, heading, region, remark, saves);
  let bodies = 0;

  const row = (): Place[] =>
    columns.map((column, i) =>
      placeIn(i === 0 && column.kind === undefined ? h("th", { scope: "row" }) : h("td", { "data-type": typeOf(column) })),
    );
  /** A stretch of the rows. */
  const addBody = (): void => {
    const first = bodies * together;
    const body = h("tbody");
    const near = gathered(body);
    /** A row is a part of its own, so that it follows a moving hand alone. */
    const addRow = (index: number): void => {
      let shown: { readonly element: HTMLElement; readonly places: readonly Place[] } | undefined;
      const refresh = (): void => {
        const values = entries()[index];
        if (!values) {
          shown?.element.remove();
          shown = undefined;
          return;
        }
        if (!shown) {
          const places = row();
          shown = { places, element: h("tr", {}, ...places.map(({ element }) => element)) };
          body.insertBefore(shown.element, body.children[index - first] ?? null);
        }
        const { units } = desk.session.state;
        for (const [j, value] of values.entries()) shown.places[j]!.show(entryText(units, columns[j]!, value));
      };
      near.add({ element: body, watches: [of.key], refresh: contained(`The table "${title}"`, element, refresh) });
      refresh();
    };
    bodies += 1;
    table.append(body);
    for (let index = first; index < first + together; index++) addRow(index);
  };
  const show = (): void => {
    const { units } = desk.session.state;
    while (bodies * together < entries().length) addBody();
    for (const { column, unit } of headings) {
      setText(unit, column.kind === undefined ? "" : unbroken(unitNamed(column.kind, unitSymbol(units, { ...column, kind: column.kind })).written));
    }
  };
  const refuse = (refusal: Refusal | undefined): void => {
    for (const part of [heading, region, saves]) setAttribute(part, "hidden", refusal !== undefined);
    setAttribute(remark, "hidden", refusal === undefined);
    if (refusal) remark.replaceChildren(`${title}: waits for `, lineLink(desk, nodeOf(desk.graph, refusal.root)), ".");
  };
  return {
    element,
    watches: [of.key],
    refresh: () => {
      const value = desk.values.get(of);
      if (isRefusal(value)) return refuse(value);
      refuse(undefined);
      show();
    },
  };
}

interface Place {
  readonly element: HTMLTableCellElement;
  show(text: string): void;
}

function placeIn(element: HTMLTableCellElement): Place {
  return { element, ...runningNumber(element) };
}

/** A structured value's numbers in the units shown, as they are saved. */
export function tableIn(units: FigureUnits, columns: readonly TabulationColumn[], rows: FigureTable["rows"]): FigureTable {
  return {
    columns: columns.map(({ label, kind, hint }) => (kind === undefined ? label : [label, units.unit(kind, hint)])),
    rows: rows.map((row) =>
      row.map((entry, i) => {
        const { kind, hint } = columns[i]!;
        return typeof entry === "string" || kind === undefined ? entry : units.number(kind, entry, hint);
      }),
    ),
  };
}

function typeOf(column: TabulationColumn): string {
  return column.kind === undefined ? "words" : "number";
}

function entryText(units: UnitChoice, column: TabulationColumn, value: string | number): string {
  if (column.kind === undefined) return String(value);
  // Words in place of a number are why there is none.
  if (typeof value === "string") return refusalWords(value, units);
  return written(units, { ...column, kind: column.kind }, value, { steady: true }).number;
}
