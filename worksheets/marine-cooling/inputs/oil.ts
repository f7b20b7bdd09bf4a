import { setting } from "../../setting";

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
