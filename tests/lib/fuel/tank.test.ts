import { describe, expect, test } from "vitest";
import * as fuel from "../../../lib/fuel";
import { gap, plain } from "../drive/plain";

const liftPumpRise = plain(fuel.liftPumpRise);
const supplyReach = fuel.supplyReach as unknown as (reach: {
  readonly tankPressure: number;
  readonly parts: readonly { readonly name: string; readonly change: (flow: number) => number }[];
  readonly leastPressure: number;
  readonly highestFlow: number;
}) => number;
const supplyStations = fuel.supplyStations as unknown as (
  tank: number,
  parts: readonly { readonly name: string; readonly change: (flow: number) => number }[],
  flow: number,
) => readonly { readonly name: string; readonly pressure: number }[];
const drainingTankTemperature = plain(fuel.drainingTankTemperature);
const tankTemperature = plain(fuel.tankTemperature);
const fuelFlowAtLoad = plain(fuel.fuelFlowAtLoad);
const powerOfFuel = plain(fuel.powerOfFuel);
const meanDuty = plain(fuel.meanDuty);
const fuelEndurance = plain(fuel.fuelEndurance);

test("liftPumpRise(pump, flow) meets both of its points and falls in between", () => {
  const pump = { pressureWithoutFlow: 6.5e5, ratedRise: 5.5e5, ratedFlow: 2e-4 };
  expect(liftPumpRise(pump, 0)).toBe(6.5e5);
  expect(liftPumpRise(pump, 2e-4)).toBeCloseTo(5.5e5, 6);
  expect(liftPumpRise(pump, 1e-4)).toBeGreaterThan(5.5e5);
  expect(() => liftPumpRise({ ...pump, pressureWithoutFlow: 5e5 }, 1e-4)).toThrow("pressureWithoutFlow is 5 bar; it must be at least the pressure at the rated flow, 5.5 bar");
});

describe("a supply line", () => {
  const parts = [
    { name: "Suction line", change: (flow: number) => -1e11 * flow ** 2 },
    { name: "Lift pump", change: (flow: number) => 6e5 - 2.5e12 * flow ** 2 },
    { name: "Filter", change: (flow: number) => -3e8 * flow },
  ];
  test("supplyStations adds up part by part", () => {
    const stations = supplyStations(1e5, parts, 1e-4);
    expect(stations.map(({ name }) => name)).toEqual(["Tank", "Suction line", "Lift pump", "Filter"]);
    // By hand: 1 − 0.01 = 0.99; + 6 − 0.25 = 6.74; − 0.3 = 6.44 bar.
    expect(stations.map(({ pressure }) => Number((pressure / 1e5).toFixed(6)))).toEqual([1, 0.99, 6.74, 6.44]);
  });
  test("supplyReach is the flow at which its end just has what it needs", () => {
    const flow = supplyReach({ tankPressure: 1e5, parts, leastPressure: 4.5e5, highestFlow: 1e-2 });
    expect(supplyStations(1e5, parts, flow).at(-1)!.pressure / 4.5e5).toBeCloseTo(1, 6);
    expect(supplyReach({ tankPressure: 1e5, parts, leastPressure: 8e5, highestFlow: 1e-2 })).toBe(0);
    expect(supplyReach({ tankPressure: 1e5, parts, leastPressure: 4.5e5, highestFlow: 1e-5 })).toBe(1e-5);
    // A narrower filter passes less.
    const narrow = [...parts.slice(0, 2), { name: "Filter", change: (each: number) => -9e8 * each }];
    expect(supplyReach({ tankPressure: 1e5, parts: narrow, leastPressure: 4.5e5, highestFlow: 1e-2 })).toBeLessThan(flow);
  });
});

