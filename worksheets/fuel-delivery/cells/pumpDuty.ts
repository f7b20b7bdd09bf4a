import { pumpDelivery, pumpDriveRatio } from "../../../lib/fuel";
import { cell } from "../../../lib/graph";
import type { Count, Fraction, MassFlow, PressureDifference, RotationalSpeed } from "../../../lib/quantity";
import { fuelFlow } from "../../air-demand/cells";
import { ratedSpeed } from "../../brief/cells";
import { fuelPumpDriveRatio } from "../../drive-speeds/ratios";
import { drivenPumps } from "../drivenPumps";
import { injectorReturn, railPressure } from "../inputs";
import { fuelState } from "./fuelAtPump";
import { pumpBuild, pumpDisplacement, pumpLeakFlow, pumpRun } from "./pump";

export const pumpSpeed = cell("fuelPumpSpeed", {
  label: "High-pressure pump speed",
  kind: "rotationalSpeed",
  symbol: "n_f",
  from: { ratedSpeed, fuelPumpDriveRatio },
  compute: ({ ratedSpeed, fuelPumpDriveRatio }) => (ratedSpeed * fuelPumpDriveRatio) as RotationalSpeed,
  formula: "n_f = N\\,i_f",
  source: "definition",
});

export const pumpsFitted = cell("pumpsFitted", {
  label: "High-pressure pumps on the drive sheet",
  kind: "count",
  symbol: "z_{fp}",
  from: { drivenPumps },
  compute: ({ drivenPumps }) => drivenPumps.pumps.length as Count,
  formula: "z_{fp} = \\text{pulleys of that role}",
  source: "definition",
});

export const pumpCapacity = cell("pumpCapacity", {
  label: "Fuel that the pumps can deliver to the rail",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_p",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun.reduce((sum, { delivery }) => sum + delivery, 0) as MassFlow,
  formula: "\\dot m_p = \\sum V_p\\,n_f\\,\\rho_f\\,\\eta_{vp}",
  source: "definition",
});

export const pumpDemand = cell("pumpDemand", {
  label: "Fuel that the rail asks for",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_{rail}",
  from: { fuelFlow, injectorReturn },
  compute: ({ fuelFlow, injectorReturn }) => (fuelFlow * (1 + injectorReturn)) as MassFlow,
  formula: "\\dot m_{rail} = \\dot m_f\\,(1 + \\lambda_i)",
  source: "mass balance of the rail",
  limits: [{ component: "high-pressure pump", side: "most", bound: pumpCapacity }],
});

export const pumpRatioNeeded = cell("pumpRatioNeeded", {
  label: "Drive ratio at which the pumps just keep up",
  kind: "ratio",
  symbol: "i_{f,0}",
  from: { pumpDemand, pumpLeakFlow, pumpsFitted, ratedSpeed, pumpDisplacement, pumpBuild, fuelState, railPressure },
  compute: (at) =>
    pumpDriveRatio({
      demand: ((at.pumpDemand + at.pumpLeakFlow) / at.pumpsFitted) as MassFlow,
      engineSpeed: at.ratedSpeed,
      displacement: at.pumpDisplacement,
      byMass: pumpDelivery({
        deadVolumeShare: at.pumpBuild.deadVolumeShare,
        pressureRise: at.railPressure as number as PressureDifference,
        bulkModulus: at.fuelState.meanModulus,
        leakageShare: 0 as Fraction,
      }).byMass,
      inletDensity: at.fuelState.density,
    }),
  formula:
    "i_{f,0} = \\frac{\\dot m_{rail} + \\dot m_{leak}}{z_{fp}\\,V_p\\,\\rho_f\\,N\\left[1 - \\kappa\\left(e^{p_r/K_f} - 1\\right)\\right]}",
  source: "mass balance; leakage does not change with speed",
});

export const pumpMetering = cell("pumpMetering", {
  label: "Part of a full stroke that the inlet meters",
  kind: "fraction",
  symbol: "\\mu_f",
  from: { pumpDemand, pumpCapacity },
  compute: ({ pumpDemand, pumpCapacity }) => (pumpDemand / pumpCapacity) as Fraction,
  formula: "\\mu_f = \\frac{\\dot m_{rail}}{\\dot m_p}",
  source: "definition",
});
