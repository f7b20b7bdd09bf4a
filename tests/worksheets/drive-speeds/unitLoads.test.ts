import { describe, expect, test } from "vitest";
import type { RotationalSpeed } from "../../../lib/quantity";
import { declaredValues } from "../../../worksheets/build/build";
import { blowerInletPressure, blowerShaftPower } from "../../../worksheets/boost/cells";
import { ambientPressure, ratedSpeed } from "../../../worksheets/brief/cells";
import { beltFits } from "../../../worksheets/drive-speeds/beltFits";
import { beltLoads } from "../../../worksheets/drive-speeds/beltLoads";
import { beltRuns, drawnBelts } from "../../../worksheets/drive-speeds/beltRuns";
import { torsionalShare } from "../../../worksheets/drive-speeds/inputs";
import { unitLoads } from "../../../worksheets/drive-speeds/unitLoads";
import { pumpMeanTorque } from "../../../worksheets/fuel-delivery/cells";
import { deliverySweep } from "../../../worksheets/fuel-delivery/deliverySweep";
import { sweptAt } from "../../../worksheets/fuel-delivery/sweptAt";
import { graph, program } from "../../../worksheets/model";

const declared = declaredValues(graph);
const changed = (changes: Readonly<Record<string, unknown>>) => program.run({ ...declared, ...changes });
const before = program.run(declared);
const sweep = before.require(deliverySweep);
const unit = (name: string, at = before) => at.require(unitLoads).find((each) => each.unit === name)!;

describe("the fuel pump's torque", () => {
  test("is the fuel sheet's at the promised speed", () => {
    expect(unit("Fuel pump").torque).toBeCloseTo(before.require(pumpMeanTorque), 9);
  });

  test("meets its sweep at idle and at the highest speed, and lies between its neighbours at cruise", () => {
    const { torqueAt } = unit("Fuel pump");
    expect(torqueAt.idle).toBe(sweep[0]!.torques[0]);
    expect(torqueAt.maximum).toBe(sweep.at(-1)!.torques[0]);
    expect(torqueAt.overspeed).toBe(torqueAt.maximum);
    const cruise = before.require(beltRuns)[0]!.members[0]!.at.cruise;
    const after = sweep.findIndex(({ engineSpeed }) => engineSpeed >= cruise);
    const ends = [sweep[after - 1]!.torques[0]!, sweep[after]!.torques[0]!];
    expect(torqueAt.cruise).toBeGreaterThanOrEqual(Math.min(...ends));
    expect(torqueAt.cruise).toBeLessThanOrEqual(Math.max(...ends));
  });

  test("sweptAt(sweep, speed) is straight between two speeds, and gives the speed back where it is read", () => {
    for (const share of [-0.5, 0, 0.31, 0.5, 1]) {
      const [low, high] = [sweep[0]!.engineSpeed, sweep.at(-1)!.engineSpeed];
      const speed = (low + share * (high - low)) as RotationalSpeed;
      expect(sweptAt(sweep, speed, ({ engineSpeed }) => engineSpeed)).toBeCloseTo(Math.max(low, speed), 9);
    }
  });
});

describe("the blower's torque", () => {
  const half = [
    { speed: 0.2, quantity: 0.5, pressure: 0.6 },
    { speed: 1, quantity: 1, pressure: 1 },
    { speed: 1.2, quantity: 0.3, pressure: 0.8 },
  ];

  test("makes the charge sheet's power at the promised speed, and stays beyond it", () => {
    const { torque, torqueAt, power } = unit("Blower");
    expect(power / before.require(blowerShaftPower)).toBeCloseTo(1, 12);
    expect([torqueAt.maximum, torqueAt.overspeed]).toEqual([torque, torque]);
  });

  test("goes with the map's fuel for each stroke below it", () => {
    const at = changed({ fuelCurve: half });
    const { torque, torqueAt } = unit("Blower", at);
    const cruise = at.require(beltRuns)[0]!.members[0]!.at.cruise / at.require(ratedSpeed);
    // Straight along the map; the sweep's own steps all lie on it, except round its corner at the promised speed.
    expect(torqueAt.cruise / torque).toBeCloseTo(0.5 + (0.5 * (cruise - 0.2)) / 0.8, 9);
  });

  test("sinks no lower than with the air outside before it", () => {
    const at = changed({ fuelCurve: half.map((row) => (row.speed < 1 ? { ...row, quantity: 0.05 } : row)) });
    const { torque, torqueAt } = unit("Blower", at);
    expect(torqueAt.idle / torque).toBeCloseTo(at.require(ambientPressure) / at.require(blowerInletPressure), 9);
  });
});

describe("the worst speed", () => {
  test("decides the tension of a belt: with twice the fuel of a stroke at cruise it hangs loosest there", () => {
    const full = [
      { speed: 0.2, quantity: 1, pressure: 1 },
      { speed: 0.6, quantity: 2, pressure: 1 },
      { speed: 1, quantity: 1, pressure: 1 },
      { speed: 1.2, quantity: 1, pressure: 1 },
    ];
    const load = changed({ fuelCurve: full, cruiseSpeed: 0.6 * before.require(ratedSpeed) }).require(beltLoads)[0]!;
    expect(load.loosest.speed).toBe("cruise");
    expect(load.pressing).toBeLessThan(before.require(beltLoads)[0]!.pressing);
  });

  test("of a ribbed belt's grip is the one at which most of it is used", () => {
    const { pulleys } = before.require(beltLoads).find(({ mark }) => mark === "C")!;
    // The fan's torque grows with the square of speed.
    expect(pulleys.find(({ unit: name }) => name === "Fan")!.grip!.speed).toBe("overspeed");
  });

  test("peak torques leave what the belt has by itself: without them the mean stays", () => {
    for (const { spans } of changed({ [torsionalShare.key]: 0 }).require(beltLoads)) {
      for (const { tension, peak } of spans) expect(peak).toBeCloseTo(tension, 9);
    }
  });
});

test.each(["ratedPower", "maximumSpeed", "cruiseSpeed", "idleSpeed"])("belts are not drawn or fitted anew when %s moves", (key) => {
  const value = declared[key] as number;
  const { evaluation } = program.rerun(before, { [key]: value * 0.99 });
  expect(evaluation.require(beltRuns) === before.require(beltRuns)).toBe(key === "ratedPower");
  expect(evaluation.require(drawnBelts)).toBe(before.require(drawnBelts));
  expect(evaluation.require(beltFits)).toBe(before.require(beltFits));
});
