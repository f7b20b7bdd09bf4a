import { choice, choiceColumn, table } from "../../lib/graph";
import type { Area, Fraction, PressureDifference } from "../../lib/quantity";
import { column, setting } from "../setting";

export const seaTemperature = setting("seaTemperature", {
  label: "Sea temperature, worst case",
  symbol: "T_{sea}",
  kind: "temperature",
  unit: "°C",
  value: 30,
  span: [-1, 38],
  step: 0.5,
  note: "Size for the warmest water the boat will meet; 32 °C is the usual figure for unrestricted service: common practice, no source.",
});

export const salinity = setting("salinity", {
  label: "Salinity of the sea water",
  symbol: "S_w",
  kind: "fraction",
  unit: "%",
  value: 3.5,
  span: [0, 4.2],
  step: 0.1,
});

export const rawWaterDisplacement = setting("rawWaterDisplacement", {
  label: "Raw-water pump displacement",
  symbol: "V_w",
  kind: "volumePerTurn",
  hint: "small",
  unit: "cc/rev",
  value: 240,
  span: [20, 1500],
  step: 5,
});

export const rawWaterFilling = setting("rawWaterFilling", {
  label: "Raw-water pump, volumetric efficiency without pressure",
  symbol: "\\eta_w",
  kind: "fraction",
  unit: "%",
  value: 84,
  span: [40, 98],
  step: 1,
  note: "A flexible impeller gives 80 to 90 % when new and 60 to 70 % after a season: common practice, no source.",
});

export const rawWaterHighestSpeed = setting("rawWaterHighestSpeed", {
  label: "Raw-water pump speed allowed",
  symbol: "n_{w,lim}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 2200,
  span: [500, 4000],
  step: 50,
});

export const rawWaterBore = setting("rawWaterBore", {
  label: "Bore of the raw-water pipe",
  symbol: "d_w",
  kind: "length",
  unit: "mm",
  value: 60,
  span: [20, 200],
  step: 1,
});

export const rawWaterVelocityLimit = setting("rawWaterVelocityLimit", {
  label: "Raw-water velocity allowed",
  symbol: "v_{w,lim}",
  kind: "velocity",
  unit: "m/s",
  value: 2.5,
  span: [0.5, 5],
  step: 0.1,
  note: "Sea water wears copper–nickel away above 2 to 3.5 m/s, small bores first: common practice, no source; ask the tube's maker.",
});

export const jacketTemperature = setting("jacketTemperature", {
  label: "Jacket water leaving the engine, at most",
  symbol: "T_{j,lim}",
  kind: "temperature",
  unit: "°C",
  value: 86,
  span: [60, 110],
  step: 1,
});

export const jacketFlow = setting("jacketFlow", {
  label: "Jacket water flow at the promised speed",
  symbol: "q_j",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 460,
  span: [50, 2000],
  step: 10,
});

export const glycolShare = setting("glycolShare", {
  label: "Ethylene glycol in the jacket water, by volume",
  symbol: "\\phi_g",
  kind: "fraction",
  unit: "%",
  value: 40,
  span: [0, 60],
  step: 5,
});

export const jacketExchanger = setting("jacketExchanger", {
  label: "Jacket exchanger UA, clean",
  symbol: "UA_j",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 5.25,
  span: [0.5, 60],
  step: 0.25,
  note: "Heat passed for each kelvin of mean temperature difference: clean, at its own flow and the sea-water flow stated; fouling and other flows are reckoned from there.",
});

export const oilTemperature = setting("oilTemperature", {
  label: "Oil entering its cooler, at most",
  symbol: "T_{o,lim}",
  kind: "temperature",
  unit: "°C",
  value: 102,
  span: [70, 140],
  step: 1,
});

export const oilFlow = setting("oilFlow", {
  label: "Oil flow through its cooler",
  symbol: "q_o",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 125,
  span: [20, 500],
  step: 5,
});

export const oilSpecificHeat = setting("oilSpecificHeat", {
  label: "Specific heat of engine and gear oil",
  symbol: "c_o",
  kind: "specificHeat",
  unit: "kJ/(kg·K)",
  value: 2.15,
  span: [1.7, 2.6],
  step: 0.05,
  note: "2.0 to 2.3 kJ/(kg·K) between 80 and 110 °C, from memory.",
});

