import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { type Plain, plain } from "./plain";

const layoutFindings = plain(drive.layoutFindings);
const beltRun = plain(drive.beltRun);

const pulley = (name: string, x: number, y: number, pitchRadius: number, contact: "toothed" | "back" = "toothed") => ({
  name,
  x,
  y,
  pitchRadius,
  contact,
});
const layout = (...pulleys: Plain<drive.BeltLayout>["pulleys"]): Plain<drive.BeltLayout> => ({
  travel: "counterclockwise",
  pulleys,
});

test("layoutFindings(layout) is empty where a belt can lie, and begins with beltRun's own words where none can", () => {
  for (const drawn of randomLayouts(200)) expect(layoutFindings(drawn)).toEqual([]);
  const bad = layout(pulley("crank", 0, 0, 0.05), pulley("fan", 0.08, 0, 0.05), pulley("pump", 0.05, 0.06, 0.04));
  const found = layoutFindings(bad);
  expect(found).toHaveLength(3);
  expect(found[0]).toBe("crank and fan overlap by 20 mm at their pitch circles; move them apart");
  expect(() => beltRun(bad)).toThrow(found[0]!);
});

test("layoutFindings(layout) names every span that cuts, and every two that cross", () => {
  const found = layoutFindings(
    layout(
      pulley("crank", 0, 0, 0.05),
      pulley("pump", 0.6, 0, 0.05),
      pulley("idler", -0.2, 0.2, 0.03, "back"),
      pulley("alternator", 0.6, 0.4, 0.05),
      pulley("blower", 0, 0.4, 0.05),
    ),
  );
  expect(found).toHaveLength(2);
  // The span blower to crank stands at x = −0.05; the spans to and from the idler meet it, mirror images of each other.
  for (const words of found) expect(words).toMatch(/crosses the span from blower to crank, \d+(\.\d+)? mm beyond/);
  const along = (words: string) => Number(/, ([\d.]+) mm beyond/.exec(words)![1]);
  // The first is measured from the pump, the second from the idler: together with the contact points they make one span.
  expect(along(found[0]!)).toBeGreaterThan(along(found[1]!));
});

test("layoutFindings(layout) tells neighbours that no straight belt joins, and refuses what is no layout", () => {
  const inside = layout(pulley("crank", 0, 0, 0.1), pulley("fan", 0.01, 0, 0.05), pulley("pump", 0.4, 0, 0.05));
  expect(layoutFindings(inside).at(-1)).toContain("no straight belt joins crank and fan");
  expect(() => layoutFindings(layout(pulley("crank", 0, 0, 0.1)))).toThrow("a belt needs at least two");
});

test("clearances(run): by hand, around a square, with the smallest first", () => {
  const run = beltRun(
    layout(
      pulley("crank", 0, 0, 0.05),
      pulley("pump", 0.6, 0, 0.05),
      pulley("idler", 0.5, 0.2, 0.03, "back"),
      pulley("alternator", 0.6, 0.4, 0.05),
      pulley("blower", 0, 0.4, 0.05),
    ),
  );
  const found = drive.clearances(run);
  const gapOf = (of: string, to: string) =>
    found.find((each) => (each.of === of && each.to === to) || (each.of === to && each.to === of))!.gap;
  expect(gapOf("crank", "pump")).toBeCloseTo(0.5, 12);
  expect(gapOf("pump", "idler")).toBeCloseTo(Math.hypot(0.1, 0.2) - 0.08, 12);
  // The span from blower to crank lies at x = −0.05, the one from crank to pump at y = −0.05.
  expect(gapOf("blower to crank", "idler")).toBeCloseTo(0.52, 12);
  expect(gapOf("crank to pump", "idler")).toBeCloseTo(0.22, 12);
  expect(found.map(({ gap }) => gap)).toEqual(found.map(({ gap }) => gap).sort((a, b) => a - b));
  expect(found).toHaveLength((5 * 4) / 2 + 5 * 3);
});
