import type { AttainablePoint, BankResult, BlowerWork, OperatingPoint } from "../../lib/charge";
import { cell } from "../../lib/graph";
import type { Count, Fraction, MassFlow, Ratio } from "../../lib/quantity";
import { excessAirRatio } from "../air-demand/inputs";
import { backPressureRatioLimit, turbineInletLimit } from "../boost/inputs";
import { ratedPower } from "../brief/cells";
import { blowerTorque } from "../drive-speeds/cells";
import {
  backPressureLimit,
  bankASpeedLimit,
  chokeMarginWanted,
  surgeMarginWanted,
  tipSpeedLimit,
} from "./inputs";
import { attained, matched } from "./solved";

export const attainablePower = cell("attainablePower", {
  label: "Most power that the parts give at the promised speed",
  kind: "power",
  symbol: "P_{at}",
  from: { attained },
  compute: ({ attained }) => {
    requireLoad(attained);
    return attained.binding.brakePower;
  },
  formula: "P_{at} = \\min P_{lim}",
  source: "definition",
  assumptions: ["Where a limit is passed at every load there is no such power."],
  limits: [{ component: "the match", side: "least", bound: ratedPower }],
});

export const powerInHand = cell("powerInHand", {
  label: "Power in hand over the promise",
  kind: "fraction",
  symbol: "m_P",
  from: { attainablePower, ratedPower },
  compute: ({ attainablePower, ratedPower }) => (attainablePower / ratedPower - 1) as Fraction,
  formula: "m_P = \\frac{P_{at}}{P_b} - 1",
  source: "definition",
});

export const nextPower = cell("nextPower", {
  label: "Power at which the next limit is met",
  kind: "power",
  symbol: "P_{at,2}",
  from: { attained },
  compute: ({ attained }) => {
    requireLoad(attained);
    const { next } = attained;
    if (!next || next.brakePower <= 0) {
      throw new RangeError("nextPower: no further limit is in sight behind the first one");
    }
    return next.brakePower;
  },
  formula: "P_{at,2} = P_{at} + \\frac{m_2}{m_2 - m_2'}\\,(P' - P_{at})",
  source: "definition",
  assumptions: [
    "What lifting the first limit, and nothing else, would bring: along the tangent from the first limit to a point with 3 % more fuel, marked ′; m is the room left to the next limit.",
  ],
});

export const matchedPower = cell("matchedPower", {
  label: "Power at the match",
  kind: "power",
  symbol: "P_M",
  from: { matched },
  compute: ({ matched }) => matched.brakePower,
  formula: "P_M = P_b",
  source: "definition",
  assumptions: ["Less than the promise where there is no balance at that power."],
});

export const matchedAirFlow = cell("matchedAirFlow", {
  label: "Air that the parts pass",
  kind: "massFlow",
  symbol: "\\dot m_M",
  from: { matched },
  compute: ({ matched }) => matched.airFlow,
  formula: "\\dot m_M = \\eta_v\\,\\rho_5\\,\\frac{V\\,N}{2}",
  source: "conservation of mass along the path",
  assumptions: ["Vapour of the outside air included, sprayed water not."],
});

export const matchedExcessAir = cell("matchedExcessAir", {
  label: "Excess air ratio at the match",
  kind: "ratio",
  symbol: "\\lambda_M",
  from: { matched },
  compute: ({ matched }) => matched.excessAirRatio,
  formula: "\\lambda_M = \\frac{\\dot m_{dry}}{L_{st}\\,\\dot m_f}",
  source: "definition",
  assumptions: ["The boost sheet takes just the least that is allowed; chosen parts give what they give."],
  limits: [{ component: "the match", side: "least", bound: excessAirRatio }],
});

export const matchedManifoldPressure = cell("matchedManifoldPressure", {
  label: "Manifold pressure that the parts give",
  kind: "pressure",
  hint: "boost",
  symbol: "p_{5M}",
  from: { matched },
  compute: ({ matched }) => matched.manifoldPressure,
  formula: "p_{5M} = p_0 \\prod \\frac{p_{out}}{p_{in}}",
  source: "product over the elements of the path",
});

export const matchedBlowerRatio = cell("matchedBlowerRatio", {
  label: "Pressure ratio of the blower, matched",
  kind: "ratio",
  symbol: "\\pi_{bM}",
  from: { matched },
  compute: ({ matched }) => blowerOf(matched, "matchedBlowerRatio").pressureRatio,
  formula: "\\pi_{bM} = \\frac{p_{out}}{p_{in}}",
  source: "definition; 1 with its bypass open",
});