export const oilDensity = setting("oilDensity", {
  label: "Density of hot oil",
  symbol: "\\rho_o",
  kind: "density",
  unit: "kg/m³",
  value: 835,
  span: [760, 920],
  step: 5,
});

export const oilCooler = setting("oilCooler", {
  label: "Oil cooler UA, clean",
  symbol: "UA_o",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 1.6,
  span: [0.1, 20],
  step: 0.1,
});

export const gearEfficiency = setting("gearEfficiency", {
  label: "Reduction gear efficiency",
  symbol: "\\eta_g",
  kind: "fraction",
  unit: "%",
  value: 97,
  span: [90, 99.5],
  step: 0.5,
});

export const gearOilTemperature = setting("gearOilTemperature", {
  label: "Gear oil entering its cooler, at most",
  symbol: "T_{g,lim}",
  kind: "temperature",
  unit: "°C",
  value: 78,
  span: [50, 110],
  step: 1,
});

export const gearOilFlow = setting("gearOilFlow", {
  label: "Gear oil flow",
  symbol: "q_g",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 40,
  span: [5, 200],
  step: 5,
});

export const gearCooler = setting("gearCooler", {
  label: "Gear oil cooler UA, clean",
  symbol: "UA_g",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 0.55,
  span: [0.02, 10],
  step: 0.01,
});

export const fuelReturnLimit = setting("fuelReturnLimit", {
  label: "Fuel returning to the tank, at most",
  symbol: "T_{fr,lim}",
  kind: "temperature",
  unit: "°C",
  value: 50,
  span: [35, 80],
  step: 1,
});

export const fuelCooler = setting("fuelCooler", {
  label: "Fuel cooler UA, clean",
  symbol: "UA_f",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 0.12,
  span: [0.02, 5],
  step: 0.02,
});

export const wallHeatToOil = setting("wallHeatToOil", {
  label: "Wall heat that goes to the oil, by piston cooling",
  symbol: "\\lambda_{wo}",
  kind: "fraction",
  unit: "%",
  value: 18,
  span: [0, 60],
  step: 1,
});

export const wallHeatRadiated = setting("wallHeatRadiated", {
  label: "Wall heat that leaves from the engine's surface",
  symbol: "\\lambda_{wr}",
  kind: "fraction",
  unit: "%",
  value: 8,
  span: [0, 40],
  step: 1,
});

export const frictionHeatToOil = setting("frictionHeatToOil", {
  label: "Friction that heats the oil, the rest the jacket",
  symbol: "\\lambda_{fo}",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [0, 100],
  step: 5,
});

export const dischargeLimit = setting("dischargeLimit", {
  label: "Sea water leaving the last exchanger, at most",
  symbol: "T_{w,lim}",
  kind: "temperature",
  unit: "°C",
  value: 55,
  span: [35, 70],
  step: 1,
  note: "Scale settles from sea water above about 50 to 55 °C: common practice, no source.",
});

export const exhaustHose = setting("exhaustHose", {
  label: "Bore of the wet exhaust hose",
  symbol: "d_x",
  kind: "length",
  unit: "mm",
  value: 203,
  span: [50, 500],
  step: 1,
});

export const wetExhaustLimit = setting("wetExhaustLimit", {
  label: "Wet exhaust temperature allowed",
  symbol: "T_{x,lim}",
  kind: "temperature",
  unit: "°C",
  value: 70,
  span: [45, 100],
  step: 1,
  note: "From the hose's own standard and maker; it counts for gas and water mixed.",
});

export const exhaustVelocityLimit = setting("exhaustVelocityLimit", {
  label: "Gas velocity allowed in the wet hose",
  symbol: "v_{x,lim}",
  kind: "velocity",
  hint: "duct",
  unit: "m/s",
  value: 25,
  span: [5, 60],
  step: 1,
});

export const exchangerSeaFlow = setting("exchangerSeaFlow", {
  label: "Sea-water flow for which UA and losses are stated",
  symbol: "q_{w,r}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 300,
  span: [50, 3000],
  step: 10,
  note: "Each exchanger's UA and each loss along the line hold for this flow through it.",
});

