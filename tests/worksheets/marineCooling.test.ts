import { describe, expect, test } from "vitest";
import { operatingPoint } from "../../lib/charge";
import { checksOf, isRefusal, Refusal } from "../../lib/graph";
import type { Power, Ratio, RotationalSpeed } from "../../lib/quantity";
import { derating } from "../../worksheets/boat-duty/derating";
import { exhaustBackPressure, wetExhaustTemperature, wetHose } from "../../worksheets/boat-duty/exhaust";
import { excessAirRatio } from "../../worksheets/air-demand/inputs";
import { expansionRatio, heatBalance, manifoldTemperature, turbineInletPressure } from "../../worksheets/boost/cells";
import { exhaustOutletLoss } from "../../worksheets/boost/inputs";
import { ratedPower } from "../../worksheets/brief/cells";
import { inputsOf } from "../../worksheets/build/build";
import { Later } from "../../worksheets/later";
import {
  chargeWaterRise,
  gearOilReaches,
  jacketReaches,
  marineCircuit,
  rawWaterDischarge,
} from "../../worksheets/marine-cooling/circuit";
import { marineBalance } from "../../worksheets/marine-cooling/balance";
import { curvePointAt, propellerCurve } from "../../worksheets/marine-cooling/curve";
import { coldCircuit } from "../../worksheets/marine-cooling/cold";
import { failures } from "../../worksheets/marine-cooling/failures";
import { jacketHeat } from "../../worksheets/marine-cooling/heats";
import { coldSeaTemperature, rawWaterLine, seaTemperature } from "../../worksheets/marine-cooling/inputs";
import { rawWaterFlow, rawWaterState } from "../../worksheets/marine-cooling/rawWater";
import { attainablePower, matchedExcessAir } from "../../worksheets/matching/cells";
import { matchBuild } from "../../worksheets/matching/match";
import { attained, matched } from "../../worksheets/matching/solved";
import { graph, program } from "../../worksheets/model";
import { demo } from "./demo";

const inputs = inputsOf(demo, "boat");
const evaluation = program.run(inputs);
const moved = (changes: object) => program.rerun(evaluation, changes as never).evaluation;

/** What is worked out at rest, or an error that says why there is nothing. */
function answer<T>(later: Later<T, never>): T {
  const value = later.get();
  if (isRefusal(value)) throw new Error(value.message);
  return value as T;
}

const rows = (inputs as Readonly<Record<string, unknown>>)[rawWaterLine.key] as readonly {
  readonly element: string;
  readonly share: number;
}[];
const without = (...elements: readonly string[]) => rows.filter(({ element }) => !elements.includes(element));

describe("the raw-water line of the demo's boat", () => {
  test("put in another order, ends at the same temperature, and its jacket runs as its water does", () => {
    const order = [
      ...without("jacketExchanger").slice(0, 2),
      ...rows.filter((row) => row.element === "jacketExchanger"),
    ];
    const jacketFirst = moved({ rawWaterLine: [...order, ...without("jacketExchanger").slice(2)] });
    expect(jacketFirst.require(rawWaterDischarge)).toBeCloseTo(evaluation.require(rawWaterDischarge), 9);
    expect(jacketFirst.require(jacketReaches)).toBeLessThan(evaluation.require(jacketReaches));
    // and the charge coolers stand in warmer water than the charge path was told
    expect(jacketFirst.require(chargeWaterRise)).toBeGreaterThan(3);
    expect(jacketFirst.require(marineCircuit).residual).toBeLessThan(1e-9);
  });

  test("without its pump, with two of a kind, or without an exchanger says so", () => {
    const words = (line: readonly object[], cell: Parameters<typeof evaluation.get>[0]) => {
      const value = moved({ rawWaterLine: line }).get(cell);
      return value instanceof Refusal ? value.message : "";
    };
    expect(words(without("pump"), rawWaterFlow)).toContain("the raw-water pump stands 0 times");
    expect(words([...rows, rows.find(({ element }) => element === "oilCooler")!], marineCircuit)).toContain(
      "the oil cooler stands 2 times",
    );
    expect(words(without("jacketExchanger"), jacketReaches)).toContain("no jacket exchanger stands in the line");
  });

  test("leaves the jacket's heat to a keel cooler, and charge coolers to a loop of fresh water", () => {
    const keel = moved({ jacketCooledBy: "keel" });
    expect(keel.require(marineCircuit).jacket).toBeDefined();
    expect(keel.require(rawWaterDischarge)).toBeLessThan(evaluation.require(rawWaterDischarge));
    const loop = rows.map((row) => (row.element === "aftercooler" ? { ...row, element: "chargeLoop" } : row));
    const fresh = moved({
      chargeCooledBy: "loop",
      rawWaterLine: loop.filter(({ element }) => element !== "intercooler"),
    });
    expect(fresh.require(manifoldTemperature)).toBeGreaterThan(evaluation.require(manifoldTemperature));
    const { loop: circuit, loopColdest } = fresh.require(marineCircuit);
    expect(circuit!.mixed).toBeLessThan(38 + 273.15 + 1e-9);
    expect(loopColdest!).toBeLessThan(circuit!.mixed + 1e-9);
  });
});

