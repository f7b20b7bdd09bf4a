import { describe, expect, test } from "vitest";
import {
  annandCoefficient,
  type ClosedCycleInputs,
  closedCycle,
  cylinderShape,
  exhaustPortHeat,
  type GasExchangeInputs,
  gasExchangeHeat,
  heatBalance,
  hohenbergCoefficient,
  temperatureAtClosing,
  type WallHeatCorrelation,
  wallCoefficient,
  wallShareFromJacket,
  woschniCoefficient,
} from "../../../lib/engine";
import { airConductivity, airViscosity } from "../../../lib/fluid";
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

const cylinder = {
  bore: 0.124,
  stroke: 0.141,
  rodLength: 0.233,
  effectiveCompressionRatio: 12.8,
  intakeCloses: radians(-140),
};

describe("the cylinder's walls", () => {
  test("temperatureAtClosing(cylinder, pressure, mass) makes the closed cycle hold that mass", () => {
    const mass = 0.0057;
    const temperature = temperatureAtClosing(cylinder as never, 3.3e5 as never, mass as never);
    const row = cycleOf(rows("single-zone-hohenberg")[0]!.inputs as Record<string, number>, "hohenberg");
    const cycle = closedCycle({ ...row, ...cylinder, pressure: 3.3e5, temperature } as never);
    expect(cycle.mass / mass).toBeCloseTo(1, 12);
  });

  test("cylinderShape(cylinder): a crown half as large again as its circle adds half a circle, and its heat", () => {
    const area = (crownSurface: number) => cylinderShape({ ...cylinder, crownSurface } as never).wallArea(0.0003);
    expect((area(1.5) - area(1)) / ((Math.PI / 8) * 0.124 ** 2)).toBeCloseTo(1, 9);
    const row = cycleOf(rows("single-zone-hohenberg")[0]!.inputs as Record<string, number>, "hohenberg");
    const heat = (crownSurface: number) => closedCycle({ ...row, crownSurface } as never).wallHeat;
    expect(heat(1.5) / heat(1)).toBeGreaterThan(1.1);
    expect(heat(1.5) / heat(1)).toBeLessThan(1.25); // never by more than its share of the walls at the dead centre
  });
});

describe("gasExchangeHeat(exchange)", () => {
  const exchange = {
    ...cylinder,
    engineSpeed: 40,
    exhaustOpens: radians(130),
    endPressure: 1.1e6,
    endTemperature: 1100,
    exhaustPressure: 3e5,
    chargePressure: 3.3e5,
    chargeTemperature: 315,
    wallTemperature: 453,
    ratioOfSpecificHeats: 1.33,
    correlation: "annand",
  } as unknown as GasExchangeInputs;

  // By hand: Annand's coefficient does not feel the volume, and over half a turn with an endless rod the piston stands
  // half-way in the mean. The rod here is 300 strokes long.
  test("is the sum of two half turns, each coefficient times mean wall times difference", () => {
    const half = { ...exchange, rodLength: 42, exhaustOpens: Math.PI, intakeCloses: -Math.PI } as GasExchangeInputs;
    const letDown = 1100 * (3 / 11) ** (0.33 / 1.33);
    const walls = 2 * (Math.PI / 4) * 0.124 ** 2 + Math.PI * 0.124 * (0.141 / 2);
    const motion = { volume: 1e-3, meanPistonSpeed: 2 * 0.141 * 40, gasVelocity: 0 } as never;
    const part = (pressure: number, temperature: number) =>
      wallCoefficient("annand", { bore: 0.124, pressure, temperature } as never, motion) *
      walls *
      (temperature - 453) *
      (1 / 80);
    expect(gasExchangeHeat(half) / (part(3e5, letDown) + part(3.3e5, 315))).toBeCloseTo(1, 3);
  });

  test("is nothing with gas as warm as the walls, turns its sign with them, and grows as the engine slows", () => {
    const heat = (change: object) => gasExchangeHeat({ ...exchange, ...change } as never);
    const even = { endTemperature: 453, endPressure: 3e5, chargeTemperature: 453 };
    expect(heat(even)).toBe(0);
    expect(heat({ ...even, wallTemperature: 480 })).toBeLessThan(0);
    expect(heat({ engineSpeed: 20 })).toBeGreaterThan(heat({}));
    expect(heat({ chargeTemperature: 360 })).toBeGreaterThan(heat({}));
    expect(() => heat({ exhaustPressure: 0 })).toThrow("gasExchangeHeat: exhaustPressure is 0 Pa");
  });
});

describe("exhaustPortHeat(port)", () => {
  const port = { flow: 0.1, specificHeat: 1130, outletTemperature: 800, bore: 0.046, length: 0.12, wallTemperature: 490 };
  const heat = (change: object = {}) => exhaustPortHeat({ ...port, ...change } as never);

  // By hand: Nu = 0.07 Re^(3/4) and a port so short that the gas keeps its temperature.
  test("is coefficient times wall times difference for a short port", () => {
    const reynolds = (4 * 0.1) / (Math.PI * 0.046 * airViscosity(800 as never));
    const nusselt = 0.07 * Math.sqrt(reynolds) * Math.sqrt(Math.sqrt(reynolds));
    const coefficient = (nusselt * airConductivity(800 as never)) / 0.046;
    const short = 0.001;
    expect(heat({ length: short }) / (coefficient * Math.PI * 0.046 * short * 310)).toBeCloseTo(1, 3);
  });

  test("closes with the gas that goes in: twice the length is one port behind the other", () => {
    const first = heat({ length: 0.24 });
    const second = heat();
    const between = 800 + second / (0.1 * 1130);
    // The properties at the joint are those of the outlet in the long port; over 25 K they move by a hundredth.
    expect(first / (second + heat({ outletTemperature: between }))).toBeCloseTo(1, 1);
    expect(heat({ length: 0 })).toBe(0);
    expect(heat({ wallTemperature: 900 })).toBeLessThan(0);
    expect(() => heat({ flow: 0 })).toThrow("exhaustPortHeat: flow is 0 kg/s");
  });
});

test("wallShareFromJacket(measured) takes back what heatBalance gave the jacket", () => {
  const shares = { frictionHeatToOil: 0.6, wallHeatToOil: 0.18, wallHeatRadiated: 0.08 };
  const none = { accessoryPower: 0, fuelPumpPower: 0, chargeCoolerHeat: 0, exhaustHeat: 0, blowerMechanicalLoss: 0 };
  const pieces = { ...none, ...shares, turbochargerMechanicalLoss: 0, brakePower: 4e5, fuelPower: 1e6, frictionPower: 5e4 };
  for (const share of [0.05, 0.15, 0.3]) {
    const { parts } = heatBalance({ ...pieces, heatToWalls: share * 1e6 } as never);
    const jacketHeat = parts.find(({ key }) => key === "jacket")!.power;
    const measured = { ...shares, jacketHeat, fuelPower: 1e6, frictionPower: 5e4 } as never;
    expect(wallShareFromJacket(measured)).toBeCloseTo(share, 12);
  }
  const asked = (change: object) =>
    wallShareFromJacket({ ...shares, jacketHeat: 1e5, fuelPower: 1e6, frictionPower: 5e4, ...change } as never);
  expect(() => asked({ jacketHeat: 1e4 })).toThrow("it must be 0 to 60 %: look at both measurements");
  expect(() => asked({ wallHeatToOil: 0.95 })).toThrow("wallShareFromJacket: 1 less wallHeatToOil and wallHeatRadiated");
});
