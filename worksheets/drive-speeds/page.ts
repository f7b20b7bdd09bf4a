import { blowerHighestSpeed } from "../boost/inputs";
import { idleSpeed, maximumSpeed } from "../brief/cells";
import { caution, drawn, heading, lines, prose, type Sheet, tabulated } from "../sheet";
import { accessoryPower, alternatorPower, hydraulicPower } from "./accessories";
import { beltRuns, frontBelts } from "./beltRuns";
import { belts, frontPulleys } from "./beltTables";
import {
  blowerBeltLength,
  blowerBeltLoad,
  blowerBeltPull,
  blowerBeltRating,
  blowerBeltSpeed,
  blowerSpeed,
  blowerTopSpeed,
  blowerTorque,
  rawWaterPumpSpeed,
  steeringFlowAtIdle,
} from "./cells";
import { frontDrives } from "./figures/frontDrives";
import { speedWindows } from "./figures/speedWindows";
import {
  alternatorEfficiency,
  beltEfficiency,
  blowerDrivenTeeth,
  blowerDriverTeeth,
  busVoltage,
  crankRotation,
  cruiseSpeed,
  electricalLoad,
  hydraulicDisplacement,
  hydraulicEfficiency,
  hydraulicFilling,
  hydraulicPressure,
  meshLeast,
  otherAccessoryPower,
  overspeedShare,
  rawWaterDrivenTeeth,
  rawWaterDriverTeeth,
  steeringFlowNeeded,
} from "./inputs";
import { blowerDriveRatio, fuelPumpDriveRatio, rawWaterDriveRatio } from "./ratios";
import { unitLoads } from "./unitLoads";

export const driveSpeedsPage: Sheet = {
  key: "drive-speeds",
  title: "Drive speeds",
  answers: "How fast everything on the front of the engine turns, which way, on which belt, and at what load.",
  blocks: [
    prose`With ${blowerDriverTeeth} teeth on the crank and ${blowerDrivenTeeth} on the blower, the blower turns at ${blowerSpeed} at the promised speed, and at ${blowerTopSpeed} at the highest; ${blowerHighestSpeed} is allowed. Teeth are whole numbers, so the ratio moves in steps.`,
    caution(
      "A running belt pulls in sleeves, hair and fingers before anyone can let go: guard every run, and stop the engine and secure it against starting before touching a belt or a tensioner. What is driven past its speed can come apart: pulleys, rotors and fans have speeds that only their makers can allow. Local codes and licensed practice come first.",
    ),
    drawn(frontDrives),
    heading("Belts and pulleys"),
    prose`The blower asks for a torque of ${blowerTorque} at its shaft, which is ${blowerBeltPull} in its belt: the tension of the tight span less that of the slack one. A tensioner belongs on the slack span, the one that leaves the crank: on the left if the crank turns clockwise.`,
    ...lines(
      crankRotation,
      blowerDriverTeeth,
      blowerDrivenTeeth,
      blowerDriveRatio,
      blowerSpeed,
      blowerTopSpeed,
      rawWaterDriverTeeth,
      rawWaterDrivenTeeth,
      rawWaterDriveRatio,
      rawWaterPumpSpeed,
      belts,
      frontPulleys,
      frontBelts,
      meshLeast,
      beltRuns,
    ),
    tabulated({
      key: "belt-runs",
      title: "Every belt, pulley by pulley",
      of: beltRuns,
      columns: [
        { label: "Pulley" },
        { label: "Belt" },
        { label: "Ratio", kind: "ratio" },
        { label: "Turns, seen on its shaft end" },
        { label: "Arc", kind: "angle" },
        { label: "In mesh" },
        { label: "Span to the next", kind: "length" },
      ],
      rows: (laid) =>
        laid.flatMap(({ name, members, run }) =>
          members.map(({ unit, ratio, turns, turnsRightly }, i) => [
            unit,
            name,
            ratio,
            turnsRightly ? turns : `${turns}: driven backwards`,
            run ? run.pulleys[i]!.wrap : "no belt can lie",
            run?.pulleys[i]!.teethInMesh ?? "smooth",
            run ? run.spans[i]!.length : "",
          ]),
        ),
    }),
    ...lines(blowerBeltLength, blowerBeltSpeed, blowerTorque, blowerBeltPull, blowerBeltRating, blowerBeltLoad),
    heading("Speeds"),
    prose`Every unit has its window: it must be fast enough when the engine idles at ${idleSpeed}, and not too fast at ${maximumSpeed}. The wider the engine's own range, the fewer ratios fit. A pulley on the back of the belt turns against the crank; a unit hung with its shaft to the rear turns, as seen on its own shaft end, the other way.`,
    ...lines(cruiseSpeed, overspeedShare, fuelPumpDriveRatio),
    drawn(speedWindows),
    tabulated({
      key: "unit-speeds",
      title: "Speed of every unit",
      of: beltRuns,
      columns: [
        { label: "Unit" },
        { label: "At idle", kind: "rotationalSpeed" },
        { label: "Cruise", kind: "rotationalSpeed" },
        { label: "Promised", kind: "rotationalSpeed" },
        { label: "Highest", kind: "rotationalSpeed" },
        { label: "Overspeed", kind: "rotationalSpeed" },
      ],
      rows: (laid) =>
        laid.flatMap(({ members }) =>
          members
            .filter(({ role }) => role !== "crank")
            .map(({ unit, at }) => [unit, at.idle, at.cruise, at.rated, at.maximum, at.overspeed]),
        ),
    }),
    heading("What the units take"),
    prose`Accessories take ${accessoryPower} from the crank, the fuel pump aside, whether or not the customer's power is asked for. Hydraulic and electrical loads are what the job makes them: state them as they are when the promised power is given.`,
    ...lines(
      hydraulicDisplacement,
      hydraulicPressure,
      hydraulicEfficiency,
      hydraulicPower,
      hydraulicFilling,
      steeringFlowAtIdle,
      steeringFlowNeeded,
      electricalLoad,
      busVoltage,
      alternatorEfficiency,
      alternatorPower,
      beltEfficiency,
      otherAccessoryPower,
      accessoryPower,
      unitLoads,
    ),
    tabulated({
      key: "unit-loads",
      title: "Power and torque at each shaft, at the promised speed",
      of: unitLoads,
      columns: [
        { label: "Unit" },
        { label: "Speed", kind: "rotationalSpeed" },
        { label: "Power", kind: "power" },
        { label: "Torque", kind: "torque" },
      ],
      rows: (loads) => loads.map(({ unit, speed, power, torque }) => [unit, speed, power, torque]),
    }),
  ],
};
