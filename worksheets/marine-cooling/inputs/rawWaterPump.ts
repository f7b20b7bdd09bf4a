import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const rawWaterPumpKind = choice("rawWaterPumpKind", {
  label: "Raw-water pump",
  options: { impeller: "flexible impeller, or lobes", centrifugal: "centrifugal" },
  value: "impeller",
});

export const rawWaterDisplacement = setting("rawWaterDisplacement", {
  label: "Raw-water pump displacement",
  symbol: "V_w",
  kind: "volumePerTurn",
  hint: "small",
  unit: "cc/rev",
  value: 240,
  span: [20, 1500],
  step: 5,
});

export const rawWaterFilling = setting("rawWaterFilling", {
  label: "Raw-water pump, volumetric efficiency without pressure",
  symbol: "\\eta_w",
  kind: "fraction",
  unit: "%",
  value: 84,
  span: [40, 98],
  step: 1,
  note: "A flexible impeller gives 80 to 90 % when new and 60 to 70 % after a season: common practice, no source.",
});

export const rawWaterShutOff = setting("rawWaterShutOff", {
  label: "Pressure rise at which it delivers nothing",
  symbol: "\\Delta p_{w,0}",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 4,
  span: [0.5, 10],
  step: 0.1,
  note: "At the speed below, from the pump's own curve; with both ends known the flow between them is taken as a straight line (impeller) or a parabola (centrifugal).",
});

export const rawWaterOpenFlow = setting("rawWaterOpenFlow", {
  label: "Centrifugal pump's flow without any rise",
  symbol: "q_{w,open}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 520,
  span: [50, 4000],
  step: 10,
});

export const rawWaterStatedSpeed = setting("rawWaterStatedSpeed", {
  label: "Pump speed for which these are stated",
  symbol: "n_{w,r}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 1800,
  span: [300, 4500],
  step: 50,
});

export const rawWaterHighestSpeed = setting("rawWaterHighestSpeed", {
  label: "Raw-water pump speed allowed",
  symbol: "n_{w,lim}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 2200,
  span: [500, 4000],
  step: 50,
});