describe("drainingTankTemperature", () => {
  const tank = {
    heat: 2200,
    conductance: 18,
    surroundings: 298.15,
    startMass: 300,
    burnt: 0.03,
    specificHeat: 2000,
    startTemperature: 300,
  };
  test("solves its balance: a march in small steps comes to the same", () => {
    const steps = 20000;
    const time = 7200;
    let temperature = tank.startTemperature;
    for (let i = 0; i < steps; i++) {
      const mass = tank.startMass - tank.burnt * ((i + 0.5) / steps) * time;
      const rate = (at: number) => (tank.heat - tank.conductance * (at - tank.surroundings)) / (mass * tank.specificHeat);
      const half = temperature + (rate(temperature) * time) / steps / 2;
      temperature += (rate(half) * time) / steps;
    }
    expect(drainingTankTemperature(tank, time)).toBeCloseTo(temperature, 5);
  });
  test("is tankTemperature where nothing is burnt, and warmer where the tank empties", () => {
    const steady = { ...tank, fuelMass: 300, time: 5400 };
    expect(drainingTankTemperature({ ...tank, burnt: 0 }, 5400)).toBeCloseTo(tankTemperature(steady), 9);
    expect(drainingTankTemperature(tank, 5400)).toBeGreaterThan(tankTemperature(steady));
    expect(drainingTankTemperature(tank, 0)).toBe(300);
    // Little burnt and little lost are the limits of their formulas.
    expect(drainingTankTemperature({ ...tank, burnt: 1e-9 }, 5400)).toBeCloseTo(tankTemperature(steady), 5);
    expect(drainingTankTemperature({ ...tank, conductance: 1e-9 }, 5400)).toBeCloseTo(
      drainingTankTemperature({ ...tank, conductance: 0 }, 5400),
      6,
    );
  });
  test("refuses a time by which the tank is empty, and NaN", () => {
    expect(() => drainingTankTemperature(tank, 10000)).toThrow("the tank is empty after 10000 s");
    expect(() => drainingTankTemperature({ ...tank, heat: Number.NaN }, 10)).toThrow("heat is NaN W");
  });
});

test("fuelFlowAtLoad is the anchor's at the anchor, that of the losses alone without load, and straight in power", () => {
  const anchor = { fuelFlow: 0.04, brakePower: 700e3, indicatedPower: 840e3 };
  expect(fuelFlowAtLoad(anchor, { speedShare: 1, powerShare: 1 })).toBeCloseTo(0.04, 15);
  // By hand: 140/840 of 40 g/s.
  expect(fuelFlowAtLoad(anchor, { speedShare: 1, powerShare: 0 })).toBeCloseTo(0.04 / 6, 12);
  const half = fuelFlowAtLoad(anchor, { speedShare: 1, powerShare: 0.5 });
  expect(half).toBeCloseTo((0.04 + 0.04 / 6) / 2, 12);
  // Part load costs more for each kilowatt-hour.
  expect(half / 0.5).toBeGreaterThan(0.04);
  expect(fuelFlowAtLoad(anchor, { speedShare: 0, powerShare: 0 })).toBe(0);
  expect(() => fuelFlowAtLoad({ ...anchor, indicatedPower: 600e3 }, { speedShare: 1, powerShare: 1 })).toThrow(
    "indicatedPower above brakePower is -100000 W",
  );
});

test("powerOfFuel gives back the power for which fuelFlowAtLoad asked, and is below zero where the fuel turns nothing", () => {
  const anchor = { fuelFlow: 0.04, brakePower: 700e3, indicatedPower: 840e3 };
  for (const speedShare of [0.2, 0.7, 1, 1.1]) {
    for (const powerShare of [0, 0.3, 1]) {
      const fuelFlow = fuelFlowAtLoad(anchor, { speedShare, powerShare });
      expect(powerOfFuel(anchor, { speedShare, fuelFlow })).toBeCloseTo(700e3 * powerShare, 6);
    }
  }
  // By hand: no fuel leaves the losses, 140 kW at full speed.
  expect(powerOfFuel(anchor, { speedShare: 1, fuelFlow: 0 })).toBeCloseTo(-140e3, 6);
  expect(() => powerOfFuel(anchor, { speedShare: 2, fuelFlow: 0.01 })).toThrow("powerOfFuel: speedShare is 2");
});

test("meanDuty does not care for the scale of its shares, and fuelEndurance empties the tank", () => {
  const phases = [
    { timeShare: 0.2, fuelFlow: 0.04, way: 20 },
    { timeShare: 0.6, fuelFlow: 0.015, way: 12 },
    { timeShare: 0.2, fuelFlow: 0.001, way: 0 },
  ];
  const { fuelFlow, way } = meanDuty(phases);
  // By hand: 8 + 9 + 0.2 g/s, and 4 + 7.2 m/s.
  expect(fuelFlow).toBeCloseTo(0.0172, 12);
  expect(way).toBeCloseTo(11.2, 12);
  const doubled = meanDuty(phases.map((phase) => ({ ...phase, timeShare: 2 * phase.timeShare })));
  expect(gap(doubled.fuelFlow, fuelFlow)).toBeLessThan(1e-14);
  expect(fuelEndurance(344, fuelFlow) * fuelFlow).toBeCloseTo(344, 9);
  expect(() => meanDuty([])).toThrow("sum of timeShare is 0");
});
