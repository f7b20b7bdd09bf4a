import { type DieselFuel, marineDistillate, methylEster, paraffinicDiesel, roadDiesel } from "../../lib/fluid";
import { choice, choiceColumn, table, textColumn } from "../../lib/graph";
import { quantity } from "../../lib/quantity";
import { column, setting } from "../setting";

/** Fuels to choose from, as the page calls them. */
export const fuelNames = {
  roadDiesel: "road diesel",
  marineDistillate: "marine distillate",
  paraffinicDiesel: "paraffinic diesel",
  methylEster: "methyl ester",
  own: "a fuel of our own",
} as const;

export const fuelChoice = choice("fuel", { label: "Fuel", options: fuelNames, value: "roadDiesel" });

const fuelRow = (fuel: keyof typeof fuelNames, properties: DieselFuel, source: string) => ({
  fuel,
  density: properties.densityAt15C,
  viscosity: properties.kinematicViscosityAt40C,
  hydrogen: properties.hydrogenToCarbon,
  oxygen: properties.oxygenToCarbon,
  heatingValue: properties.lowerHeatingValue,
  source,
});

export const fuelTable = table("fuelTable", {
  label: "Fuels and their properties",
  note: "Typical values; overwrite them with those of the supplier's certificate. The first row of the fuel chosen counts.",
  columns: {
    fuel: choiceColumn({ label: "Fuel", options: fuelNames }),
    density: column({ label: "Density at 15 °C", kind: "density", unit: "kg/m³", span: [750, 950], step: 1, hint: "fuel" }),
    viscosity: column({ label: "Viscosity at 40 °C", kind: "kinematicViscosity", unit: "mm²/s", span: [1, 20], step: 0.1 }),
    hydrogen: column({ label: "Hydrogen to carbon, atoms", kind: "ratio", unit: "", span: [1, 2.5], step: 0.01 }),
    oxygen: column({ label: "Oxygen to carbon, atoms", kind: "ratio", unit: "", span: [0, 0.3], step: 0.005 }),
    heatingValue: column({
      label: "Lower heating value",
      kind: "specificEnergy",
      hint: "fuel",
      unit: "MJ/kg",
      span: [30, 46],
      step: 0.1,
    }),
    source: textColumn({ label: "Source", longest: 60 }),
  },
  rows: [1, 12],
  value: [
    fuelRow("roadDiesel", roadDiesel, "EN 590, middle of its limits, from memory"),
    fuelRow("marineDistillate", marineDistillate, "ISO 8217 DMA, typical, from memory"),
    fuelRow("paraffinicDiesel", paraffinicDiesel, "EN 15940, typical, from memory"),
    fuelRow("methylEster", methylEster, "EN 14214, typical, from memory"),
    fuelRow("own", roadDiesel, "put your certificate's numbers here"),
  ],
});

const share = (percent: number) => quantity("fraction", percent, "%");

export const fuelCurve = table("fuelCurve", {
  label: "Full load over speed",
  note: "Fuel of a stroke and rail pressure as the controller's map has them at full load, each over its value at the promised speed. Straight lines between the rows.",
  columns: {
    speed: column({ label: "Engine speed, over the promised", kind: "fraction", unit: "%", span: [5, 150], step: 1 }),
    quantity: column({ label: "Fuel of a stroke", kind: "fraction", unit: "%", span: [0, 200], step: 1 }),
    pressure: column({ label: "Rail pressure", kind: "fraction", unit: "%", span: [15, 130], step: 1 }),
  },
  rows: [2, 12],
  value: [
    { speed: share(24), quantity: share(48), pressure: share(42) },
    { speed: share(45), quantity: share(92), pressure: share(75) },
    { speed: share(62), quantity: share(110), pressure: share(92) },
    { speed: share(80), quantity: share(107), pressure: share(100) },
    { speed: share(100), quantity: share(100), pressure: share(100) },
    { speed: share(108), quantity: share(35), pressure: share(92) },
  ],
});

export const cylinderImbalance = setting("cylinderImbalance", {
  label: "Fuel of the fullest cylinder above the mean",
  symbol: "\\delta_z",
  kind: "fraction",
  unit: "%",
  value: 3,
  span: [0, 25],
  step: 0.5,
  note: "New injectors of one batch lie within 2 to 4 % of each other, worn ones within 10: common practice, no source.",
});

export const pilotShare = setting("pilotShare", {
  label: "Fuel in the pilot injection",
  symbol: "\\sigma_{pi}",
  kind: "fraction",
  unit: "%",
  value: 2,
  span: [0, 20],
  step: 0.5,
});

