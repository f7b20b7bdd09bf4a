import { describe, expect, test } from "vitest";
import { withoutExplanations } from "../../../.dev/explanationsApart";

describe("withoutExplanations", () => {
  test("cuts formula, source and assumptions out of a cell, and leaves all else as it stands", () => {
    const code = 'const a = cell("a", { label: "A", formula: "a = b", from: { b }, compute: ({ b }) => b, source: "x, y", assumptions: [one, "two"] });';
    expect(withoutExplanations(code)).toBe('const a = cell("a", { label: "A",  from: { b }, compute: ({ b }) => b,   });');
  });

  test("does so in structures and within functions, whatever the texts are made of", () => {
    const code = "const f = (key, n) => structure(key, { source: cited(n), formula: head + n, label });";
    expect(withoutExplanations(code)).toBe("const f = (key, n) => structure(key, {   label });");
  });

  test("leaves properties of that name elsewhere alone", () => {
    const code = 'const limit = { source: "a standard" }; other("a", { formula: "b" }); cell("c", { limits: [{ source: "kept" }] });';
    expect(withoutExplanations(code)).toBe(code);
  });
});
