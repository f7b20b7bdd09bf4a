import fc from "fast-check";
import { expect, test } from "vitest";
import type { QuantityInput } from "../../lib/graph";
import { unitsOf } from "../../lib/quantity";
import { createSession, written, writtenInput } from "../../site/state";
import { writeBuild } from "../../worksheets/build/file";
import { graph, program } from "../../worksheets/model";
import { anyBuild } from "../worksheets/randomBuild";

const quantities = graph.inputs.filter((input): input is QuantityInput => input.type === "quantity");

test("choosing units, of all lines or of one, changes no number that is kept, to the last bit", () => {
  const choice = fc.record({
    system: fc.constantFrom("SI" as const, "US" as const),
    own: fc
      .constantFrom(...quantities)
      .chain((input) => fc.constantFrom(...unitsOf(input.kind)).map(({ symbol }) => ({ [input.key]: symbol as string }))),
  });
  const property = fc.property(anyBuild(graph), fc.array(choice, { minLength: 1, maxLength: 4 }), (build, choices) => {
    const session = createSession({ graph, program, build, name: "start" });
    const before = writeBuild(session.state.build, graph);
    for (const units of choices) {
      session.choose(units);
      // The page writes every line anew; that must not touch what it writes.
      for (const input of quantities) writtenInput(session.state.units, input, session.inputs[input.key] as number);
      for (const input of quantities.slice(0, 5)) written(session.state.units, input, session.inputs[input.key] as number);
    }
    expect(session.state.build).toBe(build);
    expect(writeBuild(session.state.build, graph)).toBe(before);
    expect(session.state.done).toEqual([]);
  });
  fc.assert(property, { seed: 20260101, numRuns: 25 });
});
