import type { ExternalLimit, ExternalState } from "../../lib/charge";
import {
  crankAngleOf,
  cylinderPressureDuringInjection,
  fuelMassPerStroke,
  fuelVolumePerStroke,
  injectionDuration,
  nozzleFlow,
  type PlungerPump,
  type PumpDuty,
  pumpAtSpeed,
} from "../../lib/fuel";
import { structure } from "../../lib/graph";
import type {
  Area,
  Count,
  CrankAngle,
  Density,
  Fraction,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Time,
} from "../../lib/quantity";
import { compressionExponent, effectiveCompressionRatio, firingRise } from "../boost/inputs";
import { cylinders } from "../brief/cells";
import { dischargeMet, fuelState, nozzleArea, pumpBuild } from "../fuel-delivery/cells";
import { drivenPumps } from "../fuel-delivery/drivenPumps";
import { injectionWindow, injectorReturn, needleClosing, needleOpening, railPressure } from "../fuel-delivery/inputs";

/** What the fuel system allows at any speed and load, as the operating point wants it. */
export const fuelLimits = structure("fuelLimits", {
  label: "What the fuel pumps deliver and the injectors can inject in time",
  from: {
    cylinders,
    drivenPumps,
    pumpBuild,
    fuelState,
    injectorReturn,
    nozzleArea,
    dischargeMet,
    railPressure,
    needleOpening,
    needleClosing,
    injectionWindow,
    effectiveCompressionRatio,
    compressionExponent,
    firingRise,
  },
  compute: ({ drivenPumps, pumpBuild, fuelState, injectorReturn, ...injector }): readonly ExternalLimit[] => {
    const { density, meanModulus, dynamicViscosity } = fuelState;
    const duty = {
      pressureRise: injector.railPressure as number as PressureDifference,
      bulkModulus: meanModulus,
      inletDensity: density,
      dynamicViscosity,
    };
    const ratios = drivenPumps.pumps.map(({ ratio }) => ratio);
    return [
      new FuelPumpLimit({ pump: pumpBuild, duty, ratios, injectorReturn }),
      new InjectionWindowLimit({ ...injector, density }),
    ];
  },
  formula:
    "\\dot m_f\\,(1 + \\lambda_i) \\le \\sum \\dot m_p(i_f N), \\qquad 360^\\circ N\\left(\\frac{V_f}{q_n} + \\frac{t_{no} + t_{nc}}{2}\\right) \\le \\theta_{lim}",
  source: "the fuel sheet's own relations, asked at any speed and load",
  assumptions: [
    "Rail pressure and the holes' discharge are those of the promised point at all speeds and loads; all fuel at one go.",
  ],
});

interface FuelPumps {
  readonly pump: PlungerPump;
  readonly duty: Omit<PumpDuty, "pumpSpeed">;
  /** turns of each pump in one of the crank [–] */
  readonly ratios: readonly Ratio[];
  readonly injectorReturn: Fraction;
}

/** The pumps deliver what is injected, and what the injectors give back. */
class FuelPumpLimit implements ExternalLimit {
  readonly key = "fuelPump";
  readonly name = "Fuel pump delivery";
  readonly kind = "massFlow";
  private readonly pumps: FuelPumps;
  #last: { readonly engineSpeed: number; readonly delivery: number } | undefined;

  constructor(pumps: FuelPumps) {
    this.pumps = pumps;
  }

  use({ engineSpeed, fuelFlow }: ExternalState) {
    return { value: fuelFlow * (1 + this.pumps.injectorReturn), limit: this.delivery(engineSpeed) };
  }

  /** Delivery of all pumps [kg/s]; that of the last speed is kept, since a solver asks for it again and again. */
  private delivery(engineSpeed: RotationalSpeed): number {
    if (this.#last?.engineSpeed === engineSpeed) return this.#last.delivery;
    const { pump, duty, ratios } = this.pumps;
    let delivery = 0;
    for (const ratio of ratios) {
      delivery += pumpAtSpeed(pump, { ...duty, pumpSpeed: (engineSpeed * ratio) as RotationalSpeed }).delivery;
    }
    this.#last = { engineSpeed, delivery };
    return delivery;
  }
}

interface Injector {
  readonly cylinders: Count;
  readonly density: Density;
  readonly nozzleArea: Area;
  readonly dischargeMet: Ratio;
  readonly railPressure: Pressure;
  readonly needleOpening: Time;
  readonly needleClosing: Time;
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
    const mass = fuelMassPerStroke({ fuelFlow, engineSpeed, cylinders: at.cylinders });
    const { mean } = cylinderPressureDuringInjection({
      manifoldPressure,
      effectiveCompressionRatio: at.effectiveCompressionRatio,
      compressionExponent: at.compressionExponent,
      firingRiseRatio: at.firingRise,
    });
    const time = injectionDuration({
      volumePerStroke: fuelVolumePerStroke(mass, at.density),
      nozzleFlow: nozzleFlow({
        area: at.nozzleArea,
        dischargeCoefficient: at.dischargeMet,
        railPressure: at.railPressure,
        cylinderPressure: mean,
        density: at.density,
      }),
      openingTime: at.needleOpening,
      closingTime: at.needleClosing,
    });
    return { value: crankAngleOf(time, engineSpeed), limit: at.injectionWindow };
  }
}
