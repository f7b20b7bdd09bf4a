import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ChargeCooler,
  type ChargePath,
  type ChargePathBuild,
  chargePath,
  chargePathAtIdle,
  chargePathAtTurbochargerRatio,
  inventedBuild,
} from "../../../lib/charge";
import { manifoldDensityNeeded } from "../../../lib/engine";
import { dryAir, moistAir, saturationHumidityRatio } from "../../../lib/fluid";
import type {
  Count,
  Density,
  Fraction,
  MassFlow,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Temperature,
  Volume,
  VolumePerTurn,
} from "../../../lib/quantity";
import published from "../../published/charge-path.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";

const seed = 20260101;
const rows = rowsOf(published);
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const station = (path: ChargePath, key: string) => path.stations.find((each) => each.key === key)!;

/** A cooler that loses the table's pressure at the table's own state. */
function tabled(row: PublishedRow, which: 1 | 2, inletPressure: number, meanTemperature: number): ChargeCooler {
  return {
    effectiveness: given(row, `eff_cooler${which}`) as Fraction,
    sinkTemperature: given(row, "T_coolant_K") as Temperature,
    restriction: {
      massFlow: row.expected["m_kgps"] as MassFlow,
      density: (inletPressure / (287.05 * meanTemperature)) as Density,
      pressureLoss: given(row, `dp_cooler${which}_Pa`) as PressureDifference,
    },
  };
}

function tabledBuild(row: PublishedRow): ChargePathBuild {
  const out = (name: string) => row.expected[name] as number;
  const driveRatio = given(row, "drive_ratio");
  const afterTurbo = given(row, "p_amb_Pa") * given(row, "PR_turbo");
  const afterBlower = out("p_interstage_Pa") * out("blower_PR");
  return {
    surroundings: {
      pressure: given(row, "p_amb_Pa") as Pressure,
      temperature: given(row, "T_amb_K") as Temperature,
      humidityRatio: 0 as Ratio,
    },
    filter: { massFlow: 1 as MassFlow, density: 1 as Density, pressureLoss: 0 as PressureDifference },
    turbochargers: { count: 1 as Count, compressorEfficiency: given(row, "eta_c_turbo") as Fraction },
    coolerBeforeBlower: tabled(row, 1, afterTurbo, out("T_interstage_K") + 30),
    blower: {
      displacementPerTurn: given(row, "V_blower_m3_per_rev") as VolumePerTurn,
      driveRatio: driveRatio as Ratio,
      builtInVolumeRatio: 1 as Ratio,
      filling: {
        kind: "fitted",
        slipPerRoot: 0 as Ratio,
        slipPerRatio: given(row, "blower_ev_slope") as Ratio,
        inletLoss: (1 - given(row, "blower_ev0")) as Ratio,
        referenceSpeed: ((driveRatio * given(row, "N_rpm")) / 60) as RotationalSpeed,
      },
      mechanicalEfficiency: 1 as Fraction,
    },
    coolerAfterBlower: tabled(row, 2, afterBlower, 0.5 * (out("T_blower_out_K") + out("T_manifold_K"))),
    sinkWarmingPerWatt: 0,
    engine: {
      displacement: given(row, "V_engine_m3") as Volume,
      volumetricEfficiency: given(row, "eta_vol_engine") as Fraction,
    },
  };
}

// A problem of conservation of mass, posed and solved with constant cp and exponent 1.4. With the cp of air the
// charge comes up to 0.6 K cooler from the compressor and the blower: 0.3 % in flow and pressures, 1 % in power.
describe.each(rows("series-match-turbo-first"))("turbocharger before blower, as tabled: $id", (row) => {
  const build = tabledBuild(row);
  const engineSpeed = (given(row, "N_rpm") / 60) as RotationalSpeed;
  const expectTabled = (path: ChargePath) => {
    close(path.airFlow, row.expected["m_kgps"], 3e-3);
    close(path.blower.pressureRatio, row.expected["blower_PR"], 3e-3);
    close(path.blowerInletPressure, row.expected["p_interstage_Pa"], 3e-3);
    close(station(path, "blowerInlet").temperature, row.expected["T_interstage_K"], 3e-3);
    close(station(path, "blowerOutlet").temperature, row.expected["T_blower_out_K"], 3e-3);
    close(path.manifoldPressure, row.expected["p_manifold_Pa"], 3e-3);
    close(path.manifoldTemperature, row.expected["T_manifold_K"], 3e-3);
    close(path.blower.gasPower, row.expected["P_blower_indicated_W"], 0.01);
  };

  test("chargePathAtTurbochargerRatio finds flow and manifold pressure", () => {
    const turbochargerPressureRatio = given(row, "PR_turbo") as Ratio;
    expectTabled(chargePathAtTurbochargerRatio(build, { engineSpeed, turbochargerPressureRatio }));
  });

  test("chargePath finds the turbocharger's ratio back from the flow", () => {
    const path = chargePath(build, { engineSpeed, airFlow: row.expected["m_kgps"] as MassFlow });
    expectTabled(path);
    close(path.turbochargers.pressureRatio, given(row, "PR_turbo"), 5e-3);
  });
});

