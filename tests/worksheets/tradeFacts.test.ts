/** Facts of the trade, each common practice without a source; the demo build's own numbers are others. */
import { expect, test } from "vitest";
import { drivenSpeed, rotationSeenOnShaftEnd } from "../../lib/drive";
import { bellmouthDepression } from "../../lib/fluid";
import { type Count, inUnit, quantity, type Ratio } from "../../lib/quantity";
import { airFlow, specificFuelConsumption } from "../../worksheets/air-demand/cells";
import { inputsOf } from "../../worksheets/build/build";
import { beltRuns } from "../../worksheets/drive-speeds/beltRuns";
import { program } from "../../worksheets/model";
import { demo, demoIn, demoInstallations } from "./demo";

test("an engine of this kind at about 1,400 hp takes 220 to 250 lb/min of air", () => {
  // The demo's engine, bored to 14.5 litres for it, with the blower and intake that such an engine would have.
  const evaluation = program.run({
    ...inputsOf(demo, "test-cell"),
    ratedPower: quantity("power", 1400, "hp"),
    bore: quantity("length", 140, "mm"),
    stroke: quantity("length", 158, "mm"),
    blowerDisplacement: quantity("volumePerTurn", 6.8, "L/rev"),
    filterRatedFlow: quantity("massFlow", 110, "kg/min"),
    meterCount: 4 as Count,
  });
  const fuelRate = inUnit("specificFuelConsumption", evaluation.require(specificFuelConsumption), "g/kWh");
  expect(fuelRate).toBeGreaterThan(205);
  expect(fuelRate).toBeLessThan(245);
  const air = inUnit("massFlow", evaluation.require(airFlow), "lb/min");
  expect(air).toBeGreaterThan(220);
  expect(air).toBeLessThan(250);
});

test("a 4-inch air meter behind a bellmouth reads up to 62 to 65 lb/min at a modest velocity, four of them about 260", () => {
  const throat = (pounds: number) =>
    bellmouthDepression({
      massFlow: quantity("massFlow", pounds, "lb/min"),
      pressure: quantity("pressure", 1, "bar"),
      temperature: quantity("temperature", 25, "°C"),
      throatDiameter: quantity("length", 4, "in"),
      dischargeCoefficient: 0.98 as Ratio,
    });
  // By hand, at the density of the still air, 1.1684 kg/m³: 49.5 m/s and 51.9 m/s, Mach number 0.15; the air in the
  // throat is some 1 % thinner, so the velocity is by as much higher.
  for (const [pounds, byHand] of [
    [62, 49.48],
    [65, 51.87],
  ] as const) {
    expect(throat(pounds).velocity / byHand).toBeGreaterThan(1);
    expect(throat(pounds).velocity / byHand).toBeLessThan(1.02);
  }
  expect(throat(65).machNumber).toBeGreaterThan(0.14);
  expect(throat(65).machNumber).toBeLessThan(0.17);
  expect(4 * 65).toBe(260);
});

test("a 2:1 overdrive turns a blower at 12,600 rpm when the engine turns 6,300", () => {
  const speed = drivenSpeed({
    driverSpeed: quantity("rotationalSpeed", 6300, "rpm"),
    driverTeeth: 72 as Count,
    drivenTeeth: 36 as Count,
  });
  expect(inUnit("rotationalSpeed", speed, "rpm")).toBeCloseTo(12600, 9);
});

test.each(demoInstallations)(
  "hydraulic and fuel pumps run at or a little below crankshaft speed in %s",
  (installation) => {
    const pumps = demoIn(installation)
      .require(beltRuns)
      .flatMap(({ members }) => members)
      .filter(({ role }) => role === "hydraulicPump" || role === "fuelPump");
    expect(pumps.length).toBeGreaterThan(0);
    for (const { ratio } of pumps) {
      expect(ratio).toBeGreaterThan(0.7);
      expect(ratio).toBeLessThanOrEqual(1);
    }
  },
);

test("a unit hung on the other face of the plate turns the other way as seen on its own shaft end", () => {
  const seen = (shaftEnd: "forward" | "rearward") =>
    rotationSeenOnShaftEnd({ sense: 1, crankRotation: "clockwise", shaftEnd });
  expect(seen("forward")).toBe("clockwise");
  expect(seen("rearward")).toBe("counterclockwise");
});
