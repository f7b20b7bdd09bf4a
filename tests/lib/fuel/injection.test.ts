import fc from "fast-check";
import { expect, test } from "vitest";
import { fuelDensity, roadDiesel } from "../../../lib/fluid";
import * as fuel from "../../../lib/fuel";
import { degrees, gap, mm, plain, radians } from "../drive/plain";
import { fuelRows } from "./published";

const fuelMassPerStroke = plain(fuel.fuelMassPerStroke);
const fuelVolumePerStroke = plain(fuel.fuelVolumePerStroke);
const nozzleArea = plain(fuel.nozzleArea);
const jetVelocity = plain(fuel.jetVelocity);
const nozzleFlow = plain(fuel.nozzleFlow);
const injectionDuration = plain(fuel.injectionDuration);
const crankAngleOf = plain(fuel.crankAngleOf);
const nozzleAreaForWindow = plain(fuel.nozzleAreaForWindow);
const nozzleCavitation = plain(fuel.nozzleCavitation);
const sprayTime = plain(fuel.sprayTime);
const cylinderPressureDuringInjection = plain(fuel.cylinderPressureDuringInjection);

// First row: Ganesan, Internal Combustion Engines, example 9.1 (attribution from memory); the others by definition.
test.each(fuelRows("stroke-quantity"))("fuelMassPerStroke and fuelVolumePerStroke meet $id", ({ inputs, expected }) => {
  const fuelFlow = (inputs.P_brake_kW * inputs.bsfc_g_per_kWh) / 3.6e6;
  expect(gap(fuelFlow * 3600, expected.fuel_kgph)).toBeLessThan(1e-9);
  const mass = fuelMassPerStroke({ fuelFlow, engineSpeed: inputs.N_rpm / 60, cylinders: inputs.cylinders });
  expect(gap(mass * 1e6, expected.mg_per_stroke)).toBeLessThan(1e-8);
  expect(gap(fuelVolumePerStroke(mass, inputs.rho_kgpm3) * 1e9, expected.mm3_per_stroke)).toBeLessThan(1e-8);
  expect(gap(((fuelFlow / inputs.rho_kgpm3) * 3600) / 1e-3, expected.fuel_Lph)).toBeLessThan(1e-8);
});
test("fuelMassPerStroke: all strokes of a minute together are the minute's fuel", () => {
  const mass = fuelMassPerStroke({ fuelFlow: 0.045, engineSpeed: 45, cylinders: 6 });
  expect(mass * 6 * (45 / 2) * 60).toBeCloseTo(0.045 * 60, 12);
  expect(() => fuelMassPerStroke({ fuelFlow: 0.045, engineSpeed: 0, cylinders: 6 })).toThrow("engineSpeed is 0 rev/s");
  expect(() => fuelMassPerStroke({ fuelFlow: 0.045, engineSpeed: 45, cylinders: 5.5 })).toThrow("cylinders is 5.5");
});

test.each(fuelRows("nozzle-duration"))(
  "nozzleFlow, injectionDuration and crankAngleOf meet $id",
  ({ inputs, expected }) => {
    const state = {
      railPressure: inputs.p_inj_bar * 1e5,
      cylinderPressure: inputs.p_cyl_bar * 1e5,
      density: inputs.rho,
    };
    const area = nozzleArea(inputs.holes, mm(inputs.d_mm));
    const flow = nozzleFlow({ ...state, area, dischargeCoefficient: inputs.Cd });
    const engineSpeed = inputs.N_rpm / 60;
    const volumePerStroke = inputs.mm3_per_stroke * 1e-9;
    const duration = injectionDuration({ volumePerStroke, nozzleFlow: flow });
    expect(gap(jetVelocity(state), expected.v_jet_mps)).toBeLessThan(1e-8);
    expect(gap(flow * 1e6, expected.flow_mm3_per_ms)).toBeLessThan(1e-8);
    expect(gap(duration * 1e3, expected.duration_ms)).toBeLessThan(1e-8);
    expect(gap(degrees(crankAngleOf(duration, engineSpeed)), expected.duration_deg)).toBeLessThan(1e-8);
    const window = radians(expected.duration_deg);
    const needed = nozzleAreaForWindow({
      ...state,
      volumePerStroke,
      window,
      engineSpeed,
      dischargeCoefficient: inputs.Cd,
    });
    expect(gap(needed, area)).toBeLessThan(1e-8);
  },
);