const none = { massFlow: 1 as MassFlow, density: 1 as Density, pressureLoss: 0 as PressureDifference };
const perfect: ChargeCooler = {
  effectiveness: 1 as Fraction,
  sinkTemperature: 300 as Temperature,
  restriction: none,
};
/** Nothing is lost anywhere, and both coolers end at 300 K: densities alone decide, and by hand. */
const lossless: ChargePathBuild = {
  ...inventedBuild,
  surroundings: { pressure: 1e5 as Pressure, temperature: 300 as Temperature, humidityRatio: 0 as Ratio },
  filter: none,
  coolerBeforeBlower: perfect,
  blower: {
    displacementPerTurn: 4e-3 as VolumePerTurn,
    driveRatio: 2 as Ratio,
    builtInVolumeRatio: 1 as Ratio,
    filling: { kind: "fixed", volumetricEfficiency: 1 as Fraction },
    mechanicalEfficiency: 1 as Fraction,
  },
  coolerAfterBlower: perfect,
  engine: { displacement: 10e-3 as Volume, volumetricEfficiency: 0.8 as Fraction },
};
const engineSpeed = 50 as RotationalSpeed;

describe("without losses, by hand", () => {
  test("the blower's ratio is that of the volumes, 8 to 4 litres a turn", () => {
    const path = chargePath(lossless, { engineSpeed, airFlow: 0.8 as MassFlow });
    close(path.blower.pressureRatio, 2, 1e-11);
    const density = 0.8 / (8e-3 * 50);
    close(path.blowerInletPressure, density * dryAir.gasConstant * 300, 1e-11);
    close(path.manifoldPressure, 2 * density * dryAir.gasConstant * 300, 1e-11);
    close(path.turbochargers.pressureRatio, path.blowerInletPressure / 1e5, 1e-11);
  });

  test("at idle the blower alone fills the manifold to twice the open air", () => {
    const path = chargePathAtIdle(lossless, engineSpeed);
    close(path.manifoldPressure, 2e5, 1e-11);
    close(path.airFlow, dryAir.density(300 as Temperature, 1e5 as Pressure) * 8e-3 * 50, 1e-11);
  });

  test("a blower of the engine's own volume has ratio 1, no power and no heat", () => {
    const equal = { ...lossless, blower: { ...lossless.blower, displacementPerTurn: 2e-3 as VolumePerTurn } };
    const path = chargePath(equal, { engineSpeed, airFlow: 0.5 as MassFlow });
    close(path.blower.pressureRatio, 1, 1e-10);
    expect(Math.abs(path.blower.gasPower)).toBeLessThan(1e-4); // of 62 kW that pass as flow work
    close(path.pressureShares.find(({ key }) => key === "turbochargers")!.share!, 1, 1e-9);
  });

  test("a smaller blower is refused as a restriction, and works with its bypass open", () => {
    const small = { ...lossless.blower, displacementPerTurn: 1.8e-3 as VolumePerTurn };
    const wanted = { engineSpeed, airFlow: 0.5 as MassFlow };
    expect(() => chargePath({ ...lossless, blower: small }, wanted)).toThrow(
      "chargePath: blower pressure ratio is 0.9000 at 0.5000 kg/s; the blower would be a restriction: open its bypass",
    );
    const path = chargePath({ ...lossless, blower: { ...small, bypassOpen: true, windage: 0.001 } }, wanted);
    expect(path.blower.pressureRatio).toBe(1);
    expect(path.blower.gasPower).toBe(0);
    close(path.blower.shaftPower, 1000, 1e-12); // 0.001 × 100³
    close(path.manifoldPressure, (0.5 / (4e-3 * 50)) * dryAir.gasConstant * 300, 1e-11);
  });

  test("a flow below what the blower draws by itself makes restrictions of the turbochargers", () => {
    expect(() => chargePath(lossless, { engineSpeed, airFlow: 0.3 as MassFlow })).toThrow(
      /turbocharger pressure ratio is 0\.6\d+ at 0\.3000 kg\/s; the turbochargers would be a restriction/,
    );
  });
});

