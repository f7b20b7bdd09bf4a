import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type DieselFuel,
  dieselFuels,
  fuelBulkModulus,
  fuelDensity,
  fuelExpansion,
  fuelSpecificHeat,
  fuelViscosity,
  roadDiesel,
} from "../../../lib/fluid";
import type { KinematicViscosity } from "../../../lib/quantity";
import published from "../../published/fluid-diesel.json";
import { between, celsius, gap, kilogramPerCubicMetre, pascal, rises } from "./si";

const atmosphere = pascal(101325);
const ofDensity = (density: number): DieselFuel => ({ ...roadDiesel, densityAt15C: kilogramPerCubicMetre(density) });
const stokes = (value: number) => (1e-6 * value) as KinematicViscosity;

describe("fuelDensity(fuel, state)", () => {
  // The same formula in other code, printed to nine digits.
  test.each(published.density.rows)("meets ASTM D1250 for $rho15_kg_m3 kg/m³ at $T_C °C", (row) => {
    const got = fuelDensity(ofDensity(row.rho15_kg_m3), { temperature: celsius(row.T_C), pressure: atmosphere });
    expect(gap(got, row.rho_kg_m3)).toBeLessThan(2e-9);
    expect(gap(fuelExpansion(ofDensity(row.rho15_kg_m3), celsius(15)), row.alpha15_per_K)).toBeLessThan(2e-9);
  });

  test("falls by 0.70 kg/m³ a kelvin, within 0.12 % to 60 °C (common rule, no source)", () => {
    for (const t of between(0, 60, 13)) {
      const got = fuelDensity(roadDiesel, { temperature: celsius(t), pressure: atmosphere });
      expect(gap(got, 835 - 0.7 * (t - 15))).toBeLessThan(1.2e-3);
    }
  });

  test("expands as fuelExpansion says", () => {
    for (const fuel of dieselFuels) {
      for (const t of between(-15, 145, 9)) {
        const at = (temperature: number) =>
          fuelDensity(fuel, { temperature: celsius(temperature), pressure: atmosphere });
        const slope = -(at(t + 0.01) - at(t - 0.01)) / 0.02 / at(t);
        expect(gap(slope, fuelExpansion(fuel, celsius(t)))).toBeLessThan(1e-6);
      }
    }
  });

  test("is squeezed by the isothermal modulus: 1/K_T = 1/K_S + α²T/(ρ c_p), K_S 10 to 26 % above", () => {
    for (const fuel of dieselFuels) {
      for (const t of [0, 20, 60, 120]) {
        const at = (pressure: number) => fuelDensity(fuel, { temperature: celsius(t), pressure: pascal(pressure) });
        const isothermal = (at(101325) * 2e4) / (at(101325 + 1e4) - at(101325 - 1e4));
        const isentropic = fuelBulkModulus(fuel, { temperature: celsius(t), pressure: atmosphere });
        const expansion = fuelExpansion(fuel, celsius(t));
        const heat = at(101325) * fuelSpecificHeat(fuel, celsius(t));
        expect(gap(1 / isothermal, 1 / isentropic + (expansion ** 2 * celsius(t)) / heat)).toBeLessThan(1e-6);
        expect(isentropic / isothermal).toBeGreaterThan(1.1);
        expect(isentropic / isothermal).toBeLessThan(1.26);
      }
    }
  });

  // Nikolić et al., Thermal Science 16 (2012) S505 measured to 160 MPa: near 900 kg/m³ there at room temperature (from memory).
  test("grows by 7 to 9 % at 160 MPa", () => {
    const loose = fuelDensity(roadDiesel, { temperature: celsius(20), pressure: atmosphere });
    const squeezed = fuelDensity(roadDiesel, { temperature: celsius(20), pressure: pascal(160e6) });
    expect(squeezed / loose).toBeGreaterThan(1.07);
    expect(squeezed / loose).toBeLessThan(1.09);
  });

  // Tait's equation, whose constant for liquid hydrocarbons is 0.2 of decades: Dymond, Malhotra, Int. J. Thermophysics 9
  // (1988) 941 (from memory). It shares nothing with Murnaghan's law but the modulus at 1 atm.
  test.each([50e6, 100e6, 180e6, 300e6])("is squeezed as by Tait's equation, within 0.6 %, at %i Pa", (pressure) => {
    for (const t of [20, 60, 100]) {
      const at = (p: number) => fuelDensity(roadDiesel, { temperature: celsius(t), pressure: pascal(p) });
      const isothermal = (at(101325) * 2e4) / (at(101325 + 1e4) - at(101325 - 1e4));
      const c = 0.2 / Math.LN10;
      const tait = 1 / (1 - c * Math.log(1 + (pressure - 101325) / (c * isothermal)));
      expect(gap(at(pressure) / at(101325), tait)).toBeLessThan(6e-3);
    }
  });

  test("falls with temperature, rises with pressure", () => {
    const steady = fc.property(
      fc.constantFrom(...dieselFuels),
      fc.double({ min: -20, max: 149, noNaN: true }),
      fc.double({ min: 0, max: 299e6, noNaN: true }),
      (fuel, t, p) => {
        const here = fuelDensity(fuel, { temperature: celsius(t), pressure: pascal(p) });
        expect(fuelDensity(fuel, { temperature: celsius(t + 1), pressure: pascal(p) })).toBeLessThan(here);
        expect(fuelDensity(fuel, { temperature: celsius(t), pressure: pascal(p + 1e6) })).toBeGreaterThan(here);
      },
    );
    fc.assert(steady, { seed: 20260101, numRuns: 200 });
  });
});

