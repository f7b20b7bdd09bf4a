import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { attainable, inventedOperatingBuild, type SweepPoint } from "../../lib/charge";
import type { MassFlow, RotationalSpeed } from "../../lib/quantity";
import { figureUnits } from "../../site/state/figureUnits";
import { declaredValues } from "../../worksheets/build/build";
import * as cells from "../../worksheets/matching/cells";
import * as figures from "../../worksheets/matching/figures";
import { aligned } from "../../worksheets/matching/figures/elementWords";
import { edgeOf, isEdge, isles, lineOf, spotOf } from "../../worksheets/matching/figures/fieldMesh";
import { unknownSpeeds } from "../../worksheets/matching/figures/fieldSpan";
import { joined } from "../../worksheets/matching/figures/limitBand";
import { stretchesOf } from "../../worksheets/matching/figures/overPanel";
import { attained, isLeap, runFrom, runOf } from "../../worksheets/matching/figures/run";
import { gapWords, leapWords, listed, reasonOf, withoutNames } from "../../worksheets/matching/figures/runWords";
import { type Corner, hatchedShape } from "../../worksheets/matching/figures/shapes";
import { sharesOf } from "../../worksheets/matching/figures/shares";
import { smoothLine } from "../../worksheets/matching/figures/smoothLine";
import { surgeMarginWanted } from "../../worksheets/matching/inputs";
import { matched } from "../../worksheets/matching/solved";
import { graph, program } from "../../worksheets/model";
import type { Figure } from "../../worksheets/sheet";

const all: readonly Figure[] = Object.values(figures);
const metric = figureUnits({ system: "SI", own: {} });
const customary = figureUnits({ system: "US", own: {} });

const path = (...parts: readonly string[]) => ({ chargeOrder: parts.map((part) => ({ part })) });
/** Builds whose figures say different things. */
const cases = {
  declared: {},
  "measured points": { compressorSource: "points" },
  "measured points of both": {
    ...path("filter", "bankB", "bankA", "intercooler", "blower", "aftercooler", "plenum"),
    compressorSource: "points",
    bankBCompressorSource: "points",
  },
  "two banks": path("filter", "bankB", "bankA", "intercooler", "blower", "aftercooler", "plenum"),
  "more promised than given": { ratedPower: 1.1e6 },
  "high up": { altitude: 4000 },
} as const;

/** Small turbines and a wide distance from surge make the parts leap from one limit to another. */
const leaping = { surgeMarginWanted: 0.12, bankATurbineArea: 5e-4 } as const;

const evaluated = new Map<string, ReturnType<typeof program.run>>();
function evaluate(changes: Readonly<Record<string, unknown>> = {}) {
  const key = JSON.stringify(changes);
  let evaluation = evaluated.get(key);
  if (!evaluation) {
    evaluation = program.run({ ...declaredValues(graph), ...changes });
    evaluated.set(key, evaluation);
  }
  return evaluation;
}

function valuesOf({ from }: Pick<Figure, "from">, changes: Readonly<Record<string, unknown>> = {}): never {
  const evaluation = evaluate(changes);
  return Object.fromEntries(Object.entries(from).map(([name, ref]) => [name, evaluation.require(ref)])) as never;
}

const runWith = (changes: Readonly<Record<string, unknown>> = {}) => runOf(valuesOf({ from: runFrom }, changes));

/** Columns of a figure's numbers, by label. */
function columnsOf(shown: Figure, changes: Readonly<Record<string, unknown>> = {}, units = metric) {
  const { columns, rows } = shown.table(valuesOf(shown, changes), units);
  const labels = columns.map((column) => (typeof column === "string" ? column : column[0]));
  return { rows, column: (label: string) => rows.map((row) => row[labels.indexOf(label)]) };
}

