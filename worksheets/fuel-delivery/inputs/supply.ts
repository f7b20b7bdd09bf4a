import { setting } from "../../setting";

export const coolingFlow = setting("coolingFlow", {
  label: "Fuel that the pump passes back to the tank",
  symbol: "k_s",
  kind: "ratio",
  unit: "",
  value: 1.5,
  span: [0, 5],
  step: 0.1,
  note: "What cools and lubricates the pump and returns to the tank, as a multiple of the fuel burnt: 1 to 3, common practice, no source.",
});

export const liftShutOff = setting("liftShutOff", {
  label: "Lift pump pressure without flow",
  symbol: "p_{l,0}",
  kind: "gaugePressure",
  hint: "boost",
  unit: "bar",
  value: 6,
  span: [0.5, 15],
  step: 0.1,
  note: "Or where its relief valve opens; with the point below it makes the pump's curve, a parabola.",
});

export const supplyPressure = setting("supplyPressure", {
  label: "Lift pump pressure at its rated flow",
  symbol: "p_{l,r}",
  kind: "gaugePressure",
  hint: "boost",
  unit: "bar",
  value: 5.5,
  span: [0.5, 12],
  step: 0.1,
});

export const inletPressureNeeded = setting("inletPressureNeeded", {
  label: "Pressure needed at the high-pressure pump's inlet",
  symbol: "p_{i,min}",
  kind: "gaugePressure",
  hint: "boost",
  unit: "bar",
  value: 3.5,
  span: [0, 8],
  step: 0.1,
});

export const supplyCapacity = setting("supplyCapacity", {
  label: "Lift pump, rated flow at that pressure",
  symbol: "q_{l}",
  kind: "volumeFlow",
  hint: "fuel",
  unit: "L/h",
  value: 720,
  span: [50, 3000],
  step: 10,
});

export const supplyBore = setting("supplyBore", {
  label: "Bore of the supply line",
  symbol: "d_s",
  kind: "length",
  unit: "mm",
  value: 12,
  span: [5, 30],
  step: 0.5,
});

export const supplyLength = setting("supplyLength", {
  label: "Length of the supply line",
  symbol: "l_s",
  kind: "length",
  hint: "large",
  unit: "m",
  value: 4.5,
  span: [0.5, 20],
  step: 0.5,
});

export const supplyFittings = setting("supplyFittings", {
  label: "Loss coefficients of fittings and valves behind the pump, added up",
  symbol: "\\zeta",
  kind: "ratio",
  unit: "",
  value: 14,
  span: [0, 60],
  step: 1,
});

export const filterLoss = setting("fuelFilterLoss", {
  label: "Fuel filter loss, filter half used",
  symbol: "\\Delta p_f",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 0.5,
  span: [0, 3],
  step: 0.05,
});

export const supplyCoolerLoss = setting("supplyCoolerLoss", {
  label: "Loss of a cooler or heater in the supply line",
  symbol: "\\Delta p_k",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 0.1,
  span: [0, 2],
  step: 0.05,
});
