import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assess, checksOf, compile, marginShare, nearShare, outsideRange, standing } from "../../../lib/graph";
import * as fixture from "./fixture";
import { airDemand, declared } from "./fixture";

const { run } = compile(airDemand);

describe("marginShare(check)", () => {
  test.each([
    { side: "most", value: 90, bound: 100, share: 0.1 },
    { side: "most", value: 110, bound: 100, share: -0.1 },
    { side: "least", value: 110, bound: 100, share: 0.1 },
    { side: "least", value: 90, bound: 100, share: -0.1 },
    // A bound below zero is measured by its size, so that room stays positive inside.
    { side: "least", value: -50, bound: -100, share: 0.5 },
    { side: "most", value: -150, bound: -100, share: 0.5 },
  ] as const)("is $share for $value, at $side $bound", ({ side, value, bound, share }) => {
    expect(marginShare({ kind: "power", side, value, bound })).toBeCloseTo(share, 14);
  });

  test("takes a temperature's share above 20 °C, since a kelvin scale would flatter it", () => {
    // 60 °C of 70 °C allowed: 10 K of the 50 K above 20 °C are left, not 10 of 343.15.
    const check = { kind: "temperature", side: "most", value: 333.15, bound: 343.15 } as const;
    expect(marginShare(check)).toBeCloseTo(0.2, 12);
    expect(marginShare({ ...check, kind: "temperatureDifference" })).toBeCloseTo(10 / 343.15, 12);
  });

  test("takes a temperature's share of 10 K at least, so that a bound near 20 °C has one", () => {
    expect(marginShare({ kind: "temperature", side: "most", value: 290.15, bound: 293.15 })).toBeCloseTo(0.3, 12);
    expect(marginShare({ kind: "temperature", side: "least", value: 290.15, bound: 293.15 })).toBeCloseTo(-0.3, 12);
  });

  test("has no share of a bound of zero: any room is enough, any lack is past", () => {
    const at = (value: number) => marginShare({ kind: "temperatureDifference", side: "least", value, bound: 0 });
    expect(at(1e-9)).toBe(Number.POSITIVE_INFINITY);
    expect(at(0)).toBe(Number.POSITIVE_INFINITY);
    expect(at(-1e-9)).toBe(Number.NEGATIVE_INFINITY);
  });

  test("is negative exactly when the value is past its bound", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("power" as const, "temperature" as const, "temperatureDifference" as const),
        fc.constantFrom("most" as const, "least" as const),
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        (kind, side, value, bound) => {
          // Differences below the smallest normal number have no share worth telling.
          fc.pre(value === bound || Math.abs(value - bound) > 1e-9);
          const past = side === "most" ? value > bound : value < bound;
          expect(marginShare({ kind, side, value, bound }) < 0).toBe(past);
        },
      ),
      { seed: 20260101, numRuns: 500 },
    );
  });
});

describe("standing(share)", () => {
  test.each([
    [Number.POSITIVE_INFINITY, "inside"],
    [nearShare, "inside"],
    [nearShare - 1e-12, "near"],
    [0, "near"],
    [-1e-12, "past"],
    [Number.NEGATIVE_INFINITY, "past"],
  ] as const)("of %d is %s", (share, word) => expect(standing(share)).toBe(word));
});

