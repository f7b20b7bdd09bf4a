import { setting } from "../../setting";

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
