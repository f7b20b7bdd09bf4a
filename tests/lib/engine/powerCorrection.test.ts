import { expect, test } from "vitest";
import {
  atmosphericExponents,
  atmosphericFactor,
  correctionReference,
  engineFactor,
  powerCorrectionFactor,
} from "../../../lib/engine";
import type { MassFlow, Pressure, Ratio, RotationalSpeed, Temperature, Volume } from "../../../lib/quantity";
import published from "../../published/engine-power-correction.json" with { type: "json" };
import { close, type PublishedRow } from "../publishedRows";

// ISO 1585 form and 30 CFR 7.87, as public reproductions give them; the tables' own arithmetic, 1e-8.
const all = published.parts.flatMap((part) => part.rows as unknown as (PublishedRow & { group: string })[]);
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;
const exponentsOf = (row: PublishedRow) => atmosphericExponents.find(({ name }) => name === row.inputs["kind"])!;
const airOf = (row: PublishedRow) => ({
  dryPressure: (1000 * given(row, "p_dry_kPa")) as Pressure,
  temperature: given(row, "T_K") as Temperature,
  exponents: exponentsOf(row),
});
const litreEngine = { displacement: 1e-3 as Volume, engineSpeed: 2 as RotationalSpeed, boostPressureRatio: 1 as Ratio };

const airRows = all.filter(({ group }) => group.startsWith("atmospheric factor"));
const factorRows = all.filter(({ group }) => group === "engine factor fm");
const testRows = all.filter(({ group }) => group === "complete correction");

test("the tables are there", () => expect([airRows.length, factorRows.length, testRows.length]).toEqual([16, 6, 6]));

test.each(airRows)("atmosphericFactor of $inputs.kind: $id", (row) => {
  close(atmosphericFactor(airOf(row)), row.expected["fa"], 1e-8);
});

test.each(factorRows)("engineFactor by reduced fuel: $id", (row) => {
  // a litre at two turns a second burns one cycle's milligrams in a second
  const fuelFlow = (given(row, "qc_mg_L_cycle") * 1e-6) as MassFlow;
  close(engineFactor({ ...litreEngine, fuelFlow }), row.expected["fm"], 1e-8);
});

test.each(testRows)("a complete correction: $id", (row) => {
  const engine = engineFactor({
    fuelFlow: (given(row, "fuel_g_s") / 1000) as MassFlow,
    displacement: (given(row, "displacement_L") / 1000) as Volume,
    engineSpeed: (given(row, "speed_rpm") / 60) as RotationalSpeed,
    boostPressureRatio: given(row, "r") as Ratio,
  });
  close(engine, row.expected["fm"], 1e-8);
  close(powerCorrectionFactor(atmosphericFactor(airOf(row)), engine), row.expected["alpha"], 1e-8);
});

test("in reference air nothing is corrected", () => {
  for (const exponents of atmosphericExponents) {
    expect(atmosphericFactor({ ...correctionReference, exponents })).toBe(1);
  }
});
