import { meteredTorque } from "../../../lib/fuel";
import { cell } from "../../../lib/graph";
import type { MassFlow } from "../../../lib/quantity";
import { pumpRun } from "./pump";
import { pumpCapacity, pumpDemand, pumpSpeed } from "./pumpDuty";

export const pumpMeanTorque = cell("pumpMeanTorque", {
  label: "Mean torque at a pump's shaft",
  kind: "torque",
  symbol: "M_{fp}",
  from: { pumpRun, pumpDemand, pumpCapacity, pumpSpeed },
  compute: ({ pumpRun, pumpDemand, pumpCapacity, pumpSpeed }) => {
    const full = pumpRun[0]!;
    if (pumpDemand > pumpCapacity) return full.meanTorque;
    return meteredTorque({ demand: ((pumpDemand * full.delivery) / pumpCapacity) as MassFlow, full, pumpSpeed });
  },
  formula:
    "M_{fp} = \\frac{\\mu_f\\,\\dot m_p + \\dot m_{leak}}{2\\pi\\,n_f\\,z_{fp}\\,\\eta_p}\\,\\frac{K_f}{\\rho_f}\\left(1 - e^{-p_r/K_f}\\right)",
  source: "first law",
  assumptions: [
    "The air sheet charges the work of a stiff liquid instead, some per cent more, and the leakage not at all.",
    "A pump that cannot keep up runs full.",
  ],
});

export const pumpPeakTorque = cell("pumpPeakTorque", {
  label: "Highest torque in a turn of a pump",
  kind: "torque",
  symbol: "M_{fp,max}",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun[0]!.peakTorque,
  formula:
    "M_{fp,max} = \\frac{V_p\\,p_r}{2\\pi\\,\\eta_p}\\,\\frac{\\pi}{z_p}\\,\\frac{\\sin(m\\pi/z_p)}{\\sin(\\pi/z_p)}",
  source: "sum of half waves of the plungers",
  assumptions: [
    "m is the number of plungers that press together, half of them rounded up.",
    "Strokes follow each other evenly on a cam of sine shape; the belt and its pulleys must bear the peak.",
  ],
});
