import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { graphOf, type Input } from "../../lib/graph";
import { type Build, declaredValues, inputsOf } from "../../worksheets/build/build";
import { readBuild, writeBuild } from "../../worksheets/build/file";
import { airDemand, declared } from "../lib/graph/fixture";
import { anyBuild } from "./randomBuild";

const good: Build = {
  name: "Test engine",
  note: "Invented for the tests.",
  shared: declaredValues(airDemand),
  installations: [
    { key: "cell", label: "Test cell", note: "", own: {} },
    { key: "boat", label: "Boat", note: "Sea water", own: { coolantTemperature: 295, stages: "one" } },
  ],
  unknown: {},
};

type Json = Record<string, unknown>;
const asJson = (build: Build): Json => JSON.parse(writeBuild(build, airDemand)) as Json;
const read = (raw: unknown) => readBuild(JSON.stringify(raw), airDemand);

/** The good file with the field at a path changed, or dropped where the new value is undefined. */
const changed = (path: readonly (string | number)[], value: unknown): Json => {
  const file = asJson(good);
  let at = file as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) at = at[step] as Record<string | number, unknown>;
  if (value === undefined) delete at[path.at(-1)!];
  else at[path.at(-1)!] = value;
  return file;
};
const message = (raw: unknown): string => {
  const result = read(raw);
  return result.ok ? "read" : result.message;
};

