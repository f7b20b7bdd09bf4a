import type { DemandBuild } from "../../lib/charge";
import { chenFlynnCoefficients } from "../../lib/engine";
import { dryAir } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type { Fraction, PressureDifference, Ratio, Temperature } from "../../lib/quantity";
import {
  excessAirRatio,
  frictionShare,
  indicatedEfficiency,
  valveLoss,
  volumetricEfficiency,
} from "../air-demand/inputs";
import { intakeRestriction } from "../air-demand/intake";
import { exhaustLossCounted } from "../boat-duty/exhaustLoss";
import {
  ambientHumidityRatio,
  ambientPressure,
  ambientTemperature,
  displacement,
  heatCarrier,
  stroke,
} from "../brief/cells";
import { accessoryPower } from "../drive-speeds/accessories";
import { blowerDriveRatio } from "../drive-speeds/ratios";
import { fuelInUse, fuelPumpWork } from "../fuel-delivery/pumpWork";
import { chargeCooledBy, loopTemperature, seaTemperature } from "../marine-cooling/inputs";
import { chargeWaterWarming } from "../marine-cooling/rawWater";
import {
  aftercoolerEffectiveness,
  aftercoolerLoss,
  blowerBuiltInRatio,
  blowerClearance,
  blowerDisplacement,
  blowerMechanicalEfficiency,
  compressionExponent,
  compressorEfficiency,
  coolerRatedDensity,
  coolerRatedFlow,
  effectiveCompressionRatio,
  exhaustRatedFlow,
  exhaustRatedTemperature,
  firingRise,
  intercoolerEffectiveness,
  intercoolerLoss,
  scavengeGainCounts,
  sinkRise,
  turbineEfficiency,
  turbochargerCount,
  turbochargerMechanicalEfficiency,
  wallHeatShare,
} from "./inputs";

export const chargeSinkTemperature = cell("chargeSinkTemperature", {
  label: "Cooling stream reaching the charge coolers",
  kind: "temperature",
  symbol: "T_s",
  from: { heatCarrier, ambientTemperature, sinkRise, seaTemperature, chargeCooledBy, loopTemperature },
  compute: ({ heatCarrier, ambientTemperature, sinkRise, seaTemperature, chargeCooledBy, loopTemperature }) => {
    if (heatCarrier === "air") return (ambientTemperature + sinkRise) as Temperature;
    return (chargeCooledBy === "loop" ? loopTemperature : seaTemperature + sinkRise) as Temperature;
  },
  formula:
    "T_s = T_0 + \\Delta T_s \\text{ with air}, \\quad T_{sea} + \\Delta T_s \\text{ with sea water}, \\quad T_{lt} \\text{ with a loop}",
  source: "definition",
});

/** The build as the demand loop wants it, but for speed and power, with the share of wall heat that is stated. */
export const statedBuild = structure("statedBuild", {
  label: "Engine, charge path and exhaust as stated, gathered",
  from: {
    ambientPressure,
    ambientTemperature,
    ambientHumidityRatio,
    intakeRestriction,
    turbochargerCount,
    compressorEfficiency,
    turbineEfficiency,
    turbochargerMechanicalEfficiency,
    chargeSinkTemperature,
    chargeWaterWarming,
    coolerRatedFlow,
    coolerRatedDensity,
    intercoolerEffectiveness,
    intercoolerLoss,
    aftercoolerEffectiveness,
    aftercoolerLoss,
    blowerDisplacement,
    blowerDriveRatio,
    blowerBuiltInRatio,
    blowerClearance,
    blowerMechanicalEfficiency,
    displacement,
    stroke,
    volumetricEfficiency,
    indicatedEfficiency,
    wallHeatShare,
    effectiveCompressionRatio,
    compressionExponent,
    firingRise,
    frictionShare,
    valveLoss,
    fuelInUse,
    excessAirRatio,
    accessoryPower,
    fuelPumpWork,
    exhaustLossCounted,
    exhaustRatedFlow,
    exhaustRatedTemperature,
    scavengeGainCounts,
  },
  compute: (at): DemandBuild => {
    const cooler = (effectiveness: Fraction, pressureLoss: PressureDifference) => ({
      effectiveness,
      sinkTemperature: at.chargeSinkTemperature,
      restriction: { massFlow: at.coolerRatedFlow, density: at.coolerRatedDensity, pressureLoss },
    });
    return {
      surroundings: {
        pressure: at.ambientPressure,
        temperature: at.ambientTemperature,
        humidityRatio: at.ambientHumidityRatio,
      },
      filter: at.intakeRestriction,
      turbochargers: {
        count: at.turbochargerCount,
        compressorEfficiency: at.compressorEfficiency,
        turbineEfficiency: at.turbineEfficiency,
        mechanicalEfficiency: at.turbochargerMechanicalEfficiency,
      },
      coolerBeforeBlower: cooler(at.intercoolerEffectiveness, at.intercoolerLoss),
      blower: {
        displacementPerTurn: at.blowerDisplacement,
        driveRatio: at.blowerDriveRatio,
        builtInVolumeRatio: at.blowerBuiltInRatio,
        filling: { kind: "clearance", area: at.blowerClearance },
        mechanicalEfficiency: at.blowerMechanicalEfficiency,
      },
      coolerAfterBlower: cooler(at.aftercoolerEffectiveness, at.aftercoolerLoss),
      sinkWarmingPerWatt: at.chargeWaterWarming,
      engine: {
        displacement: at.displacement,
        stroke: at.stroke,
        volumetricEfficiency: at.volumetricEfficiency,
        grossIndicatedEfficiency: at.indicatedEfficiency,
        heatToWallsShare: at.wallHeatShare,
        effectiveCompressionRatio: at.effectiveCompressionRatio,
        compressionExponent: at.compressionExponent,
        firingRiseRatio: at.firingRise,
        friction: scaledFriction(at.frictionShare),
        valveLoss: at.valveLoss,
      },
      fuel: at.fuelInUse,
      excessAirRatio: at.excessAirRatio,
      accessoryPower: at.accessoryPower,
      fuelPumpWork: at.fuelPumpWork,
      exhaustPipe: {
        massFlow: at.exhaustRatedFlow,
        density: dryAir.density(at.exhaustRatedTemperature, at.ambientPressure),
        pressureLoss: at.exhaustLossCounted,
      },
      pumpingGainCounts: at.scavengeGainCounts === "yes",
    };
  },
  formula: "\\text{inputs gathered}",
  source: "definition",
});

/** The published friction line, scaled as a whole. */
export function scaledFriction(share: Fraction) {
  const { constant, perPeakPressure, perPistonSpeed, perPistonSpeedSquared } = chenFlynnCoefficients;
  return {
    constant: (share * constant) as PressureDifference,
    perPeakPressure: (share * perPeakPressure) as Ratio,
    perPistonSpeed: share * perPistonSpeed,
    perPistonSpeedSquared: share * perPistonSpeedSquared,
  };
}
