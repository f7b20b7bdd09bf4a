import { describe, expect, test } from "vitest";
import {
  attainable,
  type ChargeElement,
  type CompressorField,
  countingGases,
  inventedOperatingBuild,
  mapReferences,
  type OperatingBuild,
  type OperatingPoint,
  operatingHeatBalance,
  operatingPoint,
  sweep,
  threeArrangements,
} from "../../../lib/charge";
import { dryAir, moistAir, saturationHumidityRatio, standardAtmosphere } from "../../../lib/fluid";
import type { Ratio, RotationalSpeed, Temperature } from "../../../lib/quantity";
import published from "../../published/charge-parts.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";
import { randomCase } from "./randomOperatingBuild";
import { settled } from "./slowSolver";

const speed = 50 as RotationalSpeed;
const mixture = (excessAirRatio: number) => ({ kind: "excessAir", excessAirRatio: excessAirRatio as never }) as const;
const split = { frictionHeatToOil: 0.6, wallHeatToOil: 0.2, wallHeatRadiated: 0.1 } as never;
const point = operatingPoint(inventedOperatingBuild, { engineSpeed: speed, load: mixture(1.65) });

/** The build with some of its elements changed, by kind. */
function changed(kind: ChargeElement["kind"], fields: object): OperatingBuild {
  const path = inventedOperatingBuild.path.map((element) =>
    element.kind === kind ? { ...element, ...fields } : element,
  );
  return { ...inventedOperatingBuild, path: path as readonly ChargeElement[] };
}

const at = (build: OperatingBuild, load = mixture(1.65), engineSpeed = speed) =>
  operatingPoint(build, { engineSpeed, load });

/** Mass, energy and power must close to 1e-9, and no element may break the second law. */
function expectLawful(build: OperatingBuild, found: OperatingPoint): void {
  const { convergence, powers, stations } = found;
  expect(convergence.residual).toBeLessThan(1e-9);
  expect(Math.abs(convergence.massResidual)).toBeLessThan(1e-9);
  expect(Math.abs(convergence.energyResidual)).toBeLessThan(1e-9);
  const { brake, friction, accessories, blower, pumping, fuelPump } = powers;
  close(
    brake + friction + accessories + blower + pumping + fuelPump,
    build.engine.grossIndicatedEfficiency * powers.fuel,
    1e-9,
  );
  expect(Math.abs(operatingHeatBalance(found, split).unaccounted) / powers.fuel).toBeLessThan(1e-9);
  let coolers = 0;
  build.path.forEach((element, i) => {
    const [before, after] = [stations[i]!, stations[i + 1]!];
    const gas = moistAir(before.humidityRatio);
    const rise = gas.entropy(after.temperature) - gas.entropy(before.temperature);
    const produced = rise - gas.gasConstant * Math.log(after.pressure / before.pressure);
    if (element.kind === "cooler") {
      const { heat } = found.coolers[coolers++]!;
      close(heat, before.massFlow * (gas.enthalpy(before.temperature) - gas.enthalpy(after.temperature)), 1e-9);
      const sink = element.cooling.sinkTemperature;
      expect(before.massFlow * produced + heat / sink).toBeGreaterThan(-1e-9 * Math.abs(heat));
    } else if (element.kind !== "spray") expect(produced).toBeGreaterThan(-1e-6);
  });
  for (const {
    turbineEfficiency,
    turbineInletTemperature,
    turbineOutletTemperature,
    compressorEfficiency,
  } of found.banks) {
    expect(turbineEfficiency).toBeLessThan(1);
    expect(compressorEfficiency).toBeLessThan(1);
    expect(turbineOutletTemperature).toBeLessThan(turbineInletTemperature);
  }
}

