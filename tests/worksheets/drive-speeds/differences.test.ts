import { expect, test } from "vitest";
import { beltFits } from "../../../worksheets/drive-speeds/beltFits";
import { beltLoads } from "../../../worksheets/drive-speeds/beltLoads";
import { beltRuns } from "../../../worksheets/drive-speeds/beltRuns";
import { differencesOf, type FrontOf } from "../../../worksheets/drive-speeds/differences";
import { unitLoads } from "../../../worksheets/drive-speeds/unitLoads";
import { demoIn, demoInstallations } from "../demo";

const frontOf = (installation: string): FrontOf => {
  const evaluation = demoIn(installation as never);
  return {
    label: installation,
    beltRuns: evaluation.require(beltRuns),
    beltFits: evaluation.require(beltFits),
    beltLoads: evaluation.require(beltLoads),
    unitLoads: evaluation.require(unitLoads),
  };
};

test("differencesOf(fronts) says what the demo's truck, cell and boat do not share, and nothing that they do", () => {
  const fronts = demoInstallations.map(frontOf);
  const found = differencesOf(fronts);
  const valuesOf = (of: string, what: string) => found.find((each) => each.of === of && each.what === what)?.values;
  expect(valuesOf("Fan belt", "there")).toEqual(["yes", "–", "–"]);
  expect(valuesOf("Raw-water belt", "there")).toEqual(["–", "–", "yes"]);
  expect(valuesOf("Blower", "teeth")).toEqual([27, 27, 28]);
  expect(valuesOf("Hydraulic pump", "there")).toEqual(["yes", "–", "yes"]);
  // All three have the same sections and turn the same way.
  expect(found.filter(({ what }) => what === "section" || what.startsWith("turns"))).toEqual([]);
  for (const { values } of found) {
    expect(values).toHaveLength(3);
    expect(new Set(values).size).toBeGreaterThan(1);
  }
});

test("differencesOf(fronts) is empty between an installation and itself", () => {
  expect(differencesOf([frontOf("boat"), frontOf("boat")])).toEqual([]);
});
