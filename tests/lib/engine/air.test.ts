import { describe, expect, test } from "vitest";
import {
  airFlowForFuel,
  airMeterLoad,
  ductSpeed,
  humidAirFlow,
  manifoldDensityNeeded,
  manifoldPressureNeeded,
  meterTurnDown,
  restrictionLoss,
  ruleOfThumbAirFlow,
} from "../../../lib/engine";
import { dryAir, roadDiesel, stoichiometricAirFuelRatio } from "../../../lib/fluid";
import type {
  Count,
  Density,
  Fraction,
  Length,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  SpecificFuelConsumption,
  Temperature,
  Volume,
} from "../../../lib/quantity";
import { close } from "../publishedRows";

const poundPerMinute = 0.45359237 / 60; // [kg/s], exact
const horsepower = 745.69987158227; // [W], 550 ft·lbf/s

describe("air for fuel", () => {
  test("dry air and vapour add up", () => {
    const dry = airFlowForFuel({
      fuelFlow: 0.04 as MassFlow,
      excessAirRatio: 1.5 as Ratio,
      stoichiometricAirFuelRatio: 14.5 as Ratio,
    });
    close(dry, 0.87, 1e-12); // by hand
    close(humidAirFlow(dry, 0.01 as Ratio), 0.8787, 1e-12);
  });

  // Common practice, no source: an engine of about 1,400 hp takes 220 to 250 lb/min. Met with a fuel rate of
  // 230 g/(kW·h) and 1.75 to 1.9 times the least air; a leaner fuel rate or less air lies below.
  test.each([1.75, 1.8, 1.9])("1,400 hp at 230 g/(kW·h) and excess air %f takes what the trade says", (excess) => {
    const fuelFlow = ((1400 * horsepower * 230) / 3.6e9) as MassFlow;
    const airFlow = airFlowForFuel({
      fuelFlow,
      excessAirRatio: excess as Ratio,
      stoichiometricAirFuelRatio: stoichiometricAirFuelRatio(roadDiesel),
    });
    expect(airFlow / poundPerMinute).toBeGreaterThan(220);
    expect(airFlow / poundPerMinute).toBeLessThan(250);
  });

  test("ruleOfThumbAirFlow multiplies pounds a minute by horsepower", () => {
    const perHorsepower = ((0.165 * poundPerMinute) / horsepower) as SpecificFuelConsumption;
    close(ruleOfThumbAirFlow((1400 * horsepower) as Power, perHorsepower) / poundPerMinute, 231, 1e-12);
  });
});

describe("breathing", () => {
  const engine = {
    volumetricEfficiency: 0.92 as Fraction,
    displacement: 10.2e-3 as Volume,
    engineSpeed: (3200 / 60) as RotationalSpeed,
  };

  test("manifoldDensityNeeded is the density at which the cylinders hold the flow", () => {
    // by hand: 2 × 1.1 / (0.92 × 0.0102 × 53.3333) = 4.39579
    close(manifoldDensityNeeded({ ...engine, airFlow: 1.1 as MassFlow }), 4.39579, 1e-5);
  });

  test("manifoldPressureNeeded is the inverse of density", () => {
    const pressure = manifoldPressureNeeded(4.4 as Density, 330 as Temperature);
    close(dryAir.density(330 as Temperature, pressure), 4.4, 1e-14);
  });

  test("a filling beyond reason is refused by name", () => {
    expect(() =>
      manifoldDensityNeeded({ ...engine, airFlow: 1 as MassFlow, volumetricEfficiency: 92 as Fraction }),
    ).toThrow("manifoldDensityNeeded: volumetricEfficiency is 92; it must be 0.3 to 1.3");
  });
});

describe("air meters", () => {
  // Common practice, no source: a 4-inch meter behind a 6-inch bellmouth reads up to 62 to 65 lb/min.
  const meterCapacity = (65 * poundPerMinute) as MassFlow;

  test("four meters of 65 lb/min carry 260 lb/min and not a pound more", () => {
    const airFlow = (260 * poundPerMinute) as MassFlow;
    const full = airMeterLoad({ airFlow, meters: 4 as Count, meterCapacity });
    close(full.load, 1, 1e-12);
    expect(Math.abs(full.headroom)).toBeLessThan(1e-12);
    const over = airMeterLoad({ airFlow: (270 * poundPerMinute) as MassFlow, meters: 4 as Count, meterCapacity });
    expect(over.headroom).toBeLessThan(0);
  });

  test("65 lb/min in a 4-inch tube is about 52 m/s, a Mach number of 0.15: modest", () => {
    const tube = ductSpeed({
      massFlow: meterCapacity,
      pressure: 100e3 as Pressure,
      temperature: 298.15 as Temperature,
      diameter: 0.1016 as Length,
    });
    // by hand: 0.49139 / (1.16844 × 0.0081073) = 51.87 m/s; √(1.4 × 287.05 × 298.15) = 346.1 m/s
    close(tube.velocity, 51.87, 1e-3);
    close(tube.machNumber, 51.87 / 346.1, 1e-3);
  });

  test("meterTurnDown from idle", () => expect(meterTurnDown(1.2 as MassFlow, 0.06 as MassFlow)).toBeCloseTo(20, 12));
});

test("restrictionLoss grows with the square of flow and falls with density", () => {
  const rated = { massFlow: 1 as MassFlow, density: 1.2 as Density, pressureLoss: 2000 as PressureDifference };
  expect(restrictionLoss(rated, 1 as MassFlow, 1.2 as Density)).toBe(2000);
  expect(restrictionLoss(rated, 2 as MassFlow, 1.2 as Density)).toBe(8000);
  expect(restrictionLoss(rated, 1 as MassFlow, 2.4 as Density)).toBe(1000);
  expect(() => restrictionLoss(rated, 1 as MassFlow, 0 as Density)).toThrow("restrictionLoss: density is 0 kg/m³");
});
