import { choice } from "../../lib/graph";
import { setting } from "../setting";

export const exhaustLossFrom = choice("exhaustLossFrom", {
  label: "Exhaust loss that the turbines work against",
  options: { measured: "as measured, on the boost sheet", pipe: "from the exhaust laid out here" },
  value: "measured",
  note: "With the second, bore, length and lift of this boat's exhaust reach back into turbines, fuel and air.",
});

export const exhaustKind = choice("exhaustKind", {
  label: "Exhaust",
  options: { wet: "wet: sea water led into it", dry: "dry: lagged pipe up a funnel" },
  value: "wet",
});

export const hoseLength = setting("hoseLength", {
  label: "Length of the wet hose",
  symbol: "l_x",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 4,
  span: [0.5, 40],
  step: 0.5,
});

export const hoseBends = setting("hoseBends", {
  label: "Bends, lift box and silencer, in velocity heads",
  symbol: "\\zeta_x",
  kind: "ratio",
  unit: "",
  value: 4,
  span: [0, 20],
  step: 0.5,
  note: "About 0.3 to 0.5 for each wide bend and 2 to 3 for a lift box: common practice, no source.",
});

export const exhaustLift = setting("exhaustLift", {
  label: "Water lifted behind the lift box",
  symbol: "z_{li}",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 0.3,
  span: [0, 2],
  step: 0.05,
});

export const exhaustPressureLimit = setting("exhaustPressureLimit", {
  label: "Back pressure allowed behind the turbines",
  symbol: "\\Delta p_{e,lim}",
  kind: "pressureDifference",
  hint: "duct",
  unit: "mbar",
  value: 110,
  span: [10, 500],
  step: 5,
  note: "From the engine's maker; 70 to 100 mbar is usual for turbocharged diesels: common practice, no source.",
});

export const riserLeast = setting("riserLeast", {
  label: "Injection above the loaded waterline, at least",
  symbol: "z_{r,least}",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 0.35,
  span: [0.1, 2],
  step: 0.05,
  note: "Enough for heel, following seas and a full load: 0.3 to 0.4 m and more under way, common practice, no source; class and flag rules go before.",
});

export const loadedSinkage = setting("loadedSinkage", {
  label: "Deeper when loaded, by",
  symbol: "z_{load}",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 0.15,
  span: [0, 2],
  step: 0.05,
});

export const dryBore = setting("dryBore", {
  label: "Bore of the dry pipe",
  symbol: "d_{dr}",
  kind: "length",
  unit: "mm",
  value: 180,
  span: [50, 600],
  step: 1,
});

export const dryLength = setting("dryLength", {
  label: "Length of the dry pipe, bends as length",
  symbol: "l_{dr}",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 7,
  span: [0.5, 60],
  step: 0.5,
});

export const dryInRoom = setting("dryInRoom", {
  label: "Dry pipe inside the engine room",
  symbol: "l_{dr,r}",
  kind: "length",
  hint: "duct",
  unit: "m",
  value: 3,
  span: [0, 30],
  step: 0.5,
});

export const lagging = setting("lagging", {
  label: "Thickness of the lagging",
  symbol: "s_l",
  kind: "length",
  unit: "mm",
  value: 50,
  span: [0, 150],
  step: 5,
});

export const laggingConductivity = setting("laggingConductivity", {
  label: "Conductivity of the lagging, hot",
  symbol: "k_l",
  kind: "thermalConductivity",
  unit: "W/(m·K)",
  value: 0.08,
  span: [0.02, 0.5],
  step: 0.01,
  note: "Mineral wool at 300 °C: 0.07 to 0.1, from memory.",
});

export const surfaceLimit = setting("surfaceLimit", {
  label: "Surface that hands may meet, at most",
  symbol: "T_{l,lim}",
  kind: "temperature",
  unit: "°C",
  value: 93,
  span: [40, 220],
  step: 1,
  note: "93 °C (200 °F) asks for guard or lagging: ABYC P-1, as quoted by a public page.",
});

export const outsideAir = setting("outsideAir", {
  label: "Air outside the engine room",
  symbol: "T_{out}",
  kind: "temperature",
  unit: "°C",
  value: 30,
  span: [-20, 50],
  step: 1,
});

export const roomAirFlow = setting("roomAirFlow", {
  label: "Air led into the engine room",
  symbol: "q_r",
  kind: "volumeFlow",
  unit: "m³/min",
  value: 95,
  span: [2, 1000],
  step: 1,
  note: "By fans, or drawn in by the engine through the openings; the engine's own air is part of it.",
});

export const openingVelocity = setting("openingVelocity", {
  label: "Velocity in the free area of the openings",
  symbol: "v_r",
  kind: "velocity",
  unit: "m/s",
  value: 6,
  span: [0.5, 15],
  step: 0.1,
  note: "2 to 3 m/s for plain openings, 6 to 10 m/s where a fan pulls: common practice, no source.",
});

export const openingFreeShare = setting("openingFreeShare", {
  label: "Share of the openings that louvre and mesh leave free",
  symbol: "\\phi_r",
  kind: "fraction",
  unit: "%",
  value: 65,
  span: [20, 100],
  step: 1,
});

export const openingFitted = setting("openingFitted", {
  label: "Openings fitted, over all",
  symbol: "A_r",
  kind: "area",
  unit: "cm²",
  value: 4500,
  span: [100, 50000],
  step: 50,
});

export const otherRoomHeat = setting("otherRoomHeat", {
  label: "Other heat in the room: generator set, electrics",
  symbol: "Q_{r,o}",
  kind: "power",
  hint: "heat",
  unit: "kW",
  value: 2,
  span: [0, 100],
  step: 0.5,
});

export const propellerShare = setting("propellerShare", {
  label: "Propeller's power at the promised speed, of the promised",
  symbol: "s_{pr}",
  kind: "fraction",
  unit: "%",
  value: 93,
  span: [40, 120],
  step: 1,
  note: "What is left is for a foul bottom, a full load and a head sea: 5 to 10 %, common practice, no source.",
});

export const gearRatio = setting("gearRatio", {
  label: "Gear ratio, engine turns for one of the shaft",
  symbol: "i_g",
  kind: "ratio",
  unit: "",
  value: 2,
  span: [0.8, 8],
  step: 0.05,
});

export const shaftTorqueLimit = setting("shaftTorqueLimit", {
  label: "Shaft torque that gear and shaft are rated for",
  symbol: "M_{s,lim}",
  kind: "torque",
  unit: "N·m",
  value: 3800,
  span: [100, 100000],
  step: 100,
});

export const torqueRise = setting("torqueRise", {
  label: "Highest torque above that at the promised speed, by",
  symbol: "b_M",
  kind: "fraction",
  unit: "%",
  value: 15,
  span: [0, 60],
  step: 1,
});

export const peakTorqueSpeed = setting("peakTorqueSpeed", {
  label: "Speed of the highest torque, of the promised",
  symbol: "\\nu_M",
  kind: "fraction",
  unit: "%",
  value: 65,
  span: [35, 95],
  step: 1,
});

export const rating = choice("rating", {
  label: "Rating",
  options: {
    continuous: "continuous, without limit of hours",
    medium: "medium duty, full power up to 16 h in 24",
    intermittent: "intermittent, full power up to 2 h in 12",
    highPerformance: "high performance, full power up to 1 h in 12",
  },
  value: "intermittent",
  note: "Classes and their load factors are the trade's own habit, common practice, no source; the engine's maker and class decide.",
});
