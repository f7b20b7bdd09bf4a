import fc from "fast-check";
import { expect, test } from "vitest";
import { isRefusal, Refusal } from "../../lib/graph";
import { requireNotNegative, requirePositive, requireWithin } from "../../lib/quantity";
import { refusalWords } from "../../site/state";
import { declaredValues } from "../../worksheets/build/build";
import { graph, program } from "../../worksheets/model";
import { spaced } from "../spaced";

const SI = { system: "SI", own: {} } as const;
const US = { system: "US", own: {} } as const;

/** What the page says of an error, as it travels through the graph. */
function told(fails: () => void, units: typeof SI | typeof US): string {
  try {
    fails();
  } catch (error) {
    return spaced(refusalWords(new Refusal("key", (error as Error).message).words, units));
  }
  throw new Error("it did not fail");
}

// 0 °C is 273.15 K and 32 °F; an inch is 25.4 mm, a pound a minute 0.45359237/60 kg/s (NIST SP 811, appendix B).
test.each([
  { fails: () => requireWithin("expansionVolume: hotTemperature", 833.179, [285.15, 383.15], "K"), si: "hot temperature is 560 °C; it must be 12 to 110 °C", us: "hot temperature is 1040 °F; it must be 53.6 to 230 °F" },
  { fails: () => requirePositive("meanDifference: hot end difference", -4, "K"), si: "hot end difference is -4 K; it must be above 0 K", us: "hot end difference is −7.2 Δ°F; it must be above 0 Δ°F" },
  { fails: () => requireWithin("beltRun: centreDistance", 0.0508, [0.0635, 1], "m"), si: "centre distance is 50.8 mm; it must be 63.5 to 1000 mm", us: "centre distance is 2 in; it must be 2.5 to 39.37 in" },
  { fails: () => requirePositive("chargeCoolerOutlet: pressure left after the loss", -489377, "Pa"), si: "pressure left after the loss is −489.4 kPa; it must be above 0 kPa", us: "pressure left after the loss is −70.98 psi; it must be above 0 psi" },
  { fails: () => requireWithin("fuelBulkModulus: pressure", 2.7e8, [0, 2.5e8], "Pa"), si: "pressure is 2700 bar; it must be 0 to 2500 bar", us: "pressure is 39160 psi; it must be 0 to 36259 psi" },
  { fails: () => requireNotNegative("airFlow: massFlow", -0.45359237 / 60, "kg/s"), si: "mass flow is −0.4536 kg/min; it must be 0 kg/min or above", us: "mass flow is −1 lb/min; it must be 0 lb/min or above" },
  { fails: () => requireWithin("airDemand: volumetricEfficiency", 1.7, [0.3, 1.3]), si: "volumetric efficiency is 1.7; it must be 0.3 to 1.3", us: "volumetric efficiency is 1.7; it must be 0.3 to 1.3" },
])("refusalWords() of $si", ({ fails, si, us }) => {
  expect(told(fails, SI)).toBe(si);
  expect(told(fails, US)).toBe(us);
});

test("refusalWords() keeps as many digits as tell a value from its bound", () => {
  const fails = () => requireWithin("a: temperature", 348.152, [228.15, 348.15], "K");
  expect(told(fails, SI)).toBe("temperature is 75.002 °C; it must be −45 to 75 °C");
  expect(told(fails, US)).toBe("temperature is 167.0036 °F; it must be −49 to 167 °F");
});

test("refusalWords() turns numbers in running words, and leaves kelvins there and what is read so already", () => {
  const words = "the jacket water would reach 120.0 °C and boil 26.8 K before that; the filter would take 100 kPa at 0.25 m³/s";
  expect(spaced(refusalWords(words, SI))).toBe("the jacket water would reach 120.0 °C and boil 26.8 K before that; the filter would take 100 kPa at 15 m³/min");
  expect(spaced(refusalWords(words, US))).toBe("the jacket water would reach 248 °F and boil 26.8 K before that; the filter would take 14.5 psi at 530 cfm");
});

test("refusalWords() lets no line end between a number and its unit", () => {
  expect(refusalWords("pressure is 270000000 Pa; it must be 0 to 250000000 Pa; 26.8 K before, 100 kPa", SI)).toBe(
    "pressure is 2700\u00a0bar; it must be 0 to 2500\u00a0bar; 26.8\u00a0K before, 100\u00a0kPa",
  );
});

// The sheet's lines of the lift pump are read in bar, as its pressures are bought.
test("a lift pump that is too weak is refused in the unit of its lines", () => {
  const evaluation = program.rerun(program.run(declaredValues(graph)), { liftShutOff: 3e5 }).evaluation;
  const refused = evaluation.get(graph.cells.find(({ key }) => key === "supplyLine")!) as Refusal;
  expect(spaced(refusalWords(refused.words, SI))).toMatch(/^pressure without flow is 3 bar; it must be at least the pressure at the rated flow, [\d.]+ bar$/);
  expect(spaced(refusalWords(refused.words, US))).toMatch(/^pressure without flow is 43\.51 psi; .* psi$/);
});

test("no refusal of the sheets speaks of pascals, cubic metres a second or names run together, wherever an input stands", () => {
  const start = program.run(declaredValues(graph));
  const quantities = graph.inputs.filter((input) => input.type === "quantity");
  const place = fc.tuple(fc.constantFrom(...quantities), fc.constantFrom(0, 0.25, 1));
  let refusals = 0;
  const property = fc.property(place, ([input, share]) => {
    const { evaluation } = program.rerun(start, { [input.key]: input.span[0] + share * (input.span[1] - input.span[0]) });
    for (const cell of graph.cells) {
      const value = evaluation.get(cell);
      if (!isRefusal(value) || value.root !== cell.key) continue;
      refusals += 1;
      expect(refusalWords(value.words, SI)).not.toMatch(/\d\s(?:Pa|kg\/s|m³\/s|rev\/s)\b|(?<!\p{L})[a-z]{2,}[A-Z][a-z]/u);
    }
  });
  fc.assert(property, { seed: 20260101, numRuns: 150 });
  expect(refusals).toBeGreaterThan(10);
});
