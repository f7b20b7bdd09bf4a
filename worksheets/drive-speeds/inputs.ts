import { choice, choiceColumn, type RowOf, table, textColumn } from "../../lib/graph";
import { quantity } from "../../lib/quantity";
import { column, setting } from "../setting";

const shaftEnds = { forward: "forward", rearward: "rearward" } as const;
const rotations = { clockwise: "clockwise", counterclockwise: "counterclockwise", either: "either way" } as const;

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

export const blowerBeltPitch = choice("blowerBeltPitch", {
  label: "Blower belt pitch",
  options: { H14M: "14 mm curvilinear", H8M: "8 mm curvilinear" },
  value: "H14M",
});

export const blowerBeltWidth = setting("blowerBeltWidth", {
  label: "Blower belt width",
  symbol: "b",
  kind: "length",
  unit: "mm",
  value: 85,
  span: [20, 170],
  step: 5,
  note: "Standard widths of the 14 mm belt are 40, 55, 85, 115 and 170 mm.",
});

export const blowerHeight = setting("blowerHeight", {
  label: "Blower shaft above the crank",
  symbol: "y_b",
  kind: "length",
  unit: "mm",
  value: 437,
  span: [200, 900],
  step: 1,
});

export const blowerOffset = setting("blowerOffset", {
  label: "Blower shaft to the right of the crank",
  symbol: "x_b",
  kind: "length",
  unit: "mm",
  value: 0,
  span: [-300, 300],
  step: 1,
});

export const idlerOffset = setting("idlerOffset", {
  label: "Idler to the right of the crank",
  symbol: "x_i",
  kind: "length",
  unit: "mm",
  value: -106,
  span: [-500, 500],
  step: 1,
  note: "A smooth idler on the back of the belt. It belongs on the slack span, the one that leaves the crank: on the left if the crank turns clockwise.",
});

export const idlerHeight = setting("idlerHeight", {
  label: "Idler above the crank",
  symbol: "y_i",
  kind: "length",
  unit: "mm",
  value: 240,
  span: [50, 800],
  step: 1,
});

export const idlerDiameter = setting("idlerDiameter", {
  label: "Idler diameter",
  symbol: "d_i",
  kind: "length",
  unit: "mm",
  value: 120,
  span: [60, 250],
  step: 1,
});

export const blowerBeltSpeedLimit = setting("blowerBeltSpeedLimit", {
  label: "Blower belt speed allowed",
  symbol: "v_{b,lim}",
  kind: "velocity",
  unit: "m/s",
  value: 45,
  span: [20, 80],
  step: 1,
  note: "Ask the makers of belt and pulleys: cast iron stands less than steel or aluminium.",
});

export const allowablePull = setting("allowablePull", {
  label: "Pull that the belt carries at its base width",
  symbol: "F_a",
  kind: "force",
  unit: "N",
  value: 1900,
  span: [100, 10000],
  step: 50,
  note: "A maker's number, from the tables of the belt in hand; the value here is invented.",
});

export const beltBaseWidth = setting("beltBaseWidth", {
  label: "Base width of that rating",
  symbol: "b_0",
  kind: "length",
  unit: "mm",
  value: 40,
  span: [10, 100],
  step: 1,
});

