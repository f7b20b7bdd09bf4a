import {
  britishThermalUnit,
  calorie,
  foot,
  horsepower,
  hour,
  inch,
  kilogramForce,
  litre,
  metricHorsepower,
  mile,
  minute,
  nauticalMile,
  ounce,
  pound,
  poundForce,
  standardGravity,
  wattHour,
} from "./definitions";
import { shared, si, type UnitTable, us } from "./unit";

export const power = {
  W: si(1),
  kW: si(1e3),
  MW: si(1e6, "megawatt"),
  hp: us(horsepower, "bhp", "mechanical hp"),
  PS: si(metricHorsepower, "metric hp", "hp metric", "cv", "pk"),
  "kJ/s": si(1e3),
  "Btu/min": us(britishThermalUnit / minute),
  "Btu/h": us(britishThermalUnit / hour, "Btuh"),
} satisfies UnitTable;

export const powerPerVolume = {
  "W/m³": si(1),
  "kW/L": si(1e3 / litre),
  "hp/L": us(horsepower / litre),
  "hp/cu in": us(horsepower / inch ** 3, "hp/in³", "hp/ci", "hp/cid"),
} satisfies UnitTable;

export const torque = {
  N·m: si(1, "newton metre"),
  kN·m: si(1e3),
  lbf·ft: us(poundForce * foot, "lb·ft", "ft·lb", "ft·lbf", "foot pound"),
  lbf·in: us(poundForce * inch, "lb·in", "in·lb", "in·lbf", "inch pound"),
} satisfies UnitTable;

export const force = {
  N: si(1, "newton"),
  kN: si(1e3),
  kgf: si(kilogramForce),
  lbf: us(poundForce, "lb", "pound force"),
} satisfies UnitTable;

export const stiffness = {
  "N/m": si(1),
  "N/mm": si(1e3),
  "lbf/in": us(poundForce / inch, "lb/in"),
} satisfies UnitTable;

export const energy = {
  J: si(1, "joule"),
  kJ: si(1e3),
  MJ: si(1e6),
  kW·h: si(1e3 * wattHour),
  kcal: si(1e3 * calorie),
  Btu: us(britishThermalUnit),
  ft·lbf: us(foot * poundForce, "ft·lb", "foot pound"),
} satisfies UnitTable;

export const mass = {
  kg: si(1),
  g: si(1e-3),
  mg: si(1e-6),
  t: si(1e3, "tonne", "metric ton"),
  lb: us(pound, "lbm"),
  oz: us(ounce, "ounce"),
} satisfies UnitTable;

export const massPerLength = {
  "kg/m": si(1),
  "g/m": si(1e-3),
  "lb/ft": us(pound / foot),
} satisfies UnitTable;

export const momentOfInertia = {
  "kg·m²": si(1),
  "kg·cm²": si(1e-4),
  "g·cm²": si(1e-7),
  "lb·ft²": us(pound * foot ** 2),
  "lb·in²": us(pound * inch ** 2),
} satisfies UnitTable;

export const velocity = {
  "m/s": si(1, "mps"),
  "km/h": si(1e3 / hour, "kph", "kmh"),
  "ft/s": us(foot, "fps"),
  "ft/min": us(foot / minute, "fpm"),
  mph: us(mile / hour, "mi/h", "mile/h"),
  knots: shared(nauticalMile / hour, "knot", "kn", "kt", "kts"),
} satisfies UnitTable;

export const acceleration = {
  "m/s²": si(1),
  g: shared(standardGravity, "gn"),
  "ft/s²": us(foot),
} satisfies UnitTable;

export const time = {
  s: shared(1),
  ms: shared(1e-3, "millisecond", "msec"),
  µs: shared(1e-6, "microsecond", "us"),
  min: shared(minute),
  h: shared(hour),
} satisfies UnitTable;

export const frequency = {
  Hz: shared(1, "hertz", "/s", "1/s"),
  kHz: shared(1e3),
  "1/min": shared(1 / minute, "/min", "cpm"),
} satisfies UnitTable;

/** Turns, not radians, are the measure inside. */
export const rotationalSpeed = {
  rpm: shared(1 / minute, "rev/min", "r/min", "1/min", "/min"),
  "rev/s": shared(1, "rps", "r/s", "1/s"),
  "rad/s": shared(1 / (2 * Math.PI)),
} satisfies UnitTable;
