import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Cell, compile } from "../../lib/graph";
import { type Build, declaredValues } from "../../worksheets/build/build";
import { readBuild, writeBuild } from "../../worksheets/build/file";
import { evaluateCommand } from "../../worksheets/command/evaluateCommand";
import { evaluateIn, help } from "../../worksheets/command/evaluateIn";
import { commandSheet } from "../../worksheets/command/model";
import { graph, program as notebookProgram } from "../../worksheets/model";
import { sheets } from "../../worksheets";
import { lines, type Sheet, tabulated } from "../../worksheets/sheet";
import * as fixture from "../lib/graph/fixture";
import { airDemand, declared } from "../lib/graph/fixture";
import { anyBuild } from "./randomBuild";

const chargeKeys = new Set([
  "pressureRatio",
  "stageRatio",
  "stageRise",
  "deliveryTemperature",
  "chargeTemperature",
  "coolerRoom",
]);
const program = compile(airDemand);
const model = {
  graph: airDemand,
  program,
  sheets: [
    { title: "Air demand", cells: airDemand.cells.filter(({ key }) => !chargeKeys.has(key)), tabulations: [] },
    { title: "Charge", cells: airDemand.cells.filter(({ key }) => chargeKeys.has(key)), tabulations: [] },
  ],
};

const build: Build = {
  name: "Test engine",
  note: "",
  shared: declaredValues(airDemand),
  installations: [
    { key: "cell", label: "Test cell", note: "", own: {} },
    { key: "boat", label: "Work boat", note: "", own: { coolantTemperature: 295 } },
  ],
  unknown: {},
};

const files: Readonly<Record<string, string>> = {
  "engine.json": writeBuild(build, airDemand),
  "broken.json": '{ "format": "airledger build", }',
  "later.json": writeBuild(build, airDemand).replace('"version": 1', '"version": 9'),
};
const readFile = (path: string): string => {
  const text = files[path];
  if (text === undefined) throw Object.assign(new Error("ENOENT: no such file or directory"), { code: "ENOENT" });
  return text;
};
const evaluate = (...args: readonly string[]) => evaluateIn(model, args, readFile);

interface Printed {
  readonly key: string;
  readonly value: unknown;
  readonly unit: string | null;
  readonly state: string;
  readonly message?: string;
  readonly source: string;
  readonly margins: readonly Record<string, unknown>[];
}
const asJson = (...args: readonly string[]): ReadonlyMap<string, Printed> => {
  const { code, out, err } = evaluate("engine.json", "--json", ...args);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return new Map((JSON.parse(out) as Printed[]).map((each) => [each.key, each]));
};

