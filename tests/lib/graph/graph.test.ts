import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Cell, cell, graphOf, type Node } from "../../../lib/graph";
import { airDemand, airFlow, cells, fuelConsumption, fuelFlow, inputs, meterCapacity, of, ratedPower } from "./fixture";

/** What a cell's place depends on: its operands and the bounds of its limits. */
const needs = (node: Cell): readonly string[] => [
  ...Object.values(node.from).map((reference) => reference.key),
  ...node.limits.flatMap(({ bound }) => (typeof bound === "number" ? [] : [bound.key])),
];

describe("graphOf(nodes)", () => {
  test("holds every node once, inputs first, and finds it again by its key", () => {
    expect(airDemand.nodes).toHaveLength(inputs.length + cells.length);
    expect(airDemand.nodes).toEqual([...airDemand.inputs, ...airDemand.cells]);
    expect(new Set(airDemand.nodes)).toEqual(new Set<Node>([...inputs, ...cells]));
    for (const [index, node] of airDemand.nodes.entries()) expect(airDemand.position.get(node.key)).toBe(index);
  });

  test("puts every cell after all that it depends on, whatever the order they were given in", () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...inputs, ...cells] as Node[], { minLength: inputs.length + cells.length }),
        (given) => {
          const graph = graphOf(given);
          expect(graph.nodes).toHaveLength(given.length);
          for (const node of graph.cells) {
            const place = graph.position.get(node.key)!;
            for (const key of needs(node)) expect(graph.position.get(key)).toBeLessThan(place);
          }
        },
      ),
      { seed: 20260101, numRuns: 100 },
    );
  });

  test("takes the same node twice for once", () => {
    expect(graphOf([ratedPower, ratedPower, fuelConsumption, fuelFlow, fuelFlow]).nodes).toEqual([
      ratedPower,
      fuelConsumption,
      fuelFlow,
    ]);
  });

  test("refuses two nodes of one key", () => {
    const impostor = cell("fuelFlow", {
      label: "Another fuel flow",
      kind: "massFlow",
      symbol: "x",
      from: {},
      compute: () => of("massFlow", 1),
      formula: "1",
      source: "definition",
    });
    expect(() => graphOf([...inputs, ...cells, impostor])).toThrow('graph: the key "fuelFlow" stands for two nodes');
  });

  test("refuses a cell that depends on a node it was not given, naming both", () => {
    expect(() => graphOf([ratedPower, fuelFlow])).toThrow(
      'graph: "fuelFlow" depends on "fuelConsumption", which no sheet holds',
    );
  });

  test("refuses a cell whose limit stands on a node it was not given", () => {
    const without = [...inputs, ...cells].filter((node) => node !== meterCapacity);
    expect(() => graphOf(without)).toThrow(`graph: "${airFlow.key}" depends on "meterCapacity", which no sheet holds`);
  });

  test("refuses a namesake that is not the node depended on", () => {
    const namesake = { ...fuelConsumption };
    expect(() => graphOf([ratedPower, namesake, fuelFlow])).toThrow('"fuelFlow" depends on "fuelConsumption"');
  });
});