describe("drawing of the match", () => {
  const corner = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 300 }));

  test("smoothLine(corners) goes through every corner, and between two never leaves their rectangle", () => {
    fc.assert(
      fc.property(fc.array(corner, { minLength: 2, maxLength: 8 }), (corners) => {
        const distinct = corners.filter(([x, y], i) => i === 0 || x !== corners[i - 1]![0] || y !== corners[i - 1]![1]);
        const numbers = smoothLine(corners).match(/-?[\d.]+/g)!.map(Number);
        expect(numbers).toHaveLength(2 + 6 * (distinct.length - 1));
        expect(numbers.slice(0, 2)).toEqual(distinct[0]);
        for (let i = 1; i < distinct.length; i += 1) {
          const [from, to] = [distinct[i - 1]!, distinct[i]!];
          const [x1, y1, x2, y2, x, y] = numbers.slice(6 * i - 4, 6 * i + 2) as [number, number, number, number, number, number];
          expect([x, y]).toEqual(to);
          // A cubic in Bézier's form lies in the hull of its points; they are rounded to a hundredth of a pixel.
          for (const [value, a, b] of [[x1, from[0], to[0]], [x2, from[0], to[0]], [y1, from[1], to[1]], [y2, from[1], to[1]]] as const) {
            expect(value).toBeGreaterThanOrEqual(Math.min(a, b) - 0.005 - 1e-9);
            expect(value).toBeLessThanOrEqual(Math.max(a, b) + 0.005 + 1e-9);
          }
        }
      }),
      { seed: 20260101, numRuns: 300 },
    );
  });

  test("hatchedShape(corners) fills a triangle and not its surroundings", () => {
    const triangle: readonly Corner[] = [
      [0, 0],
      [100, 0],
      [0, 100],
    ];
    const strokes = [...hatchedShape(triangle, 5, 0).matchAll(/M([\d.]+),([\d.]+)L([\d.]+),([\d.]+)/g)].map((match) =>
      match.slice(1).map(Number),
    );
    expect(strokes.length).toBeGreaterThan(18);
    for (const [x0, y0, x1, y1] of strokes as [number, number, number, number][]) {
      expect([x0, y1]).toEqual([0, y0]);
      expect(x1).toBeCloseTo(100 - y0, 6);
    }
  });

  test("joined(stretches) makes one of neighbours of one name", () => {
    const stretch = (name: string, from: number) => ({ name, from, to: from + 10 });
    expect(joined([stretch("a", 0), stretch("a", 10), stretch("b", 20), stretch("a", 30)])).toEqual([
      { name: "a", from: 0, to: 20 },
      { name: "b", from: 20, to: 30 },
      { name: "a", from: 30, to: 40 },
    ]);
  });

  test("stretchesOf(known, leaps) breaks at gaps and at leaps", () => {
    expect(stretchesOf([undefined, 1, 2, 3, undefined, 4], [false, false, false, true, false, false])).toEqual([
      [1, 3],
      [3, 4],
      [5, 6],
    ]);
  });

  test("aligned(values) has as many decimals in each as four digits of the largest allow", () => {
    expect(aligned([0.8508, 4.4461])).toEqual(["0.851", "4.446"]);
    expect(aligned([22, 202.06, -3.96])).toEqual(["22.0", "202.1", "−4.0"]);
    expect(aligned([-0.001, 150])).toEqual(["0.0", "150.0"]);
  });

  test("listed(names) joins the last by a word", () => {
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual(["", "a", "a and b", "a, b and c"]);
  });
});

describe("a compressor's field", () => {
  const bank = inventedOperatingBuild.path.find((element) => element.kind === "compressorBank")!;
  const field = bank.compressor;
  const span = field.speedSpan;

  test("lineOf(speed) runs from surge to choke, or to where nothing is compressed", () => {
    for (const speed of [span[0], (span[0] + span[1]) / 2, span[1]]) {
      const spots = lineOf(speed).map((place) => spotOf(field, place));
      const at = speed as RotationalSpeed;
      expect(spots[0]!.flow).toBeCloseTo(field.surgeFlow(at), 12);
      expect(spots.at(-1)!.flow).toBeLessThanOrEqual(field.chokeFlow(at) + 1e-12);
      const last = spots.at(-1)!;
      if (last.flow < field.chokeFlow(at) - 1e-9) expect(last.pressureRatio).toBeCloseTo(1, 4);
      for (const { pressureRatio } of spots) expect(pressureRatio).toBeGreaterThanOrEqual(1 - 1e-9);
    }
  });

  test("isles(field) hold efficiencies above their value, and their shores meet it", () => {
    const shown = isles(field, span, (best) => [best - 0.15, best - 0.08, best - 0.03]);
    expect(shown).toHaveLength(3);
    for (const { efficiency, rings } of shown) {
      let met = 0;
      for (const ring of rings) {
        ring.slice(1).forEach((place, i) => {
          if (isEdge(ring[i]!, place, span)) return;
          const { flow } = spotOf(field, place);
          // Found in a mesh of 25 by 29 places: between them the field is not straight.
          expect(Math.abs(field.at(flow as MassFlow, place.speed as RotationalSpeed).efficiency - efficiency)).toBeLessThan(0.03);
          met += 1;
        });
      }
      expect(met).toBeGreaterThan(4);
    }
  });

  test("unknownSpeeds(known, drawn) are the parts beyond either end", () => {
    expect(unknownSpeeds([10, 20], [12, 18])).toEqual([]);
    expect(unknownSpeeds([10, 20], [5, 25])).toEqual([
      [5, 10],
      [20, 25],
    ]);
    expect(edgeOf(0, [10, 20], 3).map(({ speed }) => speed)).toEqual([10, 15, 20]);
  });
});

