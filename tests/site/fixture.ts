import { cell, choice, choiceColumn, graphOf, input, quantityColumn, structure, table, textColumn } from "../../lib/graph";
import type {
  Fraction,
  Length,
  MassFlow,
  Power,
  Pressure,
  Quantity,
  Ratio,
  RotationalSpeed,
  Temperature,
} from "../../lib/quantity";

// A small engine of no particular kind: enough inputs and cells to meet every form of input, cell, limit and refusal.

export const engineSpeed = input("engineSpeed", {
  label: "Engine speed",
  kind: "rotationalSpeed",
  symbol: "N",
  value: 45 as RotationalSpeed,
  span: [10 as RotationalSpeed, 70 as RotationalSpeed],
  step: 5 / 6,
  note: "Crankshaft speed at the promised power.",
});

export const power = input("power", {
  label: "Brake power",
  kind: "power",
  symbol: "P",
  value: 450e3 as Power,
  span: [50e3 as Power, 1500e3 as Power],
  step: 5e3,
  note: "Power promised at the flywheel.",
});

export const airFuelRatio = input("airFuelRatio", {
  label: "Air–fuel ratio",
  kind: "ratio",
  symbol: "\\mathrm{AFR}",
  value: 22 as Ratio,
  span: [14 as Ratio, 40 as Ratio],
  step: 0.5,
});

export const driveRatio = input("driveRatio", {
  label: "Blower drive ratio",
  kind: "ratio",
  symbol: "i_b",
  value: 1.92 as Ratio,
  span: [0.5 as Ratio, 3.4 as Ratio],
  step: 0.02,
  note: "Blower turns for one turn of the crankshaft.",
});

export const ambient = input("ambient", {
  label: "Ambient temperature",
  kind: "temperature",
  symbol: "T_0",
  value: 298.15 as Temperature,
  span: [243.15 as Temperature, 328.15 as Temperature],
  step: 1,
});

export const ambientPressure = input("ambientPressure", {
  label: "Ambient pressure",
  kind: "pressure",
  symbol: "p_0",
  value: 96000 as Pressure,
  span: [50000 as Pressure, 110000 as Pressure],
  step: 500,
});

export const leak = input("leak", {
  label: "Leak past the rotors",
  kind: "fraction",
  symbol: "\\lambda",
  value: 0.02 as Fraction,
  span: [0.001 as Fraction, 0.5 as Fraction],
  step: 0.001,
  scale: "log",
});

export const cylinders = input("cylinders", {
  label: "Cylinders",
  kind: "count",
  symbol: "z",
  value: 6 as Quantity<"count">,
  span: [1 as Quantity<"count">, 24 as Quantity<"count">],
  step: 1,
});

export const bore = input("bore", {
  label: "Bore",
  kind: "length",
  symbol: "B",
  value: 0.125 as Length,
  span: [0.05 as Length, 0.3 as Length],
  step: 0.001,
});

export const speedLimit = input("speedLimit", {
  label: "Blower speed, highest allowed",
  kind: "rotationalSpeed",
  value: 95 as RotationalSpeed,
  span: [20 as RotationalSpeed, 300 as RotationalSpeed],
  step: 1,
});

export const coolant = choice("coolant", {
  label: "Charge cooler",
  value: "water",
  options: { none: "no cooler", water: "fresh water", sea: "raw sea water" },
  note: "What carries the charge's heat away.",
});

export const driven = table("driven", {
  label: "Driven units",
  note: "Everything on the front belt, in running order.",
  rows: [1, 6],
  columns: {
    name: textColumn({ label: "Unit", longest: 24 }),
    ratio: quantityColumn({ label: "Ratio", kind: "ratio", span: [0.2 as Ratio, 6 as Ratio], step: 0.05 }),
    power: quantityColumn({ label: "Power", kind: "power", span: [0 as Power, 100e3 as Power], step: 500 }),
    side: choiceColumn({ label: "Side", options: { tight: "tight", slack: "slack" } }),
  },
  value: [
    { name: "coolant pump", ratio: 1.2 as Ratio, power: 3000 as Power, side: "tight" },
    { name: "alternator", ratio: 2.6 as Ratio, power: 4500 as Power, side: "slack" },
  ],
});

export const fuelFlow = cell("fuelFlow", {
  label: "Fuel flow",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_f",
  from: { power },
  compute: ({ power }) => (power * 6e-8) as MassFlow,
  formula: "\\dot m_f = P \\cdot b",
  source: "definition",
  assumptions: ["Consumption is 216 g/kWh at every load."],
});

export const airFlow = cell("airFlow", {
  label: "Air flow asked for",
  kind: "massFlow",
  symbol: "\\dot m_a",
  from: { fuelFlow, airFuelRatio },
  compute: ({ fuelFlow, airFuelRatio }) => (fuelFlow * airFuelRatio) as MassFlow,
  formula: "\\dot m_a = \\dot m_f\\,\\mathrm{AFR}",
  source: "definition",
  limits: [
    { component: "air meters", side: "most", bound: 0.7 as MassFlow, source: "fixture" },
    { component: "inlet filter", side: "most", bound: 0.61 as MassFlow, source: "fixture" },
  ],
});

