import { type ChargeStation, correctedFlow, demandHeatBalance, mapReferences } from "../../lib/charge";
import { peakCylinderPressure } from "../../lib/engine";
import { cell, structure } from "../../lib/graph";
import type { Fraction, GaugePressure, MassFlow, Power, Ratio } from "../../lib/quantity";
import { ambientPressure } from "../brief/cells";
import { demand } from "./demand";
import {
  backPressureRatioLimit,
  blowerOutletLimit,
  compressionExponent,
  compressorFlowCapacity,
  compressorOutletLimit,
  compressorRatioLimit,
  effectiveCompressionRatio,
  firingRise,
  manifoldPressureLimit,
  peakPressureLimit,
  turbineInletLimit,
} from "./inputs";
import { frictionHeatToOil, wallHeatRadiated, wallHeatToOil } from "../marine-cooling/inputs";

export const chargePath = structure("chargePath", {
  label: "Charge path, station by station",
  from: { demand },
  compute: ({ demand }) => demand.path,
  formula: "\\dot m = \\eta_{vb}\\,\\rho_3\\,V_b\\,i_b\\,N = \\eta_v\\,\\rho_5\\,\\frac{V\\,N}{2}",
  source:
    "conservation of mass; first law on every element; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (from memory)",
  assumptions: [
    "Blower and engine each pass a volume; the pressures before them follow, and the turbochargers must give the rest.",
    "Stations: 0 open air, 1 behind the filter, 2 behind the compressors, 3 before the blower, 4 behind it, 5 manifold, 6 before the turbines, 7 behind them.",
    "Pipes lose no heat; the water wrung out in the coolers is reckoned, but stays in the stream as vapour.",
  ],
});

const station = (path: { readonly stations: readonly ChargeStation[] }, key: ChargeStation["key"]) =>
  path.stations.find((each) => each.key === key)!;

export const compressorPressureRatio = cell("compressorPressureRatio", {
  label: "Pressure ratio of the turbochargers",
  kind: "ratio",
  symbol: "\\pi_c",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.turbochargers.pressureRatio,
  formula: "\\pi_c = \\frac{p_2}{p_1}",
  source: "definition",
  limits: [{ component: "compressors", side: "most", bound: compressorRatioLimit }],
});

export const compressorCorrectedFlow = cell("compressorCorrectedFlow", {
  label: "Corrected flow through one compressor",
  kind: "massFlow",
  symbol: "\\dot m_{c}",
  from: { chargePath },
  compute: ({ chargePath }) =>
    correctedFlow(chargePath.turbochargers.massFlowEach, station(chargePath, "filterOutlet"), mapReferences[0]!),
  formula: "\\dot m_c = \\frac{\\dot m}{z_t}\\,\\frac{\\sqrt{T_1/298\\,\\mathrm{K}}}{p_1/100\\,\\mathrm{kPa}}",
  source: "SAE J1826 reference state, 298 K and 100 kPa (from memory)",
  limits: [{ component: "compressors", side: "most", bound: compressorFlowCapacity }],
});

export const compressorOutletTemperature = cell("compressorOutletTemperature", {
  label: "Air leaving the turbochargers",
  kind: "temperature",
  symbol: "T_2",
  from: { chargePath },
  compute: ({ chargePath }) => station(chargePath, "compressorOutlet").temperature,
  formula: "h(T_2) = h(T_1) + \\frac{h(T_{2s}) - h(T_1)}{\\eta_c}",
  source: "first law; isentropic efficiency with variable specific heat",
  assumptions: ["T_2s is where compression without loss would end."],
  limits: [{ component: "compressors", side: "most", bound: compressorOutletLimit }],
});

export const compressorPower = cell("compressorPower", {
  label: "Power of all compressors together",
  kind: "power",
  symbol: "P_c",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.turbochargers.power,
  formula: "P_c = \\dot m\\,(h_2 - h_1)",
  source: "first law",
});

export const intercoolerHeat = cell("intercoolerHeat", {
  label: "Heat taken out by the intercooler",
  kind: "power",
  hint: "heat",
  symbol: "Q_1",
  from: { chargePath },
  compute: ({ chargePath }) => (chargePath.coolerBeforeBlower.heat + chargePath.coolerBeforeBlower.latentHeat) as Power,
  formula: "Q_1 = \\dot m\\,(h_2 - h_3) + \\dot m_{k,1}\\,\\Delta h_v",
  source: "first law; heat of condensation where water falls out",
});

