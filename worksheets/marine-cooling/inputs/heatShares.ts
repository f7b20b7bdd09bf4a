import { setting } from "../../setting";

export const wallHeatToOil = setting("wallHeatToOil", {
  label: "Wall heat that goes to the oil, by piston cooling",
  symbol: "\\lambda_{wo}",
  kind: "fraction",
  unit: "%",
  value: 18,
  span: [0, 60],
  step: 1,
});

export const wallHeatRadiated = setting("wallHeatRadiated", {
  label: "Wall heat that leaves from the engine's surface",
  symbol: "\\lambda_{wr}",
  kind: "fraction",
  unit: "%",
  value: 8,
  span: [0, 40],
  step: 1,
});

export const frictionHeatToOil = setting("frictionHeatToOil", {
  label: "Friction that heats the oil, the rest the jacket",
  symbol: "\\lambda_{fo}",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [0, 100],
  step: 5,
});
