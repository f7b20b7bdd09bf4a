import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openStage, type Staged } from "./stage";

const path = (...parts: readonly string[]) => ({ chargeOrder: parts.map((part) => ({ part })) });

/** Builds that draw differently. */
const cases: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  declared: {},
  "measured points": { compressorSource: "points" },
  "measured points of both banks": {
    ...path("filter", "bankB", "bankA", "intercooler", "blower", "aftercooler", "plenum"),
    compressorSource: "points",
    bankBCompressorSource: "points",
  },
  "two banks in series": path("filter", "bankB", "bankA", "intercooler", "blower", "aftercooler", "plenum"),
  "every part, the blower first": path("filter", "blower", "spray", "intercooler", "bankB", "bankA", "aftercooler", "plenum"),
  "more promised than given": { ratedPower: 1.1e6 },
  "high up and hot, the bypass open": { altitude: 4000, ambientTemperature: 313, blowerBypass: "open" },
  "far from surge with small turbines, so that power leaps": { surgeMarginWanted: 0.12, bankATurbineArea: 5e-4 },
};

/** Builds for which only some figures have something to draw. */
const bare: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "no turbochargers": path("filter", "blower", "aftercooler", "plenum"),
  "no blower": path("filter", "bankA", "aftercooler", "plenum"),
};

const keys = [
  "arrangementsCompared",
  "blowerDrive",
  "chargeSteps",
  "compressorField",
  "powerOverAltitude",
  "powerOverSpeed",
  "pressureShares",
];
const widths = [320, 470, 580, 760, 900];

let staged: Staged;
beforeAll(async () => {
  staged = await openStage();
});
afterAll(() => staged?.close());

test("the page draws every figure of the match", async () => {
  expect(await staged.keys()).toEqual(expect.arrayContaining(keys));
});

async function faultsAt(key: string, changes: Readonly<Record<string, unknown>>): Promise<readonly string[]> {
  const all: string[] = [];
  for (const width of widths) {
    for (const system of ["SI", "US"] as const) {
      const { faults, outside, smallest } = await staged.show({ key, changes, width, system });
      all.push(...[...faults, ...outside].map((fault) => `${width} px, ${system}: ${fault}`));
      if (smallest < 13) all.push(`${width} px: letters of ${smallest} px`);
    }
  }
  return all;
}

describe.each(keys)("%s", (key) => {
  test.each(Object.keys(cases))("keeps labels apart and everything inside: %s", async (name) => {
    expect(await faultsAt(key, cases[name]!)).toEqual([]);
  });
});

// Without either half there are no three arrangements: that figure waits for its cell.
describe.each(keys.filter((key) => key !== "arrangementsCompared"))("%s", (key) => {
  test.each(Object.keys(bare))("keeps labels apart and everything inside: %s", async (name) => {
    expect(await faultsAt(key, bare[name]!)).toEqual([]);
  });
});

const seen = (key: string, changes: Readonly<Record<string, unknown>> = {}) =>
  staged.show({ key, changes, width: 760, system: "SI" });

test("compressorField has a mark that sets the speed and one that follows the match, in each bank's field", async () => {
  const one = await seen("compressorField");
  expect(one.settable).toHaveLength(1);
  expect(one.settable[0]!.input).toBe("ratedSpeed");
  expect(one.settable[0]!.track).toBeGreaterThan(10);
  expect(one.moving).toHaveLength(1);
  expect(one.moving[0]).toMatch(/^([\d.]+,[\d.]+ ){3}[\d.]+,[\d.]+$/);
  const two = await seen("compressorField", cases["two banks in series"]);
  expect(two.moving).toHaveLength(2);
  expect(two.labels).toEqual(expect.arrayContaining(["surge", "choke"]));
});

test("what is short of the promise, or stopped, says so by shape and words", async () => {
  const marked = async (key: string, changes: Readonly<Record<string, unknown>>) =>
    (await seen(key, changes)).labels.filter((label) => label.includes("■")).length;
  expect(await marked("powerOverSpeed", { ratedPower: 1.1e6 })).toBe(1);
  expect(await marked("powerOverSpeed", {})).toBe(0);
  expect(await marked("arrangementsCompared", { ratedPower: 1.1e6 })).toBe(3);
});

test("where there is nothing to draw there are words, and no scale", async () => {
  const { labels } = await seen("blowerDrive", bare["no blower"]);
  expect(labels.join(" ")).toBe("There is no blower in the charge path.");
  const field = await seen("compressorField", bare["no turbochargers"]);
  expect(field.labels.join(" ")).toBe("There are no turbochargers in the charge path.");
});

test("axes number their ends, and the promised speed is named in the field at every width", async () => {
  const altitude = await seen("powerOverAltitude");
  expect(altitude.labels).toEqual(expect.arrayContaining(["0", "4000"]));
  for (const width of widths) {
    const field = await staged.show({ key: "compressorField", changes: {}, width, system: "SI" });
    expect(field.labels).toContain("promised 3200\u00a0rpm");
  }
});

test("limits are named along their bands", async () => {
  const { labels } = await seen("powerOverSpeed");
  expect(labels).toEqual(expect.arrayContaining(["Limit that is met first", "Limit that would be met next", "Excess air (smoke)"]));
});

test("the browser complained of nothing", () => {
  expect(staged.complaints).toEqual([]);
});