export const blowerInletTemperature = cell("blowerInletTemperature", {
  label: "Air entering the blower",
  kind: "temperature",
  symbol: "T_3",
  from: { chargePath },
  compute: ({ chargePath }) => station(chargePath, "blowerInlet").temperature,
  formula: "T_3 = T_2 - \\epsilon_1\\left(T_2 - T_s - \\frac{Q_2}{C_w}\\right)",
  source: "definition of effectiveness; W. M. Kays, A. L. London, Compact Heat Exchangers (from memory)",
  assumptions: [
    "Sea water reaches this cooler warmed by the aftercooler; air reaches both as it is, so that the last term is then zero.",
  ],
});

export const blowerInletPressure = cell("blowerInletPressure", {
  label: "Pressure before the blower",
  kind: "pressure",
  hint: "boost",
  symbol: "p_3",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.blowerInletPressure,
  formula: "p_3 = \\frac{\\dot m\\,R\\,T_3}{\\eta_{vb}\\,V_b\\,i_b\\,N}",
  source: "conservation of mass",
});

export const blowerPressureRatio = cell("blowerPressureRatio", {
  label: "Pressure ratio of the blower",
  kind: "ratio",
  symbol: "\\pi_b",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.blower.pressureRatio,
  formula: "\\pi_b = \\frac{p_4}{p_3} \\approx 2\\,\\frac{\\eta_{vb}\\,V_b\\,i_b}{\\eta_v\\,V}\\,\\frac{T_5}{T_3}",
  source: "conservation of mass: blower and engine pass the same air",
  assumptions: ["The approximate form leaves out the aftercooler's pressure loss; the value does not."],
  validity: [
    {
      of: "result",
      span: [1, 2.2],
      note: "Lobe blowers are built for ratios up to about 2: common practice, no source.",
    },
  ],
});

export const blowerFilling = cell("blowerFilling", {
  label: "Volumetric efficiency of the blower",
  kind: "fraction",
  symbol: "\\eta_{vb}",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.blower.volumetricEfficiency,
  formula: "\\eta_{vb} = 1 - \\frac{\\dot m_l\\,R\\,T_3}{p_3\\,V_b\\,i_b\\,N}",
  source: "isentropic nozzle flow through the clearances",
  assumptions: [
    "The leak ṁ_l passes the area A_l from p_4 to p_3, at the temperature T_3 [1 + (π_b − 1)(γ − 1)/γ] of a tight lobe blower's outlet.",
  ],
});

export const blowerShaftPower = cell("blowerShaftPower", {
  label: "Power of the blower at its shaft",
  kind: "power",
  symbol: "P_{bl}",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.blower.shaftPower,
  formula:
    "P_{bl} = \\frac{i_b\\,N\\,V_b}{\\eta_{mb}}\\left[\\frac{\\gamma}{\\gamma - 1}\\,p_3\\left(v_i^{\\gamma - 1} - 1\\right) + \\frac{p_4 - p_3\\,v_i^{\\gamma}}{v_i}\\right]",
  source: "T. D. Eastop, A. McConkey, Applied Thermodynamics for Engineering Technologists (from memory)",
  assumptions: [
    "For lobes, v_i = 1, the bracket is p_4 − p_3: the whole displacement is pushed against the pressure behind.",
    "The belt's loss is counted in the mechanical efficiency.",
  ],
});

export const blowerOutletTemperature = cell("blowerOutletTemperature", {
  label: "Air leaving the blower",
  kind: "temperature",
  symbol: "T_4",
  from: { chargePath },
  compute: ({ chargePath }) => station(chargePath, "blowerOutlet").temperature,
  formula: "h(T_4) = h(T_3) + \\frac{\\eta_{mb}\\,P_{bl}}{\\dot m}",
  source: "first law: the work on the whole displacement warms what is delivered",
  assumptions: ["The blower's case loses no heat."],
  limits: [{ component: "blower", side: "most", bound: blowerOutletLimit }],
});

export const aftercoolerHeat = cell("aftercoolerHeat", {
  label: "Heat taken out by the aftercooler",
  kind: "power",
  hint: "heat",
  symbol: "Q_2",
  from: { chargePath },
  compute: ({ chargePath }) => (chargePath.coolerAfterBlower.heat + chargePath.coolerAfterBlower.latentHeat) as Power,
  formula: "Q_2 = \\dot m\\,(h_4 - h_5) + \\dot m_{k,2}\\,\\Delta h_v",
  source: "first law; heat of condensation where water falls out",
});

export const condensate = cell("condensate", {
  label: "Water condensed in the charge coolers",
  kind: "massFlow",
  hint: "small",
  symbol: "\\dot m_k",
  from: { chargePath },
  compute: ({ chargePath }) =>
    (chargePath.coolerBeforeBlower.condensateFlow + chargePath.coolerAfterBlower.condensateFlow) as MassFlow,
  formula:
    "\\dot m_k = \\dot m_{k,1} + \\dot m_{k,2}, \\qquad \\dot m_{k,1} = \\dot m_d\\,\\max\\left(0,\\ w_0 - w_s(T_3, p_3)\\right)",
  source: "ASHRAE Handbook Fundamentals, psychrometrics (from memory)",
  assumptions: [
    "w_s is the humidity ratio of saturated air; the aftercooler's share follows in the same way, from what is left.",
  ],
});

