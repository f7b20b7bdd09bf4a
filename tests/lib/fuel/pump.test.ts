import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as fuel from "../../../lib/fuel";
import { gap, plain } from "../drive/plain";
import { fuelRows, litrePerMinute } from "./published";

const pumpDelivery = plain(fuel.pumpDelivery);
const firstOrderDelivery = plain(fuel.firstOrderDelivery);
const pumpDisplacement = plain(fuel.pumpDisplacement);
const pumpVolumeFlow = plain(fuel.pumpVolumeFlow);
const pumpMassFlow = plain(fuel.pumpMassFlow);
const pumpDriveRatio = plain(fuel.pumpDriveRatio);
const pumpTorque = plain(fuel.pumpTorque);
const pumpShaftPower = plain(fuel.pumpShaftPower);
const leastPumpPower = plain(fuel.leastPumpPower);
const plungerInjection = plain(fuel.plungerInjection);
const railPressureRate = plain(fuel.railPressureRate);
const railPressureDrop = plain(fuel.railPressureDrop);

test.each(fuelRows("rail-pump"))(
  "firstOrderDelivery, pumpVolumeFlow and pumpTorque meet $id",
  ({ inputs, expected }) => {
    const displacement = inputs.displacement_cc_per_rev * 1e-6;
    const pressureRise = inputs.p_rail_bar * 1e5;
    const atOutlet = firstOrderDelivery({
      deadVolumeShare: inputs.dead_volume_cc / inputs.displacement_cc_per_rev,
      pressureRise,
      bulkModulus: inputs.bulk_modulus_Pa,
      leakageShare: inputs.leak_fraction,
    });
    const flow = pumpVolumeFlow({ displacement, pumpSpeed: inputs.n_pump_rpm / 60, atOutlet });
    expect(gap(atOutlet, expected.eta_vol)).toBeLessThan(1e-9);
    expect(gap(flow / litrePerMinute, expected.Q_Lpmin)).toBeLessThan(1e-9);
    expect(gap(flow * pressureRise, expected.P_hydraulic_W)).toBeLessThan(1e-9);
    const torque = pumpTorque({ displacement, pressureRise, mechanicalEfficiency: inputs.eta_hm });
    expect(gap(torque, expected.mean_torque_upper_bound_Nm)).toBeLessThan(1e-8);
  },
);

describe("pumpDelivery", () => {
  const losses = { deadVolumeShare: 0.3, pressureRise: 1.8e8, bulkModulus: 2.2e9, leakageShare: 0.03 };

  test("is 1 for a fuel that does not yield, or without pressure, if nothing leaks", () => {
    const tight = { ...losses, leakageShare: 0 };
    expect(pumpDelivery({ ...tight, bulkModulus: Number.POSITIVE_INFINITY })).toEqual({ atOutlet: 1, byMass: 1 });
    expect(pumpDelivery({ ...tight, pressureRise: 0 })).toEqual({ atOutlet: 1, byMass: 1 });
  });
  test("by mass is 1 without dead volume and leakage, while the volume at the outlet is less by the squeeze", () => {
    const { byMass, atOutlet } = pumpDelivery({ ...losses, deadVolumeShare: 0, leakageShare: 0 });
    expect(byMass).toBe(1);
    expect(atOutlet).toBeCloseTo(Math.exp(-1.8 / 22), 12);
  });
  test("balances the fuel in the chamber over one stroke", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 0, max: 2e8, noNaN: true }), (deadVolumeShare, pressureRise) => {
        const { byMass } = pumpDelivery({ deadVolumeShare, pressureRise, bulkModulus: 1.6e9, leakageShare: 0 });
        // At bottom dead centre stroke and dead volume hold inlet fuel; at the top the dead volume holds squeezed fuel.
        const held = 1 + deadVolumeShare;
        const kept = deadVolumeShare * Math.exp(pressureRise / 1.6e9);
        expect(byMass).toBeCloseTo(held - kept, 12);
      }),
      { seed: 20260101, numRuns: 200 },
    );
  });
  test("meets its first order at low pressure and lies above it at high", () => {
    const low = { ...losses, pressureRise: 1e6 };
    // The next term of the exponential is (Δp/K)²/2 = 1e-7.
    expect(pumpDelivery(low).atOutlet - firstOrderDelivery(low)).toBeLessThan(2e-7);
    expect(pumpDelivery(losses).atOutlet).toBeGreaterThan(firstOrderDelivery(losses));
  });
  test("falls with dead volume, pressure and leakage", () => {
    const { byMass } = pumpDelivery(losses);
    expect(pumpDelivery({ ...losses, deadVolumeShare: 0.5 }).byMass).toBeLessThan(byMass);
    expect(pumpDelivery({ ...losses, pressureRise: 2e8 }).byMass).toBeLessThan(byMass);
    expect(pumpDelivery({ ...losses, leakageShare: 0.05 }).byMass).toBeLessThan(byMass);
  });
  test("refuses a pump that only squeezes its dead volume, and NaN", () => {
    expect(() => pumpDelivery({ ...losses, deadVolumeShare: 5, pressureRise: 5e8 })).toThrow(
      "nothing would be delivered",
    );
    expect(() => firstOrderDelivery({ ...losses, deadVolumeShare: 5, pressureRise: 5e8 })).toThrow(
      "nothing would be delivered",
    );
    expect(() => pumpDelivery({ ...losses, bulkModulus: Number.NaN })).toThrow("bulkModulus is NaN Pa");
  });
});

