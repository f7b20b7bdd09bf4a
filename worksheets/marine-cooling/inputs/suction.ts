import { setting } from "../../setting";

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
