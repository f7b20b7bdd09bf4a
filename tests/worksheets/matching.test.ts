/** The sheet that works from chosen parts: against the sheets that work from the promise, and against a slow search. */
import { describe, expect, test } from "vitest";
import { attainable, coolingEffectiveness, operatingPoint } from "../../lib/charge";
import { dryAir } from "../../lib/fluid";
import { Refusal, type ScalarCell } from "../../lib/graph";
import type { MassFlow, RotationalSpeed, Temperature } from "../../lib/quantity";
import * as air from "../../worksheets/air-demand/cells";
import { excessAirRatio } from "../../worksheets/air-demand/inputs";
import * as boost from "../../worksheets/boost/cells";
import { demandBuild } from "../../worksheets/boost/demand";
import * as boostIn from "../../worksheets/boost/inputs";
import * as brief from "../../worksheets/brief/cells";
import { inputsOf } from "../../worksheets/build/build";
import { blowerTorque } from "../../worksheets/drive-speeds/cells";
import * as fuel from "../../worksheets/fuel-delivery/cells";
import { injectionWindow } from "../../worksheets/fuel-delivery/inputs";
import * as match from "../../worksheets/matching/cells";
import { bankACompressor, bankBCompressor } from "../../worksheets/matching/compressors";
import * as matchIn from "../../worksheets/matching/inputs";
import { matchBuild } from "../../worksheets/matching/match";
import { pointRows } from "../../worksheets/matching/points";
import { altitudeRun, arrangements, speedRun } from "../../worksheets/matching/runs";
import { attained, matched } from "../../worksheets/matching/solved";
import { program } from "../../worksheets/model";
import { demo, demoIn, demoInstallations } from "./demo";

const vehicle = demoIn("vehicle");

/** The demo's truck with some inputs changed, by their keys. */
const truckWith = (changes: Readonly<Record<string, unknown>>) => program.rerun(vehicle, changes).evaluation;

const path = (...parts: readonly matchIn.ChargePart[]) => ({ chargeOrder: parts.map((part) => ({ part })) });

const near = (value: number, other: number, within: number) =>
  expect(Math.abs(value / other - 1), `${value} beside ${other}`).toBeLessThanOrEqual(within);

describe("agreement with the sheets that start from the promise", () => {
  // The boost sheet is given the efficiencies and the mixture that the parts came to, and the coolers their flow: then both
  // sheets describe one engine. What goes past a turbine gives it no power, and the boost sheet knows of no wastegate.
  // Half a per cent pays for the charge's specific heat: the coolers' rating takes it at 400 K.
  let asked = vehicle;
  for (let turns = 0; turns < 6; turns++) {
    asked = truckWith({
      [boostIn.compressorEfficiency.key]: asked.require(match.wheelEfficiency),
      [boostIn.turbineEfficiency.key]:
        asked.require(match.turbineEfficiencyMet) * (1 - asked.require(match.wastegatePast)),
      [excessAirRatio.key]: asked.require(match.matchedExcessAir),
      [matchIn.intercoolerMatchFlow.key]: asked.require(match.matchedAirFlow),
      [matchIn.aftercoolerMatchFlow.key]: asked.require(match.matchedAirFlow),
    });
  }

  const pairs: readonly (readonly [ScalarCell, ScalarCell])[] = [
    [match.matchedAirFlow, air.airFlow],
    [match.matchedManifoldPressure, boost.manifoldPressure],
    [match.matchedBlowerRatio, boost.blowerPressureRatio],
    [match.matchedBlowerPower, boost.blowerShaftPower],
    [match.matchedBlowerTorque, blowerTorque],
    [match.matchedBlowerOutlet, boost.blowerOutletTemperature],
    [match.matchedTurbineInletTemperature, boost.turbineInletTemperature],
    [match.matchedBackPressure, boost.turbineInletPressure],
    [match.matchedBackPressureRatio, boost.backPressureRatio],
    [match.wheelPressureRatio, boost.compressorPressureRatio],
    [match.wheelCorrectedFlow, boost.compressorCorrectedFlow],
  ];
  test.each(pairs.map(([given, wanted]) => [given.label, wanted.label, { given, wanted }] as const))(
    "“%s” and “%s” tell the same",
    (_, __, { given, wanted }) => near(asked.require(given), asked.require(wanted), 5e-3),
  );

  test("fuel and peak pressure too", () => {
    const point = asked.require(matched);
    near(point.fuelFlow, asked.require(air.fuelFlow), 5e-3);
    near(point.peakPressure, asked.require(boost.peakPressure), 5e-3);
  });

  test("the fuel system's limits are those of the fuel sheet, at the match's own fuel", () => {
    const { margins, fuelFlow } = vehicle.require(matched);
    const limit = (id: string) => margins.find((each) => each.id === id)!;
    const more = fuelFlow / vehicle.require(air.fuelFlow);
    near(limit("fuelPump").limit, vehicle.require(fuel.pumpCapacity), 1e-12);
    near(limit("fuelPump").value, more * vehicle.require(fuel.pumpDemand), 1e-9);
    // the match's own manifold pressure, a few per cent off, changes the jets' pressure drop by less than a hundredth
    near(limit("injectionWindow").value, more * vehicle.require(fuel.injectionAngle), 0.01);
    expect(limit("injectionWindow").limit).toBe(vehicle.require(injectionWindow));
  });

  test("the belt's torque over that of the drive sheet is the ratio of the two sheets' torques", () => {
    const ratio = vehicle.require(match.matchedBlowerTorque) / vehicle.require(blowerTorque);
    near(vehicle.require(match.blowerTorqueOverDrive), ratio, 1e-12);
  });
});

