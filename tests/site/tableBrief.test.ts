import { expect, test } from "vitest";
import type { TableInput } from "../../lib/graph";
import { briefColumns, briefTemplate } from "../../site/control/tableBrief";
import { graph } from "../../worksheets/model";

const tables = graph.inputs.filter((input): input is TableInput => input.type === "table");

test("there are tables to fold", () => expect(tables.length).toBeGreaterThan(8));

test.each(tables.map((table) => [table.key, table] as const))("a folded row of %s tells it from the others, and fits a phone", (_, table) => {
  const columns = briefColumns(table);
  expect(columns.length).toBeGreaterThan(0);
  expect(columns.length).toBeLessThanOrEqual(6);
  for (const [name, column] of columns) expect(table.columns[name]).toBe(column);
  const rows = table.value as readonly Readonly<Record<string, unknown>>[];
  const told = rows.map((row) => columns.map(([name]) => String(row[name])).join(" | "));
  expect(new Set(told).size).toBe(new Set(rows.map((row) => JSON.stringify(row))).size);
  // 358 px of a phone of 390, less the margin with number and sign, and gaps of 6 px; a rem is 15 px.
  const least = [...briefTemplate(columns.map(([, column]) => column)).matchAll(/minmax\(([\d.]+)rem/g)].map(([, rem]) => Number(rem) * 15);
  expect(least.reduce((sum, width) => sum + width, 6 * (least.length - 1))).toBeLessThanOrEqual(358 - 36);
});
