import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { declaredValues } from "../../worksheets/build/build";
import { graph } from "../../worksheets/model";
import type { Showing } from "./figuresPage";
import { openStage, type Staged } from "./stage";

const pulleys = (declaredValues(graph) as Record<string, unknown>)["frontPulleys"] as readonly Readonly<
  Record<string, unknown>
>[];

/** Builds that draw differently: what fits, what is past its limits, what turns the other way, what is large. */
const cases: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  demo: {},
  boat: { heatCarrier: "seaWater", ratedPower: 387770, ratedSpeed: 40, maximumSpeed: 43.3 },
  "boat at part load": {
    heatCarrier: "seaWater",
    ratedPower: 387770,
    ratedSpeed: 40,
    maximumSpeed: 43.3,
    flowsSpeed: 0.62,
  },
  "boat at a part of full load": {
    heatCarrier: "seaWater",
    ratedPower: 387770,
    ratedSpeed: 40,
    maximumSpeed: 43.3,
    flowsAlong: "fullLoad",
    flowsLoad: 0.85,
    flowsSpeed: 0.8,
  },
  "one meter, one turbocharger, small holes": {
    heatCarrier: "seaWater",
    ratedPower: 6e5,
    turbochargerCount: 1,
    valveLoss: 9e4,
    scavengeGainCounts: "no",
    meterCount: 1,
    holeDiameter: 160e-6,
    railPressure: 9e7,
    plungerDiameter: 6e-3,
    heatsFrom: "promise",
    flowsAlong: "fullLoad",
  },
  "driven backwards, too fast and too slow": {
    heatCarrier: "seaWater",
    frontPulleys: pulleys.map((row) => ({
      ...row,
      mustTurn: row["role"] === "idler" || row["role"] === "crank" ? "either" : "counterclockwise",
      highestSpeed: row["role"] === "fuelPump" ? 40 : row["highestSpeed"],
      lowestSpeed: row["role"] === "alternator" ? 40 : row["lowestSpeed"],
    })),
  },
  "the other way round, high and hot": {
    altitude: 3000,
    ambientTemperature: 313,
    crankRotation: "counterclockwise",
    frontPulleys: pulleys.map((row) =>
      row["belt"] === "B" ? row : { ...row, x: -(row["x"] as number), guideX: -(row["guideX"] as number) },
    ),
  },
  "two pulleys in each other": {
    frontPulleys: pulleys.map((row) => (row["unit"] === "Alternator" ? { ...row, x: 0.04, y: 0.3 } : row)),
  },
  "low and cold": { altitude: -100, ambientTemperature: 263, seaTemperature: 275 },
};
/** Figures that have no answer in a build: a tower freezes where water does. */
const waiting: Readonly<Record<string, readonly string[]>> = {
  "low and cold": ["towerPlate"],
  "one meter, one turbocharger, small holes": ["deratingPlate"],
};
/** Figures that tell in words why they have no answer: the promise has no other speed than its own. */
const told: Readonly<Record<string, readonly string[]>> = {
  "one meter, one turbocharger, small holes": ["curveTemperatures"],
};
const widths = [340, 560, 580, 760, 900];

let staged: Staged;

beforeAll(async () => {
  staged = await openStage();
});
afterAll(() => staged?.close());

const show = (showing: Showing) => staged.show(showing);
const keys = [
  "powerStaircase",
  "chargeStaircase",
  "injectionTimeline",
  "nozzleTrade",
  "pumpOverSpeed",
  "pumpsCompared",
  "supplyProfile",
  "tankWarming",
  "boatReach",
  "frontDrives",
  "speedWindows",
  "unitTorque",
  "beltTensions",
  "driveBudgets",
  "installedRuns",
  "picks",
  "heatFlows",
  "seaWaterLine",
  "curveFlows",
  "closedCircuits",
  "curveTemperatures",
  "pumpPlate",
  "failurePlate",
  "dutyPlate",
  "deratingPlate",
  "landPlate",
  "towerPlate",
  "altitude",
];