describe("the charge path in any order", () => {
  const names = (changes: ReturnType<typeof path>) =>
    truckWith(changes)
      .require(matched)
      .stations.map(({ number, after }) => `${number} ${after ?? "open air"}`);

  test("a blower before the turbochargers blows into them", () => {
    const changes = path("filter", "blower", "intercooler", "bankA", "aftercooler", "plenum");
    expect(names(changes)).toEqual([
      "0 open air",
      "1 restriction",
      "2 blower",
      "3 cooler",
      "4 compressorBank",
      "5 cooler",
      "6 plenum",
    ]);
    const { stations, blowers, banks, convergence } = truckWith(changes).require(matched);
    expect(convergence.residual).toBeLessThan(1e-9);
    near(stations[2]!.pressure, stations[1]!.pressure * blowers[0]!.pressureRatio, 1e-9);
    near(stations[4]!.pressure, stations[3]!.pressure * banks[0]!.pressureRatio, 1e-9);
    // Both ways the volumes of blower and engine are the same: before the turbochargers the blower passes open air, which
    // is far less than the engine wants of it, so its bypass opens and it turns without load.
    expect(blowers[0]!.pressureRatio).toBeLessThan(vehicle.require(match.matchedBlowerRatio));
  });

  test("two banks stand in series, the second one nearer to the cylinders", () => {
    const changes = path("filter", "bankA", "intercooler", "bankB", "aftercooler", "plenum");
    const { banks, blowers } = truckWith(changes).require(matched);
    expect(banks.map(({ name }) => name)).toEqual(["first bank", "second bank"]);
    expect(blowers).toEqual([]);
    expect(banks[1]!.turbineInletPressure).toBeGreaterThan(banks[0]!.turbineInletPressure);
    expect(banks[1]!.turbineInletTemperature).toBeGreaterThan(banks[0]!.turbineInletTemperature);
  });

  test("the blower alone, and nothing at all, give what they can", () => {
    const blower = truckWith(path("filter", "blower", "aftercooler", "plenum"));
    const bare = truckWith(path("filter"));
    const [both, some, none] = [vehicle, blower, bare].map((each) => each.require(attained).point.brakePower);
    expect(both).toBeGreaterThan(some!);
    expect(some).toBeGreaterThan(none!);
    expect(none).toBeGreaterThan(0);
    expect(blower.get(match.wheelSpeed)).toMatchObject({ message: /first bank does not stand in the charge path/ });
  });

  test("a spray cools the charge, and takes no more water than it is given", () => {
    const dry = vehicle.require(matched);
    const wet = truckWith(path("filter", "bankA", "intercooler", "spray", "blower", "aftercooler", "plenum"));
    const [before, after] = [dry.stations[3]!, wet.require(matched).stations[4]!];
    expect(after.temperature).toBeLessThan(before.temperature);
    const taken = wet.require(match.sprayTaken);
    expect(taken).toBeGreaterThan(0);
    expect(taken).toBeLessThanOrEqual(0.7 * 0.01 + 1e-12);
  });

  test("a second aftercooler bears a number; a machine may stand there once, and the refusal says where it stands", () => {
    const two = truckWith(path("filter", "bankA", "intercooler", "blower", "aftercooler", "aftercooler", "plenum"));
    expect(two.require(matched).coolers.map(({ name }) => name)).toEqual(["intercooler", "aftercooler", "aftercooler 2"]);
    expect(truckWith(path("bankA", "filter", "bankA")).get(matchBuild)).toMatchObject({
      message: "charge path: the first bank stands in rows 1 and 3; take one of them away, or choose another part in its place",
    });
  });
});

