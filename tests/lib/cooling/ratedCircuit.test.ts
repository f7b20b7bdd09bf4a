import fc from "fast-check";
import { expect, test } from "vitest";
import {
  exchangerOutlets,
  hotInletForHeat,
  type RatedExchanger,
  ratedCircuit,
  seriesCircuit,
} from "../../../lib/cooling";
import type { Power, Temperature, ThermalConductance } from "../../../lib/quantity";

const streams = {
  arrangement: "crossflowUnmixed" as const,
  conductance: 4000 as ThermalConductance,
  coldInlet: 303 as Temperature,
  hotCapacityRate: 8000 as ThermalConductance,
  coldCapacityRate: 10000 as ThermalConductance,
};

test("hotInletForHeat gives back the hot inlet from which exchangerOutlets had its heat", () => {
  const { heat, hotOutlet } = exchangerOutlets({ ...streams, hotInlet: 361 as Temperature });
  const back = hotInletForHeat({ ...streams, heat });
  expect(back.hotInlet).toBeCloseTo(361, 10);
  expect(back.hotOutlet).toBeCloseTo(hotOutlet, 10);
  expect(hotInletForHeat({ ...streams, heat: 0 as Power }).hotInlet).toBe(303);
  expect(() => hotInletForHeat({ ...streams, heat: Number.NaN as Power })).toThrow("heat is NaN W");
});

const seaTemperature = 300 as Temperature;
const seaCapacityRate = 12000 as ThermalConductance;

test("ratedCircuit with the UA of seriesCircuit gives back its temperatures", () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          name: fc.constant("cooler"),
          arrangement: fc.constantFrom(
            "counterflow",
            "crossflowUnmixed",
            "shellAndTube",
          ) as fc.Arbitrary<"counterflow">,
          heat: fc.double({ min: 100, max: 30000, noNaN: true }) as fc.Arbitrary<Power>,
          hotCapacityRate: fc.double({ min: 2000, max: 20000, noNaN: true }) as fc.Arbitrary<ThermalConductance>,
        }),
        { minLength: 1, maxLength: 5 },
      ),
      (coolers) => {
        const wanted = seriesCircuit({
          seaTemperature,
          seaCapacityRate,
          exchangers: coolers.map((each) => ({
            ...each,
            hotTemperature: 380 as Temperature,
            hotTemperatureAt: "inlet" as const,
          })),
        });
        const byHeat = ratedCircuit({
          seaTemperature,
          seaCapacityRate,
          exchangers: coolers.map((each, i) => ({ ...each, conductance: wanted.stations[i]!.conductance })),
        });
        const byTemperature = ratedCircuit({
          seaTemperature,
          seaCapacityRate,
          exchangers: coolers.map(({ heat: _, ...each }, i) => ({
            ...each,
            conductance: wanted.stations[i]!.conductance,
            hotInlet: 380 as Temperature,
          })),
        });
        for (const { stations, discharge } of [byHeat, byTemperature]) {
          expect(discharge).toBeCloseTo(wanted.discharge, 8);
          stations.forEach((station, i) => {
            expect(station.hotInlet).toBeCloseTo(380, 6);
            expect(station.heat / wanted.stations[i]!.heat).toBeCloseTo(1, 9);
            expect(station.pinch).toBeCloseTo(wanted.stations[i]!.pinch, 6);
          });
        }
      },
    ),
    { seed: 20260101, numRuns: 100 },
  );
});

const jacket: RatedExchanger = {
  name: "jacket water",
  arrangement: "shellAndTube",
  heat: 180000 as Power,
  hotCapacityRate: 17500 as ThermalConductance,
  conductance: 6000 as ThermalConductance,
};

test("ratedCircuit: a warmer sea lifts the jacket water degree for degree, half the sea water by more", () => {
  const jacketInlet = (sea: number, rate: number) =>
    ratedCircuit({
      seaTemperature: sea as Temperature,
      seaCapacityRate: rate as ThermalConductance,
      exchangers: [jacket],
    }).stations[0]!.hotInlet;
  expect(jacketInlet(305, 12000) - jacketInlet(300, 12000)).toBeCloseTo(5, 9);
  expect(jacketInlet(300, 6000)).toBeGreaterThan(jacketInlet(300, 12000) + 5);
});

test("ratedCircuit names the exchanger whose hot side is colder than the sea water", () => {
  const { heat: _, ...cold } = jacket as typeof jacket & { heat: Power };
  expect(() =>
    ratedCircuit({ seaTemperature, seaCapacityRate, exchangers: [{ ...cold, hotInlet: 290 as Temperature }] }),
  ).toThrow("ratedCircuit: jacket water: hotInlet is 290 K; it must be");
});
