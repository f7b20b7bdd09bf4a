import { cell, structure } from "../../../lib/graph";
import type { Power } from "../../../lib/quantity";
import { ratedSpeed } from "../../brief/cells";
import { fanEfficiency, vehicleSpeed } from "../inputs";
import { airAt } from "../radiatorAt";
import { radiatorFrom } from "./radiatorFrom";

export const coreAir = structure("coreAir", {
  label: "Air through the radiator's core",
  from: { ...radiatorFrom, ratedSpeed, vehicleSpeed },
  compute: (at) => airAt(at, at.ratedSpeed, at.vehicleSpeed),
  formula:
    "\\Delta p_{f,0}\\left[\\left(\\frac{n_f}{n_{f,r}}\\right)^2 - \\left(\\frac{q}{q_{f,0}}\\right)^2\\right] + r_v\\,\\frac{\\rho v^2}{2} = \\Delta p_{core}\\left(\\frac{q}{q_k}\\right)^2",
  source: "affinity laws; Bernoulli's equation for the wind",
  assumptions: ["Fan and core stated for air of 1.2 kg/m³; both lose pressure in proportion to the density."],
});

export const coreAirFlow = cell("coreAirFlow", {
  label: "Air through the core",
  kind: "volumeFlow",
  symbol: "q",
  from: { coreAir },
  compute: ({ coreAir }) => coreAir.volumeFlow,
  formula: "q = q_k\\sqrt{\\frac{\\Delta p}{\\Delta p_{core}}}",
  source: "operating point of fan and core",
});

export const fanPower = cell("fanPower", {
  label: "Power that the fan takes",
  kind: "power",
  symbol: "P_{fan}",
  from: { coreAir, fanEfficiency },
  compute: ({ coreAir, fanEfficiency }) => (coreAir.airPower / fanEfficiency) as Power,
  formula: "P_{fan} = \\frac{\\Delta p_f\\,q}{\\eta_f}",
  source: "definition of efficiency",
  assumptions: ["Count it among the other accessories on the sheet of the drives, if the crank turns it."],
});
