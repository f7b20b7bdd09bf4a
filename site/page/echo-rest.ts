import type { Cell } from "../../lib/graph";
import { boxed, h, setChildren, setText } from "../dom";
import { movement } from "../mark";
import { type Measured, written } from "../state";
import { checkName } from "./check-name";
import type { Desk } from "./desk";
import { referenceOf } from "./echo-words";
import type { Felt } from "./felt";
import type { Moves } from "./moves";

/** Lines brought up to date in one frame while the hand moves. */
const atOnce = 12;

/** What else moved elsewhere, behind words that open. */
export interface EchoRest {
  readonly element: HTMLElement;
  /** @param others what moved, the most first @param frozen whether lines keep their places: the hand moves */
  show(others: readonly Felt[], frozen: boolean): void;
  /** Brings the open lines up to date; while the hand moves some of them, the next ones with each call. */
  refresh(): void;
}

/** The lines that moved less than those told in full: name, value, movement. Nothing is done for them while they are closed. */
export function echoRest(desk: Desk, moves: Moves): EchoRest {
  const count = h("summary", {});
  const list = h("ol", { class: "echo-others" });
  const element = h("details", { class: "echo-rest", hidden: true }, count, list);
  const rows = new Map<Cell, Row>();
  let felt: ReadonlyMap<Cell, Felt> = new Map();
  let order: readonly Cell[] = [];
  let next = 0;

  const rowOf = (cell: Cell): Row => {
    const row = rows.get(cell) ?? echoRow(desk, moves, cell);
    rows.set(cell, row);
    return row;
  };
  const write = (cells: readonly Cell[]): void => {
    for (const cell of cells) rowOf(cell).show(felt.get(cell));
  };
  const put = (): void => setChildren(list, order.map((cell) => rowOf(cell).element));
  const all = (): void => {
    if (!element.open) return;
    put();
    write(order);
  };
  element.addEventListener("toggle", all);
  return {
    element,
    show: (others, frozen) => {
      felt = new Map(others.map((each) => [each.cell, each]));
      const known = new Set(order);
      const kept = frozen ? order.filter((cell) => felt.has(cell)) : [];
      const added = [...felt.keys()].filter((cell) => !frozen || !known.has(cell));
      order = [...kept, ...added];
      element.hidden = order.length === 0;
      setText(count, `${order.length} more moved less`);
      if (!frozen) return all();
      if (!element.open) return;
      write(added);
      put();
    },
    refresh: () => {
      if (!element.open) return;
      if (desk.session.state.gesture === undefined) return write(order);
      write(order.slice(next, next + atOnce));
      next = next + atOnce < order.length ? next + atOnce : 0;
    },
  };
}

interface Row {
  readonly element: HTMLElement;
  show(felt: Felt | undefined): void;
}

function echoRow(desk: Desk, moves: Moves, cell: Cell): Row {
  const place = desk.places.get(cell.key);
  const name = h("span", {}, cell.label);
  const value = boxed("value");
  const moved = boxed("movement");
  const element = h(
    "li",
    {},
    h("a", { class: "echo-name", href: `#${place?.id ?? ""}`, "data-key": cell.key }, h("span", { class: "letter" }, place?.letter ?? ""), " ", name),
    h("span", { class: "echo-figures" }, value.element, moved.element),
  );
  const tell = (measured: Measured, now: number, before: unknown): void => {
    const { units } = desk.session.state;
    value.show(written(units, measured, now, { steady: true }).text);
    moved.show(typeof before === "number" ? movement(units, measured, now, before) || "=" : "");
  };
  return {
    element,
    show: (felt) => {
      const now = desk.values.get(cell);
      const check = felt?.check;
      setText(name, cell.kind === undefined && check ? checkName(check) : cell.label);
      if (typeof now === "number") return tell(cell as Measured, now, referenceOf(desk, moves, cell));
      if (check) return tell(check, check.value, felt.before?.value);
      value.show("no answer");
      moved.show("");
    },
  };
}
