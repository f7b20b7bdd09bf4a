import { setting } from "../../setting";

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
