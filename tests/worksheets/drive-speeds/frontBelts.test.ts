import { describe, expect, test } from "vitest";
import { assess, type Cell, Refusal } from "../../../lib/graph";
import { quantity } from "../../../lib/quantity";
import { declaredValues } from "../../../worksheets/build/build";
import { beltFits } from "../../../worksheets/drive-speeds/beltFits";
import { beltLoads } from "../../../worksheets/drive-speeds/beltLoads";
import { beltRuns, drawnBelts, frontBelts } from "../../../worksheets/drive-speeds/beltRuns";
import { belts, frontPulleys, type PulleyRow } from "../../../worksheets/drive-speeds/beltTables";
import { electricalBudget, hydraulicBudget } from "../../../worksheets/drive-speeds/budgets";
import { blowerBeltLength } from "../../../worksheets/drive-speeds/cells";
import { driveFindings } from "../../../worksheets/drive-speeds/findings";
import { ratioRanges } from "../../../worksheets/drive-speeds/ratioRanges";
import { unitLoads } from "../../../worksheets/drive-speeds/unitLoads";
import { graph, program } from "../../../worksheets/model";

const declared = declaredValues(graph);
const before = program.run(declared);
const pulleys = frontPulleys.value as readonly PulleyRow[];
const mm = (value: number) => quantity("length", value, "mm");

/** The declared build with some pulleys changed, by belt and unit. */
const withPulleys = (changes: Readonly<Record<string, Partial<PulleyRow>>>) =>
  pulleys.map((row) => ({ ...row, ...changes[`${row.belt} ${row.unit}`] }));
const changed = (changes: Readonly<Record<string, unknown>>) => program.rerun(before, changes).evaluation;
const moved = (changes: Readonly<Record<string, Partial<PulleyRow>>>) => changed({ frontPulleys: withPulleys(changes) });
const wordsOf = (cell: Cell, frontPulleysNow: readonly PulleyRow[]) => {
  const value = changed({ frontPulleys: frontPulleysNow }).get(cell);
  return value instanceof Refusal ? value.message : "no refusal";
};

describe("the two tables", () => {
  test("refuse in words what does not go together", () => {
    const first = pulleys[0]!;
    expect(wordsOf(frontBelts, [...pulleys, { ...first, belt: "E", unit: "Winch" }])).toBe(
      "Winch: it is on belt E, which the belts do not have",
    );
    expect(wordsOf(frontBelts, pulleys.filter((row) => row.belt !== "B" || row.role !== "crank"))).toBe(
      "Accessory belt: its first pulley is Hydraulic pump; it must be the crank's, from which the belt is listed",
    );
    const toothed = { teeth: quantity("count", 30) };
    expect(wordsOf(frontBelts, withPulleys({ "A Blower": toothed }))).toBe(
      "Blower belt, Blower: its teeth have a line of their own; enter 0 in the table",
    );
    expect(wordsOf(frontBelts, withPulleys({ "A Blower": { highestSpeed: quantity("rotationalSpeed", 6000, "rpm") } }))).toBe(
      "Blower belt, Blower: its highest speed has a line of its own; enter 0 in the table",
    );
    expect(wordsOf(frontBelts, withPulleys({ "C Fan": toothed }))).toContain("Fan: it has 30 teeth; on a ribbed belt");
    const twice = changed({ belts: belts.value.map((row) => ({ ...row, mark: "A" })) }).get(frontBelts);
    expect((twice as unknown as Refusal).message).toBe("belts: two of them are A; give each a letter of its own");
  });

  test("leave out a belt without pulleys", () => {
    const without = changed({ frontPulleys: pulleys.filter(({ belt }) => belt !== "C") });
    expect(without.require(beltRuns).map(({ mark }) => mark)).toEqual(["A", "B"]);
  });

  test("run the other way round the same pulleys where the crank turns the other way", () => {
    const other = changed({ crankRotation: "counterclockwise" }).require(beltRuns);
    before.require(beltRuns).forEach(({ run, members }, i) => {
      expect(other[i]!.run!.length).toBeCloseTo(run!.length, 12);
      expect(other[i]!.members.slice(1).map(({ unit }) => unit)).toEqual(members.slice(1).map(({ unit }) => unit).reverse());
      expect(other[i]!.members.map(({ ratio }) => ratio).sort()).toEqual(members.map(({ ratio }) => ratio).sort());
    });
  });
});

