import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dieselFuels, frictionFactor, fuelBulkModulus, fuelDensity, fuelViscosity } from "../../../lib/fluid";
import * as fuel from "../../../lib/fuel";
import published from "../../published/fuel-delivery.json";
import { gap, mm, plain } from "../drive/plain";

const plungerLeakage = plain(fuel.plungerLeakage);
const torqueRipple = plain(fuel.torqueRipple);
const fuelVapourPressure = plain(fuel.fuelVapourPressure);
const nozzleCavitation = plain(fuel.nozzleCavitation);
const pumpAtSpeed = plain(fuel.pumpAtSpeed);
const meteredTorque = plain(fuel.meteredTorque);
const pumpDelivery = plain(fuel.pumpDelivery);
const leastPumpPower = plain(fuel.leastPumpPower);
const pumpDisplacement = plain(fuel.pumpDisplacement);
const railPressureDrop = plain(fuel.railPressureDrop);
const railPressureRate = plain(fuel.railPressureRate);
const railRecoveryTime = plain(fuel.railRecoveryTime);

// Merritt (1967), worked by hand to four figures.
test.each(published.leakage.rows)("plungerLeakage meets $id", (row) => {
  const leakage = plungerLeakage({
    diameter: mm(row.diameter_mm),
    gap: row.gap_um * 1e-6,
    sealLength: mm(row.length_mm),
    pressureRise: row.dp_bar * 1e5,
    dynamicViscosity: row.mu_Pas,
    eccentricity: row.eccentricity,
    pressureCoefficient: 0,
  });
  expect(gap(leakage * 1e6, row.expected_cm3_per_s)).toBeLessThan(3e-4);
});

describe("plungerLeakage", () => {
  const plunger = { diameter: 0.0085, gap: 4e-6, sealLength: 0.015, pressureRise: 1.8e8, dynamicViscosity: 2e-3 };

  // Rothrock and Marsh (1934) measured these powers, at pressures too low to thicken the fuel much.
  test.each(published.lappedPlungers.rows)("goes with the power $power of $of", ({ of, power }) => {
    const thin = { ...plunger, pressureCoefficient: 0 };
    const doubled = { ...thin, [of]: 2 * thin[of as keyof typeof plunger] };
    expect(plungerLeakage(doubled) / plungerLeakage(thin)).toBeCloseTo(2 ** power, 9);
  });
  test("is nothing without a gap or without pressure", () => {
    expect(plungerLeakage({ ...plunger, gap: 0 })).toBe(0);
    expect(plungerLeakage({ ...plunger, pressureRise: 0 })).toBe(0);
  });
  test("is the integral of dp over the viscosity at each pressure", () => {
    const slices = 2000;
    let through = 0;
    for (let i = 0; i < slices; i++) {
      const middle = ((i + 0.5) * plunger.pressureRise) / slices;
      const viscosity = plunger.dynamicViscosity * Math.exp(7e-9 * middle);
      through += plungerLeakage({
        ...plunger,
        pressureRise: plunger.pressureRise / slices,
        dynamicViscosity: viscosity,
        pressureCoefficient: 0,
      });
    }
    // Midpoints of 2000 slices: (αΔp/2000)²/24 off.
    expect(gap(plungerLeakage(plunger), through)).toBeLessThan(1e-7);
    // Without the coefficient the law is that of constant viscosity, and the two meet where it fades.
    expect(gap(plungerLeakage({ ...plunger, pressureCoefficient: 1e-15 }), plungerLeakage({ ...plunger, pressureCoefficient: 0 }))).toBeLessThan(1e-6);
  });
  test("refuses a gap that is no gap of a plunger, and NaN", () => {
    expect(() => plungerLeakage({ ...plunger, gap: 1e-3 })).toThrow("gap is 0.001 m; it must be 0 to 0.000085 m");
    expect(() => plungerLeakage({ ...plunger, dynamicViscosity: Number.NaN })).toThrow("dynamicViscosity is NaN");
  });
});

