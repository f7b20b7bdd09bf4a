import { airViscosity, bellmouthDepression, pipePressureLoss, velocityInPipe } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type { RatedRestriction } from "../../lib/engine";
import type { Density, Length, MassFlow, PressureDifference, Ratio } from "../../lib/quantity";
import { ambientDensity, ambientPressure, ambientTemperature } from "../brief/cells";
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
export const ductRoughness = 1.5e-6 as Length;

/** Density of the air in which filters are rated: about 20 °C at sea level; common practice, no source. */
const filterRatedDensity = 1.2 as Density;

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
  formula: "\\Delta p_{a,r} = p_0 - p_t\\left(\\frac{\\dot m_{f,r}}{z_a},\\ d_a,\\ C_a,\\ p_0,\\ T_0\\right)",
  source: "isentropic flow of an ideal gas; discharge coefficient as in ISO 5167-1",
  assumptions: ["p_t is the total pressure left in the meter's tube.", "Dry air."],
});

export const ductRatedLoss = cell("ductRatedLoss", {
  label: "Loss of the ducts at the filter's rated flow",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_{d,r}",
  from: { filterRatedFlow, meterCount, density: ambientDensity, ambientTemperature, ductBore, ductLength, ductBends },
  compute: ({ filterRatedFlow, meterCount, density, ambientTemperature, ductBore, ductLength, ductBends }) => {
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
  formula:
    "\\Delta p_{d,r} = \\left(f\\,\\frac{l_d}{d_d} + \\zeta_d\\right)\\frac{\\rho_0}{2}\\left(\\frac{4\\,\\dot m_{f,r}}{z_a\\,\\rho_0\\,\\pi\\,d_d^2}\\right)^2",
  source: "Darcy and Weisbach; friction factor f after Colebrook (1939)",
  assumptions: [
    "A smooth duct, roughness 1.5 µm: common practice, no source.",
    "f follows the Reynolds number, with the air's viscosity at the temperature outside.",
  ],
});

/** What stands between the open air and the compressors, as one restriction that grows with the square of the flow. */
export const intakeRestriction = structure("intakeRestriction", {
  label: "Meters, ducts and filter as one restriction",
  from: { filterRatedFlow, filterRatedLoss, bellmouthRatedLoss, ductRatedLoss, ambientDensity },
  compute: (at): RatedRestriction => ({
    massFlow: at.filterRatedFlow,
    density: at.ambientDensity,
    pressureLoss: ((at.filterRatedLoss * filterRatedDensity) / at.ambientDensity +
      at.bellmouthRatedLoss +
      at.ductRatedLoss) as PressureDifference,
  }),
  formula:
    "\\Delta p_r = \\Delta p_{f,r}\\,\\frac{1.2\\,\\mathrm{kg/m^3}}{\\rho_0} + \\Delta p_{a,r} + \\Delta p_{d,r} \\text{ at } \\dot m_{f,r}",
  source: "turbulent losses grow with the square of the flow and, at a given mass flow, as the air thins",
  assumptions: ["The filter is rated in air of 1.2 kg/m³."],
});
