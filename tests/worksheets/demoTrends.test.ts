/** Which way things go when one number of the demo build is moved, and that nothing absurd comes of it anywhere. */
import { describe, expect, test } from "vitest";
import { type Cell, type Input, Refusal } from "../../lib/graph";
import * as air from "../../worksheets/air-demand/cells";
import * as airIn from "../../worksheets/air-demand/inputs";
import * as duty from "../../worksheets/boat-duty/cells";
import { wetExhaustTemperature } from "../../worksheets/boat-duty/exhaust";
import * as dutyIn from "../../worksheets/boat-duty/inputs";
import * as boost from "../../worksheets/boost/cells";
import * as boostIn from "../../worksheets/boost/inputs";
import * as brief from "../../worksheets/brief/cells";
import { inputsOf } from "../../worksheets/build/build";
import { hydraulicHeatRate } from "../../worksheets/drive-speeds/budgets";
import * as drive from "../../worksheets/drive-speeds/cells";
import * as driveIn from "../../worksheets/drive-speeds/inputs";
import * as fuel from "../../worksheets/fuel-delivery/cells";
import * as fuelIn from "../../worksheets/fuel-delivery/inputs";
import * as land from "../../worksheets/land-cooling/cells";
import * as landIn from "../../worksheets/land-cooling/inputs";
import * as marine from "../../worksheets/marine-cooling/circuit";
import { gearHeat } from "../../worksheets/marine-cooling/heats";
import * as marineIn from "../../worksheets/marine-cooling/inputs";
import { rawWaterFlow } from "../../worksheets/marine-cooling/rawWater";
import { suctionHeadGiven } from "../../worksheets/marine-cooling/suction";
import * as match from "../../worksheets/matching/cells";
import * as matchIn from "../../worksheets/matching/inputs";
import { graph, program } from "../../worksheets/model";
import { demo } from "./demo";

type QuantityOf = Extract<Input, { type: "quantity" }>;

const rises = 1;
const falls = -1;

const trends: readonly (readonly [moved: Input, cell: Cell, way: 1 | -1])[] = [
  [brief.ratedPower, air.fuelFlow, rises],
  [brief.ratedPower, boost.turbineInletPressure, rises],
  [brief.altitude, boost.compressorPressureRatio, rises],
  [brief.ambientTemperature, boost.compressorOutletTemperature, rises],
  [brief.bore, brief.meanEffectivePressure, falls],
  [airIn.excessAirRatio, boost.turbineInletTemperature, falls],
  [airIn.filterRatedLoss, boost.compressorPressureRatio, rises],
  [airIn.meterBore, air.meterMach, falls],
  [boostIn.intercoolerEffectiveness, boost.compressorPressureRatio, falls],
  [boostIn.aftercoolerEffectiveness, boost.manifoldTemperature, falls],
  [boostIn.turbineEfficiency, boost.turbineInletPressure, falls],
  [boostIn.wallHeatShare, boost.turbineInletTemperature, falls],
  [boostIn.exhaustOutletLoss, air.pumpingPower, rises],
  [boostIn.blowerClearance, boost.blowerFilling, falls],
  [brief.altitude, match.attainablePower, falls],
  [brief.ambientTemperature, match.attainablePower, falls],
  [brief.altitude, match.wheelSpeed, rises],
  [airIn.excessAirRatio, match.attainablePower, falls],
  [boostIn.intercoolerEffectiveness, match.attainablePower, rises],
  [matchIn.bankATurbineArea, match.wheelSpeed, falls],
  [matchIn.bankATurbineArea, match.matchedBackPressure, falls],
  [matchIn.bankASizeDebit, match.wheelEfficiency, falls],
  [matchIn.bankASizeDebit, match.matchedExcessAir, falls],
  [matchIn.blowerBypassShare, match.matchedBlowerRatio, falls],
  [driveIn.blowerDrivenTeeth, match.matchedBlowerRatio, falls],
  [driveIn.blowerDrivenTeeth, boost.blowerPressureRatio, falls],
  [driveIn.blowerDriverTeeth, drive.blowerBeltSpeed, rises],
  [driveIn.blowerDriverTeeth, drive.blowerBeltLength, rises],
  [driveIn.hydraulicPressure, hydraulicHeatRate, rises],
  [fuelIn.holeDiameter, fuel.injectionAngle, falls],
  [fuelIn.railPressure, fuel.injectionAngle, falls],
  [fuelIn.railPressure, fuel.pumpLeakFlow, rises],
  [fuelIn.plungerGap, fuel.pumpCapacity, falls],
  [fuelIn.plungerGap, fuel.pumpRatioNeeded, rises],
  [fuelIn.railVolume, fuel.railDip, falls],
  [fuelIn.suctionHeight, fuel.suctionPressure, falls],
  [fuelIn.supplyBore, fuel.supplyReached, rises],
  [fuelIn.railPressure, air.fuelPumpPower, rises],
  [fuelIn.fuelTemperature, fuel.injectedVolume, rises],
  [marineIn.seaTemperature, marine.rawWaterDischarge, rises],
  [marineIn.rawWaterDisplacement, wetExhaustTemperature, falls],
  [marineIn.gearEfficiency, gearHeat, falls],
  [marineIn.jacketFlow, marine.jacketReaches, falls],
  [marineIn.strainerBlocked, rawWaterFlow, falls],
  [marineIn.strainerBlocked, suctionHeadGiven, falls],
  [marineIn.rawWaterShutOff, rawWaterFlow, rises],
  [marineIn.injectionHeight, rawWaterFlow, falls],
  [marineIn.foulingResistance, marine.oilReaches, rises],
  [dutyIn.roomAirFlow, duty.roomReaches, falls],
  [dutyIn.propellerShare, duty.propellerMargin, falls],
  [landIn.coreLoss, land.coreAirFlow, falls],
  [landIn.radiatorConductance, land.limitingAir, rises],
  [landIn.towerApproach, land.towerCold, rises],
];

