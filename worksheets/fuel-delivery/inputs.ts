import { marineDistillate, methylEster, paraffinicDiesel, roadDiesel } from "../../lib/fluid";
import { choice } from "../../lib/graph";
import { setting } from "../setting";

/** The fuels to choose from, with the properties that the standards or our sources give. */
export const fuels = { roadDiesel, marineDistillate, paraffinicDiesel, methylEster } as const;

export const fuelChoice = choice("fuel", {
  label: "Fuel",
  options: {
    roadDiesel: "road diesel",
    marineDistillate: "marine distillate",
    paraffinicDiesel: "paraffinic diesel",
    methylEster: "methyl ester",
  },
  value: "roadDiesel",
});

export const fuelTemperature = setting("fuelTemperature", {
  label: "Fuel temperature at the high-pressure pump",
  symbol: "T_f",
  kind: "temperature",
  unit: "°C",
  value: 48,
  span: [-10, 90],
  step: 1,
  note: "Warm fuel is thinner and takes more volume for the same heat.",
});

export const railPressure = setting("railPressure", {
  label: "Rail pressure",
  symbol: "p_r",
  kind: "pressure",
  hint: "rail",
  unit: "bar",
  value: 1900,
  span: [300, 2700],
  step: 25,
});

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
  label: "Discharge coefficient of the holes",
  symbol: "C_d",
  kind: "fraction",
  unit: "%",
  value: 80,
  span: [50, 95],
  step: 1,
  note: "75 to 85 % with a rounded inlet, 60 to 70 % with a sharp one: common practice, no source.",
});

export const needleRamps = setting("needleRamps", {
  label: "Needle opening and closing, together",
  symbol: "t_n",
  kind: "time",
  hint: "small",
  unit: "ms",
  value: 0.25,
  span: [0, 1],
  step: 0.05,
  note: "While it moves, half of the full flow passes on average; 0.2 to 0.4 ms: common practice, no source.",
});

export const injectionWindow = setting("injectionWindow", {
  label: "Crank angle allowed for injection",
  symbol: "\\theta_{lim}",
  kind: "crankAngle",
  unit: "deg",
  value: 36,
  span: [10, 60],
  step: 0.5,
  note: "Beyond about 35 to 40 degrees the late fuel makes heat and smoke in place of work: common practice, no source.",
});

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

export const pumpLeakage = setting("pumpLeakage", {
  label: "Plunger leakage, as a share of the displacement",
  symbol: "\\lambda_p",
  kind: "fraction",
  unit: "%",
  value: 4,
  span: [0, 30],
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

export const injectorReturn = setting("injectorReturn", {
  label: "Injector leakage and control flow, over fuel burnt",
  symbol: "\\lambda_i",
  kind: "fraction",
  unit: "%",
  value: 12,
  span: [0, 60],
  step: 1,
});

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

export const supplyPressure = setting("supplyPressure", {
  label: "Lift pump pressure",
  symbol: "p_l",
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
  label: "Lift pump flow at that pressure",
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
  label: "Loss coefficients of fittings and valves, added up",
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
