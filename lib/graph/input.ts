import type { DisplayHint, KindName, Quantity } from "../quantity";
import type { Ref } from "./reference";

/** Fields that every input has beside its value. */
interface Stated {
  readonly label: string;
  /** What it means, where to read it, what is usual; one or two sentences. */
  readonly note?: string;
}

interface QuantityField<K extends KindName> extends Stated {
  readonly kind: K;
  /** Lowest and highest value that may be entered, both allowed, in SI. */
  readonly span: readonly [Quantity<NoInfer<K>>, Quantity<NoInfer<K>>];
  /** One step of the slider or of an arrow key, in SI. */
  readonly step: number;
  /** Picks the unit in which the trade reads this one, such as "fuel" or "boost". */
  readonly hint?: DisplayHint;
}

interface QuantityOptions<K extends KindName> extends QuantityField<K> {
  /** Value of a new build, in SI. */
  readonly value: Quantity<NoInfer<K>>;
  /** Symbol in formulas, in TeX. */
  readonly symbol?: string;
  readonly scale?: "linear" | "log";
}

/** A number with a unit that the reader sets. */
export interface QuantityInput<K extends KindName = KindName> extends Ref<Quantity<K>>, QuantityOptions<K> {
  readonly type: "quantity";
}

/** One of a few named possibilities. */
export interface ChoiceInput<Name extends string = string> extends Ref<Name>, Stated {
  readonly type: "choice";
  readonly value: Name;
  /** Words for each possibility, in the order in which they are offered. */
  readonly options: Readonly<Record<Name, string>>;
}

/** A column of a table: a quantity, a choice or a text. */
export type Column =
  | ({ readonly type: "quantity" } & QuantityField<KindName>)
  | ({ readonly type: "choice"; readonly options: Readonly<Record<string, string>> } & Stated)
  | ({ readonly type: "text"; readonly longest: number } & Stated);

export type Columns = Readonly<Record<string, Column>>;

type EntryOf<C> = C extends { readonly type: "quantity"; readonly kind: infer K extends KindName }
  ? Quantity<K>
  : C extends { readonly type: "choice"; readonly options: infer O }
    ? keyof O & string
    : string;

/** Reads a table's rows from the text of a file. */
export interface TableReader<Row = Readonly<Record<string, unknown>>> {
  /** Words on the button that opens the file, such as "Open CSV…". */
  readonly label: string;
  /** All rows of the file, in SI. @throws RangeError saying which lines cannot be used, and why */
  readonly read: (text: string) => readonly Row[];
}

export type RowOf<C extends Columns> = { readonly [Name in keyof C]: EntryOf<C[Name]> };

/** A list of like things, a row each, that the reader may lengthen, shorten and reorder. */
export interface TableInput<C extends Columns = Columns> extends Ref<readonly RowOf<C>[]>, Stated {
  readonly type: "table";
  readonly columns: C;
  readonly value: readonly RowOf<C>[];
  /** Fewest and most rows. */
  readonly rows: readonly [number, number];
  /** How the rows may come out of a file; by hand alone if left out. */
  readonly reader?: TableReader<RowOf<C>>;
  /** Columns that tell a row from the others, for where a row is folded to one line; the first few if left out. */
  readonly brief?: readonly (keyof C & string)[];
  /** Whether an entry of a row is not read, since others decide it: a folded row leaves it out. */
  unread?(row: RowOf<C>, name: keyof C & string, rows: readonly RowOf<C>[]): boolean;
}

export type Input = QuantityInput | ChoiceInput | TableInput;

/** Declares a quantity that the reader sets. */
export function input<K extends KindName>(key: string, options: QuantityOptions<K>): QuantityInput<K> {
  return { type: "quantity", key, ...options };
}

/** Declares a choice between named possibilities. */
export function choice<Name extends string>(
  key: string,
  options: Stated & { readonly options: Readonly<Record<Name, string>>; readonly value: NoInfer<Name> },
): ChoiceInput<Name> {
  return { type: "choice", key, ...options };
}

/** Declares a table of rows. */
export function table<const C extends Columns>(
  key: string,
  options: Stated & {
    readonly columns: C;
    readonly rows: readonly [number, number];
    readonly value: readonly RowOf<C>[];
    readonly reader?: TableReader<RowOf<C>>;
    readonly brief?: readonly (keyof C & string)[];
    readonly unread?: (row: RowOf<C>, name: keyof C & string, rows: readonly RowOf<C>[]) => boolean;
  },
): TableInput<C> {
  return { type: "table", key, ...options };
}

/** A column holding a quantity. */
export function quantityColumn<K extends KindName>(field: QuantityField<K>): { readonly type: "quantity" } & QuantityField<K> {
  return { type: "quantity", ...field };
}

/** A column holding one of a few named possibilities. */
export function choiceColumn<Name extends string>(
  field: Stated & { readonly options: Readonly<Record<Name, string>> },
): { readonly type: "choice"; readonly options: Readonly<Record<Name, string>> } & Stated {
  return { type: "choice", ...field };
}

/** A column holding a short text. */
export function textColumn(field: Stated & { readonly longest: number }): { readonly type: "text"; readonly longest: number } & Stated {
  return { type: "text", ...field };
}
