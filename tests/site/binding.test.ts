import fc from "fast-check";
import { afterEach, expect, test, vi } from "vitest";
import { compile, type Graph, type Input, type InputValues, Refusal, sameValue } from "../../lib/graph";
import { bind, type Binding } from "../../site/runtime/binding";
import { upstream } from "../../site/runtime/upstream";
import { declaredValues } from "../../worksheets/build/build";
import { graph as worksheets } from "../../worksheets/model";
import { graph } from "./fixture";

const program = compile(graph);
const declared = declaredValues(graph);

let bound: Binding | undefined;
afterEach(() => {
  bound?.dispose();
  vi.unstubAllGlobals();
});

/** Any value that the page would let a reader give the input. */
function arbitraryOf(input: Input): fc.Arbitrary<unknown> {
  switch (input.type) {
    case "quantity": {
      const [lowest, highest] = input.span;
      return fc.double({ min: 0, max: 1, noNaN: true }).map((share) => lowest + share * (highest - lowest));
    }
    case "choice":
      return fc.constantFrom(...Object.keys(input.options));
    case "table":
      return fc.array(fc.constantFrom(...input.value), { minLength: input.rows[0], maxLength: input.rows[1] });
  }
}

function recordOf(inputs: readonly Input[]): fc.Arbitrary<InputValues> {
  return fc.record(Object.fromEntries(inputs.map((input) => [input.key, arbitraryOf(input)])));
}

function anyMoveOf(graph: Graph): fc.Arbitrary<InputValues> {
  return fc.uniqueArray(fc.constantFrom(...graph.inputs), { minLength: 1, maxLength: 3 }).chain(recordOf);
}

function expectSameValues(graph: Graph, binding: Binding, values: readonly unknown[]): void {
  for (const [position, node] of graph.nodes.entries()) {
    const here = binding.values.get(node);
    const there = values[position];
    if (!sameValue(here, there)) expect(here, node.key).toEqual(there);
  }
}

test.each([
  { name: "the fixture", graph, numRuns: 60 },
  { name: "the worksheets", graph: worksheets, numRuns: 25 },
])("bind(graph) gives the compiled program's values at any inputs and after any moves of $name", async ({ graph, numRuns }) => {
  const program = compile(graph);
  // Moves start at the declared values as well, since few of all random inputs have an answer throughout.
  const anyStart = fc.oneof(recordOf(graph.inputs), fc.constant(declaredValues(graph)));
  const anyLook = fc.option(fc.uniqueArray(fc.constantFrom(...graph.cells), { maxLength: 4 }), { nil: undefined });
  const property = fc.asyncProperty(anyStart, fc.array(anyMoveOf(graph), { maxLength: 4 }), anyLook, async (inputs, moves, looked) => {
    const keys = looked && new Set(looked.map(({ key }) => key));
    const binding = bind(graph, inputs, () => {}, () => keys);
    try {
      await binding.settled();
      let evaluation = program.run(inputs);
      expectSameValues(graph, binding, evaluation.values);
      let latest: InputValues = inputs;
      for (const move of moves) {
        binding.set(move);
        await binding.settled();
        latest = { ...latest, ...move };
        evaluation = program.rerun(evaluation, move).evaluation;
        expectSameValues(graph, binding, evaluation.values);
        expectSameValues(graph, binding, program.run(latest).values);
      }
    } finally {
      binding.dispose();
    }
  });
  await fc.assert(property, { seed: 20260101, numRuns });
});

test("bind(graph) tells the changed keys once for many moves, and those alone whose value differs", async () => {
  const calls: string[][] = [];
  bound = bind(graph, declared, (keys) => calls.push([...keys].sort()));
  await bound.settled();
  expect(calls).toHaveLength(1);
  expect(calls[0]).toHaveLength(graph.nodes.length);

  for (let speed = 40; speed <= 50; speed++) bound.set({ engineSpeed: speed });
  await bound.settled();
  expect(calls).toHaveLength(2);
  const { changed } = program.rerun(program.run(declared), { engineSpeed: 50 });
  expect(calls[1]).toEqual(changed.map((position) => graph.nodes[position]!.key).sort());
});

test("bind(graph) stays silent when an input is set to the value it has", async () => {
  const calls: ReadonlySet<string>[] = [];
  bound = bind(graph, declared, (keys) => calls.push(keys));
  await bound.settled();
  bound.set({ engineSpeed: declared.engineSpeed, driven: declared.driven });
  await bound.settled();
  expect(calls).toHaveLength(1);
});

test("bind(graph) carries a refusal to all that wait for it, and lets go of it again", async () => {
  bound = bind(graph, declared, () => {});
  bound.set({ driveRatio: 3.3 });
  await bound.settled();
  const refused = graph.cells.filter((cell) => bound!.values.get(cell) instanceof Refusal).map((cell) => cell.key);
  expect(refused.sort()).toEqual(
    ["beltPower", "blowerPower", "chargeTemperature", "outletPressure", "outletTemperature", "pressureRatio"].sort(),
  );
  expect(bound.values.get(graph.cells.find((cell) => cell.key === "beltPower")!)).toMatchObject({ root: "pressureRatio" });
  bound.set({ driveRatio: 2 });
  await bound.settled();
  expect(graph.cells.some((cell) => bound!.values.get(cell) instanceof Refusal)).toBe(false);
});

test("bind(graph) works out in the frame what is looked at, and the rest when the browser has time", async () => {
  const idle: (() => void)[] = [];
  vi.stubGlobal("requestIdleCallback", (work: () => void) => idle.push(work));
  const calls: { readonly keys: readonly string[]; readonly whole: boolean }[] = [];
  let looked: ReadonlySet<string> | undefined;
  let told = (): void => {};
  const tell = (keys: ReadonlySet<string>, whole: boolean): void => {
    calls.push({ keys: [...keys].sort(), whole });
    told();
  };
  bound = bind(graph, declared, tell, () => looked);
  await bound.settled();
  const start = program.run(declared);
  const after = program.rerun(start, { driveRatio: 2.2 });
  const followed = after.changed.map((position) => graph.nodes[position]!.key).sort();
  const read = new Set(["driveRatio", "pressureRatio", "outletTemperature"]);

  looked = new Set(["outletTemperature"]);
  const firstCall = new Promise<void>((resolve) => {
    told = resolve;
  });
  bound.set({ driveRatio: 2.2 });
  await firstCall;
  expect(calls.slice(1)).toEqual([{ keys: [...read].sort(), whole: false }]);
  for (const node of graph.nodes) {
    expect(bound.values.get(node), node.key).toEqual((read.has(node.key) ? after.evaluation : start).get(node));
  }

  expect(idle).toHaveLength(1);
  idle[0]!();
  expect(calls.slice(2)).toEqual([{ keys: followed.filter((key) => !read.has(key)), whole: true }]);
  expectSameValues(graph, bound, after.evaluation.values);
});

test("upstream(graph, keys) holds nodes, what they stand on and the bounds of their limits, and nothing that follows", () => {
  const keys = [...upstream(graph, ["blowerSpeed", "boreArea", "no such key"])].map((position) => graph.nodes[position]!.key);
  expect(keys.sort()).toEqual(["blowerSpeed", "bore", "boreArea", "cylinders", "driveRatio", "engineSpeed", "speedLimit"]);
});

test("bind(graph).set refuses a key that is no input", () => {
  bound = bind(graph, declared, () => {});
  expect(() => bound!.set({ beltPower: 1 })).toThrow('there is no input "beltPower"');
});
