import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as fuel from "../../../lib/fuel";
import { gap, plain, radians } from "../drive/plain";

const mappedDemand = plain(fuel.mappedDemand);
const sharedInjections = plain(fuel.sharedInjections);
const fullestCylinder = plain(fuel.fullestCylinder);
const cylinderPressureAt = plain(fuel.cylinderPressureAt);
const injectionDuration = plain(fuel.injectionDuration);
const injectedPulse = fuel.injectedPulse as unknown as (
  nozzle: Readonly<Record<string, number | ((angle: number) => number)>>,
  pulse: { readonly start: number; readonly volume: number },
) => { end: number; duration: number; opening: number; rate: readonly { angle: number; flow: number }[] };

describe("mappedDemand", () => {
  const map = {
    points: [
      { speed: 50, quantity: 1, pressure: 1 },
      { speed: 15, quantity: 0.6, pressure: 0.4 },
      { speed: 30, quantity: 1.1, pressure: 0.9 },
    ],
    volumePerStroke: 200e-9,
    railPressure: 1.8e8,
  };
  test("meets its rows whatever their order, and runs straight between them", () => {
    expect(mappedDemand(map, 30).volumePerStroke).toBeCloseTo(220e-9, 18);
    expect(mappedDemand(map, 40).volumePerStroke).toBeCloseTo(210e-9, 18);
    expect(mappedDemand(map, 15).railPressure).toBeCloseTo(0.72e8, 3);
    expect(mappedDemand(map, 50).railPressure).toBe(1.8e8);
  });
  test("holds its ends", () => {
    expect(mappedDemand(map, 1).volumePerStroke).toBeCloseTo(120e-9, 18);
    expect(mappedDemand(map, 90).volumePerStroke).toBeCloseTo(200e-9, 18);
  });
  test("refuses a speed that stands twice, too few rows, and NaN", () => {
    const twice = [map.points[0]!, map.points[0]!];
    expect(() => mappedDemand({ ...map, points: twice }, 30)).toThrow("speed is 3000 rev/min in two rows");
    expect(() => mappedDemand({ ...map, points: twice.slice(1) }, 30)).toThrow("it must have at least 2");
    expect(() => mappedDemand(map, Number.NaN)).toThrow("engineSpeed is NaN");
  });
});

test("sharedInjections adds up to the stroke's fuel", () => {
  const share = fc.double({ min: 0, max: 0.5, noNaN: true });
  fc.assert(
    fc.property(share, share, (pilotShare, afterShare) => {
      const { pilot, main, after } = sharedInjections({ volumePerStroke: 250e-9, pilotShare, afterShare });
      expect(gap(pilot + main + after, 250e-9)).toBeLessThan(1e-12);
    }),
    { seed: 20260101, numRuns: 100 },
  );
  expect(() => sharedInjections({ volumePerStroke: 1e-9, pilotShare: 0.6, afterShare: 0.6 })).toThrow(
    "pilotShare and afterShare together is 1.2",
  );
});

test("fullestCylinder leaves the engine's fuel as it is", () => {
  const { fullest, others } = fullestCylinder({ meanMass: 200e-6, imbalance: 0.05, cylinders: 6 });
  expect(gap(fullest + 5 * others, 6 * 200e-6)).toBeLessThan(1e-14);
  expect(fullest).toBeCloseTo(210e-6, 12);
  expect(fullestCylinder({ meanMass: 200e-6, imbalance: 0.05, cylinders: 1 }).fullest).toBe(200e-6);
});

