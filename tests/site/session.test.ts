import fc from "fast-check";
import { beforeEach, expect, test } from "vitest";
import { compile } from "../../lib/graph";
import { createSession, type Session, type State } from "../../site/state";
import { inputsOf, withInput } from "../../worksheets/build/build";
import { build } from "./build";
import { ambient, driven, driveRatio, graph } from "./fixture";

const program = compile(graph);
let session: Session;
beforeEach(() => {
  session = createSession({ graph, program, build, name: "at the start" });
});

test("a gesture of many moves is one entry, named by its first and last value", () => {
  session.begin("driveRatio");
  for (const ratio of [1.94, 1.98, 2.04, 2.1]) session.set("driveRatio", ratio);
  expect(session.state.done).toHaveLength(0);
  session.end();
  expect(session.state.done.map(({ name }) => name)).toEqual(["Blower drive ratio 1.92 → 2.1"]);
  expect(session.undo()).toBe("Blower drive ratio 1.92 → 2.1");
  expect(session.inputs.driveRatio).toBe(1.92);
  expect(session.redo()).toBe("Blower drive ratio 1.92 → 2.1");
  expect(session.inputs.driveRatio).toBe(2.1);
});

test("a gesture that comes back to where it began leaves no entry", () => {
  session.begin("driveRatio");
  session.set("driveRatio", 2.5);
  session.set("driveRatio", 1.92);
  session.end();
  expect(session.state.done).toHaveLength(0);
});

test("set() outside a gesture is an entry of its own, in the units shown", () => {
  session.choose({ system: "US", own: {} });
  session.set("ambient", 310.9277777777778);
  session.set("coolant", "none");
  session.set("driven", driven.value.slice(1));
  expect(session.state.done.map(({ name }) => name)).toEqual([
    "Ambient temperature 77 → 100\u00a0°F",
    "Charge cooler fresh water → no cooler",
    "Driven units: 2 → 1 rows",
  ]);
});

test("an entry of a table names the row and what became of it", () => {
  const [pump, alternator] = driven.value as readonly [object, object];
  const named = (rows: readonly object[]) => {
    session.set("driven", rows);
    return session.state.done.at(-1)!.name;
  };
  expect(named([pump, { ...alternator, ratio: 2.5 }])).toBe("Driven units: alternator, ratio 2.6 → 2.5");
  expect(named([pump, { ...alternator, ratio: 2.4, power: 5000, side: "tight" }])).toBe(
    "Driven units: alternator, ratio 2.5 → 2.4, power 4.5 → 5\u00a0kW, side slack → tight",
  );
  const [first, second] = session.inputs.driven as readonly [object, object];
  expect(named([second, first])).toBe("Driven units: in another order");
  expect(named([{ ...second, ratio: 2 }, { ...first, ratio: 2 }])).toBe("Driven units: 2 rows edited");
});

test("a gesture on a table is one entry, named by where it began and ended", () => {
  const [pump, alternator] = driven.value;
  session.begin("driven");
  for (const ratio of [2.7, 2.9, 3.1]) session.set("driven", [pump, { ...alternator, ratio }]);
  session.end();
  expect(session.state.done.map(({ name }) => name)).toEqual(["Driven units: alternator, ratio 2.6 → 3.1"]);
});

test("set() goes to the installation's own value where it has one, else to the shared value", () => {
  session.show("truck");
  expect(session.inputs.ambient).toBe(318.15);
  session.set("ambient", 320);
  session.set("driveRatio", 2);
  expect(inputsOf(session.state.build, "cell")).toMatchObject({ ambient: 298.15, driveRatio: 2 });
  expect(inputsOf(session.state.build, "truck")).toMatchObject({ ambient: 320, driveRatio: 2 });
});

test("an installation that is shown stands against itself as it was held, not against the one shown before", () => {
  const ratioHeld = () => session.state.held.evaluation.get(driveRatio);
  const ambientHeld = () => session.state.held.evaluation.get(ambient);
  session.set("driveRatio", 2.1);
  session.show("truck");
  expect(session.state.held.name).toBe("at the start");
  expect([ratioHeld(), ambientHeld()]).toEqual([1.92, 318.15]);
  session.hold("14:05");
  session.set("driveRatio", 2.3);
  session.show("cell");
  expect(session.state.held.name).toBe("14:05");
  expect([ratioHeld(), ambientHeld()]).toEqual([2.1, 298.15]);
  // Steps back lead into the installation in which they were made, and the reference with them.
  session.undo();
  expect(session.state.installation).toBe("truck");
  expect([ratioHeld(), ambientHeld()]).toEqual([2.1, 318.15]);
});