describe("a run over engine speed", () => {
  test("runOf(values) has idle, promised and highest speed, and rises", () => {
    for (const changes of Object.values(cases)) {
      const { points, idleSpeed, ratedSpeed, maximumSpeed } = runWith(changes);
      const speeds = points.map(({ engineSpeed }) => engineSpeed);
      for (const own of [idleSpeed, ratedSpeed, maximumSpeed]) expect(speeds).toContain(own);
      speeds.slice(1).forEach((speed, i) => {
        expect(speed).toBeGreaterThan(speeds[i]!);
      });
    }
  });

  test("runOf(values) closes in on every leap to half a turn a second, or to where there is no balance", () => {
    let leaps = 0;
    for (const changes of [...Object.values(cases), leaping, { ...leaping, surgeMarginWanted: 0.08 }]) {
      const { points } = runWith(changes);
      points.slice(1).forEach((point, i) => {
        if (!isLeap(points[i]!, point)) return;
        leaps += 1;
        expect(point.engineSpeed - points[i]!.engineSpeed).toBeLessThan(0.51);
      });
    }
    expect(leaps).toBeGreaterThan(0);
  });

  test("leapWords(run) tells a leap with both of its speeds, and nothing where there is none", () => {
    const wide = runWith(leaping);
    const leap = wide.points.findIndex((point, i) => i > 0 && isLeap(wide.points[i - 1]!, point));
    expect(leap).toBeGreaterThan(0);
    expect(leapWords(wide, metric)).toContain(metric.text("rotationalSpeed", wide.points[leap]!.engineSpeed));
    const steady = { ...wide, points: wide.points.slice(0, leap) };
    expect(leapWords(steady, metric)).toBe("");
  });

  test("attained(point) is nothing where a limit is passed at every load, or nothing is left for the flywheel", () => {
    const point: SweepPoint = { ok: true, ...attainable(inventedOperatingBuild, 50 as RotationalSpeed) };
    expect(attained(point)).toBe(point);
    expect(reasonOf(point, metric)).toBe("");
    if (!point.ok) throw new Error("a balance is found");
    const [limit] = point.point.margins;
    const passed: SweepPoint = { ...point, violated: [limit!] };
    expect(attained(passed)).toBeUndefined();
    expect(reasonOf(passed, metric)).toMatch(/^no load is allowed, since at every load excess air \(smoke\) is passed$/);
    const driven: SweepPoint = { ...point, point: { ...point.point, brakePower: -5e3 as never } };
    expect(attained(driven)).toBeUndefined();
    expect(reasonOf(driven, metric)).toContain("before there is power at the flywheel");
    const refused: SweepPoint = { ok: false, engineSpeed: point.engineSpeed, refusal: "attainable: no balance: too little air" };
    expect(reasonOf(refused, metric)).toBe("no balance: too little air");
    const told: SweepPoint = { ...refused, refusal: "attainable: pressure left after the loss is -489377 Pa; it must be above 0 Pa" };
    expect(reasonOf(told, metric)).toBe("pressure left after the loss is −489.4\u00a0kPa; it must be above 0\u00a0kPa");
    expect(reasonOf(told, customary)).toContain("−70.98\u00a0psi");
  });

  test("gapWords(run) tell where nothing is given, and of all speeds if it is so", () => {
    const run = runWith();
    const refused = run.points.map(
      ({ engineSpeed }): SweepPoint => ({ ok: false, engineSpeed, refusal: "attainable: no balance: too little air" }),
    );
    expect(gapWords({ ...run, points: refused }, metric)).toMatch(
      /^The parts give nothing at any speed from .* to .*\. At .*: no balance: too little air\.$/,
    );
    const one = { ...run, points: [...run.points.slice(0, -1), refused.at(-1)!] };
    expect(gapWords(one, metric)).toContain(metric.text("rotationalSpeed", run.maximumSpeed));
    expect(withoutNames("attainable: operatingPoint: count of first bank is 0")).toBe("count of first bank is 0");
  });

  test("sharesOf(point) come to one after the losses", () => {
    for (const changes of Object.values(cases)) {
      for (const point of runWith(changes).points) {
        const at = attained(point);
        const shares = at && sharesOf(at);
        if (shares) expect(shares.turbochargers + shares.blower - shares.lost).toBeCloseTo(1, 9);
      }
    }
  });
});

