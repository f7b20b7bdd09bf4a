import { setting } from "../setting";

export const excessAirRatio = setting("excessAirRatio", {
  label: "Excess air ratio, at least",
  symbol: "\\lambda_{min}",
  kind: "ratio",
  unit: "",
  value: 1.75,
  span: [1.05, 4],
  step: 0.01,
  note: "Air over the least that burns the fuel. Below about 1.3 a diesel smokes and its exhaust runs hot: common practice, no source.",
});

export const indicatedEfficiency = setting("indicatedEfficiency", {
  label: "Gross indicated efficiency",
  symbol: "\\eta_i",
  kind: "fraction",
  unit: "%",
  value: 44.8,
  span: [30, 55],
  step: 0.1,
  note: "Work on the pistons in the compression and expansion strokes over fuel energy, before pumping, friction and everything driven. 42 to 48 % at full load: common practice, no source.",
});

export const volumetricEfficiency = setting("volumetricEfficiency", {
  label: "Volumetric efficiency",
  symbol: "\\eta_v",
  kind: "fraction",
  unit: "%",
  value: 92,
  span: [60, 120],
  step: 0.5,
  note: "Air that stays in the cylinders over what the displacement would hold at the density in the manifold.",
});

export const frictionShare = setting("frictionShare", {
  label: "Friction, as a share of the published line",
  symbol: "k_f",
  kind: "fraction",
  unit: "%",
  value: 78,
  span: [40, 150],
  step: 1,
  note: "The line of 1965 was measured on a single cylinder; a multi-cylinder engine may lie a third below it. It counts the engine's own oil and coolant pumps.",
});

export const valveLoss = setting("valveLoss", {
  label: "Pressure lost in intake and exhaust valves",
  symbol: "\\Delta p_v",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 0.35,
  span: [0, 1.2],
  step: 0.01,
  note: "Intake and exhaust together, as a mean over the stroke.",
});

export const meterCount = setting("meterCount", {
  label: "Air meters side by side",
  symbol: "z_a",
  kind: "count",
  unit: "",
  value: 3,
  span: [1, 8],
  step: 1,
});

export const meterCapacity = setting("meterCapacity", {
  label: "Highest flow that one meter reads",
  symbol: "\\dot m_{a,max}",
  kind: "massFlow",
  unit: "kg/min",
  value: 27,
  span: [2, 60],
  step: 0.5,
});

export const meterLeast = setting("meterLeast", {
  label: "Lowest flow that one meter reads well",
  symbol: "\\dot m_{a,min}",
  kind: "massFlow",
  unit: "kg/min",
  value: 1.4,
  span: [0.05, 10],
  step: 0.05,
  note: "Below it the reading is lost in noise and pulsation.",
});

export const meterBore = setting("meterBore", {
  label: "Bore of a meter's tube",
  symbol: "d_a",
  kind: "length",
  unit: "mm",
  value: 98,
  span: [40, 200],
  step: 1,
});

export const bellmouthDischarge = setting("bellmouthDischarge", {
  label: "Discharge coefficient of the bellmouths",
  symbol: "C_a",
  kind: "fraction",
  unit: "%",
  value: 97.5,
  span: [80, 100],
  step: 0.5,
});

export const meterMachLimit = setting("meterMachLimit", {
  label: "Mach number allowed in a meter's tube",
  symbol: "M_{a,lim}",
  kind: "ratio",
  unit: "",
  value: 0.3,
  span: [0.1, 0.6],
  step: 0.01,
  note: "Above about 0.3 the air can no longer be taken as incompressible and the loss climbs: common practice, no source.",
});

export const ductBore = setting("ductBore", {
  label: "Bore of the duct behind each meter",
  symbol: "d_d",
  kind: "length",
  unit: "mm",
  value: 114,
  span: [40, 300],
  step: 1,
});

export const ductLength = setting("ductLength", {
  label: "Length of that duct",
  symbol: "l_d",
  kind: "length",
  hint: "large",
  unit: "m",
  value: 1.4,
  span: [0.1, 8],
  step: 0.1,
});

export const ductBends = setting("ductBends", {
  label: "Loss coefficients of its bends and joints, added up",
  symbol: "\\zeta_d",
  kind: "ratio",
  unit: "",
  value: 0.7,
  span: [0, 6],
  step: 0.05,
});

export const ductVelocityLimit = setting("ductVelocityLimit", {
  label: "Duct velocity allowed",
  symbol: "v_{d,lim}",
  kind: "velocity",
  hint: "duct",
  unit: "m/s",
  value: 45,
  span: [10, 120],
  step: 1,
  note: "30 to 45 m/s keeps loss and noise low: common practice, no source.",
});

export const filterRatedFlow = setting("filterRatedFlow", {
  label: "Flow at which the air filter is rated",
  symbol: "\\dot m_{f,r}",
  kind: "massFlow",
  unit: "kg/min",
  value: 75,
  span: [5, 250],
  step: 1,
});

export const filterRatedLoss = setting("filterRatedLoss", {
  label: "Filter loss at that flow",
  symbol: "\\Delta p_{f,r}",
  kind: "pressureDifference",
  hint: "duct",
  unit: "mbar",
  value: 26,
  span: [0, 120],
  step: 1,
  note: "In air of 1.2 kg/m³, about 20 °C at sea level; thinner air loses more at the same mass flow.",
});

export const intakeLossLimit = setting("intakeLossLimit", {
  label: "Intake depression allowed",
  symbol: "\\Delta p_{0,lim}",
  kind: "pressureDifference",
  hint: "duct",
  unit: "mbar",
  value: 62,
  span: [10, 200],
  step: 1,
  note: "A clean filter is usually held to 25 to 40 mbar; a dirty one is changed at about 62 mbar: common practice, no source.",
});

export const ruleOfThumb = setting("ruleOfThumb", {
  label: "Rule of thumb, air for the work at the flywheel",
  symbol: "b_a",
  kind: "specificFuelConsumption",
  unit: "lb/(hp·h)",
  value: 9.6,
  span: [4, 20],
  step: 0.1,
  note: "9.6 lb/(hp·h), or 0.16 lb/min for each horsepower: common practice, no source.",
});
