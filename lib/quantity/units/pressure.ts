import { atmosphere, bar, inch, metreOfMercury, metreOfWater, poundForce, poundPerSquareInch } from "./definitions";
import { shared, si, type UnitTable, us } from "./unit";

/** Shared by absolute pressure (written "bar a"), gauge pressure ("bar g") and pressure difference ("bar"). */
export const pressure = {
  Pa: si(1, "pascal", "N/m²"),
  hPa: si(1e2),
  kPa: si(1e3),
  MPa: si(1e6, "N/mm²"),
  mbar: si(bar * 1e-3, "millibar"),
  bar: si(bar),
  psi: us(poundPerSquareInch, "lbf/in²", "lb/in²", "lb/sq in"),
  inHg: us(inch * metreOfMercury, '"Hg', "inch of mercury"),
  inH2O: us(inch * metreOfWater, '"H2O', "in water", "in wc", "in wg", "inch of water"),
  mmHg: si(1e-3 * metreOfMercury, "torr"),
  mmH2O: si(1e-3 * metreOfWater, "mm water", "mm wc", "mm wg"),
  atm: shared(atmosphere, "atmosphere"),
} satisfies UnitTable;

export const bulkModulus = {
  Pa: si(1),
  MPa: si(1e6, "N/mm²"),
  GPa: si(1e9),
  bar: si(bar),
  psi: us(poundPerSquareInch, "lbf/in²", "lb/in²"),
} satisfies UnitTable;

export const stress = {
  Pa: si(1),
  kPa: si(1e3),
  MPa: si(1e6, "N/mm²"),
  GPa: si(1e9),
  psi: us(poundPerSquareInch, "lbf/in²", "lb/in²"),
  ksi: us(1e3 * poundPerSquareInch),
  "lbf/ft²": us(poundForce / (12 * inch) ** 2, "psf"),
} satisfies UnitTable;
