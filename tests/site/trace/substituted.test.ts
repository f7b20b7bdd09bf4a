import temml from "temml";
import { describe, expect, test } from "vitest";
import { isRefusal } from "../../../lib/graph";
import { filledIn, itemsOf, substituted, symbolName, symbolsOf, texQuantity, texText } from "../../../site/trace";
import { declaredValues } from "../../../worksheets/build/build";
import { graph, program } from "../../../worksheets/model";

const SI = { system: "SI", own: {} } as const;

/** Values by symbol; spaces are left out of what is compared, since they set nothing. */
function right(formula: string, values: Readonly<Record<string, string>>): string | undefined {
  const named = Object.entries(values).map(([tex, value]) => ({ name: symbolName(tex)!, value }));
  const found = substituted(formula, ({ base, sub }) => named.find(({ name }) => name.base === base && name.sub === sub)?.value);
  return found?.right.replace(/\s+/g, "");
}

test.each([
  { formula: "P = 2 T_5", values: { T_5: "7" }, right: "2\\cdot7" },
  { formula: "P = T_{5s} + T_5", values: { T_5: "7" }, right: "T_{5s}+7" },
  { formula: "q = \\dot m_f\\,m_f", values: { "\\dot m_f": "3", m_f: "4" }, right: "3\\,\\cdot4" },
  { formula: "P = p - \\Delta p_v", values: { p: "9", p_v: "1" }, right: "9-\\Deltap_{v}" },
  { formula: "P = p_3 - \\Delta p_v", values: { p_3: "9", "\\Delta p_v": "1" }, right: "9-1" },
  { formula: "A = \\frac{\\pi}{4}\\,d_d^2", values: { d_d: "2\\,\\text{mm}" }, right: "\\frac{\\pi}{4}\\,\\cdot\\left(2\\,\\text{mm}\\right)^{2}" },
  { formula: "p = \\rho\\,R(w_0)\\,T", values: { "\\rho": "1", w_0: "2", T: "3" }, right: "1\\,\\cdotR(2)\\,\\cdot3" },
  { formula: "P = a\\,(1 + w)", values: { a: "5", w: "6" }, right: "5\\,\\cdot(1+6)" },
  { formula: "P = a + b", values: { a: "5", b: "-6" }, right: "5+\\left(-6\\right)" },
  { formula: "AFR = \\lambda\\,L_{st}", values: { "\\lambda": "2", "L_{st}": "14", A: "1" }, right: "2\\,\\cdot14" },
  { formula: "a = b, \\qquad b = c", values: { b: "1", c: "2" }, right: "1" },
  { formula: "a = \\frac{b}{c} \\approx d", values: { b: "1", c: "2", d: "3" }, right: "\\frac{1}{2}" },
  { formula: "a = b_{x, 1}", values: { "b_{x,1}": "4" }, right: "4" },
])("substituted($formula) puts $values in their places", ({ formula, values, right: wanted }) => {
  expect(right(formula, values)).toBe(wanted);
});

test("substituted(formula) gives nothing where no value fits, and names the symbols that stay", () => {
  expect(right("P = x\\,y", { z: "1" })).toBeUndefined();
  expect(right("\\text{inputs gathered}", { z: "1" })).toBeUndefined();
  const filled = substituted("P = \\dot m\\,(h_2 - h_1)\\,h_2\\,\\pi + \\delta_z\\,R(w_0)", ({ base }) => (base.trim() === "\\dot m" ? "7" : undefined));
  expect(filled!.kept).toEqual(["h_{2}", "h_{1}", "\\delta_{z}", "w_{0}"]);
});

test("itemsOf(tex) takes any text without end", () => {
  for (const tex of ["", "}", "{", "\\", "\\frac", "a_", "a^", "\\left", "\\dot", "|_", "\\text{", "}}{{"]) expect(() => itemsOf(tex)).not.toThrow();
});

test("texQuantity(written) and texText(words) set every sign of the units", () => {
  expect(texQuantity({ number: "−1\u202f234.5", unit: "%", text: "" })).toBe("-1\\,234.5\\,\\text{\\%}");
  expect(texQuantity({ number: "1.2e−7", unit: "", text: "" })).toBe("1.2\\cdot 10^{-7}");
  for (const sign of "\\^~%#$&_{}") expect(() => temml.renderToString(texText(`a${sign}b`), { throwOnError: true })).not.toThrow();
});

describe("every cell of the worksheets", () => {
  const evaluation = program.run(declaredValues(graph));
  const symbols = symbolsOf(graph);
  const scalar = graph.cells.filter(({ kind }) => kind !== undefined);
  const filled = scalar.flatMap((cell) => {
    const found = filledIn(cell, symbols, evaluation, SI);
    return found ? [{ cell, found }] : [];
  });

  test("that can be filled in is most of them", () => {
    expect(filled.length).toBeGreaterThan(0.85 * scalar.length);
  });

  // Each beside the line whose value stands there, or none: found by reading the sheets' formulas one by one.
  test.each([
    ["what a structure reads", "matchedAirFlow", "N", "ratedSpeed"],
    ["what a structure's structure reads", "blowerFilling", "N", "ratedSpeed"],
    ["another part of the same structure", "blowerFilling", "T_3", "blowerInletTemperature"],
    ["what follows from the same structure", "turbineInletTemperature", "P_f", "frictionPower"],
    ["what follows from the same values", "matchedBlowerTorque", "n_b", "blowerSpeed"],
    ["not a filling at another speed", "idleAirFlow", "\\eta_{vb}", undefined],
    ["not a density at another point", "matchedAirFlow", "\\rho_5", undefined],
    ["not a factor for a specific heat", "rawWaterNeeded", "c_w", undefined],
    ["not a filter for a fan", "fanPower", "\\Delta p_f", undefined],
    ["not an altitude for a number", "fullestStroke", "z", undefined],
    ["not one flow of a sum over parts", "hydraulicHeatRate", "q_k", undefined],
  ])("a symbol stands for %s: %s, %s", (_, key, tex, bearer) => {
    const cell = graph.cells.find((each) => each.key === key)!;
    expect(symbols.bearer(symbolName(tex)!, cell)?.key).toBe(bearer);
  });

  test("sets its formula and its numbers without a fault", () => {
    for (const { cell, found } of filled) {
      expect(() => temml.renderToString(`${found.left} = ${found.right}`, { throwOnError: true }), cell.key).not.toThrow();
      expect(found.right, cell.key).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  test("that only multiplies and divides its operands computes from its filled-in line", () => {
    // Hand check: 869.0 kW over 44.8 % and 42.9 MJ/kg is 0.04522 kg/s, 162.8 kg/h.
    const { found } = filled.find(({ cell }) => cell.key === "fuelFlow")!;
    const numbers = [...found.right.matchAll(/-?\d+(?:\.\d+)?/g)].map(([number]) => Number(number));
    const [power, efficiency, heating] = numbers as [number, number, number];
    const flow = evaluation.get(scalar.find(({ key }) => key === "fuelFlow")!);
    if (isRefusal(flow)) throw new Error("no fuel flow");
    // The line shows four digits of each.
    expect((power * 1e3) / (efficiency / 100) / (heating * 1e6) / (flow as number)).toBeCloseTo(1, 3);
  });
});
