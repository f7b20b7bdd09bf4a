/** Where a unit is at home; a unit that both trades read (the second, the volt) carries none. */
export type UnitSystem = "SI" | "US";

/** How a table states a unit; the symbol is its key. */
export interface UnitEntry {
  /** SI units in one of this unit */
  readonly factor: number;
  /** further spellings that a person may type; case, spaces, dots and hyphens make no difference */
  readonly aliases: readonly string[];
  /** added to a reading in this unit before the factor applies: 459.67 for °F */
  readonly offset?: number;
  readonly system?: UnitSystem;
  /** how it is written where the bare symbol would leave doubt: a step of one °C is written K */
  readonly written?: string;
}

export type UnitTable = Readonly<Record<string, UnitEntry>>;

/** A unit at home in the SI, or used beside it by the metric trades. */
export function si(factor: number, ...aliases: readonly string[]): UnitEntry {
  return { factor, aliases, system: "SI" };
}

/** A unit of US customary measure. */
export function us(factor: number, ...aliases: readonly string[]): UnitEntry {
  return { factor, aliases, system: "US" };
}

/** A unit read by everybody, or by neither of the two systems. */
export function shared(factor: number, ...aliases: readonly string[]): UnitEntry {
  return { factor, aliases };
}
