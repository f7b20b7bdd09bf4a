import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { gap, plain } from "./plain";
import { accessoryRows } from "./published";

const alternatorLoad = plain(drive.alternatorLoad);
const alternatorCurrent = plain(drive.alternatorCurrent);
const loadOnCrank = plain(drive.loadOnCrank);
const hydraulicFlow = plain(drive.hydraulicFlow);
const hydraulicTorque = plain(drive.hydraulicTorque);
const hydraulicShaftPower = plain(drive.hydraulicShaftPower);
const reliefHeat = plain(drive.reliefHeat);
const steeringFlow = plain(drive.steeringFlow);
const displacementForFlow = plain(drive.displacementForFlow);
const affineWheel = plain(drive.affineWheel);
const litrePerMinute = 1e-3 / 60;

// Efficiency curve of the rows: an illustration, no measured machine.
test.each(accessoryRows("alternator"))("alternatorLoad and loadOnCrank meet $id", ({ inputs, expected }) => {
  const efficiencyCurve = inputs.eta_curve_rpm.map((rpm: number, i: number) => ({
    speed: rpm / 60,
    value: inputs.eta_curve[i],
  }));
  const load = alternatorLoad({
    voltage: inputs.V,
    current: inputs.I_A,
    speed: inputs.n_alt_rpm / 60,
    efficiencyCurve,
  });
  expect(gap(load.efficiency, expected.eta)).toBeLessThan(1e-9);
  expect(gap(load.power, expected.P_shaft_W)).toBeLessThan(1e-8);
  expect(gap(load.torque, expected.torque_alt_Nm)).toBeLessThan(1e-8);
  const crank = loadOnCrank({ ...load, beltEfficiency: inputs.belt_eff, driveRatio: inputs.drive_ratio });
  expect(gap(crank.power, expected.P_engine_W)).toBeLessThan(1e-8);
  expect(gap(crank.torque, expected.torque_crank_Nm)).toBeLessThan(1e-8);
});
test("an alternator gives nothing below its cut-in speed, its curve above, and no answer beyond", () => {
  const output = {
    cutInSpeed: 20,
    currentCurve: [
      { speed: 20, value: 0 },
      { speed: 50, value: 90 },
      { speed: 100, value: 120 },
    ],
  };
  expect(alternatorCurrent(output, 19)).toBe(0);
  expect(alternatorCurrent(output, 20)).toBe(0);
  expect(alternatorCurrent(output, 75)).toBeCloseTo(105, 12);
  expect(alternatorCurrent(output, 100)).toBe(120);
  expect(() => alternatorCurrent(output, 101)).toThrow("speed is 101 rev/s; the curve runs from 20 to 100 rev/s");
  const falling = [
    { speed: 50, value: 0.6 },
    { speed: 40, value: 0.5 },
  ];
  expect(() => alternatorLoad({ voltage: 14, current: 10, speed: 45, efficiencyCurve: falling })).toThrow(
    "speed of point 2 is 40 rev/s",
  );
  expect(() => alternatorLoad({ voltage: 14, current: 10, speed: 45, efficiencyCurve: [] })).toThrow(
    "curve has 0 points",
  );
});

test.each(accessoryRows("hydraulic-pump"))(
  "hydraulicFlow, hydraulicTorque and hydraulicShaftPower meet $id",
  ({ inputs, expected }) => {
    const displacement = inputs.displacement_cc_per_rev * 1e-6;
    const speed = inputs.n_rpm / 60;
    const pressureRise = inputs.dp_bar * 1e5;
    const flow = hydraulicFlow({ displacement, speed, volumetricEfficiency: inputs.eta_vol });
    const loaded = { displacement, pressureRise, mechanicalEfficiency: inputs.eta_hm };
    expect(gap(flow / litrePerMinute, expected.Q_Lpmin)).toBeLessThan(1e-8);
    expect(gap(flow / ((231 * 0.0254 ** 3) / 60), expected.Q_US_gpm)).toBeLessThan(1e-8);
    expect(gap(hydraulicTorque(loaded), expected.torque_Nm)).toBeLessThan(1e-8);
    expect(gap(hydraulicShaftPower({ ...loaded, speed }), expected.P_shaft_W)).toBeLessThan(1e-8);
    expect(gap(reliefHeat(flow, pressureRise), expected.heat_if_relieved_W)).toBeLessThan(1e-8);
  },
);

test.each(accessoryRows("steering-flow"))("steeringFlow and displacementForFlow meet $id", ({ inputs, expected }) => {
  const flow = steeringFlow(inputs.cylinder_volume_lock_to_lock_cc * 1e-6, inputs.time_lock_to_lock_s);
  const pump = { speed: inputs.engine_idle_rpm_times_ratio / 60, volumetricEfficiency: inputs.eta_vol };
  const displacement = displacementForFlow({ ...pump, flow });
  expect(gap(flow / litrePerMinute, expected.Q_required_Lpmin)).toBeLessThan(1e-9);
  expect(gap(displacement * 1e6, expected.displacement_cc_per_rev)).toBeLessThan(1e-8);
  expect(gap(hydraulicFlow({ ...pump, displacement }), flow)).toBeLessThan(1e-12);
});

test("affineWheel(…) keeps efficiency, scales by the laws, and comes back", () => {
  const point = { speed: 50, diameter: 0.12, density: 1000, flow: 0.006, pressureRise: 1.2e5, power: 1200 };
  const efficiency = (p: { flow: number; pressureRise: number; power: number }) => (p.flow * p.pressureRise) / p.power;
  const there = affineWheel(point, { speed: 80, diameter: 0.1, density: 870 });
  expect(efficiency(there)).toBeCloseTo(efficiency(point), 12);
  const twice = affineWheel(point, { speed: 100 });
  expect([twice.flow / point.flow, twice.pressureRise / point.pressureRise, twice.power / point.power]).toEqual([
    2, 4, 8,
  ]);
  const { speed, diameter, density } = point;
  const back = affineWheel(there, { speed, diameter, density });
  expect(back.flow).toBeCloseTo(point.flow, 15);
  expect(back.power).toBeCloseTo(point.power, 9);
  expect(() => affineWheel(point, { speed: 0 })).toThrow("affineWheel: to: speed is 0 rev/s");
});
test("hydraulics refuse an efficiency above 1 and NaN", () => {
  expect(() => hydraulicFlow({ displacement: 1e-5, speed: 20, volumetricEfficiency: 1.1 })).toThrow(
    "it must be 0.05 to 1",
  );
  expect(() => hydraulicTorque({ displacement: 1e-5, pressureRise: Number.NaN, mechanicalEfficiency: 0.9 })).toThrow(
    "pressureRise is NaN Pa",
  );
});
