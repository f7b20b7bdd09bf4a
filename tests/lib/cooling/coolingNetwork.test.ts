import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type CoolingNetworkInputs,
  closedCircuit,
  conductanceAtFlow,
  coolingNetwork,
  exchangerOutlets,
  heatPassed,
  type LineElement,
  ratedCircuit,
} from "../../../lib/cooling";

const rated = (name: string, heat: number, change: object = {}): LineElement =>
  ({
    name,
    beside: false,
    share: 1,
    duty: {
      kind: "rated",
      heat,
      arrangement: "counterflow",
      exchanger: { conductance: 4000, coldShare: 0.5 },
      fouling: 0,
      hotCapacityRate: 9000,
      hotRatio: 1,
    },
    ...change,
  }) as unknown as LineElement;

const line = (elements: readonly LineElement[], change: object = {}) =>
  coolingNetwork({
    seaTemperature: 303,
    seaCapacityRate: 18000,
    flowRatio: 1,
    elements,
    ...change,
  } as unknown as CoolingNetworkInputs);

describe("conductanceAtFlow(rated, duty)", () => {
  const exchanger = { conductance: 4000, coldShare: 0.5 } as never;
  const at = (duty: object) => conductanceAtFlow(exchanger, { coldRatio: 1, hotRatio: 1, ...duty } as never);

  test("gives the rated value at the rated flows, falls with either flow and with fouling, and is 0 at rest", () => {
    expect(at({})).toBeCloseTo(4000, 9);
    expect(at({ coldRatio: 0.5 })).toBeLessThan(4000);
    expect(at({ hotRatio: 0.5 })).toBeGreaterThan(at({ coldRatio: 0.5 })); // 0.6 against 0.8
    expect(at({ fouling: 0.25 })).toBeCloseTo(3200, 9);
    expect(at({ hotRatio: 0 })).toBe(0);
    expect(() => at({ coldRatio: -1 })).toThrow("coldRatio is -1");
  });

  test("with all the resistance on one side follows that side's exponent", () => {
    // Dittus and Boelter: half the flow leaves 0.5^0.8 = 0.574 of the coefficient.
    const cold = conductanceAtFlow(
      { conductance: 1000, coldShare: 1 } as never,
      { coldRatio: 0.5, hotRatio: 1 } as never,
    );
    expect(cold).toBeCloseTo(574.349, 3);
    const hot = conductanceAtFlow(
      { conductance: 1000, coldShare: 0 } as never,
      { coldRatio: 1, hotRatio: 0.5 } as never,
    );
    expect(hot).toBeCloseTo(659.754, 3); // 0.5^0.6
  });
});

describe("closedCircuit(circuit)", () => {
  const circuit = {
    heat: 130e3,
    capacityRate: 29000,
    flowRatio: 1,
    control: { opens: 344, fullyOpen: 356 },
    arrangement: "counterflow",
    exchanger: { conductance: 5000, coldShare: 0.5 },
    fouling: 0.1,
    coldInlet: 310,
    coldCapacityRate: 18000,
    coldRatio: 1,
  } as const;
  const at = (change: object) => closedCircuit({ ...circuit, ...change } as never);

  test("passes the heat to within 1e-9, wherever its thermostat stands", () => {
    fc.assert(
      fc.property(
        fc.record({
          heat: fc.double({ min: 1000, max: 4e5, noNaN: true }),
          coldInlet: fc.double({ min: 272, max: 330, noNaN: true }),
          flowRatio: fc.double({ min: 0.2, max: 1.2, noNaN: true }),
          coldRatio: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
        }),
        (change) => {
          const found = at(change);
          expect(Math.abs(found.heat / change.heat - 1)).toBeLessThan(1e-9);
          // first law on both sides, from the temperatures
          expect(circuit.capacityRate * (found.hot - found.mixed)).toBeCloseTo(change.heat, 3);
          expect(circuit.coldCapacityRate * (found.coldOutlet - change.coldInlet)).toBeCloseTo(change.heat, 3);
        },
      ),
      { seed: 20260101, numRuns: 200 },
    );
  });

  test("lets the thermostat hold the heat as long as it can, and then grows hot in proportion", () => {
    const held = at({});
    expect(held.hot).toBeGreaterThan(344);
    expect(held.hot).toBeLessThan(356);
    expect(held.opening).toBeCloseTo((held.hot - 344) / 12, 12);
    const [hot, hotter] = [at({ heat: 300e3 }), at({ heat: 400e3 })];
    expect(hot.opening).toBe(1);
    expect((hotter.hot - 310) / (hot.hot - 310)).toBeCloseTo(4 / 3, 9);
  });

  test("mixes bypass and exchanger: the share through it times its drop is the drop of the whole", () => {
    const { hot, exchangerOutlet, mixed, opening } = at({});
    expect(opening * (hot - exchangerOutlet)).toBeCloseTo(hot - mixed, 9);
  });

  test("with all of the flow through the exchanger is exchangerOutlets", () => {
    const found = at({ control: 1, fouling: 0 });
    const alone = exchangerOutlets({
      arrangement: "counterflow",
      conductance: 5000,
      hotInlet: found.hot,
      coldInlet: 310,
      hotCapacityRate: 29000,
      coldCapacityRate: 18000,
    } as never);
    expect(alone.heat).toBeCloseTo(130e3, 3);
    expect(alone.hotOutlet).toBeCloseTo(found.exchangerOutlet, 9);
  });

  test("says that nothing is passed by a stuck thermostat or a standing stream", () => {
    expect(() => at({ control: 0 })).toThrow("passes nothing of 130 kW");
    expect(() => at({ coldRatio: 0 })).toThrow("passes nothing of 130 kW");
    expect(heatPassed({ ...circuit, control: 0 } as never)(370 as never).heat).toBe(0);
    expect(() => at({ heat: Number.NaN })).toThrow("heat is NaN W");
  });

  test("reaches the temperature of open water without warming it, as a keel cooler does", () => {
    const keel = at({ coldCapacityRate: Number.POSITIVE_INFINITY, control: 1 });
    expect(keel.coldOutlet).toBeCloseTo(310, 6);
    // one stream of infinite capacity: ε = 1 − e^(−UA/C)
    const conductance = 5000 / 1.1;
    const effectiveness = 1 - Math.exp(-conductance / 29000);
    expect(keel.hot).toBeCloseTo(310 + 130e3 / (effectiveness * 29000), 6);
  });
});

