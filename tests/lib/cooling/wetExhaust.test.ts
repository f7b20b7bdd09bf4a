import fc from "fast-check";
import { expect, test } from "vitest";
import {
  dryExhaustLoss,
  type ExhaustMixInputs,
  exhaustMixSaturated,
  exhaustMixWithoutEvaporation,
  exhaustVapourFraction,
  injectionWater,
} from "../../../lib/cooling";
import { burntGas, dryAir, saturationVapourPressure } from "../../../lib/fluid";
import type {
  Fraction,
  Length,
  MassFlow,
  Pressure,
  Ratio,
  SpecificHeat,
  Temperature,
  VolumeFlow,
} from "../../../lib/quantity";
import published from "../../published/cooling-boat-practice.json";

const ambient = 101325 as Pressure;
const seaHeat = 3990 as SpecificHeat;

// Computed with dry air of NASA's nine coefficients, evaporation neglected. 0.3 K as the table says; ours is the same sum.
test.each(published.mixing)("exhaustMixWithoutEvaporation meets row $id", ({ inputs, expected }) => {
  const { temperature } = exhaustMixWithoutEvaporation({
    gas: dryAir,
    gasFlow: inputs.m_gas_kg_s as MassFlow,
    gasTemperature: inputs.T_gas_K as Temperature,
    waterFlow: inputs.m_water_kg_s as MassFlow,
    waterTemperature: inputs.T_water_in_K as Temperature,
    waterSpecificHeat: (inputs.cp_seawater_kJ_kgK * 1000) as SpecificHeat,
    pressure: ambient,
    vapourFraction: 0 as Fraction,
  });
  expect(Math.abs(temperature - expected.T_mix_K)).toBeLessThan(0.01);
});

// A public installation document, formula as read; its temperature is °C + 273.
test.each(published.dryExhaust)("dryExhaustLoss meets row $id", ({ inputs, expected }) => {
  const loss = dryExhaustLoss({
    volumeFlow: inputs.Q_m3_s as VolumeFlow,
    length: inputs.L_m as Length,
    bore: inputs.D_m as Length,
    temperature: (inputs.T_C + 273.15) as Temperature,
  });
  expect(Math.abs(loss / expected.dp_Pa - 1)).toBeLessThan(1e-8);
});

test("exhaustVapourFraction of diesel at twice the air is about 6.4 %, by hand", () => {
  // Per carbon of CH1.85: 0.925 H₂O over 2 · 1.4625/0.2095 mol of air + 0.4625 from the hydrogen.
  const byHand = 0.925 / ((2 * 1.4625) / 0.2095 + 1.85 / 4);
  // 1e-3 for the fourth digit of oxygen in air.
  expect(Math.abs(exhaustVapourFraction({ excessAirRatio: 2 as Ratio }) / byHand - 1)).toBeLessThan(1e-3);
});

const gas = burntGas({ excessAirRatio: 2 as Ratio });
const vapourFraction = exhaustVapourFraction({ excessAirRatio: 2 as Ratio });
const boat: ExhaustMixInputs = {
  gas,
  gasFlow: 0.4 as MassFlow,
  gasTemperature: 700 as Temperature,
  waterFlow: 1 as MassFlow,
  waterTemperature: 303 as Temperature,
  waterSpecificHeat: seaHeat,
  pressure: ambient,
  vapourFraction,
};

// Steam by another path than the library's: heat of evaporation falls along a straight line, 2501 − 2.42 t kJ/kg (common
// steam-table fit, from memory). 2 % of the gas's heat for that fit and for constant specific heats.
test("exhaustMixSaturated balances when reckoned with plain steam-table figures", () => {
  const { temperature, evaporated } = exhaustMixSaturated(boat);
  const t = temperature - 273.15;
  const gasHeat = 0.4 * (gas.enthalpy(boat.gasTemperature) - gas.enthalpy(temperature));
  const waterHeat = 1 * 3990 * (temperature - 303) + evaporated * (2501e3 - 2420 * t);
  expect(Math.abs(waterHeat / gasHeat - 1)).toBeLessThan(0.02);
  // The gas leaves saturated.
  const molarMass = 8.314462618 / gas.gasConstant;
  const moles = 0.4 / molarMass;
  const vapour = vapourFraction * moles + evaporated / 18.01528e-3;
  const share = vapour / (moles + evaporated / 18.01528e-3);
  expect(share).toBeCloseTo(saturationVapourPressure(temperature) / ambient, 6);
});

