import { expect } from "vitest";

/** A row of a published table, as the files in tests/published hold it. */
export interface PublishedRow {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
}

interface PublishedFile {
  readonly parts: readonly { readonly rows: readonly object[] }[];
}

/** Picks the rows of one kind, and fails if there are none: an empty table would pass every test. */
export function rowsOf(file: PublishedFile): (kind: string) => PublishedRow[] {
  const all = file.parts.flatMap((part) => part.rows) as (PublishedRow & { kind?: string; group?: string })[];
  return (kind) => {
    const rows = all.filter((row) => (row.kind ?? row.group) === kind);
    if (rows.length === 0) throw new Error(`no published rows of kind "${kind}"`);
    return rows;
  };
}

/** Expects a number within a relative tolerance of another; both must be numbers. */
export function close(actual: number, expected: unknown, relative: number): void {
  if (typeof expected !== "number") throw new Error(`the expected value is ${String(expected)}, not a number`);
  const gap = Math.abs(actual - expected);
  const allowed = relative * Math.max(Math.abs(expected), Number.MIN_VALUE);
  expect(gap <= allowed || gap < 1e-12, `${actual} against ${expected}, within ${relative}`).toBe(true);
}
