import { describe, expect, test } from "vitest";
import { circlesOf, type Source, sourcesIn, specifiersOf } from "./sources";

const sources = sourcesIn("lib", "worksheets", "site");
const byPath = new Map(sources.map((source) => [source.path, source]));
const inHouse = (part: string) => sources.filter(({ path }) => path.startsWith(`${part}/`));

/** What each folder of lib may import beside itself. */
const grounds: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  numeric: ["quantity"],
  graph: ["quantity"],
  fluid: ["quantity", "numeric"],
  engine: ["quantity", "numeric", "fluid"],
  fuel: ["quantity", "numeric", "fluid"],
  drive: ["quantity", "numeric", "fluid"],
  cooling: ["quantity", "numeric", "fluid"],
  charge: ["quantity", "numeric", "fluid", "engine"],
  response: ["quantity", "numeric", "fluid", "engine", "fuel", "drive", "cooling", "charge"],
};

/** Things of a browser, a clock, chance or the network. Names that are also plain words count with their members only. */
const worldly = new RegExp(
  [
    String.raw`\b(?:document|navigator|localStorage|sessionStorage|indexedDB|globalThis|process)\s*[.[]`,
    String.raw`\bwindow\.(?:add|document|location|match|open|request|set)`,
    String.raw`\bperformance\.(?:now|mark|measure)`,
    String.raw`\b(?:fetch|requestAnimationFrame|setTimeout|setInterval|setImmediate|queueMicrotask)\(`,
    String.raw`\b(?:XMLHttpRequest|WebSocket|Worker|HTML\w*Element|SVG\w*Element)\b`,
    String.raw`\bDate\b|\bMath\.random\b|\bcrypto\.|\bIntl\.`,
  ].join("|"),
);

/** Every file that some files import, near or far, and themselves. */
function reachedFrom(starts: readonly Source[]): readonly Source[] {
  const reached = new Set<Source>(starts);
  for (const source of reached) {
    for (const path of source.imports) {
      const next = byPath.get(path);
      if (next) reached.add(next);
    }
  }
  return [...reached];
}

const told = (source: Source, words: string) => `${source.path} ${words}`;

test("the tests of the house read the house", () => {
  expect(sources.length).toBeGreaterThan(60);
  const links = sources.reduce((sum, { imports }) => sum + imports.length, 0);
  expect(links).toBeGreaterThan(sources.length);
});

test("the words of the world are told from plain words", () => {
  for (const code of [
    "document.title",
    "window.addEventListener()",
    "performance.now()",
    "x: SVGElement",
    "new Date()",
    "Math.random()",
  ]) {
    expect(code).toMatch(worldly);
  }
  for (const code of ["const window = 3; window / 2", "performance * 2", "updated", "documented.x", "processed[0]"]) {
    expect(code).not.toMatch(worldly);
  }
});

test("specifiersOf(text) finds every way to import, and none in comments", () => {
  const text = `
    import { a, type B } from "./a";
    import type {
      C,
    } from '../c';
    export * from "./d";
    export { e as f } from "./e";
    import "./style.css";
    const late = () => import("./late");
    new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    // import { x } from "./x";
    /* import "./y"; */
    const address = "https://example.org"; import z from "./z";
    export const from = 3;
  `;
  expect([...specifiersOf(text)].sort()).toEqual(
    ["../c", "./a", "./d", "./e", "./late", "./style.css", "./worker.ts", "./z"].sort(),
  );
});

test("circlesOf(imports) finds circles of any length, and nothing in a tree", () => {
  const circles = (links: Readonly<Record<string, readonly string[]>>) => circlesOf(new Map(Object.entries(links)));
  expect(circles({ a: ["b", "c"], b: ["d"], c: ["d"], d: [] })).toEqual([]);
  expect(circles({ a: ["b"], b: ["c"], c: ["a", "d"], d: [] })).toEqual([["a", "b", "c"]]);
  expect(circles({ a: ["a"], b: [] })).toEqual([["a"]]);
  expect(circles({ a: ["b"], b: ["a"], c: ["a", "d"], d: ["c"] })).toEqual([
    ["a", "b"],
    ["c", "d"],
  ]);
});

