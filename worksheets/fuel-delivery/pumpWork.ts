import { fuelDensity } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { Pressure, SpecificEnergy } from "../../lib/quantity";
import { fuelChoice, fuels, fuelTemperature, injectorReturn, pumpMechanicalEfficiency, railPressure } from "./inputs";

/** Pressure at which fuel density is quoted. */
const atmosphere = 101325 as Pressure;

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