describe("fuelViscosity(fuel, temperature)", () => {
  const twoPoints = (row: { nu40_mm2_s: number; nu100_mm2_s: number }): DieselFuel => ({
    ...roadDiesel,
    kinematicViscosityAt40C: stokes(row.nu40_mm2_s),
    kinematicViscosityAt100C: stokes(row.nu100_mm2_s),
  });

  // The same formula in other code, printed to nine digits.
  test.each(published.viscosity.rows)(
    "meets ASTM D341 through $nu40_mm2_s and $nu100_mm2_s mm²/s at $T_C °C",
    (row) => {
      expect(gap(1e6 * fuelViscosity(twoPoints(row), celsius(row.T_C)), row.nu_mm2_s)).toBeLessThan(1e-8);
    },
  );

  // The usual slope is a mean; ±0.05 of it is worth 2 % at 0 °C and less nearer to 40 °C.
  test.each(published.viscosity.rows)(
    "of $nu40_mm2_s mm²/s by the usual slope alone is within 2 % at $T_C °C",
    (row) => {
      const fuel = { ...roadDiesel, kinematicViscosityAt40C: stokes(row.nu40_mm2_s) };
      expect(gap(1e6 * fuelViscosity(fuel, celsius(row.T_C)), row.nu_mm2_s)).toBeLessThan(0.02);
    },
  );

  test("passes through the data sheet's points, and falls between", () => {
    const fuel = { ...roadDiesel, kinematicViscosityAt100C: stokes(1.15) };
    expect(gap(fuelViscosity(fuel, celsius(40)), roadDiesel.kinematicViscosityAt40C)).toBeLessThan(1e-12);
    expect(gap(fuelViscosity(fuel, celsius(100)), stokes(1.15))).toBeLessThan(1e-12);
    for (const each of [fuel, ...dieselFuels]) {
      expect(rises(between(-20, 150, 100).map((t) => -fuelViscosity(each, celsius(t))))).toBe(true);
    }
  });
});

describe("fuelBulkModulus(fuel, state)", () => {
  const typical = ofDensity(837);

  // Ranges from memory: plausibility, not truth.
  test.each(published.bulkModulus.rows)("lies in the remembered range at $T_C °C", (row) => {
    const state = { temperature: celsius(row.T_C), pressure: pascal(101325 + 1e6 * row.p_MPa_gauge) };
    const got = fuelBulkModulus(typical, state) / 1e6;
    expect(got).toBeGreaterThan(row.K_MPa_min);
    expect(got).toBeLessThan(row.K_MPa_max);
  });
  test.each(published.soundSpeed.rows)("gives sound its remembered speed at $T_C °C", (row) => {
    const state = { temperature: celsius(row.T_C), pressure: atmosphere };
    const sound = Math.sqrt(fuelBulkModulus(typical, state) / fuelDensity(typical, state));
    expect(sound).toBeGreaterThan(row.c_m_s_min);
    expect(sound).toBeLessThan(row.c_m_s_max);
  });

  test("falls with heat, rises with pressure and density", () => {
    const at = (fuel: DieselFuel, t: number, p: number) =>
      fuelBulkModulus(fuel, { temperature: celsius(t), pressure: pascal(p) });
    expect(rises(between(-20, 150, 50).map((t) => -at(typical, t, 1e5)))).toBe(true);
    expect(rises(between(0, 300e6, 50).map((p) => at(typical, 40, p)))).toBe(true);
    expect(rises(between(760, 900, 20).map((density) => at(ofDensity(density), 40, 1e5)))).toBe(true);
  });
});

describe("fuelSpecificHeat(fuel, temperature)", () => {
  test("by hand: (1685 + 3.39·40)/√(835/999) = 1820.6/0.91425 = 1991.4", () => {
    expect(fuelSpecificHeat(roadDiesel, celsius(40))).toBeCloseTo(1991.4, 1);
  });
});

describe("fuel properties refuse by name", () => {
  const cold = { temperature: celsius(-21), pressure: atmosphere };
  test("temperatures, pressures and densities outside the spans", () => {
    expect(() => fuelDensity(roadDiesel, cold)).toThrow(
      "fuelDensity: temperature is 252.15 K; it must be 253.15 to 423.15 K",
    );
    expect(() => fuelBulkModulus(roadDiesel, cold)).toThrow("fuelBulkModulus: temperature");
    expect(() => fuelViscosity(roadDiesel, celsius(Number.NaN))).toThrow("fuelViscosity: temperature is NaN");
    expect(() => fuelSpecificHeat(roadDiesel, celsius(151))).toThrow("fuelSpecificHeat: temperature");
    expect(() => fuelExpansion(roadDiesel, celsius(151))).toThrow("fuelExpansion: temperature");
    const high = { temperature: celsius(20), pressure: pascal(301e6) };
    expect(() => fuelDensity(roadDiesel, high)).toThrow("fuelDensity: pressure is 301000000 Pa");
    expect(() => fuelBulkModulus(roadDiesel, { ...high, pressure: pascal(Number.NaN) })).toThrow(RangeError);
    expect(() => fuelDensity(ofDensity(700), { ...high, pressure: atmosphere })).toThrow(
      "road diesel: densityAt15C is 700 kg/m³",
    );
  });
  test("a viscosity that is none", () => {
    expect(() => fuelViscosity({ ...roadDiesel, kinematicViscosityAt40C: stokes(0) }, celsius(20))).toThrow(
      "fuelViscosity of road diesel: kinematicViscosityAt40C is 0 m²/s; it must be above 0 m²/s",
    );
  });
});
