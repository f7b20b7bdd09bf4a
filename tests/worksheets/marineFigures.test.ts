import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { textWidth } from "../../worksheets/drawing";
import { timeText } from "../../worksheets/marine-cooling/figures/failureDrawing";
import { partsDrawn } from "../../worksheets/marine-cooling/figures/failurePlate";
import { flowLayout } from "../../worksheets/marine-cooling/figures/flowLayout";
import { type Flow, flowsOf, type Goal, powerTo } from "../../worksheets/marine-cooling/figures/flows";
import { stacked } from "../../worksheets/marine-cooling/figures/heatBands";
import { placeRows } from "../../worksheets/marine-cooling/figures/lineRows";
import { groupsOf, mixDrop, type ProfileRow, profile } from "../../worksheets/marine-cooling/figures/profile";

const goals: readonly Goal[] = ["away", "room", "sea", "work"];
const anyFlow = fc.record({
  key: fc.constantFrom("jacket", "oil", "gear", "exhaustGas", "radiation", "another"),
  name: fc.constant("a part"),
  power: fc.double({ min: -2e4, max: 4e5, noNaN: true }),
  goal: fc.constantFrom(...goals),
});
/** Flows as a heat balance has them: some of the fuel reaches the shaft. */
const anyFlows = fc
  .array(anyFlow, { minLength: 1, maxLength: 13 })
  .map((flows): readonly Flow[] => flowsOf([...flows, { key: "shaft", name: "Shaft", power: 3e5, goal: "work" }]));
const seeded = { seed: 20260101, numRuns: 200 };
const sum = (numbers: readonly number[]) => numbers.reduce((whole, each) => whole + each, 0);

describe("flows", () => {
  test("flowsOf(lines) keeps every watt, and puts what goes to the sea together before the shaft", () => {
    fc.assert(
      fc.property(fc.array(anyFlow, { maxLength: 13 }), (lines) => {
        const flows = flowsOf(lines);
        expect(sum(flows.map(({ power }) => power))).toBeCloseTo(sum(lines.map(({ power }) => power)), 6);
        const ranks = flows.map(({ goal }) => goals.indexOf(goal));
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
        expect(sum(goals.map((goal) => powerTo(flows, goal)))).toBeCloseTo(sum(flows.map(({ power }) => power)), 6);
      }),
      seeded,
    );
  });

  test("flowLayout(flows) divides the stream among branches and shaft without gap or overlap", () => {
    fc.assert(
      fc.property(anyFlows, (flows) => {
        const { branches, stream, work, fuel } = flowLayout(flows, { stream: 211, from: 60, line: 17 });
        let edge = stream;
        for (const { left, right, thick } of branches) {
          expect(right).toBeCloseTo(edge, 9);
          expect(right - left).toBeCloseTo(thick, 9);
          edge = left;
        }
        expect(work).toBeCloseTo(edge, 9);
        // The sum of branches and shaft is the stream; what comes in beside the fuel makes up the rest of its head.
        expect(sum(branches.map(({ thick }) => thick)) + work).toBeCloseTo(211, 9);
        const whole = sum(flows.map(({ power }) => Math.max(0, power)));
        expect(fuel / stream).toBeCloseTo(sum(flows.map(({ power }) => power)) / whole, 9);
      }),
      seeded,
    );
  });

  test("flowLayout(flows) draws every branch to the one scale, and gathers the sea's without gap or overlap", () => {
    fc.assert(
      fc.property(anyFlows, (flows) => {
        const { branches, stream, sea } = flowLayout(flows, { stream: 96, from: 60, line: 34 });
        const whole = sum(flows.map(({ power }) => Math.max(0, power)));
        for (const { flow, thick } of branches) {
          expect(thick / stream).toBeCloseTo(Math.max(0, flow.power) / whole, 9);
        }
        let edge = sea;
        for (const { gathered, thick } of branches) {
          if (!gathered) continue;
          expect(gathered[1]).toBeCloseTo(edge, 9);
          expect(gathered[1] - gathered[0]).toBeCloseTo(thick, 9);
          edge = gathered[0];
        }
        expect(edge).toBeCloseTo(0, 9);
      }),
      seeded,
    );
  });

  test("flowLayout(flows) leaves each branch room for its words, and ends below all of them", () => {
    fc.assert(
      fc.property(anyFlows, (flows) => {
        const { branches, foot } = flowLayout(flows, { stream: 160, from: 60, line: 17 });
        let free = 60;
        for (const { upper, thick } of branches) {
          expect(upper - free).toBeGreaterThanOrEqual(17);
          free = upper + thick;
        }
        expect(foot).toBeGreaterThan(free);
      }),
      seeded,
    );
  });
});

test("stacked(points) piles the parts up: each begins where the one below ended, and all come to the sum", () => {
  const part = (power: number): Flow => ({ key: "jacket", name: "Jacket", power, goal: "sea" });
  const points = [
    { speed: 20, parts: [part(10), part(0), part(30)] },
    { speed: 40, parts: [part(50), part(5), part(-4)] },
  ];
  const bands = stacked(points);
  expect(bands.map((band) => band[0])).toEqual([
    [0, 10],
    [10, 10],
    [10, 40],
  ]);
  // What comes in has no band of its own.
  expect(bands.map((band) => band[1])).toEqual([
    [0, 50],
    [50, 55],
    [55, 55],
  ]);
});

