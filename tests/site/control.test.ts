import fc from "fast-check";
import { expect, test } from "vitest";
import type { QuantityInput } from "../../lib/graph";
import type { Pressure } from "../../lib/quantity";
import { entry } from "../../site/control/entry";
import { keySteps } from "../../site/control/keys";
import { trackOf } from "../../site/control/track";
import { createLocks } from "../../site/state";
import { ambient, ambientPressure, bore, cylinders, driveRatio, graph, leak } from "./fixture";

const SI = { system: "SI", own: {} } as const;
const US = { system: "US", own: {} } as const;
const quantities = graph.inputs.filter((input): input is QuantityInput => input.type === "quantity");

test("a track's ends are the input's span, and places between stay within it on whole steps", () => {
  const property = fc.property(fc.constantFrom(...quantities), fc.double({ min: 0, max: 1, noNaN: true }), (input, place) => {
    const track = trackOf(input);
    const value = track.value(place);
    expect(track.value(0)).toBe(input.span[0]);
    expect(track.value(1)).toBe(input.span[1]);
    expect(track.holds(value)).toBe(true);
    const steps = (value - input.span[0]) / input.step;
    // Twelve digits are kept of a value: a whole number of steps to about 1e-6 of one.
    if (value < input.span[1]) expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
  });
  fc.assert(property, { seed: 20260101, numRuns: 300 });
});

test("a track's position undoes its value to within half a step", () => {
  const track = trackOf(driveRatio);
  for (const place of [0.1, 0.333, 0.5, 0.9]) {
    const stepShare = driveRatio.step / (driveRatio.span[1] - driveRatio.span[0]);
    expect(Math.abs(track.position(track.value(place)) - place)).toBeLessThanOrEqual(stepShare / 2 + 1e-9);
  }
});

test("a logarithmic track puts the geometric mean in the middle", () => {
  const mean = Math.sqrt(leak.span[0] * leak.span[1]);
  expect(trackOf(leak).position(mean)).toBeCloseTo(0.5, 12);
});

test("moved(value, steps) steps in value, stops at the ends, and keeps counts whole", () => {
  expect(trackOf(driveRatio).moved(1.92, 1)).toBe(1.94);
  expect(trackOf(driveRatio).moved(1.92, 0.1)).toBe(1.922);
  expect(trackOf(driveRatio).moved(1.92, Number.POSITIVE_INFINITY)).toBe(3.4);
  expect(trackOf(cylinders).moved(6, 0.1)).toBe(7);
  expect(trackOf(cylinders).moved(6, -10)).toBe(1);
});

test("keySteps(event) gives one, ten and a tenth of a step, and leaves other keys alone", () => {
  const press = (key: string, held: Partial<KeyboardEvent> = {}) =>
    keySteps({ key, shiftKey: false, altKey: false, ctrlKey: false, metaKey: false, ...held });
  expect([press("ArrowRight"), press("ArrowDown")]).toEqual([1, -1]);
  expect([press("ArrowUp", { shiftKey: true }), press("ArrowLeft", { altKey: true })]).toEqual([10, -0.1]);
  expect([press("PageDown"), press("Home")]).toEqual([-10, Number.NEGATIVE_INFINITY]);
  expect([press("a"), press("ArrowUp", { ctrlKey: true })]).toEqual([undefined, undefined]);
});

test.each([
  { input: bore, text: "5 in", units: SI, value: 0.127 },
  { input: bore, text: "4 7/8", units: US, value: 0.123825 },
  { input: bore, text: "130,5", units: SI, value: 0.1305 },
  { input: ambientPressure, text: "14 psi a", units: SI, value: 96526.6 },
  { input: ambient, text: "77", units: US, value: 298.15 },
])("entry($input.label) reads $text, a bare number in the units shown ($units.system)", ({ input, text, units, value }) => {
  const read = entry(input, input.key, text, units);
  expect(read.ok && read.value).toBeCloseTo(value, value > 1000 ? 0 : 9);
});

test("entry(input, text) refuses what is outside the span, and says the span in the units shown", () => {
  expect(entry(driveRatio, driveRatio.key, "4", SI)).toEqual({
    ok: false,
    message: '"4" is outside what this line takes, 0.5 to 3.4',
  });
  const inFahrenheit = entry(ambient, ambient.key, "200", US);
  expect(!inFahrenheit.ok && inFahrenheit.message).toContain("131\u00a0°F");
});

test("entry(input, text) refuses another kind's unit, and parts of a whole number", () => {
  expect(entry(ambient, ambient.key, "30 psi", SI).ok).toBe(false);
  expect(entry(cylinders, cylinders.key, "6.5", SI)).toEqual({ ok: false, message: '"6.5" is not a whole number' });
});

test("entry(input, text) takes a gauge pressure for an absolute one by the barometer, and says so", () => {
  const read = entry(ambientPressure, ambientPressure.key, "0.05 bar g", SI, 96e3 as Pressure);
  expect(read).toMatchObject({ ok: true, value: 101e3 });
  expect(read.ok && read.readAs).toContain("with the barometer at");
  expect(entry(ambientPressure, ambientPressure.key, "0.05 bar g", SI).ok).toBe(false);
});

test("createLocks() tells of each lock once", () => {
  const [locks, told] = [createLocks(), [] as string[]];
  locks.subscribe((key) => told.push(key));
  locks.toggle("driveRatio");
  expect(locks.has("driveRatio")).toBe(true);
  locks.toggle("driveRatio");
  expect(locks.has("driveRatio")).toBe(false);
  expect(told).toEqual(["driveRatio", "driveRatio"]);
});
