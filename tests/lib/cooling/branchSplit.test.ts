import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Branch, branchSplit } from "../../../lib/cooling";
import { brentRoot } from "../../../lib/numeric";

const branch = (loss: number, open = 1, name = "pipe") => ({ name, loss, open }) as unknown as Branch;
const anyBranches = fc.array(
  fc.record({
    loss: fc.double({ min: 100, max: 1e5, noNaN: true }),
    open: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 1, noNaN: true })),
  }),
  { minLength: 1, maxLength: 6 },
);
const seeded = { seed: 20260401, numRuns: 300 };

describe("branchSplit(branches)", () => {
  test("closes: shares are the whole flow, and every open branch loses what all of them lose", () => {
    fc.assert(
      fc.property(anyBranches, (rows) => {
        const branches = rows.map(({ loss, open }) => branch(loss, open));
        if (rows.every(({ open }) => open === 0)) {
          expect(() => branchSplit(branches)).toThrow("are all shut");
          return;
        }
        const { shares, loss } = branchSplit(branches);
        expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(1e-12);
        rows.forEach(({ loss: own, open }, i) => {
          if (open === 0) expect(shares[i]).toBe(0);
          else expect(Math.abs((own * (shares[i]! / open) ** 2) / loss - 1)).toBeLessThan(1e-9);
        });
      }),
      seeded,
    );
  });

  // F. M. White, Fluid Mechanics, chapter 6: parallel pipes are solved by trial on the head that they have in common.
  test("is what a search for the common loss finds", () => {
    const rows = [branch(72e3), branch(8e3), branch(20e3, 0.5)];
    const flowAt = (loss: number) => rows.reduce((sum, row) => sum + row.open * Math.sqrt(loss / row.loss), 0);
    const { root } = brentRoot((loss) => flowAt(loss) - 1, [1, 1e5]);
    expect(branchSplit(rows).loss / root).toBeCloseTo(1, 9);
  });

  test("shares equal branches equally, and two of them lose a quarter of one", () => {
    const { shares, loss } = branchSplit([branch(8000), branch(8000)]);
    expect(shares).toEqual([0.5, 0.5]);
    expect(loss).toBeCloseTo(2000, 9);
    expect(branchSplit([branch(8000)])).toEqual({ shares: [1], loss: expect.closeTo(8000, 9) });
  });

  test("sends all of it through the other when one is shut, or loses nothing", () => {
    expect(branchSplit([branch(500, 0), branch(8000)]).shares).toEqual([0, 1]);
    expect(branchSplit([branch(8000), branch(0)])).toEqual({ shares: [0, 1], loss: 0 });
    expect(branchSplit([branch(0, 0.5), branch(0), branch(8000)]).shares).toEqual([0.5 / 1.5, 1 / 1.5, 0]);
    expect(branchSplit([branch(0, 0), branch(8000)])).toEqual({ shares: [0, 1], loss: expect.closeTo(8000, 9) });
  });

  test("gives a branch less and the line more to lose, the further its valve is shut", () => {
    const at = (open: number) => branchSplit([branch(8000, open), branch(8000)]);
    for (const [less, more] of [
      [0.2, 0.4],
      [0.4, 0.7],
      [0.7, 1],
    ] as const) {
      expect(at(less).shares[0]).toBeLessThan(at(more).shares[0]!);
      expect(at(less).loss).toBeGreaterThan(at(more).loss);
    }
  });

  test("names what is outside its span", () => {
    expect(() => branchSplit([branch(-1, 1, "oil cooler")])).toThrow("branchSplit: oil cooler: loss is -1 Pa");
    expect(() => branchSplit([branch(1, 1.2, "oil cooler")])).toThrow("branchSplit: oil cooler: open is 1.2");
  });
});