export const manifoldTemperature = cell("manifoldTemperature", {
  label: "Charge temperature in the manifold",
  kind: "temperature",
  symbol: "T_5",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.manifoldTemperature,
  formula: "T_5 = T_4 - \\epsilon_2\\,(T_4 - T_s)",
  source: "definition of effectiveness",
});

export const manifoldPressure = cell("manifoldPressure", {
  label: "Manifold pressure",
  kind: "pressure",
  hint: "boost",
  symbol: "p_5",
  from: { chargePath },
  compute: ({ chargePath }) => chargePath.manifoldPressure,
  formula: "p_5 = p_4 - \\Delta p_2\\left(\\frac{\\dot m}{\\dot m_{k,r}}\\right)^2\\frac{\\rho_{k,r}}{\\rho_{45}}",
  source: "turbulent losses grow with the square of the flow",
  assumptions: ["ρ_45 is the density at the cooler's inlet pressure and mean temperature."],
});

export const boost = cell("boost", {
  label: "Boost, against the air outside",
  kind: "gaugePressure",
  hint: "boost",
  symbol: "p_{5,g}",
  from: { manifoldPressure, ambientPressure },
  compute: ({ manifoldPressure, ambientPressure }) => (manifoldPressure - ambientPressure) as GaugePressure,
  formula: "p_{5,g} = p_5 - p_0",
  source: "definition",
  limits: [{ component: "charge pipes and hoses", side: "most", bound: manifoldPressureLimit }],
});

export const turbochargerShare = cell("turbochargerShare", {
  label: "Share of the pressure rise made by the turbochargers",
  kind: "fraction",
  symbol: "s_c",
  from: { chargePath },
  compute: ({ chargePath }) => shareOf(chargePath, "turbochargers"),
  formula: "s_c = \\frac{\\ln \\pi_c}{\\ln (p_5/p_0)}",
  source: "definition; ratios multiply, so their logarithms add up",
  assumptions: ["The losses of filter and coolers count below zero, so the two shares add up to more than 100 %."],
});

export const blowerShare = cell("blowerShare", {
  label: "Share of the pressure rise made by the blower",
  kind: "fraction",
  symbol: "s_b",
  from: { chargePath },
  compute: ({ chargePath }) => shareOf(chargePath, "blower"),
  formula: "s_b = \\frac{\\ln \\pi_b}{\\ln (p_5/p_0)}",
  source: "definition; ratios multiply, so their logarithms add up",
  assumptions: ["The losses of filter and coolers count below zero, so the two shares add up to more than 100 %."],
});

export const turbineInletTemperature = cell("turbineInletTemperature", {
  label: "Turbine inlet temperature",
  kind: "temperature",
  symbol: "T_6",
  from: { demand },
  compute: ({ demand }) => demand.exhaust.turbineInletTemperature,
  formula:
    "\\dot m_f H_u\\,(1 - \\lambda_{w,u}) + \\dot m\\,h(T_5) = P_b + P_f + P_x + P_{bl} + P_{fp} + \\dot m_{ex}\\,h_{ex}(T_6)",
  source:
    "first law on the gas in the cylinders; J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §12.2 (from memory)",
  assumptions: [
    "Enthalpies count from 25 °C, the temperature at which the fuel arrives.",
    "Between valves and turbines nothing is lost.",
  ],
  limits: [{ component: "turbines", side: "most", bound: turbineInletLimit }],
});

export const expansionRatio = cell("expansionRatio", {
  label: "Expansion ratio of the turbines",
  kind: "ratio",
  symbol: "\\pi_t",
  from: { demand },
  compute: ({ demand }) => demand.exhaust.expansionRatio,
  formula:
    "\\pi_t = \\frac{p_6}{p_7}, \\qquad \\eta_m\\,\\eta_t\\,\\dot m_{ex}\\left[h_{ex}(T_6) - h_{ex}(T_{7s})\\right] = P_c",
  source: "N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (power balance, from memory)",
  assumptions: [
    "T_7s is where expansion without loss from p_6 to p_7 would end.",
    "The whole exhaust passes the turbines; no wastegate is open.",
  ],
});

