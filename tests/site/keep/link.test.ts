import fc from "fast-check";
import { expect, test } from "vitest";
import { basesOf } from "../../../site/keep/bases";
import { codeIn } from "../../../site/keep/code";
import { hashOf, type Opening, readCode, type Shown } from "../../../site/keep/link";
import { packed } from "../../../site/keep/packed";
import { type Build, rejoined, separated, withInput, withMeasured } from "../../../worksheets/build/build";
import { build as demo } from "../build";
import { graph } from "../fixture";

const bases = basesOf(demo, graph);
const place = { graph, bases };
const SI = { system: "SI", own: {} } as const;
const shown = (build: Build, changes: Partial<Shown> = {}): Shown => ({ build, installation: build.installations[0]!.key, units: SI, ...changes });
const through = async (what: Shown): Promise<Opening> => readCode(codeIn(await hashOf(what, place))!, place);
/** A link that says what it likes. */
const forged = async (fields: object | string) =>
  readCode(await packed(typeof fields === "string" ? fields : JSON.stringify({ from: "demo", of: "", ...fields })), place);

test("hashOf() is empty while nothing differs from the demo", async () => {
  expect(await hashOf(shown(demo), place)).toBe("");
});

test("hashOf() tells only what differs: one value takes few signs", async () => {
  const hash = await hashOf(shown(withInput(demo, "cell", "driveRatio", 2.1)), place);
  expect(hash).toMatch(/^#build=1\.[\w-]+$/);
  expect(hash.length).toBeLessThan(120);
});

test("readCode() gives the build, the installation and the units back, and measures changes from the demo", async () => {
  const changed = withInput(separated(demo, "boat", "driveRatio"), "boat", "driveRatio", 2.2);
  const units = { system: "US", own: { power: "kW" } } as const;
  const opening = await through(shown(changed, { installation: "boat", units }));
  expect(opening.build).toEqual(changed);
  expect(opening.opened).toEqual(demo);
  expect(opening.installation).toBe("boat");
  expect(opening.units).toEqual(units);
  expect(opening.notices).toEqual([]);
});

test("a link carries whatever was set, of the demo or of a new build, to the last bit", async () => {
  const ratio = fc.double({ min: 0.5, max: 3.4, noNaN: true });
  const place3 = fc.constantFrom(...demo.installations.map(({ key }) => key));
  const step: fc.Arbitrary<(build: Build) => Build> = fc.oneof(
    fc.tuple(place3, ratio).map(([key, value]) => (build: Build) => withInput(build, key, "driveRatio", value)),
    place3.map((key) => (build: Build) => separated(build, key, "ambient")),
    place3.map((key) => (build: Build) => rejoined(build, key, "ambient")),
    fc
      .tuple(place3, fc.constantFrom("fuelFlow", "blowerPower"), fc.option(ratio, { nil: undefined }))
      .map(([key, cell, value]) => (build: Build) => withMeasured(build, key, cell, value)),
    fc.string({ unit: "binary", maxLength: 40 }).map((name) => (build: Build) => ({ ...build, name })),
  );
  const property = fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 6 }), async (steps) => {
    const build = steps.reduce((sofar, next) => next(sofar), demo);
    const hash = await hashOf(shown(build), place);
    const opening = hash === "" ? { build: demo } : await readCode(codeIn(hash)!, place);
    expect(opening.build).toEqual(build);
  });
  await fc.assert(property, { seed: 20260101, numRuns: 80 });
});

test("a link carries what was measured, and only that where nothing else differs", async () => {
  const measured = withMeasured(demo, "boat", "fuelFlow", 0.0431);
  const hash = await hashOf(shown(measured), place);
  expect(hash.length).toBeLessThan(120);
  const opening = await readCode(codeIn(hash)!, place);
  expect(opening.build.measured).toEqual({ boat: { fuelFlow: 0.0431 } });
  expect(opening.opened).toEqual(demo);
});

