import { expect, test } from "vitest";
import { compile } from "../../lib/graph";
import { differenceWords } from "../../site/page/measured";
import { createSession } from "../../site/state";
import { build } from "./build";
import { graph } from "./fixture";

const SI = { system: "SI", own: {} } as const;

test("differenceWords() is a share of the reading, in the unit shown", () => {
  // 141 °C for 138: 3 of 138 is 2.2 %.
  expect(differenceWords(SI, { kind: "temperature" }, 414.15, 411.15)).toBe("+2.2\u00a0% to what is predicted");
  expect(differenceWords(SI, { kind: "power" }, 80e3, 100e3)).toBe("−20\u00a0% to what is predicted");
  expect(differenceWords(SI, { kind: "power" }, 100e3, 100e3)).toBe("as predicted");
  expect(differenceWords(SI, { kind: "power" }, 1, 0)).toBe("");
});

test("measure() is an entry of its own that undo takes back, in the installation shown", () => {
  const session = createSession({ graph, program: compile(graph), build, name: "start" });
  session.show("boat");
  session.measure("fuelFlow", 0.03, "Fuel flow, measured: 108 kg/h");
  session.measure("fuelFlow", 0.03, "the same again");
  expect(session.state.build.measured).toEqual({ boat: { fuelFlow: 0.03 } });
  expect(session.state.done.map(({ name }) => name)).toEqual(["Fuel flow, measured: 108 kg/h"]);
  session.undo();
  expect(session.state.build).toEqual(build);
});
