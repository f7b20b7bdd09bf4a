import Qty from "js-quantities";
import { expect, test } from "vitest";
import { type KindName, kinds, quantity, unitNamed, unitsOf } from "../../../lib/quantity";

/**
 * Every unit in the spelling of js-quantities (1.8.0, a general-purpose unit library written by others); null where it
 * knows none. Where it lacks a compound unit but knows the parts, the parts are spelled.
 */
const spellings: { readonly [K in KindName]?: Readonly<Record<string, string | null>> } = {
  power: { W: "W", kW: "kW", MW: "MW", hp: "hp", PS: null, "kJ/s": "kJ/s", "Btu/min": "btu/min", "Btu/h": "btu/h" },
  powerPerVolume: { "W/m³": "W/m^3", "kW/L": "kW/l", "hp/L": "hp/l", "hp/cu in": "hp/in^3" },
  torque: { N·m: "N*m", kN·m: "kN*m", lbf·ft: "lbf*ft", lbf·in: "lbf*in" },
  force: { N: "N", kN: "kN", kgf: "kg*gee", lbf: "lbf" },
  stiffness: { "N/m": "N/m", "N/mm": "N/mm", "lbf/in": "lbf/in" },
  energy: { J: "J", kJ: "kJ", MJ: "MJ", kW·h: "kWh", kcal: null, Btu: "btu", ft·lbf: "ft*lbf" },
  mass: { kg: "kg", g: "g", mg: "mg", t: "t", lb: "lb", oz: "oz" },
  massPerLength: { "kg/m": "kg/m", "g/m": "g/m", "lb/ft": "lb/ft" },
  momentOfInertia: {
    "kg·m²": "kg*m^2",
    "kg·cm²": "kg*cm^2",
    "g·cm²": "g*cm^2",
    "lb·ft²": "lb*ft^2",
    "lb·in²": "lb*in^2",
  },
  velocity: { "m/s": "m/s", "km/h": "km/h", "ft/s": "ft/s", "ft/min": "ft/min", mph: "mph", knots: "knots" },
  acceleration: { "m/s²": "m/s^2", g: "gee", "ft/s²": "ft/s^2" },
  time: { s: "s", ms: "ms", µs: "us", min: "min", h: "h" },
  frequency: { Hz: "Hz", kHz: "kHz", "1/min": "1/min" },
  pressure: {
    Pa: "Pa",
    hPa: "hPa",
    kPa: "kPa",
    MPa: "MPa",
    mbar: "mbar",
    bar: "bar",
    psi: "psi",
    inHg: "inHg",
    inH2O: null, // its 249.082 Pa is for water of 999.97 kg/m³, the conventional column has 1000
    mmHg: "mmHg",
    mmH2O: null,
    atm: "atm",
  },
  bulkModulus: { Pa: "Pa", MPa: "MPa", GPa: "GPa", bar: "bar", psi: "psi" },
  stress: { Pa: "Pa", kPa: "kPa", MPa: "MPa", GPa: "GPa", psi: "psi", ksi: "kpsi", "lbf/ft²": "lbf/ft^2" },
  massFlow: {
    "kg/s": "kg/s",
    "kg/min": "kg/min",
    "kg/h": "kg/h",
    "g/s": "g/s",
    "t/h": "t/h",
    "lb/min": "lb/min",
    "lb/h": "lb/h",
    "lb/s": "lb/s",
  },
  volumeFlow: {
    "m³/s": "m^3/s",
    "m³/min": "m^3/min",
    "m³/h": "m^3/h",
    "L/s": "l/s",
    "L/min": "l/min",
    "L/h": "l/h",
    cfm: "ft^3/min",
    "gal/min": "gal/min",
    "gal/h": "gal/h",
    "imp gal/min": "galimp/min",
    "imp gal/h": "galimp/h",
  },
  specificFuelConsumption: { "kg/J": "kg/J", "g/kWh": "g/kWh", "kg/kWh": "kg/kWh", "lb/(hp·h)": "lb/hp*h" },
  density: {
    "kg/m³": "kg/m^3",
    "kg/L": "kg/l",
    "g/cm³": "g/cm^3",
    "lb/ft³": "lb/ft^3",
    "lb/in³": "lb/in^3",
    "lb/gal": "lb/gal",
  },
  dynamicViscosity: { Pa·s: "Pa*s", mPa·s: "mPa*s", cP: "cP", "lb/(ft·s)": "lb/ft*s" },
  kinematicViscosity: { "m²/s": "m^2/s", "mm²/s": "mm^2/s", cSt: "cSt", "ft²/s": "ft^2/s" },
  length: {
    m: "m",
    mm: "mm",
    cm: "cm",
    km: "km",
    µm: "um",
    in: "in",
    ft: "ft",
    yd: "yd",
    mil: "mil",
    mile: "mi",
    "nautical miles": "nmi",
  },
  area: { "m²": "m^2", "mm²": "mm^2", "cm²": "cm^2", "in²": "in^2", "ft²": "ft^2" },
  volume: {
    "m³": "m^3",
    L: "l",
    mL: "ml",
    cc: "cm^3",
    "cm³": "cm^3",
    "mm³": "mm^3",
    "cu in": "in^3",
    "ft³": "ft^3",
    "gal US": "gal",
    "gal imp": "galimp",
  },
  volumePerStroke: { "mm³": "mm^3", cc: "cm^3", "cu in": "in^3", "m³": "m^3" },
  volumePerTurn: { "cc/rev": "cm^3", "L/rev": "l", "cu in/rev": "in^3", "ft³/rev": "ft^3", "m³/rev": "m^3" },
  angle: { deg: "deg", rad: "rad", rev: "rotation" },
  crankAngle: { deg: "deg", rad: "rad" },
  temperatureDifference: { K: "degK", "°C": "degC", "°F": "degF" },
  specificEnergy: { "J/kg": "J/kg", "kJ/kg": "kJ/kg", "MJ/kg": "MJ/kg", "Btu/lb": "btu/lb" },
  specificHeat: {
    "J/(kg·K)": "J/kg*degK",
    "kJ/(kg·K)": "kJ/kg*degK",
    "kcal/(kg·K)": null, // its calories are the thermochemical ones, 4.184 J
    "Btu/(lb·°F)": "btu/lb*degF",
  },
  thermalConductivity: { "W/(m·K)": "W/m*degK", "Btu/(h·ft·°F)": "btu/h*ft*degF" },
  thermalConductance: {
    "W/K": "W/degK",
    "kW/K": "kW/degK",
    "Btu/(h·°F)": "btu/h*degF",
    "Btu/(min·°F)": "btu/min*degF",
  },
  heatTransferCoefficient: {
    "W/(m²·K)": "W/m^2*degK",
    "kW/(m²·K)": "kW/m^2*degK",
    "Btu/(h·ft²·°F)": "btu/h*ft^2*degF",
  },
  foulingResistance: { "m²·K/W": "m^2*degK/W", "h·ft²·°F/Btu": "h*ft^2*degF/btu" },
  heatFlux: { "W/m²": "W/m^2", "kW/m²": "kW/m^2", "MW/m²": "MW/m^2", "Btu/(h·ft²)": "btu/h*ft^2" },
  electricCurrent: { A: "A", mA: "mA" },
  voltage: { V: "V", mV: "mV", kV: "kV" },
};