// With the boost sheet's efficiencies, mixture and flow those of the match, both sheets reckon the sea's way through the coolers.
test("in the boat the intercooler gets the sea water that the aftercooler has warmed, as on the boost sheet", () => {
  const boat = demoIn("boat");
  const { coolers, stations } = boat.require(matched);
  const [inter, after] = coolers;
  const perWatt = boat.require(demandBuild).sinkWarmingPerWatt;
  expect(perWatt).toBeGreaterThan(0);
  near(inter!.sinkTemperature - after!.sinkTemperature, perWatt * after!.heat, 1e-9);
  near(stations[3]!.temperature, stations[2]!.temperature - inter!.effectiveness * (stations[2]!.temperature - inter!.sinkTemperature), 1e-9);
  const path = boat.require(boost.chargePath);
  near(perWatt * after!.heat, path.coolerBeforeBlower.sinkTemperature - path.coolerAfterBlower.sinkTemperature, 0.1);
  for (const { sinkWarming } of vehicle.require(matched).coolers) expect(sinkWarming).toBe(0);
});

test("each cooler has the effectiveness stated for it at the flow at which it was rated", () => {
  const flows = [0.8, 1.4] as const;
  const changes = { [matchIn.intercoolerMatchFlow.key]: flows[0], [matchIn.aftercoolerMatchFlow.key]: flows[1] };
  const coolers = truckWith(changes).require(matchBuild).path.filter((element) => element.kind === "cooler");
  const stated = [boostIn.intercoolerEffectiveness, boostIn.aftercoolerEffectiveness].map((each) => vehicle.require(each));
  coolers.forEach(({ cooling }, i) => {
    if (cooling.kind !== "rated") throw new Error("a cooler with a rated point is expected");
    const at = (flow: number) =>
      coolingEffectiveness(cooling, flow as MassFlow, flow * dryAir.specificHeat(400 as Temperature));
    near(at(flows[i]!), stated[i]!, 1e-9);
    expect(at(1.1 * flows[i]!)).toBeLessThan(stated[i]!);
  });
});

describe("the compressor from measured points", () => {
  const text = `reference: 293 K, 101.3 kPa
corrected flow [kg/min], pressure ratio, efficiency [%], wheel speed [rev/min]
20, 1.60, 70, 60000
26, 1.58, 75, 60000
32, 1.50, 68, 60000
28, 2.60, 71, 85000
36, 2.55, 76, 85000
44, 2.30, 69, 85000
34, 3.60, 70, 105000
42, 3.55, 75, 105000
48, 3.20, 68, 105000`;

  test("a file's points are brought to the sheet's reference state", () => {
    const rows = pointRows(text);
    expect(rows).toHaveLength(9);
    // ṁ √T/p and n/√T stay: by hand from 293 K, 101.3 kPa to 298 K, 100 kPa
    near(rows[0]!.flow, (20 / 60) * Math.sqrt(293 / 298) * (100 / 101.3), 1e-9);
    near(rows[0]!.speed, 1000 * Math.sqrt(298 / 293), 1e-9);
    expect(rows[0]).toMatchObject({ pressureRatio: 1.6, efficiency: 0.7 });
  });

  test.each(demoInstallations)("rows drawn from a wheel's estimate give its match again, at every speed: %s", (installation) => {
    const wheel = demoIn(installation);
    const points = program.rerun(wheel, { compressorSource: "points" }).evaluation;
    const [estimated, measured] = [wheel, points].map((each) => each.require(speedRun).answer());
    estimated!.forEach((point, i) => {
      const other = measured![i]!;
      if (!point.ok || !other.ok) throw new Error("a point is expected at every speed");
      expect(other.violated).toEqual([]);
      near(other.point.torque, point.point.torque, 0.05);
    });
  });

  test("the field runs through its points, and the match through the field", () => {
    const changes = { compressorSource: "points", compressorPoints: pointRows(text) };
    const evaluation = truckWith(changes);
    const field = evaluation.require(bankACompressor);
    for (const { flow, speed, pressureRatio } of pointRows(text)) {
      near(field.at(flow, speed).pressureRatio, pressureRatio, 0.03);
    }
    const { banks, convergence } = evaluation.require(attained).point;
    expect(convergence.residual).toBeLessThan(1e-9);
    const [bank] = banks;
    near(bank!.pressureRatio, field.at(bank!.correctedFlow, bank!.correctedSpeed).pressureRatio, 1e-9);
  });

  test("the second bank's field runs through points of its own", () => {
    const changes = { bankBCompressorSource: "points", bankBCompressorPoints: pointRows(text) };
    const evaluation = truckWith({ ...changes, ...path("filter", "bankB", "bankA", "intercooler", "aftercooler", "plenum") });
    const field = evaluation.require(bankBCompressor);
    for (const { flow, speed, pressureRatio } of pointRows(text)) {
      near(field.at(flow, speed).pressureRatio, pressureRatio, 0.03);
    }
    const [bank, other] = evaluation.require(matched).banks;
    near(bank!.pressureRatio, field.at(bank!.correctedFlow, bank!.correctedSpeed).pressureRatio, 1e-9);
    const ofFirst = evaluation.require(bankACompressor);
    near(other!.pressureRatio, ofFirst.at(other!.correctedFlow, other!.correctedSpeed).pressureRatio, 1e-9);
  });

  test("bad lines are refused by their number, and rows that make no field by theirs", () => {
    expect(() => pointRows(text.replace("1.58", "high").replace("44, 2.30", "-44, 2.30"))).toThrow(/line 4: .*; line 8: /);
    expect(() => pointRows("nothing")).toThrow(RangeError);
    const rows = pointRows(text).map((row, i) => (i === 1 ? { ...row, flow: pointRows(text)[0]!.flow } : row));
    const refused = truckWith({ compressorSource: "points", compressorPoints: rows }).get(bankACompressor);
    expect(refused).toBeInstanceOf(Refusal);
    expect((refused as Refusal).message).toMatch(/^measured points of the first bank: .*row/);
  });
});

