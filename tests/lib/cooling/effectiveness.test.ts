import fc from "fast-check";
import { expect, test } from "vitest";
import {
  exchangerEffectiveness,
  type FlowArrangement,
  largestEffectiveness,
  transferUnitsFor,
} from "../../../lib/cooling";
import type { Count, Fraction, Ratio } from "../../../lib/quantity";
import published from "../../published/cooling-exchangers.json";

const arrangements: readonly FlowArrangement[] = [
  "counterflow",
  "parallelFlow",
  "crossflowUnmixed",
  "crossflowUnmixedApproximate",
  "crossflowMinimumMixed",
  "crossflowMaximumMixed",
  "shellAndTube",
];

function effectiveness(arrangement: FlowArrangement, units: number, ratio: number, shells?: number): number {
  return exchangerEffectiveness({
    arrangement,
    transferUnits: units as Ratio,
    capacityRatio: ratio as Ratio,
    shells: shells as Count | undefined,
  });
}

// Kays & London and Incropera et al., table 11.3, computed with another library (see the file). Closed forms agree to the
// nine digits given; the other library's unmixed crossflow is good to 1e-4, an independent march to 1e-5.
test.each(published.effectiveness.filter((row) => row.arrangement !== "any"))(
  "exchangerEffectiveness meets row $id: $arrangement, $transferUnits units at $capacityRatio",
  (row) => {
    const ours = effectiveness(row.arrangement as FlowArrangement, row.transferUnits, row.capacityRatio, row.shells);
    const tolerance = row.arrangement === "crossflowUnmixed" ? 1e-5 : 2e-9;
    expect(Math.abs(ours / row.effectiveness - 1)).toBeLessThan(tolerance);
  },
);

test("exchangerEffectiveness of every arrangement is 1 − e^(−N) where one side is vast", () => {
  const rows = published.effectiveness.filter((row) => row.arrangement === "any");
  expect(rows.length).toBeGreaterThan(0);
  for (const { transferUnits, effectiveness: expected } of rows) {
    for (const arrangement of arrangements) {
      expect(effectiveness(arrangement, transferUnits, 0)).toBeCloseTo(expected, 9);
      // … and nears it without a step. The mean of the two streams bends the result by the order of the ratio.
      expect(effectiveness(arrangement, transferUnits, 1e-9)).toBeCloseTo(expected, 7);
    }
  }
});

// A march over the plate, first order in 1/n, extrapolated once: knows nothing of the series.
test("exchangerEffectiveness of unmixed crossflow agrees with a march over the plate", () => {
  const march = (units: number, ratio: number, n: number) => {
    const cold = new Float64Array(n);
    let heat = 0;
    for (let row = 0; row < n; row++) {
      let hot = 1;
      for (let column = 0; column < n; column++) {
        // Exchange in a square between the means of inlet and outlet on both sides.
        const a = units / n;
        const b = (units * ratio) / n;
        const passed = (hot - cold[column]!) / (1 + a / 2 + b / 2);
        hot -= a * passed;
        cold[column]! += b * passed;
      }
      heat += 1 - hot;
    }
    return heat / n;
  };
  for (const [units, ratio] of [
    [0.7, 1],
    [2, 0.4],
    [6, 0.9],
  ] as const) {
    // The scheme is of second order: halving the step leaves a quarter of the error.
    const better = (4 * march(units, ratio, 240) - march(units, ratio, 120)) / 3;
    expect(effectiveness("crossflowUnmixed", units, ratio)).toBeCloseTo(better, 6);
  }
});

test("the approximate unmixed crossflow is up to 3.8 % too low and up to 1.1 % too high", () => {
  const errors: number[] = [];
  for (let units = 0.05; units <= 8; units += 0.05) {
    for (const ratio of [0.1, 0.25, 0.5, 0.75, 1]) {
      const exact = effectiveness("crossflowUnmixed", units, ratio);
      errors.push(effectiveness("crossflowUnmixedApproximate", units, ratio) / exact - 1);
    }
  }
  // Not a published figure: the two formulas held against each other, as the docstring says it.
  expect(Math.min(...errors)).toBeCloseTo(-0.038, 3);
  expect(Math.max(...errors)).toBeCloseTo(0.011, 3);
});

test("counterflow at capacity ratio 1 is N/(1 + N), and is neared from below without a step", () => {
  for (const units of [0.1, 1, 10, 400]) {
    expect(effectiveness("counterflow", units, 1)).toBeCloseTo(units / (1 + units), 14);
    expect(effectiveness("counterflow", units, 1 - 1e-12)).toBeCloseTo(units / (1 + units), 9);
  }
});

test("many shells in series come near to counterflow", () => {
  expect(effectiveness("shellAndTube", 3, 0.8, 12)).toBeCloseTo(effectiveness("counterflow", 3, 0.8), 2);
});

test("which stream is mixed makes no difference when both are alike, and some when they are not", () => {
  expect(effectiveness("crossflowMinimumMixed", 2, 1)).toBeCloseTo(effectiveness("crossflowMaximumMixed", 2, 1), 14);
  expect(effectiveness("crossflowMinimumMixed", 3, 0.25)).toBeGreaterThan(
    effectiveness("crossflowMaximumMixed", 3, 0.25) + 0.01,
  );
});

