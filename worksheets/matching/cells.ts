import { type BankResult, type OperatingBuild, type OperatingPoint, operatingPoint } from "../../lib/charge";
import { cell, type StatedCheck, structure } from "../../lib/graph";
import type { Count, Fraction, Power, Ratio, RotationalSpeed } from "../../lib/quantity";
import { backPressureRatioLimit } from "../boost/inputs";
import { ratedPower, ratedSpeed } from "../brief/cells";
import { matchBuild } from "./match";
import { type MetLimits, metLimits } from "./metLimits";

/** Each lighter load that is looked at has as many times the excess air of the one before. */
const lighter = [1.2, 1.4, 1.6, 2] as const;

/** Share of the smoke-limited power up to which the promised point is far enough from it to draw a line between the two. */
const apart = 0.97;

/** Points solved at the promised speed. */
interface MatchPoints {
  /** with the promised power, where the air is enough for it */
  readonly promised: OperatingPoint | undefined;
  /** with as much fuel as its air burns without smoke */
  readonly full: OperatingPoint;
  /** two points or more by rising load, the last one full: as many as it takes to find the first limit between them */
  readonly byLoad: readonly OperatingPoint[];
}

export const matchPoints = structure("matchPoints", {
  label: "The chosen parts at the promised speed, solved",
  from: { matchBuild, ratedSpeed, ratedPower },
  compute: ({ matchBuild, ratedSpeed, ratedPower }) => pointsAt(matchBuild, ratedSpeed, ratedPower),
  formula:
    "\\dot m = \\dot m_{engine} = \\dot m_{blower}, \\quad \\eta_m\\,P_t = P_c, \\quad \\eta_i\\,\\dot m_f\\,H_u = P_b + P_f + P_x + P_{bl} + P_{pump} + P_{fp}",
  source:
    "conservation of mass; first law on every element; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (balance of the shaft, from memory)",
  assumptions: [
    "Solved with the promised power, with as much fuel as the least excess air allows, and, where a limit is met before that, with less.",
    "Steady mean values; the pulses of single cylinders are left out.",
    "Gross indicated and volumetric efficiency are those of the air sheet at every load.",
  ],
});

export const matched = structure("matched", {
  label: "The match: every part at the promised power, or at the most without smoke",
  from: { matchPoints },
  compute: ({ matchPoints: { promised, full } }): OperatingPoint => promised ?? full,
  checks: ({ margins }): readonly StatedCheck[] =>
    margins.map(({ id, name, kind, sense, value, limit }) => ({
      component: componentOf(id),
      label: `${name}, at the match`,
      kind,
      ...(pressures.has(id) && { hint: "boost" }),
      ...(id === "fuelPump" && { hint: "fuel" }),
      side: sense === "at most" ? "most" : "least",
      value,
      bound: limit,
    })),
  formula: "P_b = P_{promise} \\text{ where the air is enough for it}",
  source: "definition",
  assumptions: ["Where the promise asks for more air than the parts give, the point is that of the least excess air."],
});

export const limitsMet = structure("limitsMet", {
  label: "Limits in the order in which more load meets them",
  from: { matchPoints },
  compute: ({ matchPoints: { byLoad } }): MetLimits => metLimits(byLoad),
  formula: "P_{lim} = P_1 + \\frac{m_1}{m_1 - m_2}\\,(P_2 - P_1)",
  source: "straight line between two solved points",
  assumptions: [
    "m is the room left to a limit at two solved points between which it is used up, or towards which it falls. Smoke is exact, the others as good as the line: the figure of power over speed solves each of them.",
  ],
});

export const attainablePower = cell("attainablePower", {
  label: "Most power that the parts give at the promised speed",
  kind: "power",
  symbol: "P_{at}",
  from: { limitsMet },
  compute: ({ limitsMet: { inOrder } }) => {
    const [first] = inOrder;
    if (!first) throw new RangeError("attainablePower: no limit is met as load is added");
    return first.brakePower;
  },
  formula: "P_{at} = \\min P_{lim}",
  source: "definition",
  assumptions: ["A limit that is passed at every load is told by itself, and does not count here."],
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
  from: { limitsMet },
  compute: ({ limitsMet: { inOrder } }) => {
    const next = inOrder[1];
    if (!next) throw new RangeError("nextPower: no second limit is met as load is added");
    return next.brakePower;
  },
  formula: "P_{at,2} = \\min_2 P_{lim}",
  source: "definition",
  assumptions: ["What lifting the first limit, and nothing else, would bring."],
});

