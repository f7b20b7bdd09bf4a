import { chargePathAtIdle } from "../../lib/charge";
import {
  airFlowForFuel,
  airMeterLoad,
  brakeSpecificFuelConsumption,
  frictionMeanEffectivePressure,
  frictionPower as frictionPowerOf,
  fuelFlowForIndicatedPower,
  humidAirFlow,
  indicatedPower as indicatedPowerOf,
  manifoldDensityNeeded,
  manifoldPressureNeeded,
  meanPistonSpeed,
  meterTurnDown,
  pumpingPower as pumpingPowerOf,
  restrictionLoss,
  ruleOfThumbAirFlow,
} from "../../lib/engine";
import { bellmouthDepression, velocityInPipe } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { MassFlow, Power, Pressure, Ratio } from "../../lib/quantity";
import {
  blowerShaftPower,
  manifoldPressure,
  manifoldTemperature,
  peakPressure,
  turbineInletPressure,
} from "../boost/cells";
import { charge, demand, demandBuild } from "../boost/demand";
import { scavengeGainCounts } from "../boost/inputs";
import { scaledFriction } from "../boost/statedBuild";
import {
  ambientDensity,
  ambientHumidityRatio,
  ambientPressure,
  ambientTemperature,
  displacement,
  idleSpeed,
  ratedPower,
  ratedSpeed,
  stroke,
} from "../brief/cells";
import { accessoryPower } from "../drive-speeds/accessories";
import { fuelPumpWork, heatingValue, stoichiometricRatio } from "../fuel-delivery/pumpWork";
import {
  bellmouthDischarge,
  ductBore,
  ductVelocityLimit,
  frictionShare,
  indicatedEfficiency,
  intakeLossLimit,
  meterBore,
  meterCapacity,
  meterCount,
  meterLeast,
  meterMachLimit,
  ruleOfThumb,
  valveLoss,
  volumetricEfficiency,
} from "./inputs";
import { intakeRestriction } from "./intake";

export const frictionMeanPressure = cell("frictionMeanPressure", {
  label: "Friction mean effective pressure",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "p_{mf}",
  from: { peakPressure, stroke, ratedSpeed, frictionShare },
  compute: ({ peakPressure, stroke, ratedSpeed, frictionShare }) =>
    frictionMeanEffectivePressure({
      peakPressure,
      meanPistonSpeed: meanPistonSpeed(stroke, ratedSpeed),
      coefficients: scaledFriction(frictionShare),
    }),
  formula:
    "p_{mf} = k_f\\left(0.137\\,\\mathrm{bar} + \\frac{p_{max}}{200} + 0.162\\,\\frac{\\mathrm{bar}}{\\mathrm{m/s}}\\cdot 2\\,S\\,N\\right)",
  source:
    "S. K. Chen, P. Flynn, Development of a Single Cylinder Compression Ignition Research Engine, SAE 650733 (1965) (from memory)",
  validity: [
    {
      of: "peakPressure",
      span: [0, 250e5],
      note: "The published line comes from engines that stayed well below 250 bar.",
    },
  ],
});

export const frictionPower = cell("frictionPower", {
  label: "Power lost to friction",
  kind: "power",
  symbol: "P_f",
  from: { frictionMeanEffectivePressure: frictionMeanPressure, displacement, engineSpeed: ratedSpeed },
  compute: frictionPowerOf,
  formula: "P_f = \\frac{p_{mf}\\,V\\,N}{2}",
  source: "definition",
});

export const pumpingPower = cell("pumpingPower", {
  label: "Power spent on pumping the gas",
  kind: "power",
  symbol: "P_{pump}",
  from: { turbineInletPressure, manifoldPressure, valveLoss, displacement, ratedSpeed, scavengeGainCounts },
  compute: ({ turbineInletPressure, manifoldPressure, valveLoss, displacement, ratedSpeed, scavengeGainCounts }) =>
    pumpingPowerOf({
      exhaustPressure: turbineInletPressure,
      manifoldPressure,
      valveLoss,
      displacement,
      engineSpeed: ratedSpeed,
      gainCounts: scavengeGainCounts === "yes",
    }),
  formula: "P_{pump} = (p_6 - p_5 + \\Delta p_v)\\,\\frac{V\\,N}{2}",
  source: "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §5.3 (ideal pumping loop, from memory)",
  assumptions: [
    "Below zero the manifold's pressure, above the exhaust's, drives the pistons.",
    "Where that gain is not counted, zero stands in its place.",
  ],
});

