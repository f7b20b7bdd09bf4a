import { fuelVolumePerStroke, railPressureDrop, railRecoveryTime } from "../../../lib/fuel";
import { cell } from "../../../lib/graph";
import type { Time, VolumeFlow } from "../../../lib/quantity";
import { fuelFlow } from "../../air-demand/cells";
import { cylinders, ratedSpeed } from "../../brief/cells";
import { injectorReturn, railDipLimit, railPressure, railVolume } from "../inputs";
import { fuelDensityAtPump } from "../pumpWork";
import { fuelState } from "./fuelAtPump";
import { fullestStroke, injectedVolume } from "./fuelOfStroke";
import { pumpCapacity } from "./pumpDuty";

export const railDip = cell("railDip", {
  label: "Rail pressure lost in one injection",
  kind: "pressureDifference",
  hint: "rail",
  symbol: "\\Delta p_{dip}",
  from: { railVolume, fuelState, fullestStroke, railPressure },
  compute: ({ railVolume, fuelState, fullestStroke, railPressure }) =>
    railPressureDrop({
      railVolume,
      bulkModulus: fuelState.railModulus,
      injectedVolume: fuelVolumePerStroke(
        fullestStroke,
        (fuelState.density * Math.exp(railPressure / fuelState.meanModulus)) as typeof fuelState.density,
      ),
    }),
  formula: "\\Delta p_{dip} = K(T_f, p_r)\\,\\frac{m_{f,max}}{\\rho(T_f, p_r)\\,V_r}",
  source: "definition of the bulk modulus",
  assumptions: [
    "Of the fullest cylinder, before the pump makes any of it good; waves in the rail come on top.",
    "The steel is taken as stiff; its yielding makes 10 to 20 % less of the dip: common practice, no source.",
  ],
  limits: [{ component: "rail", side: "most", bound: railDipLimit }],
});

export const injectionInterval = cell("injectionInterval", {
  label: "Time from one cylinder's injection to the next one's",
  kind: "time",
  hint: "small",
  symbol: "t_z",
  from: { ratedSpeed, cylinders },
  compute: ({ ratedSpeed, cylinders }) => (2 / (ratedSpeed * cylinders)) as Time,
  formula: "t_z = \\frac{2}{N\\,z_c}",
  source: "definition; evenly firing",
});

export const railRecovery = cell("railRecovery", {
  label: "Time in which the pumps fill the rail again",
  kind: "time",
  hint: "small",
  symbol: "t_r",
  from: { injectedVolume, pumpCapacity, fuelFlow, injectorReturn, fuelDensityAtPump },
  compute: ({ injectedVolume, pumpCapacity, fuelFlow, injectorReturn, fuelDensityAtPump }) =>
    railRecoveryTime({
      injectedVolume,
      inflow: (pumpCapacity / fuelDensityAtPump) as VolumeFlow,
      leakage: ((fuelFlow * injectorReturn) / fuelDensityAtPump) as VolumeFlow,
    }),
  formula: "t_r = \\frac{\\rho_f\\,V_f}{\\dot m_p - \\lambda_i\\,\\dot m_f}",
  source: "mass balance",
  assumptions: ["With full strokes, as a controller asks for when the pressure falls."],
  limits: [{ component: "rail", side: "most", bound: injectionInterval }],
});
