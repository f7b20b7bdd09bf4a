import { choice } from "../../lib/graph";
import { setting } from "../setting";

export const landCooledBy = choice("landCooledBy", {
  label: "Engine water on land cooled by",
  options: { radiator: "a radiator with its fan", column: "a mixing column and a cooling tower" },
  value: "radiator",
});

export const radiatorConductance = setting("radiatorConductance", {
  label: "Radiator UA, at the flows stated",
  symbol: "UA_r",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 16,
  span: [0.5, 40],
  step: 0.1,
});

export const radiatorAirStated = setting("radiatorAirStated", {
  label: "Air flow for which UA and core loss are stated",
  symbol: "q_{k}",
  kind: "volumeFlow",
  unit: "m³/min",
  value: 480,
  span: [20, 3000],
  step: 10,
});

export const coreLoss = setting("coreLoss", {
  label: "Loss of core, grille and bonnet at that flow",
  symbol: "\\Delta p_{core}",
  kind: "pressureDifference",
  hint: "small",
  unit: "Pa",
  value: 420,
  span: [20, 2500],
  step: 10,
});

export const coreFace = setting("coreFace", {
  label: "Face of the core",
  symbol: "A_k",
  kind: "area",
  hint: "large",
  unit: "m²",
  value: 0.9,
  span: [0.05, 6],
  step: 0.05,
});

export const fanShutOff = setting("fanShutOff", {
  label: "Fan's pressure rise without flow",
  symbol: "\\Delta p_{f,0}",
  kind: "pressureDifference",
  hint: "small",
  unit: "Pa",
  value: 1150,
  span: [50, 5000],
  step: 10,
});

export const fanOpenFlow = setting("fanOpenFlow", {
  label: "Fan's flow without pressure rise",
  symbol: "q_{f,0}",
  kind: "volumeFlow",
  unit: "m³/min",
  value: 720,
  span: [20, 4000],
  step: 10,
});

export const fanStatedSpeed = setting("fanStatedSpeed", {
  label: "Fan speed for which these are stated",
  symbol: "n_{f,r}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 2400,
  span: [300, 6000],
  step: 50,
});

export const fanRatio = setting("fanRatio", {
  label: "Fan drive ratio",
  symbol: "i_{fan}",
  kind: "ratio",
  unit: "",
  value: 0.78,
  span: [0.1, 2],
  step: 0.01,
});

export const fanEfficiency = setting("fanEfficiency", {
  label: "Fan efficiency",
  symbol: "\\eta_f",
  kind: "fraction",
  unit: "%",
  value: 45,
  span: [15, 80],
  step: 1,
  note: "40 to 55 % for engine fans in their shrouds: common practice, no source.",
});

export const vehicleSpeed = setting("vehicleSpeed", {
  label: "Vehicle's speed through the air",
  symbol: "v",
  kind: "velocity",
  hint: "road",
  unit: "km/h",
  value: 60,
  span: [0, 300],
  step: 5,
});

export const ramRecovery = setting("ramRecovery", {
  label: "Wind's pressure that reaches the core",
  symbol: "r_v",
  kind: "fraction",
  unit: "%",
  value: 50,
  span: [0, 100],
  step: 5,
});

export const coreAirRise = setting("coreAirRise", {
  label: "Air at the core warmer than outside by",
  symbol: "\\Delta T_k",
  kind: "temperatureDifference",
  unit: "K",
  value: 9,
  span: [0, 60],
  step: 1,
  note: "Charge coolers stand before the core, and some air goes round it twice.",
});

export const supplyFlow = setting("supplyFlow", {
  label: "Tower water through the cell",
  symbol: "q_t",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 900,
  span: [20, 10000],
  step: 10,
});

export const towerHeat = setting("towerHeat", {
  label: "Tower rated for",
  symbol: "Q_{t,r}",
  kind: "power",
  hint: "heat",
  unit: "kW",
  value: 1500,
  span: [20, 20000],
  step: 10,
});

export const towerApproach = setting("towerApproach", {
  label: "Cold water above the wet bulb at that heat",
  symbol: "\\Delta T_{t,r}",
  kind: "temperatureDifference",
  unit: "K",
  value: 5,
  span: [1, 20],
  step: 0.5,
});

export const brakeHeatShare = setting("brakeHeatShare", {
  label: "Brake's power that ends in the tower water",
  symbol: "s_{br}",
  kind: "fraction",
  unit: "%",
  value: 95,
  span: [0, 100],
  step: 1,
  note: "0.9 to 1 with a water or eddy-current brake: common practice, no source; 0 with one that feeds the mains.",
});

export const towerConcentration = setting("towerConcentration", {
  label: "Salt in the tower's water, times that filled in",
  symbol: "z_{tw}",
  kind: "ratio",
  unit: "",
  value: 3,
  span: [1.2, 10],
  step: 0.1,
});

export const supplyLimit = setting("supplyLimit", {
  label: "Water leaving the cell, at most",
  symbol: "T_{tw,lim}",
  kind: "temperature",
  unit: "°C",
  value: 55,
  span: [30, 80],
  step: 1,
  note: "Above about 60 °C scale settles in the brake: from memory.",
});

export const cellAirRise = setting("cellAirRise", {
  label: "Cell air may warm by",
  symbol: "\\Delta T_c",
  kind: "temperatureDifference",
  unit: "K",
  value: 12,
  span: [2, 40],
  step: 1,
});

export const cellPipeShare = setting("cellPipeShare", {
  label: "Exhaust heat that the pipe gives to the cell",
  symbol: "s_{cp}",
  kind: "fraction",
  unit: "%",
  value: 6,
  span: [0, 40],
  step: 1,
});
