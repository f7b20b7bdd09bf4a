import { setting } from "../../setting";

export const suctionLength = setting("suctionLength", {
  label: "Length of the suction line, of the same bore",
  symbol: "l_{su}",
  kind: "length",
  hint: "large",
  unit: "m",
  value: 1.5,
  span: [0, 12],
  step: 0.1,
});

export const suctionFittings = setting("suctionFittings", {
  label: "Loss coefficients before the lift pump: pick-up, strainer, valves",
  symbol: "\\zeta_{su}",
  kind: "ratio",
  unit: "",
  value: 5,
  span: [0, 40],
  step: 0.5,
});

export const suctionHeight = setting("suctionHeight", {
  label: "Lift pump stands above the fuel's level by",
  symbol: "h_{su}",
  kind: "length",
  hint: "large",
  unit: "m",
  value: 0.3,
  span: [-3, 4],
  step: 0.05,
  note: "With the tank nearly empty; below zero where the pump stands lower than the fuel.",
});

export const suctionLeast = setting("suctionLeast", {
  label: "Pressure before the lift pump, at least",
  symbol: "p_{su,min}",
  kind: "pressure",
  hint: "boost",
  unit: "bar",
  value: 0.66,
  span: [0.1, 1],
  step: 0.01,
  note: "Air that is dissolved in the fuel comes out at about a third below the air's pressure, long before the fuel boils: common practice, no source.",
});
