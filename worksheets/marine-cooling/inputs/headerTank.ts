import { setting } from "../../setting";

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
