import { describe, expect, test } from "vitest";
import { assess, type Cell, type Ref, Refusal } from "../../lib/graph";
import { type KindName, unitNamed } from "../../lib/quantity";
import { sheets } from "../../worksheets";
import * as air from "../../worksheets/air-demand/cells";
import * as boost from "../../worksheets/boost/cells";
import { demand } from "../../worksheets/boost/demand";
import { heatCarrier, ratedPower, ratedSpeed } from "../../worksheets/brief/cells";
import * as drives from "../../worksheets/drive-speeds/cells";
import { unitLoads } from "../../worksheets/drive-speeds/unitLoads";
import * as fuel from "../../worksheets/fuel-delivery/cells";
import { deliverySweep } from "../../worksheets/fuel-delivery/deliverySweep";
import { burntByParts } from "../../worksheets/fuel-delivery/figures/airBurns";
import { marineBalance } from "../../worksheets/marine-cooling/balance";
import * as marine from "../../worksheets/marine-cooling/circuit";
import { seaCapacityRate } from "../../worksheets/marine-cooling/rawWater";
import { isLeap, runFrom, type RunValues } from "../../worksheets/matching/figures/run";
import { speedRun } from "../../worksheets/matching/runs";
import { cellsOf, graph } from "../../worksheets/model";
import { demo, demoIn, demoInstallations, demoNotices, demoText } from "./demo";
import { plausible } from "./plausible";