test("undo() shows the installation in which the change was made", () => {
  session.show("truck");
  session.set("ambient", 320);
  session.show("boat");
  session.undo();
  expect(session.state.installation).toBe("truck");
  expect(session.inputs.ambient).toBe(318.15);
});

test("separate() and rejoin() keep the value in force until it is set, and can be taken back", () => {
  session.show("boat");
  session.separate("driveRatio");
  expect(session.inputs.driveRatio).toBe(1.92);
  session.set("driveRatio", 2.2);
  expect(inputsOf(session.state.build, "cell").driveRatio).toBe(1.92);
  session.rejoin("driveRatio");
  expect(session.inputs.driveRatio).toBe(1.92);
  expect(session.undo()).toBe("Blower drive ratio: shared again");
  expect(session.inputs.driveRatio).toBe(2.2);
});

test("hold() takes a snapshot that later moves leave alone", () => {
  session.set("driveRatio", 2);
  session.hold("14:05");
  session.set("driveRatio", 2.4);
  expect(session.state.held.name).toBe("14:05");
  expect(session.state.held.evaluation.get(driveRatio)).toBe(2);
  expect(session.state.held.evaluation.values).toEqual(program.run({ ...session.inputs, driveRatio: 2 }).values);
});

test("reset() returns to the value the build was opened with", () => {
  session.show("truck");
  session.set("ambient", 300);
  session.reset("ambient");
  expect(session.inputs.ambient).toBe(318.15);
});

test("a new change drops what was undone", () => {
  session.set("driveRatio", 2);
  session.undo();
  session.set("driveRatio", 2.2);
  expect(session.redo()).toBeUndefined();
});

test("show() refuses an installation the build does not have", () => {
  expect(() => session.show("aeroplane")).toThrow("it has cell, truck, boat");
});

test("undoing everything gives the opened build back, redoing everything the last, whatever was done", () => {
  type Deed = (target: Session) => void;
  const ratio = fc.integer({ min: 50, max: 340 }).map((hundredths) => hundredths / 100);
  const deed: fc.Arbitrary<Deed> = fc.oneof(
    ratio.map((value): Deed => (target) => target.set("driveRatio", value)),
    ratio.map((value): Deed => (target) => {
      target.begin("driveRatio");
      target.set("driveRatio", 1);
      target.set("driveRatio", value);
      target.end();
    }),
    fc.constantFrom("cell", "truck", "boat").map((key): Deed => (target) => target.show(key)),
    fc.constantFrom("driveRatio", "ambient").map((key): Deed => (target) => target.separate(key)),
    fc.constantFrom("driveRatio", "ambient").map((key): Deed => (target) => target.rejoin(key)),
  );
  const property = fc.property(fc.array(deed, { maxLength: 12 }), (deeds) => {
    const target = createSession({ graph, program, build, name: "start" });
    for (const act of deeds) act(target);
    const last = target.state.build;
    while (target.undo() !== undefined);
    expect(target.state.build).toEqual(build);
    while (target.redo() !== undefined);
    expect(target.state.build).toEqual(last);
  });
  fc.assert(property, { seed: 20260101, numRuns: 100 });
});

test("subscribe() tells each new state beside the one before", () => {
  const told: [State, State][] = [];
  const stop = session.subscribe((state, previous) => told.push([state, previous]));
  session.set("driveRatio", 2);
  stop();
  session.set("driveRatio", 3);
  expect(told).toHaveLength(1);
  expect(told[0]![0].build.shared.driveRatio).toBe(2);
  expect(told[0]![1].build.shared.driveRatio).toBe(1.92);
});

test("open() measures changes from another build where it is told one, and shows the installation named", () => {
  const changed = withInput(build, "cell", "driveRatio", 2.5);
  session.open(changed, "as opened", { opened: build, installation: "boat" });
  expect(session.state.installation).toBe("boat");
  expect(session.state.held.evaluation.get(driveRatio)).toBe(1.92);
  expect(session.inputs.driveRatio).toBe(2.5);
  session.reset("driveRatio");
  expect(session.inputs.driveRatio).toBe(1.92);
});

test("rename() is an entry of its own", () => {
  session.rename("Second try");
  session.rename("Second try");
  expect(session.state.build.name).toBe("Second try");
  expect(session.undo()).toBe("Renamed to Second try");
  expect(session.state.build.name).toBe(build.name);
  expect(session.undo()).toBeUndefined();
});