describe("on the invented engine", () => {
  const gas = moistAir(inventedBuild.surroundings.humidityRatio);

  test("mass is conserved, shares add up, and every element obeys the first law", () => {
    const property = fc.property(within(20, 60), within(1.2, 3.5), (speed, ratio) => {
      const at = speed as RotationalSpeed;
      const path = chargePathAtTurbochargerRatio(inventedBuild, {
        engineSpeed: at,
        turbochargerPressureRatio: ratio as Ratio,
      });
      const { airFlow, blower, turbochargers } = path;
      const { displacementPerTurn } = inventedBuild.blower;
      const delivered =
        blower.volumetricEfficiency * station(path, "blowerInlet").density * displacementPerTurn * blower.speed;
      close(delivered, airFlow, 1e-11);
      const needed = manifoldDensityNeeded({ airFlow, ...inventedBuild.engine, engineSpeed: at });
      close(station(path, "manifold").density, needed, 1e-11);
      const shares = path.pressureShares.reduce((sum, { share }) => sum + share!, 0);
      close(shares, 1, 1e-9);

      const enthalpy = (key: string) => airFlow * gas.enthalpy(station(path, key).temperature);
      const tolerance = 1e-4; // W, rounding of enthalpy flows of 1e5 W
      expect(Math.abs(enthalpy("compressorOutlet") - enthalpy("ambient") - turbochargers.power)).toBeLessThan(
        tolerance,
      );
      const first = enthalpy("compressorOutlet") - enthalpy("blowerInlet");
      expect(Math.abs(first - path.coolerBeforeBlower.heat)).toBeLessThan(tolerance);
      expect(Math.abs(enthalpy("blowerOutlet") - enthalpy("blowerInlet") - blower.gasPower)).toBeLessThan(tolerance);
      const second = enthalpy("blowerOutlet") - enthalpy("manifold");
      expect(Math.abs(second - path.coolerAfterBlower.heat)).toBeLessThan(tolerance);
    });
    fc.assert(property, { seed, numRuns: 100 });
  });

  test("chargePath and chargePathAtTurbochargerRatio are inverses", () => {
    const path = chargePathAtTurbochargerRatio(inventedBuild, { engineSpeed, turbochargerPressureRatio: 2.4 as Ratio });
    const back = chargePath(inventedBuild, { engineSpeed, airFlow: path.airFlow });
    close(back.turbochargers.pressureRatio, 2.4, 1e-11);
    close(back.manifoldPressure, path.manifoldPressure, 1e-11);
  });

  test("more air asks more of the turbochargers and leaves the blower's ratio nearly alone", () => {
    const paths = [0.7, 0.8, 0.9, 1].map((flow) =>
      chargePath(inventedBuild, { engineSpeed, airFlow: flow as MassFlow }),
    );
    for (let i = 1; i < paths.length; i++) {
      expect(paths[i]!.turbochargers.pressureRatio).toBeGreaterThan(paths[i - 1]!.turbochargers.pressureRatio);
      expect(paths[i]!.blower.gasPower).toBeGreaterThan(paths[i - 1]!.blower.gasPower);
      close(paths[i]!.blower.pressureRatio, paths[0]!.blower.pressureRatio, 0.05);
    }
  });

  test("a larger blower takes over part of the pressure rise from the turbochargers", () => {
    const shareOf = (litres: number) => {
      const blower = { ...inventedBuild.blower, displacementPerTurn: (litres / 1000) as VolumePerTurn };
      const path = chargePath({ ...inventedBuild, blower }, { engineSpeed, airFlow: 0.9 as MassFlow });
      return path.pressureShares.find(({ key }) => key === "blower")!.share!;
    };
    expect(shareOf(4.6)).toBeGreaterThan(shareOf(4.3));
    expect(shareOf(4.3)).toBeGreaterThan(shareOf(4));
  });

  test("water in series carries the second cooler's heat into the first one's sink", () => {
    const wet = { ...inventedBuild, sinkWarmingPerWatt: 1 / (2 * 3990) }; // 2 kg/s of sea water
    const path = chargePath(wet, { engineSpeed, airFlow: 0.9 as MassFlow });
    const warming = path.coolerAfterBlower.heat / (2 * 3990);
    expect(warming).toBeGreaterThan(3);
    close(path.coolerBeforeBlower.sinkTemperature, 303 + warming, 1e-11);
    const apart = chargePath(inventedBuild, { engineSpeed, airFlow: 0.9 as MassFlow });
    expect(path.turbochargers.pressureRatio).toBeGreaterThan(apart.turbochargers.pressureRatio);
  });

  test("the same call gives the same digits", () => {
    const once = chargePath(inventedBuild, { engineSpeed, airFlow: 0.9 as MassFlow });
    expect(chargePath(inventedBuild, { engineSpeed, airFlow: 0.9 as MassFlow })).toEqual(once);
  });

  test("a filter that would take all pressure is refused by name", () => {
    expect(() => chargePath(inventedBuild, { engineSpeed, airFlow: 8 as MassFlow })).toThrow(/filter would take/);
  });
});

test("the cooler after the blower condenses only of the vapour that the one before it has left", () => {
  const cold = (cooler: ChargeCooler): ChargeCooler => ({ ...cooler, sinkTemperature: 283 as Temperature });
  const build: ChargePathBuild = {
    ...inventedBuild,
    surroundings: { ...inventedBuild.surroundings, humidityRatio: 0.025 as Ratio },
    coolerBeforeBlower: cold(inventedBuild.coolerBeforeBlower),
    coolerAfterBlower: cold(inventedBuild.coolerAfterBlower),
  };
  const path = chargePathAtTurbochargerRatio(build, { engineSpeed: 40 as RotationalSpeed, turbochargerPressureRatio: 2 as Ratio });
  const [first, second] = [path.coolerBeforeBlower.condensateFlow, path.coolerAfterBlower.condensateFlow];
  expect(Math.min(first, second)).toBeGreaterThan(0);
  const held = saturationHumidityRatio({ temperature: path.manifoldTemperature, pressure: path.manifoldPressure });
  close(first + second, path.dryAirFlow * (0.025 - held), 1e-9);
});
