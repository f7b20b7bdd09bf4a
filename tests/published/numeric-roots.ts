/** Roots of a classic test set for bracketing methods, computed with more digits than shown. */
export const publishedRoots = [
  { of: "x³ − 2x − 5", f: (x: number) => x ** 3 - 2 * x - 5, bracket: [2, 3], root: 2.094551482 },
  { of: "exp(−x) − x", f: (x: number) => Math.exp(-x) - x, bracket: [0, 1], root: 0.5671432904 },
  { of: "(x − 1)(1 + (x − 1)²)", f: (x: number) => (x - 1) * (1 + (x - 1) ** 2), bracket: [0, 3], root: 1 },
  { of: "sin x − x/2", f: (x: number) => Math.sin(x) - x / 2, bracket: [Math.PI / 2, Math.PI], root: 1.895494267 },
  { of: "x²⁰ − 1", f: (x: number) => x ** 20 - 1, bracket: [0, 5], root: 1 },
  {
    of: "exp(x) − 2 − 1/(10x)² + 2/(100x)³",
    f: (x: number) => Math.exp(x) - 2 - 1 / (10 * x) ** 2 + 2 / (100 * x) ** 3,
    bracket: [0.1, 1],
    root: 0.7032048404,
  },
] as const;