test("the page draws every figure that this test names", async () => {
  expect(await staged.keys()).toEqual(expect.arrayContaining(keys));
});

describe.each(keys)("%s", (key) => {
  test.each(Object.keys(cases))("keeps its labels apart and inside, in letters of 13 px and more: %s", async (name) => {
    for (const width of widths) {
      for (const system of ["SI", "US"] as const) {
        const { waits, faults, labels, smallest } = await show({ key, changes: cases[name]!, width, system });
        expect(waits !== undefined, waits ?? "").toBe(waiting[name]?.includes(key) ?? false);
        if (waits !== undefined) continue;
        expect(faults, `${width} px, ${system}`).toEqual([]);
        if (told[name]?.includes(key)) expect(labels[0]).toBe("Not drawn:");
        else expect(labels.length).toBeGreaterThan(3);
        expect(smallest).toBeGreaterThanOrEqual(13);
      }
    }
  });

  test("takes its colours from the page, by day and by night", async () => {
    const showing: Showing = { key, changes: {}, width: 560, system: "SI" };
    await staged.page.emulateMedia({ colorScheme: "dark" });
    const night = await show(showing);
    await staged.page.emulateMedia({ colorScheme: "light" });
    const day = await show(showing);
    // Tokens of site/style/tokens.css: ink by day, page by day and by night.
    expect(day.ink).toBe("rgb(31, 36, 48)");
    expect([day.paper, night.paper]).toEqual(["rgb(246, 244, 238)", "rgb(21, 24, 30)"]);
    expect(night.ink).not.toBe(day.ink);
  });
});

test("what is past its limits is told by shape and words, and not where all is well", async () => {
  const marked = async (key: string, name: string) =>
    (await show({ key, changes: cases[name]!, width: 760, system: "SI" })).labels.filter((label) => label.includes("■"))
      .length;
  for (const [key, name] of [
    ["powerStaircase", "one meter, one turbocharger, small holes"],
    ["injectionTimeline", "one meter, one turbocharger, small holes"],
    ["frontDrives", "driven backwards, too fast and too slow"],
    ["speedWindows", "driven backwards, too fast and too slow"],
  ] as const) {
    expect(await marked(key, name), key).toBeGreaterThan(0);
    expect(await marked(key, "boat"), key).toBe(0);
  }
});

test("figures that are drawn at rest tell in words why they have no answer, and list nothing", async () => {
  for (const key of ["curveFlows", "curveTemperatures", "failurePlate", "deratingPlate", "landPlate"]) {
    for (const width of [340, 760]) {
      const { faults, labels } = await show({ key, changes: {}, width, system: "SI", refused: true });
      expect(faults).toEqual([]);
      expect(labels[0]).toBe("Not drawn:");
      expect(labels.slice(1).join(" ")).toBe("the water boils at 120\u00a0°C; give it more flow");
    }
  }
});

test("curveFlows has a mark that sets the speed of the flows along its upper edge, where that lies on the curve", async () => {
  const changes = cases["boat at a part of full load"]!;
  const { settable } = await show({ key: "curveFlows", changes, width: 760, system: "SI" });
  expect(settable).toHaveLength(1);
  expect(settable[0]!.input).toBe("flowsSpeed");
  expect(settable[0]!.track).toBeGreaterThan(10);
  const beyond = { ...changes, flowsAlong: "propeller", flowsSpeed: 1.1 };
  expect((await show({ key: "curveFlows", changes: beyond, width: 760, system: "SI" })).settable).toEqual([]);
});

test("a label that lies over another is found", async () => {
  const { faults } = await show({ key: "speedWindows", changes: {}, width: 90, system: "SI" });
  expect(faults.length).toBeGreaterThan(0);
});

test("the browser complained of nothing", () => {
  expect(staged.complaints).toEqual([]);
});
