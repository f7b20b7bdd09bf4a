import { describe, expect, test } from "vitest";
import {
  columnWater,
  dryExhaustLoss,
  dutyLoadFactor,
  exhaustVapourFraction,
  exhaustVapourHeat,
  fanAndCore,
  laggedPipe,
  roomTemperature,
  timeToLimit,
  towerWater,
  wetExhaustLoss,
} from "../../../lib/cooling";
import { burntGas } from "../../../lib/fluid";

describe("timeToLimit(warming)", () => {
  const lump = { heatCapacity: 2e5, heat: 1e5, start: 350, limit: 359 };

  test("without anything passed on is heat capacity times rise over heat", () => {
    expect(timeToLimit({ ...lump, passed: () => 0 } as never)).toBeCloseTo((2e5 * 9) / 1e5, 9);
  });

  test("with heat passed in proportion is the exponential of the textbook", () => {
    // τ ln((T∞ − T0)/(T∞ − T)), T∞ = 310 + 1e5/1900; Incropera, ch. 5. Midpoints of 200 intervals: better than 1e-4.
    const conductance = 1900;
    const passed = (t: number) => conductance * (t - 310);
    const settles = 310 + 1e5 / conductance;
    const exact = (2e5 / conductance) * Math.log((settles - 350) / (settles - 359));
    expect(timeToLimit({ ...lump, passed } as never) / exact).toBeCloseTo(1, 4);
  });

  test("is never reached where it settles below, and past already where it starts above", () => {
    expect(timeToLimit({ ...lump, passed: (t: number) => 2500 * (t - 310) } as never)).toBe(Number.POSITIVE_INFINITY);
    expect(timeToLimit({ ...lump, start: 360, passed: () => 0 } as never)).toBe(0);
    expect(() => timeToLimit({ ...lump, heatCapacity: 0, passed: () => 0 } as never)).toThrow("heatCapacity is 0 J/K");
  });
});

describe("laggedPipe(pipe)", () => {
  const pipe = {
    gasTemperature: 723.15,
    roomTemperature: 313.15,
    pipeDiameter: 0.15,
    thickness: 0.05,
    length: 3,
    conductivity: 0.08,
    emissivity: 0.9,
    convection: 6,
  };
  const at = (change: object) => laggedPipe({ ...pipe, ...change } as never);

  test("conducts through the lagging what leaves its surface: Incropera, ch. 3, by hand", () => {
    const { surfaceTemperature, heat } = at({});
    const through = (2 * Math.PI * 0.08 * 3 * (723.15 - surfaceTemperature)) / Math.log(0.25 / 0.15);
    expect(through / heat).toBeCloseTo(1, 9);
  });

  test("is cooler and gives less with more lagging, and is as hot as its gas with none", () => {
    expect(at({ thickness: 0.08 }).surfaceTemperature).toBeLessThan(at({}).surfaceTemperature);
    expect(at({ thickness: 0.08 }).heat).toBeLessThan(at({}).heat);
    expect(at({ thickness: 0 }).surfaceTemperature).toBe(723.15);
    expect(at({ gasTemperature: 313.15 }).heat).toBe(0);
    expect(() => at({ gasTemperature: 300 })).toThrow("gasTemperature is 300 K");
  });
});

test("wetExhaustLoss(line) without water lifted is near the handbook's dry pipe of the same bore", () => {
  // The handbook's fixed f of about 0.022 against a hose's 0.018 to 0.02: within a quarter.
  const [q, t, length, bore] = [0.9, 723.15, 6, 0.2];
  const density = 101325 / (288 * t);
  const wet = wetExhaustLoss({
    gasVolumeFlow: q,
    gasFlow: q * density,
    dynamicViscosity: 3.4e-5,
    bore,
    length,
    lossCoefficient: 0,
    lift: 0,
    waterDensity: 1020,
  } as never);
  const dry = dryExhaustLoss({ volumeFlow: q, length, bore, temperature: t } as never);
  expect(Math.abs(wet / dry - 1)).toBeLessThan(0.25);
});

