import {
  type ClosedCircuit,
  type CoreAir,
  closedCircuit,
  fanAndCore,
  limitingAirTemperature,
  radiatorPerformance,
} from "../../lib/cooling";
import { moistAir } from "../../lib/fluid";
import type {
  Density,
  Fraction,
  Power,
  Ratio,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  TemperatureDifference,
  ThermalConductance,
  Velocity,
  VolumeFlow,
} from "../../lib/quantity";
import { coolantCapacityRate } from "../marine-cooling/circuitState";

/** Air for which fans and cores are measured. */
const standardDensity = 1.2 as Density;

/** Air's specific heat [J/(kg·K)], near 40 °C. */
export const airHeat = 1007 as SpecificHeat;

/** Core, fan and the air outside. */
export interface Radiator {
  readonly radiatorConductance: ThermalConductance;
  readonly radiatorAirStated: VolumeFlow;
  readonly coreLoss: Parameters<typeof fanAndCore>[0]["coreLoss"];
  readonly coreFace: Parameters<typeof fanAndCore>[0]["face"];
  readonly fanShutOff: Parameters<typeof fanAndCore>[0]["fanShutOff"];
  readonly fanOpenFlow: VolumeFlow;
  readonly fanStatedSpeed: RotationalSpeed;
  readonly fanRatio: Ratio;
  readonly ramRecovery: Fraction;
  readonly coreAirRise: TemperatureDifference;
  readonly ambientTemperature: Temperature;
  readonly ambientPressure: Parameters<ReturnType<typeof moistAir>["density"]>[1];
  readonly ambientHumidityRatio: Ratio;
}

/** Air through the core at a speed of the engine and of the vehicle. */
export const airAt = (
  at: Radiator,
  engineSpeed: RotationalSpeed,
  speed: Velocity,
): CoreAir & { readonly density: Density } => {
  const inlet = (at.ambientTemperature + at.coreAirRise) as Temperature;
  const density = moistAir(at.ambientHumidityRatio).density(inlet, at.ambientPressure);
  const air = fanAndCore({
    fanShutOff: at.fanShutOff,
    fanOpenFlow: at.fanOpenFlow,
    fanRatedSpeed: at.fanStatedSpeed,
    fanSpeed: (engineSpeed * at.fanRatio) as RotationalSpeed,
    coreLoss: at.coreLoss,
    coreFlow: at.radiatorAirStated,
    face: at.coreFace,
    vehicleSpeed: speed,
    ramRecovery: at.ramRecovery,
    ratedDensity: standardDensity,
    density,
  });
  return { ...air, density };
};

/** Radiator, and the engine's water that it cools. */
export interface RadiatorCircuit extends Radiator {
  readonly landHeat: Power;
  readonly jacketFlow: VolumeFlow;
  readonly glycolShare: Fraction;
  readonly thermostatOpens: Temperature;
  readonly thermostatSpan: TemperatureDifference;
}

/** The engine's water through the radiator; with a share of the flow where its thermostat is left out. */
export const circuitAt = (
  at: RadiatorCircuit,
  air: CoreAir & { readonly density: Density },
  control?: Fraction,
): ClosedCircuit => {
  const opens = at.thermostatOpens;
  const fullyOpen = (opens + at.thermostatSpan) as Temperature;
  const airMass = air.volumeFlow * air.density;
  return closedCircuit({
    heat: at.landHeat,
    capacityRate: coolantCapacityRate(at.jacketFlow, at.glycolShare, fullyOpen),
    flowRatio: 1 as Ratio,
    control: control ?? { opens, fullyOpen },
    arrangement: "crossflowUnmixed",
    // nearly all the resistance lies on the air's side; thin air counts by its mass
    exchanger: {
      conductance: at.radiatorConductance,
      coldShare: 0.85 as Fraction,
      coldExponent: 0.5,
      hotExponent: 0.8,
    },
    fouling: 0 as Ratio,
    coldInlet: (at.ambientTemperature + at.coreAirRise) as Temperature,
    coldCapacityRate: (airMass * airHeat) as ThermalConductance,
    coldRatio: (airMass / (at.radiatorAirStated * standardDensity)) as Ratio,
  });
};

/** The hottest air at which the water stays at its limit, with the air through the core as it is. */
export function limitingAirOf(
  at: RadiatorCircuit,
  air: CoreAir & { readonly density: Density },
  limit: Temperature,
  { hot }: ClosedCircuit = circuitAt(at, air, 1 as Fraction),
): Temperature {
  const performance = radiatorPerformance({
    heat: at.landHeat,
    coolantInlet: hot,
    airInlet: (at.ambientTemperature + at.coreAirRise) as Temperature,
  });
  return (limitingAirTemperature(performance, at.landHeat, limit) - at.coreAirRise) as Temperature;
}