describe("branches of the raw-water line that lie beside each other", () => {
  const opened = (valves: Readonly<Record<string, number>>, changes: object = {}) => {
    const line = rows.map((row) => ({ ...row, ...(row.element in valves && { share: valves[row.element] }) }));
    return moved({ rawWaterLine: line, ...changes });
  };
  const rowOf = (at: typeof evaluation, key: string) => {
    const i = at.require(marineCircuit).nodes.findIndex((node) => node.key === key);
    return { node: at.require(marineCircuit).nodes[i]!, flow: at.require(rawWaterState).rows[i]! };
  };

  test("share the water so that each loses the same, and all of it passes them", () => {
    const fuel = rowOf(evaluation, "fuelCooler");
    const gear = rowOf(evaluation, "gearCooler");
    expect(fuel.node.share + gear.node.share).toBeCloseTo(1, 12);
    expect((fuel.flow.volumeFlow + gear.flow.volumeFlow) / evaluation.require(rawWaterFlow)).toBeCloseTo(1, 12);
    // losses stated at 300 L/min: 72 and 8 kPa
    const lost = (kilopascal: number, { flow }: typeof fuel) => 1000 * kilopascal * (flow.volumeFlow / 0.005) ** 2;
    expect(lost(72, fuel) / lost(8, gear)).toBeCloseTo(1, 9);
    expect(lost(8, gear) / (gear.flow.pressureIn - gear.flow.pressureOut)).toBeCloseTo(1, 9);
    expect(fuel.flow.valveLoss).toBeCloseTo(0, 6);
  });

  test("with a valve half shut get less water and run hotter, their neighbours more, and the pump delivers less", () => {
    const throttled = opened({ gearCooler: 0.3 });
    expect(rowOf(throttled, "gearCooler").node.share).toBeLessThan(rowOf(evaluation, "gearCooler").node.share);
    expect(rowOf(throttled, "fuelCooler").node.share).toBeGreaterThan(rowOf(evaluation, "fuelCooler").node.share);
    expect(throttled.require(gearOilReaches)).toBeGreaterThan(evaluation.require(gearOilReaches));
    expect(throttled.require(rawWaterFlow)).toBeLessThan(evaluation.require(rawWaterFlow));
    expect(throttled.require(marineCircuit).residual).toBeLessThan(1e-9);
    const { flow } = rowOf(throttled, "gearCooler");
    const whole = flow.pressureIn - flow.pressureOut;
    expect(flow.valveLoss / (whole * (1 - 0.3 ** 2))).toBeCloseTo(1, 9);
  });

  test("that are shut are named where their heat has nowhere to go", () => {
    const words = (at: typeof evaluation, cell: Parameters<typeof evaluation.get>[0]) => {
      const value = at.get(cell);
      return value instanceof Refusal ? value.words : "";
    };
    expect(words(opened({ gearCooler: 0 }), marineCircuit)).toMatch(/^no water passes the gear oil cooler, whose heat/);
    expect(words(opened({ gearCooler: 0, fuelCooler: 0 }), rawWaterFlow)).toMatch(/^the valves of fuel cooler and gear oil cooler are all shut/);
    const beside = rows.map((row) => (row.element === "pump" ? { ...row, lies: "beside" } : row));
    expect(words(moved({ rawWaterLine: beside }), rawWaterFlow)).toMatch(/^the raw-water pump lies beside the strainer/);
    const pipe = { ...rows.find(({ element }) => element === "pipe")!, lies: "beside", share: 0 };
    const besideJacket = rows.flatMap((row) => (row.element === "jacketExchanger" ? [row, pipe] : [row]));
    expect(moved({ rawWaterLine: besideJacket }).require(jacketReaches)).toBeCloseTo(evaluation.require(jacketReaches), 9);
  });

  test("may be set instead, and valves then take what they lose less", () => {
    const found = evaluation.require(marineCircuit).nodes;
    const share = (key: string) => found.find((node) => node.key === key)!.share;
    const set = opened({ fuelCooler: share("fuelCooler"), gearCooler: share("gearCooler") }, { branchFlow: "set" });
    expect(set.require(rawWaterFlow)).toBeCloseTo(evaluation.require(rawWaterFlow), 12);
    expect(set.require(gearOilReaches)).toBeCloseTo(evaluation.require(gearOilReaches), 9);
    const more = opened({ fuelCooler: 0.5, gearCooler: 0.5 }, { branchFlow: "set" });
    expect(rowOf(more, "gearCooler").flow.valveLoss).toBeGreaterThan(1000);
    expect(rowOf(more, "fuelCooler").flow.valveLoss).toBeCloseTo(0, 6);
  });
});

