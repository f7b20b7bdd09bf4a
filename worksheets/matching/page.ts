import { airFlow } from "../air-demand/cells";
import { excessAirRatio } from "../air-demand/inputs";
import { blowerShaftPower, manifoldPressure, turbineArea, turbineInletPressure } from "../boost/cells";
import {
  compressorEfficiency,
  turbineEfficiency,
  turbochargerCount,
  turbochargerMechanicalEfficiency,
} from "../boost/inputs";
import { ambientPressure, ambientTemperature, altitude, ratedPower, ratedSpeed } from "../brief/cells";
import { blowerTorque } from "../drive-speeds/cells";
import { caution, drawn, heading, lines, prose, type Sheet } from "../sheet";
import { bankA, bankB } from "./banks";
import * as cells from "./cells";
import { bankACompressor, bankBCompressor } from "./compressors";
import { arrangementsCompared } from "./figures/arrangementsCompared";
import { blowerDrive } from "./figures/blowerDrive";
import { chargeSteps } from "./figures/chargeSteps";
import { compressorField } from "./figures/compressorField";
import { powerOverAltitude } from "./figures/powerOverAltitude";
import { powerOverSpeed } from "./figures/powerOverSpeed";
import { pressureShares } from "./figures/pressureShares";
import { fuelLimits } from "./fuelLimits";
import * as inputs from "./inputs";
import { matchBuild } from "./match";
import { altitudeRun, arrangements, speedRun } from "./runs";
import { attained, matched } from "./solved";
import { banksTable, bindingTable, coolersTable, roomTable, stationsTable } from "./tables";

const {
  attainablePower,
  matchedAirFlow,
  matchedBackPressure,
  matchedBlowerPower,
  matchedBlowerTorque,
  matchedCondensate,
  matchedExcessAir,
  matchedManifoldPressure,
  matchIterations,
  matchResidual,
  nextPower,
  powerInHand,
  sprayTaken,
  surgeMargin,
  chokeMargin,
  turbineEfficiencyMet,
  wheelEfficiency,
  wheelSpeed,
  wheelTipSpeed,
} = cells;