describe("operatingPoint of the invented parts", () => {
  test("obeys both laws on every element", () => expectLawful(inventedOperatingBuild, point));

  test("numbers its stations along the path", () => {
    expect(point.stations.map(({ number }) => number)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(point.stations.reduce((sum, { share }) => sum + share!, 0)).toBeCloseTo(1, 12);
    expect(point.stations.at(-1)!.pressure).toBe(point.manifoldPressure);
  });

  test("a load by power, fuel or mixture leads to the same point", () => {
    const byPower = operatingPoint(inventedOperatingBuild, {
      engineSpeed: speed,
      load: { kind: "brakePower", brakePower: point.brakePower },
    });
    const byFuel = operatingPoint(inventedOperatingBuild, {
      engineSpeed: speed,
      load: { kind: "fuelFlow", fuelFlow: point.fuelFlow },
    });
    for (const other of [byPower, byFuel]) {
      close(other.airFlow, point.airFlow, 1e-7);
      close(other.fuelFlow, point.fuelFlow, 1e-7);
      close(other.banks[0]!.wheelSpeed, point.banks[0]!.wheelSpeed, 1e-7);
    }
  });

  test("the same call gives the same digits, and counting gases change none", () => {
    const counting = countingGases();
    const counted = operatingPoint(inventedOperatingBuild, { engineSpeed: speed, load: mixture(1.65) }, counting.gases);
    expect(counted.airFlow).toBe(point.airFlow);
    expect(counted.banks).toEqual(point.banks);
    expect(counting.count().properties).toBeGreaterThan(100);
  });
});

describe("limiting cases with known answers", () => {
  test("an open bypass takes the blower out: ratio 1, no gas power, and the shaft turns its windage alone", () => {
    const build = changed("blower", { bypass: "open" });
    const found = at(build);
    const [blower] = found.blowers;
    expect(blower!.pressureRatio).toBe(1);
    expect(blower!.gasPower).toBe(0);
    close(blower!.shaftPower, 0.002 * 100 ** 3, 1e-12);
    expect(blower!.outletTemperature).toBe(found.stations[3]!.temperature);
    const free = {
      ...build,
      path: build.path.filter(({ kind }) => kind !== "blower"),
      accessoryPower: (6000 + 2000) as never,
    };
    close(at(free).airFlow, found.airFlow, 1e-8);
    close(at(free).brakePower, found.brakePower, 1e-8);
  });

  test("a blower that just fills the engine works at a ratio of 1: an automatic bypass opens there", () => {
    const small = changed("blower", {
      blower: { ...blowerOf(inventedOperatingBuild), displacementPerTurn: 1.8e-3 as never },
    });
    expect(at(small).blowers[0]!.bypassOpen).toBe(true);
    const closed = {
      ...small,
      path: small.path.map((e) => (e.kind === "blower" ? { ...e, bypass: "closed" as const } : e)),
    };
    expect(() => at(closed)).toThrow(
      /^operatingPoint: no balance: pressure ratio of blower is 0\.\d+; it would be a restriction/,
    );
  });

  test("without turbines the back pressure is that of the pipe", () => {
    const { blowerOnly } = threeArrangements(inventedOperatingBuild);
    const found = at(blowerOnly);
    expect(found.banks).toEqual([]);
    expect(found.backPressure).toBe(found.pipePressure);
    expect(found.exhaustTemperature).toBe(found.pipeTemperature);
    expectLawful(blowerOnly, found);
  });

  test("a turbine that the wastegate starves leaves its wheel to windmill, and the pressure behind the cylinders to the pipe", () => {
    const path = inventedOperatingBuild.path.map((e) =>
      e.kind === "compressorBank" ? { ...e, wastegate: { kind: "fixed", fraction: 0.95 } } : e,
    );
    const found = at({ ...inventedOperatingBuild, path } as OperatingBuild);
    // dragged along by the air that blower and engine draw, it throttles a little
    expect(found.banks[0]!.pressureRatio).toBeLessThan(1);
    expect(found.banks[0]!.pressureRatio).toBeGreaterThan(0.9);
    close(found.backPressure, found.pipePressure, 0.01);
  });

  test("a perfect cooler brings the charge to its sink", () => {
    const found = at(changed("cooler", { cooling: { kind: "fixed", effectiveness: 1, sinkTemperature: 303 } }));
    expect(found.stations[3]!.temperature).toBe(303);
    expect(found.manifoldTemperature).toBe(303);
  });

  test("a spray without water, or without evaporation, changes nothing", () => {
    for (const spray of [
      { waterFlow: 0, waterTemperature: 300, evaporationEfficiency: 1 },
      { waterFlow: 0.02, waterTemperature: 300, evaporationEfficiency: 0 },
    ]) {
      const path = [...inventedOperatingBuild.path];
      path.splice(4, 0, { kind: "spray", name: "spray", spray } as never);
      close(at({ ...inventedOperatingBuild, path }).brakePower, point.brakePower, 1e-9);
    }
  });

  test("a spray cools the charge at most to saturation, and the laws hold with its water", () => {
    let last = Number.POSITIVE_INFINITY;
    for (const waterFlow of [0.005, 0.01, 0.03, 0.2, 0.4]) {
      const path = [...inventedOperatingBuild.path];
      const spray = { waterFlow, waterTemperature: 300, evaporationEfficiency: 1 };
      path.splice(4, 0, { kind: "spray", name: "spray", spray } as never);
      const build = { ...inventedOperatingBuild, path };
      const found = at(build);
      expectLawful(build, found);
      const after = found.stations[5]!.temperature;
      expect(after).toBeLessThanOrEqual(last * (1 + 1e-3)); // saturated, more water no longer cools
      expect(found.sprays[0]!.saturated).toBe(waterFlow > 0.02);
      last = after;
    }
  });
});

function blowerOf(build: OperatingBuild) {
  return build.path.find((element) => element.kind === "blower")!.blower;
}

// Conservation of mass, posed and solved with constant cp and exponent 1.4; with the cp of air flow and pressures move by
// 0.3 %, and power by 1 %. The table gives the compressor's ratio; the turbine here only has to be able to hold it.
describe.each(rowsOf(published)("series-match-blower-first"))("blower before turbocharger, as tabled: $id", (row) => {
  const found = operatingPoint(tabledBuild(row), {
    engineSpeed: ((row.inputs["N_rpm"] as number) / 60) as never,
    load: mixture(1.8),
  });
  test("flow, pressures and temperatures", () => {
    close(found.airFlow, row.expected["m_kgps"], 0.004);
    close(found.blowers[0]!.pressureRatio, row.expected["blower_PR"], 0.006);
    close(found.manifoldPressure, row.expected["p_manifold_Pa"], 0.005);
    close(found.blowers[0]!.outletTemperature, row.expected["T_blower_out_K"], 0.004);
    close(found.manifoldTemperature, row.expected["T_manifold_K"], 0.003);
  });
  test("indicated power of the blower", () =>
    close(found.blowers[0]!.gasPower, row.expected["P_blower_indicated_W"], 0.012));
});

/** A compressor that holds one ratio and efficiency whatever its flow. */
function fixedField(pressureRatio: number, efficiency: number): CompressorField {
  const reference = mapReferences[0]!;
  const hot = dryAir.isentropicTemperature(reference.temperature, pressureRatio as never);
  const correctedWork = ((dryAir.enthalpy(hot) - dryAir.enthalpy(reference.temperature)) / efficiency) as never;
  const { compressor } = inventedOperatingBuild.path.find((element) => element.kind === "compressorBank")!;
  const { uncertainty } = compressor;
  return {
    name: "fixed",
    reference,
    tipDiameter: undefined,
    speedSpan: [100, 3000],
    uncertainty,
    at: () => ({
      pressureRatio: pressureRatio as never,
      correctedWork,
      efficiency: efficiency as never,
      extrapolated: false,
    }),
    surgeFlow: () => 0.01 as never,
    chokeFlow: () => 10 as never,
  };
}

function tabledBuild({ inputs, expected }: PublishedRow): OperatingBuild {
  const given = (name: string) => inputs[name] as number;
  const out = (name: string) => expected[name] as number;
  const cooler = (which: 1 | 2, pressure: number, mean: number): ChargeElement => ({
    kind: "cooler",
    name: `cooler ${which}`,
    cooling: {
      kind: "fixed",
      effectiveness: given(`eff_cooler${which}`) as never,
      sinkTemperature: given("T_coolant_K") as never,
    },
    restriction: {
      massFlow: out("m_kgps"),
      density: pressure / (287.05 * mean),
      pressureLoss: given(`dp_cooler${which}_Pa`),
    } as never,
  });
  const afterBlower = given("p_amb_Pa") * out("blower_PR");
  const template = inventedOperatingBuild.path.find((element) => element.kind === "compressorBank")!;
  const blowerSpeed = (given("drive_ratio") * given("N_rpm")) / 60;
  return {
    ...inventedOperatingBuild,
    surroundings: { pressure: given("p_amb_Pa"), temperature: given("T_amb_K"), humidityRatio: 0 } as never,
    engine: {
      ...inventedOperatingBuild.engine,
      displacement: given("V_engine_m3") as never,
      volumetricEfficiency: given("eta_vol_engine") as never,
    },
    path: [
      {
        kind: "blower",
        name: "blower",
        blower: {
          displacementPerTurn: given("V_blower_m3_per_rev") as never,
          driveRatio: given("drive_ratio") as never,
          builtInVolumeRatio: 1 as never,
          filling: {
            kind: "fitted",
            slipPerRoot: 0 as never,
            slipPerRatio: given("blower_ev_slope") as never,
            inletLoss: (1 - given("blower_ev0")) as never,
            referenceSpeed: blowerSpeed as never,
          },
          mechanicalEfficiency: 1 as never,
        },
      },
      cooler(1, afterBlower, 0.5 * (out("T_blower_out_K") + out("T_interstage_K"))),
      {
        ...template,
        count: 1 as never,
        compressor: fixedField(given("PR_turbo"), given("eta_c_turbo")),
        turbine: { ...template.turbine, entryArea: 3.6e-4 as never },
        wastegate: { kind: "fixed", fraction: 0 as never },
      },
      cooler(2, out("p_interstage_Pa") * given("PR_turbo"), out("T_manifold_K") + 30),
    ],
  };
}

describe("what moves what", () => {
  const base = point.brakePower;
  test("at a mixture, better parts give more power", () => {
    const turbine = inventedOperatingBuild.path.find((element) => element.kind === "compressorBank")!.turbine;
    const worse: readonly OperatingBuild[] = [
      changed("compressorBank", { turbine: { ...turbine, peakEfficiency: 0.68 } }),
      changed("compressorBank", { turbine: { ...turbine, entryArea: 8.8e-4 } }),
      changed("compressorBank", { mechanicalEfficiency: 0.92 }),
      changed("blower", { bypassShare: 0.1 }),
      changed("cooler", { cooling: { kind: "fixed", effectiveness: 0.4, sinkTemperature: 303 } }),
      { ...inventedOperatingBuild, exhaustPipe: { ...inventedOperatingBuild.exhaustPipe, pressureLoss: 2e4 as never } },
      { ...inventedOperatingBuild, accessoryPower: 2e4 as never },
      { ...inventedOperatingBuild, pumpingGainCounts: false },
    ];
    for (const build of worse) expect(at(build).brakePower).toBeLessThan(base);
  });

  // Without wastegate, and with the wheel neither idle nor choked, a tenth more area costs a sixth of the power.
  test("power is steep in the turbine's area", () => {
    const { turbine } = inventedOperatingBuild.path.find((element) => element.kind === "compressorBank")!;
    const power = (entryArea: number) =>
      at(
        changed("compressorBank", { wastegate: undefined, turbine: { ...turbine, entryArea } }),
        mixture(1.65),
        40 as never,
      ).brakePower;
    expect(Math.log(power(8.8e-4) / power(8e-4)) / Math.log(1.1)).toBeLessThan(-1.5);
  });

  test("altitude takes power, all the way up", () => {
    let last = Number.POSITIVE_INFINITY;
    for (const altitude of [0, 1000, 2000, 3000]) {
      const { pressure, temperature } = standardAtmosphere(altitude as never);
      const found = at({
        ...inventedOperatingBuild,
        surroundings: { pressure, temperature, humidityRatio: 0.005 as never },
      });
      expect(found.brakePower).toBeLessThan(last);
      last = found.brakePower;
    }
  });

  test("more fuel: more power, faster wheels, hotter exhaust, less excess air", () => {
    let last: OperatingPoint | undefined;
    for (const fuelFlow of [0.01, 0.02, 0.03, 0.04]) {
      const found = operatingPoint(inventedOperatingBuild, {
        engineSpeed: speed,
        load: { kind: "fuelFlow", fuelFlow: fuelFlow as never },
      });
      if (last) {
        expect(found.brakePower).toBeGreaterThan(last.brakePower);
        expect(found.banks[0]!.wheelSpeed).toBeGreaterThan(last.banks[0]!.wheelSpeed);
        expect(found.exhaustTemperature).toBeGreaterThan(last.exhaustTemperature);
        expect(found.excessAirRatio).toBeLessThan(last.excessAirRatio);
      }
      last = found;
    }
  });
});

describe("attainable and sweep", () => {
  const speeds = Array.from({ length: 25 }, (_, i) => (1000 + 110 * i) / 60) as RotationalSpeed[];
  const swept = sweep(inventedOperatingBuild, speeds);

  test("every speed stops at its first limit, with all others kept", () => {
    for (const found of swept) {
      if (!found.ok) throw new Error(found.refusal);
      const binding = found.point.margins.find(({ id }) => id === found.binding.id)!;
      expect(Math.abs(binding.margin)).toBeLessThan(1e-8);
      expect(found.violated).toEqual([]);
      for (const { id, margin } of found.point.margins) if (id !== binding.id) expect(margin).toBeGreaterThan(-1e-7);
      expect(found.next!.brakePower).toBeGreaterThan(found.binding.brakePower);
      expectLawful(inventedOperatingBuild, found.point);
    }
    expect(new Set(swept.map((found) => found.ok && found.binding.id)).size).toBeGreaterThan(1);
  });

  test("a point that begins near another one is the same point, and asks for fewer properties", () => {
    const load = { kind: "brakePower", brakePower: 0.93 * point.brakePower } as never;
    const cold = operatingPoint(inventedOperatingBuild, { engineSpeed: speed, load });
    const warm = operatingPoint(inventedOperatingBuild, { engineSpeed: speed, load, near: point });
    expectLawful(inventedOperatingBuild, warm);
    // both are closed to 1e-10, and power is up to a hundred times as steep in what they close
    close(warm.fuelFlow, cold.fuelFlow, 1e-8);
    close(warm.banks[0]!.wheelSpeed, cold.banks[0]!.wheelSpeed, 1e-8);
    const asked = (near?: OperatingPoint) => {
      const { gases, count } = countingGases();
      operatingPoint(inventedOperatingBuild, { engineSpeed: speed, load, ...(near && { near }) }, gases);
      return count().properties;
    };
    expect(asked(point)).toBeLessThan(0.7 * asked());
  });

  test("a sweep that comes back to a speed, or stays there, gives what it gave", () => {
    const there = [48, 50, 50, 49, 48].map((each) => each as RotationalSpeed);
    const powers = sweep(inventedOperatingBuild, there).map((each) => (each.ok ? each.point.brakePower : Number.NaN));
    close(powers[2]!, powers[1]!, 1e-8);
    close(powers[4]!, powers[0]!, 1e-8);
  });

  test("a sweep gives what each speed gives from nothing", () => {
    swept.forEach((found, i) => {
      const alone = attainable(inventedOperatingBuild, speeds[i]!);
      if (!found.ok) throw new Error(found.refusal);
      close(found.point.brakePower, alone.point.brakePower, 1e-7);
      expect([found.binding.id, found.next?.id]).toEqual([alone.binding.id, alone.next?.id]);
    });
  });

  test("the next limit is the one that binds once the first is lifted", () => {
    const first = attainable(inventedOperatingBuild, speed);
    const lifted = attainable(
      { ...inventedOperatingBuild, limits: { ...inventedOperatingBuild.limits, leastExcessAirRatio: 1.01 as never } },
      speed,
    );
    expect(first.binding.id).toBe("excessAir");
    expect(lifted.binding.id).toBe(first.next!.id);
    close(lifted.point.brakePower, first.next!.brakePower, 0.05); // along the tangent
  });

  test("limits from outside bind too, and a blower that turns too fast allows no load", () => {
    const pump = {
      key: "fuelPump",
      name: "Fuel pump",
      kind: "massFlow",
      use: ({ fuelFlow }: { fuelFlow: number }) => ({ value: fuelFlow, limit: 0.03 }),
    };
    const found = attainable(
      { ...inventedOperatingBuild, limits: { ...inventedOperatingBuild.limits, external: [pump as never] } },
      speed,
    );
    expect(found.binding.id).toBe("fuelPump");
    close(found.point.fuelFlow, 0.03, 1e-8);
    const slow = attainable(changed("blower", { highestSpeed: 90 }), speed);
    expect(slow.violated.map(({ id }) => id)).toEqual(["blowerSpeed:1"]);
  });

  test("three arrangements of one engine", () => {
    const { turbochargersOnly, blowerOnly, both } = threeArrangements(inventedOperatingBuild);
    expect(blowerOnly.path.map(({ kind }) => kind)).toEqual(["restriction", "blower", "cooler", "plenum"]);
    const [alone, driven, compound] = [turbochargersOnly, blowerOnly, both].map(
      (build) => attainable(build, 30 as never).point,
    );
    expect(compound!.brakePower).toBeGreaterThan(alone!.brakePower);
    expect(compound!.brakePower).toBeGreaterThan(driven!.brakePower);
    expect(() => threeArrangements(blowerOnly)).toThrow("threeArrangements: the path has no compressor bank");
  });
});

describe("random builds", () => {
  const known =
    /^operatingPoint: no balance: (found up to|a state that closes all equations was|pressure ratio of|engine, blowers and|\w+(?: \d)? would (?:throttle|take))/;

  // 20,000 were solved by tests/lib/charge/manyBuilds.ts; these 1,500 are others.
  test("1,500 close their balances or are refused by name", () => {
    let closed = 0;
    const strange: string[] = [];
    for (let seed = 1; seed <= 1500; seed++) {
      const { build, engineSpeed, load } = randomCase(seed);
      try {
        const found = operatingPoint(build, { engineSpeed: engineSpeed as RotationalSpeed, load });
        closed++;
        const { residual, massResidual, energyResidual } = found.convergence;
        expect(Math.max(residual, Math.abs(massResidual), Math.abs(energyResidual))).toBeLessThan(1e-9);
        if (seed % 10 === 0) expectLawful(build, found);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        if (!known.test(error.message)) strange.push(`${seed}: ${error.message}`);
      }
    }
    expect(strange).toEqual([]);
    expect(closed).toBeGreaterThan(1000);
  }, 60_000);

  test("a slow solver of another kind settles at the same points", () => {
    let compared = 0;
    for (let seed = 5000; compared < 20; seed++) {
      const { build, engineSpeed, load } = randomCase(seed);
      let found: OperatingPoint;
      try {
        found = operatingPoint(build, { engineSpeed: engineSpeed as RotationalSpeed, load });
      } catch {
        continue;
      }
      if (found.banks.some(({ chokeMargin }) => chokeMargin < 0.15)) continue; // there it needs minutes
      const slow = settled(
        build,
        engineSpeed,
        found.fuelFlow,
        found.blowers.map(({ bypassOpen }) => bypassOpen),
      );
      if (!slow) continue;
      compared++;
      close(slow.airFlow, found.airFlow, 1e-6);
      expect(Math.abs(slow.brakePower - found.brakePower) / found.powers.indicated).toBeLessThan(1e-6);
      close(slow.exhaustPressure, found.backPressure, 1e-6);
      slow.wheelSpeeds.forEach((wheel, i) => {
        close(wheel, found.banks[i]!.wheelSpeed, 1e-6);
      });
    }
  }, 60_000);
});

test("a cooler condenses only of the vapour that the cooler before it has left", () => {
  const path = inventedOperatingBuild.path.map((element) =>
    element.kind === "cooler" ? { ...element, cooling: { ...element.cooling, sinkTemperature: 283 as Temperature } } : element,
  );
  const surroundings = { ...inventedOperatingBuild.surroundings, humidityRatio: 0.025 as Ratio };
  const { coolers, dryAirFlow, manifoldTemperature: temperature, manifoldPressure: pressure } = at({
    ...inventedOperatingBuild,
    path,
    surroundings,
  });
  expect(coolers.length).toBe(2);
  for (const { condensateFlow } of coolers) expect(condensateFlow).toBeGreaterThan(0);
  const held = saturationHumidityRatio({ temperature, pressure });
  close(coolers[0]!.condensateFlow + coolers[1]!.condensateFlow, dryAirFlow * (0.025 - held), 1e-9);
});