describe("what binds", () => {
  const lowest = { turbineInletLimit: boostIn.turbineInletLimit, peakPressureLimit: boostIn.peakPressureLimit };
  test.each<readonly [string, Readonly<Record<string, unknown>>]>([
    ["Excess air (smoke)", {}],
    ["Wheel speed of first bank", { [matchIn.bankASpeedLimit.key]: 1500 }],
    ["Tip speed of first bank", { [matchIn.tipSpeedLimit.key]: 450 }],
    ["Surge of first bank", { [matchIn.surgeMarginWanted.key]: 0.36 }],
    ["Choke of first bank", { [matchIn.chokeMarginWanted.key]: 0.12 }],
    ["Exhaust temperature", { [lowest.turbineInletLimit.key]: 800 }],
    ["Back pressure", { [matchIn.backPressureLimit.key]: 2.5e5 }],
    ["Cylinder pressure", { [lowest.peakPressureLimit.key]: 160e5 }],
    ["Temperature after blower", { [boostIn.blowerOutletLimit.key]: 400 }],
    ["Fuel pump delivery", { pumpLobes: 1 }],
    ["Injection window", { [injectionWindow.key]: 0.3 }],
  ])("“%s” is met first with its limit lowered, and named", (name, changes) => {
    const { binding, violated, point } = truckWith(changes).require(attained);
    expect(binding.name).toBe(name);
    expect(violated).toEqual([]);
    for (const { margin } of point.margins) expect(margin).toBeGreaterThan(-1e-7);
  });

  test.each<readonly [string, Readonly<Record<string, unknown>>]>([
    ["speed of blower", { [boostIn.blowerHighestSpeed.key]: 70 }],
    ["tip speed of blower", { [matchIn.blowerTipSpeedLimit.key]: 30 }],
  ])("“%s” that is passed at every load leaves no power, in words", (name, changes) => {
    const refused = truckWith(changes).get(match.attainablePower);
    expect(refused).toBeInstanceOf(Refusal);
    expect((refused as Refusal).message).toContain(`the limit of ${name} is passed at every load`);
  });

  test("the limit behind it is the one that binds once the first is lifted", () => {
    const { next } = vehicle.require(attained);
    // the tangent from the first limit reaches a tenth and more beyond it, where the curve has bent by a few per cent
    const lifted = truckWith({ [excessAirRatio.key]: 1.4 }).require(attained);
    expect(lifted.binding.id).toBe(next!.id);
    near(lifted.binding.brakePower, next!.brakePower, 0.05);
  });

  test.each(demoInstallations)("a slow search from light load in small steps ends at the same power (%s)", (installation) => {
    const evaluation = demoIn(installation);
    const build = evaluation.require(matchBuild);
    const ratedSpeed = evaluation.require(brief.ratedSpeed);
    for (const share of [0.8, 1]) {
      const engineSpeed = (share * ratedSpeed) as RotationalSpeed;
      const found = attainable(build, engineSpeed);
      const at = (fuelFlow: number, near: ReturnType<typeof operatingPoint>) =>
        operatingPoint(build, { engineSpeed, load: { kind: "fuelFlow", fuelFlow: fuelFlow as never }, near });
      let point = operatingPoint(build, { engineSpeed, load: { kind: "excessAir", excessAirRatio: 5 as never } });
      let step = 1.01;
      while (step > 1 + 1e-6) {
        const more = at(point.fuelFlow * step, point);
        if (more.margins.every(({ margin }) => margin >= 0)) point = more;
        else step = Math.sqrt(step);
      }
      near(found.point.brakePower, point.brakePower, 1e-4);
    }
  });
});