test("injectionDuration holds the volume under a trapezium or a triangle, and joins the two", () => {
  const share = fc.double({ min: 0.01, max: 4, noNaN: true });
  const ramp = fc.double({ min: 5e-5, max: 5e-4, noNaN: true });
  fc.assert(
    fc.property(share, ramp, ramp, (part, openingTime, closingTime) => {
      const flow = 8e-5;
      const volumePerStroke = part * flow * (openingTime + closingTime);
      const duration = injectionDuration({ volumePerStroke, nozzleFlow: flow, openingTime, closingTime });
      // Integrate the flow that such a needle lets through over 4,000 steps (midpoints; the kinks cost about 1e-6).
      const steps = 4000;
      let volume = 0;
      for (let i = 0; i < steps; i++) {
        const time = ((i + 0.5) * duration) / steps;
        const opening = time / openingTime;
        const closing = (duration - time) / closingTime;
        volume += (flow * Math.min(1, opening, closing) * duration) / steps;
      }
      expect(gap(volume, volumePerStroke)).toBeLessThan(1e-5);
    }),
    { seed: 20260101, numRuns: 60 },
  );
  const joint = { nozzleFlow: 8e-5, openingTime: 2e-4, closingTime: 3e-4 };
  const at = (volumePerStroke: number) => injectionDuration({ ...joint, volumePerStroke });
  expect(at(8e-5 * 2.5e-4 * (1 - 1e-9))).toBeCloseTo(5e-4, 11);
  expect(at(8e-5 * 2.5e-4 * (1 + 1e-9))).toBeCloseTo(5e-4, 11);
  expect(at(0)).toBe(0);
});
test("nozzleAreaForWindow undoes injectionDuration with ramps, long and short", () => {
  const state = { dischargeCoefficient: 0.8, railPressure: 1.8e8, cylinderPressure: 1.6e7, density: 830 };
  const needle = { openingTime: 3e-4, closingTime: 2e-4 };
  for (const volumePerStroke of [5e-9, 20e-9, 60e-9, 250e-9]) {
    const area = 1.9e-7;
    const duration = injectionDuration({ ...needle, volumePerStroke, nozzleFlow: nozzleFlow({ ...state, area }) });
    const window = crankAngleOf(duration, 50);
    expect(
      gap(nozzleAreaForWindow({ ...state, ...needle, volumePerStroke, window, engineSpeed: 50 }), area),
    ).toBeLessThan(1e-10);
  }
});
test("nozzleFlow falls as the cylinder's pressure rises, and refuses one above the rail's", () => {
  const at = (cylinderPressure: number) =>
    nozzleFlow({ area: 2e-7, dischargeCoefficient: 0.8, railPressure: 1.5e8, cylinderPressure, density: 830 });
  expect(at(1e7)).toBeGreaterThan(at(1.5e7));
  expect(() => at(1.6e8)).toThrow("railPressure is 150000000 Pa; it must exceed the cylinder pressure, 160000000 Pa");
  expect(() => at(Number.NaN)).toThrow("cylinderPressure is NaN Pa");
});

