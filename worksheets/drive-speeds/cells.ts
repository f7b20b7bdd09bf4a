import {
  beltSpeed,
  curvilinear8,
  type DriveMember,
  drivenSpeed,
  effectivePull,
  hydraulicFlow,
  nearestBeltTeeth,
  pitchDiameter,
  beltPowerRating,
  ratiosOfRole,
  type RunningDrive,
  runningDrive,
  tensionerPosition,
  toothProfiles,
} from "../../lib/drive";
import { cell, type StatedCheck, structure } from "../../lib/graph";
import type { Angle, Count, Force, Length, Power, RotationalSpeed, Torque, VolumeFlow } from "../../lib/quantity";
import { blowerHighestSpeed } from "../boost/inputs";
import { blowerShaftPower } from "../boost/cells";
import { idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { fuelPumpPower } from "../air-demand/cells";
import { alternatorPower, hydraulicPower } from "./accessories";
import {
  accessoryBeltSpeedLimit,
  accessoryRun,
  allowablePull,
  beltBaseMass,
  beltBaseWidth,
  blowerBeltPitch,
  blowerBeltSpeedLimit,
  blowerBeltWidth,
  blowerDrivenTeeth,
  blowerDriverTeeth,
  blowerHeight,
  blowerOffset,
  crankRotation,
  hydraulicDisplacement,
  hydraulicFilling,
  idlerDiameter,
  idlerHeight,
  idlerOffset,
  meshLeast,
  rawWaterDrivenTeeth,
  rawWaterDriverTeeth,
  steeringFlowNeeded,
} from "./inputs";

const profileNamed = (name: string) => toothProfiles.find((profile) => profile.name === name)!;

export const blowerSpeed = cell("blowerSpeed", {
  label: "Blower speed at the promised speed",
  kind: "rotationalSpeed",
  symbol: "n_b",
  from: { driverSpeed: ratedSpeed, driverTeeth: blowerDriverTeeth, drivenTeeth: blowerDrivenTeeth },
  compute: drivenSpeed,
  formula: "n_b = N\\,\\frac{z_1}{z_2}",
  source: "ISO 5294 (from memory)",
});

export const blowerTopSpeed = cell("blowerTopSpeed", {
  label: "Blower speed at the highest engine speed",
  kind: "rotationalSpeed",
  symbol: "n_{b,max}",
  from: { driverSpeed: maximumSpeed, driverTeeth: blowerDriverTeeth, drivenTeeth: blowerDrivenTeeth },
  compute: drivenSpeed,
  formula: "n_{b,max} = N_{max}\\,\\frac{z_1}{z_2}",
  source: "ISO 5294 (from memory)",
  limits: [{ component: "blower", side: "most", bound: blowerHighestSpeed }],
});

export const blowerRun = structure("blowerRun", {
  label: "Blower belt as laid out",
  from: {
    crankRotation,
    blowerBeltPitch,
    blowerDriverTeeth,
    blowerDrivenTeeth,
    blowerOffset,
    blowerHeight,
    idlerOffset,
    idlerHeight,
    idlerDiameter,
    idleSpeed,
    ratedSpeed,
    maximumSpeed,
    blowerHighestSpeed,
    meshLeast,
  },
  compute: (at): RunningDrive => {
    const common = {
      contact: "toothed",
      diameter: at.idlerDiameter,
      shaftEnd: "forward",
      mustTurn: "either",
      lowestSpeed: 0 as RotationalSpeed,
      highestSpeed: at.blowerHighestSpeed,
    } as const;
    const crank: DriveMember = {
      ...common,
      unit: "Crank",
      role: "crank",
      teeth: at.blowerDriverTeeth,
      x: 0 as Length,
      y: 0 as Length,
    };
    const blower: DriveMember = {
      ...common,
      unit: "Blower",
      role: "blower",
      teeth: at.blowerDrivenTeeth,
      x: at.blowerOffset,
      y: at.blowerHeight,
    };
    const idler: DriveMember = {
      ...common,
      unit: "Idler",
      role: "idler",
      contact: "back",
      teeth: 0 as Count,
      x: at.idlerOffset,
      y: at.idlerHeight,
    };
    return runningDrive({
      // The belt leaves the crank upward on the left if the crank turns clockwise, on the right if not.
      members:
        (at.crankRotation === "clockwise") === at.idlerOffset < 0 ? [crank, idler, blower] : [crank, blower, idler],
      profile: profileNamed(at.blowerBeltPitch),
      crankRotation: at.crankRotation,
      speeds: { idle: at.idleSpeed, rated: at.ratedSpeed, maximum: at.maximumSpeed },
    });
  },
  formula: "L_b = \\sum_j l_j + \\sum_i r_i\\,\\beta_i",
  source: "common tangents of circles; tooth geometry of ISO 13050 (from memory)",
  assumptions: [
    "l are the free spans, r the pitch radii and β the arcs of contact.",
    "The belt is drawn tight along its pitch line and does not sag.",
  ],
  checks: (drive, at) => meshChecks("blower belt", drive, at.meshLeast),
});

export const blowerBeltLength = cell("blowerBeltLength", {
  label: "Blower belt length as laid out",
  kind: "length",
  symbol: "L_b",
  from: { blowerRun },
  compute: ({ blowerRun }) => blowerRun.run.length,
  formula: "L_b = \\sum_j l_j + \\sum_i r_i\\,\\beta_i",
  source: "common tangents of circles",
});

export const blowerBeltTeeth = cell("blowerBeltTeeth", {
  label: "Nearest belt with whole teeth",
  kind: "count",
  symbol: "z_b",
  from: { blowerBeltLength, blowerBeltPitch },
  compute: ({ blowerBeltLength, blowerBeltPitch }) =>
    nearestBeltTeeth(blowerBeltLength, profileNamed(blowerBeltPitch).pitch),
  formula: "z_b = \\mathrm{round}\\left(\\frac{L_b}{p_b}\\right)",
  source: "a synchronous belt has a whole number of teeth",
  assumptions: ["p_b is the belt's pitch; which tooth counts are sold is for the maker's list to say."],
});

export const idlerTravel = cell("idlerTravel", {
  label: "Idler moved to the right to fit that belt",
  kind: "length",
  symbol: "\\Delta x_i",
  from: { blowerRun, blowerBeltTeeth, blowerBeltPitch, crankRotation },
  compute: ({ blowerRun, blowerBeltTeeth, blowerBeltPitch, crankRotation }) =>
    tensionerPosition({
      layout: { pulleys: blowerRun.run.pulleys, travel: crankRotation },
      pulley: "Idler",
      direction: 0 as Angle,
      travel: [-0.06 as Length, 0.06 as Length],
      beltLength: (blowerBeltTeeth * profileNamed(blowerBeltPitch).pitch) as Length,
    }).travel,
  formula: "L_b(x_i + \\Delta x_i) = z_b\\,p_b",
  source: "bracketed root on the exact length",
  assumptions: ["The idler slides level, 60 mm to either side of where it is drawn."],
});

export const blowerBeltSpeed = cell("blowerBeltSpeed", {
  label: "Blower belt speed at the highest engine speed",
  kind: "velocity",
  symbol: "v_b",
  from: { blowerDriverTeeth, blowerBeltPitch, maximumSpeed },
  compute: ({ blowerDriverTeeth, blowerBeltPitch, maximumSpeed }) =>
    beltSpeed(pitchDiameter(profileNamed(blowerBeltPitch).pitch, blowerDriverTeeth), maximumSpeed),
  formula: "v_b = z_1\\,p_b\\,N_{max}",
  source: "definition",
  limits: [{ component: "blower belt", side: "most", bound: blowerBeltSpeedLimit }],
});

export const blowerTorque = cell("blowerTorque", {
  label: "Torque at the blower's shaft",
  kind: "torque",
  symbol: "M_{bl}",
  from: { blowerShaftPower, blowerSpeed },
  compute: ({ blowerShaftPower, blowerSpeed }) => (blowerShaftPower / (2 * Math.PI * blowerSpeed)) as Torque,
  formula: "M_{bl} = \\frac{P_{bl}}{2\\pi n_b}",
  source: "definition",
});

export const blowerBeltPull = cell("blowerBeltPull", {
  label: "Pull in the blower belt, tight side less slack",
  kind: "force",
  symbol: "F_b",
  from: { blowerTorque, blowerDrivenTeeth, blowerBeltPitch },
  compute: ({ blowerTorque, blowerDrivenTeeth, blowerBeltPitch }) =>
    effectivePull(blowerTorque, pitchDiameter(profileNamed(blowerBeltPitch).pitch, blowerDrivenTeeth)) as Force,
  formula: "F_b = \\frac{2\\pi\\,M_{bl}}{z_2\\,p_b}",
  source: "definition",
  assumptions: ["Steady pull; torsional vibration of the crank comes on top."],
});

export const blowerBeltRating = cell("blowerBeltRating", {
  label: "Power that the blower belt may pass",
  kind: "power",
  symbol: "P_{belt,lim}",
  from: {
    allowablePull,
    baseWidth: beltBaseWidth,
    width: blowerBeltWidth,
    baseMassPerLength: beltBaseMass,
    blowerRun,
  },
  compute: ({ blowerRun, ...belt }) =>
    beltPowerRating({
      ...belt,
      beltSpeed: blowerRun.beltSpeed.rated,
      teethInMesh: Math.min(
        ...blowerRun.run.pulleys.map(({ teethInMesh }) => teethInMesh ?? Number.POSITIVE_INFINITY),
      ) as Count,
    }),
  formula: "P_{belt,lim} = \\left(k_z\\left(\\frac{b}{b_0}\\right)^{1.14} F_a - \\frac{b}{b_0}\\,m'\\,v^2\\right) v",
  source: "ISO 5295 (form, from memory); the pull is the maker's",
  assumptions: [
    "v is the belt's speed at the promised speed; k_z is 1 from six teeth in mesh on, and 0.2 less for each tooth that is missing.",
    "No service factor: shock, heat and the crank's torsional vibration ask for a margin on top, of a third and more.",
  ],
});

export const blowerBeltLoad = cell("blowerBeltLoad", {
  label: "Power through the blower belt",
  kind: "power",
  symbol: "P_{belt}",
  from: { blowerShaftPower },
  compute: ({ blowerShaftPower }) => blowerShaftPower,
  formula: "P_{belt} = P_{bl}",
  source: "definition",
  limits: [{ component: "blower belt", side: "most", bound: blowerBeltRating }],
});

export const accessoryDrive = structure("accessoryDrive", {
  label: "Accessory belt as laid out",
  from: { accessoryRun, crankRotation, idleSpeed, ratedSpeed, maximumSpeed, meshLeast },
  compute: ({ accessoryRun, crankRotation, idleSpeed, ratedSpeed, maximumSpeed }) =>
    runningDrive({
      members: alongTheBelt(accessoryRun, crankRotation),
      profile: curvilinear8,
      crankRotation,
      speeds: { idle: idleSpeed, rated: ratedSpeed, maximum: maximumSpeed },
    }),
  formula: "n_i = N\\,\\frac{z_{crank}}{z_i}, \\qquad L_a = \\sum_j l_j + \\sum_i r_i\\,\\beta_i",
  source: "ISO 5294 and ISO 13050 (from memory); common tangents of circles",
  assumptions: [
    "l are the free spans, r the pitch radii and β the arcs of contact; the pitch is 8 mm.",
    "A smooth pulley turns as its pitch circle rolls on the belt.",
  ],
  checks: (drive, { meshLeast }) => [
    ...drive.members.filter(({ role }) => role !== "crank").flatMap(speedChecks),
    ...meshChecks("accessory belt", drive, meshLeast),
  ],
});

export const accessoryBeltSpeed = cell("accessoryBeltSpeed", {
  label: "Accessory belt speed at the highest engine speed",
  kind: "velocity",
  symbol: "v_{acc}",
  from: { accessoryDrive },
  compute: ({ accessoryDrive }) => accessoryDrive.beltSpeed.maximum,
  formula: "v_{acc} = z_{crank}\\cdot 8\\,\\mathrm{mm}\\cdot N_{max}",
  source: "definition",
  limits: [{ component: "accessory belt", side: "most", bound: accessoryBeltSpeedLimit }],
});

export const accessoryBeltLength = cell("accessoryBeltLength", {
  label: "Accessory belt length as laid out",
  kind: "length",
  symbol: "L_a",
  from: { accessoryDrive },
  compute: ({ accessoryDrive }) => accessoryDrive.run.length,
  formula: "L_a = \\sum_j l_j + \\sum_i r_i\\,\\beta_i",
  source: "common tangents of circles",
});

export const accessoryBeltTeeth = cell("accessoryBeltTeeth", {
  label: "Nearest accessory belt with whole teeth",
  kind: "count",
  symbol: "z_{acc}",
  from: { accessoryBeltLength },
  compute: ({ accessoryBeltLength }) => nearestBeltTeeth(accessoryBeltLength, curvilinear8.pitch),
  formula: "z_{acc} = \\mathrm{round}\\left(\\frac{L_a}{8\\,\\mathrm{mm}}\\right)",
  source: "a synchronous belt has a whole number of teeth",
});

/** What a driven unit takes from the belt at the promised speed. */
export interface UnitLoad {
  readonly unit: string;
  readonly power: Power;
  readonly torque: Torque;
  readonly speed: RotationalSpeed;
}

export const unitLoads = structure("unitLoads", {
  label: "Power and torque of each driven unit",
  from: { accessoryDrive, hydraulicPower, alternatorPower, fuelPumpPower },
  compute: ({ accessoryDrive, hydraulicPower, alternatorPower, fuelPumpPower }): readonly UnitLoad[] => {
    const powers: Readonly<Record<string, Power>> = {
      hydraulicPump: hydraulicPower,
      alternator: alternatorPower,
      fuelPump: fuelPumpPower,
    };
    const loaded = accessoryDrive.members.filter(({ role, teeth }) => role in powers && teeth > 0);
    return loaded.map(({ unit, role, ratio, at }) => {
      const alike = loaded.filter((other) => other.role === role);
      // Displacement and pressure load pumps by their speed; a shared electrical load, or fuel, is shared alike.
      const share =
        role === "hydraulicPump" ? ratio / alike.reduce((sum, other) => sum + other.ratio, 0) : 1 / alike.length;
      const power = (powers[role]! * share) as Power;
      return { unit, power, speed: at.rated, torque: (power / (2 * Math.PI * at.rated)) as Torque };
    });
  },
  formula: "M_i = \\frac{P_i}{2\\pi n_i}",
  source: "definition",
  assumptions: ["Hydraulic pumps share their power by speed, others alike."],
});

export const steeringFlowAtIdle = cell("steeringFlowAtIdle", {
  label: "Hydraulic flow at idle",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_h",
  from: { hydraulicDisplacement, idleSpeed, accessoryRun, hydraulicFilling },
  compute: ({ hydraulicDisplacement, idleSpeed, accessoryRun, hydraulicFilling }) =>
    ratiosOfRole(accessoryRun, "hydraulicPump").reduce(
      (sum, ratio) =>
        sum +
        hydraulicFlow({
          displacement: hydraulicDisplacement,
          speed: (idleSpeed * ratio) as RotationalSpeed,
          volumetricEfficiency: hydraulicFilling,
        }),
      0,
    ) as VolumeFlow,
  formula: "q_h = \\sum \\eta_{vh}\\,V_h\\,N_0\\,i_h",
  source: "ISO 4391 (from memory)",
  limits: [{ component: "hydraulic pump", side: "least", bound: steeringFlowNeeded }],
});

export const rawWaterPumpSpeed = cell("rawWaterPumpSpeed", {
  label: "Raw-water pump speed at the promised speed",
  kind: "rotationalSpeed",
  symbol: "n_w",
  from: { driverSpeed: ratedSpeed, driverTeeth: rawWaterDriverTeeth, drivenTeeth: rawWaterDrivenTeeth },
  compute: drivenSpeed,
  formula: "n_w = N\\,\\frac{z_3}{z_4}",
  source: "ISO 5294 (from memory)",
});

/** The table runs clockwise round the belt; the belt itself runs as the crank turns. */
function alongTheBelt<Member>(
  clockwise: readonly Member[],
  rotation: "clockwise" | "counterclockwise",
): readonly Member[] {
  const [crank, ...others] = clockwise;
  return crank !== undefined && rotation === "counterclockwise" ? [crank, ...others.reverse()] : clockwise;
}

function speedChecks({
  unit,
  at,
  lowestSpeed,
  highestSpeed,
  turnsRightly,
}: RunningDrive["members"][number]): StatedCheck[] {
  return [
    ...(lowestSpeed > 0
      ? [
          {
            component: unit.toLowerCase(),
            label: `${unit} speed at idle`,
            kind: "rotationalSpeed" as const,
            side: "least" as const,
            value: at.idle,
            bound: lowestSpeed,
          },
        ]
      : []),
    {
      component: unit.toLowerCase(),
      label: `${unit} speed at the highest engine speed`,
      kind: "rotationalSpeed",
      side: "most",
      value: at.maximum,
      bound: highestSpeed,
    },
    ...(turnsRightly
      ? []
      : [
          {
            component: unit.toLowerCase(),
            label: `${unit} turns the way it must (1 for yes, 0 for no)`,
            kind: "count" as const,
            side: "least" as const,
            value: 0,
            bound: 1,
          },
        ]),
  ];
}

function meshChecks(belt: string, { run }: RunningDrive, least: Count): StatedCheck[] {
  return run.pulleys
    .filter(({ teethInMesh }) => teethInMesh !== undefined)
    .map(({ name, teethInMesh }) => ({
      component: belt,
      label: `Teeth in mesh on the ${name.toLowerCase()}`,
      kind: "count",
      side: "least",
      value: teethInMesh!,
      bound: least,
      source: "ISO 5295 (from memory): below six teeth the rating is cut",
    }));
}
