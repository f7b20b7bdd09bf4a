import accessories from "../../published/drive-accessories.json";
import belts from "../../published/drive-belts.json";

/** A row of a published table. Inputs and expected values differ from kind to kind. */
export interface Row {
  readonly id: string;
  readonly kind: string;
  // biome-ignore lint/suspicious/noExplicitAny: rows of many shapes, read from JSON
  readonly inputs: any;
  // biome-ignore lint/suspicious/noExplicitAny: rows of many shapes, read from JSON
  readonly expected: any;
}

/** Rows of one kind; fails where there are none, so that a misspelt kind does not pass as an empty table. */
export function rowsOf(rows: readonly Row[], kind: string): readonly Row[] {
  const found = rows.filter((row) => row.kind === kind);
  if (found.length === 0) throw new Error(`no published row is of kind ${kind}`);
  return found;
}

export const beltRows = (kind: string) => rowsOf(belts.rows as readonly Row[], kind);
export const accessoryRows = (kind: string) => rowsOf(accessories.rows as readonly Row[], kind);
