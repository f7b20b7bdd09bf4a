import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cleanliness,
  conductanceForHeat,
  exchangerOutlets,
  fouledConductance,
  heatCapacityRate,
  logMeanTemperatureDifference,
  outletsAtEffectiveness,
  type StreamArrangement,
} from "../../../lib/cooling";
import type {
  Area,
  Fraction,
  MassFlow,
  Power,
  SpecificHeat,
  Temperature,
  ThermalConductance,
} from "../../../lib/quantity";
import published from "../../published/cooling-exchangers.json";

const celsius = (degrees: number) => (degrees + 273.15) as Temperature;
const rate = (flow: number, heat: number) => heatCapacityRate(flow as MassFlow, heat as SpecificHeat);

function textbook(id: string) {
  const row = published.textbook.find((each) => each.id === id)!;
  return { inputs: row.inputs as unknown as Record<string, number>, expected: row.expected as Record<string, number> };
}

// Incropera et al., example 11.1 (answers from memory; 65.9 to 66.5 m by edition). 1 %: the book rounds heat and mean.
test("conductanceForHeat meets the textbook's counterflow oil cooler", () => {
  const { inputs, expected } = textbook("09-142");
  const oil = rate(inputs["oil_kg_s"]!, inputs["oil_cp"]!);
  const need = conductanceForHeat({
    arrangement: "counterflow",
    heat: (oil * (inputs["oil_in_C"]! - inputs["oil_out_C"]!)) as Power,
    hotInlet: celsius(inputs["oil_in_C"]!),
    coldInlet: celsius(inputs["water_in_C"]!),
    hotCapacityRate: oil,
    coldCapacityRate: rate(inputs["water_kg_s"]!, inputs["water_cp"]!),
  });
  const length = need.conductance / (inputs["U_W_m2K"]! * Math.PI * inputs["D_inner_m"]!);
  expect(need.heat).toBeCloseTo(expected["Q_W"]!, 0);
  expect(need.coldOutlet - 273.15).toBeCloseTo(expected["water_out_C"]!, 1);
  expect(Math.abs(length / expected["length_m"]! - 1)).toBeLessThan(0.01);
});

// Som, Introduction to Heat Transfer, example 10.7, recomputed with the approximate crossflow; air is the smaller side.
test("exchangerOutlets meets the textbook's crossflow air cooler", () => {
  const { inputs, expected } = textbook("09-146");
  const cooler = {
    hotInlet: celsius(inputs["air_in_C"]!),
    coldInlet: celsius(inputs["water_in_C"]!),
    hotCapacityRate: rate(inputs["air_kg_s"]!, inputs["air_cp"]!),
    coldCapacityRate: rate(inputs["water_kg_s"]!, inputs["water_cp"]!),
    conductance: (inputs["U_W_m2K"]! * inputs["A_m2"]!) as ThermalConductance,
  };
  const common = exchangerOutlets({ arrangement: "crossflowUnmixedApproximate", ...cooler });
  expect(common.transferUnits).toBeCloseTo(expected["NTU"]!, 7);
  const exact = exchangerOutlets({ arrangement: "crossflowUnmixed", ...cooler });
  // The row holds one of the two; both lie within the book's rounding.
  for (const { effectiveness, hotOutlet } of [common, exact]) {
    expect(Math.abs(effectiveness / expected["eff"]! - 1)).toBeLessThan(0.01);
    expect(Math.abs(hotOutlet - 273.15 - expected["air_out_C"]!)).toBeLessThan(1);
  }
});