describe("a belt that cannot lie", () => {
  const broken = moved({ "A Idler": { x: mm(-300) } });

  test("says so for itself, is past a limit, and leaves the other belts and all ratios alone", () => {
    const [blower, ...others] = broken.require(drawnBelts);
    expect(blower!.run).toBeUndefined();
    expect(blower!.fault).toMatch(/^Idler does not reach the belt; it stands \d+(\.\d+)? mm short of the straight run from Crank to Blower$/);
    expect(others.every(({ run }) => run !== undefined)).toBe(true);
    const past = assess([beltRuns as Cell], broken).filter(({ standing }) => standing === "past");
    expect(past.map(({ label }) => label)).toEqual(["Blower belt lies on its pulleys (1 for yes, 0 for no)"]);
    expect((broken.get(blowerBeltLength) as unknown as Refusal).message).toMatch(/^Blower belt: Idler does not reach/);
    expect(broken.require(beltRuns)[0]!.members[2]!.ratio).toBe(50 / 27);
  });

  test("stands among the findings with its cure, and once", () => {
    const found = broken.require(driveFindings).filter(({ belt }) => belt === "Blower belt");
    expect(found.filter(({ what }) => what.includes("does not reach"))).toHaveLength(1);
  });
});

test("a unit that is driven backwards is found, with three ways to cure it", () => {
  const wrong = moved({ "B Fuel pump": { mustTurn: "counterclockwise" } });
  const found = wrong.require(driveFindings).find(({ what }) => what.startsWith("Fuel pump"))!;
  expect(found.what).toBe("Fuel pump turns clockwise, seen on its own shaft end, and must turn counterclockwise");
  expect(found.cure.split("; or ")).toHaveLength(3);
  expect(moved({ "B Fuel pump": { mustTurn: "counterclockwise", shaftEnd: "rearward" } }).require(driveFindings)).toEqual(
    before.require(driveFindings),
  );
});

test("pulleys that come close are found, and by how far they must move", () => {
  // The blower belt's idler, pushed almost on to the span on the other side.
  const near = moved({ "A Idler": { x: mm(12) } }).require(driveFindings).filter(({ what }) => what.includes("comes within"));
  expect(near).toHaveLength(1);
  const [, gap] = /^Blower to Crank comes within ([\d.]+) mm of Idler$/.exec(near[0]!.what)!;
  // By hand: the span's distance from the idler's axis, less the idler's pitch radius of 60 mm and 2.583 mm of belt.
  const [crank, blower] = [(50 * 14) / (2 * Math.PI), (27 * 14) / (2 * Math.PI)];
  const slope = Math.asin((crank - blower) / 437);
  const distance = crank - 240 * Math.sin(slope) - 12 * Math.cos(slope);
  expect(Number(gap)).toBeCloseTo(distance - 62.583, 1);
  expect(near[0]!.cure).toBe(`move it by ${Math.round(10 * (12 - (distance - 62.583))) / 10} mm`);
});

describe("belts that fit", () => {
  test("the belt taken closes the run where its pulley is said to stand", () => {
    for (const { mark, pulley, chosen } of before.require(beltFits)) {
      const { belt, unit } = pulleys.find((row) => row.belt === mark && row.unit === pulley)!;
      const there = moved({ [`${belt} ${unit}`]: { x: chosen!.place.x, y: chosen!.place.y } });
      expect(there.require(drawnBelts).find((each) => each.mark === mark)!.run!.length).toBeCloseTo(chosen!.length, 8);
    }
  });

  const withLength = (length: number) =>
    changed({ belts: belts.value.map((row) => (row.mark === "A" ? { ...row, length: mm(length) } : row)) }).require(beltFits)[0]!;

  test("a stated belt is taken, and one of broken teeth or out of reach refused in words", () => {
    expect(withLength(1442).chosen!.teeth).toBe(103);
    expect(withLength(1419).fault).toBe("Blower belt: 1419 mm is no whole number of its 14 mm teeth; 101 of them are 1414 mm");
    expect(withLength(1190).fault).toMatch(/^a belt of 1190 mm is \d+(\.\d+)? mm shorter than the run as drawn; no place of Idler closes it$/);
  });

  test("without a tensioner the centre distance is told", () => {
    const fixed = moved({ "A Idler": { mount: "fixed" } }).require(beltFits)[0]!;
    expect(fixed).toMatchObject({ pulley: "Blower", by: "centre distance" });
    expect(fixed.chosen!.fromCrank).toBeCloseTo(0.437 + fixed.chosen!.travel, 9);
  });
});