describe.each(["vehicle", "boat"])("the demo build in the installation %s", (installation) => {
  const inputs = inputsOf(demo, installation);
  const before = program.run(inputs);
  const moved = (input: Input, value: unknown) => program.rerun(before, { [input.key]: value }).evaluation;

  test.each(
    trends.map(
      ([input, cell, way]) =>
        [input.label, way === rises ? "raises" : "lowers", cell.label, { input, cell, way }] as const,
    ),
  )("more “%s” %s “%s”", (_, __, ___, { input, cell, way }) => {
    const { span, kind } = input as QuantityOf;
    const step = kind === "count" ? 1 : 0.02 * (span[1] - span[0]);
    const after = moved(input, (inputs[input.key] as number) + step);
    expect(Math.sign((after.require(cell) as number) - (before.require(cell) as number))).toBe(way);
  });

  test("with any one number at either end of its span refuses in words, or gives numbers that can be", () => {
    const absurd: string[] = [];
    for (const input of graph.inputs) {
      for (const end of endsOf(input)) {
        const after = moved(input, end);
        for (const cell of graph.cells) {
          const value = after.get(cell);
          if (value instanceof Refusal ? value.fault : !canBe(cell, value)) {
            absurd.push(`${cell.key} at ${input.key} = ${end}: ${value instanceof Refusal ? value.message : value}`);
          }
        }
      }
    }
    expect(absurd).toEqual([]);
  });
});

function endsOf(input: Input): readonly unknown[] {
  if (input.type === "quantity") return input.span;
  return input.type === "choice" ? Object.keys(input.options) : [];
}

/** What may fall below zero: gains, a charge warmed by its cooler, a battery drawn down, fuel all in before dead centre, room used up. */
const signed = ["pumpingPower", "intercoolerHeat", "aftercoolerHeat", "seaHeat", "idleBatteryBalance", "meterHeadroom"];
signed.push("injectionEnd", "surgeMargin", "chokeMargin", "powerInHand");

function canBe({ key, kind }: Cell, value: unknown): boolean {
  if (kind === undefined) return true;
  if (typeof value !== "number" || !Number.isFinite(value)) return false;
  if (kind === "temperature") return value > 200 && value < 2000;
  if (kind === "gaugePressure") return value > -101325;
  return value >= 0 || signed.includes(key);
}
