import { fromSI, type KindName, unitNamed } from "../../lib/quantity";
import type { FigureUnits } from "../../worksheets/sheet";
import { refusalWords } from "./refusalWords";
import { type Measured, type UnitChoice, unitSymbol, written } from "./units";

/** The units for figures and tables. */
export function figureUnits(choice: UnitChoice): FigureUnits {
  const measured = (kind: KindName, hint?: string): Measured => (hint === undefined ? { kind } : { kind, hint });
  return {
    number: (kind, value, hint) => fromSI(unitNamed(kind, unitSymbol(choice, measured(kind, hint))), value),
    unit: (kind, hint) => unitNamed(kind, unitSymbol(choice, measured(kind, hint))).written,
    text: (kind, value, hint) => written(choice, measured(kind, hint), value).text,
    refusal: (words) => refusalWords(words, choice),
  };
}
