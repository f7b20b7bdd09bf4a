import { raised } from "../../lib/quantity";
import { type UnitChoice, type Measured, written } from "../state";

/** How a value stands to its reference, by the digits that are shown: "▲ +0.05", "▼ −6", or nothing. */
export function movement(units: UnitChoice, measured: Measured, now: number, held: number): string {
  const [shown, before] = [written(units, measured, now, { steady: true }), written(units, measured, held, { steady: true })];
  if (shown.number === before.number) return "";
  const decimals = Math.min(decimalsOf(shown.number), decimalsOf(before.number));
  const step = plain(shown.number) - plain(before.number);
  const fixed = Math.abs(step).toFixed(Math.min(decimals, 12));
  // Numbers with an exponent differ by less than their digits after the point.
  const size = Number(fixed) === 0 ? raised(Math.abs(step).toPrecision(2).replace("e-", "e−")) : fixed;
  return step > 0 ? `▲\u00a0+${size}` : `▼\u00a0−${size}`;
}

function plain(number: string): number {
  return Number(number.replace(/[\u202f\s]/g, "").replace(/−/g, "-"));
}

function decimalsOf(number: string): number {
  return /\.(\d+)/.exec(number)?.[1]?.length ?? 0;
}
