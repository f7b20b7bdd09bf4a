import { describe, expect, test } from "vitest";
import { toothProfiles } from "../../../lib/drive";
import { figureUnits } from "../../../site/state/figureUnits";
import { declaredValues } from "../../../worksheets/build/build";
import { beltRuns } from "../../../worksheets/drive-speeds/beltRuns";
import { frontPulleys } from "../../../worksheets/drive-speeds/beltTables";
import { beltPath, toothedOutline, turnsClockwise, type View } from "../../../worksheets/drive-speeds/figures/beltPath";
import { namedIn, overlapsOf } from "../../../worksheets/drive-speeds/figures/faultMarks";
import { frontBoard, viewOf } from "../../../worksheets/drive-speeds/figures/frontBoard";
import { frontDrives } from "../../../worksheets/drive-speeds/figures/frontDrives";
import { roundBelow } from "../../../worksheets/drive-speeds/figures/scaleBar";
import { unitsOfBelts, verdictOf, verdictWords } from "../../../worksheets/drive-speeds/figures/unitSpeeds";
import { graph, program } from "../../../worksheets/model";

const metric = figureUnits({ system: "SI", own: {} });

const laid = (changes: Readonly<Record<string, unknown>> = {}) =>
  program.run({ ...declaredValues(graph), ...changes }).require(beltRuns);

const accessoryBelt = (changes: Readonly<Record<string, unknown>> = {}) =>
  laid(changes).find(({ name }) => name === "Accessory belt")!;

/** The declared pulleys, one of them moved. */
const moved = (unit: string, x: number, y: number) =>
  frontPulleys.value.map((row) => (row.unit === unit ? { ...row, x, y } : row));

describe("the drawing of a belt", () => {
  const view: View = { x: (x) => 1000 * x, y: (y) => -1000 * y, scale: 1000 };
  const running = (crankRotation: "clockwise" | "counterclockwise") => accessoryBelt({ crankRotation }).run!;
  const commands = (path: string) =>
    [...path.matchAll(/([MLA])([^MLAZ]*)/g)].map((match) => ({
      letter: match[1]!,
      numbers: match[2]!.split(/[ ,]+/).map(Number),
    }));

  // Walks the path as a browser would, from the arcs' flags alone, and measures it.
  const measured = (path: string): number => {
    let at: readonly number[] = [];
    let first: readonly number[] = [];
    let length = 0;
    for (const { letter, numbers } of commands(path)) {
      const to = numbers.slice(-2);
      if (letter === "M") first = to;
      else {
        const chord = Math.hypot(to[0]! - at[0]!, to[1]! - at[1]!);
        if (letter === "L") length += chord;
        else {
          const small = 2 * Math.asin(Math.min(1, chord / (2 * numbers[0]!)));
          length += numbers[0]! * (numbers[3] === 1 ? 2 * Math.PI - small : small);
        }
      }
      at = to;
    }
    return length + Math.hypot(at[0]! - first[0]!, at[1]! - first[1]!);
  };

  test.each(["clockwise", "counterclockwise"] as const)(
    "beltPath(run) is as long as the run when the crank turns %s",
    (travel) => {
      const run = running(travel);
      // The path's coordinates are rounded to 0.01 mm here.
      expect(Math.abs(measured(beltPath(run, travel, view)) - 1000 * run.length)).toBeLessThan(0.5);
    },
  );

  test.each(["clockwise", "counterclockwise"] as const)(
    "beltPath(run) keeps its direction from span to arc when the crank turns %s",
    (travel) => {
      const run = running(travel);
      run.pulleys.forEach((pulley, i) => {
        const before = run.spans.at(i - 1)!;
        // On the screen y runs down: clockwise turning carries a point at angle a towards a + 90°.
        const angle = Math.atan2(-(pulley.start.y - pulley.y), pulley.start.x - pulley.x);
        const tangent = angle + (turnsClockwise(pulley, travel) ? 1 : -1) * (Math.PI / 2);
        expect(Math.cos(tangent + before.direction)).toBeCloseTo(1, 9);
      });
      const back = run.pulleys.find(({ contact }) => contact === "back")!;
      expect(turnsClockwise(back, travel)).toBe(travel !== "clockwise");
      expect(turnsClockwise(run.pulleys[0]!, travel)).toBe(travel === "clockwise");
    },
  );

  test("beltPath(run, depth) lies inside toothed pulleys and outside those on the back", () => {
    const run = running("clockwise");
    const radii = (depth: number) =>
      commands(beltPath(run, "clockwise", view, depth))
        .filter(({ letter }) => letter === "A")
        .map(({ numbers }) => numbers[0]!);
    const [line, teeth] = [radii(0), radii(0.002)];
    run.pulleys.forEach(({ contact }, i) => {
      expect(teeth[i]! - line[i]!).toBeCloseTo(contact === "toothed" ? -2 : 2, 1);
    });
  });

  test("toothedOutline(pulley) has each of its teeth once", () => {
    const pulley = running("clockwise").pulleys[0]!;
    expect(toothedOutline(pulley, toothProfiles[0]!, view).match(/Q/g)).toHaveLength(pulley.teeth!);
  });

  test("roundBelow(length) is 1, 2 or 5 with zeros, and not above it", () => {
    expect([0.34, 1, 4.99, 5, 73, 260].map(roundBelow).map((value) => Number(value.toPrecision(6)))).toEqual([
      0.2, 1, 2, 5, 50, 200,
    ]);
  });
});


