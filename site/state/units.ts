import {
  type DisplayHint,
  displayUnit,
  fromSI,
  type KindName,
  type Quantity,
  type UnitSymbol,
  type UnitSystem,
  unitNamed,
  type WrittenQuantity,
  writeQuantity,
} from "../../lib/quantity";
import type { FigureUnits } from "../../worksheets/sheet";

/** Units in which the page is read. Numbers themselves stay in SI whatever is chosen here. */
export interface UnitChoice {
  readonly system: UnitSystem;
  /** Symbols chosen line by line, by key. */
  readonly own: Readonly<Record<string, string>>;
}

/** What has a unit: a line, by its key, or any number of some kind. */
export interface Measured {
  readonly key?: string;
  readonly kind: KindName;
  readonly hint?: string;
}

interface Writing {
  readonly digits?: number;
  /** Keep zeros at the end, so that a number that moves does not jump. */
  readonly steady?: boolean;
}

/** Symbol of the unit in which something is read. */
export function unitSymbol(choice: UnitChoice, { key, kind, hint }: Measured): UnitSymbol<KindName> {
  const own = key === undefined ? undefined : choice.own[key];
  return (own ?? displayUnit(kind, choice.system, hint as DisplayHint | undefined)) as UnitSymbol<KindName>;
}

/** A value as it is read: number and unit. */
export function written(
  choice: UnitChoice,
  measured: Measured,
  value: number,
  { digits = 4, steady = false }: Writing = {},
): WrittenQuantity {
  if (!Number.isFinite(value)) return { number: "–", unit: "", text: "–" };
  return writeQuantity(measured.kind, value as Quantity<KindName>, {
    unit: unitSymbol(choice, measured),
    digits,
    trailingZeros: steady && measured.kind !== "count",
  });
}

/** An input's value as its field shows it: five digits, no zeros at the end. */
export function writtenInput(choice: UnitChoice, measured: Measured, value: number): WrittenQuantity {
  return written(choice, measured, value, { digits: 5 });
}

/** The units for figures and tables. */
export function figureUnits(choice: UnitChoice): FigureUnits {
  const measured = (kind: KindName, hint?: string): Measured => (hint === undefined ? { kind } : { kind, hint });
  return {
    number: (kind, value, hint) => fromSI(unitNamed(kind, unitSymbol(choice, measured(kind, hint))), value),
    unit: (kind, hint) => unitNamed(kind, unitSymbol(choice, measured(kind, hint))).written,
    text: (kind, value, hint) => written(choice, measured(kind, hint), value).text,
  };
}