// A thermodynamics text, problem 11.24, in US units (read, recomputed). 1 ft² = 0.09290304 m², 1 Btu/(h·°F) = 0.52752792631 W/K.
test("conductanceForHeat meets the textbook's oil cooler in US units", () => {
  const { inputs, expected } = textbook("09-147");
  const wattPerKelvin = 1055.05585262 / 3600 / (5 / 9);
  const fahrenheit = (degrees: number) => ((degrees + 459.67) / 1.8) as Temperature;
  const oilRate = inputs["oil_lb_min"]! * 60 * inputs["oil_cp_Btu_lbF"]! * wattPerKelvin;
  const heat = (oilRate * (inputs["oil_in_F"]! - inputs["oil_out_F"]!)) / 1.8;
  const waterRate = heat / ((inputs["water_out_F"]! - inputs["water_in_F"]!) / 1.8);
  const need = conductanceForHeat({
    arrangement: "counterflow",
    heat: heat as Power,
    hotInlet: fahrenheit(inputs["oil_in_F"]!),
    coldInlet: fahrenheit(inputs["water_in_F"]!),
    hotCapacityRate: oilRate as ThermalConductance,
    coldCapacityRate: waterRate as ThermalConductance,
  });
  const area = need.conductance / wattPerKelvin / inputs["U_Btu_h_ft2_F"]!;
  expect((need.heat / 1055.05585262) * 3600).toBeCloseTo(expected["Q_Btu_h"]!, 3);
  expect(area).toBeCloseTo(expected["A_ft2"]!, 5);
});

// Definition of effectiveness, with air as the smaller side.
test.each(published.chargeCooler)("outletsAtEffectiveness meets row $id of a charge cooler", ({ inputs, expected }) => {
  const cooler = outletsAtEffectiveness({
    arrangement: "crossflowUnmixed",
    effectiveness: inputs.effectiveness as Fraction,
    hotInlet: inputs.T_air_in_K as Temperature,
    coldInlet: inputs.T_coolant_in_K as Temperature,
    hotCapacityRate: rate(inputs.m_air_kg_s, inputs.cp_air_J_kgK),
    coldCapacityRate: rate(3, 3990),
  });
  expect(cooler.hotOutlet).toBeCloseTo(expected.T_air_out_K, 10);
  expect(cooler.heat).toBeCloseTo(expected.Q_W, 8);
});

const arrangements: readonly StreamArrangement[] = [
  "counterflow",
  "parallelFlow",
  "crossflowUnmixed",
  "crossflowUnmixedApproximate",
  "crossflowHotMixed",
  "crossflowColdMixed",
  "shellAndTube",
];
const streams = fc.record({
  arrangement: fc.constantFrom(...arrangements),
  hotInlet: fc.double({ min: 320, max: 500, noNaN: true }) as fc.Arbitrary<Temperature>,
  coldInlet: fc.double({ min: 275, max: 315, noNaN: true }) as fc.Arbitrary<Temperature>,
  hotCapacityRate: fc.double({ min: 100, max: 50000, noNaN: true }) as fc.Arbitrary<ThermalConductance>,
  coldCapacityRate: fc.double({ min: 100, max: 50000, noNaN: true }) as fc.Arbitrary<ThermalConductance>,
});
const conductance = fc.double({ min: 10, max: 50000, noNaN: true }) as fc.Arbitrary<ThermalConductance>;
const seed = 20260101;

test("exchangerOutlets: what one stream loses the other gains, and neither passes the other's inlet", () => {
  fc.assert(
    fc.property(streams, conductance, (given, ua) => {
      const { heat, hotOutlet, coldOutlet } = exchangerOutlets({ ...given, conductance: ua });
      // Temperatures of some 300 K carry 1e-13 K of rounding.
      expect(Math.abs(given.hotCapacityRate * (given.hotInlet - hotOutlet) - heat)).toBeLessThan(
        given.hotCapacityRate * 3e-13,
      );
      expect(Math.abs(given.coldCapacityRate * (coldOutlet - given.coldInlet) - heat)).toBeLessThan(
        given.coldCapacityRate * 3e-13,
      );
      expect(hotOutlet).toBeGreaterThanOrEqual(given.coldInlet - 1e-12);
      expect(coldOutlet).toBeLessThanOrEqual(given.hotInlet + 1e-12);
    }),
    { seed, numRuns: 300 },
  );
});

test("conductanceForHeat gives back the UA that exchangerOutlets was given", () => {
  fc.assert(
    fc.property(streams, fc.double({ min: 0.01, max: 3, noNaN: true }), (given, units) => {
      const ua = (units * Math.min(given.hotCapacityRate, given.coldCapacityRate)) as ThermalConductance;
      const { heat } = exchangerOutlets({ ...given, conductance: ua });
      // With three transfer units at most, the last digits of the heat are worth few in UA.
      expect(conductanceForHeat({ ...given, heat }).conductance / ua).toBeCloseTo(1, 9);
    }),
    { seed, numRuns: 300 },
  );
});

