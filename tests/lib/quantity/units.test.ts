import { expect, test } from "vitest";
import {
  definitions,
  displayUnit,
  inUnit,
  type KindName,
  kinds,
  quantity,
  type Temperature,
  toSI,
  type Unit,
  unitNamed,
  unitsOf,
} from "../../../lib/quantity";
import { spellingsOf } from "../../../lib/quantity/unitSpellings";
import { definitionRows, derivedRows, temperatureRows } from "../../published/units-definitions";
import { sp811Rows } from "../../published/units-sp811";

const kindNames = Object.keys(kinds) as KindName[];
const everyUnit = kindNames.flatMap((kind) => unitsOf(kind).map((unit) => ({ kind, unit })));

function factorOf(kind: KindName, symbol: string): number {
  return unitNamed(kind, symbol as never).factor;
}

test.each(definitionRows)("the factor of $kind in $unit meets its definition", ({ kind, unit, multiplyBy }) => {
  expect(Math.abs(factorOf(kind, unit) / multiplyBy - 1)).toBeLessThan(1e-8);
});

test.each(sp811Rows)("the factor of $kind in $unit meets the printed table", ({ kind, unit, multiplyBy }) => {
  expect(Math.abs(factorOf(kind, unit) / multiplyBy - 1)).toBeLessThan(5e-7);
});

test("rpm and the ton of refrigeration meet their definitions by way of rad/s and Btu/h", () => {
  const radians = inUnit("rotationalSpeed", quantity("rotationalSpeed", 1, "rpm"), "rad/s");
  expect(Math.abs(radians / derivedRows.rpm.multiplyBy - 1)).toBeLessThan(1e-8);
  const ton = quantity("power", 12000, "Btu/h");
  expect(Math.abs(ton / derivedRows.tonOfRefrigeration.multiplyBy - 1)).toBeLessThan(1e-8);
});

// The table gives ten figures; the scales are exact, so half a unit of the last figure is all that may differ.
test.each(temperatureRows)("$fahrenheit °F is $celsius °C is $kelvin K", ({ fahrenheit, celsius, kelvin }) => {
  const temperature = quantity("temperature", fahrenheit, "°F");
  expect(Math.abs(temperature - kelvin)).toBeLessThan(1e-7);
  expect(Math.abs(inUnit("temperature", temperature, "°C") - celsius)).toBeLessThan(1e-7);
  expect(Math.abs(inUnit("temperature", kelvin as Temperature, "°F") - fahrenheit)).toBeLessThan(1e-7);
});

// By hand, from the definitions alone.
test("factors that are whole decimals come out exactly", () => {
  expect(factorOf("volume", "gal US")).toBe(0.003785411784); // 231 · 0.0254³
  expect(factorOf("mass", "lb")).toBe(0.45359237);
  expect(factorOf("power", "PS")).toBe(735.49875); // 75 · 9.80665
  expect(factorOf("specificEnergy", "Btu/lb")).toBe(2326); // 4186.8 · 5/9
  expect(factorOf("length", "mile")).toBe(1609.344);
  expect(quantity("length", 1.5, "in")).toBe(0.0381);
  expect(quantity("volume", 5.9, "L")).toBe(0.0059);
  expect(quantity("velocity", 60, "mph")).toBe(26.8224);
});

test("33 000 ft·lbf in a minute is one horsepower, as 550 in a second", () => {
  const perMinute = (33000 * factorOf("energy", "ft·lbf")) / definitions.minute;
  expect(Math.abs(perMinute / factorOf("power", "hp") - 1)).toBeLessThan(1e-15);
});

test("the imperial gallon is a fifth larger than the US one, the metric horsepower 1.4 % smaller than the other", () => {
  expect(factorOf("volumeFlow", "imp gal/h") / factorOf("volumeFlow", "gal/h")).toBeCloseTo(1.20095, 5);
  expect(factorOf("power", "PS") / factorOf("power", "hp")).toBeCloseTo(0.98632, 5);
});