describe("loads", () => {
  test("the power that each belt takes from the crank is that of its units, at every speed", () => {
    const laid = before.require(beltRuns);
    const units = before.require(unitLoads);
    for (const { mark, power } of before.require(beltLoads)) {
      const { members } = laid.find((each) => each.mark === mark)!;
      for (const speed of ["idle", "cruise", "rated", "maximum"] as const) {
        const taken = members.reduce((sum, { unit, at }) => {
          const load = units.find((each) => each.belt === mark && each.unit === unit);
          return sum + (load ? 2 * Math.PI * at[speed] * load.torqueAt[speed] : 0);
        }, 0);
        // A ribbed belt creeps by 1 %: what it loses is not in the units' power.
        const creep = mark === "C" ? 1 / 0.99 : 1;
        expect(power[speed] / (taken * creep)).toBeCloseTo(1, 9);
      }
    }
  });

  test("at the tension that is needed, the loosest span keeps the reserve", () => {
    const needed = before.require(beltLoads).map(({ neededTension }) => neededTension);
    const set = belts.value.map((row, i) => ({ ...row, tension: needed[i]! }));
    for (const { pressing } of changed({ belts: set }).require(beltLoads)) expect(pressing).toBeCloseTo(60, 6);
  });

  test("the hub loads of a belt add to nothing", () => {
    for (const { pulleys: loaded } of before.require(beltLoads)) {
      expect(loaded.reduce((sum, { hub }) => sum + hub!.x, 0)).toBeCloseTo(0, 6);
      expect(loaded.reduce((sum, { hub }) => sum + hub!.y, 0)).toBeCloseTo(0, 6);
    }
  });

  test("a belt set too loosely is past its limit and found, and nothing refuses", () => {
    const loose = changed({ belts: belts.value.map((row) => ({ ...row, tension: quantity("force", 100, "N") })) });
    expect(loose.require(driveFindings).some(({ what }) => what.includes("would hang loose"))).toBe(true);
    expect(loose.require(beltLoads)[0]!.pulleys[0]!.hub).toBeUndefined();
  });
});

test("ratioRanges: a pulley at either end of the teeth that suit keeps the unit's window, and one beyond breaks it", () => {
  for (const { unit, teeth, lowest } of before.require(ratioRanges)) {
    const row = pulleys.find((each) => each.belt === "B" && each.unit === unit);
    if (row === undefined || teeth === undefined || lowest === 0) continue;
    const suits = (count: number) => {
      const own = moved({ [`B ${unit}`]: { teeth: quantity("count", count) } }).require(ratioRanges);
      return own.find((each) => each.unit === unit)!.suits;
    };
    expect([suits(teeth[0]), suits(teeth[1]), suits(teeth[1] + 1)]).toEqual([true, true, false]);
  }
});

test("budgets: by hand, current at idle and oil at the promised speed", () => {
  const idle = before.require(electricalBudget).find(({ speed }) => speed === "idle")!;
  // Of a new build: loads at their shares of the time, and the alternator's curve at its own speed.
  const load = 18 * 0.6 + 16 * 0.5 + 40 * 0.1 + 22 * 0.6 + 26 * 0.6;
  expect(idle.load).toBeCloseTo(load, 9);
  const alternator = before.require(beltRuns).flatMap(({ members }) => members).find(({ role }) => role === "alternator")!;
  const rpm = 60 * alternator.at.idle;
  const byHand = rpm < 1500 ? (62 * (rpm - 1100)) / 400 : 62 + (33 * (rpm - 1500)) / 500;
  expect(idle.output).toBeCloseTo(byHand, 6);
  expect(idle.balance).toBeCloseTo(byHand - load, 6);
  for (const { shaftPower, useful, heat } of before.require(hydraulicBudget)) {
    expect(useful + heat).toBeCloseTo(shaftPower, 6);
  }
  const rated = before.require(hydraulicBudget).find(({ speed }) => speed === "rated")!;
  expect(rated.useful).toBeCloseTo((9 * 0.15 * 80e5 + 2 * 0.2 * 60e5) / 60000, 6);
});
