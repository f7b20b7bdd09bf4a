import type { DisplayHint, KindName, Quantity, Span } from "../quantity";
import type { Limit, StatedCheck } from "./limit";
import type { Ref, References, ValuesOf } from "./reference";
import { Refusal } from "./refusal";

/** The span over which a cell's model is trusted; outside it the value is shown and marked. */
export interface Validity {
  /** Name in `from` of the quantity that has the span, or "result". */
  readonly of: string;
  /** In SI. */
  readonly span: Span;
  readonly note: string;
}

interface Explained {
  readonly label: string;
  /** How the value follows from what it depends on, in TeX; symbols are those of `from`. */
  readonly formula: string;
  /** Standard, book, paper, or "common practice, no source"; "definition" where nothing else is needed. */
  readonly source: string;
  readonly assumptions?: readonly string[];
  readonly validity?: readonly Validity[];
}

interface ScalarOptions<K extends KindName, F extends References> extends Explained {
  readonly kind: K;
  /** Picks the unit in which the trade reads this one. */
  readonly hint?: DisplayHint;
  readonly symbol: string;
  readonly from: F;
  readonly compute: (values: ValuesOf<F>) => Quantity<NoInfer<K>>;
  readonly limits?: readonly Limit<NoInfer<K>>[];
}

interface StructureOptions<T, F extends References> extends Explained {
  readonly from: F;
  readonly compute: (values: ValuesOf<F>) => T;
  /** The limits found inside the value. */
  readonly checks?: (value: T, values: ValuesOf<F>) => readonly StatedCheck[];
}

/** A value that follows from inputs and other cells; read by the compiled evaluator and by the page's runtime alike. */
export interface Cell<T = unknown> extends Ref<T>, Explained {
  readonly type: "cell";
  /** Absent when the value is not a single number. */
  readonly kind?: KindName;
  readonly hint?: DisplayHint;
  readonly symbol?: string;
  readonly from: References;
  readonly compute: (values: never) => T;
  readonly limits: readonly Limit[];
  readonly checks?: (value: never, values: never) => readonly StatedCheck[];
}

/** A cell holding one number. */
export interface ScalarCell<K extends KindName = KindName> extends Cell<Quantity<K>> {
  readonly kind: K;
  readonly symbol: string;
}

/** Declares a cell whose value is one quantity. */
export function cell<K extends KindName, F extends References>(
  key: string,
  options: ScalarOptions<K, F>,
): ScalarCell<K> {
  return { type: "cell", key, limits: [], ...options } as unknown as ScalarCell<K>;
}

/** Declares a cell whose value has parts: stations along a path, pulleys of a run. */
export function structure<T, F extends References>(key: string, options: StructureOptions<T, F>): Cell<T> {
  return { type: "cell", key, limits: [], ...options } as unknown as Cell<T>;
}

/**
 * The value of a cell, given the values of what it depends on: its result, or a refusal. Never throws.
 * Both interpreters of the graph run cells through this one function.
 *
 * @param target the cell
 * @param names the names of its dependencies, in order
 * @param values their values, in the same order
 */
export function runCell(target: Cell, names: readonly string[], values: ArrayLike<unknown>): unknown {
  const args: Record<string, unknown> = {};
  for (let i = 0; i < names.length; i++) {
    const value = values[i];
    if (value instanceof Refusal) return value;
    args[names[i]!] = value;
  }
  try {
    const result = target.compute(args as never);
    if (target.kind !== undefined && !Number.isFinite(result)) {
      return new Refusal(target.key, `${target.label} is not a finite number with these inputs`);
    }
    return result;
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return new Refusal(target.key, message, !(error instanceof RangeError));
  }
}