describe("imports", () => {
  test("lead to files that are there", () => {
    expect(
      sources.flatMap((source) => source.missing.map((name) => told(source, `imports ${name}, which is not there`))),
    ).toEqual([]);
  });

  test("run one way: site → worksheets → lib", () => {
    const forbidden: Readonly<Record<string, readonly string[]>> = {
      lib: ["worksheets", "site", "tests", ".dev"],
      worksheets: ["site", "tests", ".dev"],
      site: ["tests", ".dev"],
    };
    const wrong = sources.flatMap((source) =>
      source.imports
        .filter((path) => forbidden[source.path.split("/")[0]!]!.includes(path.split("/")[0]!))
        .map((path) => told(source, `imports ${path}`)),
    );
    expect(wrong).toEqual([]);
  });

  test("run one way inside lib: quantity, numeric → fluid → machines → response", () => {
    const wrong = inHouse("lib").flatMap((source) => {
      const [, folder = ""] = source.path.split("/");
      const below = grounds[folder];
      if (below === undefined) return [told(source, `lies in lib/${folder}, which has no place in the house`)];
      return source.imports
        .filter((path) => path.startsWith("lib/"))
        .filter((path) => ![folder, ...below].includes(path.split("/")[1]!))
        .map((path) => told(source, `imports ${path}`));
    });
    expect(wrong).toEqual([]);
  });

  test("make no circles", () => {
    expect(circlesOf(new Map(sources.map(({ path, imports }) => [path, imports])))).toEqual([]);
  });

  test("of lib are of lib alone: no packages, no built-in modules", () => {
    expect(inHouse("lib").flatMap((source) => source.packages.map((name) => told(source, `imports ${name}`)))).toEqual(
      [],
    );
  });

  test("of worksheets name few packages, and built-in modules of Node for the command line alone", () => {
    const wrong = inHouse("worksheets").flatMap((source) => {
      const allowed = source.path.startsWith("worksheets/command/") ? /^node:/ : /^(?:d3|valibot)$/;
      return source.packages.filter((name) => !allowed.test(name)).map((name) => told(source, `imports ${name}`));
    });
    expect(wrong).toEqual([]);
  });
});

test("lib, and all that the cells of the worksheets rest on, know no page, no drawing, no clock and no chance", () => {
  const cells = inHouse("worksheets").filter(({ path }) => /\/(?:cells|inputs)(?:\/index)?\.ts$/.test(path));
  expect(cells.length).toBeGreaterThan(0);
  const wrong = reachedFrom([...inHouse("lib"), ...cells]).flatMap((source) => [
    ...source.packages.map((name) => told(source, `imports ${name}`)),
    ...source.imports.filter((path) => path.startsWith("site/")).map((path) => told(source, `imports ${path}`)),
    ...[worldly.exec(source.code)].flatMap((found) => (found ? [told(source, `uses ${found[0]}`)] : [])),
  ]);
  expect(wrong).toEqual([]);
});

test("an index only re-exports", () => {
  const wrong = inHouse("lib")
    .filter(({ path }) => path.endsWith("/index.ts"))
    .filter(({ code }) =>
      code
        .split(";")
        .some((statement) => statement.trim() !== "" && !/^export\b[^=]*\bfrom\s*""$/.test(statement.trim())),
    );
  expect(wrong.map(({ path }) => path)).toEqual([]);
});

test("names are exported by name, never by default", () => {
  const wrong = [...inHouse("lib"), ...inHouse("worksheets")].filter(({ code }) => /\bexport default\b/.test(code));
  expect(wrong.map(({ path }) => path)).toEqual([]);
});

test("no file is longer than 250 lines, but those in which a sheet declares its inputs and cells", () => {
  const declares = /^worksheets\/[^/]+\/(?:cells|inputs)\.ts$/;
  const long = sources
    .filter(({ path }) => !declares.test(path))
    .map(({ path, text }) => ({ path, lines: text.split("\n").length - 1 }))
    .filter(({ lines }) => lines > 250);
  expect(long).toEqual([]);
});