export const seaSideShare = setting("seaSideShare", {
  label: "Resistance to heat that lies on the sea's side",
  symbol: "s_w",
  kind: "fraction",
  unit: "%",
  value: 50,
  span: [10, 90],
  step: 5,
  note: "About half for water against water, a tenth to a third against oil or air: common practice, no source.",
});

export const foulingResistance = setting("foulingResistance", {
  label: "Fouling of the tubes before they are next cleaned",
  symbol: "R_f",
  kind: "foulingResistance",
  unit: "m²·K/W",
  value: 0.0001,
  span: [0, 0.001],
  step: 0.00001,
  note: "Often 0.0001 for sea water below 50 °C and 0.0002 above: Incropera et al., table 11.1, from memory. A warm harbour passes that within a season.",
});

export const cleanCoefficient = setting("cleanCoefficient", {
  label: "Overall coefficient of clean tubes",
  symbol: "U_0",
  kind: "heatTransferCoefficient",
  unit: "W/(m²·K)",
  value: 1200,
  span: [100, 5000],
  step: 50,
  note: "Tells how much surface stands behind a UA, and so how hard the fouling counts; 800 to 1700 for water against water: Incropera et al., table 11.2, from memory.",
});

export const tubeMaterial = choice("tubeMaterial", {
  label: "Tubes that sea water runs in",
  options: {
    copperNickel90: "90/10 copper–nickel",
    copperNickel70: "70/30 copper–nickel",
    aluminiumBrass: "aluminium brass",
    titanium: "titanium",
    other: "other, by the velocity allowed in the pipe",
  },
  value: "copperNickel90",
});

const elements = {
  strainer: "strainer",
  pump: "pump",
  fuelCooler: "fuel cooler",
  gearCooler: "gear cooler",
  aftercooler: "aftercooler",
  intercooler: "intercooler",
  chargeLoop: "cooler of the charge-water loop",
  oilCooler: "oil cooler",
  jacketExchanger: "jacket",
  pipe: "pipe, bend",
} as const;

export type ElementKey = keyof typeof elements;

export const branchFlow = choice("branchFlow", {
  label: "Flow through branches beside each other",
  options: { found: "found from losses", set: "set, row by row" },
  value: "found",
});

export const rawWaterLine = table("rawWaterLine", {
  label: "Raw-water line, in the order in which the water meets it",
  note: "From the sea-cock to the exhaust. What lies before the pump is on its suction side. Elements beside each other share the flow; a bypass is a pipe beside one.",
  columns: {
    element: choiceColumn({ label: "Element", options: elements }),
    lies: choiceColumn({ label: "To the row above", options: { behind: "behind", beside: "beside" } }),
    share: column({
      label: "Valve open, or share",
      kind: "fraction",
      unit: "%",
      span: [0, 100],
      step: 1,
      note: "Where flows are found: how far its valve is open, 100 % without one. Where they are set: its share of the flow.",
    }),
    loss: column({ label: "Loss", kind: "pressureDifference", unit: "kPa", span: [0, 200], step: 0.5 }),
    passage: column({
      label: "Free area of the tubes",
      kind: "area",
      unit: "cm²",
      span: [0, 1000],
      step: 0.5,
      note: "0 where there are none.",
    }),
  },
  rows: [1, 16],
  value: [
    row("strainer", "behind", 1, 4, 0),
    row("pump", "behind", 1, 0, 0),
    row("aftercooler", "behind", 1, 9, 30),
    row("intercooler", "behind", 1, 9, 30),
    row("fuelCooler", "behind", 1, 72, 7),
    row("gearCooler", "beside", 1, 8, 22),
    row("oilCooler", "behind", 1, 10, 28),
    row("jacketExchanger", "behind", 1, 12, 28),
    row("pipe", "behind", 1, 10, 0),
  ],
});

/** Loss in kPa and area in cm², for the rows above. */
function row(element: ElementKey, lies: "behind" | "beside", share: number, loss: number, passage: number) {
  return {
    element,
    lies,
    share: share as Fraction,
    loss: (1000 * loss) as PressureDifference,
    passage: (passage / 1e4) as Area,
  };
}