export const beltBaseMass = setting("beltBaseMass", {
  label: "Mass of the belt at its base width",
  symbol: "m'",
  kind: "massPerLength",
  hint: "small",
  unit: "g/m",
  value: 360,
  span: [20, 2000],
  step: 10,
  note: "8 to 10 g for each metre and millimetre of width at 14 mm pitch, from memory.",
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

const memberColumns = {
  unit: textColumn({ label: "Unit", longest: 24 }),
  role: choiceColumn({
    label: "What it is",
    options: {
      crank: "crank",
      hydraulicPump: "hydraulic pump",
      fuelPump: "high-pressure fuel pump",
      alternator: "alternator",
      rawWaterPump: "raw-water pump",
      idler: "idler",
      other: "something else",
    },
  }),
  contact: choiceColumn({ label: "Belt face", options: { toothed: "toothed", back: "back" } }),
  teeth: column({ label: "Teeth", kind: "count", unit: "", span: [0, 120], step: 1, note: "0 for a smooth pulley" }),
  diameter: column({
    label: "Diameter if smooth",
    kind: "length",
    unit: "mm",
    span: [20, 300],
    step: 1,
  }),
  x: column({ label: "To the right", kind: "length", unit: "mm", span: [-800, 800], step: 1 }),
  y: column({ label: "Above", kind: "length", unit: "mm", span: [-800, 1200], step: 1 }),
  shaftEnd: choiceColumn({ label: "Shaft end points", options: shaftEnds }),
  mustTurn: choiceColumn({ label: "Must turn", options: rotations }),
  lowestSpeed: column({ label: "Lowest speed", kind: "rotationalSpeed", unit: "rpm", span: [0, 20000], step: 50 }),
  highestSpeed: column({ label: "Highest speed", kind: "rotationalSpeed", unit: "rpm", span: [500, 30000], step: 50 }),
} as const;

export type AccessoryRow = RowOf<typeof memberColumns>;

const mm = (value: number) => quantity("length", value, "mm");
const rpm = (value: number) => quantity("rotationalSpeed", value, "rpm");
const count = (value: number) => quantity("count", value);

export const accessoryRun = table("accessoryRun", {
  label: "Accessory belt, pulley by pulley",
  note: "Seen from the front of the engine and clockwise round the belt, the crank first, whichever way it turns. Places are measured from the crank; a smooth pulley has 0 teeth and a diameter.",
  columns: memberColumns,
  rows: [2, 10],
  value: [
    {
      unit: "Crank",
      role: "crank",
      contact: "toothed",
      teeth: count(50),
      diameter: mm(60),
      x: mm(0),
      y: mm(0),
      shaftEnd: "forward",
      mustTurn: "either",
      lowestSpeed: rpm(0),
      highestSpeed: rpm(5000),
    },
    {
      unit: "Hydraulic pump",
      role: "hydraulicPump",
      contact: "toothed",
      teeth: count(54),
      diameter: mm(60),
      x: mm(-200),
      y: mm(235),
      shaftEnd: "forward",
      mustTurn: "clockwise",
      lowestSpeed: rpm(650),
      highestSpeed: rpm(3600),
    },
    {
      unit: "Alternator",
      role: "alternator",
      contact: "toothed",
      teeth: count(26),
      diameter: mm(60),
      x: mm(-95),
      y: mm(440),
      shaftEnd: "forward",
      mustTurn: "either",
      lowestSpeed: rpm(1400),
      highestSpeed: rpm(12000),
    },
    {
      unit: "Tension idler",
      role: "idler",
      contact: "back",
      teeth: count(0),
      diameter: mm(100),
      x: mm(40),
      y: mm(265),
      shaftEnd: "forward",
      mustTurn: "either",
      lowestSpeed: rpm(0),
      highestSpeed: rpm(9000),
    },
    {
      unit: "Fuel pump",
      role: "fuelPump",
      contact: "toothed",
      teeth: count(60),
      diameter: mm(60),
      x: mm(205),
      y: mm(262),
      shaftEnd: "forward",
      mustTurn: "clockwise",
      lowestSpeed: rpm(500),
      highestSpeed: rpm(3200),
    },
  ],
});

export const accessoryBeltSpeedLimit = setting("accessoryBeltSpeedLimit", {
  label: "Accessory belt speed allowed",
  symbol: "v_{acc,lim}",
  kind: "velocity",
  unit: "m/s",
  value: 30,
  span: [15, 60],
  step: 1,
  note: "Ask the makers of belt and pulleys.",
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

export const electricalLoad = setting("electricalLoad", {
  label: "Electrical load",
  symbol: "I",
  kind: "electricCurrent",
  unit: "A",
  value: 95,
  span: [0, 400],
  step: 5,
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
  label: "Fan, air compressor and the rest",
  symbol: "P_o",
  kind: "power",
  unit: "kW",
  value: 9,
  span: [0, 80],
  step: 0.5,
  note: "Power at the promised speed of all else that is driven, the raw-water pump included; the engine's own oil and coolant pumps count as friction.",
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