export const fuelPumpPower = cell("fuelPumpPower", {
  label: "Power of the high-pressure fuel pump",
  kind: "power",
  symbol: "P_{fp}",
  from: { fuelPumpWork, demand },
  compute: ({ fuelPumpWork, demand }) => (fuelPumpWork * demand.fuelFlow) as Power,
  formula: "P_{fp} = w_p\\,\\dot m_f",
  source: "definition",
});

export const indicatedPower = cell("indicatedPower", {
  label: "Gross indicated power",
  kind: "power",
  symbol: "P_i",
  from: {
    brakePower: ratedPower,
    frictionPower,
    accessoryPower,
    blowerPower: blowerShaftPower,
    pumpingPower,
    fuelPumpPower,
  },
  compute: indicatedPowerOf,
  formula: "P_i = P_b + P_f + P_x + P_{bl} + P_{pump} + P_{fp}",
  source: "definition",
});

export const fuelFlow = cell("fuelFlow", {
  label: "Fuel flow",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_f",
  from: { indicatedPower, indicatedEfficiency, lowerHeatingValue: heatingValue },
  compute: ({ indicatedPower, indicatedEfficiency, lowerHeatingValue }) =>
    fuelFlowForIndicatedPower({
      indicatedPower,
      grossIndicatedEfficiency: indicatedEfficiency,
      lowerHeatingValue,
    }),
  formula: "\\dot m_f = \\frac{P_i}{\\eta_i\\,H_u}",
  source: "definition of efficiency",
});

export const specificFuelConsumption = cell("specificFuelConsumption", {
  label: "Brake specific fuel consumption",
  kind: "specificFuelConsumption",
  symbol: "b_e",
  from: { fuelFlow, ratedPower },
  compute: ({ fuelFlow, ratedPower }) => brakeSpecificFuelConsumption(fuelFlow, ratedPower),
  formula: "b_e = \\frac{\\dot m_f}{P_b}",
  source: "definition",
  validity: [
    {
      of: "result",
      span: [185 / 3.6e9, 290 / 3.6e9],
      note: "Diesels at full load lie between 185 and 290 g/kWh: Heywood (1988), chapter 2 (from memory), widened.",
    },
  ],
});

export const excessAirRatioMet = cell("excessAirRatioMet", {
  label: "Excess air ratio at this point",
  kind: "ratio",
  symbol: "\\lambda",
  from: { demand },
  compute: ({ demand }) => demand.excessAirRatio,
  formula: "\\lambda = \\max\\left(\\lambda_{min},\\ \\lambda|_{\\pi_c = 1}\\right)",
  source: "definition",
  assumptions: [
    "At little power, blower and engine take more air than is asked for even when the turbochargers make no pressure.",
  ],
});

export const airFuelRatio = cell("airFuelRatio", {
  label: "Air–fuel ratio, dry air",
  kind: "ratio",
  symbol: "AFR",
  from: { excessAirRatioMet, stoichiometricRatio },
  compute: ({ excessAirRatioMet, stoichiometricRatio }) => (excessAirRatioMet * stoichiometricRatio) as Ratio,
  formula: "AFR = \\lambda\\,L_{st}",
  source: "definition",
});

export const dryAirFlow = cell("dryAirFlow", {
  label: "Dry air flow",
  kind: "massFlow",
  symbol: "\\dot m_d",
  from: { fuelFlow, excessAirRatio: excessAirRatioMet, stoichiometricAirFuelRatio: stoichiometricRatio },
  compute: airFlowForFuel,
  formula: "\\dot m_d = \\lambda\\,L_{st}\\,\\dot m_f",
  source: "definition",
});

