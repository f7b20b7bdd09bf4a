import { expect, test } from "vitest";
import { figureUnits } from "../../../site/state/figureUnits";
import { picks } from "../../../worksheets/drive-speeds/figures/picks";
import { frontPicks, type Picking } from "../../../worksheets/drive-speeds/picking";
import { demoIn, demoInstallations } from "../demo";

const valuesIn = (installation: string, changes: Partial<Picking> = {}) => {
  const evaluation = demoIn(installation as never);
  const values = Object.fromEntries(
    Object.entries(picks.from).map(([name, reference]) => [name, evaluation.require(reference)]),
  );
  return { ...values, ...changes } as unknown as Picking;
};
const units = figureUnits({ system: "SI", own: {} });

test.each(demoInstallations)("the demo's blower has picks in %s, near the teeth that it has", (installation) => {
  const at = valuesIn(installation);
  const found = frontPicks(at);
  if (found.none !== undefined) throw new Error(found.none);
  expect(found.unit).toBe("Blower");
  expect(found.found.picks.length).toBeGreaterThan(3);
  expect(frontPicks(at)).toBe(found);
  const table = picks.table(at as never, units);
  expect(table.rows[0]!.slice(0, 2)).toEqual([found.found.picks[0]!.driverTeeth, found.found.picks[0]!.drivenTeeth]);
  expect(picks.describe(at as never, units)).toContain(`${found.found.picks[0]!.drivenTeeth} on the unit`);
});

test("picks say in words why there are none", () => {
  const none = (change: Partial<Picking>) => picks.describe(valuesIn("vehicle", change) as never, units);
  expect(none({ pickRole: "rawWaterPump" })).toBe("No pulley of the table is this unit's.");
  expect(none({ pickCrankFewest: 70 as never })).toContain("are more than the most");
  expect(none({ pickRatio: 4.9 as never })).toContain("No pulleys and belt do it. 0 pairs of pulleys give the ratio.");
});