describe("evaluate FILE", () => {
  test("prints every cell once, under its sheet, with unit and margin in line", () => {
    const { code, out, err } = evaluate("engine.json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^Test engine, Test cell\n\nAir demand\n {2}/);
    expect(out).toMatch(/\n\nCharge\n {2}/);
    for (const { label } of airDemand.cells) expect(out.split(`\n  ${label}  `)).toHaveLength(2);
    // 0.0413 kg/s and 0.9912 kg/s, by hand; the meters take 1.1 kg/s: 9.9 % of which are left.
    expect(out).toMatch(/\n {2}Fuel flow +2\.478 kg\/min\n/);
    expect(out).toMatch(/\n {2}Air flow +59\.47 kg\/min +air meters: at most 66 kg\/min, 9\.9 % left\n/);
    expect(out).toMatch(
      /\n {2}Pulleys +2 parts\n {4}Speed of the fan +3150 rpm +fan: at most 9000 rpm, 65\.0 % left\n/,
    );
  });

  test("sets numbers flush with their units under each other, without blanks at the ends of lines", () => {
    const { out } = evaluate("engine.json");
    const ends = out.split("\n").flatMap((line) => {
      const found = /^ {2}.*? {2} *[−\d][\d.,\u202f]*(e−?\d+)?(?= (?!parts)\S)/.exec(line);
      return found ? [found[0].length] : [];
    });
    expect(ends.length).toBeGreaterThan(10);
    expect(new Set(ends).size).toBe(1);
    expect(out).not.toMatch(/ \n/);
  });

  test("prints in US units when asked, and the same numbers in JSON either way", () => {
    // 0.9912 kg/s is 131.1 lb/min.
    expect(evaluate("engine.json", "--units", "us").out).toMatch(
      /\n {2}Air flow +131\.1 lb\/min +air meters: at most 145\.5 lb\/min/,
    );
    expect(evaluate("engine.json", "--json", "--units", "US").out).toBe(evaluate("engine.json", "--json").out);
  });

  test("shows the installation asked for, by key or label, and the first one otherwise", () => {
    const boat = evaluate("engine.json", "--installation", "boat");
    expect(boat.out).toMatch(/^Test engine, Work boat\n/);
    expect(evaluate("engine.json", "--installation", "work boat").out).toBe(boat.out);
    expect(evaluate("engine.json", "--installation", "cell").out).toBe(evaluate("engine.json").out);
    expect(asJson("--installation", "boat").get("chargeTemperature")!.value).toBe(
      program.run({ ...declared, coolantTemperature: 295 }).require(fixture.chargeTemperature),
    );
  });

  test("goes on past a cell that refuses, which says why, and those that wait for it", () => {
    const { code, out } = evaluate("engine.json", "--set", "ratedPower=60 kW");
    expect(code).toBe(0);
    expect(out).toMatch(/\n {2}Pressure ratio +refused: ratio is 0\.335; it must be at least 1\n/);
    expect(out).toMatch(/\n {2}Charge temperature +waits for Pressure ratio\n/);
    expect(out).toMatch(/\n {2}Air flow +5\.098 kg\/min/);
  });

  test("marks what leaves the range of its model, and what is near or past its limit", () => {
    expect(evaluate("engine.json", "--set", "ambientTemperature=-40 °C").out).toMatch(
      /Temperature rise of a stage +[\d.]+ K +outside range: inlet air of −33 to 47 °C\n/,
    );
    expect(evaluate("engine.json", "--set", "meterCapacity=60 kg/min").out).toContain(
      "at most 60 kg/min, 0.9 % left, near\n",
    );
    expect(evaluate("engine.json", "--set", "meterCapacity=50 kg/min").out).toContain(
      "at most 50 kg/min, PAST by 18.9 %\n",
    );
    const warmed = evaluate("engine.json", "--set", "ratedPower=200 kW", "--set", "coolantTemperature=380 K");
    expect(warmed.out).toContain("cooler: at least 0 K, PAST\n");
  });

  test("tells on standard error what the file holds that it does not use", () => {
    const text = files["engine.json"]!.replace('"note"', '"colour": "red", "note"');
    const { code, out, err } = evaluateIn(model, ["x.json"], () => text);
    expect({ code, err }).toEqual({ code: 0, err: "note: colour: not known to this version; it is kept as it is\n" });
    expect(out).toBe(evaluate("engine.json").out);
  });

  test("lets no line end or terminal code of a file through", () => {
    const text = files["engine.json"]!.replace("Test engine", "a\\u001b[31m\\nb").replace('"fan"', '"a\\nb\\u001b"');
    const { out } = evaluateIn(model, ["x.json"], () => text);
    expect(out).toContain("a�[31m�b, Test cell\n");
    expect(out).toContain("Speed of the a�b�");
  });
});

describe("evaluate FILE, with sheets as the page has them", () => {
  const laidOut = tabulated({
    key: "run",
    title: "Pulley by pulley",
    of: fixture.pulleys,
    columns: [
      { label: "Unit" },
      { label: "Speed", kind: "rotationalSpeed" },
      { label: "Load", kind: "power" },
      { label: "Rank" },
    ],
    rows: (run) => run.map(({ name, speed, load }, i) => [name, speed, load, i + 1]),
  });
  const sheet: Sheet = {
    key: "run",
    title: "The run",
    answers: "How fast it turns.",
    blocks: [...lines(fixture.torque), laidOut, ...lines(fixture.fuelFlow)],
    applies: { choice: fixture.stages, is: "two", otherwise: "One stage has no run." },
  };
  const own = [fixture.fuelFlow, fixture.airFlow, fixture.pulleys, fixture.torque];
  const onlySheet = [commandSheet(sheet, own, airDemand)];
  const run = (...args: readonly string[]) =>
    evaluateIn({ ...model, sheets: onlySheet }, ["engine.json", ...args], readFile).out;

  test("prints cells in reading order, and lays structured values out", () => {
    expect(run().split("\n").slice(2)).toEqual([
      "The run",
      expect.stringMatching(/^ {2}Torque +3183 N·m$/),
      expect.stringMatching(/^ {2}Pulleys +2 parts$/),
      "    Unit        Speed, rpm  Load, kW  Rank",
      "    fan               3150        12     1",
      "    water pump        5250         3     2",
      expect.stringMatching(/^ {4}Speed of the fan +3150 rpm +fan: at most/),
      expect.stringMatching(/^ {4}Speed of the water pump +5250 rpm +water pump: at most/),
      expect.stringMatching(/^ {2}Fuel flow/),
      expect.stringMatching(/^ {2}Air flow +59\.47 kg\/min +air meters: at most/),
      "",
    ]);
    expect(run("--units", "US")).toContain(
      "    Unit        Speed, rpm  Load, hp  Rank\n    fan               3150     16.09     1\n",
    );
  });

  test("says why a sheet does not count, and leaves its limits out", () => {
    const out = run("--set", "stages=one");
    expect(out).toContain("The run\n  One stage has no run.\n");
    expect(out).not.toContain("at most");
    expect(JSON.parse(run("--set", "stages=one", "--json")).every((each: Printed) => each.margins.length === 0)).toBe(
      true,
    );
  });
});

describe("evaluate FILE --json", () => {
  test("gives every cell the value that the compiled graph gives, in SI", () => {
    const at = program.run(declared);
    const printed = asJson();
    expect([...printed.keys()].sort()).toEqual(airDemand.cells.map(({ key }) => key).sort());
    for (const cell of airDemand.cells) expect(printed.get(cell.key)!.value).toEqual(at.get(cell));
  });

  test("names unit, state, margins and source", () => {
    expect(asJson().get("airFlow")).toEqual({
      key: "airFlow",
      label: "Air flow",
      value: program.run(declared).require(fixture.airFlow),
      unit: "kg/s",
      state: "ok",
      margins: [
        {
          component: "air meters",
          label: "Air flow",
          side: "most",
          value: program.run(declared).require(fixture.airFlow),
          bound: 1.1,
          unit: "kg/s",
          margin: expect.closeTo(0.0989, 4),
          standing: "inside",
        },
      ],
      source: "definition",
    });
    // A bound of zero has no share.
    const warmed = asJson("--set", "ratedPower=200 kW", "--set", "coolantTemperature=380 K");
    expect(warmed.get("coolerRoom")!.margins).toMatchObject([{ margin: null, standing: "past", bound: 0 }]);
    expect(asJson().get("pulleys")).toMatchObject({ unit: null, value: [{ name: "fan" }, { name: "water pump" }] });
  });

  test("tells the four states apart", () => {
    const states = asJson("--set", "ratedPower=60 kW");
    expect(states.get("pressureRatio")).toMatchObject({
      value: null,
      state: "refused",
      message: "ratio is 0.335; it must be at least 1",
      margins: [],
    });
    expect(states.get("chargeTemperature")).toMatchObject({
      value: null,
      state: "waits",
      message: "waits for Pressure ratio",
    });
    expect(asJson("--set", "ambientTemperature=-40 °C").get("stageRise")).toMatchObject({
      state: "outside range",
      message: "inlet air of −33 to 47 °C",
    });
    expect(states.get("airFlow")!.state).toBe("ok");
  });
});

describe("evaluate FILE --set 'input=value unit'", () => {
  test.each([
    [["ratedPower=950 hp"], { ratedPower: 950 * 550 * 0.3048 * 0.45359237 * 9.80665 }],
    [["ratedPower = 650"], { ratedPower: 650e3 }],
    [["stages=one"], { stages: "one" }],
    [["filling=85 %"], { filling: 0.85 }],
    [["coolantTemperature=68 °F", "airFuelRatio=26"], { coolantTemperature: 293.15, airFuelRatio: 26 }],
    [["airFuelRatio=26", "airFuelRatio=28"], { airFuelRatio: 28 }],
  ])("%j is in force for the run", (settings, change) => {
    const printed = asJson(...settings.flatMap((setting) => ["--set", setting]));
    const expected = program.run({ ...declared, ...change });
    // 950 hp by their definition, foot-pounds: equal to the last digit or two.
    for (const cell of [fixture.coolerDuty, fixture.torque] as readonly Cell[]) {
      expect(printed.get(cell.key)!.value).toBeCloseTo(expected.require(cell) as number, 6);
    }
  });

  test("sets single entries of a table, rows counted from 1", () => {
    const printed = asJson(
      "--set",
      "accessoryRun.2.teeth=30",
      "--set",
      "accessoryRun.1.load=10 kW",
      "--set",
      "accessoryRun.2.name=pump",
    );
    expect(printed.get("pulleys")!.value).toEqual([
      { name: "fan", speed: 52.5, load: 10e3 },
      { name: "pump", speed: 70, load: 3e3 },
    ]);
  });

  test("overrides the installation's own value", () => {
    const set = asJson("--installation", "boat", "--set", "coolantTemperature=310 K");
    expect(set.get("chargeTemperature")!.value).toBe(asJson().get("chargeTemperature")!.value);
  });
});

describe("evaluate, used wrongly, ends with code 2 and one line", () => {
  const set = (setting: string) => ["engine.json", "--set", setting];
  test.each([
    [set("ratedPower=5 kW"), "ratedPower: Rated power is 5 kW; it must be 50 to 2000 kW"],
    [
      set("ratedPower=950 hq"),
      'ratedPower: "950 hq" is not a power: the unit "hq" is not known here; try 950 hp or 708 kW',
    ],
    [set("ratedPower="), "ratedPower: nothing is typed here; write a number, in kW or with its unit"],
    [set("ratedPower"), `--set: "ratedPower" is no setting; write it as 'input=value unit'`],
    [set("=5"), `--set: "=5" is no setting; write it as 'input=value unit'`],
    [set("ratedPwer=900 kW"), 'ratedPwer: there is no input "ratedPwer"; did you mean "ratedPower"?'],
    [set("ratio=30"), 'ratio: there is no input "ratio"; did you mean "airFuelRatio"?'],
    [set("zzzzz=1"), 'zzzzz: there is no input "zzzzz"; the file\'s inputs name them all'],
    [set("__proto__=1"), '__proto__: there is no input "__proto__"; the file\'s inputs name them all'],
    [set("airFlow=1 kg/s"), "airFlow: it is worked out from fuelFlow, airFuelRatio and cannot be set"],
    [set("stages=three"), 'stages: Stages is "three"; it must be one of "one", "two"'],
    [set("stages.1=one"), 'stages.1: "stages" is one value, without rows; set it as stages=…'],
    [set("accessoryRun=3"), 'accessoryRun: "accessoryRun" is a table; set one entry, as accessoryRun.1.name=…'],
    [set("accessoryRun.3.teeth=24"), 'accessoryRun.3.teeth: row is "3"; "accessoryRun" has rows 1 to 2'],
    [set("accessoryRun.0.teeth=24"), 'accessoryRun.0.teeth: row is "0"; "accessoryRun" has rows 1 to 2'],
    [set("accessoryRun.1.teath=24"), 'accessoryRun.1.teath: there is no column "teath"; did you mean "teeth"?'],
    [set("accessoryRun.1.teeth=5"), "accessoryRun: Accessory run, row 1, Teeth is 5; it must be 10 to 120"],
    [set("accessoryRun.1.teeth=12.5"), 'accessoryRun.1.teeth: "12.5" is not a whole number'],
    [
      set("accessoryRun.1.drive=rope"),
      'accessoryRun: Accessory run, row 1, Drive is "rope"; it must be one of "belt", "gear"',
    ],
    [
      ["engine.json", "--installation", "bota"],
      '--installation: there is no installation "bota" in this build; did you mean "boat"?',
    ],
    [
      ["engine.json", "--installation", "truck"],
      '--installation: there is no installation "truck" in this build; there is "cell", "boat"',
    ],
    [["engine.json", "--units", "imperial"], '--units: it is "imperial"; it must be SI or US'],
    [["none.json"], "none.json: it cannot be read: there is no such file"],
    [["broken.json"], "broken.json: file: it is not JSON from line 1, column 32 on"],
    [["later.json"], "later.json: version: it is 9; it must be at most 1, the newest that this airledger reads"],
    [[], "FILE: no build file is named; --help tells how to name one"],
    [["engine.json", "other.json"], 'FILE: there is one too many: "other.json"; give one build file'],
    [["engine.json", "--color"], "arguments: Unknown option '--color'; --help lists the options"],
    [["engine.json", "--set"], "arguments: Option '--set <value>' argument missing; --help lists the options"],
  ])("%j", (args, words) => {
    expect(evaluate(...args)).toEqual({ code: 2, out: "", err: `${words}\n` });
  });

  test("whatever is typed", () => {
    const word = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.constantFrom(
        "--set",
        "--json",
        "--units",
        "--installation",
        "engine.json",
        "--",
        "-x",
        "US",
        "boat",
        "a=b",
        "ratedPower=1e999",
      ),
      fc
        .tuple(fc.constantFrom(...Object.keys(declared), "accessoryRun.1.teeth"), fc.string())
        .map(([key, text]) => `${key}=${text}`),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), (args) => {
        const { code, out, err } = evaluate(...args);
        if (code === 0) expect(out).not.toBe("");
        else expect([out, err]).toEqual(["", expect.stringMatching(/^[^\n]+\n$/)]);
      }),
      { seed: 20260101, numRuns: 400 },
    );
  });
});

