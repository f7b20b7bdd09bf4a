import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  blockedStrainerLoss,
  pumpOnSystem,
  pumpPointAtSpeed,
  pumpPressureRise,
  suctionHeadNeeded,
  systemPressure,
  type WaterPump,
} from "../../../lib/cooling";

const impeller = {
  kind: "impeller",
  displacement: 2.4e-4,
  filling: 0.84,
  shutOffPressure: 4e5,
  ratedSpeed: 30,
} as unknown as WaterPump;
const centrifugal = {
  kind: "centrifugal",
  shutOffPressure: 9e4,
  openFlow: 0.01,
  ratedSpeed: 30,
} as unknown as WaterPump;
const system = { staticPressure: 9000, lossAtReference: 7e4, referenceFlow: 0.005 } as never;

describe.each([
  ["impeller", impeller],
  ["centrifugal", centrifugal],
] as const)("a pump of the kind %s on its line", (_, pump) => {
  test("meets the line's pressure at the flow found, at any speed that lifts the water", () => {
    fc.assert(
      fc.property(fc.double({ min: 12, max: 60, noNaN: true }), (speed) => {
        const found = pumpOnSystem(pump, speed as never, system);
        expect(pumpPressureRise(pump, speed as never, found.volumeFlow) / found.pressureRise).toBeCloseTo(1, 9);
        expect(systemPressure(system, found.volumeFlow)).toBeCloseTo(found.pressureRise, 6);
      }),
      { seed: 20260101, numRuns: 100 },
    );
  });

  test("gives less through a blocked strainer and against more lift, more at speed, and says when it cannot lift", () => {
    const flow = (change: object, speed = 30) =>
      pumpOnSystem(pump, speed as never, { ...(system as object), ...change } as never).volumeFlow;
    expect(flow({ lossAtReference: 1.4e5 })).toBeLessThan(flow({}));
    expect(flow({ staticPressure: 3e4 })).toBeLessThan(flow({}));
    expect(flow({}, 40)).toBeGreaterThan(flow({}));
    expect(() => flow({ staticPressure: 9e5 })).toThrow("before any water flows");
    expect(() => flow({}, Number.NaN)).toThrow("speed is NaN rev/s");
  });
});

test("a centrifugal pump follows the affinity laws as pumpPointAtSpeed has them", () => {
  const rise = pumpPressureRise(centrifugal, 30 as never, 0.004 as never);
  const slower = pumpPointAtSpeed(
    { speed: 30, volumeFlow: 0.004, pressureRise: rise, power: 600 } as never,
    20 as never,
  );
  expect(pumpPressureRise(centrifugal, 20 as never, slower.volumeFlow)).toBeCloseTo(slower.pressureRise, 6);
  // without lift, flow goes with the speed and pressure with its square
  const line = { staticPressure: 0, lossAtReference: 7e4, referenceFlow: 0.005 } as never;
  const [full, half] = [30, 15].map((speed) => pumpOnSystem(centrifugal, speed as never, line));
  expect(half!.volumeFlow / full!.volumeFlow).toBeCloseTo(0.5, 12);
  expect(half!.pressureRise / full!.pressureRise).toBeCloseTo(0.25, 12);
});

test("an impeller pump delivers what it carries against nothing, and nothing at its shut-off pressure", () => {
  const carried = 0.84 * 2.4e-4 * 30;
  expect(pumpPressureRise(impeller, 30 as never, carried as never)).toBeCloseTo(0, 6);
  expect(pumpPressureRise(impeller, 30 as never, 0 as never)).toBeCloseTo(4e5, 6);
  expect(pumpPressureRise(impeller, 15 as never, 0 as never)).toBeCloseTo(2e5, 6);
});

test("blockedStrainerLoss(loss, blocked) quadruples when half the basket is blocked", () => {
  expect(blockedStrainerLoss(4000 as never, 0.5 as never)).toBe(16000);
  expect(blockedStrainerLoss(4000 as never, 0 as never)).toBe(4000);
  expect(() => blockedStrainerLoss(4000 as never, 1 as never)).toThrow("blocked is 1");
});

test("suctionHeadNeeded(rated, ratio) goes with the square of the speed", () => {
  expect(suctionHeadNeeded(4 as never, 0.5 as never)).toBe(1);
});
