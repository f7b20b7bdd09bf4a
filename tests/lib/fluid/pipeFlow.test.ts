import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bellmouthDepression,
  dryAir,
  frictionFactor,
  pipePressureLoss,
  reynoldsNumber,
  velocityInPipe,
} from "../../../lib/fluid";
import type { DynamicViscosity, Length, MassFlow, Velocity } from "../../../lib/quantity";
import published from "../../published/fluid-pipe-flow.json";
import { between, gap, kelvin, kilogramPerCubicMetre, pascal, ratio, rises } from "./si";

const metres = (value: number) => value as Length;
const friction = (Re: number, roughness: number) =>
  frictionFactor({ reynoldsNumber: ratio(Re), relativeRoughness: ratio(roughness) });

const hose = {
  density: kilogramPerCubicMetre(1000),
  velocity: 2 as Velocity,
  diameter: metres(0.05),
  dynamicViscosity: 1e-3 as DynamicViscosity,
  length: metres(10),
  roughness: metres(5e-5),
  lossCoefficient: ratio(1),
};

describe("frictionFactor(friction)", () => {
  // Solved to the last digit by both; half a unit of the ninth digit printed is up to 5e-9.
  test.each(published.colebrook.rows)("solves Colebrook at Re $Re and roughness $e_over_D", (row) => {
    expect(gap(friction(row.Re, row.e_over_D), row.f)).toBeLessThan(5e-9);
  });

  test.each(published.laminar.rows)("is 64/Re at Re $Re", (row) => {
    expect(friction(row.Re, 0.02)).toBe(row.f);
  });

  // Explicit formulas are within 1.5 % of the implicit one; Colebrook's own column to its digits.
  test.each(published.explicit.rows)("is near the explicit formulas at Re $Re", (row) => {
    const f = friction(row.Re, row.e_over_D);
    expect(gap(f, row.f_Colebrook)).toBeLessThan(5e-9);
    expect(gap(f, row.f_Haaland)).toBeLessThan(0.015);
    expect(gap(f, row.f_Swamee_Jain)).toBeLessThan(0.015);
  });

  // Churchill's formula is another fit for turbulent flow, up to 3 % off, and another blend; outside the transition compare.
  test.each(published.churchill.rows.filter((row) => row.Re <= 2000 || row.Re >= 4000))(
    "is within 3 % of Churchill's formula at Re $Re and roughness $e_over_D",
    (row) => {
      expect(gap(friction(row.Re, row.e_over_D), row.f)).toBeLessThan(0.03);
    },
  );

  test("satisfies the equation it solves", () => {
    const solved = fc.property(
      fc.double({ min: 3.7, max: 8, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      (lg, e) => {
        const f = friction(10 ** lg, e);
        const right = -2 * Math.log10(e / 3.7 + 2.51 / (10 ** lg * Math.sqrt(f)));
        expect(gap(right, 1 / Math.sqrt(f))).toBeLessThan(1e-11);
      },
    );
    fc.assert(solved, { seed: 20260101, numRuns: 300 });
  });

  test("has no step or kink at either end of the transition, and rises through it", () => {
    for (const roughness of [0, 1e-3, 0.03]) {
      for (const end of [2300, 4000]) {
        const before = friction(end - 1e-3, roughness);
        const at = friction(end, roughness);
        const after = friction(end + 1e-3, roughness);
        expect(gap(before, after)).toBeLessThan(1e-6);
        expect(Math.abs((after - at - (at - before)) / 1e-3)).toBeLessThan(1e-8); // the slopes on both sides agree
      }
      expect(rises(between(2600, 3700, 20).map((Re) => friction(Re, roughness)))).toBe(true);
    }
  });

  test("rises with roughness, and tends to the rough-wall law 1/√f = 2 lg(3.7/ε)", () => {
    expect(rises(between(0, 0.05, 26).map((e) => friction(1e6, e)))).toBe(true);
    expect(gap(friction(1e8, 0.05), (2 * Math.log10(3.7 / 0.05)) ** -2)).toBeLessThan(1e-4);
  });

  test("refuses by name", () => {
    expect(() => friction(0, 0.01)).toThrow("frictionFactor: reynoldsNumber is 0");
    expect(() => friction(Number.NaN, 0.01)).toThrow(RangeError);
    expect(() => friction(1e5, 0.06)).toThrow("frictionFactor: relativeRoughness is 0.06; it must be 0 to 0.05");
  });
});

describe("pipePressureLoss(run)", () => {
  test("by hand: Re 1e5, ε 0.001, f 0.022175; (0.022175·10/0.05 + 1)·1000·2²/2 = 10870 Pa", () => {
    expect(reynoldsNumber(hose)).toBeCloseTo(1e5, 6);
    expect(pipePressureLoss(hose)).toBeCloseTo(10870, -1);
  });

  test("without flow there is none, and without length only that of the fittings", () => {
    expect(pipePressureLoss({ ...hose, velocity: 0 as Velocity })).toBe(0);
    expect(pipePressureLoss({ ...hose, length: metres(0) })).toBe(2000);
  });

  test("in laminar flow is Hagen and Poiseuille's 32 μ L v/d²", () => {
    const oil = { ...hose, dynamicViscosity: 0.1 as DynamicViscosity, lossCoefficient: ratio(0) };
    expect(gap(pipePressureLoss(oil), (32 * 0.1 * 10 * 2) / 0.05 ** 2)).toBeLessThan(1e-12);
  });

  test("rises with velocity, a little less than as its square in a smooth pipe", () => {
    const smooth = { ...hose, roughness: metres(0), lossCoefficient: ratio(0) };
    const at = (v: number) => pipePressureLoss({ ...smooth, velocity: v as Velocity });
    expect(rises(between(0.001, 10, 200).map(at))).toBe(true);
    expect(at(4) / at(2)).toBeGreaterThan(2 ** 1.7);
    expect(at(4) / at(2)).toBeLessThan(2 ** 2);
  });

  test("refuses by name", () => {
    expect(() => pipePressureLoss({ ...hose, length: metres(-1) })).toThrow("pipePressureLoss: length is -1 m");
    expect(() => pipePressureLoss({ ...hose, lossCoefficient: ratio(Number.NaN) })).toThrow("lossCoefficient is NaN");
    expect(() => pipePressureLoss({ ...hose, velocity: -1 as Velocity })).toThrow("reynoldsNumber: velocity is -1 m/s");
    expect(() => pipePressureLoss({ ...hose, roughness: metres(0.01) })).toThrow("relativeRoughness is 0.2");
    expect(() => reynoldsNumber({ ...hose, diameter: metres(0) })).toThrow("reynoldsNumber: diameter is 0 m");
    expect(() => reynoldsNumber({ ...hose, dynamicViscosity: 0 as DynamicViscosity })).toThrow("dynamicViscosity");
  });
});

describe("velocityInPipe(flow)", () => {
  test("carries the flow it was given: v ρ π d²/4", () => {
    const flow = { massFlow: 0.5 as MassFlow, density: kilogramPerCubicMetre(1.2), diameter: metres(0.15) };
    expect((velocityInPipe(flow) * 1.2 * Math.PI * 0.15 ** 2) / 4).toBeCloseTo(0.5, 12);
    expect(() => velocityInPipe({ ...flow, diameter: metres(0) })).toThrow("velocityInPipe: diameter is 0 m");
    expect(() => velocityInPipe({ ...flow, massFlow: Number.NaN as MassFlow })).toThrow(RangeError);
  });
});

describe("bellmouthDepression(bellmouth)", () => {
  const inlet = {
    massFlow: 0.5 as MassFlow,
    pressure: pascal(1e5),
    temperature: kelvin(298.15),
    throatDiameter: metres(0.1),
    dischargeCoefficient: ratio(0.98),
  };

  // The rows turned round: their flow gives their depression back. They take γ 1.4 and R 287.05: 2e-5 of flow, twice of pressure.
  test.each(published.bellmouth.rows)("finds $dp_static_throat_Pa Pa at $m_kg_s kg/s", (row) => {
    const throat = bellmouthDepression({
      massFlow: row.m_kg_s as MassFlow,
      pressure: pascal(row.p0_Pa),
      temperature: kelvin(row.T0_K),
      throatDiameter: metres(row.d_m),
      dischargeCoefficient: ratio(row.C_d),
    });
    expect(gap(throat.staticDepression, row.dp_static_throat_Pa)).toBeLessThan(1e-4);
  });

  test("passes its flow: ρ v A at the throat is the mass flow", () => {
    const passes = fc.property(
      fc.double({ min: 0.01, max: 1.5, noNaN: true }),
      fc.double({ min: 0.6, max: 1, noNaN: true }),
      (m, c) => {
        const choked = c * 0.68 * ((Math.PI / 4) * 0.01) * (1e5 / Math.sqrt(287.05 * 298.15));
        if (m > 0.98 * choked) return;
        const throat = bellmouthDepression({ ...inlet, massFlow: m as MassFlow, dischargeCoefficient: ratio(c) });
        const temperature = 298.15 - throat.velocity ** 2 / 2 / (dryAir.gasConstant * 3.5);
        const density = (1e5 - throat.staticDepression) / (dryAir.gasConstant * temperature);
        expect(gap((density * throat.velocity * Math.PI * 0.01) / 4, m)).toBeLessThan(1e-4); // cp is 3.5 R within 1e-3 here
      },
    );
    fc.assert(passes, { seed: 20260101, numRuns: 100 });
  });

  test("at small flow is incompressible: ρv²/(2C²) of depression, of which 1/C² − 1 velocity heads are lost", () => {
    const throat = bellmouthDepression({ ...inlet, massFlow: 0.02 as MassFlow });
    const density = dryAir.density(kelvin(298.15), pascal(1e5));
    const head = (density * throat.velocity ** 2) / 2;
    expect(gap(throat.staticDepression, head / 0.98 ** 2)).toBeLessThan(1e-3);
    expect(gap(throat.lossOfTotalPressure, head * (0.98 ** -2 - 1))).toBeLessThan(5e-3);
  });

  test("loses nothing when ideal, and nothing moves without flow", () => {
    const ideal = bellmouthDepression({ ...inlet, dischargeCoefficient: ratio(1) });
    expect(Math.abs(ideal.lossOfTotalPressure)).toBeLessThan(1e-6);
    const still = bellmouthDepression({ ...inlet, massFlow: 0 as MassFlow });
    expect(still).toEqual({ velocity: 0, machNumber: 0, staticDepression: 0, lossOfTotalPressure: 0 });
  });

  test("depression, velocity and loss rise with the flow", () => {
    const throats = between(0.01, 1.7, 60).map((m) => bellmouthDepression({ ...inlet, massFlow: m as MassFlow }));
    for (const field of ["velocity", "machNumber", "staticDepression", "lossOfTotalPressure"] as const) {
      expect(rises(throats.map((throat) => throat[field]))).toBe(true);
    }
  });

  test("reaches the critical pressure where it chokes, and refuses more, saying how much it passes", () => {
    // ṁ* = C A p₀/√(R T₀) · 0.684731 for γ = 1.4: 0.98·0.00785398·1e5/292.55·0.68473 = 1.8015 kg/s (textbook factor).
    const most = (0.98 * 0.0078539816 * 1e5 * 0.6847315) / Math.sqrt(dryAir.gasConstant * 298.15);
    const throat = bellmouthDepression({ ...inlet, massFlow: (0.9999 * most) as MassFlow });
    expect(1 - throat.staticDepression / 1e5).toBeCloseTo(0.528, 1);
    expect(() => bellmouthDepression({ ...inlet, massFlow: 2 as MassFlow })).toThrow(
      `bellmouthDepression: massFlow is 2 kg/s; this throat passes at most ${most.toFixed(2)}`,
    );
  });

  test("refuses by name", () => {
    expect(() => bellmouthDepression({ ...inlet, dischargeCoefficient: ratio(1.02) })).toThrow(
      "bellmouthDepression: dischargeCoefficient is 1.02; it must be 0.5 to 1",
    );
    expect(() => bellmouthDepression({ ...inlet, massFlow: -1 as MassFlow })).toThrow("massFlow is -1 kg/s");
    expect(() => bellmouthDepression({ ...inlet, pressure: pascal(0) })).toThrow("pressure is 0 Pa");
    expect(() => bellmouthDepression({ ...inlet, temperature: kelvin(Number.NaN) })).toThrow("temperature is NaN");
    expect(() => bellmouthDepression({ ...inlet, throatDiameter: metres(0) })).toThrow("throatDiameter is 0 m");
  });
});
