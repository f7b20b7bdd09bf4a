import { airViscosity, bellmouthDepression, dryAir, pipePressureLoss, velocityInPipe } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type { RatedRestriction } from "../../lib/engine";
import type { Length, MassFlow, PressureDifference, Ratio } from "../../lib/quantity";
import { ambientPressure, ambientTemperature } from "../brief/cells";
import {
  bellmouthDischarge,
  ductBends,
  ductBore,
  ductLength,
  filterRatedFlow,
  filterRatedLoss,
  meterBore,
  meterCount,
} from "./inputs";

/** Wall roughness of smooth drawn or moulded duct: common practice, no source. */
const ductRoughness = 1.5e-6 as Length;

export const bellmouthRatedLoss = cell("bellmouthRatedLoss", {
  label: "Loss of bellmouths and meters at the filter's rated flow",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_{a,r}",
  from: { filterRatedFlow, meterCount, ambientPressure, ambientTemperature, meterBore, bellmouthDischarge },
  compute: ({ filterRatedFlow, meterCount, ambientPressure, ambientTemperature, meterBore, bellmouthDischarge }) =>
    bellmouthDepression({
      massFlow: (filterRatedFlow / meterCount) as MassFlow,
      pressure: ambientPressure,
      temperature: ambientTemperature,
      throatDiameter: meterBore,
      dischargeCoefficient: bellmouthDischarge as number as Ratio,
    }).lossOfTotalPressure,
  formula: "\\Delta p_{a,r} = p_0 - p_t\\left(\\dot m_{f,r}/z_a,\\ d_a,\\ C_a\\right)",
  source: "isentropic flow of an ideal gas; discharge coefficient as in ISO 5167-1",
});

export const ductRatedLoss = cell("ductRatedLoss", {
  label: "Loss of the ducts at the filter's rated flow",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_{d,r}",
  from: { filterRatedFlow, meterCount, ambientPressure, ambientTemperature, ductBore, ductLength, ductBends },
  compute: ({ filterRatedFlow, meterCount, ambientPressure, ambientTemperature, ductBore, ductLength, ductBends }) => {
    const density = dryAir.density(ambientTemperature, ambientPressure);
    const massFlow = (filterRatedFlow / meterCount) as MassFlow;
    return pipePressureLoss({
      density,
      velocity: velocityInPipe({ massFlow, density, diameter: ductBore }),
      diameter: ductBore,
      length: ductLength,
      dynamicViscosity: airViscosity(ambientTemperature),
      roughness: ductRoughness,
      lossCoefficient: ductBends,
    });
  },
  formula: "\\Delta p_{d,r} = \\left(f\\,\\frac{l_d}{d_d} + \\zeta_d\\right)\\frac{\\rho\\,v^2}{2}",
  source: "Darcy and Weisbach; friction factor after Colebrook (1939)",
});

/** What stands between the open air and the compressors, as one restriction that grows with the square of the flow. */
export const intakeRestriction = structure("intakeRestriction", {
  label: "Meters, ducts and filter as one restriction",
  from: { filterRatedFlow, filterRatedLoss, bellmouthRatedLoss, ductRatedLoss, ambientTemperature, ambientPressure },
  compute: (at): RatedRestriction => ({
    massFlow: at.filterRatedFlow,
    density: dryAir.density(at.ambientTemperature, at.ambientPressure),
    pressureLoss: (at.filterRatedLoss + at.bellmouthRatedLoss + at.ductRatedLoss) as PressureDifference,
  }),
  formula:
    "\\Delta p = \\left(\\Delta p_{f,r} + \\Delta p_{a,r} + \\Delta p_{d,r}\\right)\\left(\\frac{\\dot m}{\\dot m_{f,r}}\\right)^2\\frac{\\rho_r}{\\rho}",
  source: "turbulent losses grow with the square of the flow",
});