// Ivantysyn and Ivantysynova (2001), from memory, given in two or three figures.
test.each(published.ripple.rows)("torqueRipple($plungers) is as uneven as the handbooks' flow", ({ plungers, percent }) => {
  const { peak, trough } = torqueRipple(plungers);
  expect(100 * (peak - trough)).toBeCloseTo(percent, 1);
});
test("torqueRipple(plungers) bounds the sum of half waves, whose mean is 1", () => {
  for (let plungers = 1; plungers <= 9; plungers++) {
    const { peak, trough } = torqueRipple(plungers);
    const steps = 5040;
    const torque = Array.from({ length: steps }, (_, i) => {
      let sum = 0;
      for (let k = 0; k < plungers; k++) sum += Math.max(0, Math.sin((2 * Math.PI * i) / steps + (2 * Math.PI * k) / plungers));
      return (sum * Math.PI) / plungers;
    });
    // On a grid of 5040 a crest is missed by half a step at most: (π/5040)²/2 = 2e-7 of it; a trough by a slope of 4e-4.
    expect(gap(Math.max(...torque), peak)).toBeLessThan(1e-6);
    expect(Math.abs(Math.min(...torque) - trough)).toBeLessThan(2e-3);
    expect(torque.reduce((sum, each) => sum + each, 0) / steps).toBeCloseTo(1, 5);
  }
  expect(() => torqueRipple(2.5)).toThrow("plungers is 2.5");
});

// AP-42 gives two figures; half of the last is up to 6 % of the smallest.
test.each(published.vapour.rows)("fuelVapourPressure meets the table at $F °F", ({ F, psi }) => {
  expect(gap(fuelVapourPressure((F + 459.67) / 1.8) / 6894.757, psi)).toBeLessThan(0.06);
});
test("fuelVapourPressure stays below a thousandth of the air's pressure to 60 °C", () => {
  expect(fuelVapourPressure(333.15)).toBeLessThan(1000);
  expect(() => fuelVapourPressure(400)).toThrow("temperature is 400 K");
});

// The standards' limits as they are reprinted; the fuels are typical ones.
test.each(published.standards.rows)("$fuel lies inside its standard, warm and cold about where it should", (row) => {
  const typical = dieselFuels.find(({ name }) => name === row.fuel)!;
  const within = (value: number, [low, high]: readonly (number | null)[]) => value >= (low ?? 0) && value <= high!;
  const at = (celsius: number) => (celsius + 273.15) as never;
  const density = (celsius: number) => fuelDensity(typical, { temperature: at(celsius), pressure: 101325 as never });
  expect(within(density(15), row.density)).toBe(true);
  expect(within(1e6 * fuelViscosity(typical, at(40)), row.viscosity_mm2_s)).toBe(true);
  // 0.6 to 0.8 kg/m³ for each kelvin (from memory); viscosity falls by half or so from 40 to 80 °C.
  expect((density(15) - density(60)) / 45).toBeGreaterThan(0.6);
  expect((density(15) - density(60)) / 45).toBeLessThan(0.85);
  expect(fuelViscosity(typical, at(80)) / fuelViscosity(typical, at(40))).toBeGreaterThan(0.45);
  expect(fuelViscosity(typical, at(80)) / fuelViscosity(typical, at(40))).toBeLessThan(0.6);
});

// Lapuerta et al. (2012) tell the order of the fuels; the isentropic modulus, 10 to 20 % above theirs, keeps it.
test.each(published.compressibility.pressures_MPa)("a methyl ester yields least at %i MPa, and every fuel more than water", (megapascals) => {
  const state = { temperature: published.compressibility.T_C + 273.15, pressure: megapascals * 1e6 } as never;
  const modulusOf = (name: string) => fuelBulkModulus(dieselFuels.find((each) => each.name === name)!, state) / 1e6;
  for (const { name } of dieselFuels) expect(modulusOf(name)).toBeLessThan(0.85 * published.compressibility.waterAtLeast_MPa);
  expect(modulusOf("methyl ester")).toBeGreaterThan(modulusOf("road diesel"));
  expect(modulusOf("methyl ester")).toBeGreaterThan(modulusOf("paraffinic diesel"));
});

