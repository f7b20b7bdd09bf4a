import { acceptInput, type TableInput } from "../../lib/graph";
import type { UnitSystem } from "../../lib/quantity";
import { h } from "../dom";

type Rows = readonly Readonly<Record<string, unknown>>[];

/** Rows out of a file, or why there are none. */
export type ReadRows = { readonly ok: true; readonly rows: Rows } | { readonly ok: false; readonly message: string };

/** Most that a table's file may hold [bytes]. */
const mostBytes = 200_000;

/** Refusals told at once; the rest is counted. */
const mostTold = 4;

/** What a table's own reader makes of a text, held against the table's columns and count of rows. */
export function readRows(input: TableInput, text: string, system: UnitSystem): ReadRows {
  if (!input.reader) return { ok: false, message: `${input.label} is not read from files` };
  let rows: Rows;
  try {
    rows = input.reader.read(text);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, message: shortened(error.message) };
  }
  const message = acceptInput(input, rows, system);
  return message === null ? { ok: true, rows } : { ok: false, message };
}

/** A button that fills a table from a file; one that cannot be used changes nothing and says why. */
export function tableFile(
  input: TableInput,
  { system, put, say }: { system(): UnitSystem; put(rows: Rows): void; say(words: string): void },
): readonly HTMLElement[] {
  if (!input.reader) return [];
  const refuse = (name: string, why: string): void => say(`${name} was not read: ${why.replace(/\.$/, "")}. The rows stay as they are.`);
  const read = async (file: File): Promise<void> => {
    if (file.size > mostBytes) return refuse(file.name, `it holds ${Math.ceil(file.size / 1000)} kB; it may hold at most ${mostBytes / 1000} kB`);
    let text: string;
    try {
      text = await file.text();
    } catch {
      return refuse(file.name, "the browser could not read it");
    }
    const found = readRows(input, text, system());
    if (!found.ok) return refuse(file.name, found.message);
    say("");
    put(found.rows);
  };
  const chooser = h("input", { type: "file", accept: ".csv,.txt,text/csv,text/plain", class: "aside", tabindex: -1, "aria-hidden": "true" });
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.value = "";
    if (file) void read(file);
  });
  return [h("button", { type: "button", class: "quiet", onclick: () => chooser.click() }, input.reader.label), chooser];
}

function shortened(message: string): string {
  const told = message.split(/; (?=line \d)/);
  if (told.length <= mostTold) return message;
  return `${told.slice(0, mostTold).join("; ")}; and ${told.length - mostTold} more`;
}
