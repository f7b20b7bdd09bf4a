import { describe, expect, test } from "vitest";
import { newtonSystem } from "../../../lib/numeric";

describe("newtonSystem", () => {
  test("finds the root of a linear system in one step", () => {
    const { root, iterations } = newtonSystem(([x, y]) => [2 * x! + y! - 5, x! - 3 * y! + 1], [0.1, 0.2], {
      longestStep: 10,
    });
    expect(root[0]).toBeCloseTo(2, 10); // by hand
    expect(root[1]).toBeCloseTo(1, 10);
    expect(iterations).toBeLessThanOrEqual(2);
  });

  // Rosenbrock's valley as a system, root (1, 1): J. J. Moré, B. S. Garbow, K. E. Hillstrom, Testing Unconstrained
  // Optimization Software, ACM TOMS 7 (1981), problem 1 (from memory).
  test("walks Rosenbrock's valley from the usual start", () => {
    const { root, residual } = newtonSystem(([x, y]) => [10 * (y! - x! ** 2), 1 - x!], [-1.2, 1]);
    expect(root[0]).toBeCloseTo(1, 11);
    expect(root[1]).toBeCloseTo(1, 11);
    expect(residual).toBeLessThanOrEqual(1e-12);
  });

  test("three unknowns, with a pivot that is zero at first", () => {
    const equations = ([x, y, z]: readonly number[]) => [y! + z! - 5, x! + z! - 4, x! * y! - 2];
    const { root } = newtonSystem(equations, [1.2, 1.7, 2.5]);
    expect(root[0]! * root[1]!).toBeCloseTo(2, 10);
    expect(root[1]! + root[2]!).toBeCloseTo(5, 10);
    expect(root[0]! + root[2]!).toBeCloseTo(4, 10);
  });

  test("steps back from where the equations do not answer", () => {
    const equations = ([x]: readonly number[]) => {
      if (x! <= 0) throw new RangeError("no logarithm");
      return [Math.log(x!) + 3];
    };
    const { root } = newtonSystem(equations, [2], { longestStep: 50 }); // a full first step would land below zero
    expect(root[0]).toBeCloseTo(Math.exp(-3), 11);
  });

  test("slopes of one system begin the next, and do not change its answer", () => {
    const equations =
      (c: number) =>
      ([x]: readonly number[]) => [x! ** 3 - c];
    const first = newtonSystem(equations(8), [1.9]);
    const second = newtonSystem(equations(8.1), first.root, { slopes: first.slopes });
    expect(second.root[0]).toBeCloseTo(8.1 ** (1 / 3), 12);
  });

  test("gives up by name after as many evaluations as it may make, and a few of the step that it is at", () => {
    let asked = 0;
    const equations = ([x]: readonly number[]) => {
      asked++;
      return [x! - 20]; // from 0 it takes forty steps of the longest kind
    };
    expect(() => newtonSystem(equations, [0], { name: "test: x", mostEvaluations: 12 })).toThrow(/^test: x was not found/);
    expect(asked).toBeGreaterThanOrEqual(12);
    expect(asked).toBeLessThan(20);
    expect(newtonSystem(equations, [0]).root[0]).toBeCloseTo(20, 9);
  });

  test("says how far it got where there is no root", () => {
    expect(() => newtonSystem(([x]) => [x! ** 2 + 1], [0.7], { name: "test: x" })).toThrow(
      "test: x was not found; the largest residual left is 1",
    );
  });

  test("lets other errors through", () => {
    const broken = () => {
      throw new TypeError("broken");
    };
    expect(() => newtonSystem(broken, [1])).toThrow(TypeError);
  });
});
