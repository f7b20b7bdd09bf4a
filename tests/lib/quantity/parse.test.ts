import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type KindName,
  kinds,
  parseQuantity,
  type Pressure,
  quantity,
  toSI,
  unitNamed,
  unitsOf,
} from "../../../lib/quantity";

const kindNames = Object.keys(kinds) as KindName[];

function read(kind: KindName, text: string, unit = kinds[kind].unit as string): number | string {
  const parsed = parseQuantity(kind, text, { unit: unit as never });
  return parsed.ok ? parsed.value : parsed.message;
}

function ratio(text: string): number | string {
  return read("ratio", text);
}

describe("numbers", () => {
  test.each([
    ["30", 30],
    ["+30", 30],
    ["-30", -30],
    ["−30.5", -30.5],
    [".5", 0.5],
    ["30.", 30],
    ["1.5e3", 1500],
    ["1.5E-3", 0.0015],
    ["1.5e−3", 0.0015],
    ["1.5×10^3", 1500],
    ["-0", 0],
  ])("parseQuantity reads %s", (text, value) => {
    expect(ratio(text)).toBe(value);
  });

  // The rule: one comma before exactly three digits marks thousands, unless something else shows that it cannot.
  test.each([
    ["1,250", 1250],
    ["12,250", 12250],
    ["1,250,000", 1250000],
    ["1,250.5", 1250.5],
    ["1,25", 1.25],
    ["12,5", 12.5],
    ["1,2345", 1.2345],
    [",5", 0.5],
    ["0,250", 0.25],
    ["1250,125", 1250.125],
    ["1 250,125", 1250.125],
    ["1.250,5", 1250.5],
    ["1.250", 1.25],
    ["1.250.000", 1250000],
    ["1 250", 1250],
    ["12\u202f346", 12346],
    ["12\u2009346.5", 12346.5],
    ["1'250'000", 1250000],
    ["1_250", 1250],
  ])("parseQuantity reads %s by the rule for commas, points and spaces", (text, value) => {
    expect(ratio(text)).toBe(value);
  });

  test.each(["1,25,3", "1,250,5", "12.5.3", "1.2,3.4", "1250 500"])("parseQuantity will not guess at %s", (text) => {
    expect(ratio(text)).toBe(`"${text}" is not a number: its commas, points and spaces do not fall on thousands`);
  });

  test.each([
    ["3/4", 0.75],
    ["1 1/2", 1.5],
    ["-1 1/2", -1.5],
    ["1-1/2", 1.5],
    ["2½", 2.5],
    ["¾", 0.75],
    ["1 15/16", 1.9375],
  ])("parseQuantity reads the fraction %s", (text, value) => {
    expect(ratio(text)).toBe(value);
  });

  test("parseQuantity names text that is no number, and numbers too large or divided by zero", () => {
    expect(ratio("abc")).toBe('"abc" is not a number');
    expect(read("power", "kW")).toBe('"kW" is not a number');
    expect(ratio("1/0")).toBe('"1/0" is not a number: it divides by zero');
    expect(ratio("1e400")).toBe('"1e400" is too large a number');
    expect(read("bulkModulus", "1e305 GPa")).toBe('"1e305 GPa" is too large a number');
    expect(read("power", "  ", "kW")).toBe("nothing is typed here; write a number, in kW or with its unit");
  });
});

