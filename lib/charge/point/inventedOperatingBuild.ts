import type {
  Angle,
  Area,
  Count,
  Fraction,
  Length,
  MassFlow,
  Pressure,
  Ratio,
  RotationalSpeed,
  Temperature,
  ThermalConductance,
  Velocity,
} from "../../quantity/kinds";
import { inventedBuild } from "../inventedBuild";
import { ratedCooling } from "../path/ratedCooler";
import { wheelEstimate } from "../wheel/wheelEstimate";
import type { OperatingBuild } from "./operatingBuild";

const { surroundings, engine, fuel, accessoryPower, fuelPumpWork, exhaustPipe, filter, blower } = inventedBuild;

/**
 * The invented engine of inventedBuild with chosen parts: two turbochargers side by side, estimated from wheel sizes, before
 * its blower. Our own invention: no such parts exist, and no number of them was measured. For examples and tests.
 */
export const inventedOperatingBuild: OperatingBuild = {
  surroundings,
  engine,
  fuel,
  accessoryPower,
  fuelPumpWork,
  exhaustPipe,
  pumpingGainCounts: true,
  path: [
    { kind: "restriction", name: "filter", restriction: filter },
    {
      kind: "compressorBank",
      name: "turbochargers",
      count: 2 as Count,
      compressor: wheelEstimate({
        name: "invented wheel 60/86",
        inducerDiameter: 0.06 as Length,
        exducerDiameter: 0.086 as Length,
        blades: 9 as Count,
        backsweep: 0.6 as Angle,
      }),
      turbine: {
        name: "invented turbine 78",
        entryArea: 8e-4 as Area,
        entries: 2 as Count,
        swallowing: "twoNozzles",
        wheelDiameter: 0.078 as Length,
        peakEfficiency: 0.72 as Fraction,
        peakSpeedRatio: 0.68 as Ratio,
      },
      mechanicalEfficiency: 0.97 as Fraction,
      wastegate: {
        kind: "sprung",
        opensAt: 2.9e5 as Pressure,
        fullyOpenAt: 4.2e5 as Pressure,
        mostFraction: 0.5 as Fraction,
      },
      highestSpeed: 2000 as RotationalSpeed,
      highestTipSpeed: 560 as Velocity,
    },
    {
      kind: "cooler",
      name: "cooler before the blower",
      cooling: ratedCooling(
        {
          massFlow: 1.1 as MassFlow,
          effectiveness: 0.8 as Fraction,
          chargeCapacityRate: 1115 as ThermalConductance,
          sinkCapacityRate: 12e3 as ThermalConductance,
          chargeSideShare: 0.8 as Fraction,
        },
        303 as Temperature,
      ),
      restriction: inventedBuild.coolerBeforeBlower.restriction,
    },
    {
      kind: "blower",
      name: "blower",
      blower,
      bypass: "automatic",
      highestSpeed: 130 as RotationalSpeed,
      highestOutletTemperature: 430 as Temperature,
    },
    {
      kind: "cooler",
      name: "cooler after the blower",
      cooling: { kind: "fixed", effectiveness: 0.75 as Fraction, sinkTemperature: 303 as Temperature },
      restriction: inventedBuild.coolerAfterBlower.restriction,
    },
    { kind: "plenum", name: "manifold" },
  ],
  limits: {
    leastExcessAirRatio: 1.5 as Ratio,
    highestExhaustTemperature: 1020 as Temperature,
    highestBackPressure: 5.5e5 as Pressure,
    highestPeakPressure: 220e5 as Pressure,
  },
};
