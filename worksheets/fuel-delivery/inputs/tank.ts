import { setting } from "../../setting";

export const returnCooler = setting("returnCooler", {
  label: "Return heat that a fuel cooler takes out",
  symbol: "\\epsilon_t",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [0, 100],
  step: 5,
});

export const tankVolume = setting("tankVolume", {
  label: "Fuel in the full tank",
  symbol: "V_t",
  kind: "volume",
  hint: "fuel",
  unit: "L",
  value: 380,
  span: [20, 20000],
  step: 10,
  scale: "log",
});

export const tankReserve = setting("tankReserve", {
  label: "Reserve that stays in the tank",
  symbol: "\\sigma_t",
  kind: "fraction",
  unit: "%",
  value: 12,
  span: [2, 60],
  step: 1,
});

export const tankWalls = setting("tankWalls", {
  label: "Heat lost through the tank's walls",
  symbol: "UA_t",
  kind: "thermalConductance",
  hint: "small",
  unit: "W/K",
  value: 22,
  span: [0, 500],
  step: 1,
  note: "5 to 15 W/K for each square metre in moving air: common practice, no source.",
});

export const tankStart = setting("tankStart", {
  label: "Fuel in the tank at the start",
  symbol: "T_{t,0}",
  kind: "temperature",
  unit: "°C",
  value: 25,
  span: [-20, 60],
  step: 1,
});

export const tankLimit = setting("tankLimit", {
  label: "Fuel in the tank, at most",
  symbol: "T_{t,lim}",
  kind: "temperature",
  unit: "°C",
  value: 55,
  span: [30, 80],
  step: 1,
  note: "55 °C is the least flash point of road diesel (EN 590), 60 °C that of marine distillate (ISO 8217): above it the tank's vapour can burn.",
});