describe("the propeller's curve of the demo's boat", () => {
  const later = evaluation.require(propellerCurve);
  const curve = later.answer().map((point) => {
    if ("refused" in point) throw new Error(point.refused);
    return point;
  });

  test("closes its heat balance to the last watt at every speed", () => {
    expect(curve).toHaveLength(9);
    for (const point of curve) {
      const { fuel, lines } = point.balance;
      const sum = lines.reduce((total, { power }) => total + power, 0);
      expect(Math.abs(fuel - sum)).toBeLessThan(1e-3);
      const shaft = lines.find(({ key }) => key === "shaft")!.power;
      expect(shaft).toBeCloseTo(0.97 * point.brakePower, 3);
    }
  });

  test("has more of the fuel in the walls the lighter the load, and all of it at the promised share at the end", () => {
    const shares = curve.map(({ wallShare }) => wallShare);
    for (let i = 1; i < shares.length; i++) expect(shares[i]!).toBeLessThan(shares[i - 1]!);
    expect(shares.at(-1)! / (inputs.wallHeatShare as number)).toBeCloseTo(1, 9);
  });

  test("draws more sea water and warms it more with every step", () => {
    for (let i = 1; i < curve.length; i++) {
      const [slow, fast] = [curve[i - 1]!.circuits!, curve[i]!.circuits!];
      expect(fast.rawWaterFlow).toBeGreaterThan(slow.rawWaterFlow);
      expect(fast.seaDischarge).toBeGreaterThan(slow.seaDischarge);
    }
  });

  test("is the match at every speed: equal air, fuel and heat for the same speed, power and wall heat, begun from nothing", () => {
    const build = evaluation.require(matchBuild);
    for (const { speed: engineSpeed, brakePower, wallShare, excessAirRatio, balance } of curve) {
      const engine = { ...build.engine, heatToWallsShare: wallShare };
      const load = { kind: "brakePower", brakePower } as const;
      const match = operatingPoint({ ...build, engine }, { engineSpeed, load });
      expect(excessAirRatio / match.excessAirRatio).toBeCloseTo(1, 6);
      expect(balance.fuel / match.powers.fuel).toBeCloseTo(1, 6);
      const coolers = match.coolers.reduce((sum, { heat }) => sum + heat, 0);
      const line = (key: string) => balance.lines.find((each) => each.key === key)!.power;
      expect((line("intercooler") + line("aftercooler")) / coolers).toBeCloseTo(1, 5);
      // The sheet of the match takes the share of the promised power at every speed, and differs by what that makes.
      const own = operatingPoint(build, { engineSpeed, load });
      expect(Math.abs(excessAirRatio / own.excessAirRatio - 1)).toBeLessThan(0.03);
    }
  });

  test("ends where the sheet stands: the match at the promised power, its heat, line and exhaust", () => {
    const end = curve.at(-1)!;
    const { circuits, balance } = end;
    expect(end.excessAirRatio / evaluation.require(matchedExcessAir)).toBeCloseTo(1, 9);
    for (const { key, power } of evaluation.require(marineBalance).lines) {
      expect(Math.abs(balance.lines.find((each) => each.key === key)!.power - power) / balance.fuel, key).toBeLessThan(1e-9);
    }
    expect(circuits!.rawWaterFlow).toBeCloseTo(evaluation.require(rawWaterFlow), 12);
    expect(circuits!.seaDischarge).toBeCloseTo(evaluation.require(rawWaterDischarge), 6);
    expect(circuits!.jacket).toBeCloseTo(evaluation.require(jacketReaches), 6);
    expect(circuits!.mixedExhaust).toBeCloseTo(evaluation.require(wetExhaustTemperature), 6);
  });

  test("names a limit of the match that it passes, and what the parts reach where the propeller takes more", () => {
    const tight = moved({ bankATurbineArea: 7e-4 });
    const lean = tight.require(propellerCurve).answer().filter((point) => "passed" in point && point.passed.length > 0);
    expect(lean.length).toBeGreaterThan(0);
    const heavy = { ...later.from, fuelPropellerExponent: 1.5 as Ratio, ratedPower: (3 * later.from.ratedPower) as Power };
    const words = curvePointAt(heavy, 20 as RotationalSpeed);
    expect("refused" in words ? words.refused : "").toMatch(/^at 1200 rev\/min the propeller takes .* kW, and the chosen parts reach .* kW, where .* stops them$/);
  });

  test("has no answer, nor has any heat of the sheet, where the parts have no balance at the promised power", () => {
    const small = moved({ ratedPower: 8e5 });
    for (const cell of [marineBalance, jacketReaches, wetExhaustTemperature] as const) {
      const value = small.get(cell as typeof jacketReaches);
      expect(isRefusal(value) ? value.message : "").toMatch(/do not carry the promised 800 kW at 2400 rev\/min; they reach \d+ kW, where .* stops them: choose .* take the heat of the promise/);
    }
  });

  test("gives way at the promised power to what the promise asks for, and has no answer then", () => {
    const small = moved({ ratedPower: 8e5, heatsFrom: "promise" });
    const promised = small.require(heatBalance).parts.find(({ key }) => key === "jacket")!.power;
    expect(small.require(jacketHeat)).toBe(promised);
    expect(small.require(coldCircuit).engine.excessAirRatio).toBe(small.require(excessAirRatio));
    expect(small.require(coldCircuit).jacket!.hot).toBeLessThan(small.require(jacketReaches));
    const curve = small.require(propellerCurve).get();
    expect(isRefusal(curve) ? curve.words : "").toMatch(/^heat and exhaust are set to those of the promise/);
    const there = curvePointAt(small.require(propellerCurve).from, 20 as RotationalSpeed);
    expect("refused" in there).toBe(true);
  });
});