export const matchingPage: Sheet = {
  key: "matching",
  title: "The match",
  answers: "What the chosen turbochargers, blower and coolers give together, and what stops them first.",
  blocks: [
    prose`At ${ratedSpeed} these parts give ${attainablePower} before the first limit is met, ${powerInHand} over the promised ${ratedPower}; lifting that limit alone would bring it to ${nextPower}. The boost sheet works from the promise to what it asks for. This sheet works from the parts to what they give: wheel speeds follow from the balance of each shaft, and pressures, flows and temperatures from the wheels.`,
    caution(
      "A wheel driven past its speed, or a compressor in surge, can come apart and throw pieces through its housing: stay out of the plane of the wheels. An overboosted cylinder lifts its head; charge pipes burst, and a hose that comes off hits like a hammer. Turbines and exhaust pipes glow at these temperatures: they burn skin and set oil alight, so shield them and keep oil lines away. Wheels taken from sizes are an estimate: measure wheel speed, exhaust temperature and pressures before full load, and raise the load in steps. Local codes, class rules and licensed practice come first.",
    ),
    bindingTable,
    drawn(powerOverSpeed),
    roomTable,
    heading("What is asked for, and what is given"),
    prose`The promise asks for ${airFlow} of air at ${manifoldPressure}, which is just ${excessAirRatio} times the air that the fuel needs; the parts pass ${matchedAirFlow} at ${matchedManifoldPressure}, and the excess air is ${matchedExcessAir}. The two differ because the boost sheet takes the compressors at ${compressorEfficiency} and the turbines at ${turbineEfficiency} and opens the turbines as far as the promise needs, ${turbineArea} each, while here each has ${inputs.bankAEntries} entries of ${inputs.bankATurbineArea} and the efficiencies are the wheels' own, ${wheelEfficiency} and ${turbineEfficiencyMet}. A turbine smaller than asked for spins its compressor faster: more air than the promise needs, and more exhaust pressure than the same efficiencies would ask for. Better wheels lower it again: ${turbineInletPressure} asked for, ${matchedBackPressure} given.`,
    ...lines(
      attainablePower,
      powerInHand,
      nextPower,
      cells.matchedPower,
      matchedAirFlow,
      matchedExcessAir,
      matchedManifoldPressure,
      cells.matchedTurbineInletTemperature,
      matchedBackPressure,
      inputs.backPressureLimit,
      cells.matchedBackPressureRatio,
    ),
    heading("The charge path, in order"),
    prose`Parts stand in the order in which the air meets them, and stations are numbered along it. Blower, coolers and intake have their numbers on the boost and air sheets. A part that is taken out leaves its place empty: without the blower's row the turbochargers are alone, with a second bank they stand in series, and a blower in a row above the turbochargers blows into them.`,
    ...lines(inputs.chargeOrder),
    drawn(chargeSteps),
    stationsTable,
    drawn(pressureShares),
    heading("First bank"),
    prose`There are ${turbochargerCount} of them, as on the boost sheet, and their bearings pass on ${turbochargerMechanicalEfficiency}. The wheels turn at ${wheelSpeed}, their tips at ${wheelTipSpeed}, ${surgeMargin} from surge and ${chokeMargin} from choke. From sizes alone the field is a published estimate: ±4 points of efficiency, ±8 % of the pressure rise, and the line of surge much less certain, ±25 % of its flow. Measured points are worth their trouble.`,
    drawn(compressorField),
    banksTable,
    ...lines(
      inputs.compressorSource,
      inputs.bankAInducer,
      inputs.bankAExducer,
      inputs.bankABlades,
      inputs.bankABacksweep,
      inputs.bankASizeDebit,
      inputs.bankATurbineArea,
      inputs.bankAEntries,
      inputs.bankATurbineWheel,
      inputs.bankATurbinePeak,
      inputs.bankASpeedRatio,
      inputs.bankAWastegate,
      inputs.bankAOpensAt,
      inputs.bankAOpenAt,
      inputs.bankAPastShare,
      cells.wheelCorrectedFlow,
      cells.wheelPressureRatio,
      wheelEfficiency,
      wheelSpeed,
      inputs.bankASpeedLimit,
      wheelTipSpeed,
      inputs.tipSpeedLimit,
      surgeMargin,
      inputs.surgeMarginWanted,
      chokeMargin,
      inputs.chokeMarginWanted,
      turbineEfficiencyMet,
      cells.wastegatePast,
    ),
    heading("Measured points"),
    prose`These count only while the first bank's compressor is taken from them. A file is plain text: a line such as “reference: 298 K, 100 kPa”, then a header with units in brackets, “corrected flow [kg/min], pressure ratio, efficiency [%], wheel speed [rev/min]”, then a point a line. Lines that cannot be used are named by their number, and nothing is read.`,
    ...lines(inputs.compressorPoints),
    heading("Second bank"),
    prose`These count only while the second bank stands in the charge path. Of two banks in series the one nearer to the manifold has its turbines nearer to the cylinders.`,
    ...lines(
      inputs.bankBCount,
      inputs.bankBInducer,
      inputs.bankBExducer,
      inputs.bankBBlades,
      inputs.bankBBacksweep,
      inputs.bankBSizeDebit,
      inputs.bankBTurbineArea,
      inputs.bankBEntries,
      inputs.bankBTurbineWheel,
      inputs.bankBTurbinePeak,
      inputs.bankBSpeedRatio,
      inputs.bankBWastegate,
      inputs.bankBOpensAt,
      inputs.bankBOpenAt,
      inputs.bankBPastShare,
      inputs.bankBSpeedLimit,
    ),
    heading("Blower"),
    prose`Between the pressures that the parts give, the blower takes ${matchedBlowerPower} at its shaft; the boost sheet reckons with ${blowerShaftPower}. Its torque is ${matchedBlowerTorque}, and the drive sheet sizes the belt for ${blowerTorque}.`,
    drawn(blowerDrive),
    ...lines(
      inputs.blowerBypass,
      inputs.blowerBypassShare,
      inputs.blowerRotorDiameter,
      inputs.blowerTipSpeedLimit,
      cells.matchedBlowerRatio,
      matchedBlowerPower,
      matchedBlowerTorque,
      cells.blowerTorqueOverDrive,
      cells.matchedBlowerOutlet,
    ),
    heading("Coolers and spray"),
    prose`The coolers have the effectiveness of the boost sheet when ${inputs.coolerMatchFlow} of air goes through them, and another when there is more or less. Water that falls out of the charge, here ${matchedCondensate}, wants a drain. A spray cools by evaporation down to the wet bulb and no further: ${sprayTaken} evaporates here.`,
    coolersTable,
    ...lines(
      inputs.coolerMatchFlow,
      inputs.coolerArrangement,
      inputs.coolerSinkTimes,
      inputs.coolerAirShare,
      matchedCondensate,
      inputs.sprayFlow,
      inputs.sprayTemperature,
      inputs.sprayEvaporated,
      sprayTaken,
    ),
    heading("Other speeds, other heights, other ways"),
    prose`The air outside, ${ambientTemperature} at ${altitude} and ${ambientPressure}, goes through all of it: thinner air turns the wheels faster for the same work and leaves less of it. What the parts give at other speeds and heights, and what turbochargers or blower would give alone, is worked out when the hand rests.`,
    drawn(powerOverAltitude),
    drawn(arrangementsCompared),
    ...lines(speedRun, altitudeRun, arrangements),
    heading("How the match is closed"),
    prose`Air, exhaust, shafts and fuel depend on each other all round. They are solved as one; what is left open is ${matchResidual}, after ${matchIterations} steps.`,
    ...lines(
      bankACompressor,
      bankBCompressor,
      bankA,
      bankB,
      fuelLimits,
      matchBuild,
      attained,
      matched,
      matchResidual,
      matchIterations,
    ),
  ],
};