test("a link takes away what its base had measured", async () => {
  const other = { graph, bases: basesOf(withMeasured(demo, "boat", "fuelFlow", 0.0431), graph) };
  const opening = await readCode(codeIn(await hashOf(shown(demo), other))!, other);
  expect(opening.build).toEqual(demo);
});

test("a link of a new build tells what differs from the declared values", async () => {
  const made = withInput(bases.declared, "engine", "driveRatio", 2);
  const opening = await through(shown(made));
  expect(opening.build).toEqual(made);
  expect(opening.opened).toEqual(bases.declared);
});

test("a link made beside another demo says so, whatever it changes", async () => {
  const other = { graph, bases: basesOf(withInput(demo, "cell", "driveRatio", 1), graph) };
  const hash = await hashOf(shown(withInput(other.bases.demo, "cell", "leak", 0.03)), other);
  const opening = await readCode(codeIn(hash)!, place);
  expect(opening.build.shared).toMatchObject({ leak: 0.03, driveRatio: 1.92 });
  expect(opening.notices).toEqual([expect.stringContaining("the demo differed from here")]);
});

test.each([
  ["not JSON", "{", "is not JSON"],
  ["a list", "[]", "it holds a list"],
  ["another base", { from: "theirs" }, 'from: it is "theirs"'],
  ["no sign", '{"from":"demo"}', "of: it is missing"],
  ["a value out of its span", { inputs: { driveRatio: "99" } }, "inputs.driveRatio"],
  ["a value of another kind", { inputs: { ambient: "30 psi" } }, "inputs.ambient"],
  ["not a number", { inputs: { driveRatio: "NaN" } }, "inputs.driveRatio"],
  ["a name that is no text", { name: { toString: "x" } }, "name: it is an object"],
  ["an installation shown that is not there", { installation: "constructor" }, '"constructor" is not in this build'],
  ["an installation without label", { installations: [{ key: "other" }] }, "installations[0].label"],
  ["an installation's key with markup", { installations: [{ key: "<img>", label: "x" }] }, "installations[0].key"],
  ["no installation", { installations: [] }, "installations"],
  ["a measured value of another kind", { measured: { boat: { fuelFlow: "30 psi" } } }, "measured.boat.fuelFlow"],
  ["a value measured nowhere", { measured: { constructor: { fuelFlow: "1 kg/h" } } }, "measured.constructor"],
  ["measured values that are a list", { measured: [] }, "measured"],
  ["units of no system", { units: { system: "imperial" } }, "units.system"],
  ["a unit of another kind", { units: { own: { power: "bar" } } }, "units.own.power"],
  ["a unit of no line", { units: { own: { __proto__x: "bar" } } }, "units.own.__proto__x"],
])("readCode() refuses %s and names the field", async (_, fields, words) => {
  await expect(forged(fields as object | string)).rejects.toThrow(words);
});

test("a link's names of the language's own do not reach the language", async () => {
  const text = '{"from":"demo","of":"","__proto__":{"name":"x"},"inputs":{"__proto__":{"polluted":"yes"},"constructor":{"prototype":{"polluted":"yes"}}}}';
  const opening = await forged(text);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  expect(Object.getPrototypeOf(opening.build.shared)).toBe(Object.prototype);
  expect(opening.build.name).toBe(demo.name);
  expect(opening.build.shared).toEqual(demo.shared);
  expect(opening.notices.join(" ")).toContain("not known to this version");
});

test("codeIn() leaves the addresses of sheets and lines alone", () => {
  expect(codeIn("")).toBeUndefined();
  expect(codeIn("#boost")).toBeUndefined();
  expect(codeIn("#line-ratedPower")).toBeUndefined();
  expect(codeIn("#build=1.AA")).toBe("1.AA");
});

test("hashOf() refuses a build that no link holds, and says how long it would be", async () => {
  const noise = fc.sample(fc.string({ minLength: 30_000, maxLength: 30_000 }), { seed: 20260101, numRuns: 1 })[0]!;
  await expect(hashOf(shown({ ...demo, note: noise }), place)).rejects.toThrow(/it would be \d+ kB long; a link may hold at most 16 kB/);
});
