import { setting } from "../setting";

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
  value: 205,
  span: [20, 1500],
  step: 5,
});

export const rawWaterFilling = setting("rawWaterFilling", {
  label: "Raw-water pump, volumetric efficiency",
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
  label: "Jacket water flow",
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
  label: "Jacket exchanger UA",
  symbol: "UA_j",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 4.25,
  span: [0.5, 60],
  step: 0.25,
  note: "Heat passed for each kelvin of mean temperature difference, fouled as it will be before it is next cleaned.",
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
  label: "Oil cooler UA",
  symbol: "UA_o",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 1.4,
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
  label: "Gear oil cooler UA",
  symbol: "UA_g",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 0.33,
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
  label: "Fuel cooler UA",
  symbol: "UA_f",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 0.1,
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