export const rawWaterPumpKind = choice("rawWaterPumpKind", {
  label: "Raw-water pump",
  options: { impeller: "flexible impeller, or lobes", centrifugal: "centrifugal" },
  value: "impeller",
});

export const rawWaterShutOff = setting("rawWaterShutOff", {
  label: "Pressure rise at which it delivers nothing",
  symbol: "\\Delta p_{w,0}",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 4,
  span: [0.5, 10],
  step: 0.1,
  note: "At the speed below, from the pump's own curve; with both ends known the flow between them is taken as a straight line (impeller) or a parabola (centrifugal).",
});

export const rawWaterOpenFlow = setting("rawWaterOpenFlow", {
  label: "Centrifugal pump's flow without any rise",
  symbol: "q_{w,open}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 520,
  span: [50, 4000],
  step: 10,
});

export const rawWaterStatedSpeed = setting("rawWaterStatedSpeed", {
  label: "Pump speed for which these are stated",
  symbol: "n_{w,r}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 1800,
  span: [300, 4500],
  step: 50,
});

export const suctionLineLoss = setting("suctionLineLoss", {
  label: "Loss of sea-cock and suction hose, at the flow stated",
  symbol: "\\Delta p_{su}",
  kind: "pressureDifference",
  unit: "kPa",
  value: 5,
  span: [0, 60],
  step: 0.5,
});

export const strainerBlocked = setting("strainerBlocked", {
  label: "Strainer basket blocked",
  symbol: "b_s",
  kind: "fraction",
  unit: "%",
  value: 20,
  span: [0, 95],
  step: 1,
  note: "Weed and plastic: the loss grows with the square of the velocity in what is left open.",
});

export const rawWaterPumpHeight = setting("rawWaterPumpHeight", {
  label: "Pump above the sea",
  symbol: "z_{wp}",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 0.3,
  span: [-4, 5],
  step: 0.1,
  note: "Below the waterline it is less than zero.",
});

export const injectionHeight = setting("injectionHeight", {
  label: "Injection above the sea",
  symbol: "z_x",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 0.9,
  span: [0, 6],
  step: 0.1,
  note: "Height to which the pump lifts the water; what falls behind it helps nothing, since the exhaust is open to the air.",
});

export const suctionHeadRequired = setting("suctionHeadRequired", {
  label: "Suction head that the pump needs at its stated speed",
  symbol: "NPSH_r",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 4,
  span: [0.5, 9],
  step: 0.1,
});

export const coldSeaTemperature = setting("coldSeaTemperature", {
  label: "Coldest sea",
  symbol: "T_{sea,c}",
  kind: "temperature",
  unit: "°C",
  value: 5,
  span: [-1, 25],
  step: 0.5,
  note: "A winter harbour: the charge is overcooled and water falls out of it.",
});

export const chargeTemperatureLeast = setting("chargeTemperatureLeast", {
  label: "Charge in the manifold, at least",
  symbol: "T_{5,least}",
  kind: "temperature",
  unit: "°C",
  value: 5,
  span: [-10, 40],
  step: 1,
  note: "Colder charge lights late and knocks, and smokes white at light load: common practice, no source.",
});

export const jacketCooledBy = choice("jacketCooledBy", {
  label: "Jacket water cooled by",
  options: { exchanger: "an exchanger in the raw-water line", keel: "a keel cooler along the hull" },
  value: "exchanger",
});

export const keelCooler = setting("keelCooler", {
  label: "Keel cooler UA, as the boat will lie",
  symbol: "UA_k",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 3.5,
  span: [0.2, 60],
  step: 0.1,
  note: "Take it for a boat pushing against a quay: way through the water multiplies it, paint and growth divide it.",
});

export const thermostatOpens = setting("thermostatOpens", {
  label: "Thermostat begins to open",
  symbol: "T_{th,0}",
  kind: "temperature",
  unit: "°C",
  value: 71,
  span: [30, 95],
  step: 1,
});

export const thermostatSpan = setting("thermostatSpan", {
  label: "Thermostat fully open above that by",
  symbol: "\\Delta T_{th}",
  kind: "temperatureDifference",
  unit: "K",
  value: 12,
  span: [2, 25],
  step: 1,
});