describe("spellings", () => {
  const rows: readonly (readonly [KindName, string, string])[] = [
    ["torque", "lbf·ft", "ft-lb ft·lbf lb-ft lbft lbs-ft FT-LBS lbf.ft foot-pounds"],
    ["torque", "N·m", "Nm N.m N*m nm newton-metres"],
    ["power", "hp", "HP bhp horsepower"],
    ["power", "PS", "ps cv"],
    ["power", "Btu/min", "BTU/min Btu/minute"],
    ["temperature", "°C", "C c degC °c Celsius"],
    ["temperature", "°F", "F f degF"],
    ["volume", "cu in", "cuin ci in3 in³ cid cu.in. in^3"],
    ["volume", "cc", "CC cm3 cm³ ccm"],
    ["volume", "gal US", "gal gallons US-gal"],
    ["volumeFlow", "cfm", "CFM ft3/min ft³/min cuft/min"],
    ["volumeFlow", "L/min", "l/min lpm LPM litres/minute L/min."],
    ["volumeFlow", "gal/h", "gph GPH gal/hr gallons/hour"],
    ["volumeFlow", "gal/min", "gpm GPM"],
    ["massFlow", "lb/min", "lbs/min lb/minute lbm/min"],
    ["velocity", "knots", "kts kn kt knot KNOTS"],
    ["velocity", "km/h", "kph km/hr kmh"],
    ["volumePerStroke", "mm³", "mm3/st mm³/stroke mm3/stroke mm3"],
    ["specificFuelConsumption", "g/kWh", "g/kW-h g/(kW·h) g/kW/h g/kWhr"],
    ["specificFuelConsumption", "lb/(hp·h)", "lb/hp-h lb/hp·hr lb/bhp-hr lb/hp/h"],
    ["rotationalSpeed", "rpm", "RPM rev/min r/min 1/min"],
    ["kinematicViscosity", "cSt", "cst"],
    ["pressure", "psi", "PSI psia lbf/in² psi(a)"],
    ["pressure", "inHg", 'inHg in.Hg "Hg INHG'],
    ["gaugePressure", "bar", "barg bar(g) BAR bars"],
    ["specificHeat", "Btu/(lb·°F)", "Btu/lb/F Btu/lb-°F"],
    ["length", "in", 'in. inch inches " ″ IN'],
    ["length", "µm", "μm um micron microns"],
  ];
  test.each(rows)("parseQuantity reads %s in %s, however spelled", (kind, symbol, spellings) => {
    for (const spelling of spellings.split(" ")) {
      expect(read(kind, `12 ${spelling}`), spelling).toBe(toSI(unitNamed(kind, symbol as never), 12));
      if (/^\d/.test(spelling)) continue; // 121/min is 121 in a minute
      expect(read(kind, `12${spelling}`), spelling).toBe(toSI(unitNamed(kind, symbol as never), 12));
    }
  });

  test("parseQuantity reads words with spaces between them", () => {
    expect(read("volumeFlow", "10 gallons per hour")).toBe(quantity("volumeFlow", 10, "gal/h"));
    expect(read("volumeFlow", "700 cubic feet per minute")).toBe(quantity("volumeFlow", 700, "cfm"));
    expect(read("temperature", "20 degrees Celsius")).toBe(293.15);
    expect(read("volumeFlow", "10 imperial gallons per hour")).toBe(quantity("volumeFlow", 10, "imp gal/h"));
    expect(read("pressureDifference", "3 inches of water")).toBe(quantity("pressureDifference", 3, "inH2O"));
  });

  test("parseQuantity reads every symbol, written symbol and alias of every unit as that unit", () => {
    for (const kind of kindNames) {
      for (const unit of unitsOf(kind)) {
        for (const spelling of [unit.symbol, unit.written, ...unit.aliases]) {
          if (spelling === "") continue;
          expect(read(kind, `7 ${spelling}`), `${kind}: ${spelling}`).toBe(toSI(unit, 7));
        }
      }
    }
  });

  test("parseQuantity takes the unit of the field where none is typed", () => {
    expect(parseQuantity("pressure", "240", { unit: "kPa" })).toEqual({ ok: true, value: 240e3, unit: "kPa" });
    expect(parseQuantity("pressure", "2.4 bar", { unit: "kPa" })).toEqual({ ok: true, value: 240e3, unit: "bar" });
    expect(read("temperature", "20°", "°C")).toBe(293.15);
    expect(read("fraction", "85", "%")).toBe(0.85);
    expect(read("fraction", "85 per cent", "")).toBe(0.85);
  });

  test("parseQuantity reads ratios with :1 or x, and inches with feet", () => {
    expect(ratio("1.8:1")).toBe(1.8);
    expect(ratio("1.8 x")).toBe(1.8);
    expect(read("length", '1/2"')).toBe(0.0127);
    expect(read("length", "1 1/2 in")).toBe(0.0381);
    expect(read("length", `5'-3 1/2"`)).toBe(1.6129); // 63.5 · 0.0254
    expect(read("length", "5 ft 3 in")).toBe(1.6002);
    expect(read("length", `-5'3"`)).toBe(-1.6002);
    expect(read("length", "5'")).toBe(1.524);
    expect(read("length", `5'x"`)).toBe(
      `"5'x"" is not a length: the unit "'x"" is not known here; try one of ${lengths}`,
    );
  });
  const lengths = unitsOf("length")
    .map((unit) => unit.symbol)
    .join(", ");

  test("parseQuantity tells m from M where they are letter for letter two prefixes", () => {
    expect(read("pressure", "2 mPa")).toContain('"mPa" is not MPa, small m is a thousandth and large M a million');
    expect(read("length", "5 Mm")).toContain("write 5 mm if that is meant");
    expect(read("power", "1 mW")).toContain("write 1 MW");
    expect(read("pressure", "2 mpa")).toBe(2e6);
    expect(read("length", "5 MM")).toBe(0.005);
    expect(read("dynamicViscosity", "5 mPa·s")).toBe(0.005);
  });

  test("parseQuantity tells the kilonewton from the knot", () => {
    expect(read("velocity", "5 kN")).toBe('"5 kN" is a force, not a velocity');
    expect(read("velocity", "5 kn")).toBe(quantity("velocity", 5, "knots"));
    expect(read("force", "5 kN")).toBe(5000);
  });
});

