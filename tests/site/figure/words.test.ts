import { describe, expect, test } from "vitest";
import { fileName } from "../../../site/figure/file-name";
import { ledgerTable } from "../../../site/figure/ledger-table";
import { rowWords } from "../../../site/figure/row-words";
import { lawful } from "../../../site/figure/standalone";
import { tableIn } from "../../../site/page/tabulation";
import { figureUnits } from "../../../site/state";
import { deskOfFixture } from "../desk";

const metric = figureUnits({ system: "SI", own: {} });
const customary = figureUnits({ system: "US", own: {} });

describe("rowWords(table, row)", () => {
  test("names the row by the words at its left, and reads each number with its label and unit", () => {
    const table = {
      columns: ["Belt", "Pulley", "Teeth", ["Speed", "rev/min"] as const, ["Wrap", "°"] as const, "As it must"],
      rows: [
        ["Blower belt", "Crank", 44, 2999.96, 171.25, "yes"],
        ["Blower belt", "Idler", "smooth", 4321, -12, "–"],
      ],
    };
    expect(rowWords(table, 0)).toEqual({
      name: "Blower belt, Crank",
      value: "teeth 44, speed 3000\u00a0rev/min, wrap 171.3°, as it must yes",
    });
    expect(rowWords(table, 1)).toEqual({ name: "Blower belt, Idler, smooth", value: "speed 4321\u00a0rev/min, wrap −12°" });
    expect(rowWords(table, 2)).toBeUndefined();
  });

  test("puts a number beside the unit of its own row", () => {
    const table = { columns: ["What", "Value", "Unit", ["Share", "%"] as const], rows: [["Friction", 45.31, "kW", 7.04]] };
    expect(rowWords(table, 0)).toEqual({ name: "Friction", value: "45.31\u00a0kW, share 7.04\u00a0%" });
  });
});

describe("fileName(words, ending)", () => {
  test("keeps letters and digits of any script, with hyphens between", () => {
    expect(fileName(["Hollow Fell 9", "Boot, 450 m", "Größe: Ø ×2"], "csv")).toBe("hollow-fell-9-boot-450-m-größe-ø-2.csv");
  });

  test("cannot lead out of its folder, is never empty and never long", () => {
    expect(fileName(["../../etc/passwd\u0000", "con"], "svg")).toBe("etc-passwd-con.svg");
    expect(fileName([" ", "…"], "png")).toBe("airledger.png");
    expect(fileName(["x".repeat(500)], "csv").length).toBeLessThan(100);
  });
});

// Extensible Markup Language (XML) 1.0, fifth edition (2008), production 2.
test("lawful(text) leaves out what XML cannot hold, and nothing else", () => {
  expect(lawful("a\u0000b\u0001c\u001f\ud800d\uffff")).toBe("abcd");
  expect(lawful("Ø \t\n 𝛼 − \u202f &amp; <b>")).toBe("Ø \t\n 𝛼 − \u202f &amp; <b>");
});

test("tableIn(units, columns, rows) gives the numbers in the units shown, and the units to the headings", () => {
  const columns = [{ label: "Unit" }, { label: "Speed", kind: "rotationalSpeed" }, { label: "Torque", kind: "torque" }] as const;
  const rows = [["pump", 54, 100]];
  expect(tableIn(metric, columns, rows).columns[2]).toEqual(["Torque", "N·m"]);
  expect(tableIn(metric, columns, rows).rows[0]![1]).toBeCloseTo(3240, 9);
  // 1 lbf·ft = 1.355 817 948 N·m (exact factors: 0.3048 m, 0.453 592 37 kg, 9.806 65 m/s²).
  expect(tableIn(customary, columns, rows).rows[0]![2]).toBeCloseTo(100 / 1.355817948, 6);
});

test("ledgerTable(checks, units) has every limit, the least room first, demand and capacity in one unit", () => {
  const { standings } = deskOfFixture();
  const checks = standings.all();
  const { columns, rows } = ledgerTable(checks, metric);
  expect(rows).toHaveLength(checks.length);
  const room = rows.map((row) => row[columns.length - 2] as number);
  expect(room).toEqual([...room].sort((a, b) => a - b));
  // Fixture: 45 rev/s times 1.92 is 5184 rev/min; 95 rev/s, 5700 rev/min, is allowed.
  const blower = rows.find(([part]) => part === "blower")!;
  expect(blower[2]).toBeCloseTo(5184, 6);
  expect(blower.slice(3, 4)).toEqual(["at most"]);
  expect(blower[4]).toBeCloseTo(5700, 6);
  expect(blower[6]).toBeCloseTo((1 - 5184 / 5700) * 100, 6);
});
