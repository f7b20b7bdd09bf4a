import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Cell, cell, compile, graphOf, type InputValues, isRefusal, Refusal, sameValue } from "../../../lib/graph";
import * as fixture from "./fixture";
import { airDemand, declared, of } from "./fixture";

const program = compile(airDemand);

/** A cell of its own on the rated power, for what the fixture never does. */
const onPower = (key: string, compute: (power: number) => number) =>
  cell(key, {
    label: `The ${key}`,
    kind: "power",
    symbol: "x",
    from: { power: fixture.ratedPower },
    compute: ({ power }) => of("power", compute(power)),
    formula: "x",
    source: "definition",
  });

describe("compile(graph).run(inputs)", () => {
  test("gives the chain worked by hand", () => {
    const at = program.run(declared);
    // 700 kW at 5.9e-8 kg/J is 0.0413 kg/s of fuel; 24 times that is 0.9912 kg/s of air.
    expect(at.require(fixture.fuelFlow)).toBeCloseTo(0.0413, 12);
    expect(at.require(fixture.airFlow)).toBeCloseTo(0.9912, 12);
    // 15 litres, half of them filled in each of 35 turns a second: 0.2625 m³/s, of which 90 % draw.
    expect(at.require(fixture.sweptFlow)).toBeCloseTo(0.2625, 12);
    expect(at.require(fixture.chargeDensity)).toBeCloseTo(4.195556, 6);
    // 700 kW over 0.2625 m³/s is 26.67 bar; over 2π·35 rad/s it is 3183 N·m.
    expect(at.require(fixture.meanPressure)).toBeCloseTo(2.666667e6, 0);
    expect(at.require(fixture.torque)).toBeCloseTo(3183.1, 1);
    // 60 teeth on the crank: 40 teeth turn 1.5 times as fast, 24 teeth 2.5 times.
    expect(at.require(fixture.pulleys).map(({ speed }) => speed)).toEqual([52.5, 87.5]);
    expect(at.require(fixture.accessoryPower)).toBe(15e3);
  });

  test("keeps the values in the order of the graph's nodes", () => {
    const at = program.run(declared);
    expect(at.values).toHaveLength(airDemand.nodes.length);
    for (const [index, node] of airDemand.nodes.entries()) expect(at.get(node)).toBe(at.values[index]);
  });

  test("refuses to start without a value for every input, naming the one that lacks", () => {
    const { airFuelRatio: _left, ...rest } = declared;
    expect(() => program.run(rest)).toThrow('graph: no value for the input "airFuelRatio"');
  });

  test("does not know nodes of other graphs", () => {
    const stranger = onPower("stranger", (power) => power);
    expect(() => program.run(declared).get(stranger)).toThrow('graph: it holds no "stranger"');
  });
});

describe("a cell that refuses", () => {
  // Half the fuel asks for less air than the engine draws unblown: no pressure ratio, and nothing that follows from it.
  const at = program.run({ ...declared, ratedPower: 60e3 });
  const dependants: readonly Cell[] = [
    fixture.stageRatio,
    fixture.stageRise,
    fixture.deliveryTemperature,
    fixture.chargeTemperature,
    fixture.compressorPower,
    fixture.coolerDuty,
    fixture.coolerRoom,
  ];

  test("gives its reason as its value", () => {
    const refusal = at.get(fixture.pressureRatio);
    expect(refusal).toBeInstanceOf(Refusal);
    expect(refusal).toMatchObject({
      root: "pressureRatio",
      message: "pressureRatio: ratio is 0.335; it must be at least 1",
      fault: false,
    });
    expect(() => at.require(fixture.pressureRatio)).toThrow(
      new RangeError("pressureRatio: ratio is 0.335; it must be at least 1"),
    );
  });

  test("stops its dependants, near and far, each of which names the root", () => {
    const refusal = at.get(fixture.pressureRatio);
    for (const dependant of dependants) expect(at.get(dependant)).toBe(refusal);
  });

  test("stops nothing else", () => {
    const stopped = new Set(airDemand.cells.filter((node) => isRefusal(at.get(node))).map(({ key }) => key));
    expect(stopped).toEqual(new Set(["pressureRatio", ...dependants.map(({ key }) => key)]));
  });

  test("lets its dependants answer again when it does", () => {
    const { evaluation, changed } = program.rerun(at, { ratedPower: 700e3 });
    expect(evaluation.values).toEqual(program.run(declared).values);
    for (const dependant of dependants) expect(changed).toContain(airDemand.position.get(dependant.key));
  });
});

describe("a cell that gives no finite number", () => {
  test.each([
    ["NaN", Number.NaN],
    ["infinity", Number.POSITIVE_INFINITY],
    ["minus infinity", Number.NEGATIVE_INFINITY],
  ])("refuses by name in place of %s", (_word, result) => {
    const broken = onPower("broken", () => result);
    const { run } = compile(graphOf([fixture.ratedPower, broken]));
    expect(run({ ratedPower: 1e5 }).get(broken)).toEqual(
      new Refusal("broken", "The broken is not a finite number with these inputs", false),
    );
  });
});

