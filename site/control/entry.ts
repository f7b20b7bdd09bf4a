import type { Column, QuantityInput } from "../../lib/graph";
import { type Pressure, parseQuantity } from "../../lib/quantity";
import { type UnitChoice, unitSymbol, written, writtenInput } from "../state";
import { trackOf } from "./track";

type Field = Pick<QuantityInput, "kind" | "span" | "step" | "hint"> | Extract<Column, { type: "quantity" }>;

/** What came of a typed text: a value, or words on why there is none. */
export type Entry =
  | { readonly ok: true; readonly value: number; readonly readAs: string }
  | { readonly ok: false; readonly message: string };

/**
 * Reads a typed text for a field, and holds it to the field's span.
 *
 * @param field what may be entered
 * @param key of the line, for its unit
 * @param text as typed; a bare number is in the unit shown
 * @param units the units shown
 * @param ambient the barometer, by which gauge pressures may be typed for absolute ones, and the other way round
 */
export function entry(field: Field, key: string | undefined, text: string, units: UnitChoice, ambient?: Pressure): Entry {
  const measured = { ...(key !== undefined && { key }), kind: field.kind, ...(field.hint !== undefined && { hint: field.hint }) };
  const unit = unitSymbol(units, measured);
  const plain = parseQuantity(field.kind, text, { unit });
  const parsed = plain.ok || ambient === undefined ? plain : parseQuantity(field.kind, text, { unit, ambient });
  if (!parsed.ok) return parsed;
  const value: number = parsed.value;
  const barometer = plain.ok ? "" : `, with the barometer at ${written(units, { kind: "pressure" }, ambient!).text}`;
  if (trackOf(field).holds(value)) return { ok: true, value, readAs: `${written(units, measured, value).text}${barometer}` };
  const [lowest, highest] = field.span.map((end) => writtenInput(units, measured, end).text);
  return { ok: false, message: `"${text.trim()}" is outside what this line takes, ${lowest} to ${highest}` };
}

/** Words for a text that was refused: why, and that the old value holds. */
export function refusedWords(message: string, inForce: string): string {
  return `${message.replace(/\.$/, "")}; ${inForce} stays in force.`;
}