test("pumpDriveRatio turns the pump just so fast that it meets the demand", () => {
  const pump = {
    displacement: pumpDisplacement({ plungers: 3, bore: 0.0075, stroke: 0.008, lobes: 1 }),
    byMass: 0.9,
    inletDensity: 818,
  };
  // By hand: 3 · π/4 · 7.5² · 8 mm³ = 1060.3 mm³ a turn.
  expect(pump.displacement * 1e9).toBeCloseTo(1060.29, 1);
  const demand = 0.05;
  const ratio = pumpDriveRatio({ ...pump, demand, engineSpeed: 45 });
  expect(pumpMassFlow({ ...pump, pumpSpeed: 45 * ratio })).toBeCloseTo(demand, 12);
  expect(() => pumpDisplacement({ plungers: 2.5, bore: 0.0075, stroke: 0.008, lobes: 1 })).toThrow("plungers is 2.5");
});

test("power: the shaft's is torque times speed, and never less than the least that the delivered fuel needs", () => {
  const pressure = fc.double({ min: 1e5, max: 2.5e8, noNaN: true });
  fc.assert(
    fc.property(pressure, fc.double({ min: 0, max: 0.4, noNaN: true }), (pressureRise, deadVolumeShare) => {
      const pump = { displacement: 1e-6, pumpSpeed: 30 };
      const shaft = pumpShaftPower({ ...pump, pressureRise, mechanicalEfficiency: 1 });
      expect(shaft).toBeCloseTo(1e-6 * 30 * pressureRise, 6);
      const { byMass } = pumpDelivery({ deadVolumeShare, pressureRise, bulkModulus: 1.8e9, leakageShare: 0 });
      const massFlow = pumpMassFlow({ ...pump, byMass, inletDensity: 820 });
      const least = leastPumpPower({ massFlow, inletDensity: 820, pressureRise, bulkModulus: 1.8e9 });
      expect(least).toBeLessThan(shaft);
      expect(least).toBeGreaterThan(0.8 * byMass * shaft);
    }),
    { seed: 20260101, numRuns: 200 },
  );
});

// Ganesan, example 9.6 (attribution from memory); the book counts only injection less cylinder pressure on the fuel.
test.each(fuelRows("plunger-compressibility"))("plungerInjection meets $id", ({ inputs, expected }) => {
  const fuelFlow = (inputs.P_kW * inputs.bsfc_kgpkWh) / 3600;
  const mass = plain(fuel.fuelMassPerStroke)({ fuelFlow, engineSpeed: inputs.N_rpm / 60, cylinders: inputs.cylinders });
  const injectedVolume = plain(fuel.fuelVolumePerStroke)(mass, inputs.rho);
  const work = plungerInjection({
    injectedVolume,
    trappedVolume: (inputs.V_barrel_cc + inputs.V_injector_cc + inputs.V_line_cc) * 1e-6,
    bulkModulus: 1e5 / inputs.compressibility_per_bar,
    pressureRise: (inputs.p_inj_bar - inputs.p_barrel_bar) * 1e5,
    nozzleDrop: (inputs.p_inj_bar - inputs.p_cyl_bar) * 1e5,
  });
  expect(gap(injectedVolume * 1e6, expected.V_fuel_cc)).toBeLessThan(1e-8);
  expect(gap(work.compression * 1e6, expected.dV_compress_cc)).toBeLessThan(1e-8);
  expect(gap(work.plungerVolume * 1e6, expected.V_plunger_cc)).toBeLessThan(1e-8);
  expect(gap(work.work, expected.W_per_stroke_J)).toBeLessThan(1e-8);
  expect(gap((work.work * inputs.N_rpm) / 120, expected.P_per_cylinder_W)).toBeLessThan(1e-8);
});

test.each(fuelRows("rail-pressure-rate"))("railPressureRate meets $id", ({ inputs, expected }) => {
  const rate = railPressureRate({
    railVolume: inputs.V_rail_cc * 1e-6,
    bulkModulus: inputs.K_Pa,
    inflow: inputs.Q_in_Lpmin * litrePerMinute,
    outflow: inputs.Q_out_Lpmin * litrePerMinute,
  });
  expect(gap(rate / 1e5, expected.dpdt_bar_per_s)).toBeLessThan(1e-8);
  expect(gap(inputs.p0_bar + (rate / 1e5) * inputs.dt_s, expected.p_after_bar)).toBeLessThan(1e-8);
});
test.each(fuelRows("rail-drop-per-injection"))("railPressureDrop meets $id", ({ inputs, expected }) => {
  const drop = railPressureDrop({
    railVolume: inputs.V_rail_cc * 1e-6,
    bulkModulus: inputs.K_Pa,
    injectedVolume: inputs.injected_mm3 * 1e-9,
  });
  expect(gap(drop / 1e5, expected.dp_bar)).toBeLessThan(1e-9);
});
