import { mixedTemperature, returnHeat, throttlingRise } from "../../../lib/fuel";
import { cell } from "../../../lib/graph";
import type { MassFlow, PressureDifference, Temperature } from "../../../lib/quantity";
import { fuelFlow } from "../../air-demand/cells";
import { coolingFlow, fuelTemperature, injectorReturn, railPressure } from "../inputs";
import { fuelState } from "./fuelAtPump";
import { pumpLeakFlow } from "./pump";
import { supplyMassFlow } from "./supplyFlow";

export const fuelReturnFlow = cell("fuelReturnFlow", {
  label: "Fuel that comes back",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_b",
  from: { supplyMassFlow, fuelFlow },
  compute: ({ supplyMassFlow, fuelFlow }) => (supplyMassFlow - fuelFlow) as MassFlow,
  formula: "\\dot m_b = \\dot m_s - \\dot m_f",
  source: "mass balance",
});

export const returnTemperature = cell("returnTemperature", {
  label: "Fuel coming back, mixed",
  kind: "temperature",
  symbol: "T_r",
  from: { railPressure, fuelTemperature, fuelState, fuelFlow, injectorReturn, coolingFlow, pumpLeakFlow },
  compute: (at) => {
    const rise = throttlingRise({
      pressureDrop: at.railPressure as number as PressureDifference,
      temperature: at.fuelTemperature,
      density: at.fuelState.density,
      specificHeat: at.fuelState.specificHeat,
      expansion: at.fuelState.expansion,
    });
    const own = at.fuelFlow * at.coolingFlow - at.pumpLeakFlow;
    if (own < 0) {
      throw new RangeError(
        `returnTemperature: ${perHour(at.pumpLeakFlow)} leaks past the plungers and only ${perHour(at.fuelFlow * at.coolingFlow)} is passed back to the tank; let more pass, or narrow the gap`,
      );
    }
    return mixedTemperature([
      {
        massFlow: (at.fuelFlow * at.injectorReturn + at.pumpLeakFlow) as MassFlow,
        temperature: (at.fuelTemperature + rise) as Temperature,
      },
      { massFlow: own as MassFlow, temperature: at.fuelTemperature },
    ]);
  },
  formula:
    "T_r = T_f + \\frac{\\lambda_i\\,\\dot m_f + \\dot m_{leak}}{(\\lambda_i + k_s)\\,\\dot m_f}\\,\\frac{p_r\\,(1 - \\beta_f\\,T_f)}{\\rho_f\\,c_f}",
  source: "first law for steady flow; Joule–Thomson coefficient of a liquid",
  assumptions: [
    "β_f is the fuel's thermal expansion and c_f its specific heat, both at T_f.",
    "Only what the injectors return and what leaks past the plungers has fallen from rail pressure; the rest of the pump's own return has not been raised to it.",
    "The pump's friction heats the fuel as well, which is left out.",
  ],
});

export const fuelReturnHeat = cell("fuelReturnHeat", {
  label: "Heat that the fuel brings back",
  kind: "power",
  hint: "heat",
  symbol: "Q_f",
  from: { fuelReturnFlow, returnTemperature, fuelTemperature, fuelState },
  compute: (at) =>
    returnHeat({
      massFlow: at.fuelReturnFlow,
      specificHeat: at.fuelState.specificHeat,
      temperatureRise: (at.returnTemperature - at.fuelTemperature) as Parameters<
        typeof returnHeat
      >[0]["temperatureRise"],
    }),
  formula: "Q_f = \\dot m_b\\,c_f\\,(T_r - T_f)",
  source: "first law",
});

const perHour = (flow: number) => `${(flow * 3600).toFixed(1)} kg/h`;
