import type { ExternalLimit, ExternalState } from "../../lib/charge";
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
import type {
  Area,
  Count,
  CrankAngle,
  Density,
  Fraction,
  Pressure,
  Ratio,
  RotationalSpeed,
  Time,
  VolumePerTurn,
} from "../../lib/quantity";
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
  compute: (at): readonly ExternalLimit[] => [new FuelPumpLimit(at), new InjectionWindowLimit(at)],
  formula:
    "\\dot m_f\\,(1 + \\lambda_i) \\le \\dot m_p(N), \\qquad 360^\\circ N\\left(\\frac{V_f}{q_n} + \\frac{t_n}{2}\\right) \\le \\theta_{lim}",
  source: "the fuel sheet's own relations, asked at any speed and load",
  assumptions: ["Rail pressure and the pump's filling are those of the promised point at all speeds and loads."],
});

interface FuelPump {
  readonly fuelPumpDriveRatio: Ratio;
  readonly pumpDisplacement: VolumePerTurn;
  readonly pumpFilling: Fraction;
  readonly fuelDensityAtPump: Density;
  readonly injectorReturn: Fraction;
}

/** The pump delivers what is injected, and what the injectors give back. */
class FuelPumpLimit implements ExternalLimit {
  readonly key = "fuelPump";
  readonly name = "Fuel pump delivery";
  readonly kind = "massFlow";
  private readonly pump: FuelPump;

  constructor({ fuelPumpDriveRatio, pumpDisplacement, pumpFilling, fuelDensityAtPump, injectorReturn }: FuelPump) {
    this.pump = { fuelPumpDriveRatio, pumpDisplacement, pumpFilling, fuelDensityAtPump, injectorReturn };
  }

  use({ engineSpeed, fuelFlow }: ExternalState) {
    const { fuelPumpDriveRatio, pumpDisplacement, pumpFilling, fuelDensityAtPump, injectorReturn } = this.pump;
    return {
      value: fuelFlow * (1 + injectorReturn),
      limit: pumpMassFlow({
        displacement: pumpDisplacement,
        byMass: pumpFilling,
        inletDensity: fuelDensityAtPump,
        pumpSpeed: (engineSpeed * fuelPumpDriveRatio) as RotationalSpeed,
      }),
    };
  }
}

interface Injector {
  readonly cylinders: Count;
  readonly fuelDensityAtPump: Density;
  readonly nozzleArea: Area;
  readonly nozzleDischarge: Fraction;
  readonly railPressure: Pressure;
  readonly needleRamps: Time;
  readonly injectionWindow: CrankAngle;
  readonly effectiveCompressionRatio: Ratio;
  readonly compressionExponent: Ratio;
  readonly firingRise: Ratio;
}

/** The injectors must have done within the crank angle that combustion leaves them. */
class InjectionWindowLimit implements ExternalLimit {
  readonly key = "injectionWindow";
  readonly name = "Injection window";
  readonly kind = "crankAngle";
  private readonly injector: Injector;

  constructor(injector: Injector) {
    this.injector = injector;
  }

  use({ engineSpeed, fuelFlow, manifoldPressure }: ExternalState) {
    const at = this.injector;
    const half = (at.needleRamps / 2) as Time;
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
  }
}
