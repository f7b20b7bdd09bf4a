import { setting } from "../../setting";

export const pumpPlungers = setting("pumpPlungers", {
  label: "High-pressure pump, plungers",
  symbol: "z_p",
  kind: "count",
  unit: "",
  value: 2,
  span: [1, 8],
  step: 1,
});

export const plungerDiameter = setting("plungerDiameter", {
  label: "Plunger diameter",
  symbol: "d_p",
  kind: "length",
  unit: "mm",
  value: 8.5,
  span: [4, 20],
  step: 0.25,
});

export const plungerStroke = setting("plungerStroke", {
  label: "Plunger stroke",
  symbol: "s_p",
  kind: "length",
  unit: "mm",
  value: 9,
  span: [3, 25],
  step: 0.25,
});

export const pumpLobes = setting("pumpLobes", {
  label: "Strokes of each plunger in one turn",
  symbol: "z_l",
  kind: "count",
  unit: "",
  value: 2,
  span: [1, 6],
  step: 1,
});

export const deadVolumeShare = setting("deadVolumeShare", {
  label: "Dead volume, as a share of the stroke volume",
  symbol: "\\kappa",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [0, 300],
  step: 5,
});

export const plungerGap = setting("plungerGap", {
  label: "Gap between plunger and barrel, under pressure",
  symbol: "h_p",
  kind: "length",
  hint: "small",
  unit: "µm",
  value: 7,
  span: [0, 20],
  step: 0.5,
  note: "Half the difference of their diameters. 1 to 3 µm as assembled, several more under pressure: common practice, no source. That parts give way enough to change the leakage: Rothrock and Marsh, NACA Report 477 (1934).",
});

export const plungerSeal = setting("plungerSeal", {
  label: "Length over which the plunger seals",
  symbol: "l_p",
  kind: "length",
  unit: "mm",
  value: 15,
  span: [3, 60],
  step: 0.5,
});

export const pumpMechanicalEfficiency = setting("pumpMechanicalEfficiency", {
  label: "High-pressure pump, mechanical efficiency",
  symbol: "\\eta_p",
  kind: "fraction",
  unit: "%",
  value: 88,
  span: [50, 98],
  step: 1,
});

export const viscousShare = setting("pumpViscousShare", {
  label: "Part of the pump's friction that grows with speed",
  symbol: "\\sigma_v",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [0, 100],
  step: 5,
  note: "The efficiency above holds at the promised speed; this part of its loss is less below and more above. Common practice, no source.",
});

export const meteringLeast = setting("meteringLeast", {
  label: "Least part of a full stroke that the inlet meters steadily",
  symbol: "\\mu_{min}",
  kind: "fraction",
  unit: "%",
  value: 8,
  span: [0, 50],
  step: 1,
  note: "Below it strokes differ and the rail hunts; ask the pump's maker.",
});

export const efficientBand = setting("efficientBand", {
  label: "Efficient range ends this far below the best",
  symbol: "\\Delta\\eta_e",
  kind: "fraction",
  unit: "%",
  value: 0.5,
  span: [0.1, 20],
  step: 0.1,
});

export const pumpPlaces = setting("pumpPlaces", {
  label: "Places for driven units on the front plate",
  symbol: "z_{pl}",
  kind: "count",
  unit: "",
  value: 7,
  span: [1, 10],
  step: 1,
  note: "Crank and idlers not counted. A second fuel pump takes one that another accessory could have had.",
});
