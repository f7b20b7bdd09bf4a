import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const heatsFrom = choice("heatsFrom", {
  label: "At the promised power, heat and exhaust of",
  options: { parts: "the chosen parts, by the match", promise: "the promise, before parts are chosen" },
  value: "parts",
  note: "The promise asks for its least excess air; the parts give theirs. Off the promised power the promise has no answer.",
});

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
