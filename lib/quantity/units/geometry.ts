import { degree, foot, gallonImperial, gallonUS, inch, litre, mile, nauticalMile, yard } from "./definitions";
import { shared, si, type UnitTable, us } from "./unit";

export const length = {
  m: si(1, "metre"),
  mm: si(1e-3),
  cm: si(1e-2),
  km: si(1e3),
  µm: si(1e-6, "micron", "um"),
  in: us(inch, '"', "″", "''", "′′"),
  ft: us(foot, "'", "′"),
  yd: us(yard, "yard"),
  mil: us(inch * 1e-3, "thou", "thousandth"),
  mile: us(mile, "mi", "statute mile"),
  "nautical miles": shared(nauticalMile, "nautical mile", "nmi"),
} satisfies UnitTable;

export const area = {
  "m²": si(1, "sq m", "square metre"),
  "mm²": si(1e-6, "sq mm"),
  "cm²": si(1e-4, "sq cm"),
  "in²": us(inch ** 2, "sq in", "square inch"),
  "ft²": us(foot ** 2, "sq ft", "square foot"),
} satisfies UnitTable;

export const volume = {
  "m³": si(1, "cu m", "cubic metre"),
  L: si(litre, "dm³"),
  mL: si(litre * 1e-3),
  cc: si(1e-6, "ccm"),
  "cm³": si(1e-6, "cu cm"),
  "mm³": si(1e-9, "cu mm"),
  "cu in": us(inch ** 3, "in³", "ci", "cid", "cubic inch"),
  "ft³": us(foot ** 3, "cu ft", "cubic foot"),
  "gal US": us(gallonUS, "gal", "US gal", "gallon (US)"),
  "gal imp": shared(gallonImperial, "imp gal", "UK gal", "gal UK", "imperial gallon"),
} satisfies UnitTable;

/** Written with "/stroke" behind it. */
export const volumePerStroke = {
  "mm³": si(1e-9, "mm³/stroke", "mm³/st", "cu mm", "cu mm/stroke"),
  cc: si(1e-6, "cm³", "cc/stroke", "cm³/stroke"),
  "cu in": us(inch ** 3, "in³", "cu in/stroke", "in³/stroke"),
  "m³": si(1, "m³/stroke"),
} satisfies UnitTable;

export const volumePerTurn = {
  "cc/rev": si(1e-6, "cc", "cm³", "cm³/rev", "mL/rev"),
  "L/rev": si(litre, "L"),
  "cu in/rev": us(inch ** 3, "cu in", "in³", "in³/rev", "ci/rev", "cid/rev"),
  "ft³/rev": us(foot ** 3, "cu ft/rev"),
  "m³/rev": si(1, "m³"),
} satisfies UnitTable;

export const angle = {
  deg: shared(degree, "°"),
  rad: shared(1, "radian"),
  rev: shared(360 * degree),
} satisfies UnitTable;

/** Written with "crank" behind it. */
export const crankAngle = {
  deg: shared(degree, "°", "deg CA", "° CA", "CAD"),
  rad: shared(1, "radian"),
} satisfies UnitTable;
