import { setting } from "../../setting";

export const nozzleHoles = setting("nozzleHoles", {
  label: "Holes of one nozzle",
  symbol: "z_h",
  kind: "count",
  unit: "",
  value: 8,
  span: [4, 14],
  step: 1,
});

export const holeDiameter = setting("holeDiameter", {
  label: "Hole diameter",
  symbol: "d_h",
  kind: "length",
  hint: "small",
  unit: "µm",
  value: 262,
  span: [90, 400],
  step: 1,
});

export const nozzleDischarge = setting("nozzleDischarge", {
  label: "Discharge coefficient of the holes, not cavitating",
  symbol: "C_{d,0}",
  kind: "fraction",
  unit: "%",
  value: 80,
  span: [50, 95],
  step: 1,
  note: "75 to 85 % with a rounded inlet, 60 to 70 % with a sharp one: common practice. Small round holes measured 62 to 88 %: Joachim, NACA Report 224 (1926).",
});

export const inletRounding = setting("inletRounding", {
  label: "Rounding radius of the holes' inlet, over their diameter",
  symbol: "r_h",
  kind: "ratio",
  unit: "",
  value: 0.1,
  span: [0, 0.14],
  step: 0.01,
  note: "0 with a sharp edge; 0.05 to 0.12 after rounding by abrasive flow: common practice, no source.",
});

export const needleOpening = setting("needleOpening", {
  label: "Needle takes to open",
  symbol: "t_{no}",
  kind: "time",
  hint: "small",
  unit: "ms",
  value: 0.15,
  span: [0, 0.6],
  step: 0.01,
  note: "While it moves, half of the full flow passes on average; opening and closing together 0.2 to 0.4 ms: common practice, no source.",
});

export const needleClosing = setting("needleClosing", {
  label: "Needle takes to close",
  symbol: "t_{nc}",
  kind: "time",
  hint: "small",
  unit: "ms",
  value: 0.1,
  span: [0, 0.6],
  step: 0.01,
});