test("exhaustVapourHeat(carried) has the water of the fuel: 1.2 kg for each kilogram of diesel, and its heat of condensation", () => {
  const mix = { excessAirRatio: 2 } as never;
  // 1 kg of exhaust at twice the air of CH1.86 holds 1/30.2 kg of fuel, whose hydrogen makes 1.21 kg of water each.
  const heat = exhaustVapourHeat({
    gas: burntGas(mix),
    gasFlow: 1,
    vapourFraction: exhaustVapourFraction(mix),
    temperature: 700,
    ambientTemperature: 298.15,
  } as never);
  expect(heat.flow * 30.2).toBeGreaterThan(1.15);
  expect(heat.flow * 30.2).toBeLessThan(1.27);
  expect(heat.latent / heat.flow).toBeCloseTo(2441.7e3, 0);
  expect(heat.sensible).toBeGreaterThan(heat.flow * 1870 * 400); // cp of cool vapour
});

test("roomTemperature(room) is the standard's 12.5 K for the standard's heat flow", () => {
  // ISO 8861 (from memory): Φ = ρ c ΔT q with 1.13 kg/m³ and 1.01 kJ/(kg·K).
  const heat = 1.13 * 1010 * 12.5 * 1.4;
  const room = { outsideTemperature: 308.15, heat, volumeFlow: 1.4, density: 1.13 };
  expect(roomTemperature(room as never)).toBeCloseTo(320.65, 9);
});

describe("fanAndCore(parts)", () => {
  const parts = {
    fanShutOff: 1000,
    fanOpenFlow: 12,
    fanRatedSpeed: 40,
    fanSpeed: 40,
    coreLoss: 400,
    coreFlow: 8,
    face: 0.9,
    vehicleSpeed: 0,
    ramRecovery: 0.5,
    ratedDensity: 1.2,
    density: 1.2,
  };
  const at = (change: object) => fanAndCore({ ...parts, ...change } as never);

  test("balances fan, wind and core", () => {
    for (const change of [{}, { vehicleSpeed: 25 }, { density: 1 }, { fanSpeed: 20, vehicleSpeed: 30 }]) {
      const { volumeFlow, fanRise } = at(change);
      const { density, vehicleSpeed } = { ...parts, ...change };
      const core = (density / 1.2) * 400 * (volumeFlow / 8) ** 2;
      expect(fanRise + 0.25 * density * vehicleSpeed ** 2).toBeCloseTo(core, 6);
    }
  });

  test("on a brake follows the affinity laws, and thin air passes in the same volume", () => {
    expect(at({ fanSpeed: 20 }).volumeFlow / at({}).volumeFlow).toBeCloseTo(0.5, 12);
    expect(at({ fanSpeed: 20 }).airPower / at({}).airPower).toBeCloseTo(0.125, 12);
    expect(at({ density: 0.9 }).volumeFlow).toBeCloseTo(at({}).volumeFlow, 12);
    expect(() => at({ fanSpeed: 0 })).toThrow("stand still");
  });
});

test("towerWater(tower) closes heat and salt, and columnWater(column) takes the engine's heat", () => {
  const tower = {
    heat: 6e5,
    waterFlow: 12,
    waterSpecificHeat: 4180,
    wetBulb: 293.15,
    ratedApproach: 5,
    ratedHeat: 1e6,
    evaporatingShare: 0.8,
    concentration: 3,
  };
  const state = towerWater(tower as never);
  expect(state.coldWater).toBeCloseTo(296.15, 12);
  expect(12 * 4180 * (state.hotWater - state.coldWater)).toBeCloseTo(6e5, 6);
  const bled = state.makeUp - state.evaporated;
  expect(bled * 3).toBeCloseTo(state.makeUp, 12); // as much salt leaves as comes in
  const flow = columnWater({ heat: 2e5, engineOutlet: 355, supply: 300, specificHeat: 4186 } as never);
  expect(flow * 4186 * 55).toBeCloseTo(2e5, 6);
  expect(() => columnWater({ heat: 1, engineOutlet: 300, supply: 300, specificHeat: 4186 } as never)).toThrow("above");
});

test("dutyLoadFactor(parts, power) weighs by time, whatever the shares add up to", () => {
  const parts = [
    { share: 1, power: 3e5 },
    { share: 3, power: 1e5 },
  ];
  expect(dutyLoadFactor(parts as never, 3e5 as never)).toBeCloseTo(0.5, 12);
  expect(() => dutyLoadFactor([{ share: 0, power: 1 }] as never, 1 as never)).toThrow("running hours");
});
