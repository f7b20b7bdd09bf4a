import { fuelMassPerStroke, fuelVolumePerStroke, fullestCylinder } from "../../../lib/fuel";
import { cell } from "../../../lib/graph";
import { fuelFlow } from "../../air-demand/cells";
import { cylinders, ratedSpeed } from "../../brief/cells";
import { cylinderImbalance } from "../inputs";
import { fuelDensityAtPump } from "../pumpWork";

export const fuelPerStroke = cell("fuelPerStroke", {
  label: "Fuel for one stroke, by mass",
  kind: "mass",
  hint: "fuel",
  symbol: "m_f",
  from: { fuelFlow, engineSpeed: ratedSpeed, cylinders },
  compute: fuelMassPerStroke,
  formula: "m_f = \\frac{2\\,\\dot m_f}{N\\,z_c}",
  source: "definition; one working stroke in two turns",
});

export const injectedVolume = cell("injectedVolume", {
  label: "Fuel for one stroke, by volume",
  kind: "volumePerStroke",
  symbol: "V_f",
  from: { fuelPerStroke, fuelDensityAtPump },
  compute: ({ fuelPerStroke, fuelDensityAtPump }) => fuelVolumePerStroke(fuelPerStroke, fuelDensityAtPump),
  formula: "V_f = \\frac{m_f}{\\rho_f}",
  source: "definition",
  assumptions: [
    "Counted at the pump's inlet, unsqueezed, as a flow bench counts it; at rail pressure it is up to a tenth less.",
  ],
});

export const fullestStroke = cell("fullestStroke", {
  label: "Fuel for one stroke of the fullest cylinder",
  kind: "mass",
  hint: "fuel",
  symbol: "m_{f,max}",
  from: { meanMass: fuelPerStroke, imbalance: cylinderImbalance, cylinders },
  compute: (uneven) => fullestCylinder(uneven).fullest,
  formula: "m_{f,max} = m_f\\,(1 + \\delta_z)",
  source: "mass balance; the other cylinders get as much less between them",
});
