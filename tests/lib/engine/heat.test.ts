import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  exhaustHeat,
  exhaustTemperature,
  fuelFlowForIndicatedPower,
  heatBalance,
  indicatedPower,
  pumpingPower,
} from "../../../lib/engine";
import { burntGas, dryAir, roadDiesel, stoichiometricAirFuelRatio } from "../../../lib/fluid";
import type {
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
  Volume,
} from "../../../lib/quantity";
import { close } from "../publishedRows";

const seed = 20260101;

describe("exhaustTemperature", () => {
  const excessAirRatio = 1.7 as Ratio;
  const exhaustGas = burntGas({ excessAirRatio });
  const airFlow = 1.1 as MassFlow;
  const fuelFlow = (airFlow / (excessAirRatio * stoichiometricAirFuelRatio(roadDiesel))) as MassFlow;
  const balance = {
    fuelFlow,
    lowerHeatingValue: roadDiesel.lowerHeatingValue,
    airFlow,
    manifoldTemperature: 330 as Temperature,
    charge: dryAir,
    exhaustGas,
  };

  test("closes the first law of the gas for any work and heat", () => {
    const property = fc.property(
      fc.double({ min: 0.3, max: 0.5, noNaN: true }),
      fc.double({ min: 0.05, max: 0.3, noNaN: true }),
      (work, heat) => {
        const fuelPower = fuelFlow * roadDiesel.lowerHeatingValue;
        const netGasPower = (work * fuelPower) as Power;
        const heatToWalls = (heat * fuelPower) as Power;
        const temperature = exhaustTemperature({ ...balance, netGasPower, heatToWalls });
        const out = (airFlow + fuelFlow) * exhaustGas.enthalpy(temperature) + netGasPower + heatToWalls;
        const brought = fuelPower + airFlow * dryAir.enthalpy(330 as Temperature);
        expect(Math.abs(out / brought - 1)).toBeLessThan(1e-12); // rounding of the inverse of enthalpy
      },
    );
    fc.assert(property, { seed, numRuns: 100 });
  });

  test("a watt taken by the blower is a watt less in the exhaust", () => {
    const heatToWalls = 300e3 as Power;
    const exhaust = (netGasPower: number) => {
      const temperature = exhaustTemperature({ ...balance, netGasPower: netGasPower as Power, heatToWalls });
      return (airFlow + fuelFlow) * exhaustGas.enthalpy(temperature);
    };
    close(exhaust(850e3) - exhaust(930e3), 80e3, 1e-9);
  });

  test("without work, heat and fuel the air leaves as warm as it came", () => {
    const idle = { ...balance, fuelFlow: 0 as MassFlow, netGasPower: 0 as Power, heatToWalls: 0 as Power };
    close(exhaustTemperature({ ...idle, exhaustGas: dryAir }), 330, 1e-12);
  });

  test("more work than fuel is refused by the gas's span", () => {
    const heatToWalls = 300e3 as Power;
    expect(() => exhaustTemperature({ ...balance, netGasPower: 5e6 as Power, heatToWalls })).toThrow(RangeError);
  });

  test("exhaustHeat of air that leaves at the temperature of the surroundings is nothing", () => {
    const air = { airFlow, ambientTemperature: 290 as Temperature, charge: dryAir, exhaustGas: dryAir };
    const heat = exhaustHeat({ ...air, exhaustFlow: airFlow, exhaustTemperature: 290 as Temperature });
    expect(Math.abs(heat)).toBeLessThan(1e-9);
  });
});

describe("pumpingPower", () => {
  const engine = { displacement: 0.01 as Volume, engineSpeed: 50 as RotationalSpeed };
  const pressures = { exhaustPressure: 3e5 as Pressure, manifoldPressure: 4e5 as Pressure };

  test("is negative where the manifold pushes the pistons, and 0 where that gain does not count", () => {
    expect(pumpingPower({ ...engine, ...pressures })).toBe(-25000); // by hand: −1 bar × 10 l × 25/s
    expect(pumpingPower({ ...engine, ...pressures, gainCounts: false })).toBe(0);
  });

  test("a loss counts either way, with the valves on top", () => {
    const against = { exhaustPressure: 4e5 as Pressure, manifoldPressure: 3e5 as Pressure };
    expect(pumpingPower({ ...engine, ...against, gainCounts: false })).toBe(25000);
    expect(pumpingPower({ ...engine, ...against, valveLoss: 20e3 as PressureDifference })).toBe(30000);
  });
});

test("fuelFlowForIndicatedPower and indicatedPower by hand", () => {
  const takers = {
    brakePower: 700e3 as Power,
    frictionPower: 90e3 as Power,
    accessoryPower: 5e3 as Power,
    blowerPower: 80e3 as Power,
    pumpingPower: -20e3 as Power,
    fuelPumpPower: 12e3 as Power,
  };
  expect(indicatedPower(takers)).toBe(867e3);
  const lowerHeatingValue = 42.5e6 as SpecificEnergy;
  const fuelFlow = fuelFlowForIndicatedPower({
    indicatedPower: indicatedPower(takers),
    grossIndicatedEfficiency: 0.45 as Fraction,
    lowerHeatingValue,
  });
  close(fuelFlow, 867 / (0.45 * 42500), 1e-14);
});

describe("heatBalance", () => {
  const pieces = {
    fuelPower: 1000 as Power,
    brakePower: 400 as Power,
    accessoryPower: 10 as Power,
    fuelPumpPower: 5 as Power,
    frictionPower: 60 as Power,
    heatToWalls: 150 as Power,
    chargeCoolerHeat: 80 as Power,
    exhaustHeat: 280 as Power,
    blowerMechanicalLoss: 8 as Power,
    turbochargerMechanicalLoss: 2 as Power,
    frictionHeatToOil: 0.5 as Fraction,
    wallHeatToOil: 0.2 as Fraction,
    wallHeatRadiated: 0.1 as Fraction,
  };

  test("shares friction and wall heat between jacket, oil and radiation", () => {
    const lines = Object.fromEntries(heatBalance(pieces).parts.map(({ key, power }) => [key, power]));
    expect(lines).toMatchObject({ oil: 60, radiation: 15, jacket: 135 }); // by hand
  });

  test("tells what is missing and hides nothing", () => {
    expect(heatBalance(pieces).unaccounted).toBeCloseTo(5, 9); // 1000 less 995
  });

  test("wall heat cannot be given away twice", () => {
    const twice = { ...pieces, wallHeatToOil: 0.7 as Fraction, wallHeatRadiated: 0.5 as Fraction };
    expect(() => heatBalance(twice)).toThrow("wallHeatToOil and wallHeatRadiated together is 1.2");
  });
});