describe("lines down the page", () => {
  const row = (
    group: number,
    begin: number,
    end: number,
    top: number,
    trunk = [begin, end],
    share = 1,
  ): ProfileRow => ({
    group,
    share,
    begin,
    end,
    trunkBegin: trunk[0]!,
    trunkEnd: trunk[1]!,
    top,
    bottom: top + 30,
  });

  test("profile(rows) of elements in series is one line from height to height", () => {
    const { trunk, branches, mixes } = profile([row(0, 10, 20, 100), row(1, 20, 50, 160)], 90, 200);
    expect(trunk).toBe("M10,90V100L20,130V160L50,190V200");
    expect([branches, mixes]).toEqual(["", []]);
  });

  test("profile(rows) splits at neighbours of a group and goes on where they come together", () => {
    const rows = [
      row(0, 5, 10, 40),
      row(1, 10, 40, 100, [10, 25], 0.25),
      row(1, 10, 20, 160, [10, 25], 0.75),
      row(2, 25, 30, 240),
    ];
    const { trunk, branches, mixes } = profile(rows, 30, 300);
    const mixed = 190 + mixDrop;
    expect(mixes).toEqual([{ x: 25, y: mixed }]);
    expect(trunk).toBe(`M5,30V40L10,70V100M25,${mixed}V240L30,270V300`);
    expect(branches).toBe(`M10,100V160M10,100L40,130V${mixed}M10,160L20,190V${mixed}M20,${mixed}H40`);
  });

  test("profile(rows) leads what an element leaves over past it, to where they come together", () => {
    const { trunk, branches, mixes } = profile([row(0, 10, 40, 100, [10, 19], 0.3)], 90, 200);
    const mixed = 130 + mixDrop;
    expect(mixes).toEqual([{ x: 19, y: mixed }]);
    expect(trunk).toBe(`M10,90V100M19,${mixed}V200`);
    expect(branches).toBe(`M10,100V${mixed}M10,100L40,130V${mixed}M10,${mixed}H40`);
  });

  test("groupsOf(rows) holds together only what stands together", () => {
    const rows = [1, 1, 2, 3, 3, 1].map((group) => ({ group }));
    expect(groupsOf(rows).map(({ length }) => length)).toEqual([2, 1, 2, 1]);
  });

  test.each([true, false])("placeRows(rows) keeps rows and their words apart, words above: %s", (above) => {
    const remark = fc.constantFrom("12 % of the water", "closest 2.6 K", "at most 102 °C", "368 L/min at 1900 rpm");
    const worded = fc.record({
      name: fc.constantFrom("Fuel cooler", "Raw-water pump", "Seacock and strainer"),
      remarks: fc.array(remark, { maxLength: 3 }),
      group: fc.integer({ min: 0, max: 3 }),
      share: fc.constantFrom(0.3, 0.5, 1),
    });
    fc.assert(
      fc.property(fc.array(worded, { minLength: 1, maxLength: 9 }), (rows) => {
        const { places, end } = placeRows(rows, { above, width: 300, from: 58 });
        let free = 58;
        for (const { from, height, top, bottom, words } of places) {
          expect(from).toBeGreaterThanOrEqual(free);
          expect(top).toBeGreaterThanOrEqual(from);
          expect(bottom).toBeLessThan(from + height);
          for (const { y } of words) {
            expect(y).toBeGreaterThan(from);
            expect(y).toBeLessThan(above ? top : from + height);
          }
          const lines = words.map(({ text, x, y, strong }) => ({ x, y, right: x + textWidth(text, { bold: strong }) }));
          for (const [i, a] of lines.entries()) {
            for (const b of lines.slice(i + 1)) expect(a.y !== b.y || a.right < b.x).toBe(true);
          }
          free = from + height;
        }
        expect(end).toBeGreaterThan(places.at(-1)!.bottom);
      }),
      seeded,
    );
  });
});

test("timeText(seconds) is said in seconds, minutes or hours", () => {
  expect([0.2, 14, 89, 95, 430, 5399, 7200].map(timeText)).toEqual([
    "at once",
    "14 s",
    "89 s",
    "1.6 min",
    "7.2 min",
    "90 min",
    "2 h",
  ]);
});

test("partsDrawn(parts) keeps what passes its limit, soonest first, and of the rest what comes nearest to its own", () => {
  const part = (name: string, usual: number, reached: number, limit: number, time?: number) => ({
    name,
    usual,
    reached,
    limit,
    time,
  });
  const hose = part("hose", 340, 700, 343, 0);
  const jacket = part("jacket", 355, 365, 359, 57);
  const oil = part("oil", 366, 372, 375);
  const gear = part("gear", 350, 355, 380);
  expect(partsDrawn([gear, jacket, oil, hose]).map(({ name }) => name)).toEqual(["hose", "jacket", "oil"]);
  // What is past its limit as usual and stays as it was is no consequence of the failure.
  const past = part("gear", 360, 360.2, 351, 0);
  expect(partsDrawn([past, jacket]).map(({ name }) => name)).toEqual(["jacket"]);
  // Where nothing moves, the nearest is told all the same.
  expect(partsDrawn([part("a", 300, 300, 350), part("b", 300, 300, 310)]).map(({ name }) => name)).toEqual(["b"]);
});