export const matchedBlowerPower = cell("matchedBlowerPower", {
  label: "Power of the blower at its shaft, matched",
  kind: "power",
  symbol: "P_{blM}",
  from: { matched },
  compute: ({ matched }) => blowerOf(matched, "matchedBlowerPower").shaftPower,
  formula: "P_{blM} = P_{bl}(p_{3M},\\ \\pi_{bM})",
  source: "as on the boost sheet, between the pressures that the parts give",
});

export const matchedBlowerTorque = cell("matchedBlowerTorque", {
  label: "Torque at the blower's shaft, matched",
  kind: "torque",
  symbol: "M_{bM}",
  from: { matched },
  compute: ({ matched }) => blowerOf(matched, "matchedBlowerTorque").shaftTorque,
  formula: "M_{bM} = \\frac{P_{blM}}{2\\pi\\,n_b}",
  source: "definition",
  assumptions: ["The drive sheet sizes its belt for the torque that the promise asks for; here is what the parts take."],
});

export const blowerTorqueOverDrive = cell("blowerTorqueOverDrive", {
  label: "That torque over the one the drive sheet reckons with",
  kind: "ratio",
  symbol: "r_M^b",
  from: { matchedBlowerTorque, blowerTorque },
  compute: ({ matchedBlowerTorque, blowerTorque }) => (matchedBlowerTorque / blowerTorque) as Ratio,
  formula: "r_M^b = \\frac{M_{bM}}{M_{bl}}",
  source: "definition",
  assumptions: ["Above 1 the belt pulls harder than the drive sheet says, in the same proportion."],
  limits: [
    {
      component: "blower belt",
      side: "most",
      bound: 1.1 as Ratio,
      source: "common practice, no source: a tenth, well inside what a belt's service factor covers",
    },
  ],
});

export const matchedBlowerOutlet = cell("matchedBlowerOutlet", {
  label: "Air leaving the blower, matched",
  kind: "temperature",
  symbol: "T_{4M}",
  from: { matched },
  compute: ({ matched }) => blowerOf(matched, "matchedBlowerOutlet").outletTemperature,
  formula: "h(T_{4M}) = h(T_{3M}) + \\frac{\\eta_{mb}\\,P_{blM}}{\\dot m_M}",
  source: "first law",
});

export const matchedCondensate = cell("matchedCondensate", {
  label: "Water condensed in the charge coolers, matched",
  kind: "massFlow",
  hint: "small",
  symbol: "\\dot m_{kM}",
  from: { matched },
  compute: ({ matched: { coolers } }) =>
    coolers.reduce((sum, { condensateFlow }) => sum + condensateFlow, 0) as MassFlow,
  formula: "\\dot m_{kM} = \\sum \\dot m_d\\,\\max\\left(0,\\ w - w_s(T, p)\\right)",
  source: "ASHRAE Handbook Fundamentals, psychrometrics (from memory)",
  assumptions: [
    "Of every cooler in the path, each of the vapour w that those before it have left; it is reckoned, but stays in the stream as vapour, as on the boost sheet.",
  ],
});

export const sprayTaken = cell("sprayTaken", {
  label: "Sprayed water that evaporates",
  kind: "massFlow",
  hint: "small",
  symbol: "\\dot m_e",
  from: { matched },
  compute: ({ matched: { sprays } }) =>
    sprays.reduce((sum, { evaporatedFlow }) => sum + evaporatedFlow, 0) as MassFlow,
  formula: "\\dot m_e = \\min\\left(e_w\\,\\dot m_w,\\ \\dot m_d\\,(w_s - w)\\right)",
  source: "first law; saturation at the wet bulb: ASHRAE Handbook Fundamentals (from memory)",
  assumptions: ["Nothing without a spray in the charge path; never more than the charge can hold."],
});

export const matchedTurbineInletTemperature = cell("matchedTurbineInletTemperature", {
  label: "Exhaust temperature before the turbines, matched",
  kind: "temperature",
  symbol: "T_{6M}",
  from: { matched },
  compute: ({ matched }) => matched.exhaustTemperature,
  formula: "T_{6M} = T_6(\\dot m_M,\\ \\lambda_M)",
  source: "first law on the gas in the cylinders, as on the boost sheet",
  limits: [{ component: "turbines", side: "most", bound: turbineInletLimit }],
});

