import { acceptInput, type Graph, type InputValues, type TableInput } from "../../lib/graph";
import { readEntry } from "../build/inputText";
import { quoted, Unreadable } from "../build/unreadable";
import { nearestName } from "./nearest";

/**
 * The inputs after some settings of the command line, each "input=value unit" or, for one entry of a table,
 * "table.row.column=value unit" with rows counted from 1. All are in force before any bound of a table is looked at.
 *
 * @param graph whose inputs they are
 * @param inputs every input's value [SI]
 * @param settings as typed, in order
 * @throws Unreadable naming field, value and bound
 */
export function withSettings(graph: Graph, inputs: InputValues, settings: readonly string[]): InputValues {
  const changed: Record<string, unknown> = {};
  for (const setting of settings) {
    const [, name = "", text = ""] = /^([^=]*)=(.*)$/s.exec(setting) ?? [];
    const path = name.trim();
    if (path === "") throw new Unreadable("--set", `${quoted(setting)} is no setting; write it as 'input=value unit'`);
    const [key = "", ...steps] = path.split(".");
    const input = graph.inputs.find((each) => each.key === key);
    if (!input) throw unknownInput(graph, key);
    if (input.type === "table") {
      const rows = (changed[key] ?? inputs[key]) as readonly Readonly<Record<string, unknown>>[];
      changed[key] = withEntry({ input, rows, path, steps, text: text.trim() });
    } else {
      if (steps.length > 0) throw new Unreadable(path, `"${key}" is one value, without rows; set it as ${key}=…`);
      changed[key] = readEntry(input, text.trim(), path);
    }
  }
  for (const [key, value] of Object.entries(changed)) {
    const message = acceptInput(graph.inputs.find((input) => input.key === key)!, value);
    if (message !== null) throw new Unreadable(key, message);
  }
  return { ...inputs, ...changed };
}

interface EntrySetting {
  readonly input: TableInput;
  readonly rows: readonly Readonly<Record<string, unknown>>[];
  readonly path: string;
  readonly steps: readonly string[];
  readonly text: string;
}

function withEntry({ input, rows, path, steps, text }: EntrySetting): readonly Readonly<Record<string, unknown>>[] {
  const [row = "", column = "", ...more] = steps;
  const names = Object.keys(input.columns);
  if (column === "" || more.length > 0) {
    throw new Unreadable(path, `"${input.key}" is a table; set one entry, as ${input.key}.1.${names[0]}=…`);
  }
  const index = /^[1-9]\d*$/.test(row) ? Number(row) - 1 : -1;
  if (index < 0 || index >= rows.length) {
    throw new Unreadable(path, `row is ${quoted(row)}; "${input.key}" has rows 1 to ${rows.length}`);
  }
  if (!Object.hasOwn(input.columns, column)) {
    throw new Unreadable(path, `there is no column ${quoted(column)}; ${nearestName(column, names)}`);
  }
  const value = readEntry(input.columns[column]!, text, path);
  return rows.map((each, i) => (i === index ? { ...each, [column]: value } : each));
}

function unknownInput(graph: Graph, key: string): Unreadable {
  const cell = graph.cells.find((each) => each.key === key);
  if (cell) {
    const sources = Object.values(cell.from).map((reference) => reference.key);
    return new Unreadable(key, `it is worked out from ${sources.join(", ")} and cannot be set`);
  }
  const known = graph.inputs.map((input) => input.key);
  return new Unreadable(key, `there is no input ${quoted(key)}; ${nearestName(key, known)}`);
}