export const afterShare = setting("afterShare", {
  label: "Fuel in the after-injection",
  symbol: "\\sigma_{af}",
  kind: "fraction",
  unit: "%",
  value: 0,
  span: [0, 30],
  step: 0.5,
});

export const injectionStart = setting("injectionStart", {
  label: "Main injection starts before top dead centre",
  symbol: "\\theta_s",
  kind: "crankAngle",
  unit: "deg",
  value: 14,
  span: [-10, 40],
  step: 0.5,
  note: "When fuel begins to flow, some tenths of a millisecond after the injector is switched on.",
});

export const pilotLead = setting("pilotLead", {
  label: "Pilot starts earlier than main by",
  symbol: "\\theta_{pi}",
  kind: "crankAngle",
  unit: "deg",
  value: 16,
  span: [2, 50],
  step: 0.5,
});

export const afterGap = setting("afterGap", {
  label: "Pause between main and after-injection",
  symbol: "\\theta_{af}",
  kind: "crankAngle",
  unit: "deg",
  value: 3,
  span: [0.5, 30],
  step: 0.5,
});

export const latestEnd = setting("latestEnd", {
  label: "Last fuel after top dead centre, at most",
  symbol: "\\theta_{e,lim}",
  kind: "crankAngle",
  unit: "deg",
  value: 28,
  span: [0, 60],
  step: 0.5,
  note: "Later fuel burns into the exhaust; 20 to 30 degrees is common practice, no source.",
});