describe("nozzleCavitation beside small holes as measured", () => {
  const { least, most, pressures_psi, steadyFrom } = published.smallHoles;
  const holeAt = (bar: number, back: number, inletRounding: number, fullHoleDischarge: number) =>
    nozzleCavitation({ upstreamPressure: bar * 1e5, downstreamPressure: back * bar * 1e5, vapourPressure: 200, inletRounding, fullHoleDischarge });

  // Sharp to well rounded. The contraction of a sharp hole, 0.611, is 1.5 % below the least that was measured.
  test.each(pressures_psi)("lies where Joachim's coefficients lie at %i psi", (psi) => {
    for (const rounding of [0, 0.05, 0.1]) {
      for (const back of [0.01, 0.1, 0.3, 0.6]) {
        const { dischargeCoefficient } = holeAt(psi * 0.0689476, back, rounding, 0.8);
        expect(dischargeCoefficient).toBeGreaterThan(0.98 * least);
        expect(dischargeCoefficient).toBeLessThan(most);
      }
    }
  });

  // With the middle of the measured coefficients for the hole that runs full; a tenth either way, as the abstract rounds.
  test("grows with the air's pressure to about three tenths of the liquid's, and no more beyond", () => {
    const sharp = (back: number) => holeAt(300, back, 0, (least + most) / 2);
    expect(sharp(0.2).dischargeCoefficient).toBeGreaterThan(sharp(0.05).dischargeCoefficient);
    expect(sharp(steadyFrom - 0.1).cavitating).toBe(true);
    expect(sharp(steadyFrom + 0.1).cavitating).toBe(false);
    expect(sharp(0.6).dischargeCoefficient).toBe(sharp(steadyFrom + 0.1).dischargeCoefficient);
  });
});

// By hand, four figures.
test.each(published.orifice.rows)("nozzleFlow meets an orifice of $id", (row) => {
  const flow = plain(fuel.nozzleFlow)({
    area: (Math.PI / 4) * mm(row.diameter_mm) ** 2,
    dischargeCoefficient: row.Cd,
    railPressure: (row.dp_bar + 1) * 1e5,
    cylinderPressure: 1e5,
    density: row.rho,
  });
  expect(gap(flow * 1e6, row.expected_cm3_per_s)).toBeLessThan(1e-3);
});

// Read from a chart: 2 % is about as well as charts are read.
test.each(published.friction.rows)("frictionFactor meets the chart at Re $Re, roughness $roughness", (row) => {
  const f = plain(frictionFactor)({ reynoldsNumber: row.Re, relativeRoughness: row.roughness });
  expect(gap(f, row.f)).toBeLessThan(0.02);
});

const pump = {
  plungers: 2,
  lobes: 2,
  bore: 0.0085,
  stroke: 0.009,
  deadVolumeShare: 0.6,
  gap: 5e-6,
  sealLength: 0.015,
  mechanicalEfficiency: 0.88,
  viscousShare: 0.5,
  referenceSpeed: 44,
};
const duty = { pumpSpeed: 44, pressureRise: 1.9e8, bulkModulus: 2.3e9, inletDensity: 812, dynamicViscosity: 1.87e-3 };

