import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type DemandBuild,
  type DemandPoint,
  demandHeatBalance,
  demandPoint,
  inventedBuild,
  nozzleMassFlow,
} from "../../../lib/charge";
import { brakeSpecificFuelConsumption, compressionPressure } from "../../../lib/engine";
import { burntGas, humidityRatio, stoichiometricAirFuelRatio } from "../../../lib/fluid";
import type {
  Area,
  Count,
  Fraction,
  Length,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
  Volume,
  VolumePerTurn,
} from "../../../lib/quantity";
import published from "../../published/engine-output.json" with { type: "json" };
import { close, rowsOf } from "../publishedRows";

const seed = 20260101;
const rated = { engineSpeed: (3200 / 60) as RotationalSpeed, brakePower: 708e3 as Power };
const point = demandPoint(inventedBuild, rated);
const split = {
  frictionHeatToOil: 0.6 as Fraction,
  wallHeatToOil: 0.2 as Fraction,
  wallHeatRadiated: 0.1 as Fraction,
};

/** Power and heat of a point must add up to 1e-10 of the fuel's power, whatever the build. */
function expectClosed(build: DemandBuild, { powers, path, exhaust, fuelFlow, convergence, ...at }: DemandPoint): void {
  const { brake, friction, accessories, blower, pumping, fuelPump } = powers;
  const sum = brake + friction + accessories + blower + pumping + fuelPump;
  close(powers.indicated, sum, 1e-13);
  close(build.engine.grossIndicatedEfficiency * powers.fuel, sum, 1e-10);
  close(powers.fuel, fuelFlow * build.fuel.lowerHeatingValue, 1e-13);
  expect(convergence.residual).toBeLessThan(1e-10);
  close(path.dryAirFlow, at.excessAirRatio * stoichiometricAirFuelRatio(build.fuel) * fuelFlow, 1e-11);
  close(exhaust.flow, path.airFlow + fuelFlow, 1e-13);
  close(exhaust.turbinePower - exhaust.bearingLoss, path.turbochargers.power, 1e-9);
  const balance = demandHeatBalance({ powers, path, exhaust, fuelFlow, convergence, ...at }, split);
  expect(Math.abs(balance.unaccounted) / powers.fuel).toBeLessThan(1e-10);
}

describe("demandPoint of the invented engine at 708 kW and 3200 rev/min", () => {
  test("closes its balances of mass and energy", () => expectClosed(inventedBuild, point));

  // Our own estimate of such an engine, made by hand before the code: about 1.0 to 1.2 kg/s of air at about 4 bar,
  // 60 to 110 kW for the blower. By hand, 0.15 of the fuel to the walls leaves exhaust of 860 to 900 K.
  test("lies where a hand estimate puts it", () => {
    expect(point.air).toBe("as wanted");
    expect(point.path.airFlow).toBeGreaterThan(1);
    expect(point.path.airFlow).toBeLessThan(1.2);
    close(point.path.manifoldPressure, 4e5, 0.1);
    expect(point.powers.blower).toBeGreaterThan(60e3);
    expect(point.powers.blower).toBeLessThan(110e3);
    expect(point.exhaust.turbineInletTemperature).toBeGreaterThan(860);
    expect(point.exhaust.turbineInletTemperature).toBeLessThan(900);
  });

  // General practice from memory, not truth: turbocharged and charge-cooled at rated power.
  const rows = rowsOf(published);
  const parts = Object.fromEntries(demandHeatBalance(point, split).parts.map(({ key, share }) => [key, 100 * share]));
  test.each(rows("heat balance turbocharged charge-cooled rated power"))(
    "has a heat balance inside handbook ranges: $inputs.share",
    ({ inputs, expected }) => {
      const shares: Record<string, number> = {
        "brake power": parts["brake"]!,
        exhaust: parts["exhaust"]!,
        "coolant incl. oil": parts["jacket"]! + parts["oil"]!,
      };
      expect(shares[inputs["share"] as string]).toBeGreaterThan(expected["min_pct"] as number);
      expect(shares[inputs["share"] as string]).toBeLessThan(expected["max_pct"] as number);
    },
  );

  test("burns what high-speed engines burn at rated power, 200 to 230 g/(kW·h)", () => {
    const range = rows("bsfc").find(({ inputs }) => inputs["case"] === "turbocharged high-speed marine, rated")!;
    const consumption = 3.6e9 * brakeSpecificFuelConsumption(point.fuelFlow, point.powers.brake);
    expect(consumption).toBeGreaterThan(range.expected["min_g_kWh"] as number);
    expect(consumption).toBeLessThan(range.expected["max_g_kWh"] as number);
  });

  test("peak pressure follows from the manifold's", () => {
    const compressed = compressionPressure({ ...inventedBuild.engine, manifoldPressure: point.path.manifoldPressure });
    close(point.peakPressure, 1.35 * compressed, 1e-12);
  });

  test("each turbine's area passes half the exhaust at its expansion", () => {
    const { exhaust } = point;
    const gas = burntGas({ excessAirRatio: point.excessAirRatio, humidityRatio: 0.01 as Ratio });
    const flow = nozzleMassFlow(exhaust.turbineAreaEach!, {
      pressure: exhaust.turbineInletPressure,
      temperature: exhaust.turbineInletTemperature,
      downstreamPressure: exhaust.turbineOutletPressure,
      gasConstant: gas.gasConstant,
      ratioOfSpecificHeats: gas.ratioOfSpecificHeats(exhaust.turbineInletTemperature),
    });
    close(flow, exhaust.flow / 2, 1e-9);
  });

  test("the same call gives the same digits", () => expect(demandPoint(inventedBuild, rated)).toEqual(point));
});

