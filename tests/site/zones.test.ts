import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { compile, isRefusal } from "../../lib/graph";
import { trackOf, type Zone } from "../../site/control";
import { createZones, zonesAlong } from "../../site/page/zones";
import { declaredValues } from "../../worksheets/build/build";
import * as real from "../../worksheets/model";
import { deskOfFixture } from "./desk";
import { ambient, bore, driveRatio, graph } from "./fixture";

const program = compile(graph);
const inputs = declaredValues(graph);
const { cells } = graph;
const track = trackOf(driveRatio);

function all<T>(look: Generator<undefined, T>): T {
  for (;;) {
    const { done, value } = look.next();
    if (done) return value;
  }
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("zonesAlong() finds where a model is left and where there is no answer", () => {
  const zones = all(zonesAlong({ program, inputs, input: driveRatio, cells }));
  // The fixture's fit holds ratios of 0.6 to 2.5; above 3.2 there is no answer.
  expect(zones.map(({ words }) => words)).toEqual([
    "Blower pressure ratio is outside its model's range",
    "Blower pressure ratio is outside its model's range",
    "Blower pressure ratio has no answer",
  ]);
  const near = 1 / 16 / 2 ** 5 + (track.position(driveRatio.span[0] + driveRatio.step) - 0);
  expect(zones[0]!.from).toBe(0);
  expect(Math.abs(zones[0]!.to - track.position(0.6))).toBeLessThan(near);
  expect(Math.abs(zones[1]!.from - track.position(2.5))).toBeLessThan(near);
  expect(zones.at(-1)!.to).toBe(1);
});

test("zonesAlong() is empty where nothing is amiss, and where it is amiss whatever the input", () => {
  expect(all(zonesAlong({ program, inputs, input: ambient, cells }))).toEqual([]);
  expect(all(zonesAlong({ program, inputs: { ...inputs, driveRatio: 3.3 }, input: bore, cells }))).toEqual([]);
});

test("outside the zones of the blower's pulley every line of the notebook has its answer, inside some have none", () => {
  const declared = declaredValues(real.graph);
  const input = real.graph.inputs.find(({ key }) => key === "blowerDrivenTeeth")!;
  if (input.type !== "quantity") throw new Error("the teeth are no quantity");
  const look = { program: real.program, inputs: declared, input, cells: real.graph.cells };
  const zones = all(zonesAlong(look));
  const [along, start] = [trackOf(input), real.program.run(declared)];
  const roots = (place: number): number => {
    const { evaluation } = real.program.rerun(start, { [input.key]: along.value(place) });
    return real.graph.cells.filter((cell) => isRefusal(evaluation.get(cell))).length;
  };
  expect(zones.length).toBeGreaterThan(0);
  expect(roots(1)).toBeGreaterThan(roots(along.position(declared[input.key] as number)));
  expect(zones.at(-1)!.to).toBe(1);
});

test("createZones() looks when nothing moves, and forgets when another input moves", () => {
  const { desk } = deskOfFixture();
  const zones = createZones(desk, program);
  zones.start();
  let shown: readonly Zone[] = [];
  zones.watch("driveRatio", (found) => {
    shown = found;
  });
  zones.ask("driveRatio");
  expect(shown).toEqual([]);
  vi.runAllTimers();
  expect(shown).toHaveLength(3);
  desk.session.begin("driveRatio");
  desk.session.set("driveRatio", 2.1);
  expect(shown).toHaveLength(3);
  desk.session.end();
  desk.session.set("power", 300e3);
  expect(shown).toEqual([]);
  desk.session.begin("power");
  vi.runAllTimers();
  expect(shown).toEqual([]);
  desk.session.end();
  vi.runAllTimers();
  expect(shown).toHaveLength(3);
});