describe("refusals", () => {
  test.each([
    ["pressure", "30 psj", '"30 psj" is not a pressure: the unit "psj" is not known here; try 30 psi or 207 kPa'],
    ["power", "700 kq", '"700 kq" is not a power: the unit "kq" is not known here; try 700 kW or 939 hp'],
    ["pressure", "30 kW", '"30 kW" is a power, not a pressure'],
    ["length", "30 Nm", '"30 Nm" is a torque, not a length'],
    ["massFlow", "900 cfm", '"900 cfm" is a volume flow, not a mass flow'],
    ["temperature", "10 Δ°F", '"10 Δ°F" is a temperature difference, not a temperature'],
    ["gaugePressure", "10 psid", '"10 psid" is a pressure difference, not a gauge pressure'],
    ["angle", "3 kg", '"3 kg" is a mass, not an angle'],
    ["ratio", "85 %", '"85 %" is a fraction, not a ratio'],
    ["count", "6 pots", '"6 pots" is not a whole number: it takes a plain number, without "pots"'],
    ["count", "2.5", '"2.5" is not a whole number'],
    ["temperature", "-300 °C", '"-300 °C" lies below absolute zero, −273.15 °C'],
    ["fraction", "3 foo", '"3 foo" is not a fraction: the unit "foo" is not known here; try one of %, or no unit'],
  ] as const)("parseQuantity refuses %s %s in words", (kind, text, message) => {
    expect(read(kind, text)).toBe(message);
  });

  test("parseQuantity lists the units where none is near", () => {
    expect(read("electricCurrent", "3 furlongs")).toBe(
      '"3 furlongs" is not an electric current: the unit "furlongs" is not known here; try one of A, mA',
    );
  });

  test("parseQuantity keeps gauge and absolute pressure apart and says how to write each", () => {
    expect(read("pressure", "2.4 bar g")).toBe(
      '"2.4 bar g" is a gauge pressure, not an absolute pressure: add the ambient pressure and write it as "bar a" or "psi a"',
    );
    expect(read("gaugePressure", "35 psia")).toBe(
      '"35 psia" is an absolute pressure, not a gauge pressure: take off the ambient pressure and write it as "bar g" or "psi g"',
    );
    expect(read("pressure", "-5 psi")).toBe(
      '"-5 psi" is below a perfect vacuum: an absolute pressure is never negative; against ambient it is a gauge pressure, psi g',
    );
    expect(read("gaugePressure", "-5 psi")).toBe(quantity("gaugePressure", -5, "psi"));
  });

  test("parseQuantity adds or takes off the ambient pressure where it is told one", () => {
    const ambient = 95e3 as Pressure;
    expect(parseQuantity("pressure", "2.4 bar g", { unit: "kPa", ambient })).toEqual({
      ok: true,
      value: 335e3,
      unit: "bar",
    });
    expect(parseQuantity("gaugePressure", "2.4 bar a", { unit: "kPa", ambient })).toEqual({
      ok: true,
      value: 145e3,
      unit: "bar",
    });
    // A bare unit, and one of the field's own kind, are left alone.
    expect(parseQuantity("pressure", "2.4 bar", { unit: "kPa", ambient })).toMatchObject({ value: 240e3 });
    expect(parseQuantity("pressure", "2.4 bar a", { unit: "kPa", ambient })).toMatchObject({ value: 240e3 });
    expect(parseQuantity("pressure", "-2 bar g", { unit: "kPa", ambient })).toMatchObject({ ok: false });
    expect(parseQuantity("pressureDifference", "2 bar g", { unit: "kPa", ambient })).toMatchObject({
      message: '"2 bar g" is a gauge pressure, not a pressure difference',
    });
  });

  test("parseQuantity shortens long text in its message", () => {
    expect(read("power", "x".repeat(300)).toString().length).toBeLessThan(80);
  });
});

