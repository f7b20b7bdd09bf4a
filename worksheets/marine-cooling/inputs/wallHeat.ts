import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const wallHeatCorrelation = choice("wallHeatCorrelation", {
  label: "Heat to the cylinder walls after",
  options: { hohenberg: "Hohenberg (1979)", woschni: "Woschni (1967)", annand: "Annand (1963), a = 0.5" },
  value: "hohenberg",
  note: "They differ by up to a factor of two: try each; your own share of wall heat, once measured, calibrates the one chosen.",
});

export const intakeCloses = setting("intakeCloses", {
  label: "Intake closes after bottom dead centre by",
  symbol: "\\varphi_{ic}",
  kind: "crankAngle",
  unit: "deg",
  value: 40,
  span: [0, 80],
  step: 1,
});

export const exhaustOpens = setting("exhaustOpens", {
  label: "Exhaust opens before bottom dead centre by",
  symbol: "\\varphi_{eo}",
  kind: "crankAngle",
  unit: "deg",
  value: 50,
  span: [10, 90],
  step: 1,
});

export const burnStarts = setting("burnStarts", {
  label: "Burning begins before top dead centre by",
  symbol: "\\varphi_b",
  kind: "crankAngle",
  unit: "deg",
  value: 4,
  span: [0, 30],
  step: 1,
});

export const burnDuration = setting("burnDuration", {
  label: "Burning lasts",
  symbol: "\\Delta\\varphi_b",
  kind: "crankAngle",
  unit: "deg",
  value: 70,
  span: [25, 120],
  step: 1,
});

export const wallTemperature = setting("wallTemperature", {
  label: "Mean temperature of the cylinder's walls",
  symbol: "T_{wall}",
  kind: "temperature",
  unit: "°C",
  value: 180,
  span: [90, 350],
  step: 5,
});

export const crownSurface = setting("crownSurface", {
  label: "Surface of the piston's crown, over its circle",
  symbol: "s_{pis}",
  kind: "ratio",
  unit: "",
  value: 1.4,
  span: [1, 2],
  step: 0.05,
  note: "A bowl adds a quarter to a half, the land above the first ring a few hundredths: common practice, no source.",
});

export const portBore = setting("portBore", {
  label: "Exhaust port, bore where its branches have met",
  symbol: "d_{xp}",
  kind: "length",
  unit: "mm",
  value: 46,
  span: [20, 120],
  step: 1,
});

export const portLength = setting("portLength", {
  label: "Exhaust port, length that the coolant surrounds",
  symbol: "l_{xp}",
  kind: "length",
  unit: "mm",
  value: 120,
  span: [0, 1500],
  step: 10,
  note: "A water-cooled manifold belongs to it: add what the gas of one cylinder passes of it.",
});

export const portTemperature = setting("portTemperature", {
  label: "Exhaust port, temperature of its walls",
  symbol: "T_{xp}",
  kind: "temperature",
  unit: "°C",
  value: 220,
  span: [90, 500],
  step: 10,
});

export const wallHeatFrom = choice("wallHeatFrom", {
  label: "Wall heat by",
  options: { stated: "the share stated", measured: "a heat measured on the brake" },
  value: "stated",
});

export const measuredJacketHeat = setting("measuredJacketHeat", {
  label: "Measured: heat into the jacket water at the promised power",
  symbol: "Q_{j,m}",
  kind: "power",
  hint: "heat",
  unit: "kW",
  value: 240,
  span: [5, 3000],
  step: 1,
  note: "Coolant flow times its specific heat times its warming, with oil and charge cooled apart, at steady state.",
});

export const measuredFuelFlow = setting("measuredFuelFlow", {
  label: "Measured: fuel burnt meanwhile",
  symbol: "\\dot m_{f,m}",
  kind: "massFlow",
  hint: "fuel",
  unit: "kg/h",
  value: 165,
  span: [5, 1500],
  step: 0.5,
});