describe("pumpAtSpeed", () => {
  const swept = pumpDisplacement(pump) * 44 * 812;

  test("delivers its displacement if nothing yields, nothing stays behind and nothing leaks", () => {
    const tight = { ...pump, gap: 0 };
    expect(pumpAtSpeed({ ...tight, deadVolumeShare: 0 }, duty).byMass).toBe(1);
    expect(pumpAtSpeed(tight, { ...duty, bulkModulus: Number.POSITIVE_INFINITY }).byMass).toBe(1);
    expect(pumpAtSpeed(tight, { ...duty, pressureRise: 1 }).byMass).toBeCloseTo(1, 8);
    expect(pumpAtSpeed({ ...tight, deadVolumeShare: 0 }, duty).delivery).toBeCloseTo(swept, 12);
  });
  test("balances: what enters leaves to the rail, past the plungers, or stays behind in the dead volume", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const speed = fc.double({ min: 5, max: 80, noNaN: true });
    fc.assert(
      fc.property(share, speed, fc.double({ min: 0, max: 8e-6, noNaN: true }), (deadVolumeShare, pumpSpeed, width) => {
        const { delivery, leakage } = pumpAtSpeed({ ...pump, deadVolumeShare, gap: width }, { ...duty, pumpSpeed });
        const drawn = pumpDisplacement(pump) * pumpSpeed * 812;
        const kept = drawn * deadVolumeShare * (Math.exp(1.9e8 / 2.3e9) - 1);
        expect(gap(delivery + leakage + kept, drawn)).toBeLessThan(1e-12);
      }),
      { seed: 20260101, numRuns: 100 },
    );
  });
  test("agrees with pumpDelivery when told the same leakage", () => {
    const { byMass, leakage } = pumpAtSpeed(pump, duty);
    const squeeze = Math.exp(1.9e8 / 2.3e9);
    const told = pumpDelivery({ deadVolumeShare: 0.6, pressureRise: 1.9e8, bulkModulus: 2.3e9, leakageShare: leakage / swept / squeeze });
    expect(byMass).toBeCloseTo(told.byMass, 12);
  });
  test("loses more of its displacement the slower, the thinner the fuel and the higher the pressure", () => {
    const { byMass } = pumpAtSpeed(pump, duty);
    expect(pumpAtSpeed(pump, { ...duty, pumpSpeed: 12 }).byMass).toBeLessThan(byMass);
    expect(pumpAtSpeed(pump, { ...duty, dynamicViscosity: 1e-3 }).byMass).toBeLessThan(byMass);
    expect(pumpAtSpeed(pump, { ...duty, pressureRise: 2.2e8 }).byMass).toBeLessThan(byMass);
    // Leakage does not know the speed: its share is inversely proportional to it.
    expect(pumpAtSpeed(pump, { ...duty, pumpSpeed: 22 }).leakage).toBeCloseTo(pumpAtSpeed(pump, duty).leakage, 15);
  });
  test("gives nothing, and does not go below it, where leakage takes all", () => {
    const worn = pumpAtSpeed({ ...pump, gap: 60e-6 }, { ...duty, pumpSpeed: 2 });
    expect(worn.delivery).toBe(0);
    expect(worn.efficiency).toBe(0);
    expect(worn.power).toBeGreaterThan(0);
  });
  test("power is the least power of what is pressed over the mechanical efficiency, at the reference speed", () => {
    const { delivery, leakage, power, meanTorque, efficiency } = pumpAtSpeed(pump, duty);
    const least = (massFlow: number) => leastPumpPower({ massFlow, inletDensity: 812, pressureRise: 1.9e8, bulkModulus: 2.3e9 });
    expect(gap(power, least(delivery + leakage) / 0.88)).toBeLessThan(1e-12);
    expect(gap(meanTorque * 2 * Math.PI * 44, power)).toBeLessThan(1e-12);
    expect(gap(efficiency, least(delivery) / power)).toBeLessThan(1e-12);
    // Less than the bound of a stiff liquid, which does not give back the squeeze of the dead volume.
    expect(meanTorque).toBeLessThan(plain(fuel.pumpTorque)({ displacement: pumpDisplacement(pump), pressureRise: 1.9e8, mechanicalEfficiency: 0.88 }));
  });
  test("is most efficient between leaking slowly and rubbing fast", () => {
    const at = (pumpSpeed: number) => pumpAtSpeed({ ...pump, gap: 8e-6 }, { ...duty, pumpSpeed }).efficiency;
    expect(at(25)).toBeGreaterThan(at(3));
    expect(at(25)).toBeGreaterThan(at(120));
  });
  test("peaks as two plungers in turn do: π/2 of the bound", () => {
    const bound = plain(fuel.pumpTorque)({ displacement: pumpDisplacement(pump), pressureRise: 1.9e8, mechanicalEfficiency: 0.88 });
    expect(pumpAtSpeed(pump, duty).peakTorque / bound).toBeCloseTo(Math.PI / 2, 12);
  });
});

test("meteredTorque is the full pump's at full demand, and that of the leakage alone at none", () => {
  const full = pumpAtSpeed(pump, duty);
  expect(meteredTorque({ demand: full.delivery, full, pumpSpeed: 44 })).toBeCloseTo(full.meanTorque, 10);
  const idle = meteredTorque({ demand: 0, full, pumpSpeed: 44 });
  expect(gap(idle / full.meanTorque, full.leakage / (full.leakage + full.delivery))).toBeLessThan(1e-12);
  expect(() => meteredTorque({ demand: 2 * full.delivery, full, pumpSpeed: 44 })).toThrow("demand is");
});

test("railRecoveryTime refills what railPressureDrop emptied, at railPressureRate", () => {
  const rail = { railVolume: 40e-6, bulkModulus: 1.9e9 };
  const dip = railPressureDrop({ ...rail, injectedVolume: 250e-9 });
  const rate = railPressureRate({ ...rail, inflow: 6e-5, outflow: 1e-5 });
  expect(gap(railRecoveryTime({ injectedVolume: 250e-9, inflow: 6e-5, leakage: 1e-5 }), dip / rate)).toBeLessThan(1e-12);
  expect(() => railRecoveryTime({ injectedVolume: 250e-9, inflow: 1e-5, leakage: 1e-5 })).toThrow("the rail never recovers");
});
