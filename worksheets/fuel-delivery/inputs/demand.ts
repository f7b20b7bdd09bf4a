import { table } from "../../../lib/graph";
import { column, setting } from "../../setting";
import { share } from "./share";

export const fuelCurve = table("fuelCurve", {
  label: "Full load over speed",
  note: "Fuel of a stroke and rail pressure as the controller's map has them at full load, each over its value at the promised speed. Straight lines between the rows. A little less than the match's parts can burn at each speed keeps it from smoking.",
  columns: {
    speed: column({ label: "Engine speed, over the promised", kind: "fraction", unit: "%", span: [5, 150], step: 1 }),
    quantity: column({ label: "Fuel of a stroke", kind: "fraction", unit: "%", span: [0, 200], step: 1 }),
    pressure: column({ label: "Rail pressure", kind: "fraction", unit: "%", span: [15, 130], step: 1 }),
  },
  rows: [2, 12],
  value: [
    { speed: share(24), quantity: share(38), pressure: share(42) },
    { speed: share(38), quantity: share(45), pressure: share(65) },
    { speed: share(44), quantity: share(51), pressure: share(73) },
    { speed: share(50), quantity: share(58), pressure: share(80) },
    { speed: share(56), quantity: share(64), pressure: share(86) },
    { speed: share(62), quantity: share(71), pressure: share(91) },
    { speed: share(66), quantity: share(80), pressure: share(94) },
    { speed: share(69), quantity: share(87), pressure: share(96) },
    { speed: share(75), quantity: share(97), pressure: share(98) },
    { speed: share(80), quantity: share(99), pressure: share(100) },
    { speed: share(100), quantity: share(100), pressure: share(100) },
    { speed: share(108), quantity: share(35), pressure: share(92) },
  ],
});

export const cylinderImbalance = setting("cylinderImbalance", {
  label: "Fuel of the fullest cylinder above the mean",
  symbol: "\\delta_z",
  kind: "fraction",
  unit: "%",
  value: 3,
  span: [0, 25],
  step: 0.5,
  note: "New injectors of one batch lie within 2 to 4 % of each other, worn ones within 10: common practice, no source.",
});

export const pilotShare = setting("pilotShare", {
  label: "Fuel in the pilot injection",
  symbol: "\\sigma_{pi}",
  kind: "fraction",
  unit: "%",
  value: 2,
  span: [0, 20],
  step: 0.5,
});

export const afterShare = setting("afterShare", {
  label: "Fuel in the after-injection",
  symbol: "\\sigma_{af}",
  kind: "fraction",
  unit: "%",
  value: 0,
  span: [0, 30],
  step: 0.5,
});