export const matchedBackPressure = cell("matchedBackPressure", {
  label: "Exhaust pressure before the turbines, matched",
  kind: "pressure",
  hint: "boost",
  symbol: "p_{6M}",
  from: { matched },
  compute: ({ matched }) => matched.backPressure,
  formula: "p_{6M} = p_7 \\prod \\pi_t\\!\\left(\\frac{\\dot m_{ex}\\sqrt{R\\,T}}{A\\,p}\\right)",
  source: "isentropic flow through the turbines' effective areas",
  limits: [{ component: "turbines", side: "most", bound: backPressureLimit }],
});

export const matchedBackPressureRatio = cell("matchedBackPressureRatio", {
  label: "Exhaust pressure over manifold pressure, matched",
  kind: "ratio",
  symbol: "r_{65}",
  from: { matchedBackPressure, matchedManifoldPressure },
  compute: ({ matchedBackPressure, matchedManifoldPressure }) =>
    (matchedBackPressure / matchedManifoldPressure) as Ratio,
  formula: "r_{65} = \\frac{p_{6M}}{p_{5M}}",
  source: "definition",
  limits: [{ component: "turbines", side: "most", bound: backPressureRatioLimit }],
});

const ofFirstBank = {
  from: { matched },
  assumptions: ["Of the first bank; the table above holds every bank."],
} as const;

export const wheelSpeed = cell("wheelSpeed", {
  ...ofFirstBank,
  label: "Turbocharger wheel speed",
  kind: "rotationalSpeed",
  symbol: "n_M",
  compute: ({ matched }) => firstBank(matched, "wheelSpeed").wheelSpeed,
  formula: "n_M = n\\left(\\eta_m\\,P_t = P_c\\right)",
  source: "balance of the shaft",
  limits: [{ component: "turbochargers", side: "most", bound: bankASpeedLimit }],
});

export const wheelTipSpeed = cell("wheelTipSpeed", {
  label: "Tip speed of the compressor wheel",
  kind: "velocity",
  symbol: "u_M",
  from: { matched },
  compute: ({ matched }) => {
    const { tipSpeed } = firstBank(matched, "wheelTipSpeed");
    if (tipSpeed === undefined) throw new RangeError("wheelTipSpeed: the wheel's diameter is not known");
    return tipSpeed;
  },
  formula: "u_M = \\pi\\,d_{2A}\\,n_M",
  source: "definition",
  assumptions: ofFirstBank.assumptions,
  limits: [{ component: "compressors", side: "most", bound: tipSpeedLimit }],
});

export const wheelCorrectedFlow = cell("wheelCorrectedFlow", {
  ...ofFirstBank,
  label: "Corrected flow through one compressor, matched",
  kind: "massFlow",
  symbol: "\\dot m_{cM}",
  compute: ({ matched }) => firstBank(matched, "wheelCorrectedFlow").correctedFlow,
  formula: "\\dot m_{cM} = \\frac{\\dot m_M}{z_t}\\,\\frac{\\sqrt{T_1/298\\,\\mathrm{K}}}{p_1/100\\,\\mathrm{kPa}}",
  source: "SAE J1826 reference state, 298 K and 100 kPa (from memory)",
});

export const wheelPressureRatio = cell("wheelPressureRatio", {
  ...ofFirstBank,
  label: "Pressure ratio of the compressor, matched",
  kind: "ratio",
  symbol: "\\pi_{cM}",
  compute: ({ matched }) => firstBank(matched, "wheelPressureRatio").pressureRatio,
  formula: "\\pi_{cM} = \\pi\\left(\\dot m_{cM},\\ n_{cor}\\right)",
  source: "the compressor's field",
});

export const wheelEfficiency = cell("wheelEfficiency", {
  ...ofFirstBank,
  label: "Efficiency of the compressor, matched",
  kind: "fraction",
  symbol: "\\eta_{cM}",
  compute: ({ matched }) => {
    const { pressureRatio, compressorEfficiency } = firstBank(matched, "wheelEfficiency");
    if (pressureRatio >= 1) return compressorEfficiency;
    throw new RangeError(
      `wheelEfficiency: the compressor throttles, at a pressure ratio of ${pressureRatio.toFixed(3)}; take a larger wheel, or a smaller turbine that spins it faster`,
    );
  },
  formula: "\\eta_{cM} = \\eta\\left(\\dot m_{cM},\\ n_{cor}\\right)",
  source: "the compressor's field",
});