export const peakAngle = setting("peakAngle", {
  label: "Peak cylinder pressure after top dead centre",
  symbol: "\\theta_{max}",
  kind: "crankAngle",
  unit: "deg",
  value: 11,
  span: [2, 30],
  step: 0.5,
  note: "8 to 14 degrees for good work: common practice, no source.",
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
  label: "Discharge coefficient of the holes, not cavitating",
  symbol: "C_{d,0}",
  kind: "fraction",
  unit: "%",
  value: 80,
  span: [50, 95],
  step: 1,
  note: "75 to 85 % with a rounded inlet, 60 to 70 % with a sharp one: common practice, no source.",
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

export const plungerGap = setting("plungerGap", {
  label: "Gap between plunger and barrel, under pressure",
  symbol: "h_p",
  kind: "length",
  hint: "small",
  unit: "µm",
  value: 7,
  span: [0, 20],
  step: 0.5,
  note: "Half the difference of their diameters. 1 to 3 µm as assembled, several more under pressure: common practice, no source.",
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

export const railVolume = setting("railVolume", {
  label: "Volume of rail and pipes",
  symbol: "V_r",
  kind: "volume",
  hint: "small",
  unit: "cm³",
  value: 85,
  span: [5, 500],
  step: 5,
});

export const railDipLimit = setting("railDipLimit", {
  label: "Rail pressure may dip by",
  symbol: "\\Delta p_{dip,lim}",
  kind: "pressureDifference",
  hint: "rail",
  unit: "bar",
  value: 150,
  span: [10, 600],
  step: 10,
  note: "5 to 10 % of the rail's pressure, so that cylinders get alike: common practice, no source.",
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

export const suctionLength = setting("suctionLength", {
  label: "Length of the suction line, of the same bore",
  symbol: "l_{su}",
  kind: "length",
  hint: "large",
  unit: "m",
  value: 1.5,
  span: [0, 12],
  step: 0.1,
});

export const suctionFittings = setting("suctionFittings", {
  label: "Loss coefficients before the lift pump: pick-up, strainer, valves",
  symbol: "\\zeta_{su}",
  kind: "ratio",
  unit: "",
  value: 5,
  span: [0, 40],
  step: 0.5,
});

export const suctionHeight = setting("suctionHeight", {
  label: "Lift pump stands above the fuel's level by",
  symbol: "h_{su}",
  kind: "length",
  hint: "large",
  unit: "m",
  value: 0.3,
  span: [-3, 4],
  step: 0.05,
  note: "With the tank nearly empty; below zero where the pump stands lower than the fuel.",
});

export const suctionLeast = setting("suctionLeast", {
  label: "Pressure before the lift pump, at least",
  symbol: "p_{su,min}",
  kind: "pressure",
  hint: "boost",
  unit: "bar",
  value: 0.66,
  span: [0.1, 1],
  step: 0.01,
  note: "Air that is dissolved in the fuel comes out at about a third below the air's pressure, long before the fuel boils: common practice, no source.",
});

export const returnCooler = setting("returnCooler", {
  label: "Return heat that a fuel cooler takes out",
  symbol: "\\epsilon_t",
  kind: "fraction",
  unit: "%",
  value: 60,
  span: [0, 100],
  step: 5,
});

export const tankVolume = setting("tankVolume", {
  label: "Fuel in the full tank",
  symbol: "V_t",
  kind: "volume",
  hint: "fuel",
  unit: "L",
  value: 380,
  span: [20, 20000],
  step: 10,
  scale: "log",
});

export const tankReserve = setting("tankReserve", {
  label: "Reserve that stays in the tank",
  symbol: "\\sigma_t",
  kind: "fraction",
  unit: "%",
  value: 12,
  span: [2, 60],
  step: 1,
});

export const tankWalls = setting("tankWalls", {
  label: "Heat lost through the tank's walls",
  symbol: "UA_t",
  kind: "thermalConductance",
  hint: "small",
  unit: "W/K",
  value: 22,
  span: [0, 500],
  step: 1,
  note: "5 to 15 W/K for each square metre in moving air: common practice, no source.",
});

export const tankStart = setting("tankStart", {
  label: "Fuel in the tank at the start",
  symbol: "T_{t,0}",
  kind: "temperature",
  unit: "°C",
  value: 25,
  span: [-20, 60],
  step: 1,
});

export const tankLimit = setting("tankLimit", {
  label: "Fuel in the tank, at most",
  symbol: "T_{t,lim}",
  kind: "temperature",
  unit: "°C",
  value: 55,
  span: [30, 80],
  step: 1,
  note: "55 °C is the least flash point of road diesel (EN 590, from memory), 60 °C that of marine fuels: above it the tank's vapour can burn.",
});

export const dutyCycle = table("dutyCycle", {
  label: "Duty cycle",
  note: "Shares of time are brought to 100 %. Speed and power over the promised ones; way is speed over ground or water.",
  columns: {
    phase: textColumn({ label: "Phase", longest: 32 }),
    time: column({ label: "Share of time", kind: "fraction", unit: "%", span: [0, 100], step: 1 }),
    speed: column({ label: "Engine speed", kind: "fraction", unit: "%", span: [5, 130], step: 1 }),
    power: column({ label: "Power", kind: "fraction", unit: "%", span: [0, 130], step: 1 }),
    way: column({ label: "Way", kind: "velocity", hint: "road", unit: "km/h", span: [0, 300], step: 1 }),
  },
  rows: [1, 10],
  value: [
    {
      phase: "Climb, full load",
      time: share(35),
      speed: share(97),
      power: share(98),
      way: quantity("velocity", 118, "km/h"),
    },
    {
      phase: "Bends and gear changes",
      time: share(40),
      speed: share(80),
      power: share(55),
      way: quantity("velocity", 82, "km/h"),
    },
    {
      phase: "Rolling through villages",
      time: share(15),
      speed: share(50),
      power: share(14),
      way: quantity("velocity", 48, "km/h"),
    },
    {
      phase: "Standing, idle",
      time: share(10),
      speed: share(24),
      power: share(1),
      way: quantity("velocity", 0, "km/h"),
    },
  ],
});

export const boatSpeed = setting("boatSpeed", {
  label: "In a boat: speed at the promised engine speed",
  symbol: "v_{boat}",
  kind: "velocity",
  hint: "boat",
  unit: "knots",
  value: 24,
  span: [4, 70],
  step: 0.5,
});

export const fuelPropellerExponent = setting("fuelPropellerExponent", {
  label: "In a boat: power grows with engine speed to the power of",
  symbol: "x_{prop}",
  kind: "ratio",
  unit: "",
  value: 2.7,
  span: [1.5, 4],
  step: 0.1,
  note: "3 for a displacement hull, 2.3 to 2.7 when planing: common practice, no source.",
});

export const hullExponent = setting("hullExponent", {
  label: "In a boat: speed grows with engine speed to the power of",
  symbol: "x_{hull}",
  kind: "ratio",
  unit: "",
  value: 1.2,
  span: [0.5, 2.5],
  step: 0.05,
  note: "1 with steady slip; above 1 where a planing hull rises out of the water. From the boat's own trial.",
});

export const cruiseShare = setting("cruiseShare", {
  label: "In a boat: engine speed at cruise, over the promised",
  symbol: "\\nu_{cr}",
  kind: "fraction",
  unit: "%",
  value: 82,
  span: [20, 105],
  step: 1,
});
