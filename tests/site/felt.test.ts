import { expect, test } from "vitest";
import { checksOf, compile } from "../../lib/graph";
import { countingCells } from "../../site/page/desk";
import { feltBy, feltElsewhere } from "../../site/page/felt";
import { firstMoveWords } from "../../site/page/first-move-words";
import { followersOf } from "../../site/page/hand-down";
import { refusingRoots, refusedOn } from "../../site/page/refused";
import { createWorkable } from "../../site/page/workable";
import { deskOfFixture } from "./desk";
import * as f from "./fixture";
import { sheets } from "./sheets";

const sheetNamed = (key: string) => sheets.find((sheet) => sheet.key === key)!;

test("feltElsewhere() leaves out the moved input's own sheet and what did not move", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  session.set("driveRatio", 1.98);
  settle();
  const felt = feltElsewhere(desk, standings, moves).map(({ cell }) => cell.key);
  // The blower's own sheet holds every other cell that drive ratio feeds; the belt alone stands elsewhere.
  expect(felt).toEqual(["beltPower"]);
});

test("feltElsewhere() puts changes of class first, then the margins that moved furthest", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  // From 2.4 % short of the filter's limit to past it; the blower's limits do not stand on power.
  session.set("power", 480e3);
  settle();
  const felt = feltElsewhere(desk, standings, moves);
  expect(felt[0]).toMatchObject({ cell: { key: "airFlow" }, classChanged: true });
  const shifts = felt.filter(({ classChanged }) => !classChanged).map(({ marginShift }) => marginShift);
  expect(shifts).toEqual([...shifts].sort((a, b) => b - a));
  expect(felt.map(({ cell }) => cell.key)).toContain("fuelFlow");
});

test("feltElsewhere() counts from where the hand began, whatever came between", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  session.begin("driveRatio");
  for (const ratio of [2.2, 2.6, 1.92]) {
    session.set("driveRatio", ratio);
    settle();
  }
  session.end();
  expect(feltElsewhere(desk, standings, moves)).toEqual([]);
  expect(moves.samples("driveRatio")).toEqual([1.92, 2.2, 2.6, 1.92]);
});

test("firstMoveWords() tell what a move did elsewhere and which limit changed, and nothing where it did nothing", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  expect(firstMoveWords(desk, moves, standings)).toBe("");
  session.begin("driveRatio");
  session.set("driveRatio", 1.98);
  settle();
  session.end();
  expect(firstMoveWords(desk, moves, standings)).toMatch(
    /^You moved .*: 1\.92 → 1\.98\b.*\. 1 line in 1 other sheet moved with it, most of all Power through the front belt \S+\skW \(▲\s\+\S+\)\. No limit was crossed by it\.$/,
  );
  session.set("power", 480e3);
  settle();
  expect(firstMoveWords(desk, moves, standings)).toMatch(/limits? changed with it/);
});

test("firstMoveWords() tell of a limit that changed on the moved number's own sheet", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  session.set("driveRatio", 2.15);
  settle();
  expect(feltElsewhere(desk, standings, moves).some(({ classChanged }) => classChanged)).toBe(false);
  const home = countingCells(desk).flatMap((cell) => feltBy(desk, standings, moves, cell) ?? []);
  expect(home.some(({ classChanged }) => classChanged)).toBe(true);
  expect(firstMoveWords(desk, moves, standings)).toMatch(/limits? changed with it/);
});

test("feltElsewhere() after another installation is shown looks at every sheet", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  session.show("truck");
  settle();
  expect(moves.shown).toEqual({ now: "Truck", before: "Test cell" });
  expect(feltElsewhere(desk, standings, moves).map(({ cell }) => cell.key)).toContain("chargeTemperature");
});

test("moves.samples() keeps the last 24", () => {
  const { session, moves, settle } = deskOfFixture();
  session.begin("power");
  for (let i = 1; i <= 40; i++) {
    session.set("power", 450e3 + i * 1e3);
    settle();
  }
  const samples = moves.samples("power");
  expect(samples).toHaveLength(24);
  expect(samples.at(-1)).toBe(490e3);
});

