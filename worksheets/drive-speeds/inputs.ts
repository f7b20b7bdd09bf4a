import { choice } from "../../lib/graph";
import { setting } from "../setting";

export const crankRotation = choice("crankRotation", {
  label: "Crank turns, seen from the front",
  options: { clockwise: "clockwise", counterclockwise: "counterclockwise" },
  value: "clockwise",
});

export const blowerDriverTeeth = setting("blowerDriverTeeth", {
  label: "Teeth on the crank pulley, blower belt",
  symbol: "z_1",
  kind: "count",
  unit: "",
  value: 50,
  span: [28, 90],
  step: 1,
});

export const blowerDrivenTeeth = setting("blowerDrivenTeeth", {
  label: "Teeth on the blower pulley",
  symbol: "z_2",
  kind: "count",
  unit: "",
  value: 27,
  span: [22, 90],
  step: 1,
});

export const meshLeast = setting("meshLeast", {
  label: "Teeth in mesh, at least",
  symbol: "z_{m,min}",
  kind: "count",
  unit: "",
  value: 6,
  span: [3, 12],
  step: 1,
  note: "Below six teeth in mesh a synchronous belt's rating is cut: ISO 5295 (from memory).",
});

export const cruiseSpeed = setting("cruiseSpeed", {
  label: "Engine speed at cruise",
  symbol: "N_c",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 2400,
  span: [500, 8000],
  step: 50,
  note: "Where it spends most of its hours.",
});

export const overspeedShare = setting("overspeedShare", {
  label: "Overspeed above the highest engine speed",
  symbol: "x_o",
  kind: "fraction",
  unit: "%",
  value: 12,
  span: [0, 40],
  step: 1,
  note: "Driven downhill, or when a load falls off: what comes apart at that speed must not be there.",
});

export const clearanceLeast = setting("clearanceLeast", {
  label: "Room between a belt and what it passes, at least",
  symbol: "g_{min}",
  kind: "length",
  unit: "mm",
  value: 12,
  span: [0, 60],
  step: 1,
  note: "Between pitch circles and pitch lines: the belt's thickness, flanges and whip come off it. Common practice, no source.",
});

export const fittingSlack = setting("fittingSlack", {
  label: "Slack wanted to slip a belt on",
  symbol: "\\Delta L_f",
  kind: "length",
  unit: "mm",
  value: 10,
  span: [0, 60],
  step: 1,
  note: "As belt length; flanges and deep teeth ask for more. Common practice, no source.",
});

export const stretchShare = setting("stretchShare", {
  label: "Stretch and settling to be taken up",
  symbol: "x_s",
  kind: "fraction",
  unit: "%",
  value: 0.2,
  span: [0, 3],
  step: 0.05,
  note: "Of the belt's length: 0.1 to 0.2 % for toothed belts, 1 % and more for ribbed ones; common practice, no source.",
});

export const slackReserve = setting("slackReserve", {
  label: "Tension that the loosest span shall keep",
  symbol: "T_{min}",
  kind: "force",
  unit: "N",
  value: 60,
  span: [0, 1000],
  step: 10,
  note: "Above the centrifugal one: with less, teeth ride up and ribs slip. Common practice, no source.",
});

export const torsionalShare = setting("torsionalShare", {
  label: "Peak of torque above its mean, torsional vibration",
  symbol: "x_t",
  kind: "fraction",
  unit: "%",
  value: 30,
  span: [0, 200],
  step: 5,
  note: "The crank does not turn evenly, and what it drives has inertia: ask for the measured angle at the front end. The value is a guess, no source.",
});

export const serviceFactor = setting("serviceFactor", {
  label: "Service factor on the belt's pull",
  symbol: "k_{sf}",
  kind: "ratio",
  unit: "",
  value: 1.5,
  span: [1, 3],
  step: 0.05,
  note: "For shock, heat and hours: 1.3 to 2 is common practice, no source; makers have tables of their own.",
});

export const beltEfficiency = setting("beltEfficiency", {
  label: "Efficiency of the accessory belt",
  symbol: "\\eta_b",
  kind: "fraction",
  unit: "%",
  value: 97,
  span: [85, 100],
  step: 0.5,
});

export const hydraulicDisplacement = setting("hydraulicDisplacement", {
  label: "Hydraulic pump displacement",
  symbol: "V_h",
  kind: "volumePerTurn",
  hint: "small",
  unit: "cc/rev",
  value: 16,
  span: [2, 60],
  step: 0.5,
});

export const hydraulicPressure = setting("hydraulicPressure", {
  label: "Hydraulic working pressure",
  symbol: "p_h",
  kind: "pressureDifference",
  hint: "rail",
  unit: "bar",
  value: 55,
  span: [0, 250],
  step: 5,
  note: "As it is at the promised speed, not the relief valve's setting.",
});

export const hydraulicEfficiency = setting("hydraulicEfficiency", {
  label: "Hydraulic pump, mechanical efficiency",
  symbol: "\\eta_h",
  kind: "fraction",
  unit: "%",
  value: 88,
  span: [50, 98],
  step: 1,
});

export const hydraulicFilling = setting("hydraulicFilling", {
  label: "Hydraulic pump, volumetric efficiency at idle",
  symbol: "\\eta_{vh}",
  kind: "fraction",
  unit: "%",
  value: 92,
  span: [50, 99],
  step: 1,
});

export const steeringFlowNeeded = setting("steeringFlowNeeded", {
  label: "Steering flow needed at idle",
  symbol: "q_{h,min}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 9,
  span: [0, 60],
  step: 0.5,
});

export const busVoltage = setting("busVoltage", {
  label: "Voltage at the alternator",
  symbol: "U",
  kind: "voltage",
  unit: "V",
  value: 28.2,
  span: [12, 60],
  step: 0.1,
});

export const alternatorEfficiency = setting("alternatorEfficiency", {
  label: "Alternator efficiency",
  symbol: "\\eta_a",
  kind: "fraction",
  unit: "%",
  value: 62,
  span: [30, 90],
  step: 1,
  note: "50 to 70 % for claw-pole machines, falling at high speed: common practice, no source.",
});

export const otherAccessoryPower = setting("otherAccessoryPower", {
  label: "What else the crank drives",
  symbol: "P_o",
  kind: "power",
  unit: "kW",
  value: 9,
  span: [0, 80],
  step: 0.5,
  note: "Power at the promised speed of all that the tables of belts do not hold; the engine's own oil and coolant pumps count as friction.",
});

export const rawWaterDriverTeeth = setting("rawWaterDriverTeeth", {
  label: "Teeth on the crank pulley, raw-water pump belt",
  symbol: "z_3",
  kind: "count",
  unit: "",
  value: 36,
  span: [18, 90],
  step: 1,
});

export const rawWaterDrivenTeeth = setting("rawWaterDrivenTeeth", {
  label: "Teeth on the raw-water pump pulley",
  symbol: "z_4",
  kind: "count",
  unit: "",
  value: 48,
  span: [18, 120],
  step: 1,
});