/** Kinds tested beside the table: turns and offsets need care, pure numbers have nothing to convert. */
const elsewhere: readonly KindName[] = [
  "gaugePressure",
  "pressureDifference",
  "specificEntropy",
  "rotationalSpeed",
  "temperature",
  "ratio",
  "fraction",
  "count",
];

const rows = (Object.keys(spellings) as KindName[]).flatMap((kind) =>
  Object.entries(spellings[kind]!).flatMap(([symbol, spelling]) =>
    spelling === null ? [] : [{ kind, symbol, spelling }],
  ),
);

// js-quantities rounds many of its own factors to seven figures (psi, lbf, btu, inHg), so 1e-6 is its limit, not ours.
test.each(rows)("$kind in $symbol agrees with $spelling of js-quantities", ({ kind, symbol, spelling }) => {
  const factor = unitNamed(kind, symbol as never).factor;
  expect(Math.abs(Qty(1, spelling).toBase().scalar / factor - 1)).toBeLessThan(1e-6);
});

test("rotational speed agrees with js-quantities, which counts radians", () => {
  for (const [symbol, spelling] of [
    ["rpm", "rpm"],
    ["rev/s", "rotation/s"],
    ["rad/s", "rad/s"],
  ] as const) {
    const turns = Qty(1, spelling).toBase().scalar / (2 * Math.PI);
    expect(Math.abs(turns / quantity("rotationalSpeed", 1, symbol) - 1)).toBeLessThan(1e-12);
  }
});

test("temperature agrees with js-quantities", () => {
  for (const [symbol, spelling] of [
    ["K", "tempK"],
    ["°C", "tempC"],
    ["°F", "tempF"],
    ["°R", "tempR"],
  ] as const) {
    for (const reading of [1, 59, 760, 1400]) {
      expect(Math.abs(quantity("temperature", reading, symbol) - Qty(reading, spelling).toBase().scalar)).toBeLessThan(
        1e-9,
      );
    }
  }
});

test("the table spells every unit of every kind, or says that the peer has none", () => {
  for (const kind of Object.keys(kinds) as KindName[]) {
    if (elsewhere.includes(kind)) continue;
    expect(Object.keys(spellings[kind] ?? {}).sort(), kind).toEqual(
      unitsOf(kind)
        .map((unit) => unit.symbol)
        .sort(),
    );
  }
});
