import { foot, gallonImperial, gallonUS, horsepower, hour, inch, litre, minute, pound, wattHour } from "./definitions";
import { shared, si, type UnitTable, us } from "./unit";

export const massFlow = {
  "kg/s": si(1),
  "kg/min": si(1 / minute),
  "kg/h": si(1 / hour),
  "g/s": si(1e-3),
  "t/h": si(1e3 / hour),
  "lb/min": us(pound / minute, "lbm/min"),
  "lb/h": us(pound / hour, "lbm/h", "pph"),
  "lb/s": us(pound, "lbm/s"),
} satisfies UnitTable;

export const volumeFlow = {
  "m³/s": si(1, "cu m/s"),
  "m³/min": si(1 / minute, "cu m/min"),
  "m³/h": si(1 / hour, "cu m/h"),
  "L/s": si(litre, "lps"),
  "L/min": si(litre / minute, "lpm"),
  "L/h": si(litre / hour, "lph"),
  cfm: us(foot ** 3 / minute, "ft³/min", "cu ft/min"),
  "gal/min": us(gallonUS / minute, "gpm", "US gal/min", "gal US/min", "US gpm"),
  "gal/h": us(gallonUS / hour, "gph", "US gal/h", "gal US/h", "US gph"),
  "imp gal/min": shared(gallonImperial / minute, "gal imp/min", "UK gal/min", "imp gpm", "imperial gal/min"),
  "imp gal/h": shared(gallonImperial / hour, "gal imp/h", "UK gal/h", "imp gph", "imperial gal/h"),
} satisfies UnitTable;

export const specificFuelConsumption = {
  "kg/J": si(1),
  "g/kWh": si(1e-3 / (1e3 * wattHour), "g/kW/h"),
  "kg/kWh": si(1 / (1e3 * wattHour), "kg/kW/h"),
  "lb/(hp·h)": us(pound / (horsepower * hour), "lb/hp/h", "lb/bhp·h", "lb/bhp/h"),
} satisfies UnitTable;

export const density = {
  "kg/m³": si(1),
  "kg/L": si(1 / litre),
  "g/cm³": si(1e3, "g/cc", "g/mL"),
  "lb/ft³": us(pound / foot ** 3, "lb/cu ft", "pcf"),
  "lb/in³": us(pound / inch ** 3, "lb/cu in"),
  "lb/gal": us(pound / gallonUS, "lb/gal US", "lb/US gal", "ppg"),
} satisfies UnitTable;

export const dynamicViscosity = {
  Pa·s: si(1),
  mPa·s: si(1e-3),
  cP: si(1e-3, "centipoise"),
  "lb/(ft·s)": us(pound / foot, "lbm/(ft·s)"),
} satisfies UnitTable;

export const kinematicViscosity = {
  "m²/s": si(1),
  "mm²/s": si(1e-6),
  cSt: si(1e-6, "centistokes", "centistoke"),
  "ft²/s": us(foot ** 2),
} satisfies UnitTable;
