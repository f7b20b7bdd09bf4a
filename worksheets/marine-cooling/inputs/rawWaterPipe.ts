import { setting } from "../../setting";

export const rawWaterBore = setting("rawWaterBore", {
  label: "Bore of the raw-water pipe",
  symbol: "d_w",
  kind: "length",
  unit: "mm",
  value: 60,
  span: [20, 200],
  step: 1,
});

export const rawWaterVelocityLimit = setting("rawWaterVelocityLimit", {
  label: "Raw-water velocity allowed",
  symbol: "v_{w,lim}",
  kind: "velocity",
  unit: "m/s",
  value: 2.5,
  span: [0.5, 5],
  step: 0.1,
  note: "Sea water wears copper–nickel away above 2 to 3.5 m/s, small bores first: common practice, no source; ask the tube's maker.",
});
