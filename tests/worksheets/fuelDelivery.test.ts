/** The fuel sheet as a whole: balances between its cells, what a second pump does, and that its fuels reach the engine. */
import { describe, expect, test } from "vitest";
import { Refusal } from "../../lib/graph";
import type { Ref } from "../../lib/graph";
import * as air from "../../worksheets/air-demand/cells";
import { ratedSpeed } from "../../worksheets/brief/cells";
import { inputsOf } from "../../worksheets/build/build";
import { frontPulleys } from "../../worksheets/drive-speeds/beltTables";
import * as fuel from "../../worksheets/fuel-delivery/cells";
import * as use from "../../worksheets/fuel-delivery/consumption";
import { deliverySweep } from "../../worksheets/fuel-delivery/deliverySweep";
import { drivenPumps } from "../../worksheets/fuel-delivery/drivenPumps";
import * as fuelIn from "../../worksheets/fuel-delivery/inputs";
import { pumpArrangements } from "../../worksheets/fuel-delivery/pumpChoice";
import { fuelCoolerLoad, tankCourse } from "../../worksheets/fuel-delivery/tank";
import * as timing from "../../worksheets/fuel-delivery/timing";
import { program } from "../../worksheets/model";
import { demo, demoIn, demoInstallations } from "./demo";

const near = (value: number, expected: number) => Math.abs(value / expected - 1);

describe.each(demoInstallations)("the fuel of the demo build in the installation %s", (installation) => {
  const evaluation = demoIn(installation);
  const at = <T>(node: Ref<T>): T => evaluation.require(node);

  test("balances: supplied is burnt and returned; delivered full is injected, returned by injectors, and spare", () => {
    expect(near(at(fuel.supplyMassFlow), at(air.fuelFlow) + at(fuel.fuelReturnFlow))).toBeLessThan(1e-12);
    const swept =
      at(fuel.pumpDisplacement) * at(ratedSpeed) * at(drivenPumps).pumps[0]!.ratio * at(fuel.fuelState).density;
    const kept = swept * at(fuelIn.deadVolumeShare) * Math.expm1(at(fuelIn.railPressure) / at(fuel.fuelState).meanModulus);
    expect(near(at(fuel.pumpCapacity) + at(fuel.pumpLeakFlow) + kept, swept)).toBeLessThan(1e-12);
    expect(near(at(fuel.pumpDemand), at(air.fuelFlow) * (1 + at(fuelIn.injectorReturn)))).toBeLessThan(1e-12);
  });

  test("is the same at the promised speed of the sweep as in the single numbers", () => {
    const point = at(deliverySweep).find(({ engineSpeed }) => engineSpeed === at(ratedSpeed))!;
    // The map stands at 100 % there.
    expect(near(point.asked, at(fuel.pumpDemand))).toBeLessThan(1e-12);
    expect(near(point.delivered, at(fuel.pumpCapacity))).toBeLessThan(1e-12);
    expect(near(point.burnt, at(air.fuelFlow))).toBeLessThan(1e-12);
    expect(near(point.angle, at(fuel.injectionAngle))).toBeLessThan(1e-12);
    expect(near(point.pilot + point.main + point.after, at(fuel.injectedVolume))).toBeLessThan(1e-12);
  });

  test("leaves the nozzle in injections that do not overlap, the last of them before its limit", () => {
    const { pulses } = at(timing.injectionCourse);
    const volume = pulses.reduce((sum, pulse) => sum + pulse.volume, 0);
    expect(near(volume, at(fuel.injectedVolume))).toBeLessThan(1e-12);
    for (const [i, pulse] of pulses.slice(1).entries()) expect(pulse.start).toBeGreaterThanOrEqual(pulses[i]!.end);
    expect(at(timing.injectionEnd)).toBeLessThan(at(fuelIn.latestEnd));
    // All at one go against the mean pressure, and main alone against the crank's: alike within a few degrees.
    const main = pulses.find(({ name }) => name === "Main")!;
    const share = at(timing.mainVolume) / at(fuel.injectedVolume);
    expect(near((main.end - main.start) / share, at(fuel.injectionAngle))).toBeLessThan(0.03);
  });

  test("holds the supply line's pressures together", () => {
    const { stations, reach } = at(fuel.supplyLine);
    expect(near(stations[2]!.pressure, at(fuel.suctionPressure))).toBeLessThan(1e-12);
    expect(reach).toBeGreaterThan(at(fuel.supplyVolumeFlow));
    // At the flow that the line reaches, the inlet has what it needs.
    const again = program.rerun(evaluation, {
      [fuelIn.coolingFlow.key]: (reach * at(fuel.fuelState).density) / at(air.fuelFlow) - 1 - at(fuelIn.injectorReturn),
      // The losses are stated at the flow of the promised point: with the flow they grow.
      [fuelIn.filterLoss.key]: at(fuelIn.filterLoss) * (reach / at(fuel.supplyVolumeFlow)),
      [fuelIn.supplyCoolerLoss.key]: at(fuelIn.supplyCoolerLoss) * (reach / at(fuel.supplyVolumeFlow)) ** 2,
    }).evaluation;
    expect(near(again.require(fuel.inletPressure), at(fuelIn.inletPressureNeeded))).toBeLessThan(1e-6);
  });

  test("warms the tank by what no cooler takes, and lasts as long as the duty cycle says", () => {
    expect(at(fuelCoolerLoad)).toBeLessThanOrEqual(at(fuel.fuelReturnHeat));
    expect(near(at(tankCourse).at(-1)!.time, at(use.runTime))).toBeLessThan(1e-12);
    expect(near(at(tankCourse).at(-1)!.level, at(fuelIn.tankReserve))).toBeLessThan(1e-9);
    const { curve, cruise } = at(use.propellerRange);
    expect(near(curve.at(-1)!.fuelFlow, at(air.fuelFlow))).toBeLessThan(1e-9);
    for (const [i, point] of curve.slice(1).entries()) expect(point.range).toBeLessThan(curve[i]!.range);
    expect(cruise.range).toBeGreaterThan(at(use.boatRange));
  });
});