export const turbineEfficiencyMet = cell("turbineEfficiencyMet", {
  ...ofFirstBank,
  label: "Efficiency of the turbine, matched",
  kind: "fraction",
  symbol: "\\eta_{tM}",
  compute: ({ matched }) => firstBank(matched, "turbineEfficiencyMet").turbineEfficiency,
  formula: "\\eta_{tM} = \\eta_A\\left[1 - \\left(\\frac{\\nu - \\nu_A}{\\nu_A}\\right)^2\\right]",
  source: "N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (shape, from memory)",
});

export const wastegatePast = cell("wastegatePast", {
  ...ofFirstBank,
  label: "Exhaust led past the turbine",
  kind: "fraction",
  symbol: "g_M",
  compute: ({ matched }) => firstBank(matched, "wastegatePast").wastegateFraction,
  formula: "g_M = g_A\\,(3 s^2 - 2 s^3), \\qquad s = \\frac{p_2 - p_{oA}}{p_{wA} - p_{oA}}",
  source: "common practice, no source: a smooth opening between two pressures",
});

export const surgeMargin = cell("surgeMargin", {
  ...ofFirstBank,
  label: "Distance from surge",
  kind: "fraction",
  symbol: "m_s",
  compute: ({ matched }) => firstBank(matched, "surgeMargin").surgeMargin,
  formula: "m_s = 1 - \\frac{\\dot m_{surge}}{\\dot m_{cM}}",
  source: "definition, along the line of the wheel's speed",
  limits: [{ component: "compressors", side: "least", bound: surgeMarginWanted }],
});

export const chokeMargin = cell("chokeMargin", {
  ...ofFirstBank,
  label: "Distance from choke",
  kind: "fraction",
  symbol: "m_k",
  compute: ({ matched }) => firstBank(matched, "chokeMargin").chokeMargin,
  formula: "m_k = 1 - \\frac{\\dot m_{cM}}{\\dot m_{choke}}",
  source: "definition, along the line of the wheel's speed",
  limits: [{ component: "compressors", side: "least", bound: chokeMarginWanted }],
});

export const matchResidual = cell("matchResidual", {
  label: "Match closed to within",
  kind: "ratio",
  symbol: "r_M",
  from: { matched },
  compute: ({ matched: { convergence } }) =>
    Math.max(
      convergence.residual,
      Math.abs(convergence.massResidual),
      Math.abs(convergence.energyResidual),
    ) as Ratio,
  formula: "r_M = \\max\\left(\\left|r\\right|, \\left|r_{mass}\\right|, \\left|r_{energy}\\right|\\right)",
  source: "definition",
  assumptions: [
    "r is the largest gap that the solver left; the other two are the balances of mass and energy over the whole engine, taken apart from it.",
  ],
});

export const matchIterations = cell("matchIterations", {
  label: "Steps to the match",
  kind: "count",
  symbol: "k_M",
  from: { matched },
  compute: ({ matched }) => matched.convergence.iterations as Count,
  formula: "k_M = \\text{steps of Newton's method}",
  source: "definition",
});

function requireLoad({ violated, binding }: AttainablePoint): void {
  const [first, ...rest] = violated;
  if (!first) {
    if (binding.brakePower > 0) return;
    throw new RangeError(
      `attainablePower: ${binding.name.toLowerCase()} is met before the engine gives any power; change the part that this limit belongs to, or the limit`,
    );
  }
  const more = rest.length > 0 ? ` (and so are ${rest.map(({ name }) => name.toLowerCase()).join(", ")})` : "";
  throw new RangeError(
    `attainablePower: the limit of ${first.name.toLowerCase()} is passed at every load${more}; change the part or the drive that it belongs to, or the limit, before asking for power`,
  );
}

function firstBank({ banks }: OperatingPoint, name: string): BankResult {
  const bank = banks.find((each) => each.name === "first bank");
  if (!bank) throw new RangeError(`${name}: the first bank does not stand in the charge path; add it there`);
  return bank;
}

function blowerOf({ blowers }: OperatingPoint, name: string): BlowerWork {
  const [blower] = blowers;
  if (!blower) throw new RangeError(`${name}: no blower stands in the charge path; add one there`);
  return blower;
}