describe("figures of the match", () => {
  test("keys and titles are each their own", () => {
    expect(all).toHaveLength(7);
    expect(new Set(all.map(({ key }) => key)).size).toBe(7);
    expect(new Set(all.map(({ title }) => title)).size).toBe(7);
  });

  test.each(all.map((shown) => [shown.key, shown] as const))("%s describes itself in sentences with numbers", (_, shown) => {
    for (const [name, changes] of Object.entries(cases)) {
      const words = [metric, customary].map((units) => shown.describe(valuesOf(shown, changes), units));
      for (const text of words) {
        expect(text).toMatch(/^[A-Z].*\d.*\.$/);
        expect(text).not.toMatch(/undefined|NaN|Infinity|\[object| {2}|\.\./);
      }
      // Shares and speeds read alike in both.
      if (name === "declared" && shown !== figures.pressureShares) expect(words[0]).not.toBe(words[1]);
    }
  });

  test.each(all.map((shown) => [shown.key, shown] as const))("%s lists its numbers in full rows", (_, shown) => {
    for (const changes of Object.values(cases)) {
      for (const units of [metric, customary]) {
        const { columns, rows } = shown.table(valuesOf(shown, changes), units);
        expect(rows.length).toBeGreaterThan(2);
        for (const row of rows) {
          expect(row).toHaveLength(columns.length);
          for (const entry of row) expect(typeof entry === "number" ? Number.isFinite(entry) : entry !== "").toBe(true);
        }
      }
    }
  });

  test("powerOverSpeed has at the promised speed what the sheet's cell says", () => {
    const { column } = columnsOf(figures.powerOverSpeed);
    const promised = column("Speed").indexOf("promised speed");
    const power = evaluate().require(cells.attainablePower);
    // Met on the way from the speed before, or from light load: the same balance to the solver's tolerance.
    expect((column("Power")[promised] as number) / metric.number("power", power)).toBeCloseTo(1, 6);
    expect(column("Power").filter((value) => typeof value === "number").length).toBeGreaterThan(10);
  });

  test("powerOverSpeed tells how far the promise is from what is given", () => {
    const told = figures.powerOverSpeed.describe(valuesOf(figures.powerOverSpeed, { ratedPower: 1.1e6 }), metric);
    const power = evaluate({ ratedPower: 1.1e6 }).require(cells.attainablePower);
    expect(told).toContain(`${metric.text("power", 1.1e6 - power)} short of the promise`);
  });

  test("chargeSteps has the stations of the match, their ratios multiply to the whole", () => {
    const { column, rows } = columnsOf(figures.chargeSteps);
    const { stations, manifoldPressure } = evaluate().require(matched);
    expect(rows).toHaveLength(stations.length);
    expect(column("Pressure").at(-1)).toBe(metric.number("pressure", manifoldPressure, "boost"));
    const whole = (column("Pressure ratio of the element before") as number[]).reduce((product, ratio) => product * ratio, 1);
    expect(whole).toBeCloseTo(manifoldPressure / stations[0]!.pressure, 9);
  });

  test("compressorField has a row for each bank and speed, inside the surge that is wanted", () => {
    const { column, rows } = columnsOf(figures.compressorField, cases["two banks"]);
    expect(new Set(rows.map(([name]) => String(name).split(",")[0]))).toEqual(new Set(["second bank", "first bank"]));
    for (const each of column("Engine speed")) expect(each).toBeGreaterThan(0);
    const declared = columnsOf(figures.compressorField);
    expect(declared.rows.filter(([name]) => String(name).endsWith(", promised"))).toHaveLength(1);
    const wanted = metric.number("fraction", evaluate().require(surgeMarginWanted));
    for (const each of declared.column("From surge")) expect(each).toBeGreaterThan(wanted - 1e-4);
  });

  test("compressorField and blowerDrive say so where there are no turbochargers or no blower", () => {
    const without = path("filter", "blower", "aftercooler", "plenum");
    expect(figures.compressorField.describe(valuesOf(figures.compressorField, without), metric)).toMatch(/^There are no turbochargers/);
    expect(columnsOf(figures.compressorField, without).rows).toEqual([]);
    const unblown = path("filter", "bankA", "aftercooler", "plenum");
    expect(figures.blowerDrive.describe(valuesOf(figures.blowerDrive, unblown), metric)).toMatch(/^There is no blower/);
  });

  test("blowerDrive compares with the bypass closed where it is open", () => {
    const open = { blowerBypass: "open" };
    const { column } = columnsOf(figures.blowerDrive, open);
    const pairs = column("Power at the drive").flatMap((power, i) => {
      const closed = column("Power with it closed")[i];
      return typeof power === "number" && typeof closed === "number" ? [[power, closed] as const] : [];
    });
    expect(pairs.length).toBeGreaterThan(3);
    // A blower that turns without load takes less than one that compresses.
    for (const [power, closed] of pairs) expect(power).toBeLessThan(closed);
    expect(figures.blowerDrive.describe(valuesOf(figures.blowerDrive, open), metric)).toMatch(/Its bypass is open from .*; closed it would take .* more at/);
    expect(figures.blowerDrive.describe(valuesOf(figures.blowerDrive), metric)).toContain("Its bypass is closed at every speed");
  });

  test("powerOverAltitude falls with altitude, and agrees at its own with what is given", () => {
    const { column } = columnsOf(figures.powerOverAltitude);
    const [own, ...others] = column("Most power") as number[];
    expect(own! / metric.number("power", evaluate().require(cells.attainablePower))).toBeCloseTo(1, 6);
    others.slice(1).forEach((power, i) => {
      expect(power).toBeLessThan(others[i]!);
    });
    expect(column("Altitude").slice(1)).toEqual([0, 500, 1000, 1500, 2000, 2500, 3000, 3500, 4000]);
  });

  test("arrangementsCompared compares with the promise on it, or with the most that is given", () => {
    const { column } = columnsOf(figures.arrangementsCompared);
    const promise = metric.number("power", evaluate().require(runFrom.ratedPower));
    column("Most power").forEach((most, i) => {
      if (typeof most !== "number") return;
      const at = column("Compared at")[i] as number;
      expect(column("Carries the promise")[i]).toBe(most >= promise ? "yes" : "no");
      expect(at / Math.min(most, promise)).toBeCloseTo(1, 9);
      // Less than an ideal engine could: fuel of 42.6 MJ/kg turned into work without any loss takes 84 g/kWh.
      expect(column("Fuel for the work")[i]).toBeGreaterThan(120);
    });
    expect(column("Charged by")).toHaveLength(3);
  });

  test("arrangementsCompared names the limit that stops whoever cannot carry the promise", () => {
    const changes = { ratedPower: 1.1e6 };
    const told = figures.arrangementsCompared.describe(valuesOf(figures.arrangementsCompared, changes), metric);
    const { column } = columnsOf(figures.arrangementsCompared, changes);
    expect(column("Carries the promise")).toEqual(["no", "no", "no"]);
    for (const limit of column("Met first") as string[]) {
      expect(told).toContain(limit[0]!.toLowerCase() + limit.slice(1));
    }
  });
});
