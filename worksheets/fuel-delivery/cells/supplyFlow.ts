import { supplyFlow as supplyFlowOf } from "../../../lib/fuel";
import { cell } from "../../../lib/graph";
import type { MassFlow, VolumeFlow } from "../../../lib/quantity";
import { fuelFlow } from "../../air-demand/cells";
import { coolingFlow, injectorReturn } from "../inputs";
import { fuelDensityAtPump } from "../pumpWork";

export const supplyMassFlow = cell("supplyMassFlow", {
  label: "Supply flow, by mass",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_s",
  from: { fuelFlow, injectorReturn, coolingFlow },
  compute: ({ fuelFlow, injectorReturn, coolingFlow }) =>
    supplyFlowOf({
      injected: fuelFlow,
      injectorReturn: (fuelFlow * injectorReturn) as MassFlow,
      pumpReturn: (fuelFlow * coolingFlow) as MassFlow,
    }).supply,
  formula: "\\dot m_s = \\dot m_f\\,(1 + \\lambda_i + k_s)",
  source: "mass balance",
});

export const supplyVolumeFlow = cell("supplyVolumeFlow", {
  label: "Supply flow, by volume",
  kind: "volumeFlow",
  hint: "fuel",
  symbol: "q_s",
  from: { supplyMassFlow, fuelDensityAtPump },
  compute: ({ supplyMassFlow, fuelDensityAtPump }) => (supplyMassFlow / fuelDensityAtPump) as VolumeFlow,
  formula: "q_s = \\frac{\\dot m_s}{\\rho_f}",
  source: "definition",
});
