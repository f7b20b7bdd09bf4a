import { describe, expect, test } from "vitest";
import { type Build, declaredValues, withMeasured } from "../../worksheets/build/build";
import { readBuild, writeBuild } from "../../worksheets/build/file";
import { graph } from "../site/fixture";

const build: Build = {
  name: "Measured engine",
  note: "",
  shared: declaredValues(graph),
  installations: [
    { key: "cell", label: "Test cell", note: "", own: {} },
    { key: "boat", label: "Boat", note: "", own: {} },
  ],
  unknown: {},
};

/** The build's file with what it holds under "measured". */
const fileWith = (measured: unknown): string => JSON.stringify({ ...JSON.parse(writeBuild(build, graph)), measured });
const message = (measured: unknown): string => {
  const read = readBuild(fileWith(measured), graph);
  return read.ok ? "read" : read.message;
};

describe("measured values", () => {
  test("come back from a file as they were, in the unit that people read", () => {
    const measured = withMeasured(build, "boat", "chargeTemperature", 331.15);
    expect(JSON.parse(writeBuild(measured, graph)).measured).toEqual({ boat: { chargeTemperature: "58 °C" } });
    const read = readBuild(writeBuild(measured, graph), graph);
    expect(read).toMatchObject({ ok: true, build: { measured: { boat: { chargeTemperature: 331.15 } } } });
  });

  test("leave no trace in a build and its file once they are taken away", () => {
    const measured = withMeasured(withMeasured(build, "cell", "fuelFlow", 0.03), "cell", "fuelFlow", undefined);
    expect(measured).toEqual(build);
    expect(writeBuild(measured, graph)).toBe(writeBuild(build, graph));
  });

  test("of cells that this version does not know are kept with the file", () => {
    const text = fileWith({ cell: { later: { any: "thing" }, fuelFlow: "100 kg/h" } });
    const read = readBuild(text, graph);
    if (!read.ok) throw new Error(read.message);
    expect(read.build.unknown).toEqual({ measured: { cell: { later: { any: "thing" } } } });
    expect(JSON.parse(writeBuild(read.build, graph)).measured).toEqual(JSON.parse(text).measured);
    expect(read.notices.join(" ")).toContain("measured.cell.later");
  });

  test.each([
    [{ aeroplane: { fuelFlow: "1 kg/h" } }, "measured.aeroplane: no installation"],
    [{ cell: { fuelFlow: "30 psi" } }, "measured.cell.fuelFlow: "],
    [{ cell: { fuelFlow: 3 } }, "measured.cell.fuelFlow: 3 has no unit"],
    [{ cell: { fuelFlow: "1e999 kg/h" } }, "measured.cell.fuelFlow: "],
    [{ cell: [] }, "measured.cell: it is a list"],
    [7, "measured: it is 7"],
  ])("%j is refused by its path", (measured, words) => {
    expect(message(measured)).toContain(words);
  });

  test("withMeasured() refuses an installation that the build does not have", () => {
    expect(() => withMeasured(build, "aeroplane", "fuelFlow", 1)).toThrow("it has cell, boat");
  });
});
