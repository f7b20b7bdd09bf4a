import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const flowsAlong = choice("flowsAlong", {
  label: "Heat flows are drawn along",
  options: { propeller: "the propeller's curve", fullLoad: "full load, as the chosen parts give it" },
  value: "propeller",
});

export const flowsSpeed = setting("flowsSpeed", {
  label: "Engine speed for the heat flows, of the promised",
  symbol: "n_Q",
  kind: "fraction",
  unit: "%",
  value: 100,
  span: [20, 130],
  step: 1,
  note: "Drag the mark over the speeds, or set it here; the numbers of the sheet stay those of the promised power.",
});

export const flowsLoad = setting("flowsLoad", {
  label: "Load for the heat flows, of the curve's",
  symbol: "x_Q",
  kind: "fraction",
  unit: "%",
  value: 100,
  span: [10, 100],
  step: 1,
  note: "Of the power that the propeller takes, or that the parts give, at each speed.",
});
