import type { ExternalLimit } from "../../lib/charge";
import {
  crankAngleOf,
  cylinderPressureDuringInjection,
  fuelMassPerStroke,
  fuelVolumePerStroke,
  injectionDuration,
  nozzleFlow,
  pumpMassFlow,
} from "../../lib/fuel";
import { structure } from "../../lib/graph";
import type { Ratio, RotationalSpeed, Time } from "../../lib/quantity";
import { compressionExponent, effectiveCompressionRatio, firingRise } from "../boost/inputs";
import { cylinders } from "../brief/cells";
import { fuelPumpDriveRatio } from "../drive-speeds/ratios";
import { nozzleArea, pumpDisplacement, pumpFilling } from "../fuel-delivery/cells";
import { injectionWindow, injectorReturn, needleRamps, nozzleDischarge, railPressure } from "../fuel-delivery/inputs";
import { fuelDensityAtPump } from "../fuel-delivery/pumpWork";

/** What the fuel system allows at any speed and load, as the operating point wants it. */
export const fuelLimits = structure("fuelLimits", {
  label: "What the fuel pump delivers and the injectors can inject in time",
  from: {
    cylinders,
    fuelPumpDriveRatio,
    pumpDisplacement,
    pumpFilling,
    fuelDensityAtPump,
    injectorReturn,
    nozzleArea,
    nozzleDischarge,
    railPressure,
    needleRamps,
    injectionWindow,
    effectiveCompressionRatio,
    compressionExponent,
    firingRise,
  },
  compute: (at): readonly ExternalLimit[] => {
    const half = (at.needleRamps / 2) as Time;
    return [
      {
        key: "fuelPump",
        name: "Fuel pump delivery",
        kind: "massFlow",
        use: ({ engineSpeed, fuelFlow }) => ({
          value: fuelFlow * (1 + at.injectorReturn),
          limit: pumpMassFlow({
            displacement: at.pumpDisplacement,
            byMass: at.pumpFilling,
            inletDensity: at.fuelDensityAtPump,
            pumpSpeed: (engineSpeed * at.fuelPumpDriveRatio) as RotationalSpeed,
          }),
        }),
      },
      {
        key: "injectionWindow",
        name: "Injection window",
        kind: "crankAngle",
        use: ({ engineSpeed, fuelFlow, manifoldPressure }) => {
          const mass = fuelMassPerStroke({ fuelFlow, engineSpeed, cylinders: at.cylinders });
          const { mean } = cylinderPressureDuringInjection({
            manifoldPressure,
            effectiveCompressionRatio: at.effectiveCompressionRatio,
            compressionExponent: at.compressionExponent,
            firingRiseRatio: at.firingRise,
          });
          const time = injectionDuration({
            volumePerStroke: fuelVolumePerStroke(mass, at.fuelDensityAtPump),
            nozzleFlow: nozzleFlow({
              area: at.nozzleArea,
              dischargeCoefficient: at.nozzleDischarge as number as Ratio,
              railPressure: at.railPressure,
              cylinderPressure: mean,
              density: at.fuelDensityAtPump,
            }),
            openingTime: half,
            closingTime: half,
          });
          return { value: crankAngleOf(time, engineSpeed), limit: at.injectionWindow };
        },
      },
    ];
  },
  formula:
    "\\dot m_f\\,(1 + \\lambda_i) \\le \\dot m_p(N), \\qquad 360^\\circ N\\left(\\frac{V_f}{q_n} + \\frac{t_n}{2}\\right) \\le \\theta_{lim}",
  source: "the fuel sheet's own relations, asked at any speed and load",
  assumptions: ["Rail pressure and the pump's filling are those of the promised point at all speeds and loads."],
});