export const turbineInletPressure = cell("turbineInletPressure", {
  label: "Turbine inlet pressure",
  kind: "pressure",
  hint: "boost",
  symbol: "p_6",
  from: { demand },
  compute: ({ demand }) => demand.exhaust.turbineInletPressure,
  formula:
    "p_6 = \\pi_t\\,p_7, \\qquad p_7 = p_0 + \\Delta p_e\\left(\\frac{\\dot m_{ex}}{\\dot m_{e,r}}\\right)^2\\frac{\\rho_{e,r}}{\\rho_7}",
  source: "definition; turbulent losses grow with the square of the flow",
  assumptions: ["ρ_e,r is the density at T_e,r and the barometer's pressure."],
});

export const backPressureRatio = cell("backPressureRatio", {
  label: "Exhaust pressure over manifold pressure",
  kind: "ratio",
  symbol: "p_6/p_5",
  from: { turbineInletPressure, manifoldPressure },
  compute: ({ turbineInletPressure, manifoldPressure }) => (turbineInletPressure / manifoldPressure) as Ratio,
  formula: "\\frac{p_6}{p_5}",
  source: "definition",
  limits: [{ component: "turbines", side: "most", bound: backPressureRatioLimit }],
});

export const turbineOutletTemperature = cell("turbineOutletTemperature", {
  label: "Turbine outlet temperature",
  kind: "temperature",
  symbol: "T_7",
  from: { demand },
  compute: ({ demand }) => demand.exhaust.turbineOutletTemperature,
  formula: "h_{ex}(T_7) = h_{ex}(T_6) - \\frac{P_c}{\\eta_m\\,\\dot m_{ex}}",
  source: "first law",
});

export const turbineArea = cell("turbineArea", {
  label: "Effective nozzle area that each turbine needs",
  kind: "area",
  symbol: "A_t",
  from: { demand },
  compute: ({ demand }) => {
    const area = demand.exhaust.turbineAreaEach;
    if (area === undefined) {
      throw new RangeError(
        "turbineArea: the blower alone gives more air than is asked for, the turbines do no work and no area follows; ask for more power or more excess air",
      );
    }
    return area;
  },
  formula: "\\frac{\\dot m_{ex}}{z_t} = A_t\\,\\frac{p_6}{\\sqrt{R\\,T_6}}\\,\\psi(\\pi_t)",
  source: "isentropic nozzle flow",
  assumptions: [
    "ψ is the flow function of one nozzle; a real turbine expands in two steps and needs a somewhat larger area.",
  ],
});

export const exhaustFlow = cell("exhaustFlow", {
  label: "Exhaust flow",
  kind: "massFlow",
  symbol: "\\dot m_{ex}",
  from: { demand },
  compute: ({ demand }) => demand.exhaust.flow,
  formula: "\\dot m_{ex} = \\dot m + \\dot m_f",
  source: "conservation of mass",
});

export const peakPressure = cell("peakPressure", {
  label: "Peak cylinder pressure",
  kind: "pressure",
  hint: "boost",
  symbol: "p_{max}",
  from: {
    manifoldPressure,
    effectiveCompressionRatio,
    compressionExponent,
    firingRiseRatio: firingRise,
  },
  compute: peakCylinderPressure,
  formula: "p_{max} = \\alpha\\,p_5\\,\\varepsilon^{\\,n_c}",
  source: "common practice, no source: an estimate until a pressure trace replaces it",
  limits: [{ component: "cylinder head and gasket", side: "most", bound: peakPressureLimit }],
});

export const loopResidual = cell("loopResidual", {
  label: "Loop closed to within",
  kind: "ratio",
  symbol: "r",
  from: { demand },
  compute: ({ demand }) => demand.convergence.residual as Ratio,
  formula: "r = \\frac{\\left|\\eta_i\\,\\dot m_f\\,H_u - P_i\\right|}{P_i}",
  source: "definition",
  assumptions: ["Or the relative gap in the balance of flow along the charge path, if that is the larger."],
});

export const heatBalance = structure("heatBalance", {
  label: "Where the fuel's energy goes",
  from: { demand, frictionHeatToOil, wallHeatToOil, wallHeatRadiated },
  compute: ({ demand, ...split }) => demandHeatBalance(demand, split),
  formula: "\\dot m_f\\,H_u = P_b + P_x + P_{fp} + \\sum Q",
  source: "first law for a steady flow",
  assumptions: [
    "Q stands for jacket, oil, charge coolers, exhaust, radiation, and the losses in the blower's and turbochargers' bearings; each watt counts once.",
    "The heat of condensation is left out here: the exhaust carries it as vapour again.",
  ],
});

function shareOf(
  path: { readonly pressureShares: readonly { key: string; share: Fraction | undefined }[] },
  key: string,
): Fraction {
  const share = path.pressureShares.find((each) => each.key === key)?.share;
  if (share === undefined)
    throw new RangeError("pressure shares: the manifold stands no higher than the open air; there is no rise to share");
  return share;
}