test("parseQuantity never throws and never gives anything but a finite number or words", () => {
  const pieces = fc.constantFrom(
    ..."0 1 12 250 . , ' _ - − + e E / 1/2 ½ × ^ : % ° Δ \" ′ ( ) k m M µ psi bar g a gal per ft in NaN Infinity 1e999 constructor __proto__ 0x10 ² ﷽ 😀 \u0000".split(
      " ",
    ),
    " ",
    "\u202f",
    "\t",
    "\n",
  );
  const text = fc.oneof(
    fc.string({ unit: "binary", maxLength: 30 }),
    fc.string({ maxLength: 30 }),
    fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join("")),
  );
  const kind = fc.constantFrom(...kindNames);
  // Half of the texts start with a number and a unit of the kind, so that many are read.
  const head = fc.option(fc.tuple(fc.double({ noNaN: true }), fc.nat()), { freq: 2 });
  const ambient = fc.constantFrom(undefined, 1e5 as Pressure);
  let read = 0;
  const total = fc.property(kind, head, text, ambient, (each, start, tail, pressure) => {
    const symbols = unitsOf(each).map(({ symbol }) => symbol);
    const unit = symbols[0] as never;
    const typed = start ? `${start[0]} ${symbols[start[1] % symbols.length]}${tail.slice(0, start[1] % 3)}` : tail;
    const parsed = parseQuantity(each, typed, { unit, ...(pressure !== undefined && { ambient: pressure }) });
    if (parsed.ok) {
      read += 1;
      expect(Number.isFinite(parsed.value)).toBe(true);
      expect(unitNamed(each, parsed.unit as never).symbol).toBe(parsed.unit);
    } else {
      expect(parsed.message.length).toBeGreaterThan(10);
      expect(parsed.message).not.toContain("undefined");
    }
  });
  fc.assert(total, { seed: 20260101, numRuns: 1500 });
  expect(read).toBeGreaterThan(250); // the strings are not all nonsense
});

test("parseQuantity refuses a hundred thousand characters, whatever they are", () => {
  for (const piece of ["1", "1,", " ", "1 ", "-", "a", "1'", "·", "1 1/", "250 "]) {
    const parsed = parseQuantity("length", piece.repeat(100_000 / piece.length), { unit: "mm" });
    expect(parsed.ok).toBe(false);
  }
});
