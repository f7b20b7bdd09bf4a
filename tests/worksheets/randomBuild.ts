import fc from "fast-check";
import type { Column, Graph, Input } from "../../lib/graph";
import type { Build } from "../../worksheets/build/build";
import { measurable } from "../../worksheets/build/measured";

/** Any value that an input accepts. */
export function anyValue(input: Input): fc.Arbitrary<unknown> {
  if (input.type !== "table") return anyEntry(input);
  const columns = Object.entries(input.columns).map(([name, column]) => [name, anyEntry(column)] as const);
  const [minLength, maxLength] = input.rows;
  return fc.array(fc.record(Object.fromEntries(columns)), { minLength, maxLength });
}

/** Any build of a graph: every input set, and some inputs of some installations their own. */
export function anyBuild(graph: Graph): fc.Arbitrary<Build> {
  const values = Object.fromEntries(graph.inputs.map((input) => [input.key, anyValue(input)]));
  const key = fc.stringMatching(/^[A-Za-z][A-Za-z0-9-]{0,12}$/);
  const unknown = fc.dictionary(
    fc.string().map((name) => `later ${name}`),
    fc.jsonValue({ maxDepth: 3 }).map(withoutMinusZero),
    {
      maxKeys: 3,
    },
  );
  const plain = fc.record({
    name: fc.string({ unit: "binary" }),
    note: fc.string({ unit: "grapheme" }),
    shared: fc.record(values),
    installations: fc.uniqueArray(
      fc.record({ key, label: fc.string(), note: fc.string(), own: fc.record(values, { requiredKeys: [] }) }),
      { minLength: 1, maxLength: 3, selector: (installation) => installation.key },
    ),
    unknown,
  });
  const measurement = fc.constantFrom(...measurable(graph)).chain(({ key, kind }) => {
    // A count is measured in whole things, as it is entered.
    const value = kind === "count" ? fc.nat(1e7) : fc.double({ min: 0, max: 1e7, noNaN: true }).map((each) => each + 0);
    return value.map((each) => [key, each] as const);
  });
  const measurements = fc
    .uniqueArray(measurement, { minLength: 1, maxLength: 4, selector: ([key]) => key })
    .map((entries) => Object.fromEntries(entries));
  return fc.tuple(plain, fc.option(measurements, { nil: undefined })).map(([build, values]) =>
    values === undefined ? build : { ...build, measured: { [build.installations[0]!.key]: { ...values } } },
  );
}

function anyEntry(field: Exclude<Input, { type: "table" }> | Column): fc.Arbitrary<unknown> {
  if (field.type === "text") return fc.string({ maxLength: field.longest });
  if (field.type === "choice") return fc.constantFrom(...Object.keys(field.options));
  const [min, max] = field.span;
  if (field.kind === "count") return fc.integer({ min: Math.ceil(min), max: Math.floor(max) });
  // What the page's fields give is never −0, which no text stands for.
  const anywhere = fc.double({ min, max, noNaN: true }).map((value) => value + 0);
  const onStep = fc.nat(1000).map((steps) => Math.min(max, min + steps * field.step));
  return fc.oneof(anywhere, onStep, fc.constantFrom<number>(min, max));
}

function withoutMinusZero(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value));
}