test("exhaustMixSaturated with little water boils it all away and stays hot", () => {
  const mix = exhaustMixSaturated({ ...boat, waterFlow: 0.01 as MassFlow });
  expect(mix.liquid).toBe(0);
  expect(mix.temperature).toBeGreaterThan(600);
  expect(mix.temperature).toBeLessThan(700);
});

test("exhaustMixSaturated without water leaves the gas as it is", () => {
  const mix = exhaustMixSaturated({ ...boat, waterFlow: 0 as MassFlow });
  expect(mix.temperature).toBeCloseTo(700, 9);
  expect(mix.gasVolumeFlow).toBeCloseTo((0.4 * gas.gasConstant * 700) / 101325, 9);
});

test("exhaustMixSaturated with plenty of cold water condenses vapour of combustion and so ends warmer", () => {
  const plenty = { ...boat, waterFlow: 8 as MassFlow, waterTemperature: 280 as Temperature };
  const wet = exhaustMixSaturated(plenty);
  expect(wet.evaporated).toBeLessThan(0);
  expect(wet.liquid).toBeGreaterThan(8);
  expect(wet.temperature).toBeGreaterThan(exhaustMixWithoutEvaporation(plenty).temperature);
});

test("exhaustMixSaturated of dry hot gas ends below the mix without evaporation", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 450, max: 950, noNaN: true }),
      fc.double({ min: 0.3, max: 12, noNaN: true }),
      fc.double({ min: 275, max: 310, noNaN: true }),
      (hot, waterPerGas, sea) => {
        const mix: ExhaustMixInputs = {
          ...boat,
          gas: dryAir,
          gasTemperature: hot as Temperature,
          waterFlow: (0.4 * waterPerGas) as MassFlow,
          waterTemperature: sea as Temperature,
          vapourFraction: 0 as Fraction,
        };
        expect(exhaustMixSaturated(mix).temperature).toBeLessThan(exhaustMixWithoutEvaporation(mix).temperature);
      },
    ),
    { seed: 20260101, numRuns: 100 },
  );
});

test("exhaustMixSaturated falls with more water and rises with hotter gas", () => {
  const at = (change: Partial<ExhaustMixInputs>) => exhaustMixSaturated({ ...boat, ...change }).temperature;
  let before = Number.POSITIVE_INFINITY;
  for (const waterFlow of [0, 0.02, 0.1, 0.3, 1, 3, 10]) {
    const t = at({ waterFlow: waterFlow as MassFlow });
    expect(t).toBeLessThan(before);
    before = t;
  }
  expect(at({ gasTemperature: 800 as Temperature })).toBeGreaterThan(at({ gasTemperature: 600 as Temperature }));
});

test("injectionWater brings the mix to its limit: put back in, it gives the limit again", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 450, max: 950, noNaN: true }),
      fc.double({ min: 312, max: 440, noNaN: true }),
      fc.double({ min: 275, max: 308, noNaN: true }),
      (hot, limit, sea) => {
        const given = { ...boat, gasTemperature: hot as Temperature, waterTemperature: sea as Temperature };
        const ask = { ...given, temperatureLimit: limit as Temperature };
        const wet = injectionWater({ ...ask, evaporation: "saturated" });
        expect(exhaustMixSaturated({ ...given, waterFlow: wet }).temperature).toBeCloseTo(limit, 6);
        const dry = injectionWater({ ...ask, evaporation: "none" });
        expect(exhaustMixWithoutEvaporation({ ...given, waterFlow: dry }).temperature).toBeCloseTo(limit, 6);
      },
    ),
    { seed: 20260101, numRuns: 150 },
  );
});

test("injectionWater asks less where water evaporates, if the limit is above the dew point of the exhaust", () => {
  const ask = (evaporation: "saturated" | "none", limit: number) =>
    injectionWater({ ...boat, temperatureLimit: limit as Temperature, evaporation });
  expect(ask("saturated", 333.15)).toBeLessThan(0.8 * ask("none", 333.15));
  // 6.4 % of vapour has its dew point near 37 °C: below, condensing vapour asks for more.
  expect(ask("saturated", 306)).toBeGreaterThan(ask("none", 306));
});

test("injectionWater and the mixes refuse what cannot be", () => {
  expect(() => injectionWater({ ...boat, temperatureLimit: 300 as Temperature, evaporation: "none" })).toThrow(
    "injectionWater: temperatureLimit is 300 K; it must be above the water's 303 K",
  );
  expect(() => exhaustMixSaturated({ ...boat, gasTemperature: Number.NaN as Temperature })).toThrow(
    "gasTemperature is NaN K",
  );
  expect(() => exhaustMixSaturated({ ...boat, gasTemperature: 300 as Temperature })).toThrow("above the dew point");
});
