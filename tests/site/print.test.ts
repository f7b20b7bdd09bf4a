import fc from "fast-check";
import { expect, test } from "vitest";
import { inputsMark } from "../../site/print/hash";
import { cssString, pageRule } from "../../site/print/margins";
import { declaredValues } from "../../worksheets/build/build";
import { graph } from "./fixture";

const declared = declaredValues(graph);

test("inputsMark(graph, values) is the same for the same inputs and another for others", () => {
  expect(inputsMark(graph, declared)).toMatch(/^[0-9a-f]{8}$/);
  expect(inputsMark(graph, { ...declared })).toBe(inputsMark(graph, declared));
  expect(inputsMark(graph, { ...declared, driveRatio: 1.94 })).not.toBe(inputsMark(graph, declared));
});

test("inputsMark() of nothing is FNV-1a's of the two signs []", () => {
  // By hand: ((0x811c9dc5 ^ 0x5b) × 0x01000193 ^ 0x5d) × 0x01000193, modulo 2³².
  const by = (hash: bigint, byte: bigint): bigint => ((hash ^ byte) * 0x01000193n) % 2n ** 32n;
  const wanted = by(by(0x811c9dc5n, 0x5bn), 0x5dn).toString(16).padStart(8, "0");
  expect(inputsMark({ ...graph, inputs: [] }, {})).toBe(wanted);
});

test("cssString(text) holds any text without ending early", () => {
  const property = fc.property(fc.string({ unit: "binary" }), (text) => {
    const inside = cssString(text).slice(1, -1);
    expect(inside).not.toMatch(/["\n\r\f;{}]/);
  });
  fc.assert(property, { seed: 20260101, numRuns: 300 });
  expect(cssString('a" } body { color: red')).toBe('"a\\22  \\7d  body \\7b  color: red"');
});

test("pageRule() puts its words into the margins", () => {
  expect(pageRule({ topLeft: "Engine", topRight: "inputs 12", bottomLeft: "today" })).toContain('@top-left { content: "Engine";');
});