test("evaluate --help tells every option, and needs no file", () => {
  expect(evaluate("--help")).toEqual({ code: 0, out: help, err: "" });
  for (const option of ["--installation", "--set", "--units", "--json", "--help"]) expect(help).toContain(option);
});

describe("evaluateCommand(args), on the notebook's own worksheets", () => {
  const notebook: Build = {
    name: "Notebook",
    note: "",
    shared: declaredValues(graph),
    installations: [{ key: "cell", label: "Test cell", note: "", own: {} }],
    unknown: {},
  };
  const readNotebook = () => writeBuild(notebook, graph);

  test("prints every cell of every sheet, with the values of the compiled graph", () => {
    const { code, out, err } = evaluateCommand(["x.json", "--json"], readNotebook);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const printed = JSON.parse(out) as Printed[];
    expect(printed.map(({ key }) => key).sort()).toEqual(graph.cells.map(({ key }) => key).sort());
    const at = notebookProgram.run(declaredValues(graph));
    const scalars = graph.cells.filter(({ kind }) => kind !== undefined);
    expect(scalars.length).toBeGreaterThan(80);
    for (const cell of scalars) {
      const value = at.get(cell);
      expect(printed.find(({ key }) => key === cell.key)!.value).toBe(typeof value === "number" ? value : null);
    }
  });

  test("leaves the limits of a sheet out while it does not apply", () => {
    const margins = (...args: readonly string[]) => {
      const { out } = evaluateCommand(["x.json", "--json", ...args], readNotebook);
      const printed = JSON.parse(out) as Printed[];
      return printed.find(({ key }) => key === "rawWaterSpeed")!.margins.length;
    };
    expect(margins("--set", "heatCarrier=air")).toBe(0);
    expect(margins("--set", "heatCarrier=seaWater")).toBeGreaterThan(0);
  });

  test("prints it as text under the titles of the sheets", () => {
    const { out } = evaluateCommand(["x.json"], readNotebook);
    const titles = sheets.map(({ title }) => title);
    expect(titles.length).toBeGreaterThan(4);
    expect(
      out
        .split("\n\n")
        .slice(1)
        .map((block) => block.split("\n")[0]),
    ).toEqual(titles);
    const tabulations = sheets.flatMap(({ blocks }) => blocks.filter((block) => block.type === "tabulation"));
    expect(tabulations.length).toBeGreaterThan(2);
    for (const { tabulation } of tabulations) {
      const heads = tabulation.columns.map(({ label }) => label);
      const set = out.split("\n").some((line) => line.startsWith("    ") && heads.every((head) => line.includes(head)));
      expect(set, tabulation.title).toBe(true);
    }
  });

  test("reads back what it writes, and every value of the notebook's own kinds", () => {
    fc.assert(
      fc.property(anyBuild(graph), (build) => {
        const result = readBuild(writeBuild(build, graph), graph);
        if (!result.ok) throw new Error(result.message);
        expect(result.build).toEqual(build);
      }),
      { seed: 20260101, numRuns: 25 },
    );
  });
});
