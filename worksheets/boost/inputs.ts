import { choice } from "../../lib/graph";
import { setting } from "../setting";

export const turbochargerCount = setting("turbochargerCount", {
  label: "Turbochargers in parallel",
  symbol: "z_t",
  kind: "count",
  unit: "",
  value: 2,
  span: [1, 4],
  step: 1,
});

export const compressorEfficiency = setting("compressorEfficiency", {
  label: "Compressor efficiency, isentropic",
  symbol: "\\eta_c",
  kind: "fraction",
  unit: "%",
  value: 74,
  span: [50, 85],
  step: 0.5,
});

export const turbineEfficiency = setting("turbineEfficiency", {
  label: "Turbine efficiency, isentropic",
  symbol: "\\eta_t",
  kind: "fraction",
  unit: "%",
  value: 66,
  span: [45, 85],
  step: 0.5,
});

export const turbochargerMechanicalEfficiency = setting("turbochargerMechanicalEfficiency", {
  label: "Turbocharger bearings, mechanical efficiency",
  symbol: "\\eta_m",
  kind: "fraction",
  unit: "%",
  value: 96,
  span: [85, 100],
  step: 0.5,
});

export const compressorFlowCapacity = setting("compressorFlowCapacity", {
  label: "Corrected flow that one compressor passes",
  symbol: "\\dot m_{c,lim}",
  kind: "massFlow",
  unit: "kg/min",
  value: 45,
  span: [5, 120],
  step: 0.5,
  note: "Read off the compressor's own map at this pressure ratio, short of choke; corrected to 298 K and 100 kPa.",
});

export const compressorRatioLimit = setting("compressorRatioLimit", {
  label: "Compressor pressure ratio allowed",
  symbol: "\\pi_{c,lim}",
  kind: "ratio",
  unit: "",
  value: 3.8,
  span: [1.5, 6],
  step: 0.05,
  note: "Where the map ends, or where the wheel's speed does.",
});

export const compressorOutletLimit = setting("compressorOutletLimit", {
  label: "Compressor outlet temperature allowed",
  symbol: "T_{2,lim}",
  kind: "temperature",
  unit: "°C",
  value: 205,
  span: [120, 260],
  step: 1,
  note: "An aluminium wheel loses strength and oil cokes above it: common practice, no source.",
});

export const intercoolerEffectiveness = setting("intercoolerEffectiveness", {
  label: "Intercooler effectiveness",
  symbol: "\\epsilon_1",
  kind: "fraction",
  unit: "%",
  value: 74,
  span: [0, 95],
  step: 0.5,
  note: "The cooler between turbochargers and blower. Read it for the flow at the promised power: it falls as the flow grows.",
});

export const intercoolerLoss = setting("intercoolerLoss", {
  label: "Intercooler pressure loss when rated",
  symbol: "\\Delta p_1",
  kind: "pressureDifference",
  unit: "kPa",
  value: 9,
  span: [0, 50],
  step: 0.5,
});

export const aftercoolerEffectiveness = setting("aftercoolerEffectiveness", {
  label: "Aftercooler effectiveness",
  symbol: "\\epsilon_2",
  kind: "fraction",
  unit: "%",
  value: 76,
  span: [0, 95],
  step: 0.5,
  note: "The cooler between blower and manifold; 0 % and no loss if there is none.",
});

export const aftercoolerLoss = setting("aftercoolerLoss", {
  label: "Aftercooler pressure loss when rated",
  symbol: "\\Delta p_2",
  kind: "pressureDifference",
  unit: "kPa",
  value: 8,
  span: [0, 50],
  step: 0.5,
});

export const coolerRatedFlow = setting("coolerRatedFlow", {
  label: "Air flow at which these losses were measured",
  symbol: "\\dot m_{k,r}",
  kind: "massFlow",
  unit: "kg/min",
  value: 66,
  span: [5, 200],
  step: 1,
});

export const coolerRatedDensity = setting("coolerRatedDensity", {
  label: "Charge density at which they were measured",
  symbol: "\\rho_{k,r}",
  kind: "density",
  unit: "kg/m³",
  value: 3.2,
  span: [0.8, 8],
  step: 0.1,
});

export const sinkRise = setting("sinkRise", {
  label: "Cooling stream, warmer than outside by",
  symbol: "\\Delta T_s",
  kind: "temperatureDifference",
  unit: "K",
  value: 6,
  span: [0, 40],
  step: 0.5,
  note: "Air warmed under the bonnet or by another cooler in front; sea water drawn in where warm discharge mixes with it.",
});

export const blowerDisplacement = setting("blowerDisplacement", {
  label: "Blower displacement",
  symbol: "V_b",
  kind: "volumePerTurn",
  unit: "L/rev",
  value: 4.6,
  span: [0.5, 15],
  step: 0.05,
});

export const blowerBuiltInRatio = setting("blowerBuiltInRatio", {
  label: "Blower, built-in volume ratio",
  symbol: "v_i",
  kind: "ratio",
  unit: "",
  value: 1,
  span: [1, 2],
  step: 0.05,
  note: "1 for lobes, which compress nothing inside; above 1 for screws.",
});

