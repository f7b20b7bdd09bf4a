import { type DieselFuel, fuelDensity, stoichiometricAirFuelRatio } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type { Pressure, SpecificEnergy } from "../../lib/quantity";
import {
  fuelChoice,
  fuelNames,
  fuelTable,
  fuelTemperature,
  injectorReturn,
  pumpMechanicalEfficiency,
  railPressure,
} from "./inputs";

/** Pressure at which fuel density is quoted. */
const atmosphere = 101325 as Pressure;

export const fuelInUse = structure("fuelInUse", {
  label: "The fuel in use",
  from: { fuelChoice, fuelTable },
  compute: ({ fuelChoice, fuelTable }): DieselFuel => {
    const row = fuelTable.find(({ fuel }) => fuel === fuelChoice);
    if (row === undefined) {
      throw new RangeError("fuelInUse: the table of fuels has no row of the fuel chosen; add one, or choose another fuel");
    }
    return {
      name: fuelNames[fuelChoice],
      densityAt15C: row.density,
      kinematicViscosityAt40C: row.viscosity,
      hydrogenToCarbon: row.hydrogen,
      oxygenToCarbon: row.oxygen,
      lowerHeatingValue: row.heatingValue,
    };
  },
  formula: "\\text{row of the table of fuels}",
  source: "as the row says; typical values of EN 590, ISO 8217, EN 15940 and EN 14214, from memory",
  assumptions: ["A batch differs by a per cent or so: the supplier's certificate says by how much."],
});

export const heatingValue = cell("fuelHeatingValue", {
  label: "Lower heating value of the fuel",
  kind: "specificEnergy",
  hint: "fuel",
  symbol: "H_u",
  from: { fuelInUse },
  compute: ({ fuelInUse }) => fuelInUse.lowerHeatingValue,
  formula: "H_u = H_u(\\text{fuel})",
  source: "the table of fuels",
});

export const stoichiometricRatio = cell("stoichiometricRatio", {
  label: "Air that just burns the fuel, for each part of it",
  kind: "ratio",
  symbol: "L_{st}",
  from: { fuelInUse },
  compute: ({ fuelInUse }) => stoichiometricAirFuelRatio(fuelInUse),
  formula: "L_{st} = \\left(1 + \\frac{y}{4} - \\frac{z}{2}\\right)\\frac{M_{air}}{x_{O_2}\\,M_{CH_yO_z}}",
  source: "balance of elements for fuel of the composition CHyOz in the table of fuels",
});

export const fuelDensityAtPump = cell("fuelDensityAtPump", {
  label: "Density of the fuel at the pump's inlet",
  kind: "density",
  hint: "fuel",
  symbol: "\\rho_f",
  from: { fuelInUse, fuelTemperature },
  compute: ({ fuelInUse, fuelTemperature }) =>
    fuelDensity(fuelInUse, { temperature: fuelTemperature, pressure: atmosphere }),
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
