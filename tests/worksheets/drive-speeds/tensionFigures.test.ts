import { describe, expect, test } from "vitest";
import { figureUnits } from "../../../site/state/figureUnits";
import { declaredValues } from "../../../worksheets/build/build";
import { beltLoads } from "../../../worksheets/drive-speeds/beltLoads";
import { beltRuns } from "../../../worksheets/drive-speeds/beltRuns";
import { frontPulleys } from "../../../worksheets/drive-speeds/beltTables";
import { electricalBudget } from "../../../worksheets/drive-speeds/budgets";
import type { View } from "../../../worksheets/drive-speeds/figures/beltPath";
import { beltTensions } from "../../../worksheets/drive-speeds/figures/beltTensions";
import { driveBudgets } from "../../../worksheets/drive-speeds/figures/driveBudgets";
import { installedRuns } from "../../../worksheets/drive-speeds/figures/installedRuns";
import { panelLayout } from "../../../worksheets/drive-speeds/figures/panelLayout";
import { ribbon, ribbonEdge } from "../../../worksheets/drive-speeds/figures/ribbon";
import { unitTorque } from "../../../worksheets/drive-speeds/figures/unitTorque";
import { attained } from "../../../worksheets/matching/solved";
import { graph, program } from "../../../worksheets/model";
import type { Figure } from "../../../worksheets/sheet";
import { demoIn, demoInstallations } from "../demo";
import { spaced } from "../../spaced";

const metric = figureUnits({ system: "SI", own: {} });
const run = (changes: Readonly<Record<string, unknown>> = {}) => program.run({ ...declaredValues(graph), ...changes });
const valuesOf = ({ from }: Figure, changes: Readonly<Record<string, unknown>> = {}): never => {
  const evaluation = run(changes);
  return Object.fromEntries(Object.entries(from).map(([name, ref]) => [name, evaluation.require(ref)])) as never;
};

/** Area within a closed path of straight pieces, by the surveyor's formula. */
function area(path: string): number {
  const corners = [...path.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
  return Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [nx, ny] = corners[(i + 1) % corners.length]!;
      return sum + (x * ny - nx * y) / 2;
    }, 0),
  );
}