describe("the belts as a board", () => {
  test("pieces(values) are the rows of the table, each where it says, and guide points beside those that take up", () => {
    const pieces = frontBoard.pieces({ beltRuns: laid() });
    const pulleys = pieces.filter(({ columns }) => columns[0] === "x");
    expect(pulleys.map(({ row }) => row).toSorted((a, b) => a - b)).toEqual(frontPulleys.value.map((_, i) => i));
    for (const { row, columns, x, y } of pieces) {
      const entry = frontPulleys.value[row] as unknown as Readonly<Record<string, number>>;
      expect([x, y]).toEqual(columns.map((name) => entry[name]));
    }
    const taking = frontPulleys.value.flatMap(({ mount }, i) => (mount === "fixed" ? [] : [i]));
    const guides = pieces.filter(({ columns }) => columns[0] === "guideX").map(({ row }) => row);
    expect(guides.toSorted((a, b) => a - b)).toEqual(taking);
    const fixed = pieces.filter((piece) => piece.fixed).map(({ row }) => frontPulleys.value[row]!.role);
    expect(fixed).toEqual(["crank", "crank", "crank"]);
  });

  test("every piece reads the row of the numbers that is its own", () => {
    const values = { beltRuns: laid() };
    const { rows } = frontDrives.table(values as never, metric);
    for (const { mark, name } of frontBoard.pieces(values)) {
      const [belt, pulley] = rows[mark] as readonly string[];
      expect(name.startsWith(`${belt}, ${pulley!.replace(", on the back", "")}`), `${name}: ${belt}, ${pulley}`).toBe(true);
    }
  });

  test.each([340, 760])("fit(values, %i) shows every pulley whole, to one scale", (width) => {
    const beltsLaid = laid();
    const camera = frontBoard.fit({ beltRuns: beltsLaid }, width);
    const view = viewOf(camera, width);
    for (const { layout } of beltsLaid) {
      for (const { x, y, pitchRadius } of layout.pulleys) {
        const radius = pitchRadius * view.scale;
        expect(view.x(x) - radius).toBeGreaterThanOrEqual(0);
        expect(view.x(x) + radius).toBeLessThanOrEqual(width);
        expect(view.y(y) - radius).toBeGreaterThanOrEqual(0);
        expect(view.y(y) + radius).toBeLessThanOrEqual(camera.height);
      }
    }
    expect(view.x(0.1) - view.x(0)).toBeCloseTo(view.y(0) - view.y(0.1), 9);
  });

  test("a belt that cannot be laid is refused by name and distance, and the others are not", () => {
    // The tension idler stands at 40, 265 mm with a pitch radius of 50 mm and a little; the alternator comes on top of it.
    const values = { beltRuns: laid({ frontPulleys: moved("Alternator", 0.04, 0.3) }) };
    expect(frontBoard.refusal(values, "B")).toMatch(/Alternator and Tension idler overlap by \d+(\.\d+)? mm/);
    expect([frontBoard.refusal(values, "A"), frontBoard.refusal(values, "C")]).toEqual([undefined, undefined]);
    expect(frontDrives.describe(values as never, metric)).toContain("Accessory belt cannot be laid: Alternator");
    const { rows } = frontDrives.table(values as never, metric);
    const alternator = rows.find(([, unit]) => unit === "Alternator")!;
    expect(alternator.filter((entry) => entry === "–")).toHaveLength(3);
  });

  test("overlapsOf(pulleys) gives each pair once, by how far the sum of the radii exceeds the distance", () => {
    const pulley = (name: string, x: number, pitchRadius: number) =>
      ({ name, x, y: 0, pitchRadius, contact: "toothed" }) as never;
    const found = overlapsOf([pulley("a", 0, 0.05), pulley("b", 0.08, 0.05), pulley("c", 0.3, 0.05)]);
    expect(found.map(({ first, second }) => [first.name, second.name])).toEqual([["a", "b"]]);
    expect(found[0]!.depth).toBeCloseTo(0.02, 12);
  });

  test("namedIn(fault, pulleys) does not take a name for another that holds it", () => {
    const named = (fault: string) => namedIn(fault, [{ name: "Idler" }, { name: "Tension idler" }, { name: "Idler 2" }] as never).map(({ name }) => name);
    expect(named("Idler 2 does not reach the belt")).toEqual(["Idler 2"]);
    expect(named("Idler and Idler 2 overlap by 3 mm")).toEqual(["Idler", "Idler 2"]);
  });
});

describe("units against their windows", () => {
  const at = (idle: number, maximum: number, overspeed: number) =>
    ({ idle, cruise: idle, rated: maximum, maximum, overspeed }) as never;

  test("verdictOf(unit) takes bounds themselves as kept, and what is not stated as no bound", () => {
    const unit = { unit: "Fan", belt: "Fan belt", lowest: 10, highest: 40, burst: 60 };
    expect(verdictWords(verdictOf({ ...unit, at: at(10, 40, 60) }))).toBe("");
    expect(verdictWords(verdictOf({ ...unit, at: at(9.9, 40.1, 60.1) }))).toBe("too slow at idle, too fast, may burst");
    expect(verdictWords(verdictOf({ ...unit, lowest: 0, highest: 0, burst: 0, at: at(1, 400, 600) }))).toBe("");
  });

  test("unitsOfBelts(belts) has every driven unit that states a bound, and no crank", () => {
    const units = unitsOfBelts(laid()).map(({ unit }) => unit);
    expect(units).toContain("Blower");
    expect(units).not.toContain("Crank");
    expect(new Set(units).size).toBe(units.length);
  });
});
