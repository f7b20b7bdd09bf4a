import { describe, expect, test } from "vitest";
import { isRefusal, Refusal } from "../../lib/graph";
import { derating } from "../../worksheets/boat-duty/derating";
import { exhaustBackPressure, wetExhaustTemperature } from "../../worksheets/boat-duty/exhaust";
import { expansionRatio, manifoldTemperature, turbineInletPressure } from "../../worksheets/boost/cells";
import { inputsOf } from "../../worksheets/build/build";
import { Later } from "../../worksheets/later";
import {
  chargeWaterRise,
  jacketReaches,
  marineCircuit,
  rawWaterDischarge,
} from "../../worksheets/marine-cooling/circuit";
import { propellerCurve } from "../../worksheets/marine-cooling/curve";
import { failures } from "../../worksheets/marine-cooling/failures";
import { rawWaterLine } from "../../worksheets/marine-cooling/inputs";
import { rawWaterFlow } from "../../worksheets/marine-cooling/rawWater";
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

const rows = (inputs as Readonly<Record<string, unknown>>)[rawWaterLine.key] as readonly { readonly element: string }[];
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

describe("the propeller's curve of the demo's boat", () => {
  const curve = answer(evaluation.require(propellerCurve) as never) as ReturnType<typeof Array.prototype.slice>;

  test("closes its heat balance to the last watt at every speed", () => {
    expect(curve).toHaveLength(9);
    for (const point of curve) {
      expect(point.refused).toBeUndefined();
      const { fuel, lines } = point.balance;
      const sum = lines.reduce((total: number, { power }: { power: number }) => total + power, 0);
      expect(Math.abs(fuel - sum)).toBeLessThan(1e-3);
      const shaft = lines.find(({ key }: { key: string }) => key === "shaft").power;
      expect(shaft).toBeCloseTo(0.97 * point.brakePower, 3);
    }
  });

  test("has more of the fuel in the walls the lighter the load, and all of it at the promised share at the end", () => {
    const shares = curve.map(({ wallShare }) => wallShare);
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeLessThan(shares[i - 1]);
    expect(shares.at(-1)).toBeCloseTo(inputs.wallHeatShare as number, 3);
  });

  test("draws more sea water and warms it more with every step", () => {
    for (let i = 1; i < curve.length; i++) {
      expect(curve[i].rawWaterFlow).toBeGreaterThan(curve[i - 1].rawWaterFlow);
      expect(curve[i].seaDischarge).toBeGreaterThan(curve[i - 1].seaDischarge);
    }
  });
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

  test("gives a time exactly where the limit is passed", () => {
    for (const { parts } of cases) {
      for (const { reached, limit, secondsToLimit } of parts) {
        expect(secondsToLimit === undefined).toBe(!(reached > limit));
      }
    }
  });
});

test("the demo's boat loses power in a warm sea, in warm air, behind a clogged filter and a tight exhaust", () => {
  const { promised, series } = answer(evaluation.require(derating) as never) as {
    readonly promised: number;
    readonly series: readonly { key: string; values: readonly { at: number; solved?: number; standard?: number }[] }[];
  };
  expect(series.map(({ key }) => key)).toEqual(["sea", "room", "depression", "backPressure"]);
  for (const { key, values } of series) {
    for (let i = 1; i < values.length; i++) {
      expect(values[i]!.solved!, key).toBeLessThan(values[i - 1]!.solved!);
      if (values[i]!.standard !== undefined) expect(values[i]!.standard!).toBeLessThan(values[i - 1]!.standard!);
    }
    expect(values.some(({ solved }) => Math.abs(solved! / promised - 1) < 1e-9)).toBe(true);
  }
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