test("an answer does not depend on what was asked before", () => {
  const moved = truckWith({ [brief.ratedPower.key]: 0.8 * vehicle.require(brief.ratedPower) });
  const back = program.rerun(moved, { [brief.ratedPower.key]: vehicle.require(brief.ratedPower) }).evaluation;
  const cells: readonly ScalarCell[] = [match.attainablePower, match.wheelSpeed, match.matchedAirFlow, match.nextPower];
  for (const cell of cells) {
    expect(back.require(cell)).toBe(vehicle.require(cell));
  }
});

describe("refusals", () => {
  test.each<readonly [Readonly<Record<string, unknown>>, RegExp]>([
    [
      { [matchIn.bankAOpenAt.key]: 1e5 },
      /^first bank: the wastegate begins to open at 1\.90 bar and is fully open at 1\.00 bar; the second must be the higher: raise it/,
    ],
    [
      { [matchIn.coolerArrangement.key]: "shellAndTube", [matchIn.coolerSinkTimes.key]: 1 },
      /^intercooler: effectiveness is 74\.0 %; this arrangement reaches no more than 58\.6 % with these flows: state less/,
    ],
  ])("%j is refused with what to change", (changes, message) => {
    const refused = truckWith(changes).get(matchBuild);
    expect(refused).toBeInstanceOf(Refusal);
    expect((refused as Refusal).message).toMatch(message);
  });
});

describe("what is worked out when the hand rests", () => {
  test("over speed: the promised speed is among them, and gives what the sheet says", () => {
    const points = vehicle.require(speedRun).answer();
    const here = points.find(({ engineSpeed }) => engineSpeed === vehicle.require(brief.ratedSpeed));
    expect(here?.ok && here.binding.id).toBe("excessAir");
    near((here?.ok && here.point.brakePower) || 0, vehicle.require(match.attainablePower), 1e-8);
    expect(points.length).toBeGreaterThan(8);
    expect(vehicle.require(speedRun).answer()).toBe(points);
  });

  test("over altitude: power falls all the way up", () => {
    const powers = vehicle
      .require(altitudeRun)
      .answer()
      .map(({ point }) => (point.ok ? point.point.brakePower : Number.NaN));
    expect(powers).toHaveLength(9);
    expect(powers).toEqual([...powers].sort((a, b) => b - a));
    expect(new Set(powers).size).toBe(9);
  });

  test("three arrangements: both is the build itself, and gives the most", () => {
    const [turbochargers, blower, both] = vehicle.require(arrangements).answer();
    expect([turbochargers, blower, both].map((each) => each?.key)).toEqual(["turbochargersOnly", "blowerOnly", "both"]);
    const power = (each: typeof both) => (each?.point.ok ? each.point.point.brakePower : 0);
    near(power(both), vehicle.require(match.attainablePower), 1e-12);
    expect(power(both)).toBeGreaterThan(power(turbochargers));
    expect(power(both)).toBeGreaterThan(power(blower));
    expect(truckWith(path("filter", "bankA", "intercooler", "plenum")).get(arrangements)).toMatchObject({
      message: /the path has no blower/,
    });
  });

  test("demo builds keep their promise in every installation, with something in hand", () => {
    for (const installation of demoInstallations) {
      const evaluation = program.run(inputsOf(demo, installation));
      expect(evaluation.require(attained).violated, installation).toEqual([]);
      expect(evaluation.require(match.powerInHand), installation).toBeGreaterThan(0);
    }
  });
});
