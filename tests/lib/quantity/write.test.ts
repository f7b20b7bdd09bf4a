import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type KindName,
  kinds,
  parseQuantity,
  type Quantity,
  quantity,
  raised,
  together,
  unitsOf,
  writeExactly,
  writeQuantity,
} from "../../../lib/quantity";

const kindNames = Object.keys(kinds) as KindName[];
const everyUnit = kindNames.flatMap((kind) => unitsOf(kind).map((unit) => ({ kind, symbol: unit.symbol })));
const signed = new Set<KindName>(kindNames.filter((kind) => !["temperature", "pressure", "count"].includes(kind)));

/** Loops over kinds name units that the compiler cannot follow. */
function unitArgument(symbol: string): [never] {
  return [symbol as never];
}

function plain(value: number, options: { digits?: number; trailingZeros?: boolean; thousands?: boolean } = {}): string {
  return writeQuantity("ratio", value as Quantity<"ratio">, { unit: "", ...options }).text;
}

test("writeQuantity(kind, value, options) gives number, unit and both with a space between", () => {
  const boost = quantity("gaugePressure", 35, "psi");
  expect(writeQuantity("gaugePressure", boost, { unit: "bar" })).toEqual({
    number: "2.413",
    unit: "bar g",
    text: "2.413 bar g",
  });
  expect(writeQuantity("ratio", quantity("ratio", 1.8), { unit: "" }).text).toBe("1.8");
  expect(writeQuantity("fraction", quantity("fraction", 0.853), { unit: "%" }).text).toBe("85.3 %");
});

test("writeQuantity(kind, value, options) says against what a pressure or an angle is measured", () => {
  expect(writeQuantity("pressure", quantity("pressure", 14.5, "psi"), { unit: "psi" }).text).toBe("14.5 psi a");
  expect(writeQuantity("pressureDifference", quantity("pressureDifference", 3, "inH2O"), { unit: "inH2O" }).text).toBe(
    "3 inH2O",
  );
  expect(writeQuantity("crankAngle", quantity("crankAngle", 12, "deg"), { unit: "deg" }).text).toBe("12 deg crank");
  expect(writeQuantity("volumePerStroke", quantity("volumePerStroke", 85, "mm³"), { unit: "mm³" }).text).toBe(
    "85 mm³/stroke",
  );
  expect(writeQuantity("temperatureDifference", quantity("temperatureDifference", 9, "°F"), { unit: "°C" }).text).toBe(
    "5 K",
  );
  expect(writeQuantity("temperatureDifference", quantity("temperatureDifference", 5, "K"), { unit: "°F" }).text).toBe(
    "9 Δ°F",
  );
});

test.each([
  [0, "0"],
  [-0, "0"],
  [2.4, "2.4"],
  [2.40004, "2.4"],
  [999.96, "1000"],
  [9999.4, "9999"],
  [9999.6, "10\u202f000"],
  [12345.678, "12\u202f346"],
  [-1234567, "−1\u202f234\u202f567"],
  [0.000123456, "0.0001235"],
  [-5, "−5"],
  [1.23456e-7, "1.235e−7"],
  [-3e15, "−3e15"],
])("writeQuantity writes %d as %s", (value, text) => {
  expect(plain(value)).toBe(text);
});

test("writeQuantity(kind, value, { digits, trailingZeros, thousands }) does what the names say", () => {
  expect(plain(2.4, { trailingZeros: true })).toBe("2.400");
  expect(plain(0, { trailingZeros: true })).toBe("0.000");
  expect(plain(Math.PI, { digits: 7 })).toBe("3.141593");
  expect(plain(1234.5, { digits: 2 })).toBe("1235"); // figures before the point stay
  expect(plain(12345, { thousands: false })).toBe("12345");
});

test("writeQuantity(kind, value, options) refuses what is no number, and digits outside 1 to 15", () => {
  expect(() => plain(Number.NaN)).toThrow("writeQuantity: ratio is NaN; it must be a finite number");
  expect(() => plain(Number.NEGATIVE_INFINITY)).toThrow(RangeError);
  expect(() => plain(1, { digits: 0 })).toThrow("writeQuantity: digits is 0; it must be 1 to 15");
  expect(() => writeExactly("power", Number.NaN as Quantity<"power">)).toThrow(RangeError);
});