describe("what moves what", () => {
  const fuelOf = (build: DemandBuild) => demandPoint(build, rated).fuelFlow;
  const { engine, turbochargers, blower } = inventedBuild;

  test("every loss costs fuel", () => {
    const worse: DemandBuild[] = [
      { ...inventedBuild, accessoryPower: 20e3 as Power },
      { ...inventedBuild, fuelPumpWork: 400e3 as SpecificEnergy },
      { ...inventedBuild, blower: { ...blower, mechanicalEfficiency: 0.8 as Fraction } },
      { ...inventedBuild, engine: { ...engine, grossIndicatedEfficiency: 0.44 as Fraction } },
      { ...inventedBuild, engine: { ...engine, firingRiseRatio: 1.6 as Ratio } },
      { ...inventedBuild, engine: { ...engine, valveLoss: 30e3 as PressureDifference } },
      { ...inventedBuild, turbochargers: { ...turbochargers, turbineEfficiency: 0.6 as Fraction } },
      { ...inventedBuild, exhaustPipe: { ...inventedBuild.exhaustPipe, pressureLoss: 15e3 as PressureDifference } },
    ];
    for (const build of worse) expect(fuelOf(build)).toBeGreaterThan(point.fuelFlow);
  });

  test("a pumping gain that does not count costs its power, and heats the exhaust", () => {
    expect(point.powers.pumping).toBeLessThan(0);
    const without = demandPoint({ ...inventedBuild, pumpingGainCounts: false }, rated);
    expect(without.powers.pumping).toBe(0);
    expect(without.fuelFlow).toBeGreaterThan(point.fuelFlow);
    expect(without.exhaust.turbineInletTemperature).toBeGreaterThan(point.exhaust.turbineInletTemperature);
    expectClosed({ ...inventedBuild, pumpingGainCounts: false }, without);
  });

  test("fuel and air grow with power", () => {
    const powers = [0, 50, 100, 200, 300, 400, 500, 600, 700, 800, 900];
    const points = powers.map((kilowatts) =>
      demandPoint(inventedBuild, { ...rated, brakePower: (1000 * kilowatts) as Power }),
    );
    for (let i = 1; i < points.length; i++) {
      expect(points[i]!.fuelFlow).toBeGreaterThan(points[i - 1]!.fuelFlow);
      expect(points[i]!.path.airFlow).toBeGreaterThanOrEqual(points[i - 1]!.path.airFlow * (1 - 1e-12));
    }
  });

  test("where idle turbochargers already bring enough air, excess air rises, without a step at the joint", () => {
    const light = demandPoint(inventedBuild, { ...rated, brakePower: 100e3 as Power });
    expect(light.air).toBe("more than wanted");
    expect(light.excessAirRatio).toBeGreaterThan(inventedBuild.excessAirRatio);
    close(light.path.turbochargers.pressureRatio, 1, 1e-12);
    expectClosed(inventedBuild, light);

    let below = 100e3;
    let above = 400e3;
    while (above - below > 1e-3) {
      const middle = (below + above) / 2;
      const { air } = demandPoint(inventedBuild, { ...rated, brakePower: middle as Power });
      if (air === "more than wanted") below = middle;
      else above = middle;
    }
    const left = demandPoint(inventedBuild, { ...rated, brakePower: below as Power });
    const right = demandPoint(inventedBuild, { ...rated, brakePower: above as Power });
    close(left.fuelFlow, right.fuelFlow, 1e-7); // a milliwatt of 250 kW, and the slope on both sides
    close(left.excessAirRatio, inventedBuild.excessAirRatio, 1e-6);
  });

  test("a wastegate raises the pressure before the turbines", () => {
    const gated = { ...inventedBuild, turbochargers: { ...turbochargers, wastegateFraction: 0.2 as Fraction } };
    const open = demandPoint(gated, rated);
    expect(open.exhaust.turbineInletPressure).toBeGreaterThan(point.exhaust.turbineInletPressure);
    expectClosed(gated, open);
  });
});

