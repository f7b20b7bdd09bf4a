import { describe, expect, test } from "vitest";
import {
  annandCoefficient,
  type ClosedCycleInputs,
  closedCycle,
  hohenbergCoefficient,
  type WallHeatCorrelation,
  woschniCoefficient,
} from "../../../lib/engine";
import published from "../../published/engine-wall-heat.json" with { type: "json" };
import { close, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const radians = (degrees: number) => (degrees * Math.PI) / 180;

// The coefficients of all three are from memory; these rows show that units and exponents go together.
test.each(rows("heat-transfer-coefficient"))("the coefficients meet row $id", ({ inputs, expected }) => {
  const at = inputs as Record<string, number>;
  const gas = { bore: at.bore_m, pressure: at.p_Pa, temperature: at.T_K } as never;
  close(woschniCoefficient(gas, at.w_woschni_mps as never), expected.h_woschni, 1e-9);
  close(hohenbergCoefficient(gas, at.V_m3 as never, at.Sp_mps as never), expected.h_hohenberg, 1e-9);
  const state = {
    meanPistonSpeed: at.Sp_mps,
    gasConstant: at.R,
    dynamicViscosity: at.mu_Pas,
    conductivity: at.k_WpmK,
    intensity: at.annand_a,
  } as never;
  close(annandCoefficient(gas, state), expected.h_annand_convective, 1e-9);
});

/** A row's geometric ratio and closing angle give the effective ratio that closedCycle asks for. */
function cycleOf(at: Record<string, number>, correlation: WallHeatCorrelation | "none"): ClosedCycleInputs {
  const radius = at.stroke_m! / 2;
  const closing = radians(at.theta_ivc_deg!);
  const reach = Math.sqrt(at.rod_m! ** 2 - (radius * Math.sin(closing)) ** 2);
  const travel = at.rod_m! + radius - radius * Math.cos(closing) - reach;
  return {
    bore: at.bore_m,
    stroke: at.stroke_m,
    rodLength: at.rod_m,
    effectiveCompressionRatio: 1 + ((at.compression_ratio! - 1) * travel) / at.stroke_m!,
    engineSpeed: at.N_rpm! / 60,
    pressure: at.p_ivc_Pa,
    temperature: at.T_ivc_K,
    fuelHeat: at.Q_J,
    intakeCloses: closing,
    exhaustOpens: radians(at.theta_end_deg!),
    burnStarts: radians(at.theta_soc_deg!),
    burnDuration: radians(at.duration_deg!),
    burnForm: at.wiebe_m,
    burnExponent: at.wiebe_a,
    wallTemperature: at.T_wall_K,
    ratioOfSpecificHeats: at.gamma,
    correlation,
    step: radians(0.25),
  } as unknown as ClosedCycleInputs;
}

describe("closedCycle(cycle)", () => {
  // The rows were integrated to 1e-4; the highest pressure is that of the nearest step.
  test.each([
    ...rows("single-zone-adiabatic").map((row) => ({ ...row, correlation: "none" as const })),
    ...rows("single-zone-hohenberg").map((row) => ({ ...row, correlation: "hohenberg" as const })),
    ...rows("single-zone-woschni").map((row) => ({ ...row, correlation: "woschni" as const })),
  ])("meets row $id, $correlation", ({ inputs, expected, correlation }) => {
    const cycle = closedCycle(cycleOf(inputs as Record<string, number>, correlation));
    close(cycle.mass, expected.mass_kg, 1e-8);
    close(cycle.peakPressure, expected.p_max_Pa, 3e-4);
    close(cycle.endPressure, expected.p_end_Pa, 3e-4);
    close(cycle.work, expected.W_ivc_to_end_J, 3e-4);
    if (correlation !== "none") close(cycle.wallHeat, expected.Q_wall_J, 1e-3);
  });

  const inputs = cycleOf(rows("single-zone-hohenberg")[0]!.inputs as Record<string, number>, "hohenberg");

  test("closes the first law: fuel heat less wall heat less work is what the gas gained", () => {
    const cycle = closedCycle(inputs);
    const { ratioOfSpecificHeats: gamma, pressure } = inputs;
    const startVolume = (cycle.mass * 287.05 * inputs.temperature) / pressure;
    // by hand: internal energy p V/(γ − 1) at both ends
    const radius = inputs.stroke / 2;
    const reach = (angle: number) => Math.sqrt(inputs.rodLength ** 2 - (radius * Math.sin(angle)) ** 2);
    const travel = (angle: number) => inputs.rodLength + radius - radius * Math.cos(angle) - reach(angle);
    const area = (Math.PI / 4) * inputs.bore ** 2;
    const clearance = (area * travel(inputs.intakeCloses)) / (inputs.effectiveCompressionRatio - 1);
    const endVolume = clearance + area * travel(inputs.exhaustOpens);
    const gained = (cycle.endPressure * endVolume - pressure * startVolume) / (gamma - 1);
    const burnt = inputs.fuelHeat; // but for a part in 10¹⁶ that would burn after the exhaust opens
    expect((burnt - cycle.wallHeat - cycle.work) / gained).toBeCloseTo(1, 4);
  });

  test("gives more heat to the walls at lower speed, and two degrees of step cost less than a quarter of a per cent", () => {
    const heat = (change: object) => closedCycle({ ...inputs, ...change } as never).wallHeat;
    expect(heat({ engineSpeed: 20 })).toBeGreaterThan(heat({ engineSpeed: 40 }));
    expect(heat({ fuelHeat: 4000 })).toBeGreaterThan(heat({ fuelHeat: 2000 }));
    expect(heat({ wallTemperature: 420 })).toBeGreaterThan(heat({ wallTemperature: 480 }));
    expect(Math.abs(heat({ step: radians(2) }) / heat({}) - 1)).toBeLessThan(2.5e-3);
  });

  test("has correlations that differ by up to a factor of about two, as the literature says", () => {
    const heats = (["hohenberg", "woschni", "annand"] as const).map(
      (correlation) => closedCycle({ ...inputs, correlation }).wallHeat,
    );
    expect(Math.max(...heats) / Math.min(...heats)).toBeLessThan(2.2);
    expect(Math.min(...heats)).toBeGreaterThan(0);
  });

  test("names what is outside its span", () => {
    expect(() => closedCycle({ ...inputs, bore: Number.NaN as never })).toThrow("closedCycle: bore is NaN m");
    expect(() => closedCycle({ ...inputs, burnStarts: -3 as never })).toThrow("burnStarts is -3 rad");
  });
});
