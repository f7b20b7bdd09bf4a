import { fuelDensity, stoichiometricAirFuelRatio } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { Pressure, SpecificEnergy } from "../../lib/quantity";
import { fuelChoice, fuels, fuelTemperature, injectorReturn, pumpMechanicalEfficiency, railPressure } from "./inputs";

/** Pressure at which fuel density is quoted. */
const atmosphere = 101325 as Pressure;

export const heatingValue = cell("fuelHeatingValue", {
  label: "Lower heating value of the fuel",
  kind: "specificEnergy",
  hint: "fuel",
  symbol: "H_u",
  from: { fuelChoice },
  compute: ({ fuelChoice }) => fuels[fuelChoice].lowerHeatingValue,
  formula: "H_u = H_u(\\text{fuel})",
  source: "typical of the fuel chosen, from memory",
  assumptions: ["A batch differs by a per cent or so: the supplier's certificate says by how much."],
});

export const stoichiometricRatio = cell("stoichiometricRatio", {
  label: "Air that just burns the fuel, for each part of it",
  kind: "ratio",
  symbol: "L_{st}",
  from: { fuelChoice },
  compute: ({ fuelChoice }) => stoichiometricAirFuelRatio(fuels[fuelChoice]),
  formula: "L_{st} = \\left(1 + \\frac{y}{4} - \\frac{z}{2}\\right)\\frac{M_{air}}{x_{O_2}\\,M_{CH_yO_z}}",
  source: "balance of elements for fuel of the composition CHyOz, typical of the fuel chosen, from memory",
});

export const fuelDensityAtPump = cell("fuelDensityAtPump", {
  label: "Density of the fuel at the pump's inlet",
  kind: "density",
  hint: "fuel",
  symbol: "\\rho_f",
  from: { fuelChoice, fuelTemperature },
  compute: ({ fuelChoice, fuelTemperature }) =>
    fuelDensity(fuels[fuelChoice], { temperature: fuelTemperature, pressure: atmosphere }),
  formula: "\\rho_f = \\rho_{15}\\,VCF(T_f)",
  source: "API MPMS 11.1 / ASTM D1250-80 (from memory)",
  assumptions: ["VCF is the volume correction to 15 °C, at which density is quoted; at atmospheric pressure."],
});

export const fuelPumpWork = cell("fuelPumpWork", {
  label: "Work of the high-pressure pump for each kilogram burnt",
  kind: "specificEnergy",
  symbol: "w_p",
  from: { railPressure, fuelDensityAtPump, pumpMechanicalEfficiency, injectorReturn },
  compute: ({ railPressure, fuelDensityAtPump, pumpMechanicalEfficiency, injectorReturn }) =>
    (((railPressure / fuelDensityAtPump) * (1 + injectorReturn)) / pumpMechanicalEfficiency) as SpecificEnergy,
  formula: "w_p = \\frac{p_r}{\\rho_f}\\,\\frac{1 + \\lambda_i}{\\eta_p}",
  source: "work of raising a liquid's pressure; the pump's inlet is metered, so that only what is used is raised",
  assumptions: ["The small compressibility of the fuel is left out of the work."],
});