describe("a ribbon along a belt", () => {
  const view: View = { x: (x) => 1000 * x, y: (y) => -1000 * y, scale: 1000 };

  test.each(["clockwise", "counterclockwise"] as const)("covers as much as its width times the belt's length, and the turn round once: %s", (crankRotation) => {
    const [belt] = run({ crankRotation }).require(beltRuns);
    const width = 8;
    const parts = ribbon({ run: belt!.run!, travel: belt!.travel, view, widths: belt!.run!.spans.map(() => width) });
    const covered = [...parts.arcs, ...parts.spans].reduce((sum, path) => sum + area(path), 0);
    // Steiner: a strip of width t outside a closed curve of length L covers L t + π t².
    const exact = 1000 * belt!.run!.length * width + Math.PI * width ** 2;
    // Arcs are drawn in chords of 0.12 rad and corners rounded to 0.01: below 0.3 %.
    expect(Math.abs(covered / exact - 1)).toBeLessThan(3e-3);
    expect(parts.spans).toHaveLength(belt!.run!.spans.length);
  });

  test("has an edge that lies its width outside of the pulleys in the teeth, and inside of those on the back", () => {
    const { run: laid, travel } = run().require(beltRuns)[1]!;
    const edge = ribbonEdge({ run: laid!, travel, view, widths: laid!.spans.map(() => 5) });
    const corners = [...edge.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    for (const { x, y, pitchRadius, contact } of laid!.pulleys) {
      const reach = 1000 * pitchRadius + (contact === "toothed" ? 5 : -5);
      const nearest = Math.min(...corners.map(([cx, cy]) => Math.abs(Math.hypot(cx - 1000 * x, cy + 1000 * y) - reach)));
      expect(nearest).toBeLessThan(0.02);
    }
  });
});

describe("figures of the drives' loads", () => {
  const torqueRows = () => unitTorque.table(valuesOf(unitTorque), metric).rows as readonly [string, string, number, number, number][];

  test("beltTensions says the tightest and the slackest span of every belt, as the loads have them", () => {
    const words = spaced(beltTensions.describe(valuesOf(beltTensions), metric));
    for (const { name, spans } of run().require(beltLoads)) {
      const tight = spans.reduce((a, b) => (b.tension > a.tension ? b : a));
      expect(words).toContain(`${name}: ${Math.round(tight.tension) < 1000 ? Number(tight.tension.toPrecision(3)) : Math.round(tight.tension)} N from ${tight.from.toLowerCase()} to ${tight.to.toLowerCase()}`);
    }
  });

  test("beltTensions leaves out a belt that cannot be laid, and goes on with the others", () => {
    const broken = frontPulleys.value.map((row) => (row.unit === "Alternator" ? { ...row, x: 0.04, y: 0.3 } : row));
    const values = valuesOf(beltTensions, { frontPulleys: broken });
    expect(beltTensions.describe(values, metric)).not.toContain("Accessory belt:");
    expect(new Set(beltTensions.table(values, metric).rows.map(([belt]) => belt))).toEqual(new Set(["Blower belt", "Fan belt"]));
  });

  test("unitTorque lists for each loaded unit the power that torque and speed make", () => {
    for (const [unit, , , torque, power] of torqueRows().filter(([name]) => !name.includes(","))) {
      const member = run().require(beltRuns).flatMap(({ members }) => members).find((each) => each.unit === unit)!;
      const speeds = Object.values(member.at).map((speed) => (torque * 2 * Math.PI * speed) / 1000);
      // One of the five speeds of the unit's own shaft belongs to the row.
      expect(Math.min(...speeds.map((each) => Math.abs(each / power - 1)))).toBeLessThan(1e-9);
    }
  });

  test("unitTorque draws the blower's torque with the most that the parts give, as the match has it at the promised speed", () => {
    const solved = torqueRows().filter(([unit]) => unit === "Blower, as the parts give");
    const { point } = run().require(attained);
    const promised = solved.find(([, at]) => at === "promised speed")!;
    expect(promised[3] / point.blowers[0]!.shaftTorque).toBeCloseTo(1, 4);
    expect(promised[4] / (point.blowers[0]!.shaftPower / 1000)).toBeCloseTo(1, 4);
    expect(solved.length).toBeGreaterThan(5);
    expect(unitTorque.describe(valuesOf(unitTorque), metric)).toContain("With the most that the match's parts give, the blower takes up to");
  });

  test("driveBudgets names the speeds at which current is missing, and by how much", () => {
    const bright = (declaredValues(graph) as Record<string, readonly object[]>)["electricalLoads"]!.map((load) => ({ ...load, current: 60, idleShare: 1 }));
    const idle = run({ electricalLoads: bright }).require(electricalBudget)[0]!;
    expect(idle.balance).toBeLessThan(0);
    const words = spaced(driveBudgets.describe(valuesOf(driveBudgets, { electricalLoads: bright }), metric));
    expect(words).toMatch(/^The batteries are drawn down: at idle \d+ A are missing/);
    expect(driveBudgets.describe(valuesOf(driveBudgets), metric)).toMatch(/carries its loads at every speed/);
  });
});

describe("installations side by side", () => {
  const demoFront = (installation: string) => {
    const evaluation = demoIn(installation as never);
    return { key: installation, label: installation, values: Object.fromEntries(Object.entries(installedRuns.from).map(([name, ref]) => [name, evaluation.require(ref)])) };
  };

  test("installedRuns lists what differs between the demo's installations, a value for each", () => {
    const installations = demoInstallations.map(demoFront);
    const values = { ...installations[0]!.values, installations } as never;
    const { columns, rows } = installedRuns.table(values, metric);
    expect(columns).toEqual(["Of", "What", ...demoInstallations]);
    expect(rows.find(([of, what]) => of === "Blower" && what === "teeth")?.slice(2, 5)).toEqual([27, 27, 28]);
    expect(rows.some(([, what]) => /^speed/.test(String(what)))).toBe(false);
    expect(installedRuns.describe(values, metric)).toContain(`${rows.length} things differ`);
  });

  test("installedRuns finds installations alike that are", () => {
    const installations = [demoFront("boat"), { ...demoFront("boat"), label: "another" }];
    const values = { ...installations[0]!.values, installations } as never;
    expect(installedRuns.describe(values, metric)).toContain("They are laid out alike.");
    expect(installedRuns.table(values, metric).rows).toEqual([]);
  });

  test("installedRuns says that there is nothing to hold against, where there is one installation", () => {
    expect(installedRuns.describe(valuesOf(installedRuns), metric)).toMatch(/no other installation/);
  });

  test("panelLayout(extents) fills the width, keeps to one scale and to the height allowed", () => {
    const extents = [0.2, 0.4, 0.3].map((width) => ({ left: 0, high: 0, width, height: 0.5 }));
    const { scale, rows: lines } = panelLayout(extents, { width: 800, abreast: 2, side: 40, above: 10, tallest: 300 });
    expect(scale).toBeCloseTo(600, 9);
    expect(lines.map(({ panels }) => panels.length)).toEqual([2, 1]);
    for (const { panels, height } of lines) {
      expect(panels.reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(800, 9);
      expect(height).toBeCloseTo(320, 9);
      for (const { at, width } of panels) expect(width).toBeGreaterThanOrEqual(extents[at]!.width * scale + 2 * 40 - 1e-9);
    }
  });
});