describe("coolingNetwork(network)", () => {
  test("in series is ratedCircuit", () => {
    const elements = [rated("fuel", 4000), rated("oil", 58e3), rated("jacket", 130e3)];
    const series = ratedCircuit({
      seaTemperature: 303,
      seaCapacityRate: 18000,
      exchangers: elements.map(({ name, duty }) => ({
        name,
        arrangement: "counterflow",
        heat: (duty as { heat: number }).heat,
        hotCapacityRate: 9000,
        conductance: 4000,
      })),
    } as never);
    const network = line(elements);
    expect(network.discharge).toBeCloseTo(series.discharge, 12);
    network.stations.forEach((station, i) => {
      expect(station.hotInlet).toBeCloseTo(series.stations[i]!.hotInlet, 9);
    });
  });

  test("closes its energy balances to 1e-9 in any order, with any branches", () => {
    const anyLine = fc.array(
      fc.record({
        heat: fc.double({ min: 500, max: 1.5e5, noNaN: true }),
        share: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        beside: fc.boolean(),
      }),
      { minLength: 1, maxLength: 8 },
    );
    let answered = 0;
    fc.assert(
      fc.property(anyLine, (elements) => {
        let network: ReturnType<typeof line>;
        try {
          network = line(elements.map(({ heat, ...where }, i) => rated(`cooler ${i}`, heat, where)));
        } catch (error) {
          expect((error as Error).message).toContain("beside each other");
          return;
        }
        answered++;
        expect(network.residual).toBeLessThan(1e-9);
        const all = elements.reduce((sum, { heat }) => sum + heat, 0);
        expect(Math.abs(18000 * (network.discharge - 303) - all)).toBeLessThan(1e-9 * all + 1e-6);
      }),
      { seed: 20260101, numRuns: 200 },
    );
    expect(answered).toBeGreaterThan(80);
  });

  test("leaves the discharge as it is whatever the order, and gives the coldest water to the first", () => {
    const [a, b] = [rated("oil", 60e3), rated("jacket", 130e3)];
    const [ab, ba] = [line([a, b]), line([b, a])];
    expect(ab.discharge).toBeCloseTo(ba.discharge, 12);
    expect(ab.stations[0]!.hotInlet).toBeLessThan(ba.stations[1]!.hotInlet);
  });

  test("warms a branch by its own share, and the trunk by all of it", () => {
    const { nodes } = line([
      rated("fuel", 4500, { share: 0.25 }),
      rated("gear", 13500, { share: 0.5, beside: true }),
      rated("oil", 18000),
    ]);
    const [fuel, gear, oil] = nodes;
    expect([fuel!.group, gear!.group, oil!.group]).toEqual([0, 0, 1]);
    expect(fuel!.seaOutlet).toBeCloseTo(303 + 4500 / 4500, 12);
    expect(gear!.seaInlet).toBe(303);
    expect(gear!.seaOutlet).toBeCloseTo(303 + 13500 / 9000, 12);
    expect(gear!.trunkOutlet).toBeCloseTo(304, 12); // 18 kW in 18 kW/K, the idle quarter mixed in
    expect(oil!.seaInlet).toBe(gear!.trunkOutlet);
  });

  test("names what cannot be: too large shares, and a charge colder than its water", () => {
    const beside = [rated("Fuel", 1, { share: 0.6 }), rated("Gear", 1, { share: 0.6, beside: true })];
    expect(() => line(beside)).toThrow("fuel and gear lie beside each other and take 120 % of the flow together");
    const charge = {
      name: "Aftercooler",
      beside: false,
      share: 1,
      duty: { kind: "given", heat: 50e3, arrangement: "counterflow", hotInlet: 350, hotCapacityRate: 1000 },
    } as unknown as LineElement;
    expect(() => line([charge])).toThrow("the aftercooler brings its stream to 26.9 °C, which sea water of 29.9 °C");
    expect(() => line([], { seaCapacityRate: 0 })).toThrow("seaCapacityRate is 0 W/K");
    expect(line([]).discharge).toBe(303);
  });
});