// Nurick (1976), coefficients from memory.
test.each(fuelRows("nurick-cavitation"))("nozzleCavitation meets $id", ({ inputs, expected }) => {
  const hole = {
    upstreamPressure: inputs.p1_bar * 1e5,
    downstreamPressure: inputs.p2_bar * 1e5,
    vapourPressure: inputs.pv_bar * 1e5,
    inletRounding: inputs.r_over_D,
    fullHoleDischarge: inputs.Cd_non_cavitating,
    sharpContraction: inputs.Cc0,
  };
  const flow = nozzleCavitation(hole);
  expect(gap(flow.contraction, expected.Cc)).toBeLessThan(1e-8);
  expect(gap(flow.cavitationNumber, expected.K)).toBeLessThan(1e-8);
  expect(gap(flow.criticalNumber, expected.K_crit)).toBeLessThan(1e-8);
  expect(flow.cavitating).toBe(expected.cavitating);
  expect(gap(flow.dischargeCoefficient, expected.Cd)).toBeLessThan(1e-8);
});
test("a cavitating hole's flow does not depend on the pressure behind it, and the two regimes meet without a step", () => {
  const hole = { upstreamPressure: 1e8, vapourPressure: 2000, inletRounding: 0.05, fullHoleDischarge: 0.84 };
  const flowAt = (downstreamPressure: number) => {
    const { dischargeCoefficient } = nozzleCavitation({ ...hole, downstreamPressure });
    return dischargeCoefficient * Math.sqrt(1e8 - downstreamPressure);
  };
  expect(flowAt(2e7)).toBeCloseTo(flowAt(5e6), 8);
  const { criticalNumber } = nozzleCavitation({ ...hole, downstreamPressure: 1e7 });
  const joint = 1e8 - (1e8 - 2000) / criticalNumber;
  expect(gap(flowAt(joint * (1 - 1e-9)), flowAt(joint * (1 + 1e-9)))).toBeLessThan(1e-8);
  expect(() => nozzleCavitation({ ...hole, downstreamPressure: 1e7, inletRounding: 0.2 })).toThrow(
    "inletRounding is 0.2",
  );
});

// Ganesan, example 9.5 (attribution from memory).
test.each(fuelRows("penetration-scaling"))("sprayTime meets $id", ({ inputs, expected }) => {
  const spray = {
    time: mm(inputs.t1_ms),
    pressureDrop: (inputs.p_inj1_bar - inputs.p_cyl_bar) * 1e5,
    otherPressureDrop: (inputs.p_inj2_bar - inputs.p_cyl_bar) * 1e5,
  };
  expect(gap(sprayTime(spray) * 1e3, expected.t2_ms)).toBeLessThan(1e-8);
});

test("cylinderPressureDuringInjection orders compression, mean and peak, and is plain compression without fire", () => {
  const stroke = {
    manifoldPressure: 3.5e5,
    effectiveCompressionRatio: 13,
    compressionExponent: 1.35,
    firingRiseRatio: 1.5,
  };
  const { compression, mean, peak } = cylinderPressureDuringInjection(stroke);
  // By hand: 13^1.35 = exp(1.35 · 2.564949) = 31.90; times 3.5 bar is 111.65 bar; times 1.25 is 139.6 bar.
  expect(compression / 1e5).toBeCloseTo(111.65, 1);
  expect(mean / 1e5).toBeCloseTo(139.57, 1);
  expect(peak).toBeCloseTo(1.5 * compression, 3);
  const still = cylinderPressureDuringInjection({ ...stroke, firingRiseRatio: 1 });
  expect([still.mean, still.peak]).toEqual([still.compression, still.compression]);
  expect(() => cylinderPressureDuringInjection({ ...stroke, firingRiseRatio: 0.9 })).toThrow("firingRiseRatio is 0.9");
});

test("a stroke's volume shrinks with pressure and grows with warmth, as the fuel's density says", () => {
  const volumeAt = (temperature: number, pressure: number) =>
    fuelVolumePerStroke(1e-4, plain(fuelDensity)(roadDiesel, { temperature, pressure }));
  expect(volumeAt(313.15, 1.8e8)).toBeLessThan(volumeAt(313.15, 1e5));
  // Warm fuel, 60 K: about 5 % more volume (0.7 kg/m³ per kelvin of 835 kg/m³ is 0.05, from memory).
  expect(volumeAt(348.15, 1e5) / volumeAt(288.15, 1e5)).toBeGreaterThan(1.045);
  expect(volumeAt(348.15, 1e5) / volumeAt(288.15, 1e5)).toBeLessThan(1.06);
});
