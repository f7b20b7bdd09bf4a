import type { Column } from "../../lib/graph";
import { type Pressure, unitNamed } from "../../lib/quantity";
import { h, setAttribute } from "../dom";
import { type Session, unitSymbol, writtenInput } from "../state";
import type { Controlled } from "./controlled";
import { entry, refusedWords } from "./entry";

/** The control of one place in a table. */
export interface CellControl {
  readonly element: HTMLElement;
  /** @param label of the column and the row, for those who hear it */
  show(value: unknown, label: string): void;
}

/** Texts that may be longer than this get several lines. */
const longText = 24;

/** Words that may be longer than this want more than a number's room. */
const longWords = 12;

export const isLong = (column: Column): boolean => column.type === "text" && column.longest > longText;

export function isWide(column: Column): boolean {
  if (column.type === "choice") return Object.values(column.options).some((words) => words.length > longWords);
  return column.type === "text" && column.longest > longWords;
}

/** The unit in which a column's numbers are shown; nothing for words and bare numbers. */
export function unitOf(column: Column, session: Session): string {
  return column.type === "quantity" ? unitNamed(column.kind, unitSymbol(session.state.units, column)).written : "";
}

/** A column's name with the unit shown. */
export function labelOf(column: Column, session: Session): string {
  const unit = unitOf(column, session);
  return unit === "" ? column.label : `${column.label}, ${unit}`;
}

/** A place's value as it is read, without its unit. */
export function entryText(column: Column, session: Session, value: unknown): string {
  if (column.type === "quantity") return writtenInput(session.state.units, column, value as number).number;
  return column.type === "choice" ? (column.options[value as string] ?? "") : (value as string);
}

export function cellControl(column: Column, { session, ambient }: Controlled, say: (words: string) => void, put: (value: unknown) => void): CellControl {
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
  const typing = { class: quantity ? "field number" : "field", autocomplete: "off", spellcheck: "false" } as const;
  const field = isLong(column)
    ? h("textarea", { ...typing, rows: 1 })
    : h("input", { ...typing, type: "text", ...(quantity && { inputmode: "decimal" }) });
  if (!quantity) field.maxLength = column.longest;
  let dirty = false;
  let latest: unknown;
  let name = "";
  const shown = (): string => entryText(column, session, latest);
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
      const unit = unitOf(column, session);
      say(`${name}: ${refusedWords(typed.message, unit === "" ? shown() : `${shown()} ${unit}`)}`);
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
    const { key } = event as KeyboardEvent;
    if (key === "Enter") {
      event.preventDefault();
      commit();
    }
    if (key === "Escape" && dirty) {
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
  const words = text.trim().replace(/\s+/g, " ");
  if (words === "") return { ok: false, message: "a name must stand here." } as const;
  return { ok: true, value: words.slice(0, column.longest) } as const;
}
