/** The fuel sheet as a whole: balances between its cells, what a second pump does, and that its fuels reach the engine. */
import { describe, expect, test } from "vitest";
import { assess, Refusal } from "../../lib/graph";
import type { Ref } from "../../lib/graph";
import * as air from "../../worksheets/air-demand/cells";
import { dutyCurve } from "../../worksheets/boat-duty/cells";
import { propellerShare } from "../../worksheets/boat-duty/inputs";
import { idleSpeed, ratedPower, ratedSpeed } from "../../worksheets/brief/cells";
import { figureUnits } from "../../site/state/figureUnits";
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
import { boatReach } from "../../worksheets/fuel-delivery/figures/boatReach";
import { dutyPlate } from "../../worksheets/marine-cooling/figures/dutyPlate";
import { program } from "../../worksheets/model";
import type { Figure } from "../../worksheets/sheet";
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
    // Willans's line by hand: at the promised speed all losses stand, and the propeller takes its share.
    const [power, indicated, share] = [at(ratedPower), at(air.indicatedPower), at(propellerShare)];
    const burnt = (at(air.fuelFlow) * (share * power + indicated - power)) / indicated;
    expect(near(curve.at(-1)!.fuelFlow, burnt)).toBeLessThan(1e-9);
    for (const [i, point] of curve.slice(1).entries()) expect(point.range).toBeLessThan(curve[i]!.range);
    expect(cruise.range).toBeGreaterThan(at(use.boatRange));
  });
});

describe("range along the propeller's curve", () => {
  const boat = demoIn("boat");
  // A curve from a fifth of the promised speed has steps of a fortieth of it: its points meet those of the range.
  const changed = (changes: object) =>
    program.rerun(boat, { [idleSpeed.key]: 0.2 * boat.require(ratedSpeed), ...changes }).evaluation;

  test.each([
    [0.4, {}],
    [0.75, {}],
    [1, {}],
    [1, { [propellerShare.key]: 0.8, [fuelIn.fuelPropellerExponent.key]: 3 }],
  ] as const)("is the same on the fuel sheet and on the boat's duty at %d of the promised speed %j", (share, changes) => {
    const evaluation = changed(changes);
    const speed = share * evaluation.require(ratedSpeed);
    const here = (other: number) => near(other, speed) < 1e-9;
    const range = evaluation.require(use.propellerRange).curve.find(({ engineSpeed }) => here(engineSpeed))!;
    const duty = evaluation.require(dutyCurve).find((point) => here(point.speed))!;
    expect(near(duty.propeller, range.power)).toBeLessThan(1e-12);
    const way = evaluation.require(fuelIn.boatSpeed) * share ** evaluation.require(fuelIn.hullExponent);
    expect(near((way * evaluation.require(use.usableFuel)) / duty.fuelFlow, range.range)).toBeLessThan(1e-12);
  });

  test("is longer with a propeller that takes less, and the figures of both sheets list the same", () => {
    const [light, usual] = [0.8, 0.93].map((share) => changed({ [propellerShare.key]: share }));
    expect(light!.require(use.cruiseRange)).toBeGreaterThan(usual!.require(use.cruiseRange));
    const units = figureUnits({ system: "SI", own: {} });
    const listed = (shown: Figure, label: string) => {
      const values = Object.fromEntries(Object.entries(shown.from).map(([name, ref]) => [name, usual!.require(ref)]));
      const { columns, rows } = shown.table(values as never, units);
      const column = (name: string) => columns.findIndex((each) => (typeof each === "string" ? each : each[0]) === name);
      const speed = column("Engine speed");
      return new Map(rows.map((row) => [row[speed] as number, row[column(label)]]));
    };
    const reach = listed(boatReach, "Range");
    const ranges = [...listed(dutyPlate, "Range")].filter(([, range]) => typeof range === "number");
    expect(ranges).toHaveLength(5);
    for (const [speed, range] of ranges) {
      expect(near(range as number, reach.get(speed) as number)).toBeLessThan(1e-12);
    }
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

describe("the duty cycle within full load", () => {
  const phase = (speed: number, power: number) => ({ phase: "Pull", time: 1, speed, power, way: 0 });
  const run = (changes: Readonly<Record<string, unknown>>) => program.rerun(demoIn("vehicle"), changes).evaluation;
  const limitOf = (changes: Readonly<Record<string, unknown>>) =>
    assess([use.duty], run(changes)).map(({ label, component, standing }) => `${component}: ${label}: ${standing}`);

  test("a phase of just the promised power is at full load, and one above it is past by name", () => {
    const [at, above] = [1, 1.001].map((power) => limitOf({ [fuelIn.dutyCycle.key]: [phase(0.5, 0.1), phase(1, power)] }));
    expect(at).toEqual(["duty cycle: Power in the phase nearest to full load, “Pull”: near"]);
    expect(above).toEqual(["duty cycle: Power in the phase nearest to full load, “Pull”: past"]);
  });

  test("full load at a phase's speed is what the map's fuel gives there", () => {
    const evaluation = run({ [fuelIn.dutyCycle.key]: [phase(0.69, 0.5)] });
    const { power, fullLoad, fuelFlow } = evaluation.require(use.duty).phases[0]!;
    // By hand: 87 % of the fuel of a stroke at 69 % of the speed, less losses with the square of speed.
    const [brake, indicated] = [ratedPower, air.indicatedPower].map((each) => evaluation.require(each));
    expect(near(fullLoad, 0.69 * 0.87 * indicated! - 0.69 ** 2 * (indicated! - brake!))).toBeLessThan(1e-9);
    expect(near(power, 0.5 * brake!)).toBeLessThan(1e-12);
    expect(fuelFlow).toBeLessThan(0.69 * 0.87 * evaluation.require(air.fuelFlow));
  });

  test("two rows of the full-load table at one speed are refused by their numbers, in the table's own words", () => {
    const rows = demoIn("vehicle").require(fuelIn.fuelCurve);
    const twice = rows.map((row, i) => (i === 5 ? { ...row, speed: rows[2]!.speed } : row));
    expect(run({ [fuelIn.fuelCurve.key]: twice }).get(deliverySweep)).toMatchObject({
      message: "full load over speed: rows 3 and 6 are both at 44 % of the promised speed; give each speed one row",
    });
  });
});