export const blowerClearance = setting("blowerClearance", {
  label: "Blower clearances, as one leaking nozzle",
  symbol: "A_l",
  kind: "area",
  hint: "small",
  unit: "mm²",
  value: 115,
  span: [0, 600],
  step: 5,
  note: "The area through which all that leaks back would pass as one nozzle. Fit it to a measured volumetric efficiency: about 0.80 to 0.93 for lobes at mid speed, from memory.",
});

export const blowerMechanicalEfficiency = setting("blowerMechanicalEfficiency", {
  label: "Blower gears, bearings and belt, mechanical efficiency",
  symbol: "\\eta_{mb}",
  kind: "fraction",
  unit: "%",
  value: 95,
  span: [80, 100],
  step: 0.5,
});

export const blowerHighestSpeed = setting("blowerHighestSpeed", {
  label: "Blower speed allowed",
  symbol: "n_{b,lim}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 7200,
  span: [1500, 20000],
  step: 50,
});

export const blowerOutletLimit = setting("blowerOutletLimit", {
  label: "Blower outlet temperature allowed",
  symbol: "T_{4,lim}",
  kind: "temperature",
  unit: "°C",
  value: 170,
  span: [80, 220],
  step: 1,
  note: "Rotors grow into each other and the case when they are hot: common practice, no source.",
});

export const manifoldPressureLimit = setting("manifoldPressureLimit", {
  label: "Boost that pipes and hoses are built for",
  symbol: "p_{5,g,lim}",
  kind: "gaugePressure",
  hint: "boost",
  unit: "bar",
  value: 4,
  span: [0.5, 8],
  step: 0.1,
});

export const exhaustOutletLoss = setting("exhaustOutletLoss", {
  label: "Exhaust pipe loss after the turbines, as measured",
  symbol: "\\Delta p_e",
  kind: "pressureDifference",
  hint: "duct",
  unit: "mbar",
  value: 70,
  span: [0, 400],
  step: 5,
});

export const exhaustRatedFlow = setting("exhaustRatedFlow", {
  label: "Exhaust flow at which that loss was measured",
  symbol: "\\dot m_{e,r}",
  kind: "massFlow",
  unit: "kg/min",
  value: 70,
  span: [5, 250],
  step: 1,
});

export const exhaustRatedTemperature = setting("exhaustRatedTemperature", {
  label: "Exhaust temperature after the turbines, when it was measured",
  symbol: "T_{e,r}",
  kind: "temperature",
  unit: "°C",
  value: 480,
  span: [20, 800],
  step: 5,
});

export const wallHeatShare = setting("wallHeatShare", {
  label: "Fuel energy that goes into cylinder and port walls",
  symbol: "\\lambda_w",
  kind: "fraction",
  unit: "%",
  value: 15,
  span: [5, 35],
  step: 0.5,
  note: "Before friction adds its own heat; 12 to 20 % at full load: common practice, no source. A heat balance from a brake takes its place on the sheet of the marine cooling load.",
});

export const turbineInletLimit = setting("turbineInletLimit", {
  label: "Turbine inlet temperature allowed",
  symbol: "T_{6,lim}",
  kind: "temperature",
  unit: "°C",
  value: 760,
  span: [500, 1000],
  step: 5,
  note: "720 to 760 °C for long runs with usual alloys, more for short ones: common practice, no source.",
});

export const backPressureRatioLimit = setting("backPressureRatioLimit", {
  label: "Exhaust over manifold pressure allowed",
  symbol: "(p_6/p_5)_{lim}",
  kind: "ratio",
  unit: "",
  value: 1.1,
  span: [0.5, 2],
  step: 0.05,
  note: "Above 1 exhaust is pushed back into the cylinders while both valves are open.",
});

export const scavengeGainCounts = choice("scavengeGainCounts", {
  label: "Manifold pressure above the exhaust's",
  options: { yes: "counts as a gain", no: "is not counted" },
  value: "yes",
});

export const effectiveCompressionRatio = setting("effectiveCompressionRatio", {
  label: "Effective compression ratio",
  symbol: "\\varepsilon",
  kind: "ratio",
  unit: "",
  value: 12.8,
  span: [9, 20],
  step: 0.1,
  note: "Volume at intake closing over clearance volume; below the geometric ratio.",
});

export const compressionExponent = setting("compressionExponent", {
  label: "Polytropic exponent of compression",
  symbol: "n_c",
  kind: "ratio",
  unit: "",
  value: 1.35,
  span: [1.2, 1.4],
  step: 0.01,
  note: "1.33 to 1.37: common practice, no source.",
});

export const firingRise = setting("firingRise", {
  label: "Peak pressure over compression pressure",
  symbol: "\\alpha",
  kind: "ratio",
  unit: "",
  value: 1.35,
  span: [1, 2.5],
  step: 0.05,
  note: "An estimate, to be replaced by a measured pressure trace.",
});

export const peakPressureLimit = setting("peakPressureLimit", {
  label: "Cylinder pressure allowed",
  symbol: "p_{max,lim}",
  kind: "pressure",
  hint: "boost",
  unit: "bar",
  value: 230,
  span: [80, 350],
  step: 5,
});
