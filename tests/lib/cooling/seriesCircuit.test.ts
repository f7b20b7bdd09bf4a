import fc from "fast-check";
import { expect, test } from "vitest";
import { type CircuitExchanger, exchangerOutlets, seriesCircuit } from "../../../lib/cooling";
import type { Power, Temperature, ThermalConductance } from "../../../lib/quantity";

const celsius = (degrees: number) => (degrees + 273.15) as Temperature;

// An invented boat: charge cooler and gear oil before the jacket water, as the coldest need stands first.
const sea = celsius(28);
const seaRate = (3 * 3990) as ThermalConductance;
const line: readonly CircuitExchanger[] = [
  {
    name: "charge cooler",
    arrangement: "crossflowUnmixed",
    heat: 60000 as Power,
    hotCapacityRate: (0.6 * 1010) as ThermalConductance,
    hotTemperature: celsius(150),
    hotTemperatureAt: "inlet",
  },
  {
    name: "gear oil",
    arrangement: "counterflow",
    heat: 9000 as Power,
    hotCapacityRate: (0.4 * 2000) as ThermalConductance,
    hotTemperature: celsius(70),
    hotTemperatureAt: "inlet",
  },
  {
    name: "jacket water",
    arrangement: "shellAndTube",
    heat: 180000 as Power,
    hotCapacityRate: (5 * 3500) as ThermalConductance,
    hotTemperature: celsius(80),
    hotTemperatureAt: "outlet",
  },
];

test("seriesCircuit by hand: nodes, outlets and the pinch of an invented boat", () => {
  const { seaTemperatures, stations, discharge, heat } = seriesCircuit({
    seaTemperature: sea,
    seaCapacityRate: seaRate,
    exchangers: line,
  });
  // 60 kW/11.97 kW/K = 5.0125 K, 9 kW 0.7519 K, 180 kW 15.0376 K.
  expect(seaTemperatures.map((t) => Number((t - 273.15).toFixed(3)))).toEqual([28, 33.013, 33.764, 48.802]);
  expect(discharge).toBe(seaTemperatures[3]);
  expect(heat).toBe(249000);
  const [charge, gear, jacket] = stations;
  expect(charge!.hotOutlet - 273.15).toBeCloseTo(150 - 60000 / 606, 9); // 50.99 °C
  expect(charge!.effectiveness).toBeCloseTo((150 - 50.990099) / (150 - 28), 6);
  expect(charge!.pinch).toBeCloseTo(50.990099 - 28, 5);
  expect(gear!.hotOutlet - 273.15).toBeCloseTo(58.75, 9);
  expect(jacket!.hotInlet - 273.15).toBeCloseTo(80 + 180 / 17.5, 9);
});

test("seriesCircuit asks for the UA with which exchangerOutlets passes the same heat", () => {
  const { stations } = seriesCircuit({ seaTemperature: sea, seaCapacityRate: seaRate, exchangers: line });
  stations.forEach((station, i) => {
    const passed = exchangerOutlets({
      arrangement: line[i]!.arrangement,
      conductance: station.conductance,
      hotInlet: station.hotInlet,
      coldInlet: station.seaInlet,
      hotCapacityRate: line[i]!.hotCapacityRate,
      coldCapacityRate: seaRate,
    });
    expect(passed.heat / station.heat).toBeCloseTo(1, 10);
    expect(passed.hotOutlet).toBeCloseTo(station.hotOutlet, 9);
    expect(passed.coldOutlet).toBeCloseTo(station.seaOutlet, 9);
  });
});

const exchanger = fc.record({
  name: fc.constantFrom("a", "b", "c"),
  arrangement: fc.constantFrom("counterflow", "crossflowUnmixed", "crossflowColdMixed") as fc.Arbitrary<"counterflow">,
  heat: fc.double({ min: 0, max: 40000, noNaN: true }) as fc.Arbitrary<Power>,
  hotCapacityRate: fc.double({ min: 2000, max: 20000, noNaN: true }) as fc.Arbitrary<ThermalConductance>,
  hotTemperature: fc.double({ min: 360, max: 420, noNaN: true }) as fc.Arbitrary<Temperature>,
  hotTemperatureAt: fc.constantFrom("inlet", "outlet") as fc.Arbitrary<"inlet" | "outlet">,
});

test("seriesCircuit closes its balance of heat to 1e-12, over the line and at every exchanger", () => {
  fc.assert(
    fc.property(
      fc.array(exchanger, { minLength: 1, maxLength: 6 }),
      fc.double({ min: 8000, max: 40000, noNaN: true }),
      (exchangers, rate) => {
        const circuit = seriesCircuit({
          seaTemperature: 298.15 as Temperature,
          seaCapacityRate: rate as ThermalConductance,
          exchangers,
        });
        const carriedIn = rate * 298.15;
        const total = exchangers.reduce((sum, each) => sum + each.heat, 0);
        // Relative to the heat that the sea water carries, which is what the digits of a temperature in kelvin stand for.
        expect(Math.abs(rate * (circuit.discharge - 298.15) - total) / carriedIn).toBeLessThan(1e-12);
        expect(Math.abs(circuit.heat - total)).toBeLessThanOrEqual(1e-12 * total);
        for (const [i, each] of circuit.stations.entries()) {
          const { hotCapacityRate } = exchangers[i]!;
          const lost = hotCapacityRate * (each.hotInlet - each.hotOutlet);
          const gained = rate * (each.seaOutlet - each.seaInlet);
          expect(Math.abs(lost - gained) / Math.max(carriedIn, hotCapacityRate * 400)).toBeLessThan(1e-12);
          expect(each.seaInlet).toBe(circuit.seaTemperatures[i]);
          expect(each.seaOutlet).toBe(circuit.seaTemperatures[i + 1]);
        }
      },
    ),
    { seed: 20260101, numRuns: 200 },
  );
});

test("seriesCircuit: an exchanger moved down the line needs more UA", () => {
  const [charge, gear, jacket] = line;
  const need = (exchangers: readonly CircuitExchanger[]) =>
    seriesCircuit({ seaTemperature: sea, seaCapacityRate: seaRate, exchangers }).stations.find(
      ({ name }) => name === "charge cooler",
    )!.conductance;
  expect(need([jacket!, gear!, charge!])).toBeGreaterThan(1.2 * need([charge!, gear!, jacket!]));
});

test("seriesCircuit of no exchangers hands the sea water through", () => {
  const circuit = seriesCircuit({ seaTemperature: sea, seaCapacityRate: seaRate, exchangers: [] });
  expect(circuit).toEqual({ stations: [], seaTemperatures: [sea], discharge: sea, heat: 0 });
});

test("seriesCircuit names the exchanger that cannot do its duty, and the most that it could", () => {
  const tooMuch = [{ ...line[1]!, heat: 40000 as Power }];
  expect(() => seriesCircuit({ seaTemperature: sea, seaCapacityRate: seaRate, exchangers: tooMuch })).toThrow(
    /^seriesCircuit: gear oil: heat is 40000 W; it must be below 33600 W, the most that counterflow allows/,
  );
});