describe("refusals by name", () => {
  test("turbines that cannot live on the exhaust", () => {
    const poor = {
      ...inventedBuild.turbochargers,
      compressorEfficiency: 0.4 as Fraction,
      turbineEfficiency: 0.22 as Fraction,
    };
    expect(() => demandPoint({ ...inventedBuild, turbochargers: poor }, rated)).toThrow(
      /^demandPoint: no balance of power; .* needed, with turbochargers at pressure ratio/,
    );
  });

  test("a blower smaller than the engine", () => {
    const blower = { ...inventedBuild.blower, displacementPerTurn: 2.2e-3 as VolumePerTurn };
    expect(() => demandPoint({ ...inventedBuild, blower }, rated)).toThrow(
      "the blower would be a restriction: open its bypass",
    );
    const bypassed = demandPoint({ ...inventedBuild, blower: { ...blower, bypassOpen: true } }, rated);
    expect(bypassed.path.blower.gasPower).toBe(0);
  });

  test("an engine that gives away more than its fuel", () => {
    const engine = {
      ...inventedBuild.engine,
      grossIndicatedEfficiency: 0.6 as Fraction,
      heatToWallsShare: 0.5 as Fraction,
    };
    expect(() => demandPoint({ ...inventedBuild, engine }, rated)).toThrow(
      "demandPoint: grossIndicatedEfficiency and heatToWallsShare together is 1.1; it must be 0 to 1",
    );
  });

  test("numbers that are none", () => {
    expect(() => demandPoint(inventedBuild, { ...rated, brakePower: Number.NaN as Power })).toThrow(
      "demandPoint: brakePower is NaN W",
    );
    expect(() => demandPoint(inventedBuild, { ...rated, engineSpeed: 0 as RotationalSpeed })).toThrow(
      "engineSpeed is 0 rev/s",
    );
  });
});

