import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { acceptInput, input } from "../../../lib/graph";
import * as fixture from "./fixture";
import { airDemand, of } from "./fixture";

const [fan, pump] = fixture.accessoryRun.value;

describe("acceptInput(quantity, value)", () => {
  test("accepts what lies in the span, both ends included", () => {
    fc.assert(
      fc.property(fc.double({ min: 50e3, max: 2000e3, noNaN: true }), (power) => {
        expect(acceptInput(fixture.ratedPower, power)).toBeNull();
      }),
      { seed: 20260101, numRuns: 100 },
    );
    expect(acceptInput(fixture.ratedPower, 50e3)).toBeNull();
    expect(acceptInput(fixture.ratedPower, 2000e3)).toBeNull();
  });

  test.each([
    [fixture.ratedPower, 5e3, "Rated power is 5 kW; it must be 50 to 2000 kW"],
    [fixture.ratedPower, 2.1e6, "Rated power is 2100 kW; it must be 50 to 2000 kW"],
    [fixture.ratedPower, -1, "Rated power is −0.001 kW; it must be 50 to 2000 kW"],
    [fixture.ambientTemperature, 373.15, "Ambient temperature is 100 °C; it must be −53.15 to 56.85 °C"],
    [fixture.ambientPressure, 2e5, "Ambient pressure is 200 kPa a; it must be 50 to 110 kPa a"],
    [fixture.effectiveness, 1.5, "Cooler effectiveness is 150 %; it must be 0 to 100 %"],
    [fixture.airFuelRatio, 12, "Air–fuel ratio is 12; it must be 14 to 60"],
  ])("refuses %# in words with value and bound", (target, value, words) => {
    expect(acceptInput(target, value)).toBe(words);
  });

  test("speaks the other system's units when asked", () => {
    // 5 kW are 6.705 hp; 50 and 2000 kW are 67.05 and 2682 hp.
    expect(acceptInput(fixture.ratedPower, 5e3, "US")).toBe(
      "Rated power is 6.705 hp; it must be 67.0511 to 2682.04 hp",
    );
  });

  test("writes as many digits as tell a value from the bound it passes", () => {
    expect(acceptInput(fixture.ratedPower, 2000e3 + 1e-3)).toBe(
      "Rated power is 2000.000001 kW; it must be 50 to 2000 kW",
    );
  });

  test.each([
    [Number.NaN, "is not a number"],
    ["700 kW", "is not a number"],
    [undefined, "is not a number"],
    [null, "is not a number"],
    [Number.POSITIVE_INFINITY, "is infinite"],
    [Number.NEGATIVE_INFINITY, "is minus infinite"],
  ])("refuses %s", (value, words) => {
    expect(acceptInput(fixture.ratedPower, value)).toBe(`Rated power ${words}; it must be 50 to 2000 kW`);
  });

  test("refuses infinity even where a span has no end, and says the end there is", () => {
    const open = input("open", {
      label: "Hours run",
      kind: "time",
      hint: "running hours",
      value: of("time", 0),
      span: [of("time", 0), of("time", Number.POSITIVE_INFINITY)],
      step: 3600,
    });
    expect(acceptInput(open, 1e9)).toBeNull();
    expect(acceptInput(open, -3600)).toBe("Hours run is −1 h; it must be at least 0 h");
    expect(acceptInput(open, Number.POSITIVE_INFINITY)).toBe("Hours run is infinite; it must be at least 0 h");
  });

  test("takes whole counts only", () => {
    expect(acceptInput(fixture.cylinders, 8)).toBeNull();
    expect(acceptInput(fixture.cylinders, 7.5)).toBe("Cylinders is 7.5; it must be a whole number, 1 to 16");
    expect(acceptInput(fixture.cylinders, 17)).toBe("Cylinders is 17; it must be 1 to 16");
  });
});

describe("acceptInput(choice, value)", () => {
  test.each(["one", "two"])("accepts %s", (name) => expect(acceptInput(fixture.stages, name)).toBeNull());

  test.each([
    ["three", '"three"'],
    ["toString", '"toString"'],
    ["__proto__", '"__proto__"'],
    [2, "not a name"],
    [undefined, "not a name"],
  ])("refuses %s and lists what there is", (value, said) => {
    expect(acceptInput(fixture.stages, value)).toBe(`Stages is ${said}; it must be one of "one", "two"`);
  });
});

describe("acceptInput(table, rows)", () => {
  test("accepts rows that suit, and columns it does not know beside them", () => {
    expect(acceptInput(fixture.accessoryRun, [fan, pump])).toBeNull();
    expect(acceptInput(fixture.accessoryRun, [{ ...fan, colour: "black" }])).toBeNull();
  });

  test("holds the count of rows", () => {
    expect(acceptInput(fixture.accessoryRun, [])).toBe("Accessory run has 0 rows; it must have 1 to 4");
    expect(acceptInput(fixture.accessoryRun, [fan, fan, fan, fan, fan])).toBe(
      "Accessory run has 5 rows; it must have 1 to 4",
    );
    expect(acceptInput({ ...fixture.accessoryRun, rows: [2, 2] }, [fan])).toBe(
      "Accessory run has 1 row; it must have 2",
    );
  });

  test.each([
    [{ teeth: 5 }, "Accessory run, row 2, Teeth is 5; it must be 10 to 120"],
    [{ teeth: 20.5 }, "Accessory run, row 2, Teeth is 20.5; it must be a whole number, 10 to 120"],
    [{ teeth: undefined }, "Accessory run, row 2, Teeth is not a number; it must be 10 to 120"],
    [{ load: Number.NaN }, "Accessory run, row 2, Load is not a number; it must be 0 to 100 kW"],
    [{ drive: "rope" }, 'Accessory run, row 2, Drive is "rope"; it must be one of "belt", "gear"'],
    [
      { name: "a name of far too many letters" },
      "Accessory run, row 2, Name is 30 characters long; it must be at most 20",
    ],
    [{ name: 7 }, "Accessory run, row 2, Name is not a text"],
  ])("names row and column of what does not suit: %o", (change, words) => {
    expect(acceptInput(fixture.accessoryRun, [fan, { ...pump, ...change }, fan])).toBe(words);
  });

  test("names a column that a row lacks, and what is no row at all", () => {
    const { teeth: _left, ...toothless } = fan!;
    expect(acceptInput(fixture.accessoryRun, [toothless])).toBe("Accessory run, row 1, Teeth is missing");
    for (const row of [null, 3, "fan", []]) {
      expect(acceptInput(fixture.accessoryRun, [fan, row])).toBe("Accessory run, row 2 is not a row of columns");
    }
    for (const rows of [null, {}, "fan", undefined]) {
      expect(acceptInput(fixture.accessoryRun, rows)).toBe("Accessory run is not a list of rows");
    }
  });
});

test("every input accepts its own declared value", () => {
  for (const each of airDemand.inputs) expect(acceptInput(each, each.value)).toBeNull();
});
