import { csvParseRows } from "d3";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { csvOf, plainNumber } from "../../../site/figure/csv";

const seed = 20260101;

describe("csvOf(table)", () => {
  test("puts units into the headings, and lines end in CR LF", () => {
    expect(csvOf({ columns: ["Unit", ["Speed", "rev/min"], ["Teeth", ""]], rows: [["Blower", 5760, 32]] })).toBe(
      "Unit,Speed [rev/min],Teeth\r\nBlower,5760,32\r\n",
    );
  });

  // RFC 4180 (2005), section 2, rules 5 to 7: quotes around fields with commas, quotes and line ends; quotes doubled.
  test("quotes what RFC 4180 asks to be quoted, and nothing else", () => {
    const rows = [["a,b", 'say "so"', "two\r\nlines", "plain words"]];
    expect(csvOf({ columns: ["p", "q", "r", "s"], rows }).split("\r\n").slice(1).join("\r\n")).toBe(
      '"a,b","say ""so""","two\r\nlines",plain words\r\n',
    );
  });

  test.each(["=1+2", "+1", "-2+3", "@SUM(A1)", "\t=1", "\r=1"])("does not let %j be taken for a formula", (text) => {
    const [, [field] = []] = csvParseRows(csvOf({ columns: ["p"], rows: [[text]] }));
    expect(field).toBe(`'${text}`);
  });

  test("leaves negative numbers numbers, and an en dash or a true minus a text", () => {
    expect(csvOf({ columns: ["p", "q", "r"], rows: [[-3.5, "–", "−3 %"]] })).toBe("p,q,r\r\n-3.5,–,−3 %\r\n");
  });

  // d3-dsv reads the files independently of what wrote them.
  test("is read back by another reader, whatever the texts and numbers are", () => {
    const text = fc.string({ unit: fc.constantFrom(..."ab\"',;=+-@\r\n\t é°\u202f".split("")), maxLength: 12 });
    const number = fc.double({ min: -1e12, max: 1e12, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(text, number, text), { minLength: 1, maxLength: 8 }), (rows) => {
        const [head, ...read] = csvParseRows(csvOf({ columns: ["First", ["Second, odd", "m"], 'Third "3"'], rows }));
        expect(head).toEqual(["First", "Second, odd [m]", 'Third "3"']);
        expect(read).toHaveLength(rows.length);
        for (const [i, [first, second, third]] of rows.entries()) {
          const line = read[i]!;
          expect(line).toHaveLength(3);
          for (const [given, found] of [[first, line[0]!], [third, line[2]!]] as const) {
            expect(found === given || found === `'${given}`).toBe(true);
            expect(found).not.toMatch(/^[=+\-@\t\r]/);
          }
          // Twelve digits are written.
          expect(Math.abs(Number(line[1]) - second)).toBeLessThanOrEqual(5e-12 * Math.abs(second));
        }
      }),
      { seed, numRuns: 300 },
    );
  });
});

describe("plainNumber(value)", () => {
  test("writes no exponent, no group sign and no idle digits", () => {
    expect([1e-9, 1234567.25, 0.1 + 0.2, 1e15, -0, -40].map(plainNumber)).toEqual([
      "0.000000001",
      "1234567.25",
      "0.3",
      "1000000000000000",
      "0",
      "-40",
    ]);
  });

  test("is empty for what is no number", () => {
    expect([Number.NaN, Number.POSITIVE_INFINITY].map(plainNumber)).toEqual(["", ""]);
  });

  test("is digits and at most one point, for every finite number", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(plainNumber(value)).toMatch(/^-?\d+(?:\.\d+)?$/);
        if (Math.abs(value) > 1e-300 && Math.abs(value) < 1e300) {
          expect(Number(plainNumber(value)) / value).toBeCloseTo(1, 10);
        }
      }),
      { seed, numRuns: 500 },
    );
  });
});