test("the coldest sea is the whole notebook with the sea as cold, but for the sea water's density", () => {
  const cold = evaluation.require(coldCircuit);
  const sea = moved({ seaTemperature: evaluation.require(coldSeaTemperature) });
  expect(cold.engine.manifoldTemperature).toBeCloseTo(sea.require(matched).manifoldTemperature, 1);
  expect(cold.engine.excessAirRatio / sea.require(matchedExcessAir)).toBeCloseTo(1, 3);
  expect(cold.heat / sea.require(marineCircuit).heat).toBeCloseTo(1, 2);
  expect(cold.jacket!.hot).toBeCloseTo(sea.require(jacketReaches), 1);
  expect(cold.engine.excessAirRatio).toBeGreaterThan(evaluation.require(matchedExcessAir));
});

describe("what fails in the demo's boat", () => {
  const cases = answer(evaluation.require(failures) as never) as readonly {
    readonly key: string;
    readonly parts: readonly { part: string; usual: number; reached: number; limit: number; secondsToLimit?: number }[];
  }[];
  const part = (key: string, name: string) =>
    cases.find((each) => each.key === key)!.parts.find((each) => each.part === name)!;

  test("starts where the line stands, and every failure makes something hotter", () => {
    for (const { key, parts } of cases) {
      expect(parts.length, key).toBeGreaterThan(0);
      expect(
        parts.some(({ usual, reached }) => reached > usual + 0.01),
        key,
      ).toBe(true);
    }
    expect(part("fouled", "Jacket water").usual).toBe(evaluation.require(jacketReaches));
  });

  test("without sea water is heat over heat capacity: by hand", () => {
    // 320 kg of iron at 460 J/(kg·K) and 52 L of coolant of 1.02 kg/L and 3.65 kJ/(kg·K)
    const lump = 320 * 460 + 52 * 1.02 * 3650;
    const { usual, limit, secondsToLimit } = part("rawBelt", "Jacket water");
    const heat = evaluation.require(graph.cells.find(({ key }) => key === "jacketHeat") as never) as number;
    expect(secondsToLimit! / ((lump * (limit - usual)) / heat)).toBeCloseTo(1, 1);
    expect(part("rawBelt", "Exhaust hose").secondsToLimit).toBe(0);
  });

  test("is told where the jacket is past its limit, and its boiling point, as usual", () => {
    const choked = moved({ foulingResistance: 0.001, jacketExchanger: 1000 });
    expect(choked.require(jacketReaches)).toBeGreaterThan(400);
    const stands = answer(choked.require(failures) as never) as typeof cases;
    const jacket = stands.find(({ key }) => key === "jacketBelt")!.parts[0]!;
    expect([jacket.part, jacket.secondsToLimit]).toEqual(["Jacket water", 0]);
  });

  test("leaves the hose out, and its limits, where the exhaust is dry", () => {
    const dry = moved({ exhaustKind: "dry" });
    const told = (answer(dry.require(failures) as never) as typeof cases).flatMap(({ parts }) => parts.map((each) => each.part));
    expect(told).toContain("Discharge");
    expect(told.filter((name) => name.startsWith("Exhaust"))).toEqual([]);
    expect(cases.flatMap(({ parts }) => parts.map((each) => each.part))).toContain("Exhaust hose");
    const hose = (at: typeof evaluation) => checksOf(wetHose, at).length;
    expect([hose(evaluation), hose(dry)]).toEqual([2, 0]);
  });

  test("gives a time exactly where the limit is passed", () => {
    for (const { parts } of cases) {
      for (const { reached, limit, secondsToLimit } of parts) {
        expect(secondsToLimit === undefined).toBe(!(reached > limit));
      }
    }
  });
});

