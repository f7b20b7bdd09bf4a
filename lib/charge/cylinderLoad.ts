import {
  chenFlynnCoefficients,
  frictionMeanEffectivePressure,
  frictionPower,
  meanPistonSpeed,
  peakCylinderPressure,
} from "../engine";
import type { Power, Pressure, PressureDifference, RotationalSpeed } from "../quantity/kinds";
import type { DemandEngine } from "./demandBuild";

/** What a manifold pressure does to the cylinders, whatever the fuel. */
export interface CylinderLoad {
  /** estimated highest pressure in the cylinder [Pa] */
  readonly peakPressure: Pressure;
  /** mean effective pressure lost to friction [Pa] */
  readonly frictionMeanEffectivePressure: PressureDifference;
  /** power lost to friction [W] */
  readonly friction: Power;
}

/** Peak pressure and friction of an engine at a speed and manifold pressure. */
export function cylinderLoad(
  engine: DemandEngine,
  engineSpeed: RotationalSpeed,
  manifoldPressure: Pressure,
): CylinderLoad {
  const peakPressure = peakCylinderPressure({
    manifoldPressure,
    effectiveCompressionRatio: engine.effectiveCompressionRatio,
    compressionExponent: engine.compressionExponent,
    firingRiseRatio: engine.firingRiseRatio,
  });
  const friction = frictionMeanEffectivePressure({
    peakPressure,
    meanPistonSpeed: meanPistonSpeed(engine.stroke, engineSpeed),
    coefficients: engine.friction ?? chenFlynnCoefficients,
  });
  return {
    peakPressure,
    frictionMeanEffectivePressure: friction,
    friction: frictionPower({
      frictionMeanEffectivePressure: friction,
      displacement: engine.displacement,
      engineSpeed,
    }),
  };
}