export const airFlow = cell("airFlow", {
  label: "Air flow, with its moisture",
  kind: "massFlow",
  symbol: "\\dot m",
  from: { dryAirFlow, ambientHumidityRatio },
  compute: ({ dryAirFlow, ambientHumidityRatio }) => humidAirFlow(dryAirFlow, ambientHumidityRatio),
  formula: "\\dot m = \\dot m_d\\,(1 + w_0)",
  source: "definition",
});

export const thumbAirFlow = cell("thumbAirFlow", {
  label: "The same by the rule of thumb",
  kind: "massFlow",
  symbol: "\\dot m_{thumb}",
  from: { ratedPower, ruleOfThumb },
  compute: ({ ratedPower, ruleOfThumb }) => ruleOfThumbAirFlow(ratedPower, ruleOfThumb),
  formula: "\\dot m_{thumb} = b_a\\,P_b",
  source: "common practice, no source",
});

export const densityNeeded = cell("densityNeeded", {
  label: "Density needed in the manifold",
  kind: "density",
  symbol: "\\rho_5",
  from: { airFlow, volumetricEfficiency, displacement, engineSpeed: ratedSpeed },
  compute: manifoldDensityNeeded,
  formula: "\\rho_5 = \\frac{2\\,\\dot m}{\\eta_v\\,V\\,N}",
  source: "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §2.10 (from memory)",
});

export const pressureNeeded = cell("pressureNeeded", {
  label: "Absolute pressure needed in the manifold",
  kind: "pressure",
  hint: "boost",
  symbol: "p_5",
  from: { densityNeeded, manifoldTemperature, charge },
  compute: ({ densityNeeded, manifoldTemperature, charge }) =>
    manifoldPressureNeeded(densityNeeded, manifoldTemperature, charge),
  formula: "p_5 = \\rho_5\\,R(w_0)\\,T_5",
  source: "ideal gas law, moist air",
});

export const flowPerMeter = cell("flowPerMeter", {
  label: "Flow through one air meter",
  kind: "massFlow",
  symbol: "\\dot m_a",
  from: { airFlow, meters: meterCount, meterCapacity },
  compute: (bank) => airMeterLoad(bank).flowPerMeter,
  formula: "\\dot m_a = \\frac{\\dot m}{z_a}",
  source: "definition; equal ducts share alike",
  limits: [{ component: "air meters", side: "most", bound: meterCapacity }],
});

export const meterHeadroom = cell("meterHeadroom", {
  label: "Room left on each meter",
  kind: "fraction",
  symbol: "h_a",
  from: { airFlow, meters: meterCount, meterCapacity },
  compute: (bank) => airMeterLoad(bank).headroom,
  formula: "h_a = 1 - \\frac{\\dot m}{z_a\\,\\dot m_{a,max}}",
  source: "definition",
});

export const idleAirFlow = cell("idleAirFlow", {
  label: "Air flow at idle",
  kind: "massFlow",
  symbol: "\\dot m_0",
  from: { demandBuild, idleSpeed },
  compute: ({ demandBuild, idleSpeed }) => chargePathAtIdle(demandBuild, idleSpeed).airFlow,
  formula:
    "\\dot m_0 = \\eta_{vb}\\,\\rho_3\\,V_b\\,i_b\\,N_0 = \\eta_v\\,\\rho_5\\,\\frac{V\\,N_0}{2} \\text{ with } \\pi_c = 1",
  source: "conservation of mass",
  assumptions: ["At idle the turbochargers neither help nor hinder."],
});

export const idleFlowPerMeter = cell("idleFlowPerMeter", {
  label: "Flow through one meter at idle",
  kind: "massFlow",
  symbol: "\\dot m_{a,0}",
  from: { idleAirFlow, meterCount },
  compute: ({ idleAirFlow, meterCount }) => (idleAirFlow / meterCount) as MassFlow,
  formula: "\\dot m_{a,0} = \\frac{\\dot m_0}{z_a}",
  source: "definition",
  limits: [{ component: "air meters", side: "least", bound: meterLeast }],
});