describe("assess(cells, evaluation)", () => {
  test("holds each limit against its bound: a number, an input, a part of a structure", () => {
    const checks = assess(airDemand.cells, run(declared));
    const told = checks.map(({ cell, component, side, bound }) => [cell.key, component, side, bound]);
    expect(new Set(told)).toEqual(
      new Set([
        ["airFlow", "air meters", "most", 1.1],
        ["chargeTemperature", "piston crowns", "most", 345],
        ["pulleys", "fan", "most", 150],
        ["pulleys", "water pump", "most", 150],
      ]),
    );
  });

  test("asks nothing of a bound of zero that is met, and tells one that is not", () => {
    expect(checksOf(fixture.coolerRoom, run(declared))).toEqual([]);
    // 200 kW hardly need boost: the charge leaves the compressors colder than a coolant of 380 K.
    const warmed = run({ ...declared, ratedPower: 200e3, coolantTemperature: 380 });
    expect(checksOf(fixture.coolerRoom, warmed)).toMatchObject([
      { component: "cooler", side: "least", bound: 0, margin: Number.NEGATIVE_INFINITY, standing: "past" },
    ]);
  });

  test("carries the label, the hint, the source, the margin and the standing", () => {
    const [check] = checksOf(fixture.chargeTemperature, run({ ...declared, hottestCharge: 320 }));
    expect(check).toMatchObject({
      label: "Charge temperature",
      kind: "temperature",
      hint: "coolant",
      source: "common practice, no source",
      bound: 320,
    });
    expect(check!.margin).toBeCloseTo((320 - check!.value) / (320 - 293.15), 12);
    expect(check!.standing).toBe(standing(check!.margin));
  });

  test("turns from inside through near to past as the bound closes in", () => {
    // Air flow is 0.9912 kg/s.
    const at = (meterCapacity: number) => checksOf(fixture.airFlow, run({ ...declared, meterCapacity }))[0]!.standing;
    expect([at(1.1), at(1.0), at(0.9)]).toEqual(["inside", "near", "past"]);
  });

  test("finds every row of a table that is past, by its own name", () => {
    const accessoryRun = [
      { name: "alternator", drive: "belt", teeth: 12, load: 2e3 },
      { name: "fan", drive: "belt", teeth: 60, load: 9e3 },
    ];
    const checks = checksOf(fixture.pulleys, run({ ...declared, accessoryRun }));
    // 35 rev/s · 60/12 = 175 rev/s against 150; the fan turns at crank speed.
    expect(checks.map(({ component, value, standing }) => [component, value, standing])).toEqual([
      ["alternator", 175, "past"],
      ["fan", 35, "inside"],
    ]);
  });

  test("is silent about a cell in refusal, and goes on with the others", () => {
    const checks = assess(airDemand.cells, run({ ...declared, ratedPower: 60e3 }));
    expect(checks.map(({ cell }) => cell.key)).toEqual(expect.arrayContaining(["airFlow", "pulleys"]));
    expect(checks.map(({ cell }) => cell.key)).not.toContain("chargeTemperature");
  });

  test("is silent about a limit whose bound is in refusal", () => {
    const refusing = {
      ...fixture.torque,
      limits: [{ component: "c", side: "most" as const, bound: fixture.stageRatio }],
    };
    expect(checksOf(refusing as never, run({ ...declared, ratedPower: 60e3 }))).toEqual([]);
    expect(checksOf(refusing as never, run(declared))).toHaveLength(1);
  });
});

describe("outsideRange(cell, evaluation)", () => {
  test("is empty inside, ends included, and for a cell without a span", () => {
    expect(outsideRange(fixture.stageRise, run(declared))).toEqual([]);
    expect(outsideRange(fixture.stageRise, run({ ...declared, ambientTemperature: 240 }))).toEqual([]);
    expect(outsideRange(fixture.torque, run(declared))).toEqual([]);
  });

  test("tells the span that an operand leaves, and the one that the result leaves", () => {
    expect(outsideRange(fixture.stageRise, run({ ...declared, ambientTemperature: 239.9 }))).toEqual([
      "inlet air of −33 to 47 °C",
    ]);
    const hard = run({ ...declared, airFuelRatio: 40 });
    expect(hard.require(fixture.pressureRatio)).toBeGreaterThan(4);
    expect(outsideRange(fixture.pressureRatio, hard)).toEqual([
      "the efficiency is taken as one number up to a pressure ratio of 4",
    ]);
  });

  test("says nothing of a cell in refusal", () => {
    expect(outsideRange(fixture.pressureRatio, run({ ...declared, ratedPower: 60e3 }))).toEqual([]);
  });
});
