import { describe, expect, test } from "vitest";
import { airConductivity, airViscosity, geopotentialAltitude, standardAtmosphere } from "../../../lib/fluid";
import type { Length } from "../../../lib/quantity";
import published from "../../published/fluid-atmosphere.json";
import pipeFlow from "../../published/fluid-pipe-flow.json";
import { between, gap, kelvin, rises } from "./si";

const metres = (value: number) => value as Length;

describe("standardAtmosphere(altitude)", () => {
  // Closed-form equations with the same constants, printed to nine digits.
  test.each(published.geopotential.rows)("and the transport of air at $H_m m, geopotential", (row) => {
    const air = standardAtmosphere(metres(row.H_m));
    expect(gap(air.temperature, row.T_K)).toBeLessThan(1e-12);
    expect(gap(air.pressure, row.p_Pa)).toBeLessThan(2e-8);
    expect(gap(air.density, row.rho_kg_m3)).toBeLessThan(2e-8);
    expect(gap(airViscosity(air.temperature), row.mu_Pa_s)).toBeLessThan(2e-8);
    expect(gap(airViscosity(air.temperature) / air.density, row.nu_m2_s)).toBeLessThan(2e-8);
    expect(gap(airConductivity(air.temperature), row.k_W_mK)).toBeLessThan(1e-6);
  });

  test.each(published.geometric.rows)("at $Z_m m above the sea, by its geopotential altitude", (row) => {
    const altitude = geopotentialAltitude(metres(row.Z_m));
    expect(gap(altitude, row.H_m)).toBeLessThan(2e-9);
    const air = standardAtmosphere(altitude);
    expect(gap(air.temperature, row.T_K)).toBeLessThan(2e-9);
    expect(gap(air.pressure, row.p_Pa)).toBeLessThan(2e-8);
    expect(gap(air.density, row.rho_kg_m3)).toBeLessThan(2e-8);
  });

  // Tables printed to five digits, one with slightly rounded constants.
  test.each(published.handbook.rows)("within 10 Pa of the handbook's table at $H_m m", (row) => {
    expect(Math.abs(standardAtmosphere(metres(row.H_m)).pressure - row.p_Pa)).toBeLessThan(10);
  });
  test.each(published.published.rows)("near the printed table at $Z_m m (from memory)", (row) => {
    const air = standardAtmosphere(geopotentialAltitude(metres(row.Z_m)));
    expect(gap(air.temperature, row.T_K)).toBeLessThan(2e-4);
    expect(gap(air.pressure, row.p_Pa)).toBeLessThan(2e-4);
    expect(gap(air.density, row.rho_kg_m3)).toBeLessThan(2e-4);
  });

  test("thins and cools upwards", () => {
    const column = between(-2000, 11000, 100).map((h) => standardAtmosphere(metres(h)));
    expect(rises(column.map((air) => -air.temperature))).toBe(true);
    expect(rises(column.map((air) => -air.pressure))).toBe(true);
    expect(rises(column.map((air) => -air.density))).toBe(true);
  });

  test("carries its own weight: dp/dh = −ρ g", () => {
    for (const h of between(-1900, 10900, 9)) {
      const fall = (standardAtmosphere(metres(h + 1)).pressure - standardAtmosphere(metres(h - 1)).pressure) / 2;
      expect(gap(fall, -standardAtmosphere(metres(h)).density * 9.80665)).toBeLessThan(1e-7);
    }
  });

  test("refuses the stratosphere by name", () => {
    expect(() => standardAtmosphere(metres(11001))).toThrow(
      "standardAtmosphere: altitude is 11001 m; it must be -2000 to 11000 m",
    );
    expect(() => standardAtmosphere(metres(Number.NaN))).toThrow(RangeError);
    expect(() => geopotentialAltitude(metres(2e4))).toThrow("geopotentialAltitude: height is 20000 m");
  });
});

describe("airViscosity and airConductivity", () => {
  // The regulation's own constants of Sutherland differ: 0.1 % at this temperature.
  test.each(pipeFlow.viscosity.rows)("airViscosity near a regulation's worked example at $T_K K", (row) => {
    expect(gap(airViscosity(kelvin(row.T_K)), row.mu_Pa_s)).toBeLessThan(1e-3);
  });

  test("rise with temperature and stay in proportion: Prandtl number with cp 1005 to 1100 near 0.7", () => {
    const steps = between(200, 1500, 60).map(kelvin);
    expect(rises(steps.map(airViscosity))).toBe(true);
    expect(rises(steps.map(airConductivity))).toBe(true);
    for (const [t, cp] of [
      [300, 1005],
      [600, 1051],
      [900, 1121],
    ] as const) {
      const prandtl = (airViscosity(kelvin(t)) * cp) / airConductivity(kelvin(t));
      expect(prandtl).toBeGreaterThan(0.65);
      expect(prandtl).toBeLessThan(0.75);
    }
  });

  test("refuse what is too cold or hot by name", () => {
    expect(() => airViscosity(kelvin(150))).toThrow("airViscosity: temperature is 150 K; it must be 200 to 1500 K");
    expect(() => airConductivity(kelvin(Number.NaN))).toThrow("airConductivity: temperature is NaN");
  });
});