describe("readBuild(writeBuild(build))", () => {
  test("is the build, bit for bit, whatever its values", () => {
    fc.assert(
      fc.property(anyBuild(airDemand), (build) => {
        const result = readBuild(writeBuild(build, airDemand), airDemand);
        if (!result.ok) throw new Error(result.message);
        expect(result.build).toEqual(build);
      }),
      { seed: 20260101, numRuns: 150 },
    );
  });

  test("writes what a person would write, in pretty JSON with the newest version", () => {
    const file = asJson(good);
    expect(file).toMatchObject({
      format: "airledger build",
      version: 1,
      name: "Test engine",
      note: "Invented for the tests.",
    });
    expect(file.inputs).toMatchObject({
      ratedPower: "700 kW",
      ambientTemperature: "25 °C",
      effectiveness: "80 %",
      stages: "two",
    });
    expect((file.inputs as Json).accessoryRun).toEqual([
      { name: "fan", drive: "belt", teeth: "40", load: "12 kW" },
      { name: "water pump", drive: "gear", teeth: "24", load: "3 kW" },
    ]);
    expect(writeBuild(good, airDemand)).toMatch(/^\{\n {2}"format": "airledger build",\n/);
  });

  test("keeps the unit of a value that was round in the other system", () => {
    const result = read(changed(["inputs", "ratedPower"], "950 hp"));
    if (!result.ok) throw new Error(result.message);
    expect(result.build.shared.ratedPower).toBeCloseTo(950 * 745.69987, 0);
    expect((asJson(result.build).inputs as Json).ratedPower).toBe("950 hp");
  });

  test("leaves the values of the other installations alone", () => {
    const result = read(asJson(good));
    if (!result.ok) throw new Error(result.message);
    expect(inputsOf(result.build, "cell")).toEqual(declared);
    expect(inputsOf(result.build, "boat")).toEqual({ ...declared, coolantTemperature: 295, stages: "one" });
    expect(result.notices).toEqual([]);
  });
});

describe("readBuild(text) refuses in one line, by the field's path", () => {
  test.each([
    [
      ["inputs", "ratedPower"],
      "950 hq",
      'inputs.ratedPower: "950 hq" is not a power: the unit "hq" is not known here; try 950 hp or 708 kW',
    ],
    [["inputs", "ratedPower"], "5 kW", "inputs.ratedPower: Rated power is 5 kW; it must be 50 to 2000 kW"],
    [["inputs", "ratedPower"], "20 °C", 'inputs.ratedPower: "20 °C" is a temperature, not a power'],
    [
      ["inputs", "ratedPower"],
      700,
      'inputs.ratedPower: 700 has no unit; write it as a text with one, such as "700 kW"',
    ],
    [["inputs", "ratedPower"], true, "inputs.ratedPower: it is true; it must be a text with number and unit"],
    [["inputs", "ratedPower"], null, "inputs.ratedPower: it is null; it must be a text with number and unit"],
    [["inputs", "ratedPower"], "a\nb", 'inputs.ratedPower: "a b" is not a number'],
    [["inputs", "stages"], "three", 'inputs.stages: Stages is "three"; it must be one of "one", "two"'],
    [["inputs", "stages"], 2, 'inputs.stages: it is 2; it must be one of "one", "two"'],
    [["inputs", "cylinders"], 5.5, "inputs.cylinders: Cylinders is 5.5; it must be a whole number, 1 to 16"],
    [["inputs", "accessoryRun"], "fan", 'inputs.accessoryRun: it is "fan"; it must be a list of rows'],
    [["inputs", "accessoryRun"], [], "inputs.accessoryRun: Accessory run has 0 rows; it must have 1 to 4"],
    [["inputs", "accessoryRun", 1], "fan", 'inputs.accessoryRun[1]: it is "fan"; it must be a row of columns'],
    [
      ["inputs", "accessoryRun", 1, "load"],
      3,
      'inputs.accessoryRun[1].load: 3 has no unit; write it as a text with one, such as "3 kW"',
    ],
    [["inputs", "accessoryRun", 1, "load"], undefined, "inputs.accessoryRun[1].load: it is missing"],
    [
      ["inputs", "accessoryRun", 1, "teeth"],
      "9",
      "inputs.accessoryRun: Accessory run, row 2, Teeth is 9; it must be 10 to 120",
    ],
    [
      ["inputs", "accessoryRun", 0, "drive"],
      1,
      'inputs.accessoryRun[0].drive: it is 1; it must be one of "belt", "gear"',
    ],
    [["inputs", "accessoryRun", 0, "name"], 1, "inputs.accessoryRun[0].name: it is 1; it must be a text"],
    [["inputs"], undefined, "inputs: it is missing"],
    [["inputs"], [], "inputs: it is a list; it must be an object of inputs and values"],
    [
      ["installations", 1, "inputs", "coolantTemperature"],
      "22 kW",
      'installations[1].inputs.coolantTemperature: "22 kW" is a power, not a temperature',
    ],
    [["installations", 1, "inputs"], 3, "installations[1].inputs: it is 3; it must be an object of inputs and values"],
    [["installations", 1, "key"], "cell", 'installations[1].key: "cell" is already the key of installations[0]'],
    [
      ["installations", 1, "key"],
      "a b",
      'installations[1].key: it is "a b"; it must be a letter and up to 39 letters, digits and hyphens',
    ],
    [
      ["installations", 1, "key"],
      "__proto__",
      'installations[1].key: it is "__proto__"; it must be a letter and up to 39 letters, digits and hyphens',
    ],
    [["installations", 1, "label"], undefined, "installations[1].label: it is missing"],
    [["installations", 0], 3, "installations[0]: it is 3; it must be an object with key, label and inputs"],
    [["installations"], [], "installations: it is a list; it must hold at least one installation"],
    [["installations"], "cell", 'installations: it is "cell"; it must be a list of installations'],
    [["name"], undefined, "name: it is missing"],
    [["name"], 3, "name: it is 3; it must be a text"],
    [["format"], "another notebook", 'format: it is "another notebook"; it must be "airledger build"'],
    [["format"], undefined, "format: it is missing"],
    [["version"], 2, "version: it is 2; it must be at most 1, the newest that this airledger reads"],
    [["version"], "1", 'version: it is "1"; it must be a whole number'],
    [["version"], 0, "version: it is 0; it must be 1 or above"],
  ] as const)("%j set to %j", (path, value, words) => {
    expect(message(changed(path, value))).toBe(words);
  });

  test.each([
    ["", "file: it is not JSON from line 1, column 1 on"],
    ['{\n  "format": "airledger build",\n  "version": 1,,\n', "file: it is not JSON from line 3, column 16 on"],
    ['{\n  "format": ["a", "b\n"]}', "file: it is not JSON from line 2, column 19 on"],
    ['{"format": 01}', "file: it is not JSON from line 1, column 13 on"],
    ['{"format": 1', "file: it is not JSON from line 1, column 13 on"],
    ['{"format": 1} x', "file: it is not JSON from line 1, column 15 on"],
    ['{"a": 1,}', "file: it is not JSON from line 1, column 9 on"],
    ["[1, 2", "file: it is not JSON from line 1, column 6 on"],
    ["<html></html>", "file: it is not JSON from line 1, column 1 on"],
    ["[]", "file: it is a list; it must be an object"],
    ["null", "file: it is null; it must be an object"],
  ])("%j, which is no file of ours", (text, words) => {
    expect(readBuild(text, airDemand)).toEqual({ ok: false, message: words });
  });

  test("a file above 1 MB, counted in bytes, not letters", () => {
    const { note: _old, ...rest } = asJson(good);
    const padded = (letter: string, count: number) => JSON.stringify({ ...rest, note: letter.repeat(count) });
    expect(readBuild(padded("é", 450_000), airDemand).ok).toBe(true);
    expect(readBuild(padded("é", 500_000), airDemand)).toEqual({
      ok: false,
      message: "file: it holds 1.00 MB; a build file may hold at most 1 MB",
    });
    expect(message({ ...rest, note: "x".repeat(3_000_000) })).toMatch(/^file: it holds 3\.00 MB;/);
  });

  test("huge nesting, of lists and of objects, finished or not", () => {
    for (const [open, close] of [
      ["[", "]"],
      ['{"a":', "}"],
    ] as const) {
      const nested = (depth: number) => `{"later": ${open.repeat(depth)}1${close.repeat(depth)}}`;
      const words = "file: it is nested more than 40 levels deep";
      expect(readBuild(nested(150_000), airDemand)).toEqual({ ok: false, message: words });
      expect(readBuild(`{"later": ${open.repeat(150_000)}`, airDemand)).toEqual({ ok: false, message: words });
      expect(readBuild(nested(41), airDemand)).toEqual({ ok: false, message: words });
      expect(readBuild(nested(30), airDemand)).toMatchObject({ message: "format: it is missing" });
    }
  });
});

describe("readBuild(text) tells what it could not use", () => {
  test("and keeps fields that it does not know, everywhere, through writing and reading again", () => {
    const file = asJson(good);
    file.colour = { hood: "red" };
    (file.inputs as Json).boost = "2 bar";
    const boat = (file.installations as Json[])[1]!;
    boat.picture = [1, 2, null];
    (boat.inputs as Json).seaDepth = "12 m";
    ((file.inputs as Json).accessoryRun as Json[])[1]!.bearing = "tapered";
    const result = read(file);
    if (!result.ok) throw new Error(result.message);
    expect(result.notices).toEqual(
      expect.arrayContaining([
        "colour: not known to this version; it is kept as it is",
        "inputs.boost: not known to this version; it is kept as it is",
        "inputs.accessoryRun[].bearing: not known to this version; it is kept as it is",
        "installations[1].picture: not known to this version; it is kept as it is",
        "installations[1].inputs.seaDepth: not known to this version; it is kept as it is",
      ]),
    );
    expect(result.notices).toHaveLength(5);
    expect(asJson(result.build)).toEqual(file);
    // They stay with their installation when the order changes.
    const turned = asJson({ ...result.build, installations: result.build.installations.toReversed() });
    expect(turned.installations).toEqual([boat, (file.installations as Json[])[0]]);
  });

  test("and gives the declared value to inputs that the file leaves out", () => {
    const result = read({ ...asJson(good), inputs: { ratedPower: "600 kW" } });
    if (!result.ok) throw new Error(result.message);
    expect(result.build.shared).toEqual({ ...declared, ratedPower: 600e3 });
    expect(result.notices).toHaveLength(airDemand.inputs.length - 1);
    expect(result.notices).toEqual(
      expect.arrayContaining([
        "inputs.engineSpeed: not in the file; it takes 2100 rpm",
        'inputs.stages: not in the file; it takes "two"',
        "inputs.accessoryRun: not in the file; it takes the 2 rows declared",
      ]),
    );
  });

  test("and counts, rather than lists, a flood of unknown fields", () => {
    const flood = Object.fromEntries(Array.from({ length: 3000 }, (_, i) => [`later${i}`, i]));
    const result = read({ ...asJson(good), ...flood });
    if (!result.ok) throw new Error(result.message);
    expect(result.notices).toHaveLength(21);
    expect(result.notices.at(-1)).toBe("2980 more fields are kept likewise");
    expect(result.build.unknown).toEqual(flood);
  });

  test("and takes bare numbers for pure numbers, and default units for texts without one", () => {
    const file = asJson(good);
    Object.assign(file.inputs as Json, {
      airFuelRatio: 30,
      effectiveness: 0.7,
      cylinders: 8,
      ratedPower: "650",
      filling: "0.95",
    });
    const result = read(file);
    expect(result).toMatchObject({
      ok: true,
      build: { shared: { airFuelRatio: 30, effectiveness: 0.7, cylinders: 8, ratedPower: 650e3, filling: 0.95 } },
    });
  });
});

describe("readBuild(text) and names that JavaScript gives a meaning", () => {
  const poisoned = writeBuild(good, airDemand)
    .replace("{", '{ "__proto__": { "polluted": 1 }, "constructor": { "prototype": { "polluted": 1 } }, "toString": 1,')
    .replace('"inputs": {', '"inputs": { "__proto__": { "polluted": 1 }, "constructor": "x", "hasOwnProperty": 1,')
    .replace('"teeth"', '"__proto__": { "polluted": 1 }, "teeth"')
    .replace('"key": "boat"', '"key": "constructor", "__proto__": { "polluted": 1 }, "valueOf": 3');

  test("leave nothing behind, are told, and come through writing unchanged", () => {
    const result = readBuild(poisoned, airDemand);
    if (!result.ok) throw new Error(result.message);
    expect(({} as Json).polluted).toBeUndefined();
    expect(Object.getPrototypeOf(result.build.shared)).toBe(Object.prototype);
    expect(Object.getPrototypeOf(result.build.unknown)).toBe(Object.prototype);
    expect(result.build.shared).not.toHaveProperty("polluted");
    const row = (result.build.shared.accessoryRun as object[])[0]!;
    expect(Object.getPrototypeOf(row)).toBe(Object.prototype);
    expect(result.notices.join("\n")).toContain("__proto__: not known to this version");
    const again = writeBuild(result.build, airDemand);
    expect(readBuild(again, airDemand)).toEqual(result);
    expect(again.match(/"__proto__"/g)).toHaveLength(4);
    expect(again).toContain('"valueOf": 3');
  });
});

describe("readBuild(anything)", () => {
  const strange = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      true,
      0,
      -1,
      1e308,
      "",
      " ",
      "NaN",
      "Infinity kW",
      "1e999 kW",
      "−5 kW",
      "{}",
      [],
      {},
      [[]],
      [null],
    ),
    fc.jsonValue({ maxDepth: 3 }),
    fc.string({ unit: "binary" }),
  );

  /** Paths of every field of the good file, lists and objects included. */
  const paths = (value: unknown, path: readonly (string | number)[] = []): (string | number)[][] => {
    if (typeof value !== "object" || value === null) return [[...path]];
    const steps = Array.isArray(value) ? value.map((inner, i) => [i, inner] as const) : Object.entries(value);
    return [
      ...(path.length > 0 ? [[...path]] : []),
      ...steps.flatMap(([step, inner]) => paths(inner, [...path, step])),
    ];
  };
  const everyPath = paths(asJson(good));

  /** A result is a refusal in one plain line that begins with a path, or a build that can be written and used. */
  const sound = (text: string): void => {
    const result = readBuild(text, airDemand);
    if (result.ok) {
      expect(readBuild(writeBuild(result.build, airDemand), airDemand)).toMatchObject({
        ok: true,
        build: result.build,
      });
      expect(Object.keys(result.build.shared).sort()).toEqual(airDemand.inputs.map(({ key }) => key).sort());
    } else {
      expect(result.message).toMatch(/^[^\p{Cc}\u2028\u2029]+$/u);
      expect(result.message).toMatch(/^(file|format|version|name|note|inputs|installations)[^:]*: /);
      expect(result.message.length).toBeLessThan(400);
    }
  };

  test("is a clear refusal or a good build with any field of the file replaced", () => {
    expect(everyPath.length).toBeGreaterThan(35);
    for (const path of everyPath) {
      for (const value of [undefined, null, true, 0, 1e308, "", "x", "1e999 kW", [], {}, [{}], [null]])
        sound(JSON.stringify(changed(path, value)));
    }
    fc.assert(
      fc.property(fc.constantFrom(...everyPath), strange, (path, value) => sound(JSON.stringify(changed(path, value)))),
      { seed: 20260101, numRuns: 500 },
    );
  });

  test("is a clear refusal or a good build with any stretch of the text cut out, or letters put in", () => {
    const text = writeBuild(good, airDemand);
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(12), fc.string({ maxLength: 6 }), (start, length, letters) =>
        sound(text.slice(0, start) + letters + text.slice(start + length)),
      ),
      { seed: 20260101, numRuns: 500 },
    );
  });

  test("never gives a place in a text that JSON.parse would read", () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const result = readBuild(text, airDemand);
        expect(result.ok ? "" : result.message).not.toContain("not JSON");
      }),
      { seed: 20260101, numRuns: 300 },
    );
  });
});

test("a graph without an input that the file sets keeps its value as unknown", () => {
  const fewer = graphOf(airDemand.inputs.filter(({ key }) => key !== "filling") as Input[]);
  const result = readBuild(writeBuild(good, airDemand), fewer);
  expect(result).toMatchObject({ ok: true, build: { unknown: { inputs: { filling: "90 %" } } } });
});
