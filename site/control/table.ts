import type { TableInput } from "../../lib/graph";
import { h, setAttribute, setText } from "../dom";
import type { Controlled } from "./controlled";
import { briefColumns, briefHead, briefTemplate } from "./tableBrief";
import { unitOf } from "./tableCell";
import { tableFile } from "./tableFile";
import { type RowHolder, type RowView, rowView } from "./tableRow";

type Row = Readonly<Record<string, unknown>>;

/** More columns than this never stand side by side: a row is folded to a line, and opens to its fields. */
const mostAcross = 6;
/** More columns than this do not stand side by side on a narrow sheet, which is one of at most this width [CSS pixels]. */
const narrow = { columns: 2, width: 580 } as const;

/** An editor for a list of like things: a table with a control in every place, and rows that can be added, taken away and moved. */
export function tableControl(input: TableInput, controlled: Controlled): { readonly element: HTMLElement; refresh(): void } {
  const { session } = controlled;
  const columns = Object.values(input.columns);
  const many = columns.length > mostAcross;
  const [, most] = input.rows;
  const rows = (): readonly Row[] => session.inputs[input.key] as readonly Row[];
  const put = (next: readonly Row[]): void => session.set(input.key, next);
  const views: RowView[] = [];
  /** Rows that are open as soon as they are there. */
  let opens: readonly boolean[] = [];
  let entered: number | undefined;

  const body = h("tbody");
  const headings = columns.map((column) => ({ column, unit: h("span", { class: "unit" }) }));
  const head = briefHead(input, session);
  const remark = h("p", { class: "remark", role: "status", hidden: true });
  const say = (words: string): void => {
    setText(remark, words);
    remark.hidden = words === "";
  };
  const add = (): void => {
    opens = [...views.map(({ isOpen }) => isOpen), true];
    entered = views.length;
    put([...rows(), rows().at(-1) ?? input.value[0]!]);
  };
  const addKey = h("button", { type: "button", class: "quiet", onclick: add }, "Add a row");
  const openKey = h("button", { type: "button", class: "quiet open-all" });
  const tellOpen = (): void => {
    const all = views.length > 0 && views.every(({ isOpen }) => isOpen);
    setText(openKey, all ? "Fold every row" : "Open every row");
    openKey.hidden = views.length === 0;
    openKey.onclick = () => {
      for (const view of views) view.open(!all);
      tellOpen();
    };
  };
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
        { class: "full-head" },
        h("th", { scope: "col", class: "ordinal" }, h("span", { class: "aside" }, "Row")),
        ...headings.map(({ column, unit }) =>
          h("th", { scope: "col", "data-type": column.type, ...(column.note && { title: column.note }) }, column.label, " ", unit),
        ),
        h("th", { scope: "col" }, h("span", { class: "aside" }, "Order")),
      ),
      head.element,
    ),
    body,
  );
  table.style.setProperty("--brief", briefTemplate(briefColumns(input).map(([, column]) => column)));
  const element = h(
    "div",
    {
      class: "table-input",
      "data-folded": many,
      "data-input": input.key,
      role: "group",
      "aria-label": input.label,
    },
    h("div", { class: "wide" }, table),
    h("p", { class: "table-foot" }, addKey, openKey, ...fromFile),
    columnNotes(input),
    remark,
  );

  if (!many && columns.length > narrow.columns) {
    new ResizeObserver(([seen]) => setAttribute(element, "data-folded", seen!.contentRect.width <= narrow.width)).observe(element);
  }

  /** Puts rows in place of the present ones; what is open goes along. */
  const arrange = (next: readonly number[]): void => {
    const now = rows();
    const open = views.map(({ isOpen }) => isOpen);
    opens = next.map((from) => open[from] ?? false);
    for (const [i, isOpen] of opens.entries()) views[i]!.open(isOpen);
    put(next.map((from) => now[from]!));
  };
  const holder: RowHolder = {
    late: many,
    say,
    opened: tellOpen,
    change: (index, name, value) => put(rows().map((row, i) => (i === index ? { ...row, [name]: value } : row))),
    move: (index, by) => {
      const next = [...rows().keys()];
      next.splice(index + by, 0, ...next.splice(index, 1));
      arrange(next);
      views[index + by]?.element.querySelector<HTMLElement>(by < 0 ? ".up" : ".down")?.focus();
    },
    take: (index) => {
      arrange([...rows().keys()].filter((i) => i !== index));
      (views[Math.min(index, views.length - 1)]?.element.querySelector<HTMLElement>(".take") ?? addKey).focus();
    },
  };

  const refresh = (): void => {
    const now = rows();
    while (views.length > now.length) views.pop()!.element.remove();
    while (views.length < now.length) {
      const view = rowView(input, controlled, holder);
      view.open(opens[views.length] ?? false);
      views.push(view);
      body.append(view.element);
    }
    for (const [i, row] of now.entries()) views[i]!.refresh(row, i, now);
    if (entered !== undefined) views[entered]?.enter();
    entered = undefined;
    opens = [];
    tellOpen();
    head.refresh();
    for (const { column, unit } of headings) setText(unit, unitOf(column, session));
    setAttribute(addKey, "disabled", now.length >= most);
  };
  return { element, refresh };
}

/** What the columns mean, where that is said. */
function columnNotes({ columns }: TableInput): HTMLElement | undefined {
  const noted = Object.values(columns).filter(({ note }) => note !== undefined);
  if (noted.length === 0) return undefined;
  return h(
    "details",
    { class: "column-notes" },
    h("summary", {}, "About the columns"),
    h("dl", {}, ...noted.flatMap(({ label, note }) => [h("dt", {}, label), h("dd", {}, note!)])),
  );
}
