import { fuelBulkModulus, fuelExpansion, fuelSpecificHeat, fuelViscosity } from "../../../lib/fluid";
import { fuelVapourPressure } from "../../../lib/fuel";
import { cell, structure } from "../../../lib/graph";
import type { BulkModulus, DynamicViscosity, Pressure } from "../../../lib/quantity";
import { fuelTemperature, railPressure } from "../inputs";
import { fuelDensityAtPump, fuelInUse } from "../pumpWork";

export const fuelState = structure("fuelState", {
  label: "The fuel at the pump's inlet and in the rail",
  from: { fuelInUse, fuelTemperature, fuelDensityAtPump, railPressure },
  compute: ({ fuelInUse, fuelTemperature, fuelDensityAtPump, railPressure }) => {
    const modulus = (pressure: number) =>
      fuelBulkModulus(fuelInUse, { temperature: fuelTemperature, pressure: pressure as Pressure });
    const kinematicViscosity = fuelViscosity(fuelInUse, fuelTemperature);
    return {
      density: fuelDensityAtPump,
      kinematicViscosity,
      dynamicViscosity: (kinematicViscosity * fuelDensityAtPump) as DynamicViscosity,
      // The mean over the rise is that at half the pressure.
      meanModulus: modulus(railPressure / 2),
      railModulus: modulus(railPressure),
      specificHeat: fuelSpecificHeat(fuelInUse, fuelTemperature),
      expansion: fuelExpansion(fuelInUse, fuelTemperature),
      vapourPressure: fuelVapourPressure(fuelTemperature),
    };
  },
  formula: "\\rho_f,\\ \\nu_f,\\ K,\\ c_f,\\ \\beta_f,\\ p_{vap} \\text{ at } T_f \\text{ and } p_r",
  source: "ASTM D1250 and D341, Cragoe (1929), AP-42 chapter 7.1, all from memory; see the library's own notes",
  assumptions: [
    "K is the isentropic bulk modulus: its mean on the way to the rail, and its value there.",
    "Air in the fuel, even a hundredth of its volume, would make all of this much softer.",
  ],
});

export const fuelViscosityAtPump = cell("fuelViscosityAtPump", {
  label: "Kinematic viscosity of the fuel at the pump's inlet",
  kind: "kinematicViscosity",
  symbol: "\\nu_f",
  from: { fuelState },
  compute: ({ fuelState }) => fuelState.kinematicViscosity,
  formula: "\\nu_f = \\nu(T_f)",
  source: "ASTM D341 (from memory) through the viscosity at 40 °C",
  validity: [
    {
      of: "result",
      span: [1.4e-6, 8e-6],
      note: "Pumps for diesel fuel want 1.5 to 8 mm²/s at their inlet: common practice, no source.",
    },
  ],
});

export const fuelModulus = cell("fuelModulus", {
  label: "Bulk modulus of the fuel on the way to the rail",
  kind: "bulkModulus",
  symbol: "K_f",
  from: { fuelState },
  compute: ({ fuelState }) => fuelState.meanModulus as BulkModulus,
  formula: "K_f = K\\left(T_f,\\ \\tfrac{1}{2}p_r\\right)",
  source: "own line through figures from memory; compare Tat and Van Gerpen, JAOCS 80 (2003) 1127",
});