describe("what warm water, warm air and tight pipes cost", () => {
  const { most, promised, binding, series } = evaluation.require(derating).answer();
  const of = (key: string, from = series) => from.find((each) => each.key === key)!.values;

  test("begins at what the match gives, and every step is a loss", () => {
    expect(most).toBe(evaluation.require(attainablePower));
    expect(promised).toBe(evaluation.require(ratedPower));
    expect(binding).toBe(evaluation.require(attained).binding.name);
    expect(series.map(({ key }) => key)).toEqual(["sea", "room", "depression", "backPressure"]);
    for (const { key, values } of series) {
      for (let i = 1; i < values.length; i++) {
        expect(values[i]!.solved!, key).toBeLessThan(values[i - 1]!.solved!);
        if (values[i]!.standard !== undefined) expect(values[i]!.standard!).toBeLessThan(values[i - 1]!.standard!);
      }
      expect(values.filter(({ solved }) => solved === most)).toHaveLength(1);
      for (const value of values) expect(value.binding).toBeDefined();
    }
  });

  // The whole notebook with the worse value in its input: pump, line and exhaust take part there, and move it by less.
  test("is what the match gives with the sea, or the exhaust's loss, of the worse value", () => {
    const sea = moved({ seaTemperature: evaluation.require(seaTemperature) + 5 });
    expect(of("sea").at(-2)!.solved! / sea.require(attainablePower)).toBeCloseTo(1, 4);
    const [here, worse] = of("backPressure");
    const tight = moved({ exhaustOutletLoss: (evaluation.require(exhaustOutletLoss) * worse!.at) / here!.at });
    expect(worse!.solved! / tight.require(attainablePower)).toBeCloseTo(1, 4);
  });

  // Common practice, no source: 1 to 2 % for 5 kPa behind the turbines, less with much to lead past them; 2 to 4 % for 8 K
  // of air; both where boost is held.
  test("is what practice tells where a wastegate holds the boost, and more where none has gas to give", () => {
    const held = program.run(inputsOf(demo, "test-cell"));
    expect(held.require(attained).point.banks[0]!.wastegateFraction).toBeGreaterThan(0.03);
    const cell = held.require(derating).answer();
    const left = (key: string, step: number, { most, series } = cell) => {
      const values = of(key, series);
      return values[values.findIndex(({ solved }) => solved === most) + step]!.solved! / most;
    };
    const [pipe, air] = [1 - left("backPressure", 1), 1 - left("room", 1)];
    expect(pipe).toBeGreaterThan(0.005);
    expect(pipe).toBeLessThan(0.02);
    expect(air).toBeGreaterThan(0.02);
    expect(air).toBeLessThan(0.04);
    const free = moved({ bankAWastegate: "none", bankATurbineArea: 4.55e-4 }).require(derating).answer();
    expect(1 - left("backPressure", 1, free)).toBeGreaterThan(2 * pipe);
  });

  test("asks for no warmer sea where a loop of fresh water cools the charge", () => {
    const loop = rows.map((row) => (row.element === "aftercooler" ? { ...row, element: "chargeLoop" } : row));
    const fresh = moved({
      chargeCooledBy: "loop",
      rawWaterLine: loop.filter(({ element }) => element !== "intercooler"),
    });
    expect(fresh.require(derating).answer().series.map(({ key }) => key)).not.toContain("sea");
  });

  test("says so where no load is allowed at all", () => {
    const answer = moved({ blowerTipSpeedLimit: 20 }).get(derating);
    expect(isRefusal(answer) ? answer.words : "").toMatch(/^there is no power to lose .* blower is passed at every load; choose other parts/);
  });
});