const units = fc.double({ min: 1e-6, max: 60, noNaN: true });
const ratio = fc.double({ min: 0, max: 1, noNaN: true });
const arrangement = fc.constantFrom(...arrangements);
const seed = 20260101;

test("exchangerEffectiveness lies between parallel flow and counterflow, and within 0 to 1", () => {
  fc.assert(
    fc.property(arrangement, units, ratio, (kind, n, c) => {
      const e = effectiveness(kind, n, c);
      // The approximation overshoots counterflow a little at few units: its own error is allowed.
      const slack = kind === "crossflowUnmixedApproximate" ? 0.04 : 1e-12;
      expect(e).toBeGreaterThan(0);
      expect(e).toBeLessThanOrEqual(Math.min(1, effectiveness("counterflow", n, c) * (1 + slack)));
      expect(e).toBeGreaterThanOrEqual(effectiveness("parallelFlow", n, c) * (1 - slack));
    }),
    { seed, numRuns: 300 },
  );
});

test("exchangerEffectiveness rises with transfer units", () => {
  fc.assert(
    fc.property(arrangement, units, ratio, fc.double({ min: 1.001, max: 2, noNaN: true }), (kind, n, c, more) => {
      expect(effectiveness(kind, n * more, c)).toBeGreaterThanOrEqual(effectiveness(kind, n, c) * (1 - 1e-13));
    }),
    { seed, numRuns: 300 },
  );
});

test("exchangerEffectiveness falls as the streams come to equal size", () => {
  fc.assert(
    fc.property(arrangement, units, ratio, ratio, (kind, n, a, b) => {
      expect(effectiveness(kind, n, Math.max(a, b))).toBeLessThanOrEqual(
        effectiveness(kind, n, Math.min(a, b)) * (1 + 1e-10),
      );
    }),
    { seed, numRuns: 300 },
  );
});

test("transferUnitsFor gives back the units that exchangerEffectiveness was given", () => {
  fc.assert(
    fc.property(
      arrangement,
      fc.double({ min: 1e-4, max: 12, noNaN: true }),
      ratio,
      fc.integer({ min: 1, max: 4 }),
      (kind, n, c, s) => {
        const shells = (kind === "shellAndTube" ? s : 1) as Count;
        const core = { arrangement: kind, capacityRatio: c as Ratio, shells };
        const e = exchangerEffectiveness({ ...core, transferUnits: n as Ratio });
        // Near the largest effectiveness digits run out: what the last digits of ε are worth in N sets the tolerance.
        const step = n * 1e-4;
        const slope = (exchangerEffectiveness({ ...core, transferUnits: (n + step) as Ratio }) - e) / step;
        fc.pre(slope > 1e-7);
        const back = transferUnitsFor({ ...core, effectiveness: e });
        expect(Math.abs(back - n)).toBeLessThan(1e-11 * n + 1e-14 / slope);
      },
    ),
    { seed, numRuns: 500 },
  );
});

test("largestEffectiveness is what 500 transfer units come to", () => {
  for (const kind of arrangements) {
    for (const c of [0, 0.2, 0.6, 0.95]) {
      const most = largestEffectiveness({ arrangement: kind, capacityRatio: c as Ratio });
      // Only unmixed crossflow is still on its way: 1 − 1/√(π N) at equal streams.
      expect(Math.abs(effectiveness(kind, 500, c) - most)).toBeLessThan(
        kind.startsWith("crossflowUnmixed") ? 0.02 : 1e-9,
      );
    }
  }
});

test("transferUnitsFor refuses what an arrangement cannot do and tells the most that it can", () => {
  const ask = (kind: FlowArrangement, e: number, c: number) => () =>
    transferUnitsFor({ arrangement: kind, effectiveness: e as Fraction, capacityRatio: c as Ratio });
  expect(ask("parallelFlow", 0.7, 0.6)).toThrow(
    "transferUnitsFor: effectiveness is 0.7; parallelFlow at capacity ratio 0.6 stays below 0.625",
  );
  expect(ask("shellAndTube", 0.6, 1)).toThrow("stays below 0.5858");
  expect(ask("crossflowUnmixed", 0.99, 1)).toThrow("needs over 500 transfer units");
  expect(ask("counterflow", 1, 0.5)).toThrow(RangeError);
  expect(ask("counterflow", Number.NaN, 0.5)).toThrow(RangeError);
});

test("exchangerEffectiveness refuses arguments outside their span, not-a-number among them", () => {
  expect(() => effectiveness("counterflow", Number.NaN, 0.5)).toThrow("transferUnits is NaN");
  expect(() => effectiveness("counterflow", -1, 0.5)).toThrow("it must be 0 to 500");
  expect(() => effectiveness("counterflow", 1, 1.2)).toThrow("capacityRatio is 1.2; it must be 0 to 1");
  expect(() => effectiveness("counterflow", 1, 0.5, 2)).toThrow("shells is 2; it must be 1 to 1");
  expect(() => effectiveness("shellAndTube", 1, 0.5, 1.5)).toThrow("it must be a whole number");
});
