import { fuelPumpDriveRatio } from "../drive-speeds/ratios";
import { type Block, drawn, heading, lines, prose } from "../sheet";
import {
  injectionInterval,
  pumpBuild,
  pumpCapacity,
  pumpDemand,
  pumpDisplacement,
  pumpFilling,
  pumpLeakFlow,
  pumpMeanTorque,
  pumpMetering,
  pumpPeakTorque,
  pumpRatioNeeded,
  pumpRun,
  pumpsFitted,
  pumpSpeed,
  railDip,
  railRecovery,
} from "./cells";
import { bestEfficiency, efficientRange, meteringAtIdle } from "./deliverySweep";
import { drivenPumps } from "./drivenPumps";
import {
  deadVolumeShare,
  efficientBand,
  injectorReturn,
  meteringLeast,
  plungerDiameter,
  plungerGap,
  plungerSeal,
  plungerStroke,
  pumpLobes,
  pumpMechanicalEfficiency,
  pumpPlaces,
  pumpPlungers,
  railDipLimit,
  railVolume,
  viscousShare,
} from "./inputs";
import { pumpArrangements } from "./pumpChoice";
import { fuelPumpWork } from "./pumpWork";

const figures = () => import("./figures");

/** Blocks on the high-pressure pump, one or two of them, and the rail. */
export const pumpBlocks: readonly Block[] = [
  heading("High-pressure pump"),
  prose`At ${fuelPumpDriveRatio} times the crank's speed, which the drive sheet sets by its teeth, the pump can deliver ${pumpCapacity}; what is burnt, what leaks and what controls the injectors ask for ${pumpDemand} together. At such pressures the fuel itself yields: part of every stroke only squeezes it.`,
  drawn(figures, "pumpOverSpeed"),
  ...lines(
    pumpPlungers,
    plungerDiameter,
    plungerStroke,
    pumpLobes,
    pumpDisplacement,
    deadVolumeShare,
    plungerGap,
    plungerSeal,
    pumpMechanicalEfficiency,
    viscousShare,
    pumpBuild,
    drivenPumps,
    pumpsFitted,
    pumpSpeed,
    pumpRun,
    pumpFilling,
    pumpLeakFlow,
    injectorReturn,
    pumpDemand,
    pumpCapacity,
    pumpRatioNeeded,
    pumpMetering,
    meteringAtIdle,
    meteringLeast,
    pumpMeanTorque,
    pumpPeakTorque,
    bestEfficiency,
    efficientBand,
    efficientRange,
    fuelPumpWork,
  ),
  heading("One pump or two"),
  prose`A second pump halves what each must give, and lets both turn slower or run at a smaller stroke. It takes a place on the front plate and adds its own peak to the belt; the drive sheet shows where it would hang.`,
  drawn(figures, "pumpsCompared"),
  ...lines(pumpPlaces, pumpArrangements),
  heading("Rail"),
  prose`One injection takes ${railDip} out of the rail, and the pump needs ${railRecovery} of the ${injectionInterval} until the next cylinder's turn to put it back. A larger rail dips less and follows the pedal later.`,
  ...lines(railVolume, railDip, railDipLimit, injectionInterval, railRecovery),
];
