import { type Column, input, type QuantityInput, quantityColumn } from "../lib/graph";
import { type DisplayHint, type KindName, type Quantity, quantity, type UnitSymbol } from "../lib/quantity";

interface Field<K extends KindName> {
  readonly label: string;
  readonly kind: K;
  /** Unit of the numbers below. */
  readonly unit: UnitSymbol<K>;
  readonly span: readonly [number, number];
  readonly step: number;
  readonly hint?: DisplayHint;
  readonly note?: string;
}

/** A span whose ends are further apart than this many times is laid out on a log scale, unless it says otherwise. */
const wide = 40;

interface Setting<K extends KindName> extends Field<K> {
  readonly symbol?: string;
  readonly value: number;
  readonly scale?: "linear" | "log";
}

/** An input declared with numbers in a unit of the trade; the input itself holds SI. */
export function setting<K extends KindName>(key: string, stated: Setting<K>): QuantityInput<K> {
  const { unit, value, span, step, ...rest } = stated;
  const field = fieldInSI(stated);
  const [lowest, highest] = field.span;
  const scale = lowest > 0 && highest > wide * lowest ? "log" : "linear";
  return input<K>(key, { scale, ...rest, value: si(stated.kind, value, unit), ...field });
}

/** A table column declared with numbers in a unit of the trade. */
export function column<K extends KindName>(stated: Field<K>): { readonly type: "quantity" } & Extract<Column, { type: "quantity" }> & { readonly kind: K } {
  const { unit, span, step, ...rest } = stated;
  return quantityColumn<K>({ ...rest, ...fieldInSI(stated) }) as never;
}

function fieldInSI<K extends KindName>({ kind, unit, span, step }: Field<K>) {
  const [lowest, highest] = span;
  return {
    span: [si(kind, lowest, unit), si(kind, highest, unit)] as const,
    // A step is a difference: taken from zero, so that a unit with an offset steps by its degree.
    step: si(kind, step, unit) - si(kind, 0, unit),
  };
}

function si<K extends KindName>(kind: K, reading: number, unit: UnitSymbol<K>): Quantity<K> {
  return quantity(kind, reading, ...([unit] as never));
}
