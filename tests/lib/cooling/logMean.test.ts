import { expect, test } from "vitest";
import { logMeanTemperatureDifference, meanDifferenceCorrection } from "../../../lib/cooling";
import type { Count, Temperature } from "../../../lib/quantity";
import published from "../../published/cooling-exchangers.json";

const celsius = (degrees: number) => (degrees + 273.15) as Temperature;

function ends(hotInlet: number, hotOutlet: number, coldInlet: number, coldOutlet: number) {
  return {
    hotInlet: celsius(hotInlet),
    hotOutlet: celsius(hotOutlet),
    coldInlet: celsius(coldInlet),
    coldOutlet: celsius(coldOutlet),
  };
}

// The definition, worked with other code; nine digits are given.
test.each(published.logMean)("logMeanTemperatureDifference meets row $id", ({ inputs, expected }) => {
  const arrangement = inputs.arrangement === "parallel" ? "parallelFlow" : "counterflow";
  const { Th_in_C, Th_out_C, Tc_in_C, Tc_out_C } = inputs;
  const ours = logMeanTemperatureDifference({ arrangement, ...ends(Th_in_C, Th_out_C, Tc_in_C, Tc_out_C) });
  expect(Math.abs(ours / expected.LMTD_K - 1)).toBeLessThan(2e-9);
});

// Fakheri (2003), computed with another library by the closed form in P and R, which ours does not use.
test.each(published.correction)("meanDifferenceCorrection meets row $id", ({ inputs, expected }) => {
  const { Th_in, Th_out, Tc_in, Tc_out, shells } = inputs;
  const temperatures = ends(Th_in, Th_out, Tc_in, Tc_out);
  const ours = meanDifferenceCorrection({ arrangement: "shellAndTube", shells: shells as Count, ...temperatures });
  expect(Math.abs(ours / expected.F - 1)).toBeLessThan(1e-8);
});

test("logMeanTemperatureDifference of equal ends is that difference, and is neared without a step", () => {
  expect(logMeanTemperatureDifference({ arrangement: "counterflow", ...ends(80, 60, 30, 50) })).toBeCloseTo(30, 12);
  expect(logMeanTemperatureDifference({ arrangement: "counterflow", ...ends(80, 60 + 1e-9, 30, 50) })).toBeCloseTo(
    30,
    8,
  );
});

test("logMeanTemperatureDifference lies between the geometric and the arithmetic mean", () => {
  const mean = logMeanTemperatureDifference({ arrangement: "counterflow", ...ends(120, 50, 20, 60) });
  expect(mean).toBeGreaterThan(Math.sqrt(60 * 30));
  expect(mean).toBeLessThan((60 + 30) / 2);
});

test("logMeanTemperatureDifference refuses streams that would cross", () => {
  expect(() => logMeanTemperatureDifference({ arrangement: "parallelFlow", ...ends(90, 50, 20, 60) })).toThrow(
    "logMeanTemperatureDifference: outlet difference is -10 K; it must be above 0 K",
  );
  expect(() => logMeanTemperatureDifference({ arrangement: "counterflow", ...ends(90, Number.NaN, 20, 60) })).toThrow(
    RangeError,
  );
});

test("meanDifferenceCorrection is 1 for counterflow and where one side keeps its temperature", () => {
  expect(meanDifferenceCorrection({ arrangement: "counterflow", ...ends(95, 70, 20, 45) })).toBeCloseTo(1, 14);
  expect(meanDifferenceCorrection({ arrangement: "shellAndTube", ...ends(95, 95, 20, 45) })).toBeCloseTo(1, 12);
});

test("meanDifferenceCorrection of parallel flow gives the log mean of parallel flow", () => {
  const temperatures = ends(95, 70, 20, 45);
  const corrected =
    meanDifferenceCorrection({ arrangement: "parallelFlow", ...temperatures }) *
    logMeanTemperatureDifference({ arrangement: "counterflow", ...temperatures });
  const direct = logMeanTemperatureDifference({ arrangement: "parallelFlow", ...temperatures });
  expect(corrected).toBeCloseTo(direct, 10);
});

test("meanDifferenceCorrection grows with shells and refuses what one shell cannot do", () => {
  const temperatures = ends(100, 45, 20, 60);
  const factor = (shells: number) =>
    meanDifferenceCorrection({ arrangement: "shellAndTube", shells: shells as Count, ...temperatures });
  expect(() => factor(1)).toThrow("stays below");
  expect(factor(3)).toBeGreaterThan(factor(2));
  expect(factor(3)).toBeLessThan(1);
});