export const jacketPumpRise = setting("jacketPumpRise", {
  label: "Jacket pump's pressure rise at that flow",
  symbol: "\\Delta p_j",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 0.9,
  span: [0.1, 4],
  step: 0.1,
});

export const capPressure = setting("capPressure", {
  label: "Pressure cap opens at",
  symbol: "p_{cap}",
  kind: "gaugePressure",
  hint: "boost",
  unit: "bar",
  value: 0.7,
  span: [0, 2],
  step: 0.1,
});

export const boilingMarginLeast = setting("boilingMarginLeast", {
  label: "Room below boiling, at least",
  symbol: "\\Delta T_{b,lim}",
  kind: "temperatureDifference",
  unit: "K",
  value: 15,
  span: [0, 40],
  step: 1,
  note: "10 to 15 K, since metal round an exhaust port is hotter than the water: common practice, no source.",
});

export const circuitVolume = setting("circuitVolume", {
  label: "Coolant in the whole jacket circuit",
  symbol: "V_j",
  kind: "volume",
  hint: "coolant",
  unit: "L",
  value: 52,
  span: [5, 500],
  step: 1,
});

export const fillTemperature = setting("fillTemperature", {
  label: "Coolant when it is filled in",
  symbol: "T_{fill}",
  kind: "temperature",
  unit: "°C",
  value: 12,
  span: [-10, 35],
  step: 1,
});

export const expansionRoom = setting("expansionRoom", {
  label: "Room in the header tank above the cold mark",
  symbol: "V_{tank}",
  kind: "volume",
  hint: "coolant",
  unit: "L",
  value: 5,
  span: [0.5, 60],
  step: 0.5,
});

export const chargeCooledBy = choice("chargeCooledBy", {
  label: "Charge coolers in a boat cooled by",
  options: { sea: "sea water itself", loop: "a low-temperature loop of fresh water" },
  value: "sea",
});

export const loopTemperature = setting("loopTemperature", {
  label: "Loop water reaching the charge coolers, held at",
  symbol: "T_{lt}",
  kind: "temperature",
  unit: "°C",
  value: 38,
  span: [15, 60],
  step: 1,
  note: "A thermostat holds it as long as the sea is cold enough; 36 to 40 °C is usual: common practice, no source.",
});

export const loopFlow = setting("loopFlow", {
  label: "Loop water flow",
  symbol: "q_{lt}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 220,
  span: [20, 1500],
  step: 10,
});

export const loopCooler = setting("loopCooler", {
  label: "Loop's cooler UA, clean",
  symbol: "UA_{lt}",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 14,
  span: [0.5, 60],
  step: 0.5,
});

export const wornFilling = setting("wornFilling", {
  label: "Raw-water pump worn: filling left",
  symbol: "\\eta_{w,worn}",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [10, 95],
  step: 1,
});

export const fouledShare = setting("fouledShare", {
  label: "Exchanger badly fouled: UA left",
  symbol: "f_{foul}",
  kind: "fraction",
  unit: "%",
  value: 50,
  span: [5, 95],
  step: 5,
});

export const stuckOpening = setting("stuckOpening", {
  label: "Thermostat stuck: share of the flow let through",
  symbol: "\\theta_{st}",
  kind: "fraction",
  unit: "%",
  value: 10,
  span: [0, 100],
  step: 1,
});

export const warmMetal = setting("warmMetal", {
  label: "Iron that warms with the jacket water",
  symbol: "m_{Fe}",
  kind: "mass",
  unit: "kg",
  value: 320,
  span: [20, 3000],
  step: 10,
  note: "Head, liners and the block about them: a third to a half of the engine, common practice, no source.",
});

export const oilVolume = setting("oilVolume", {
  label: "Oil in the sump",
  symbol: "V_o",
  kind: "volume",
  hint: "coolant",
  unit: "L",
  value: 30,
  span: [3, 300],
  step: 1,
});

export const gearOilVolume = setting("gearOilVolume", {
  label: "Oil in the gear",
  symbol: "V_g",
  kind: "volume",
  hint: "coolant",
  unit: "L",
  value: 8,
  span: [1, 100],
  step: 1,
});