test("an exhaust laid out on the sheet reaches back into the turbines", () => {
  const own = moved({ exhaustLossFrom: "pipe" });
  const narrow = moved({ exhaustLossFrom: "pipe", exhaustHose: 0.15 });
  expect(narrow.require(exhaustBackPressure)).toBeGreaterThan(own.require(exhaustBackPressure));
  expect(narrow.require(turbineInletPressure)).toBeGreaterThan(own.require(turbineInletPressure));
  expect(narrow.require(expansionRatio)).not.toBe(own.require(expansionRatio));
  expect(narrow.require(wetExhaustTemperature)).toBeGreaterThan(own.require(wetExhaustTemperature));
});

describe("Later", () => {
  test("works once, keeps its answer, and gives a refusal for what has none", () => {
    let times = 0;
    const later = new Later("cell", { of: 3 }, ({ of }) => {
      times++;
      return of * 2;
    });
    expect([later.get(), later.get(), times]).toEqual([6, 6, 1]);
    expect([later.answer(), times]).toEqual([6, 1]);
    const refused = new Later("cell", {}, () => {
      throw new RangeError("too much");
    });
    expect(refused.get()).toBeInstanceOf(Refusal);
    expect(() => refused.answer()).toThrow(new RangeError("too much"));
    expect(() =>
      new Later("cell", {}, () => {
        throw new TypeError("a fault");
      }).get(),
    ).toThrow("a fault");
  });

  test.each(["strainerBlocked", "rawWaterFilling", "stuckOpening", "fouledShare", "glycolShare", "jacketFlow"])(
    "in the marine sheets has an answer or words at either end of %s",
    (key) => {
      const input = graph.inputs.find((each) => each.key === key)!;
      if (input.type !== "quantity") throw new Error(`${key} is no quantity`);
      for (const end of input.span) {
        const at = moved({ [key]: end });
        const later = at.get(failures);
        if (later instanceof Refusal) expect(later.fault).toBe(false);
        else if (isRefusal(later.get())) expect((later.get() as Refusal).message.length).toBeGreaterThan(10);
      }
    },
  );
});