test("standings.all() and counts() leave out a sheet whose choice differs", () => {
  const { session, standings, settle } = deskOfFixture();
  const here = standings.all().length;
  expect(standings.counts(sheetNamed("air"))).toEqual({ past: 0, near: 1 });
  session.set("power", 480e3);
  settle();
  expect(standings.counts(sheetNamed("air"))).toEqual({ past: 1, near: 0 });
  expect(standings.counts(sheetNamed("sea"))).toEqual({ past: 0, near: 0 });
  expect(standings.all()).toHaveLength(here);
});

test("standings.of(cell) are the cell's checks at any time, tightest first", () => {
  const { desk, session, standings, settle } = deskOfFixture();
  for (const power of [300e3, 450e3, 700e3]) {
    session.set("power", power);
    settle();
    for (const cell of desk.graph.cells) {
      const fresh = [...checksOf(cell, desk.values)].sort((a, b) => a.margin - b.margin);
      expect(standings.of(cell)).toEqual(fresh);
    }
  }
});

test("standings.held(cell) stays with the reference until it is held anew", () => {
  const { session, standings, settle } = deskOfFixture();
  const before = standings.held(f.airFlow);
  session.set("power", 300e3);
  settle();
  expect(standings.held(f.airFlow)).toBe(before);
  session.hold("now");
  expect(standings.held(f.airFlow)).toEqual(standings.inOrder(f.airFlow));
});

test("refusingRoots() names where an answer is missing, refusedOn() how many lines of a sheet lack one", () => {
  const { desk, session, settle } = deskOfFixture();
  expect(refusingRoots(desk)).toEqual([]);
  session.set("driveRatio", 3.3);
  settle();
  expect(refusingRoots(desk)).toEqual([f.pressureRatio]);
  expect([refusedOn(desk, sheetNamed("blower")), refusedOn(desk, sheetNamed("belt")), refusedOn(desk, sheetNamed("sea"))]).toEqual([
    5, 1, 0,
  ]);
});

test("feltElsewhere() names the limit within a value with parts that tells of it, and how it stood", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  // The alternator turns 2.6 times as fast: from 117 past its 120 turns a second.
  session.set("engineSpeed", 46.5);
  settle();
  const belt = feltElsewhere(desk, standings, moves).find(({ cell }) => cell.key === "beltLoads")!;
  expect(belt.check).toMatchObject({ component: "alternator", standing: "past" });
  expect(belt.before).toMatchObject({ component: "alternator", value: 117, standing: "near" });
  expect(belt.classChanged).toBe(true);
});

test("workableOf() goes back to the last value at which the line had an answer", () => {
  const { desk, session, moves, settle } = deskOfFixture();
  const workable = createWorkable(desk, moves, compile(f.graph), () => {});
  workable.update();
  session.begin("driveRatio");
  for (const ratio of [2.8, 3.1, 3.3, 3.4]) {
    session.set("driveRatio", ratio);
    settle();
    workable.update();
  }
  session.end();
  expect(workable.of("pressureRatio")).toEqual({ key: "driveRatio", value: 3.1 });
  session.set("driveRatio", 2);
  settle();
  workable.update();
  expect(workable.of("pressureRatio")).toBeUndefined();
  session.set("driveRatio", 3.3);
  settle();
  workable.update();
  expect(workable.of("pressureRatio")).toEqual({ key: "driveRatio", value: 2 });
});

test("followersOf(desk, key) is everything that an input moves", () => {
  const { desk } = deskOfFixture();
  expect([...followersOf(desk, "leak")].sort()).toEqual(
    ["beltPower", "blowerPower", "chargeTemperature", "outletPressure", "outletTemperature", "pressureRatio"].sort(),
  );
});

test("feltElsewhere() tells of a lost answer where it was lost, not of all that wait for it", () => {
  const { desk, session, standings, moves, settle } = deskOfFixture();
  // The root stands on the sheet of the ratio itself; the belt elsewhere only waits.
  session.begin("driveRatio");
  session.set("driveRatio", 3.3);
  settle();
  session.end();
  expect(feltElsewhere(desk, standings, moves)).toEqual([]);
});
