import { setting } from "../../setting";

export const boatSpeed = setting("boatSpeed", {
  label: "In a boat: speed at the promised engine speed",
  symbol: "v_{boat}",
  kind: "velocity",
  hint: "boat",
  unit: "knots",
  value: 24,
  span: [4, 70],
  step: 0.5,
});

export const fuelPropellerExponent = setting("fuelPropellerExponent", {
  label: "In a boat: power grows with engine speed to the power of",
  symbol: "x_{prop}",
  kind: "ratio",
  unit: "",
  value: 2.7,
  span: [1.5, 4],
  step: 0.1,
  note: "3 for a displacement hull, 2.3 to 2.7 when planing: common practice, no source.",
});

export const hullExponent = setting("hullExponent", {
  label: "In a boat: speed grows with engine speed to the power of",
  symbol: "x_{hull}",
  kind: "ratio",
  unit: "",
  value: 1.2,
  span: [0.5, 2.5],
  step: 0.05,
  note: "1 with steady slip; above 1 where a planing hull rises out of the water. From the boat's own trial.",
});

export const cruiseShare = setting("cruiseShare", {
  label: "In a boat: engine speed at cruise, over the promised",
  symbol: "\\nu_{cr}",
  kind: "fraction",
  unit: "%",
  value: 82,
  span: [20, 105],
  step: 1,
});
