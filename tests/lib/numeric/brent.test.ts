import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { brentRoot } from "../../../lib/numeric";
import { publishedRoots } from "../../published/numeric-roots";

describe("brentRoot(f, bracket)", () => {
  // The roots are printed to ten digits, so half a unit of the tenth is what they can tell.
  test.each(publishedRoots)("meets the published root of $of", ({ f, bracket, root }) => {
    const found = brentRoot(f, bracket);
    expect(Math.abs(found.root - root)).toBeLessThan(6e-10);
    expect(found.iterations).toBeLessThan(60);
    expect(found.residual).toBe(f(found.root));
  });

  test("takes a root that lies on an end, without looking further", () => {
    expect(brentRoot((x) => x, [0, 3])).toEqual({ root: 0, iterations: 0, residual: 0 });
    expect(brentRoot((x) => x - 3, [0, 3])).toEqual({ root: 3, iterations: 0, residual: 0 });
  });

  test("finds the root of any line within the tolerance asked for, whichever way round the bracket is", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 0.1, max: 1e4, noNaN: true }),
        fc.double({ min: -8, max: 0, noNaN: true }),
        fc.boolean(),
        (root, slope, exponent, turned) => {
          const tolerance = 10 ** exponent;
          const f = (x: number) => slope * (x - root) * (1 + (x - root) ** 2);
          const found = brentRoot(f, turned ? [1700, -1500] : [-1500, 1700], { tolerance });
          expect(Math.abs(found.root - root)).toBeLessThanOrEqual(tolerance + 1e-12);
        },
      ),
      { seed: 20260101, numRuns: 200 },
    );
  });

  test("a flat function with a ninth-order root still ends, as halving would", () => {
    const found = brentRoot((x) => (x - 0.3) ** 9, [-1, 5], { tolerance: 1e-6 });
    expect(Math.abs(found.root - 0.3)).toBeLessThan(1e-6);
  });

  test("refuses by name where the function does not change sign, saying what it found", () => {
    expect(() => brentRoot((x) => x * x + 1, [-1, 2], { name: "balance: speed" })).toThrow(
      new RangeError(
        "balance: speed is not between -1 and 2; the balance is 2 at one end and 5 at the other, without change of sign",
      ),
    );
  });

  test("refuses a function that is not a number, and a tolerance that is none", () => {
    expect(() => brentRoot((x) => Math.sqrt(x) - 1, [-1, 2])).toThrow("the balance is not a number at -1");
    expect(() => brentRoot((x) => x - 1, [0, 3], { tolerance: 0 })).toThrow("tolerance is 0; it must be above 0");
    expect(() => brentRoot((x) => x - 1, [0, Number.NaN])).toThrow(RangeError);
  });
});
