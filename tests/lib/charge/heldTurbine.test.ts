import { describe, expect, test } from "vitest";
import { demandAtTurbineArea, demandPoint, inventedBuild } from "../../../lib/charge";
import type { Area, Power, PressureDifference, RotationalSpeed, Temperature } from "../../../lib/quantity";

const speed = (53 + 1 / 3) as RotationalSpeed;
const power = 708e3 as Power;
const rated = demandPoint(inventedBuild, { engineSpeed: speed, brakePower: power });
const area = rated.exhaust.turbineAreaEach!;

describe("demandAtTurbineArea(build, wanted, area)", () => {
  test("gives the rated point back at the rated area", () => {
    const held = demandAtTurbineArea(inventedBuild, { engineSpeed: speed, brakePower: power }, area);
    expect(held.excessAirRatio / rated.excessAirRatio).toBeCloseTo(1, 5);
    expect(held.fuelFlow / rated.fuelFlow).toBeCloseTo(1, 5);
  });

  test.each([
    [0.5, 0.8],
    [0.2, 0.6],
    [0.05, 0.4],
  ])("passes the exhaust of %d of the power at %d of the speed through the same area", (share, slow) => {
    const wanted = { engineSpeed: (slow * speed) as RotationalSpeed, brakePower: (share * power) as Power };
    const held = demandAtTurbineArea(inventedBuild, wanted, area);
    expect(held.exhaust.turbineAreaEach! / area).toBeCloseTo(1, 5);
    expect(held.path.manifoldPressure).toBeLessThan(rated.path.manifoldPressure);
  });

  test("runs richer and hotter in warm air, with a clogged exhaust and behind a warm cooler", () => {
    const { surroundings, exhaustPipe, coolerBeforeBlower } = inventedBuild;
    const { pressureLoss } = exhaustPipe;
    const { sinkTemperature } = coolerBeforeBlower!;
    const worse = [
      { surroundings: { ...surroundings, temperature: (surroundings.temperature + 20) as Temperature } },
      { exhaustPipe: { ...exhaustPipe, pressureLoss: (pressureLoss + 1e4) as PressureDifference } },
      { coolerBeforeBlower: { ...coolerBeforeBlower!, sinkTemperature: (sinkTemperature + 15) as Temperature } },
    ];
    for (const change of worse) {
      const held = demandAtTurbineArea(
        { ...inventedBuild, ...change },
        { engineSpeed: speed, brakePower: power },
        area,
      );
      expect(held.excessAirRatio).toBeLessThan(rated.excessAirRatio);
      expect(held.exhaust.turbineInletTemperature).toBeGreaterThan(rated.exhaust.turbineInletTemperature);
    }
  });

  test("says which way a turbine is wrong that no excess air suits", () => {
    const wanted = { engineSpeed: speed, brakePower: power };
    expect(() => demandAtTurbineArea(inventedBuild, wanted, (3 * area) as Area)).toThrow("too wide");
    expect(() => demandAtTurbineArea(inventedBuild, wanted, Number.NaN as Area)).toThrow("turbineAreaEach is NaN m²");
  });
});
