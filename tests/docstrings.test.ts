import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import { kinds } from "../lib/quantity";
import { agrees, type Docstring, docstringsOf, examplesOf, resultType } from "./docstrings";
import { root, type Source, sourcesIn } from "./sources";

const sources = sourcesIn("lib");
const docstrings = sources.flatMap(docstringsOf);
const folderOf = (path: string) => path.split("/")[1]!;

/** Folders of numbers out of books: what their index exports says where its formula comes from, and shows one result. */
const sourced = new Set(["fluid", "engine", "charge", "fuel", "drive", "cooling", "response"]);
const indexes = new Map<string, Readonly<Record<string, unknown>>>();
for (const folder of new Set(sources.map(({ path }) => folderOf(path))))
  indexes.set(folder, await moduleAt(`lib/${folder}/index.ts`));
/** Functions that a folder's index gives away. */
const given = docstrings.filter(({ path, name }) => name in indexes.get(folderOf(path))!);
const ofBooks = given.filter(({ path }) => sourced.has(folderOf(path)));

/** Names of the branded types: massFlow is MassFlow. */
const numberTypes = new Set([
  "number",
  ...Object.keys(kinds).map((kind) => kind.charAt(0).toUpperCase() + kind.slice(1)),
]);

async function moduleAt(path: string): Promise<Readonly<Record<string, unknown>>> {
  const file = join(root, path);
  return existsSync(file) ? ((await import(pathToFileURL(file).href)) as Record<string, unknown>) : {};
}

const has = ({ tags }: Docstring, name: string) => tags.some(({ tag, text }) => tag === name && text !== "");
const told = ({ path, name }: Docstring, words: string) => `${path}: ${name} ${words}`;
const missing = (among: readonly Docstring[], words: string, holds: (each: Docstring) => boolean) =>
  among.filter((each) => !holds(each)).map((each) => told(each, words));

describe("docstringsOf(source)", () => {
  const text = `
/**
 * Power of a shaft [W]: P = 2π n M.
 * Losses are not counted.
 *
 * @param torque of the shaft [N·m]
 * @param options how
 * @source definition
 * @example shaftPower(10, { speed: 2 }) // 125.7
 */
export function shaftPower(torque: Torque, { speed, ratio = 1 }: { speed: number; ratio?: number }): Power {
  return 1;
}

/** A note that belongs to nothing. */
const x = 1;

export function bare(): { readonly a: number } {
  return { a: 1 };
}
`;
  const [first, second] = docstringsOf({ path: "lib/x/y.ts", text } as Source);

  test("takes summary, tags, signature and result apart", () => {
    expect(first).toMatchObject({
      name: "shaftPower",
      summary: "Power of a shaft [W]: P = 2π n M. Losses are not counted.",
      signature:
        "export function shaftPower(torque: Torque, { speed, ratio = 1 }: { speed: number; ratio?: number }): Power",
    });
    expect(first!.tags.map(({ tag }) => tag)).toEqual(["param", "param", "source", "example"]);
    expect(resultType(first!)).toBe("Power");
    expect(examplesOf(first!)).toEqual([{ expression: "shaftPower(10, { speed: 2 })", shown: "125.7" }]);
  });

  test("lends no function the docstring of something else", () => {
    expect(second).toMatchObject({ name: "bare", summary: "", tags: [] });
    expect(resultType(second!)).toBe("{ readonly a: number }");
  });

  test("refuses an example without a result", () => {
    expect(() => examplesOf({ ...first!, tags: [{ tag: "example", text: "shaftPower(1)" }] })).toThrow(
      'lib/x/y.ts: the example of shaftPower is not "call // result" on one line: shaftPower(1)',
    );
  });
});

describe("agrees(result, shown) holds to the digits shown", () => {
  test.each([
    [0.2155, "0.216", true],
    [0.2165, "0.216", true],
    [0.2166, "0.216", false],
    [0.2153, "0.216", false],
    [2.77776e-4, "2.7778e-4", true],
    [2.777749e-4, "2.7778e-4", false],
    [-3, "-3", true],
    [3160.064, "3160.06", true],
    [Number.NaN, "3", false],
    ["belt", '"belt"', true],
    [true, "true", true],
    [true, "false", false],
    [undefined, "3", false],
  ])("%s for %s: %s", (result, shown, same) => expect(agrees(result, shown)).toBe(same));
});

describe("every function", () => {
  test("that a folder of lib gives away has a docstring that says what it gives", () => {
    expect(given.length).toBeGreaterThan(100);
    expect(missing(given, "has no summary", ({ summary }) => summary.split(" ").length >= 3)).toEqual([]);
  });

  test("that a folder of numbers gives away names its source", () => {
    expect(missing(ofBooks, "has no @source", (each) => has(each, "source"))).toEqual([]);
  });

  test("that a folder of numbers gives away shows an example", () => {
    expect(missing(ofBooks, "has no @example", (each) => has(each, "example"))).toEqual([]);
  });

  test("that a folder of numbers gives away states the unit of the number it returns", () => {
    const numbers = ofBooks.filter((each) => numberTypes.has(resultType(each)));
    expect(
      missing(numbers, "returns a number and has no [unit] in its summary", ({ summary }) =>
        /\[[^\]]+\]/.test(summary),
      ),
    ).toEqual([]);
  });

  test("describes no parameter that it does not have", () => {
    // A parameter taken apart in the signature has no name there; the docstring may give it one.
    const named = docstrings.filter(({ signature }) => !/(?:[(,]|\.\.\.)\s*[{[]/.test(signature));
    const wrong = named.flatMap((each) =>
      each.tags
        .filter(({ tag }) => tag === "param")
        .map(({ text }) => /^[\w$]+/.exec(text)?.[0] ?? "")
        .filter((name) => !new RegExp(`\\b${name}\\??:`).test(each.signature) && !each.signature.includes(`${name} =`))
        .map((name) => told(each, `has a @param "${name}" and no such parameter`)),
    );
    expect(named.length).toBeGreaterThan(50);
    expect(wrong).toEqual([]);
  });
});

describe("examples", async () => {
  const folders = [...new Set(docstrings.map(({ path }) => folderOf(path)))];
  const own = new Map<string, Readonly<Record<string, unknown>>>();
  for (const path of new Set(docstrings.map((each) => each.path))) own.set(path, await moduleAt(path));

  /** An example may call what its folder, its own file, lib/quantity and lib/fluid export. */
  const run = (path: string, expression: string): unknown => {
    const scope = {
      ...indexes.get("quantity"),
      ...indexes.get("fluid"),
      ...own.get(path),
      ...indexes.get(folderOf(path)),
    };
    return new Function(...Object.keys(scope), `"use strict"; return (${expression});`)(...Object.values(scope));
  };

  test.each(folders)("of lib/%s give the digits shown", (folder) => {
    const wrong = docstrings
      .filter(({ path }) => folderOf(path) === folder)
      .flatMap((each) => {
        try {
          return examplesOf(each).flatMap(({ expression, shown }) => {
            const result = run(each.path, expression);
            return agrees(result, shown) ? [] : [told(each, `shows ${shown} and gives ${result}`)];
          });
        } catch (error) {
          return [told(each, `has an example that fails: ${(error as Error).message}`)];
        }
      });
    expect(wrong).toEqual([]);
  });

  test("are many", () => {
    const shown = docstrings.filter((each) => has(each, "example"));
    expect(shown.length).toBeGreaterThan(60);
  });
});
