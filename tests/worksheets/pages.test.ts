import { expect, test } from "vitest";
import { marginShare } from "../../lib/graph";
import { sheets } from "../../worksheets";
import { graph, nodesBySheet } from "../../worksheets/model";
import { type Block, figuresOf } from "../../worksheets/sheet";

const shownIn = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.type === "line" ? [block.node.key] : []));

test("every input and cell has its own line, on one sheet or where another sheet repeats it for reading", () => {
  const shown = new Set(sheets.flatMap(({ blocks }) => shownIn(blocks)));
  const hidden = graph.nodes.map(({ key }) => key).filter((key) => !shown.has(key));
  expect(hidden).toEqual([]);
});

test("no line stands twice", () => {
  const all = sheets.flatMap(({ blocks }) => shownIn(blocks));
  expect(all.filter((key, i) => all.indexOf(key) !== i)).toEqual([]);
});

test("prose, tabulations and figures speak of nodes that the graph holds", async () => {
  const figures = (await Promise.all(sheets.map(figuresOf))).flat();
  const spoken = sheets.flatMap(({ blocks }) =>
    blocks.flatMap((block) => {
      if (block.type === "prose") return block.parts.flatMap((part) => (typeof part === "string" ? [] : [part]));
      if (block.type === "tabulation") return [block.tabulation.of];
      return [];
    }),
  );
  expect(figures.map(({ key }) => key)).toEqual(sheets.flatMap(({ blocks }) => blocks.flatMap((block) => (block.type === "figure" ? [block.drawing.key] : []))));
  for (const { from, follow } of figures) spoken.push(...Object.values({ ...from, ...follow?.from }));
  expect(spoken.length).toBeGreaterThan(50);
  for (const reference of spoken) {
    expect(graph.nodes[graph.position.get(reference.key) ?? -1], reference.key).toBe(reference);
  }
});

test("every sheet has its question, a heading and at least one figure, and those that can hurt someone a caution", () => {
  for (const { key, answers, blocks } of sheets) {
    expect(answers.length, key).toBeGreaterThan(20);
    if (key === "brief") continue;
    expect(
      blocks.some(({ type }) => type === "figure"),
      key,
    ).toBe(true);
    expect(
      blocks.some(({ type }) => type === "caution"),
      key,
    ).toBe(true);
  }
});

test("sheets hold the nodes that their folders declare", () => {
  expect(sheets.map(({ key }) => key)).toEqual(Object.keys(nodesBySheet));
});

test("every declared value lies within its own span, and every step moves it", () => {
  for (const input of graph.inputs) {
    if (input.type !== "quantity") continue;
    expect(input.value, input.key).toBeGreaterThanOrEqual(input.span[0]);
    expect(input.value, input.key).toBeLessThanOrEqual(input.span[1]);
    expect(input.step, input.key).toBeGreaterThan(0);
    expect(input.step, input.key).toBeLessThanOrEqual(input.span[1] - input.span[0]);
  }
});

test("every cell states formula and source, and scalar cells a symbol", () => {
  for (const cell of graph.cells) {
    expect(cell.formula.length, cell.key).toBeGreaterThan(0);
    expect(cell.source.length, cell.key).toBeGreaterThan(3);
    if (cell.kind) expect(cell.symbol, cell.key).toBeTruthy();
    for (const { of } of cell.validity ?? []) {
      expect(of === "result" || of in cell.from, `${cell.key} validity of ${of}`).toBe(true);
    }
  }
});

test("margins have the sign of their room", () => {
  expect(marginShare({ kind: "power", side: "most", value: 110, bound: 100 })).toBeLessThan(0);
  expect(marginShare({ kind: "power", side: "least", value: 110, bound: 100 })).toBeGreaterThan(0);
});

test("one symbol stands for one quantity on all sheets", () => {
  const owners = new Map<string, string[]>();
  for (const node of graph.nodes) {
    if (!("symbol" in node) || node.symbol === undefined) continue;
    const symbol = node.symbol.replaceAll(/[{}\s]/g, "");
    owners.set(symbol, [...(owners.get(symbol) ?? []), node.key]);
  }
  const shared = [...owners.values()].filter((keys) => keys.length > 1);
  // what the manifold needs is what the path gives it
  expect(shared).toEqual([["manifoldPressure", "pressureNeeded"]]);
});

test("a formula begins with its cell's own symbol, or ends in what it is solved for", () => {
  const implicit = ["blowerOutletTemperature", "compressorOutletTemperature", "turbineOutletTemperature"];
  implicit.push("turbineInletTemperature", "turbineArea", "holeDiameterNeeded");
  implicit.push("matchedBlowerOutlet");
  implicit.push("wetExhaustTemperature", "wetExhaustSaturated", "backPressureRatio");
  const bare = (tex: string) => tex.replaceAll(/[{}\s]|\\[,;!]/g, "");
  const astray = graph.cells.flatMap(({ key, symbol, formula }) =>
    symbol === undefined || implicit.includes(key) || bare(formula).startsWith(`${bare(symbol)}=`) ? [] : [key],
  );
  expect(astray).toEqual([]);
});
