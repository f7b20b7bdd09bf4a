import fc from "fast-check";
import { expect, test } from "vitest";
import { placeWords } from "../../../site/board/place-words";
import { onStep, snapped, stepsIn } from "../../../site/board/snap";
import { figureUnits } from "../../../site/state";

const spans = { x: [-0.8, 0.8], y: [-0.8, 1.2] } as const;

test("snapped(wanted) comes to whole millimetres within the spans, none further than half a step away", () => {
  const property = fc.property(
    fc.double({ min: -0.79, max: 0.79, noNaN: true }),
    fc.double({ min: -0.79, max: 0.79, noNaN: true }),
    (x, y) => {
      const at = snapped({ x, y }, { step: 0.001, others: [], reach: 0, spans });
      for (const [got, wanted] of [
        [at.x, x],
        [at.y, y],
      ] as const) {
        expect(Math.abs(got - wanted)).toBeLessThanOrEqual(0.0005 + 1e-12);
        expect(Number(Math.abs(got * 1000).toFixed(6)) % 1).toBe(0);
        expect(Object.is(got, -0)).toBe(false);
      }
    },
  );
  fc.assert(property, { seed: 20260101, numRuns: 200 });
  expect(snapped({ x: 3, y: -3 }, { step: 0.005, others: [], reach: 0, spans })).toEqual({ x: 0.8, y: -0.8, onX: false, onY: false });
});

test("snapped(wanted) is drawn to the nearest axis within reach, each coordinate by itself", () => {
  const others = [
    { x: 0.1005, y: 0.5 },
    { x: 0.104, y: -0.2 },
  ];
  const at = (x: number, y: number, reach = 0.003) => snapped({ x, y }, { step: 0.001, others, reach, spans });
  expect(at(0.1018, 0.3)).toEqual({ x: 0.1005, y: 0.3, onX: true, onY: false });
  expect(at(0.1028, 0.5021)).toEqual({ x: 0.104, y: 0.5, onX: true, onY: true });
  expect(at(0.1018, 0.3, 0)).toEqual({ x: 0.102, y: 0.3, onX: false, onY: false });
});

test("onStep(value) writes what a person would", () => {
  expect([onStep(0.4410000001, 0.001, [0, 1]), onStep(0.1 + 0.2, 0.001, [0, 1]), onStep(0.4463, 0.005, [0, 1])]).toEqual([0.441, 0.3, 0.445]);
});

test("stepsIn(unit) are round in the unit that is read", () => {
  const metric = stepsIn("mm");
  expect([metric.fine, metric.coarse, metric.key, metric.leap]).toEqual([0.001, 0.005, 0.001, 0.01]);
  const customary = stepsIn("in");
  expect([customary.fine, customary.coarse, customary.leap].map((step) => Number((step / 0.0254).toPrecision(9)))).toEqual([0.05, 0.25, 0.5]);
});

test("placeWords(piece) say where it stands from the crank, to either side", () => {
  const units = figureUnits({ system: "SI", own: {} });
  const words = (x: number, y: number) => placeWords({ name: "Alternator", x, y }, units);
  expect(words(-0.095, 0.44)).toBe("Alternator, 95\u00a0mm to the left, 440\u00a0mm above");
  expect(words(0.02, -0.1)).toBe("Alternator, 20\u00a0mm to the right, 100\u00a0mm below");
  expect(words(0, 0.3)).toBe("Alternator, straight, 300\u00a0mm above");
  expect(placeWords({ name: "Crank", x: 0, y: 0, fixed: true }, units)).toBe("Crank, stays at the crank's place");
});
