import { type DisplayHint, type KindName, together } from "../../lib/quantity";
import type { FigureUnits } from "../sheet";

/** A bare number in so many significant digits, with a true minus and thin spaces between thousands. */
export function figures(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return "–";
  const size = Math.abs(value);
  const exponent = size === 0 ? 0 : Number(size.toExponential(digits - 1).split("e")[1]);
  const text = size.toFixed(Math.min(20, Math.max(0, digits - 1 - exponent)));
  const plain = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  const [whole = "0", decimals] = plain.split(".");
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, "\u202f");
  const sign = value < 0 && /[1-9]/.test(plain) ? "−" : "";
  return decimals === undefined ? `${sign}${grouped}` : `${sign}${grouped}.${decimals}`;
}

/** A quantity in the unit shown, in fewer digits than the page writes. */
export function reading(
  units: FigureUnits,
  kind: KindName,
  value: number,
  { digits = 3, hint }: { digits?: number; hint?: DisplayHint } = {},
): string {
  const unit = units.unit(kind, hint);
  const number = figures(units.number(kind, value, hint), digits);
  return together(number, unit);
}

/** A share in per cent: whole from ten up, one decimal below. */
export function share(units: FigureUnits, value: number): string {
  const percent = units.number("fraction", value);
  if (percent !== 0 && Math.abs(percent) < 0.05) return together("<\u00a00.1", units.unit("fraction"));
  const rounded = Math.abs(percent) < 9.95 ? Math.round(percent * 10) / 10 : Math.round(percent);
  return together(figures(rounded, 6), units.unit("fraction"));
}
