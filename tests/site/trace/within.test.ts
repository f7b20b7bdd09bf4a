import { describe, expect, test } from "vitest";
import { type Cell, type Evaluation, isRefusal, type Node } from "../../../lib/graph";
import { explanationOf, filledIn, itemsOf, symbolName, symbolsOf } from "../../../site/trace";
import { innerOf, innerValue, termsOf } from "../../../site/trace/within";
import { declaredValues, inputsOf } from "../../../worksheets/build/build";
import { innerQuantities, sumsAndProducts } from "../../../worksheets/innerQuantities";
import { graph, program } from "../../../worksheets/model";
import { demo } from "../../worksheets/demo";
import { evaluated } from "./evaluated";

const SI = { system: "SI", own: {} } as const;
const symbols = symbolsOf(graph);
const scalar = graph.cells.filter(({ kind }) => kind !== undefined);
const declared = program.run(declaredValues(graph));

/** Keys of the inputs on which a node stands. */
const known = new Map<Node, ReadonlySet<string>>();
function inputsUnder(node: Node): ReadonlySet<string> {
  const found = known.get(node) ?? new Set(node.type === "cell" ? Object.values(node.from).flatMap(({ key }) => [...inputsUnder(graph.nodes[graph.position.get(key)!]!)]) : [node.key]);
  known.set(node, found);
  return found;
}

describe("what formulas name within", () => {
  test("is a single symbol of the formula of each of its cells", () => {
    expect(innerQuantities.length).toBeGreaterThan(100);
    for (const { cells, symbol } of innerQuantities) {
      const name = symbolName(symbol);
      expect(name, symbol).toBeDefined();
      for (const cell of cells) expect(JSON.stringify(itemsOf(explanationOf(cell).formula)), `${cell.key}: ${symbol}`).toContain(JSON.stringify(name!.base).slice(1, -1));
    }
  });

  test("is declared once for a cell, and stands on nothing but what the cell stands on", () => {
    const seen = new Set<string>();
    for (const { cells, symbol, found } of innerQuantities) {
      for (const cell of cells) {
        expect(seen.has(`${cell.key} ${symbol}`), `${cell.key}: ${symbol}`).toBe(false);
        seen.add(`${cell.key} ${symbol}`);
        for (const ref of Object.values(found?.from ?? {})) {
          for (const input of inputsUnder(graph.nodes[graph.position.get(ref.key)!]!)) expect(inputsUnder(cell).has(input), `${cell.key}: ${symbol}, ${input}`).toBe(true);
        }
      }
    }
  });
});

test("most formulas are filled in whole, and a symbol that stays has a name", () => {
  const filled = scalar.flatMap((cell) => filledIn(cell, symbols, declared, SI) ?? []);
  expect(filled.filter(({ kept }) => kept.length === 0).length).toBeGreaterThanOrEqual(208);
  for (const { kept, named } of filled) {
    for (const tex of kept) expect(named.map(({ symbol }) => JSON.stringify(symbolName(symbol))), tex).toContain(JSON.stringify(symbolName(tex)));
  }
});

/** Whether a formula gives its own cell's value outright. */
function isExplicit(cell: Cell): boolean {
  const { formula } = explanationOf(cell);
  return symbolName(formula.split("=")[0]!) !== undefined && JSON.stringify(symbolName(formula.split("=")[0]!)) === JSON.stringify(symbolName(cell.symbol!));
}

const points: readonly (readonly [string, Evaluation])[] = [
  ["as declared", declared],
  ...demo.installations.map(({ key, label }) => [label, program.run(inputsOf(demo, key))] as const),
];

describe.each(points)("%s, the values filled in", (_, evaluation) => {
  const value = (cell: Cell): number | undefined => {
    const found = evaluation.get(cell);
    return typeof found === "number" && !isRefusal(found) ? found : undefined;
  };

  // Numbers are compared as they are, not as they are written; what is left are properties taken at a mean state.
  test("come to what the line shows, wherever plain arithmetic can read the formula", () => {
    let judged = 0;
    for (const cell of scalar.filter(isExplicit)) {
      if (termsOf(cell, evaluation)) continue;
      const shown = value(cell);
      const come = evaluated(explanationOf(cell).formula, (symbol) => {
        const within = innerOf(cell, symbol);
        if (within) return innerValue(within, evaluation);
        const node = symbols.bearer(symbol, cell);
        const filled = node && evaluation.get(node as Cell);
        return typeof filled === "number" ? filled : undefined;
      });
      if (shown === undefined || come === undefined) continue;
      judged += 1;
      const scale = cell.kind === "temperature" ? 100 : Math.abs(shown);
      expect(Math.abs(come - shown), `${cell.key}: ${come} for ${shown}`).toBeLessThanOrEqual(2e-3 * scale + 1e-9);
    }
    expect(judged).toBeGreaterThan(140);
  });

  test("of sums and products come to what the line shows", () => {
    for (const { cell } of sumsAndProducts) {
      const [shown, terms] = [value(cell), termsOf(cell, evaluation)];
      if (shown === undefined || terms === undefined) continue;
      const come = terms.reduce((sum, factors) => sum + factors.reduce((product, { value: each }) => product * each, 1), 0);
      expect(Math.abs(come - shown), `${cell.key}: ${come} for ${shown}`).toBeLessThanOrEqual(1e-6 * Math.abs(shown) + 1e-9);
    }
  });
});
