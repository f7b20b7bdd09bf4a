import { expect, test } from "vitest";
import { mathLength } from "../../site/print/math-length";

/** Nodes as the browser would have them: an element's name and its parts, or a text. */
function tree(name: string, ...parts: readonly (object | string)[]): Node {
  const childNodes = parts.map((part) => (typeof part === "string" ? { nodeType: 3, textContent: part, childNodes: [], nodeName: "#text" } : part));
  return { nodeType: 1, nodeName: name, childNodes } as unknown as Node;
}

test("mathLength() of a row is the sum of its parts; signs stand apart", () => {
  expect(mathLength(tree("mrow", tree("mi", "x"), tree("mo", "+"), tree("mn", "12.5")))).toBeCloseTo(1.35 + 2.2 + 4);
});

test("mathLength() of a fraction is that of its longer part, and scripts are small", () => {
  expect(mathLength(tree("mfrac", tree("mn", "1234"), tree("mn", "12")))).toBe(4);
  expect(mathLength(tree("msub", tree("mi", "p"), tree("mi", "max")))).toBeCloseTo(1.35 + 0.7 * 1.35 * 3);
  expect(mathLength(tree("msubsup", tree("mi", "d"), tree("mi", "in"), tree("mn", "2")))).toBeCloseTo(1.35 + 0.7 * 1.35 * 2);
});

test("mathLength() leaves out what is not shown", () => {
  expect(mathLength(tree("math", tree("mi", "x"), tree("annotation", "\\frac{x}{y}")))).toBe(1.35);
});
