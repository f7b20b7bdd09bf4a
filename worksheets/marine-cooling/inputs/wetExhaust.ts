import { setting } from "../../setting";

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
