import { roadDiesel } from "../fluid";
import type {
  Area,
  Count,
  Density,
  Fraction,
  Length,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  SpecificEnergy,
  Temperature,
  Volume,
  VolumePerTurn,
} from "../quantity/kinds";
import type { DemandBuild } from "./demandBuild";

/**
 * A compound-charged inline six of 10.2 litres, made to give 708 kW at 3200 rev/min.
 * Our own invention: no such engine exists, and no number of it was measured. For examples and tests.
 */
export const inventedBuild: DemandBuild = {
  surroundings: { pressure: 100e3 as Pressure, temperature: 298.15 as Temperature, humidityRatio: 0.01 as Ratio },
  filter: { massFlow: 1.1 as MassFlow, density: 1.16 as Density, pressureLoss: 2500 as PressureDifference },
  turbochargers: {
    count: 2 as Count,
    compressorEfficiency: 0.76 as Fraction,
    turbineEfficiency: 0.68 as Fraction,
    mechanicalEfficiency: 0.97 as Fraction,
  },
  coolerBeforeBlower: {
    effectiveness: 0.8 as Fraction,
    sinkTemperature: 303 as Temperature,
    restriction: { massFlow: 1.1 as MassFlow, density: 2.3 as Density, pressureLoss: 7000 as PressureDifference },
  },
  blower: {
    displacementPerTurn: 4.3e-3 as VolumePerTurn,
    driveRatio: 2 as Ratio,
    builtInVolumeRatio: 1 as Ratio,
    filling: { kind: "clearance", area: 150e-6 as Area },
    mechanicalEfficiency: 0.93 as Fraction,
    windage: 0.002,
  },
  coolerAfterBlower: {
    effectiveness: 0.75 as Fraction,
    sinkTemperature: 303 as Temperature,
    restriction: { massFlow: 1.1 as MassFlow, density: 4 as Density, pressureLoss: 8000 as PressureDifference },
  },
  sinkWarmingPerWatt: 0,
  engine: {
    displacement: 10.2e-3 as Volume,
    stroke: 0.141 as Length,
    volumetricEfficiency: 0.92 as Fraction,
    grossIndicatedEfficiency: 0.46 as Fraction,
    heatToWallsShare: 0.15 as Fraction,
    effectiveCompressionRatio: 13 as Ratio,
    compressionExponent: 1.35 as Ratio,
    firingRiseRatio: 1.35 as Ratio,
  },
  fuel: roadDiesel,
  excessAirRatio: 1.65 as Ratio,
  accessoryPower: 6000 as Power,
  fuelPumpWork: 250e3 as SpecificEnergy,
  exhaustPipe: { massFlow: 1.1 as MassFlow, density: 0.45 as Density, pressureLoss: 6000 as PressureDifference },
  pumpingGainCounts: true,
};