export const turnDown = cell("turnDown", {
  label: "Turn-down that the meters must span",
  kind: "ratio",
  symbol: "r_a",
  from: { airFlow, idleAirFlow },
  compute: ({ airFlow, idleAirFlow }) => meterTurnDown(airFlow, idleAirFlow),
  formula: "r_a = \\frac{\\dot m}{\\dot m_0}",
  source: "definition",
});

const meterThroat = {
  from: { flowPerMeter, ambientPressure, ambientTemperature, meterBore, bellmouthDischarge },
  state: (at: {
    flowPerMeter: MassFlow;
    ambientPressure: Pressure;
    ambientTemperature: Parameters<typeof bellmouthDepression>[0]["temperature"];
    meterBore: Parameters<typeof bellmouthDepression>[0]["throatDiameter"];
    bellmouthDischarge: number;
  }) =>
    bellmouthDepression({
      massFlow: at.flowPerMeter,
      pressure: at.ambientPressure,
      temperature: at.ambientTemperature,
      throatDiameter: at.meterBore,
      dischargeCoefficient: at.bellmouthDischarge as Ratio,
    }),
} as const;

export const meterVelocity = cell("meterVelocity", {
  label: "Air velocity in a meter's tube",
  kind: "velocity",
  hint: "duct",
  symbol: "v_a",
  from: meterThroat.from,
  compute: (at) => meterThroat.state(at).velocity,
  formula: "v_a = \\frac{4\\,\\dot m_a}{\\rho_a\\,\\pi\\,d_a^2}",
  source: "isentropic flow of an ideal gas from still air",
  assumptions: ["The density ρ_a in the tube follows from p_0, T_0 and C_a.", "Dry air."],
});

export const meterMach = cell("meterMach", {
  label: "Mach number in a meter's tube",
  kind: "ratio",
  symbol: "M_a",
  from: meterThroat.from,
  compute: (at) => meterThroat.state(at).machNumber,
  formula: "M_a = \\frac{v_a}{\\sqrt{\\gamma\\,R\\,T_a}}",
  source: "definition",
  assumptions: ["T_a is the temperature in the tube, a little below T_0."],
  limits: [{ component: "air meters", side: "most", bound: meterMachLimit }],
});

export const meterDepression = cell("meterDepression", {
  label: "Static depression in a meter's tube",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_a",
  from: meterThroat.from,
  compute: (at) => meterThroat.state(at).staticDepression,
  formula:
    "\\Delta p_a = p_0 - p_a, \\qquad \\dot m_a = C_a\\,\\frac{\\pi}{4}\\,d_a^2\\,\\frac{p_0}{\\sqrt{R\\,T_0}}\\,\\psi\\!\\left(\\frac{p_0}{p_a}\\right)",
  source: "isentropic flow of an ideal gas; discharge coefficient as in ISO 5167-1",
  assumptions: ["ψ is the flow function of an isentropic nozzle.", "Dry air."],
});

export const ductVelocity = cell("ductVelocity", {
  label: "Air velocity in the duct behind",
  kind: "velocity",
  hint: "duct",
  symbol: "v_d",
  from: { massFlow: flowPerMeter, density: ambientDensity, diameter: ductBore },
  compute: velocityInPipe,
  formula: "v_d = \\frac{4\\,\\dot m_a}{\\rho_0\\,\\pi\\,d_d^2}",
  source: "conservation of mass",
  limits: [{ component: "intake ducts", side: "most", bound: ductVelocityLimit }],
});

export const intakeLoss = cell("intakeLoss", {
  label: "Depression before the compressors",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_0",
  from: { intakeRestriction, airFlow, ambientDensity },
  compute: ({ intakeRestriction, airFlow, ambientDensity }) =>
    restrictionLoss(intakeRestriction, airFlow, ambientDensity),
  formula: "\\Delta p_0 = \\Delta p_r\\left(\\frac{\\dot m}{\\dot m_{f,r}}\\right)^2",
  source: "turbulent losses grow with the square of the flow",
  limits: [{ component: "air filter and ducts", side: "most", bound: intakeLossLimit }],
});