describe("a cell that breaks", () => {
  test("is marked as a fault, which a range error is not", () => {
    const faulty = onPower("faulty", () => {
      throw new TypeError("power.toWatts is not a function");
    });
    const odd = onPower("odd", () => {
      throw "no words";
    });
    const bounded = onPower("bounded", (power) => {
      throw new RangeError(`bounded: power is ${power} W`);
    });
    const at = compile(graphOf([fixture.ratedPower, faulty, odd, bounded])).run({ ratedPower: 5 });
    expect(at.get(faulty)).toEqual(new Refusal("faulty", "power.toWatts is not a function", true));
    expect(at.get(odd)).toEqual(new Refusal("odd", "no words", true));
    expect(at.get(bounded)).toEqual(new Refusal("bounded", "bounded: power is 5 W", false));
  });
});

/** Moves of the inputs, some of which leave no pressure ratio above one. */
const moves: fc.Arbitrary<InputValues> = fc.record(
  {
    ratedPower: fc.double({ min: 50e3, max: 2000e3, noNaN: true }),
    engineSpeed: fc.double({ min: 5, max: 60, noNaN: true }),
    airFuelRatio: fc.double({ min: 14, max: 60, noNaN: true }),
    ambientTemperature: fc.double({ min: 220, max: 330, noNaN: true }),
    effectiveness: fc.double({ min: 0, max: 1, noNaN: true }),
    meterCapacity: fc.double({ min: 0.05, max: 5, noNaN: true }),
    cylinders: fc.integer({ min: 1, max: 16 }),
    stages: fc.constantFrom("one", "two"),
    accessoryRun: fc.array(
      fc.record({
        name: fc.constantFrom("fan", "pump", "alternator"),
        drive: fc.constantFrom("belt", "gear"),
        teeth: fc.integer({ min: 10, max: 120 }),
        load: fc.double({ min: 0, max: 1e5, noNaN: true }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  },
  { requiredKeys: [] },
);

describe("compile(graph).rerun(previous, changes)", () => {
  test("gives what a run from the start gives, bit for bit, over any moves one after another", () => {
    let refusals = 0;
    fc.assert(
      fc.property(fc.array(moves, { minLength: 1, maxLength: 12 }), (path) => {
        let inputs: InputValues = declared;
        let at = program.run(inputs);
        for (const move of path) {
          inputs = { ...inputs, ...move };
          at = program.rerun(at, move).evaluation;
          const afresh = program.run(inputs);
          expect(at.values).toEqual(afresh.values);
          if (isRefusal(afresh.get(fixture.pressureRatio))) refusals++;
        }
      }),
      { seed: 20260101, numRuns: 150 },
    );
    // The moves must also have led through refusals, or half of this was not tried.
    expect(refusals).toBeGreaterThan(20);
  });

  test("says exactly which nodes have another value", () => {
    const before = program.run(declared);
    fc.assert(
      fc.property(moves, (move) => {
        const { evaluation, changed } = program.rerun(before, move);
        const differ = airDemand.nodes
          .map((_, i) => i)
          .filter((i) => !sameValue(before.values[i], evaluation.values[i]));
        expect([...changed].sort((a, b) => a - b)).toEqual(differ);
      }),
      { seed: 20260101, numRuns: 150 },
    );
  });

  test("leaves the earlier evaluation as it was", () => {
    const before = program.run(declared);
    const copy = before.values.slice();
    program.rerun(before, { ratedPower: 1e6, stages: "one" });
    expect(before.values).toEqual(copy);
  });

  test("works only the cells that follow from a value that moved", () => {
    const worked: string[] = [];
    const spied = airDemand.cells.map((node) => ({ node, compute: node.compute }));
    for (const { node, compute } of spied) {
      Object.assign(node, {
        compute: (values: never) => {
          worked.push(node.key);
          return compute(values);
        },
      });
    }
    try {
      const before = program.run(declared);
      expect(worked).toHaveLength(airDemand.cells.length);
      worked.length = 0;
      program.rerun(before, { coolantTemperature: 320 });
      expect(worked).toEqual(["chargeTemperature", "coolerDuty", "coolerRoom"]);
      worked.length = 0;
      program.rerun(before, { coolantTemperature: declared.coolantTemperature });
      expect(worked).toEqual([]);
    } finally {
      for (const { node, compute } of spied) Object.assign(node, { compute });
    }
  });

  test("stops where a cell comes to the same value again", () => {
    // A pressure ratio of one needs no second stage: the stages differ, the ratio of a stage does not.
    const flat = compile(airDemand);
    const pressure = flat.run(declared).require(fixture.manifoldPressure);
    const before = flat.run({ ...declared, ambientPressure: pressure });
    const { evaluation, changed } = flat.rerun(before, { stages: "one" });
    expect(before.require(fixture.stageRatio)).toBe(1);
    expect(evaluation.require(fixture.stageRatio)).toBe(1);
    expect(changed).toEqual([airDemand.position.get("stages")]);
  });

  test("refuses an input it does not hold, and a cell in an input's place", () => {
    const before = program.run(declared);
    expect(() => program.rerun(before, { boost: 1 })).toThrow('graph: there is no input "boost"');
    expect(() => program.rerun(before, { airFlow: 1 })).toThrow('graph: there is no input "airFlow"');
  });
});