describe("a second high-pressure pump on the drive sheet", () => {
  const inputs = inputsOf(demo, "vehicle");
  const one = program.run(inputs);
  const rows = inputs[frontPulleys.key] as readonly { readonly role: string; readonly unit: string; readonly x: number; readonly y: number }[];
  const first = rows.find(({ role }) => role === "fuelPump")!;
  const place = rows.indexOf(first);
  const second = { ...first, unit: "Second fuel pump", x: first.x + 0.02, y: first.y - 0.14 };
  const two = program.run({ ...inputs, [frontPulleys.key]: [...rows.slice(0, place + 1), second, ...rows.slice(place + 1)] });

  test("does what the comparison said of two: twice the delivery, half of the ratio, the same peak", () => {
    const [alone, pair] = one.require(pumpArrangements);
    expect(two.require(fuel.pumpsFitted)).toBe(2);
    // The demand follows the engine, which has the same fuel pump work.
    expect(near(two.require(fuel.pumpCapacity), pair!.delivered)).toBeLessThan(1e-9);
    expect(near(pair!.delivered, 2 * alone!.delivered)).toBeLessThan(1e-12);
    expect(near(two.require(fuel.pumpRatioNeeded), pair!.ratioNeeded)).toBeLessThan(1e-9);
    expect(near(two.require(fuel.pumpMeanTorque), pair!.meanTorque)).toBeLessThan(1e-9);
    expect(two.require(fuel.pumpPeakTorque)).toBe(one.require(fuel.pumpPeakTorque));
    expect(pair!.placesLeft).toBe(alone!.placesLeft - 1);
    // Both leak: what they press together is more than one pump's.
    expect(pair!.power).toBeGreaterThan(alone!.power);
  });
});

describe("the table of fuels", () => {
  const inputs = inputsOf(demo, "vehicle");
  const before = program.run(inputs);
  const rows = inputs[fuelIn.fuelTable.key] as readonly { readonly fuel: string; readonly heatingValue: number }[];
  const changed = (name: string, entry: string, by: number) =>
    program.rerun(before, {
      [fuelIn.fuelTable.key]: rows.map((row) =>
        row.fuel === name ? { ...row, [entry]: (row as unknown as Record<string, number>)[entry]! * by } : row,
      ),
    }).evaluation;

  test("reaches the engine's air and fuel, the nozzle and the line", () => {
    const leaner = changed("roadDiesel", "heatingValue", 0.95);
    expect(leaner.require(air.fuelFlow)).toBeGreaterThan(1.04 * before.require(air.fuelFlow));
    expect(changed("roadDiesel", "hydrogen", 1.1).require(air.airFlow)).toBeGreaterThan(before.require(air.airFlow));
    expect(changed("roadDiesel", "density", 0.95).require(fuel.injectedVolume)).toBeGreaterThan(
      before.require(fuel.injectedVolume),
    );
    expect(changed("roadDiesel", "viscosity", 2).require(fuel.supplyLoss)).toBeGreaterThan(before.require(fuel.supplyLoss));
  });
  test("moves nothing by a fuel that is not chosen", () => {
    expect(changed("methylEster", "heatingValue", 0.9).require(air.fuelFlow)).toBe(before.require(air.fuelFlow));
  });
  test("takes less air for a methyl ester and more fuel", () => {
    const ester = program.rerun(before, { [fuelIn.fuelChoice.key]: "methylEster" }).evaluation;
    expect(ester.require(air.fuelFlow)).toBeGreaterThan(1.1 * before.require(air.fuelFlow));
    expect(ester.require(air.airFuelRatio)).toBeLessThan(before.require(air.airFuelRatio));
  });
  test("refuses in words a fuel that it has no row of", () => {
    const without = program.rerun(before, {
      [fuelIn.fuelTable.key]: rows.filter(({ fuel: name }) => name !== "roadDiesel"),
    }).evaluation;
    const refused = without.get(air.fuelFlow);
    expect(refused).toBeInstanceOf(Refusal);
    expect((refused as Refusal).message).toContain("the table of fuels has no row of the fuel chosen");
  });
});
