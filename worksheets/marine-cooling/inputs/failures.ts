import { setting } from "../../setting";

export const wornFilling = setting("wornFilling", {
  label: "Raw-water pump worn: filling left",
  symbol: "\\eta_{w,worn}",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [10, 95],
  step: 1,
});

export const fouledShare = setting("fouledShare", {
  label: "Exchanger badly fouled: UA left",
  symbol: "f_{foul}",
  kind: "fraction",
  unit: "%",
  value: 50,
  span: [5, 95],
  step: 5,
});

export const stuckOpening = setting("stuckOpening", {
  label: "Thermostat stuck: share of the flow let through",
  symbol: "\\theta_{st}",
  kind: "fraction",
  unit: "%",
  value: 10,
  span: [0, 100],
  step: 1,
});

export const warmMetal = setting("warmMetal", {
  label: "Iron that warms with the jacket water",
  symbol: "m_{Fe}",
  kind: "mass",
  unit: "kg",
  value: 320,
  span: [20, 3000],
  step: 10,
  note: "Head, liners and the block about them: a third to a half of the engine, common practice, no source.",
});

export const oilVolume = setting("oilVolume", {
  label: "Oil in the sump",
  symbol: "V_o",
  kind: "volume",
  hint: "coolant",
  unit: "L",
  value: 30,
  span: [3, 300],
  step: 1,
});

export const gearOilVolume = setting("gearOilVolume", {
  label: "Oil in the gear",
  symbol: "V_g",
  kind: "volume",
  hint: "coolant",
  unit: "L",
  value: 8,
  span: [1, 100],
  step: 1,
});
