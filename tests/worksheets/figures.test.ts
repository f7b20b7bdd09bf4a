import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { figureUnits } from "../../site/state/figureUnits";
import { powerStaircase, powerSteps } from "../../worksheets/air-demand/figures/powerStaircase";
import { chargeStaircase } from "../../worksheets/boost/figures/chargeStaircase";
import { altitude } from "../../worksheets/brief/figures/altitude";
import { declaredValues } from "../../worksheets/build/build";
import {
  arrowHead,
  clearSpot,
  figures,
  gathered,
  hatching,
  meetsDisc,
  meetsSegment,
  overlap,
  rowsFor,
  share,
  spread,
  textWidth,
  wrapped,
} from "../../worksheets/drawing";
import { frontPulleys } from "../../worksheets/drive-speeds/beltTables";
import { beltTensions } from "../../worksheets/drive-speeds/figures/beltTensions";
import { driveBudgets } from "../../worksheets/drive-speeds/figures/driveBudgets";
import { frontDrives } from "../../worksheets/drive-speeds/figures/frontDrives";
import { installedRuns } from "../../worksheets/drive-speeds/figures/installedRuns";
import { picks } from "../../worksheets/drive-speeds/figures/picks";
import { unitTorque } from "../../worksheets/drive-speeds/figures/unitTorque";
import { speedWindows } from "../../worksheets/drive-speeds/figures/speedWindows";
import { boatReach } from "../../worksheets/fuel-delivery/figures/boatReach";
import { injectionTimeline } from "../../worksheets/fuel-delivery/figures/injectionTimeline";
import { nozzleTrade } from "../../worksheets/fuel-delivery/figures/nozzleTrade";
import { pumpOverSpeed } from "../../worksheets/fuel-delivery/figures/pumpOverSpeed";
import { pumpsCompared } from "../../worksheets/fuel-delivery/figures/pumpsCompared";
import { supplyProfile } from "../../worksheets/fuel-delivery/figures/supplyProfile";
import { tankWarming } from "../../worksheets/fuel-delivery/figures/tankWarming";
import { Later } from "../../worksheets/later";
import type { MarineBalance } from "../../worksheets/marine-cooling/balanceOf";
import { closedCircuits } from "../../worksheets/marine-cooling/figures/closedCircuits";
import { wetExhaustTemperature } from "../../worksheets/boat-duty/exhaust";
import { jacketReaches, oilReaches, rawWaterDischarge } from "../../worksheets/marine-cooling/circuit";
import { curveFlows } from "../../worksheets/marine-cooling/figures/curveFlows";
import { curveTemperatures } from "../../worksheets/marine-cooling/figures/curveTemperatures";
import { deratingPlate } from "../../worksheets/marine-cooling/figures/deratingPlate";
import { dutyPlate } from "../../worksheets/marine-cooling/figures/dutyPlate";
import { failurePlate } from "../../worksheets/marine-cooling/figures/failurePlate";
import { flowsOf } from "../../worksheets/marine-cooling/figures/flows";
import { heatFlows } from "../../worksheets/marine-cooling/figures/heatFlows";
import { landPlate } from "../../worksheets/marine-cooling/figures/landPlate";
import { pumpPlate } from "../../worksheets/marine-cooling/figures/pumpPlate";
import { seaWaterLine } from "../../worksheets/marine-cooling/figures/seaWaterLine";
import { towerPlate } from "../../worksheets/marine-cooling/figures/towerPlate";
import { graph, program } from "../../worksheets/model";
import type { Figure } from "../../worksheets/sheet";
import { spaced } from "../spaced";

const all: readonly Figure[] = [
  powerStaircase,
  chargeStaircase,
  injectionTimeline,
  nozzleTrade,
  pumpOverSpeed,
  pumpsCompared,
  supplyProfile,
  tankWarming,
  boatReach,
  frontDrives,
  speedWindows,
  unitTorque,
  beltTensions,
  driveBudgets,
  installedRuns,
  picks,
  heatFlows,
  seaWaterLine,
  curveFlows,
  closedCircuits,
  curveTemperatures,
  pumpPlate,
  failurePlate,
  dutyPlate,
  deratingPlate,
  landPlate,
  towerPlate,
  altitude,
];
const metric = figureUnits({ system: "SI", own: {} });
const customary = figureUnits({ system: "US", own: {} });
const boat = { heatCarrier: "seaWater", ratedPower: 387770, ratedSpeed: 40, maximumSpeed: 43.3 };

function valuesOf(shown: Figure, changes: Readonly<Record<string, unknown>> = {}): Record<string, never> {
  const under = (inputs: Readonly<Record<string, unknown>>) => {
    const evaluation = program.run({ ...declaredValues(graph), ...inputs });
    return Object.fromEntries(Object.entries(shown.from).map(([name, ref]) => [name, evaluation.require(ref) as never]));
  };
  const values = under(changes);
  const installations = [
    { key: "first", label: "As declared", values: under({}) },
    { key: "second", label: "As in this case", values },
  ];
  return { ...values, ...(shown.across && { installations: installations as never }) };
}

