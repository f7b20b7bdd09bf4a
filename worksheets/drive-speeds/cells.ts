import {
  beltPowerRating,
  drivenSpeed,
  effectivePull,
  hydraulicFlow,
  isToothed,
} from "../../lib/drive";
import { cell } from "../../lib/graph";
import type { Count, Force, Length, RotationalSpeed, Torque, VolumeFlow } from "../../lib/quantity";
import { blowerShaftPower } from "../boost/cells";
import { blowerHighestSpeed } from "../boost/inputs";
import { idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { beltRuns, frontBelts } from "./beltRuns";
import { blowerBelt, membersOfRole, runOf } from "./frontBelts";
import {
  blowerDrivenTeeth,
  blowerDriverTeeth,
  hydraulicDisplacement,
  hydraulicFilling,
  rawWaterDrivenTeeth,
  rawWaterDriverTeeth,
  steeringFlowNeeded,
} from "./inputs";

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

export const blowerBeltLength = cell("blowerBeltLength", {
  label: "Blower belt length as laid out",
  kind: "length",
  symbol: "L_b",
  from: { beltRuns },
  compute: ({ beltRuns }) => runOf(blowerBelt(beltRuns)).length,
  formula: "L_b = \\sum_j l_j + \\sum_i r_i\\,\\beta_i",
  source: "common tangents of circles",
});

export const blowerBeltSpeed = cell("blowerBeltSpeed", {
  label: "Blower belt speed at the highest engine speed",
  kind: "velocity",
  symbol: "v_b",
  from: { beltRuns },
  compute: ({ beltRuns }) => blowerBelt(beltRuns).beltSpeed.maximum,
  formula: "v_b = z_1\\,p_b\\,N_{max}",
  source: "definition",
  assumptions: ["p_b is the belt's pitch."],
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
  from: { blowerTorque, beltRuns },
  compute: ({ blowerTorque, beltRuns }) => {
    const { layout, members } = blowerBelt(beltRuns);
    const pulley = layout.pulleys[members.findIndex(({ role }) => role === "blower")]!;
    return effectivePull(blowerTorque, (2 * pulley.pitchRadius) as Length) as Force;
  },
  formula: "F_b = \\frac{2\\pi\\,M_{bl}}{z_2\\,p_b}",
  source: "definition",
  assumptions: ["Steady pull; torsional vibration of the crank comes on top."],
});

export const blowerBeltRating = cell("blowerBeltRating", {
  label: "Power that the blower belt may pass",
  kind: "power",
  symbol: "P_{belt,lim}",
  from: { beltRuns },
  compute: ({ beltRuns }) => {
    const laid = blowerBelt(beltRuns);
    if (!isToothed(laid.section)) throw new RangeError("blower belt: it is ribbed; this rating is that of a toothed belt");
    const meshes = runOf(laid).pulleys.map(({ teethInMesh }) => teethInMesh ?? Number.POSITIVE_INFINITY);
    return beltPowerRating({
      allowablePull: laid.belt.allowablePull,
      baseWidth: laid.belt.baseWidth,
      width: laid.belt.width,
      baseMassPerLength: laid.belt.baseMass,
      beltSpeed: laid.beltSpeed.rated,
      teethInMesh: Math.min(...meshes) as Count,
    });
  },
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

export const steeringFlowAtIdle = cell("steeringFlowAtIdle", {
  label: "Hydraulic flow at idle",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_h",
  from: { hydraulicDisplacement, idleSpeed, frontBelts, hydraulicFilling },
  compute: ({ hydraulicDisplacement, idleSpeed, frontBelts, hydraulicFilling }) =>
    membersOfRole(frontBelts, "hydraulicPump").reduce(
      (sum, { ratio }) =>
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