test("writeExactly(kind, value) prefers what a person would have typed", () => {
  expect(writeExactly("length", quantity("length", 4, "in"), "in")).toBe("4 in");
  expect(writeExactly("length", quantity("length", 130, "mm"))).toBe("130 mm");
  expect(writeExactly("temperature", quantity("temperature", 59, "°F"))).toBe("59 °F");
  expect(writeExactly("rotationalSpeed", quantity("rotationalSpeed", 2345.6, "rpm"))).toBe("2345.6 rpm");
  expect(writeExactly("fraction", quantity("fraction", 0.1 + 0.2))).toBe("30.000000000000004 %");
  expect(writeExactly("velocity", Math.PI as Quantity<"velocity">, "mph")).toBe("3.141592653589793 m/s");
});

/** Readings of ordinary and of extreme size; without sign for kinds that know none. */
function readingOf(kind: KindName) {
  if (kind === "count") return fc.integer({ min: 0, max: 1e6 });
  const size = fc.oneof(
    fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
    fc.double({ min: 1e-12, max: 1e15, noNaN: true }),
  );
  return signed.has(kind) ? fc.tuple(size, fc.boolean()).map(([s, minus]) => (minus ? -s : s)) : size;
}

test("parseQuantity reads back what writeQuantity wrote, to the digits written, in every unit", () => {
  for (const { kind, symbol } of everyUnit) {
    const roundTrip = fc.property(readingOf(kind), fc.integer({ min: 2, max: 12 }), (reading, digits) => {
      const unit = symbol as never;
      const value = quantity(kind, reading, ...unitArgument(symbol));
      const written = writeQuantity(kind, value, { unit, digits });
      const back = parseQuantity(kind, written.text, { unit });
      expect(back, `${kind}: ${written.text}`).toMatchObject({ ok: true, unit: expect.any(String) });
      if (!back.ok) return;
      // Half a unit of the last digit written, at worst 5·10^-digits of the reading; 1e-12 for the arithmetic.
      const scale = Math.abs(reading) * (5 * 10 ** -digits + 1e-12);
      const offset = kind === "temperature" ? 1e-12 * 1e3 : 0;
      const expected = quantity(kind, Math.abs(reading) + scale + offset, ...unitArgument(symbol));
      const span = Math.abs(expected - quantity(kind, Math.abs(reading), ...unitArgument(symbol)));
      expect(Math.abs(back.value - value), `${kind}: ${written.text}`).toBeLessThanOrEqual(span * (1 + 1e-9));
      // Written again, it is the same text.
      expect(writeQuantity(kind, back.value, { unit, digits }).text).toBe(written.text);
    });
    fc.assert(roundTrip, { seed: 20260101, numRuns: 10 });
  }
});

test("parseQuantity reads back the very same number from writeExactly, whatever unit the field has", () => {
  for (const { kind, symbol } of everyUnit) {
    const unit = symbol as never;
    const fieldUnits = fc.constantFrom(...unitsOf(kind).map((each) => each.symbol));
    const anyValue =
      kind === "count" ? fc.integer({ min: 0, max: 2 ** 53 }) : fc.double({ noNaN: true, noDefaultInfinity: true });
    const value = fc.oneof(
      anyValue.map((each) => (signed.has(kind) ? each : Math.abs(each)) + 0),
      readingOf(kind).map((reading) => quantity(kind, reading, ...unitArgument(symbol)) as number),
    );
    const roundTrip = fc.property(value, fieldUnits, (si, fieldUnit) => {
      const text = writeExactly(kind, si as never, unit);
      const back = parseQuantity(kind, text, { unit: fieldUnit as never });
      // A plain number takes the unit of its field, so a fraction in plain form needs a plain field.
      if (text.endsWith("%") || kind !== "fraction") expect(back.ok && back.value, `${kind}: ${text}`).toBe(si);
    });
    fc.assert(roundTrip, { seed: 20260101, numRuns: 15 });
  }
});

test("raised(number) and together(number, unit) set a reading for a page", () => {
  expect(["9.578e−11", "1e15", "−2.0e−6", "12.5", "–"].map(raised)).toEqual(["9.578·10⁻¹¹", "1·10¹⁵", "−2.0·10⁻⁶", "12.5", "–"]);
  expect(together("2.4", "bar a")).toBe("2.4\u00a0bar\u00a0a");
  expect(together("348.4", "mm³/stroke")).toBe("348.4\u00a0mm³/stroke");
  expect(together("6", "")).toBe("6");
});
