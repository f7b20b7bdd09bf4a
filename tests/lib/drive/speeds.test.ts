import fc from "fast-check";
import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { gap, plain } from "./plain";
import { accessoryRows } from "./published";

const drivenSpeed = plain(drive.drivenSpeed);
const driveRatio = plain(drive.driveRatio);
const ratioWindow = plain(drive.ratioWindow);
const beltSpeed = plain(drive.beltSpeed);
const pitchDiameter = plain(drive.pitchDiameter);
const beltRun = plain(drive.beltRun);

// Common practice, no source: a blower overdriven two to one.
test("drivenSpeed(…): an engine at 6,300 rev/min turns a blower overdriven 2:1 at 12,600 rev/min", () => {
  expect(driveRatio({ driverTeeth: 72, drivenTeeth: 36 })).toBe(2);
  expect(60 * drivenSpeed({ driverSpeed: 6300 / 60, driverTeeth: 72, drivenTeeth: 36 })).toBeCloseTo(12600, 9);
});

test.each(accessoryRows("drive-ratio-window"))("ratioWindow(…) meets $id", ({ inputs, expected }) => {
  const window = ratioWindow({
    minimumSpeed: inputs.accessory_min_rpm_at_idle / 60,
    maximumSpeed: inputs.accessory_max_rpm / 60,
    idle: inputs.engine_idle_rpm / 60,
    top: inputs.engine_max_rpm / 60,
  });
  expect(gap(window.lowest, expected.ratio_min)).toBeLessThan(1e-9);
  expect(gap(window.highest, expected.ratio_max)).toBeLessThan(1e-9);
  expect(window.empty).toBe(!expected.feasible);
});
test("ratioWindow(…) answers with an empty window where no ratio suits", () => {
  const window = ratioWindow({ minimumSpeed: 30, maximumSpeed: 60, idle: 10, top: 50 });
  expect(window).toEqual({ lowest: 3, highest: 1.2, empty: true });
});

test("beltSpeed is the same on every toothed pulley of a belt", () => {
  const teeth = fc.integer({ min: 20, max: 120 });
  fc.assert(
    fc.property(teeth, teeth, fc.double({ min: 0, max: 120, noNaN: true }), (driverTeeth, drivenTeeth, driverSpeed) => {
      const driven = drivenSpeed({ driverSpeed, driverTeeth, drivenTeeth });
      expect(beltSpeed(pitchDiameter(0.008, drivenTeeth), driven)).toBeCloseTo(
        beltSpeed(pitchDiameter(0.008, driverTeeth), driverSpeed),
        10,
      );
      expect(beltSpeed(pitchDiameter(0.008, driverTeeth), driverSpeed)).toBeCloseTo(
        0.008 * driverTeeth * driverSpeed,
        10,
      );
    }),
    { seed: 20260101, numRuns: 200 },
  );
});

test("rotation on a shaft end: each change of contact face or of the plate's face reverses it once", () => {
  for (const crankRotation of ["clockwise", "counterclockwise"] as const) {
    for (const sense of [1, -1] as const) {
      const forward = drive.rotationSeenOnShaftEnd({ sense, crankRotation, shaftEnd: "forward" });
      const rearward = drive.rotationSeenOnShaftEnd({ sense, crankRotation, shaftEnd: "rearward" });
      expect(forward === crankRotation).toBe(sense === 1);
      expect(rearward).not.toBe(forward);
    }
  }
});

test("direction: mirroring a layout, as from behind, reverses what is seen and leaves every sense to the crank", () => {
  for (const layout of randomLayouts(200)) {
    const behind = {
      travel: layout.travel === "clockwise" ? ("counterclockwise" as const) : ("clockwise" as const),
      pulleys: layout.pulleys.map((pulley) => ({ ...pulley, x: -pulley.x })),
    };
    const senses = (of: typeof layout) => beltRun(of).pulleys.map(({ sense }) => sense);
    expect(senses(behind)).toEqual(senses(layout));
    expect(senses(layout)).toEqual(layout.pulleys.map(({ contact }) => (contact === "toothed" ? 1 : -1)));
  }
});

test("speeds refuse what is no speed and no pulley", () => {
  expect(() => drivenSpeed({ driverSpeed: -1, driverTeeth: 72, drivenTeeth: 36 })).toThrow("driverSpeed is -1 rev/s");
  expect(() => driveRatio({ driverTeeth: 72, drivenTeeth: 0 })).toThrow("drivenTeeth is 0; it must be 6 to 400");
  expect(() => ratioWindow({ minimumSpeed: 1, maximumSpeed: 2, idle: 10, top: 5 })).toThrow(
    "top is 5 rev/s; it must be at least",
  );
  expect(() => beltSpeed(0, 5)).toThrow("pitchDiameter is 0 m");
});