export const blowerSpeed = cell("blowerSpeed", {
  label: "Blower speed",
  kind: "rotationalSpeed",
  symbol: "N_b",
  from: { engineSpeed, driveRatio },
  compute: ({ engineSpeed, driveRatio }) => (engineSpeed * driveRatio) as RotationalSpeed,
  formula: "N_b = N\\, i_b",
  source: "definition",
  limits: [{ component: "blower", side: "most", bound: speedLimit }],
});

export const pressureRatio = cell("pressureRatio", {
  label: "Blower pressure ratio",
  kind: "ratio",
  symbol: "\\Pi_b",
  from: { driveRatio, leak },
  compute: ({ driveRatio, leak }) => {
    if (driveRatio > 3.2) throw new RangeError(`blower: pressure ratio has no answer above a drive ratio of 3.2`);
    return (0.7 + driveRatio * 0.5 * (1 - leak)) as Ratio;
  },
  formula: "\\Pi_b = 0.7 + \\frac{i_b}{2}\\,(1 - \\lambda)",
  source: "common practice, no source",
  validity: [{ of: "driveRatio", span: [0.6, 2.5], note: "The fit holds drive ratios of 0.6 to 2.5." }],
});

export const outletTemperature = cell("outletTemperature", {
  label: "Air after the blower",
  kind: "temperature",
  symbol: "T_{2,\\mathrm{out}}",
  from: { ambient, pressureRatio },
  compute: ({ ambient, pressureRatio }) => (ambient * pressureRatio ** (0.286 / 0.6)) as Temperature,
  formula: "T_2 = T_0\\,\\Pi_b^{\\frac{\\gamma - 1}{\\gamma\\,\\eta_p}}",
  source: "polytropic compression; any textbook of thermodynamics",
  limits: [{ component: "blower seals", side: "most", bound: 423.15 as Temperature }],
});

export const outletPressure = cell("outletPressure", {
  label: "Pressure after the blower",
  kind: "pressure",
  symbol: "p_2",
  from: { ambientPressure, pressureRatio },
  compute: ({ ambientPressure, pressureRatio }) => (ambientPressure * pressureRatio) as Pressure,
  formula: "p_2 = p_0\\,\\Pi_b",
  source: "definition",
  limits: [{ component: "manifold", side: "least", bound: 150000 as Pressure }],
});

export const chargeTemperature = cell("chargeTemperature", {
  label: "Charge in the manifold",
  kind: "temperature",
  symbol: "T_3",
  from: { outletTemperature, ambient, coolant },
  compute: ({ outletTemperature, ambient, coolant }) => {
    const effectiveness = { none: 0, water: 0.6, sea: 0.8 }[coolant];
    return (outletTemperature - effectiveness * (outletTemperature - ambient)) as Temperature;
  },
  formula: "T_3 = T_2 - \\varepsilon\\,(T_2 - T_0)",
  source: "definition of effectiveness",
  limits: [{ component: "pistons", side: "most", bound: 343.15 as Temperature }],
});

export const blowerPower = cell("blowerPower", {
  label: "Blower power",
  kind: "power",
  symbol: "W_b",
  from: { airFlow, outletTemperature, ambient },
  compute: ({ airFlow, outletTemperature, ambient }) => (airFlow * 1005 * (outletTemperature - ambient)) as Power,
  formula: "W_b = \\dot m_a\\, c_p\\,(T_2 - T_0)",
  source: "energy balance",
});

export const beltLoads = structure("beltLoads", {
  label: "Driven units on the belt",
  from: { driven, engineSpeed },
  compute: ({ driven, engineSpeed }) =>
    driven.map((unit) => ({ name: unit.name, speed: unit.ratio * engineSpeed, torque: unit.power / (6.283 * unit.ratio * engineSpeed) })),
  formula: "N_j = i_j\\,N",
  source: "definition",
  checks: (units) =>
    units.map((unit) => ({
      component: unit.name,
      label: "speed",
      kind: "rotationalSpeed",
      side: "most",
      value: unit.speed,
      bound: 120,
    })),
});

export const beltPower = cell("beltPower", {
  label: "Power through the front belt",
  kind: "power",
  symbol: "P_\\Sigma",
  from: { driven, blowerPower },
  compute: ({ driven, blowerPower }) => (driven.reduce((sum, unit) => sum + unit.power, 0) + blowerPower) as Power,
  formula: "P_\\Sigma = W_b + \\sum_j P_j",
  source: "definition",
  limits: [{ component: "front belt", side: "most", bound: 130e3 as Power }],
});

export const boreArea = cell("boreArea", {
  label: "Piston area, all cylinders",
  kind: "area",
  symbol: "A_p",
  from: { bore, cylinders },
  compute: ({ bore, cylinders }) => ((Math.PI / 4) * bore ** 2 * cylinders) as Quantity<"area">,
  formula: "A_p = z\\,\\frac{\\pi B^2}{4}",
  source: "definition",
});

export const graph = graphOf([
  engineSpeed,
  power,
  airFuelRatio,
  driveRatio,
  ambient,
  ambientPressure,
  leak,
  cylinders,
  bore,
  speedLimit,
  coolant,
  driven,
  fuelFlow,
  airFlow,
  blowerSpeed,
  pressureRatio,
  outletTemperature,
  outletPressure,
  chargeTemperature,
  blowerPower,
  beltLoads,
  beltPower,
  boreArea,
]);
