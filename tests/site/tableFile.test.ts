import { describe, expect, test } from "vitest";
import { inventedCompressorPoints } from "../../lib/charge";
import { table, textColumn } from "../../lib/graph";
import { readRows } from "../../site/control/tableFile";
import { compressorPoints } from "../../worksheets/matching/inputs";

describe("readRows(input, text, system)", () => {
  test("gives all rows of a sound file, in SI", () => {
    const read = readRows(compressorPoints, inventedCompressorPoints, "SI");
    expect(read).toMatchObject({ ok: true, rows: { length: 41 } });
    expect(read.ok && read.rows[0]).toMatchObject({ pressureRatio: 1.3, efficiency: 0.679, flow: 0.113 });
  });

  test("refuses a file by the numbers of its bad lines, the first few of them", () => {
    const bad = inventedCompressorPoints.replaceAll("1.3", "high");
    const read = readRows(compressorPoints, bad, "SI");
    expect(!read.ok && read.message).toMatch(/^line 5: .*; line 6: .*/);
    const worse = inventedCompressorPoints.replaceAll(/^0\./gm, "x.");
    const refused = readRows(compressorPoints, worse, "SI");
    expect(!refused.ok && refused.message).toMatch(/^line 5: .*; and 37 more$/);
  });

  test("holds the rows against the table's own count and spans", () => {
    const [title, ...lines] = ["corrected flow [kg/s], pressure ratio, efficiency [%], wheel speed [rev/min]", "0.1, 1.3, 70, 50000"];
    const few = readRows(compressorPoints, ["reference: 298 K, 100 kPa", title, ...lines].join("\n"), "SI");
    expect(!few.ok && few.message).toMatch(/has 1 row; it must have 6 to 120/);
  });

  test("says so where a table has no reader", () => {
    const plain = table("plain", { label: "A plain table", columns: { name: textColumn({ label: "Name", longest: 9 }) }, rows: [1, 3], value: [{ name: "a" }] });
    expect(readRows(plain as never, "a", "SI")).toEqual({ ok: false, message: "A plain table is not read from files" });
  });

  test("an error that is no refusal is not swallowed", () => {
    const broken = { ...compressorPoints, reader: { label: "Open", read: () => { throw new TypeError("broken"); } } };
    expect(() => readRows(broken as never, "a", "SI")).toThrow("broken");
  });
});