describe("cylinderPressureAt", () => {
  const trace = { compression: 1.2e7, peak: 1.7e7, peakAngle: radians(11), exponent: 1.35, compressionRatio: 14 };

  test("is the compression's at dead centre, the peak's at its angle, and falls away on both sides", () => {
    expect(cylinderPressureAt(trace, 0) / 1.2e7).toBeCloseTo(1, 12);
    expect(cylinderPressureAt(trace, radians(11))).toBeCloseTo(1.7e7, 3);
    let before = cylinderPressureAt(trace, radians(-90));
    for (let angle = -85; angle <= 11; angle += 1) {
      const now = cylinderPressureAt(trace, radians(angle));
      expect(now).toBeGreaterThan(before);
      before = now;
    }
    for (let angle = 12; angle <= 120; angle += 1) {
      const now = cylinderPressureAt(trace, radians(angle));
      expect(now).toBeLessThan(before);
      before = now;
    }
  });
  test("has the whole volume at the lower dead centre: compression over ratio to the exponent", () => {
    expect(gap(cylinderPressureAt(trace, -Math.PI), 1.2e7 / 14 ** 1.35)).toBeLessThan(1e-12);
  });
  test("has no step at its joints", () => {
    const nudge = 1e-9;
    for (const joint of [0, radians(11)]) {
      expect(gap(cylinderPressureAt(trace, joint - nudge), cylinderPressureAt(trace, joint + nudge))).toBeLessThan(1e-6);
    }
    expect(() => cylinderPressureAt({ ...trace, peak: 1e7 }, 0)).toThrow("peak is 10000000 Pa");
  });
});

describe("injectedPulse", () => {
  const steady = {
    area: 4e-7,
    dischargeCoefficient: 0.8,
    railPressure: 1.8e8,
    density: 820,
    engineSpeed: 50,
    openingTime: 1e-4,
    closingTime: 1.5e-4,
    cylinderPressure: () => 1.3e7,
  };
  const flow = plain(fuel.nozzleFlow)({ ...steady, cylinderPressure: 1.3e7 });

  test("lasts as injectionDuration says against a steady pressure, long or short", () => {
    const volume = fc.double({ min: 1e-10, max: 4e-7, noNaN: true });
    fc.assert(
      fc.property(volume, (volumePerStroke) => {
        const { duration } = injectedPulse(steady, { start: -0.2, volume: volumePerStroke });
        const told = injectionDuration({ volumePerStroke, nozzleFlow: flow, openingTime: 1e-4, closingTime: 1.5e-4 });
        expect(gap(duration, told)).toBeLessThan(1e-9);
      }),
      { seed: 20260101, numRuns: 100 },
    );
  });
  const pressure = (angle: number) =>
    cylinderPressureAt({ compression: 1.2e7, peak: 2e7, peakAngle: 0.2, exponent: 1.35, compressionRatio: 13 }, angle);

  test("brings its volume against a changing pressure: its rate, added up, is what was wanted", () => {
    for (const volume of [3e-9, 20e-9, 250e-9]) {
      const { rate, duration, end } = injectedPulse({ ...steady, cylinderPressure: pressure }, { start: -0.15, volume });
      const turn = 2 * Math.PI * 50;
      let sum = 0;
      for (const [i, point] of rate.slice(1).entries()) {
        sum += ((point.flow + rate[i]!.flow) * (point.angle - rate[i]!.angle)) / (2 * turn);
      }
      // Straight lines between the points of a slightly curved rate.
      expect(gap(sum, volume)).toBeLessThan(2e-3);
      expect(end).toBeCloseTo(-0.15 + turn * duration, 12);
    }
  });
  test("lasts longer against the burning gas than against the compression alone", () => {
    const pulse = { start: -0.15, volume: 250e-9 };
    const fired = injectedPulse({ ...steady, cylinderPressure: pressure }, pulse);
    expect(fired.duration).toBeGreaterThan(injectedPulse({ ...steady, cylinderPressure: () => 1e7 }, pulse).duration);
    expect(fired.duration).toBeLessThan(injectedPulse({ ...steady, cylinderPressure: () => 2e7 }, pulse).duration);
  });
  test("is nothing without fuel, and refuses what would take too long or flow backwards", () => {
    expect(injectedPulse(steady, { start: 0.1, volume: 0 })).toMatchObject({ end: 0.1, rate: [] });
    expect(() => injectedPulse({ ...steady, area: 1e-8 }, { start: 0, volume: 250e-9 })).toThrow("larger holes");
    expect(() => injectedPulse({ ...steady, cylinderPressure: () => 2e8 }, { start: 0, volume: 1e-8 })).toThrow(
      "railPressure is 180000000 Pa",
    );
    expect(() => injectedPulse(steady, { start: 0, volume: Number.NaN })).toThrow("volume is NaN");
  });
});