describe.each(demoInstallations)("the demo build in the installation %s", (installation) => {
  const evaluation = demoIn(installation);

  test("answers every cell", () => {
    const refused = graph.cells.flatMap((cell) => {
      const value = evaluation.get(cell);
      return value instanceof Refusal ? [`${cell.key}: ${value.message}`] : [];
    });
    expect(refused).toEqual([]);
  });

  test("holds every number within what the trade takes for plausible", () => {
    const strange = countingCells().flatMap((cell) => {
      const range = plausible[cell.key];
      if (!range || !cell.kind) return [];
      const { factor, offset } = unitNamed(cell.kind as KindName, range.unit as never);
      const read = (evaluation.require(cell) as number) / factor - offset;
      return read >= range.span[0] && read <= range.span[1]
        ? []
        : [`${cell.key} is ${read} ${range.unit}, not ${range.span}`];
    });
    expect(strange).toEqual([]);
  });

  test("is past no limit that counts in it", () => {
    const past = assess(countingCells(), evaluation).filter(({ standing }) => standing === "past");
    expect(past.map(({ component, label }) => `${component}: ${label}`)).toEqual([]);
  });

  // The truck's map goes into the test cell with the engine, where thicker air could burn more at low speed.
  test("has a full-load map a little under what the match's parts can burn, up to the promised speed", () => {
    const values = Object.fromEntries(Object.entries(runFrom).map(([name, ref]) => [name, evaluation.require(ref as Ref<unknown>)]));
    const burnt = burntByParts(values as unknown as RunValues, evaluation.require(deliverySweep));
    const promised = evaluation.require(ratedSpeed);
    const governed = burnt.filter(({ speed }) => speed <= promised);
    expect(governed.length).toBeGreaterThan(10);
    for (const { speed, burnt, mapped } of governed) {
      expect(mapped / burnt, `at ${60 * speed} rev/min`).toBeLessThan(1);
      expect(mapped / burnt, `at ${60 * speed} rev/min`).toBeGreaterThan(installation === "test-cell" ? 0.78 : 0.93);
    }
  });

  // Common practice, no source: torque of a highly charged diesel rises to a broad plateau that ends at the promised speed.
  test("has parts whose torque rises to a broad plateau, and power without a leap", () => {
    const points = evaluation.require(speedRun).answer().filter(({ engineSpeed }) => engineSpeed <= evaluation.require(ratedSpeed));
    const torques = points.map((point) => {
      if (!point.ok) throw new Error(point.refusal);
      expect(point.violated).toEqual([]);
      return point.point.torque;
    });
    points.slice(1).forEach((point, i) => {
      expect(isLeap(points[i]!, point)).toBe(false);
      expect(torques[i + 1]! * point.engineSpeed).toBeGreaterThan(torques[i]! * points[i]!.engineSpeed);
    });
    const highest = Math.max(...torques);
    const broad = points.filter((_, i) => torques[i]! > 0.93 * highest).map(({ engineSpeed }) => engineSpeed);
    expect(broad.at(-1)).toBe(evaluation.require(ratedSpeed));
    expect(broad[0]! / broad.at(-1)!).toBeLessThan(0.85);
  });

  test("agrees between sheets", () => {
    const at = <T>(cell: { readonly key: string } & Parameters<typeof evaluation.require<T>>[0]) =>
      evaluation.require(cell);
    // the air that the fuel asks for is the air that the charge path carries
    expect(at(air.airFlow) / at(boost.chargePath).airFlow - 1).toBeLessThan(1e-9);
    expect(Math.abs(at(air.fuelFlow) / at(demand).fuelFlow - 1)).toBeLessThan(1e-9);
    // what the manifold needs is what the path gives
    expect(Math.abs(at(air.pressureNeeded) / at(boost.manifoldPressure) - 1)).toBeLessThan(1e-9);
    expect(Math.abs(at(air.frictionPower) / at(demand).powers.friction - 1)).toBeLessThan(1e-9);
    expect(Math.abs(at(air.pumpingPower) - at(demand).powers.pumping)).toBeLessThan(1e-6 * at(ratedPower));
    const [outside, filtered] = at(boost.chargePath).stations;
    expect(Math.abs((outside!.pressure - filtered!.pressure) / at(air.intakeLoss) - 1)).toBeLessThan(1e-9);
    // the blower's torque and speed are its power
    expect(
      Math.abs((at(drives.blowerTorque) * 2 * Math.PI * at(drives.blowerSpeed)) / at(boost.blowerShaftPower) - 1),
    ).toBeLessThan(1e-12);
    // the fuel pump takes on the belt what the fuel sheet says, and the air sheet, which leaves out squeeze and leakage,
    // charged about as much
    const pump = at(unitLoads).find(({ unit }) => unit === "Fuel pump")!;
    expect(pump.torque).toBeCloseTo(at(fuel.pumpMeanTorque), 9);
    expect(Math.abs(pump.power / at(air.fuelPumpPower) - 1)).toBeLessThan(0.03);
    expect(pump.speed).toBeCloseTo(at(fuel.pumpSpeed), 12);
    // the sea's rise carries all of the heat, and the heat balance closes
    const rise = at(marine.rawWaterDischarge) - at(marine.marineCircuit).seaTemperatures[0]!;
    expect(Math.abs((rise * at(seaCapacityRate)) / at(marine.seaHeat) - 1)).toBeLessThan(1e-9);
    const balance = at(boost.heatBalance);
    expect(Math.abs(balance.unaccounted) / at(ratedPower)).toBeLessThan(1e-9);
    // line by line, to the last watt, from the fuel to the shaft behind the gear
    const { fuel: fuelPower, lines } = at(marineBalance);
    expect(Math.abs(fuelPower - lines.reduce((sum, { power }) => sum + power, 0))).toBeLessThan(1e-3);
    expect(at(marine.marineCircuit).residual).toBeLessThan(1e-9);
  });

  function countingCells(): readonly Cell[] {
    const carrier = evaluation.require(heatCarrier);
    return sheets
      .filter(({ applies }) => applies === undefined || applies.is === carrier)
      .flatMap(({ key }) => cellsOf(key));
  }
});

test("every single number of the sheets has a plausible range with its source, and no range is idle", () => {
  const scalars = graph.cells.filter(({ kind }) => kind !== undefined).map(({ key }) => key);
  expect(scalars.filter((key) => !plausible[key])).toEqual([]);
  expect(Object.keys(plausible).filter((key) => !scalars.includes(key))).toEqual([]);
  expect(Object.values(plausible).every(({ source }) => source.length > 5)).toBe(true);
});

test("the demo's file gives every input and nothing that is not known", () => {
  expect(demoNotices).toEqual([]);
  expect(Object.keys(JSON.parse(demoText).inputs).sort()).toEqual(graph.inputs.map(({ key }) => key).sort());
});

test("the demo says that it is invented", () => {
  expect(demo.note).toContain("invented");
});
