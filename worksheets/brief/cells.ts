import {
  brakeMeanEffectivePressure,
  brakeTorque,
  meanPistonSpeed as meanPistonSpeedOf,
  sweptVolume,
} from "../../lib/engine";
import { humidityRatio, moistAir, standardAtmosphere } from "../../lib/fluid";
import { cell, choice } from "../../lib/graph";
import { setting } from "../setting";

export const ratedPower = setting("ratedPower", {
  label: "Promised power",
  symbol: "P_b",
  kind: "power",
  unit: "hp",
  value: 950,
  span: [50, 2000],
  step: 5,
  note: "Power at the flywheel that the customer is told, at the promised speed and in this installation's air.",
});

export const ratedSpeed = setting("ratedSpeed", {
  label: "Promised speed",
  symbol: "N",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 3200,
  span: [1200, 4500],
  step: 10,
  note: "Engine speed at which that power is given.",
});

export const maximumSpeed = setting("maximumSpeed", {
  label: "Highest speed",
  symbol: "N_{max}",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 3450,
  span: [1300, 5000],
  step: 10,
  note: "The most that the governor lets through when the load comes off; everything driven must bear it.",
});

export const idleSpeed = setting("idleSpeed", {
  label: "Idle speed",
  symbol: "N_0",
  kind: "rotationalSpeed",
  unit: "rpm",
  value: 780,
  span: [450, 1200],
  step: 10,
  note: "Alternator, steering and air meters must still do their work at this speed.",
});

export const heatCarrier = choice("heatCarrier", {
  label: "Cooled by",
  options: { air: "air", seaWater: "sea water" },
  value: "air",
  note: "With sea water, charge coolers and engine are cooled by the sea, and the limits of the marine sheet join the ledger.",
});

export const altitude = setting("altitude", {
  label: "Altitude",
  symbol: "z",
  kind: "length",
  unit: "m",
  hint: "altitude",
  value: 1450,
  span: [-100, 4500],
  step: 10,
});

export const ambientTemperature = setting("ambientTemperature", {
  label: "Air temperature",
  symbol: "T_0",
  kind: "temperature",
  unit: "°C",
  value: 22,
  span: [-30, 50],
  step: 1,
});

export const relativeHumidity = setting("relativeHumidity", {
  label: "Relative humidity",
  symbol: "\\varphi",
  kind: "fraction",
  unit: "%",
  value: 40,
  span: [0, 100],
  step: 1,
});

export const cylinders = setting("cylinders", {
  label: "Cylinders",
  symbol: "z_c",
  kind: "count",
  unit: "",
  value: 6,
  span: [1, 16],
  step: 1,
});

export const bore = setting("bore", {
  label: "Bore",
  symbol: "B",
  kind: "length",
  unit: "mm",
  value: 124,
  span: [60, 200],
  step: 0.5,
});

export const stroke = setting("stroke", {
  label: "Stroke",
  symbol: "S",
  kind: "length",
  unit: "mm",
  value: 141,
  span: [60, 240],
  step: 0.5,
});

export const pistonSpeedLimit = setting("pistonSpeedLimit", {
  label: "Mean piston speed allowed",
  symbol: "v_{p,lim}",
  kind: "velocity",
  unit: "m/s",
  value: 17,
  span: [8, 26],
  step: 0.5,
  note: "10 to 13 m/s in heavy continuous service, 14 to 16 m/s and above in competition: common practice, no source.",
});

export const displacement = cell("displacement", {
  label: "Displacement",
  kind: "volume",
  symbol: "V",
  from: { bore, stroke, cylinders },
  compute: sweptVolume,
  formula: "V = z_c\\,\\frac{\\pi}{4}\\,B^2\\,S",
  source: "definition",
});

export const meanPistonSpeed = cell("meanPistonSpeed", {
  label: "Mean piston speed at the highest speed",
  kind: "velocity",
  symbol: "v_p",
  from: { stroke, maximumSpeed },
  compute: ({ stroke, maximumSpeed }) => meanPistonSpeedOf(stroke, maximumSpeed),
  formula: "v_p = 2\\,S\\,N_{max}",
  source: "definition",
  limits: [{ component: "pistons and rods", side: "most", bound: pistonSpeedLimit }],
});

export const ratedTorque = cell("ratedTorque", {
  label: "Torque at the promised speed",
  kind: "torque",
  symbol: "M_b",
  from: { ratedPower, ratedSpeed },
  compute: ({ ratedPower, ratedSpeed }) => brakeTorque(ratedPower, ratedSpeed),
  formula: "M_b = \\frac{P_b}{2\\pi N}",
  source: "definition",
});

export const meanEffectivePressure = cell("meanEffectivePressure", {
  label: "Brake mean effective pressure",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "p_{me}",
  from: { ratedPower, displacement, ratedSpeed },
  compute: ({ ratedPower, displacement, ratedSpeed }) =>
    brakeMeanEffectivePressure({ power: ratedPower, displacement, engineSpeed: ratedSpeed }),
  formula: "p_{me} = \\frac{2\\,P_b}{V\\,N}",
  source: "definition, four-stroke engine",
  validity: [
    {
      of: "result",
      span: [0, 35e5],
      note: "Four-stroke diesels above 35 bar are not known to us: common practice, no source.",
    },
  ],
});

export const ambientPressure = cell("ambientPressure", {
  label: "Barometer",
  kind: "pressure",
  hint: "weather",
  symbol: "p_0",
  from: { altitude },
  compute: ({ altitude }) => standardAtmosphere(altitude).pressure,
  formula: "p_0 = 101\\,325\\,\\mathrm{Pa}\\left(1 - \\frac{0.0065\\,z}{288.15}\\right)^{5.2559}",
  source: "ISO 2533:1975, Standard atmosphere",
  assumptions: ["The weather is the standard atmosphere's for pressure; temperature and humidity are your own."],
});

export const ambientHumidityRatio = cell("ambientHumidityRatio", {
  label: "Humidity ratio outside, water over dry air",
  kind: "ratio",
  symbol: "w_0",
  from: { temperature: ambientTemperature, pressure: ambientPressure, relativeHumidity },
  compute: humidityRatio,
  formula: "w_0 = 0.62195\\,\\frac{\\varphi\\,p_s(T_0)}{p_0 - \\varphi\\,p_s(T_0)}",
  source: "ASHRAE Handbook Fundamentals (2017), chapter 1 (from memory)",
  assumptions: ["p_s is the pressure of saturated vapour, over ice when it freezes."],
});

export const ambientDensity = cell("ambientDensity", {
  label: "Density of the air outside",
  kind: "density",
  symbol: "\\rho_0",
  from: { ambientTemperature, ambientPressure, ambientHumidityRatio },
  compute: ({ ambientTemperature, ambientPressure, ambientHumidityRatio }) =>
    moistAir(ambientHumidityRatio).density(ambientTemperature, ambientPressure),
  formula: "\\rho_0 = \\frac{p_0}{R(w_0)\\,T_0}",
  source: "ideal gas law, moist air",
});