describe("300 plausible builds", () => {
  // even over the span: fc.double would crowd at its ends
  const within = (min: number, max: number) =>
    fc.integer({ min: 0, max: 1e6 }).map((millionths) => min + ((max - min) * millionths) / 1e6);
  const builds = fc
    .record({
      litres: within(5, 16),
      stroke: within(0.11, 0.16),
      speed: within(1500, 3600),
      meanPressure: within(3e5, 32e5),
      blowerToEngine: within(0.9, 2.6),
      builtIn: within(1, 1.5),
      clearance: within(2e-5, 3e-4),
      compressor: within(0.62, 0.82),
      turbine: within(0.55, 0.75),
      cooler1: within(0, 0.95),
      cooler2: within(0, 0.95),
      sink: within(278, 325),
      warming: fc.constantFrom(0, 0, 1.2e-4),
      excess: within(1.2, 2.2),
      efficiency: within(0.4, 0.5),
      walls: within(0.08, 0.25),
      ambient: within(274, 315),
      pressure: within(75e3, 103e3),
      humidity: within(0, 1),
      gain: fc.boolean(),
      gate: within(0, 0.3),
    })
    .map((r): { build: DemandBuild; wanted: { engineSpeed: RotationalSpeed; brakePower: Power } } => {
      const displacement = r.litres / 1000;
      const engineSpeed = r.speed / 60;
      return {
        build: {
          ...inventedBuild,
          surroundings: {
            pressure: r.pressure as Pressure,
            temperature: r.ambient as Temperature,
            humidityRatio: humidityRatio({
              temperature: r.ambient as Temperature,
              pressure: r.pressure as Pressure,
              relativeHumidity: r.humidity as Fraction,
            }),
          },
          turbochargers: {
            count: 2 as Count,
            compressorEfficiency: r.compressor as Fraction,
            turbineEfficiency: r.turbine as Fraction,
            mechanicalEfficiency: 0.97 as Fraction,
            wastegateFraction: r.gate as Fraction,
          },
          coolerBeforeBlower: {
            ...inventedBuild.coolerBeforeBlower,
            effectiveness: r.cooler1 as Fraction,
            sinkTemperature: r.sink as Temperature,
          },
          coolerAfterBlower: {
            ...inventedBuild.coolerAfterBlower,
            effectiveness: r.cooler2 as Fraction,
            sinkTemperature: r.sink as Temperature,
          },
          sinkWarmingPerWatt: r.warming,
          blower: {
            ...inventedBuild.blower,
            displacementPerTurn: ((r.blowerToEngine * 0.46 * displacement) / 2) as VolumePerTurn,
            builtInVolumeRatio: r.builtIn as Ratio,
            filling: { kind: "clearance", area: r.clearance as Area },
          },
          engine: {
            ...inventedBuild.engine,
            displacement: displacement as Volume,
            stroke: r.stroke as Length,
            grossIndicatedEfficiency: r.efficiency as Fraction,
            heatToWallsShare: r.walls as Fraction,
          },
          excessAirRatio: r.excess as Ratio,
          pumpingGainCounts: r.gain,
        },
        wanted: {
          engineSpeed: engineSpeed as RotationalSpeed,
          brakePower: ((r.meanPressure * displacement * engineSpeed) / 2) as Power,
        },
      };
    });

  const known =
    /the blower would be a restriction: open its bypass|demandPoint: no balance of power; .* needed, with turbochargers at pressure ratio/;

  // About 20 of the blowers are smaller than their engines, and about 50 of the powers (up to 32 bar at the brake with
  // poor wheels, hot coolers and much excess air) would need turbochargers beyond their exhaust. A scan of fuel flows in
  // steps of 2 % found no balance in any of those.
  test("close their balances or are refused by name", () => {
    let closed = 0;
    const refusals: string[] = [];
    for (const { build, wanted } of fc.sample(fc.noBias(builds), { seed, numRuns: 300 })) {
      try {
        const answer = demandPoint(build, wanted);
        closed++;
        expectClosed(build, answer);
        expect(answer.path.blower.pressureRatio).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(answer.path.turbochargers.pressureRatio).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(answer.exhaust.turbineOutletTemperature).toBeLessThan(answer.exhaust.turbineInletTemperature + 1e-9);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        refusals.push(error.message);
      }
    }
    console.log(
      closed,
      refusals.filter((m) => !m.includes("restriction")),
    );
    expect(refusals.filter((message) => !known.test(message))).toEqual([]);
    expect(closed).toBeGreaterThan(220);
  });
});