test("exchangerOutlets in counterflow passes UA times the log mean", () => {
  const given = {
    hotInlet: celsius(90),
    coldInlet: celsius(25),
    hotCapacityRate: 9000 as ThermalConductance,
    coldCapacityRate: 14000 as ThermalConductance,
  };
  for (const arrangement of ["counterflow", "parallelFlow"] as const) {
    const { heat, hotOutlet, coldOutlet } = exchangerOutlets({
      arrangement,
      ...given,
      conductance: 11000 as ThermalConductance,
    });
    const mean = logMeanTemperatureDifference({ arrangement, ...given, hotOutlet, coldOutlet });
    expect(heat / (11000 * mean)).toBeCloseTo(1, 12);
  }
});

test("exchangerOutlets of a mixed crossflow has no step where the streams change rank", () => {
  const at = (hot: number) =>
    exchangerOutlets({
      arrangement: "crossflowHotMixed",
      hotInlet: celsius(90),
      coldInlet: celsius(20),
      hotCapacityRate: hot as ThermalConductance,
      coldCapacityRate: 5000 as ThermalConductance,
      conductance: 9000 as ThermalConductance,
    }).heat;
  expect(at(5000 * (1 - 1e-9)) / at(5000 * (1 + 1e-9))).toBeCloseTo(1, 8);
});

test("conductanceForHeat refuses a duty out of reach, by name and with the largest possible", () => {
  const ask = (arrangement: StreamArrangement, heat: number) => () =>
    conductanceForHeat({
      arrangement,
      heat: heat as Power,
      hotInlet: 360 as Temperature,
      coldInlet: 300 as Temperature,
      hotCapacityRate: 4000 as ThermalConductance,
      coldCapacityRate: 4000 as ThermalConductance,
    });
  expect(ask("counterflow", 240000)).toThrow(
    "conductanceForHeat: heat is 240000 W; it must be below 240000 W, the most that counterflow allows between 360 K and 300 K",
  );
  expect(ask("parallelFlow", 130000)).toThrow("it must be below 120000 W, the most that parallelFlow allows");
  expect(ask("parallelFlow", 119000)).not.toThrow();
  expect(ask("counterflow", Number.NaN)).toThrow(RangeError);
});

test("conductanceForHeat of no heat is 0, even between equal temperatures", () => {
  const need = conductanceForHeat({
    arrangement: "shellAndTube",
    heat: 0 as Power,
    hotInlet: 300 as Temperature,
    coldInlet: 300 as Temperature,
    hotCapacityRate: 4000 as ThermalConductance,
    coldCapacityRate: 5000 as ThermalConductance,
  });
  expect(need.conductance).toBe(0);
  expect(need.hotOutlet).toBe(300);
});

test("exchangerOutlets refuses a hot stream that is the colder one", () => {
  expect(() =>
    exchangerOutlets({
      arrangement: "counterflow",
      hotInlet: 290 as Temperature,
      coldInlet: 300 as Temperature,
      hotCapacityRate: 4000 as ThermalConductance,
      coldCapacityRate: 5000 as ThermalConductance,
      conductance: 1000 as ThermalConductance,
    }),
  ).toThrow("exchangerOutlets: hotInlet is 290 K; it must be");
});

test("fouledConductance adds the resistances; cleanliness is their share", () => {
  const surface = { cleanConductance: 5000 as ThermalConductance, area: 4 as Area, foulingResistance: 2e-4 };
  // By hand: 1/5000 + 0.0002/4 = 0.00025.
  expect(fouledConductance(surface)).toBeCloseTo(4000, 9);
  expect(cleanliness(surface)).toBeCloseTo(0.8, 12);
  expect(cleanliness({ ...surface, foulingResistance: 0 })).toBe(1);
  expect(() => fouledConductance({ ...surface, foulingResistance: -1e-4 })).toThrow("foulingResistance is -0.0001");
});