describe("drawing", () => {
  test("figures(value) writes true minus signs, thin spaces and no idle zeros", () => {
    expect([
      figures(12345.6),
      figures(-0.0251, 2),
      figures(-0.0001, 2),
      figures(2.5),
      figures(0),
      figures(999.6),
      figures(Number.NaN),
    ]).toEqual(["12\u202f346", "−0.025", "−0.0001", "2.5", "0", "1000", "–"]);
  });

  test("share(part) has a decimal below ten per cent, and does not call a little nothing", () => {
    expect([
      share(metric, 0.38249),
      share(metric, 0.0129),
      share(metric, 0.0002),
      share(metric, 0),
      share(metric, -0.0312),
    ].map(spaced)).toEqual(["38 %", "1.3 %", "< 0.1 %", "0 %", "−3.1 %"]);
  });

  test("textWidth(text) grows with every letter and with weight", () => {
    expect(textWidth("Blower")).toBeGreaterThan(textWidth("Blowe"));
    expect(textWidth("Blower", { bold: true })).toBeGreaterThan(textWidth("Blower"));
    expect(textWidth("WWW")).toBeGreaterThan(textWidth("iii"));
  });

  test("wrapped(text, width) keeps every word, in lines that fit unless a word is wider", () => {
    const text = "After the turbochargers and before the blower";
    const lines = wrapped(text, 120);
    expect(lines.join(" ")).toBe(text);
    for (const line of lines) expect(line.includes(" ") ? textWidth(line) : 0).toBeLessThanOrEqual(120);
    expect(wrapped("turbochargers", 10)).toEqual(["turbochargers"]);
  });

  test("spread(labels, span) leaves them apart, in order, and where they were if they may stay", () => {
    expect(
      spread(
        [
          { at: 50, size: 20 },
          { at: 150, size: 20 },
        ],
        [0, 200],
      ),
    ).toEqual([50, 150]);
    const label = fc.record({
      at: fc.double({ min: 0, max: 400, noNaN: true }),
      size: fc.double({ min: 1, max: 40, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(label, { minLength: 2, maxLength: 6 }), (labels) => {
        const middles = spread(labels, [0, 400], 6);
        const order = labels.map((_, i) => i).sort((a, b) => middles[a]! - middles[b]!);
        for (const [k, i] of order.slice(1).entries()) {
          const j = order[k]!;
          expect(middles[i]! - middles[j]!).toBeGreaterThanOrEqual((labels[i]!.size + labels[j]!.size) / 2 + 6 - 1e-9);
          expect(labels[i]!.at).toBeGreaterThanOrEqual(labels[j]!.at);
        }
        // Six labels of 40 and five gaps of 6 fit into 400: none may stick out.
        for (const [i, { size }] of labels.entries()) {
          expect(middles[i]! - size / 2).toBeGreaterThanOrEqual(-1e-9);
          expect(middles[i]! + size / 2).toBeLessThanOrEqual(400 + 1e-9);
        }
      }),
      { seed: 20260101, numRuns: 200 },
    );
  });

  test("gathered(labels, span) leaves them apart and in order, and shifts those that touch to both sides alike", () => {
    expect(
      gathered(
        [
          { at: 50, size: 20 },
          { at: 150, size: 20 },
        ],
        [0, 200],
      ),
    ).toEqual([50, 150]);
    expect(
      gathered(
        [
          { at: 98, size: 30 },
          { at: 102, size: 30 },
        ],
        [0, 200],
        6,
      ),
    ).toEqual([82, 118]);
    const label = fc.record({
      at: fc.double({ min: 0, max: 400, noNaN: true }),
      size: fc.double({ min: 1, max: 40, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(label, { minLength: 2, maxLength: 6 }), (labels) => {
        const ordered = labels.toSorted((a, b) => a.at - b.at);
        const middles = gathered(ordered, [0, 400], 6);
        for (const [i, { size }] of ordered.entries()) {
          // Six labels of 40 and five gaps of 6 fit into 400: none may stick out.
          expect(middles[i]! - size / 2).toBeGreaterThanOrEqual(-1e-9);
          expect(middles[i]! + size / 2).toBeLessThanOrEqual(400 + 1e-9);
          if (i === 0) continue;
          expect(middles[i]! - middles[i - 1]!).toBeGreaterThanOrEqual((size + ordered[i - 1]!.size) / 2 + 6 - 1e-9);
        }
      }),
      { seed: 20260101, numRuns: 200 },
    );
  });

  test("rowsFor(labels) takes another row only for what would touch", () => {
    expect(
      rowsFor([
        { at: 50, size: 60 },
        { at: 90, size: 60 },
        { at: 200, size: 60 },
      ]),
    ).toEqual([0, 1, 0]);
  });

  test("hatching(box) stays in its box and rises at 45°", () => {
    const box = { x: 10, y: 20, width: 37, height: 11 };
    const strokes = [...hatching(box, 5).matchAll(/M([\d.]+),([\d.]+)L([\d.]+),([\d.]+)/g)].map((match) =>
      match.slice(1).map(Number),
    );
    expect(strokes.length).toBe(9);
    for (const [x0, y0, x1, y1] of strokes as [number, number, number, number][]) {
      expect(x1 - x0).toBeCloseTo(y0 - y1, 6);
      for (const x of [x0, x1]) expect(x >= 10 && x <= 47).toBe(true);
      for (const y of [y0, y1]) expect(y >= 20 && y <= 31).toBe(true);
    }
    expect(hatching({ ...box, width: 0, height: 0 })).toBe("");
  });

  test("arrowHead(x, y, direction) has its tip where it is told and its heel behind", () => {
    const [tip, ...heel] = [...arrowHead(100, 50, 0, 8).matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map((match) => [
      Number(match[1]),
      Number(match[2]),
    ]);
    expect(tip).toEqual([100, 50]);
    for (const point of heel) expect(point[0]).toBeLessThan(94);
  });

  test("meetsSegment and meetsDisc tell lines and discs that touch a box from those that pass it", () => {
    const box = { x: 0, y: 0, width: 10, height: 10 };
    expect(meetsSegment(box, [-5, 5, 15, 5])).toBe(true);
    expect(meetsSegment(box, [4, 4, 5, 5])).toBe(true);
    expect(meetsSegment(box, [-5, 8, 2, 15])).toBe(false);
    expect(meetsSegment(box, [-5, 11, 15, 11])).toBe(false);
    expect(meetsDisc(box, { x: 13, y: 13, radius: 4 })).toBe(false);
    expect(meetsDisc(box, { x: 13, y: 13, radius: 4.3 })).toBe(true);
  });

  test("clearSpot(disc, …) finds a place clear of everything, or says that there is none", () => {
    const disc = { x: 100, y: 100, radius: 20 };
    const obstacles = {
      discs: [disc],
      segments: [[0, 100, 200, 100]] as const,
      boxes: [{ x: 60, y: 20, width: 80, height: 50 }],
      bounds: { x: 0, y: 0, width: 200, height: 200 },
    };
    const spot = clearSpot(disc, { width: 60, height: 34 }, -Math.PI / 2, obstacles)!;
    expect(meetsDisc(spot, disc)).toBe(false);
    expect(meetsSegment(spot, [0, 100, 200, 100])).toBe(false);
    expect(overlap(spot, obstacles.boxes[0]!)).toBe(false);
    expect(clearSpot(disc, { width: 190, height: 120 }, 0, obstacles)).toBeUndefined();
  });
});

describe("figures of the sheets", () => {
  test("powerSteps(values) join end to begin and come to the sum at their foot", () => {
    const steps = powerSteps(valuesOf(powerStaircase) as never);
    for (const [i, step] of steps.slice(1, -1).entries()) expect(step.begin).toBe(steps[i]!.end);
    expect(steps.at(-2)!.end / steps.at(-1)!.power).toBeCloseTo(1, 9);
  });

  test.each([{}, boat])("flowsOf(balance) give the fuel's power back to the last watt %#", (changes) => {
    const { marineBalance } = valuesOf(heatFlows, changes) as unknown as { marineBalance: MarineBalance };
    const flows = flowsOf(marineBalance.lines);
    expect(flows).toHaveLength(marineBalance.lines.length);
    expect(flows.reduce((sum, { power }) => sum + power, 0) / marineBalance.fuel).toBeCloseTo(1, 9);
  });

  test("keys and titles are each their own", () => {
    expect(new Set(all.map(({ key }) => key)).size).toBe(all.length);
    expect(new Set(all.map(({ title }) => title)).size).toBe(all.length);
  });

  test.each(all.map((shown) => [shown.key, shown] as const))(
    "%s describes itself in sentences with numbers, in either system",
    (_, shown) => {
      for (const changes of [{}, boat]) {
        const words = [metric, customary].map((units) => shown.describe(valuesOf(shown, changes) as never, units));
        for (const text of words) {
          expect(text).toMatch(/^[A-Z].*\d.*\.$/);
          expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/);
        }
        if (shown !== speedWindows) expect(words[0]).not.toBe(words[1]);
      }
    },
  );

  test.each(all.map((shown) => [shown.key, shown] as const))(
    "%s lists its numbers in full rows, in either system",
    (_, shown) => {
      for (const units of [metric, customary]) {
        const { columns, rows } = shown.table(valuesOf(shown, boat) as never, units);
        expect(rows.length).toBeGreaterThan(2);
        for (const row of rows) {
          expect(row).toHaveLength(columns.length);
          for (const entry of row) expect(typeof entry === "number" ? Number.isFinite(entry) : entry !== "").toBe(true);
        }
      }
    },
  );

  test.each([curveFlows, curveTemperatures, failurePlate, deratingPlate, landPlate])(
    "$key tells why it has no answer, and lists nothing",
    (shown) => {
      const refusing = new Later("sea", {}, () => {
        throw new RangeError("sea: the water boils; give it more flow");
      });
      const values = Object.fromEntries(
        Object.entries(valuesOf(shown)).map(([name, value]) => [
          name,
          (value as unknown) instanceof Later ? refusing : value,
        ]),
      );
      expect(shown.describe(values as never, metric)).toBe("Not drawn: the water boils; give it more flow");
      expect(shown.table(values as never, metric).rows).toEqual([]);
      expect(shown.atRest).toBe(true);
    },
  );

  test("curveTemperatures ends at what the sheets show at the promised speed, and leaves out a mix that a dry exhaust has not", () => {
    const numbers = (changes: object) =>
      curveTemperatures.table(valuesOf(curveTemperatures, { ...boat, ...changes }) as never, metric);
    const sheets = program.run({ ...declaredValues(graph), ...boat });
    const shown = [jacketReaches, oilReaches, rawWaterDischarge, wetExhaustTemperature].map((cell) =>
      metric.number("temperature", sheets.require(cell)),
    );
    const last = numbers({}).rows.at(-1)!.slice(4) as readonly number[];
    expect(last).toHaveLength(4);
    for (const [i, temperature] of last.entries()) expect(temperature).toBeCloseTo(shown[i]!, 2);
    expect(numbers({ exhaustKind: "dry" }).columns).toHaveLength(7);
  });

  test("landPlate's curve reaches as far as the vehicle is driven, and to 120 km/h at least", () => {
    const fastest = (vehicleSpeed: number) =>
      landPlate.table(valuesOf(landPlate, { vehicleSpeed }) as never, metric).rows.at(-1)![1];
    expect(fastest(60 / 3.6)).toBeCloseTo(120, 6);
    expect(fastest(300 / 3.6)).toBeCloseTo(300, 6);
  });

  test("heatFlows shows the promised power at once, and any other point when the hand rests", () => {
    const waits = (along: string, speed: number, load: number) =>
      (heatFlows.atRest as (values: never) => boolean)({ flowsAlong: along, flowsSpeed: speed, flowsLoad: load } as never);
    expect(waits("propeller", 1, 1)).toBe(false);
    expect([waits("propeller", 0.99, 1), waits("propeller", 1, 0.9), waits("fullLoad", 1, 1)]).toEqual([true, true, true]);
    const words = (changes: object) =>
      spaced(heatFlows.describe(valuesOf(heatFlows, { ...boat, ...changes }) as never, metric));
    expect(words({})).toMatch(/^At 2400 rpm, .* All parts together leave nothing over\. /);
    expect(words({ flowsSpeed: 0.75 })).toMatch(/^At 1800 rpm on the propeller's curve, .* leave nothing over\. /);
    expect(words({ flowsSpeed: 0.75, flowsLoad: 0.5 })).toMatch(/^At 1800 rpm on 50 % of the propeller's load, /);
    expect(words({ flowsAlong: "fullLoad", flowsSpeed: 1.05 })).toMatch(/^At 2520 rpm on full load, /);
    expect(words({ flowsSpeed: 0.2 })).toMatch(/^Not drawn: the speed set is 480 rpm, below idle; choose /);
    expect(words({ flowsSpeed: 1.05 })).toMatch(/^Not drawn: .* ends at 2400 rpm, .* choose a lower speed, or full load$/);
    expect(words({ flowsAlong: "fullLoad", flowsSpeed: 1.2 })).toMatch(/^Not drawn: .* the highest speed of the engine; /);
  });

  test("powerStaircase tells the air that the meters cannot read", () => {
    const words = powerStaircase.describe(valuesOf(powerStaircase, { meterCount: 1 }) as never, metric);
    expect(words).toMatch(/too little\.$/);
    expect(powerStaircase.describe(valuesOf(powerStaircase) as never, metric)).toMatch(/of their span is left\.$/);
  });

  test("frontDrives names the units that are driven backwards", () => {
    const wrong = frontPulleys.value.map((row) =>
      row.role === "fuelPump" ? { ...row, mustTurn: "counterclockwise" } : row,
    );
    expect(frontDrives.describe(valuesOf(frontDrives, { frontPulleys: wrong }) as never, metric)).toContain(
      "Driven backwards: fuel pump.",
    );
  });
});