export const matchedPower = cell("matchedPower", {
  label: "Power at the match",
  kind: "power",
  symbol: "P_M",
  from: { matched },
  compute: ({ matched }) => matched.brakePower,
  formula: "P_M = P_b",
  source: "definition",
  assumptions: ["Less where the promise asks for more air than the parts give."],
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
  compute: ({ matched }) => {
    const [blower] = matched.blowers;
    if (!blower) throw new RangeError("matchedBlowerRatio: there is no blower in the charge path");
    return blower.pressureRatio;
  },
  formula: "\\pi_{bM} = \\frac{p_{out}}{p_{in}}",
  source: "definition; 1 with its bypass open",
});

export const matchedTurbineInletTemperature = cell("matchedTurbineInletTemperature", {
  label: "Exhaust temperature before the turbines, matched",
  kind: "temperature",
  symbol: "T_{6M}",
  from: { matched },
  compute: ({ matched }) => matched.exhaustTemperature,
  formula: "T_{6M} = T_6(\\dot m_M,\\ \\lambda_M)",
  source: "first law on the gas in the cylinders, as on the boost sheet",
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
  assumptions: ["Of the first bank along the path; the table above holds every bank."],
} as const;

export const wheelSpeed = cell("wheelSpeed", {
  ...ofFirstBank,
  label: "Turbocharger wheel speed",
  kind: "rotationalSpeed",
  symbol: "n_M",
  compute: ({ matched }) => firstBank(matched, "wheelSpeed").wheelSpeed,
  formula: "n_M = n\\left(\\eta_m\\,P_t = P_c\\right)",
  source: "balance of the shaft",
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
  compute: ({ matched }) => firstBank(matched, "wheelEfficiency").compressorEfficiency,
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
});

export const chokeMargin = cell("chokeMargin", {
  ...ofFirstBank,
  label: "Distance from choke",
  kind: "fraction",
  symbol: "m_k",
  compute: ({ matched }) => firstBank(matched, "chokeMargin").chokeMargin,
  formula: "m_k = 1 - \\frac{\\dot m_{cM}}{\\dot m_{choke}}",
  source: "definition, along the line of the wheel's speed",
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

function pointsAt(build: OperatingBuild, engineSpeed: RotationalSpeed, brakePower: Power): MatchPoints {
  const full = operatingPoint(build, { engineSpeed });
  const promised =
    full.brakePower >= brakePower
      ? operatingPoint(build, { engineSpeed, load: { kind: "brakePower", brakePower } })
      : undefined;
  let byLoad = promised && promised.brakePower <= apart * full.brakePower ? [promised, full] : [full];
  for (const factor of lighter) {
    if (byLoad.length > 1 && !metBelow(byLoad)) break;
    const excessAirRatio = (factor * byLoad[0]!.excessAirRatio) as Ratio;
    byLoad = [operatingPoint(build, { engineSpeed, load: { kind: "excessAir", excessAirRatio } }), ...byLoad];
  }
  return { promised, full, byLoad };
}

/** Whether a limit that more load uses up is past already at the lightest of some points. */
function metBelow(byLoad: readonly OperatingPoint[]): boolean {
  const [first] = metLimits(byLoad).inOrder;
  return first !== undefined && first.brakePower < byLoad[0]!.brakePower;
}

function firstBank({ banks }: OperatingPoint, name: string): BankResult {
  const [bank] = banks;
  if (!bank) throw new RangeError(`${name}: there are no turbochargers in the charge path`);
  return bank;
}

const pressures: ReadonlySet<string> = new Set(["backPressure", "peakPressure"]);

const components: Readonly<Record<string, string>> = {
  excessAir: "the match",
  wheelSpeed: "turbochargers",
  tipSpeed: "compressors",
  surge: "compressors",
  choke: "compressors",
  exhaustTemperature: "turbines",
  backPressure: "turbines",
  peakPressure: "cylinder head and gasket",
  blowerSpeed: "blower",
  blowerTipSpeed: "blower",
  blowerTemperature: "blower",
  fuelPump: "high-pressure pump",
  injectionWindow: "injectors",
};

function componentOf(id: string): string {
  return components[id.split(":")[0]!] ?? "the match";
}