test("every kind has its SI unit, with factor one and no offset, under the symbol that kinds gives", () => {
  // These say in the unit what kinds says in the name.
  const otherName: Partial<Record<KindName, string>> = { volumePerTurn: "m³/rev" };
  for (const kind of kindNames) {
    const unit = unitsOf(kind).find((each) => each.symbol === (otherName[kind] ?? kinds[kind].unit));
    expect(unit, kind).toMatchObject({ factor: 1, offset: 0 });
  }
});

test("every factor is above zero and finite, and every kind has units", () => {
  expect(everyUnit.length).toBeGreaterThan(150);
  for (const { kind, unit } of everyUnit) {
    expect(unit.factor > 0 && Number.isFinite(unit.factor), `${kind} ${unit.symbol}`).toBe(true);
  }
});

test("no spelling means two units of one kind", () => {
  for (const kind of kindNames) expect(() => spellingsOf(kind)).not.toThrow();
  const meaning = new Map<string, Unit>();
  for (const kind of kindNames) {
    meaning.clear();
    for (const unit of unitsOf(kind)) {
      for (const text of [unit.symbol, ...unit.aliases]) {
        const known = meaning.get(text) ?? unit;
        expect(known.factor, `${kind}: ${text}`).toBe(unit.factor);
        meaning.set(text, unit);
      }
    }
  }
});

test("toSI(unit, reading) and inUnit are inverse for every unit", () => {
  for (const { kind, unit } of everyUnit) {
    for (const reading of [1, 37.5, 2412.25]) {
      const back = inUnit(kind, toSI(unit, reading) as never, unit.symbol as never);
      // Offsets cost digits: 459.67 °R of a reading of 1 °F.
      expect(Math.abs(back - reading), `${kind} ${unit.symbol}`).toBeLessThan(1e-12 * (reading + unit.offset));
    }
  }
});

test("quantity(kind, reading, unit) takes the symbol bare or as written, and pure numbers without one", () => {
  expect(quantity("pressure", 2, "bar a")).toBe(quantity("pressure", 2, "bar"));
  expect(quantity("gaugePressure", 2, "bar g")).toBe(2e5);
  expect(quantity("crankAngle", 180, "deg crank")).toBe(Math.PI);
  expect(quantity("ratio", 1.8)).toBe(1.8);
  expect(quantity("fraction", 85, "%")).toBe(0.85);
});

test("quantity(kind, reading, unit) refuses what is no number and unitNamed what is no unit", () => {
  expect(() => quantity("power", Number.NaN, "hp")).toThrow("quantity: power is NaN hp; it must be a finite number");
  expect(() => quantity("power", Number.POSITIVE_INFINITY, "hp")).toThrow(RangeError);
  expect(() => unitNamed("power", "psi" as never)).toThrow('unitNamed: "psi" is no unit of power');
});

test("displayUnit(kind, system, hint) names a unit of the kind at home in that system", () => {
  for (const kind of kindNames) {
    expect(["SI", undefined]).toContain(unitNamed(kind, displayUnit(kind, "SI") as never).system);
    for (const system of ["SI", "US"] as const) {
      for (const hint of ["fuel", "boost", "duct", "small", "rail", "weather", "large"] as const) {
        expect(() => unitNamed(kind, displayUnit(kind, system, hint) as never)).not.toThrow();
      }
    }
  }
});

test("displayUnit(kind, system, hint) tells air from fuel and bore from altitude", () => {
  expect(displayUnit("massFlow", "US")).toBe("lb/min");
  expect(displayUnit("massFlow", "SI", "fuel")).toBe("kg/h");
  expect(displayUnit("length", "SI")).toBe("mm");
  expect(displayUnit("length", "US", "altitude")).toBe("ft");
  expect(displayUnit("pressureDifference", "US", "duct")).toBe("inH2O");
  expect(displayUnit("power", "US", "altitude")).toBe("hp"); // the hint means nothing for a power
});
