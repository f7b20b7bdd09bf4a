import type { Cell, References, ValuesOf } from "../lib/graph";
import type { DisplayHint, KindName } from "../lib/quantity";

/** Where the value of a symbol lies that no line bears. */
export interface Found {
  readonly kind: KindName;
  readonly hint?: DisplayHint;
  /** Among what the cell stands on, or the cell itself. */
  readonly from: References;
  /** In SI; not finite where there is none. */
  readonly value: (values: never) => number;
}

/** A symbol in the formulas of some cells that no line bears: what it stands for, and its value if it has a single one. */
export interface Inner {
  readonly cells: readonly Cell[];
  /** In TeX. */
  readonly symbol: string;
  readonly label: string;
  readonly found?: Found;
}

/** A symbol that is the same everywhere. */
export function constant(cells: readonly Cell[], symbol: string, label: string, kind: KindName, value: number): Inner {
  return { cells, symbol, label, found: { kind, from: {}, value: () => value } };
}

/** A quantity with its value, in SI. */
export interface Amount {
  readonly kind: KindName;
  readonly hint?: DisplayHint;
  readonly value: number;
}

/** A cell whose formula runs over rows or parts, as a sum or a product: its terms, each as factors. */
export interface WrittenOut {
  readonly cell: Cell;
  readonly from: References;
  readonly terms: (values: never) => readonly (readonly Amount[])[];
}

/** A symbol whose value is read from within what its cells stand on. */
export function inner<F extends References>(
  cells: readonly Cell[],
  symbol: string,
  label: string,
  kind: KindName,
  from: F,
  value: (values: ValuesOf<F>) => number,
  hint?: DisplayHint,
): Inner {
  return { cells, symbol, label, found: { kind, from, value, ...(hint !== undefined && { hint }) } };
}

/** A symbol that has no single value: it differs from row to row, or along a curve. */
export function unbound(cells: readonly Cell[], symbol: string, label: string): Inner {
  return { cells, symbol, label };
}

/** A sum or product written out part by part. */
export function writtenOut<F extends References>(cell: Cell, from: F, terms: (values: ValuesOf<F>) => readonly (readonly Amount[])[]): WrittenOut {
  return { cell, from, terms };
}
