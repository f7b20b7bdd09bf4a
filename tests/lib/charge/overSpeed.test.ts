/** What of a build goes with the engine's speed: at the stated speed nothing, elsewhere by the laws that it names. */
import { describe, expect, test } from "vitest";
import {
  attainable,
  coolingAtSinkFlow,
  coolingEffectiveness,
  inventedOperatingBuild,
  type OperatingBuild,
  operatingPoint,
  type OverSpeed,
  sweep,
} from "../../../lib/charge";
import type { RotationalSpeed } from "../../../lib/quantity";

const statedAt = (3200 / 60) as RotationalSpeed;
const half = (statedAt / 2) as RotationalSpeed;
const close = (value: number, other: number, within: number) =>
  expect(Math.abs(value / other - 1), `${value} beside ${other}`).toBeLessThanOrEqual(within);

/** The invented engine, its first cooler behind the second in the cooling stream. */
const inSeries: OperatingBuild = {
  ...inventedOperatingBuild,
  path: inventedOperatingBuild.path.map((element) =>
    element.name === "cooler before the blower" && element.kind === "cooler"
      ? { ...element, warmedBy: { cooler: "cooler after the blower", perWatt: 6e-5 } }
      : element,
  ),
};
const all = {
  statedAt,
  accessories: { withSpeed: 0.5, withCube: 0.3 },
  coolingStreams: true,
  slowExcessAir: { leastExcessAirRatio: 1.3, upTo: statedAt / 4, fullFrom: (3 / 4) * statedAt },
} as OverSpeed;
const build: OperatingBuild = { ...inSeries, overSpeed: all };

describe("a build that goes with the engine's speed", () => {
  test("is at the stated speed what it is without", () => {
    const with_ = operatingPoint(build, { engineSpeed: statedAt });
    const without = operatingPoint(inSeries, { engineSpeed: statedAt });
    close(with_.brakePower, without.brakePower, 1e-9);
    close(with_.airFlow, without.airFlow, 1e-9);
    expect(with_.excessAirRatio).toBeCloseTo(1.5, 9);
  });

  test("its accessories take less at half the speed: a fifth stays, half is halved, the rest is an eighth", () => {
    const { powers } = operatingPoint(build, { engineSpeed: half });
    close(powers.accessories, inSeries.accessoryPower * (0.2 + 0.5 / 2 + 0.3 / 8), 1e-12);
  });

  test("half the stream is warmed twice as much by each watt, and cools as a cooler with half the sink does", () => {
    const { coolers, stations } = operatingPoint(build, { engineSpeed: half });
    const [first, second] = coolers;
    close(first!.sinkWarming, 2 * 6e-5 * second!.heat, 1e-8);
    const element = inSeries.path.find(({ name }) => name === "cooler before the blower")!;
    if (element.kind !== "cooler" || element.cooling.kind !== "rated") throw new Error("a rated cooler is expected");
    const { massFlow, temperature } = stations[2]!;
    // the charge's specific heat at its inlet, dry air's to a part in a hundred
    const halved = coolingEffectiveness(coolingAtSinkFlow(element.cooling, 0.5 as never), massFlow, massFlow * 1015);
    close(first!.effectiveness, halved, 0.01);
    expect(halved).toBeLessThan(coolingEffectiveness(element.cooling, massFlow, massFlow * 1015));
    expect(temperature).toBeGreaterThan(300);
  });

  test.each([
    [1, 1.5],
    [0.75, 1.5],
    [0.5, 1.4],
    [0.25, 1.3],
    [0.2, 1.3],
    [1.1, 1.5],
  ])("at %s of the stated speed it wants no less air than %s times what its fuel needs", (share, wanted) => {
    const engineSpeed = (statedAt * share) as RotationalSpeed;
    const { excessAirRatio, margins } = operatingPoint(build, { engineSpeed });
    expect(excessAirRatio).toBeCloseTo(wanted, 9);
    expect(margins.find(({ id }) => id === "excessAir")!.limit).toBeCloseTo(wanted, 12);
  });

  test("a sweep finds at each speed what is found there alone", () => {
    const speeds = [0.45, 0.5, 0.55, 0.6, 0.65].map((share) => (share * statedAt) as RotationalSpeed);
    sweep(build, speeds).forEach((swept, i) => {
      const alone = attainable(build, speeds[i]!);
      if (!swept.ok) throw new Error(swept.refusal);
      expect(swept.binding.id).toBe(alone.binding.id);
      close(swept.point.brakePower, alone.point.brakePower, 1e-7);
    });
  });

  test("shares that make no sense are refused by name", () => {
    const of = (overSpeed: object) => () =>
      operatingPoint({ ...inSeries, overSpeed: overSpeed as OverSpeed }, { engineSpeed: half });
    expect(of({ ...all, accessories: { withSpeed: 0.8, withCube: 0.4 } })).toThrow(
      "operatingPoint: accessories with speed and cube together is 1.2; it must be 0 to 1",
    );
    expect(of({ ...all, statedAt: 0 })).toThrow("operatingPoint: overSpeed statedAt");
    expect(of({ ...all, slowExcessAir: { leastExcessAirRatio: 1.4, upTo: 20, fullFrom: 10 } })).toThrow("fullFrom less upTo");
    expect(of({ ...all, slowExcessAir: { leastExcessAirRatio: 0.9, upTo: 10, fullFrom: 20 } })).toThrow("leastExcessAirRatio");
  });
});
