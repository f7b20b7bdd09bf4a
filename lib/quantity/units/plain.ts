import { shared, type UnitTable } from "./unit";

export const electricCurrent = {
  A: shared(1, "amp", "ampere"),
  mA: shared(1e-3),
} satisfies UnitTable;

export const voltage = {
  V: shared(1, "volt"),
  mV: shared(1e-3),
  kV: shared(1e3),
} satisfies UnitTable;

/** A ratio may be typed as "1.8:1", "1.8 x" or plainly. */
export const ratio = { "": shared(1, ":1", "x", "×", "to 1") } satisfies UnitTable;

export const fraction = { "%": shared(1e-2, "percent", "per cent", "pct"), "": shared(1) } satisfies UnitTable;

export const count = { "": shared(1) } satisfies UnitTable;
