import { pipePressureLoss } from "../fluid";
import {
  type Density,
  type DynamicViscosity,
  type Length,
  type MassFlow,
  type PressureDifference,
  type Ratio,
  requireNotNegative,
  requirePositive,
  type VolumeFlow,
} from "../quantity";
import { pipeVelocity } from "./pipeVelocity";

/** Standard acceleration of free fall [m/s²], by definition. */
const gravity = 9.80665;

export interface WetExhaustLine {
  /** gas and vapour in the hose [m³/s], above 0 */
  readonly gasVolumeFlow: VolumeFlow;
  /** gas and vapour by mass [kg/s], above 0 */
  readonly gasFlow: MassFlow;
  /** viscosity of the gas [Pa·s], above 0 */
  readonly dynamicViscosity: DynamicViscosity;
  /** inside diameter of hose and outlet [m], above 0 */
  readonly bore: Length;
  /** length of the hose [m], 0 or above */
  readonly length: Length;
  /** bends, lift box, silencer and outlet in velocity heads of the gas [–], 0 or above */
  readonly lossCoefficient: Ratio;
  /** height to which the gas carries the water behind the lift box [m], 0 or above */
  readonly lift: Length;
  /** density of the water carried [kg/m³], above 0 */
  readonly waterDensity: Density;
}

/** Roughness of a rubber hose [m]: common practice, no source. */
const hoseRoughness = 1e-4 as Length;

/**
 * Back pressure of a wet exhaust [Pa]: (f L/d + K) ρ v²/2 of the gas, and the column that it lifts, ρ_w g h.
 * The water's own drag in the hose is left out; a lift box that is not blown dry holds a full column while the engine
 * idles, which is what is counted here. Pulses of the single cylinders are left out.
 *
 * @param line flows, hose and lift [SI units]
 * @throws RangeError if an argument is outside its span
 * @source Darcy–Weisbach equation and hydrostatics
 * @example wetExhaustLoss({ gasVolumeFlow: 0.8, gasFlow: 0.85, dynamicViscosity: 2e-5, bore: 0.2, length: 4, lossCoefficient: 3, lift: 0.3, waterDensity: 1020 }) // 4160.73
 */
export function wetExhaustLoss(line: WetExhaustLine): PressureDifference {
  const { gasVolumeFlow, gasFlow, dynamicViscosity, bore, length, lossCoefficient, lift, waterDensity } = line;
  requirePositive("wetExhaustLoss: gasVolumeFlow", gasVolumeFlow, "m³/s");
  requirePositive("wetExhaustLoss: gasFlow", gasFlow, "kg/s");
  requireNotNegative("wetExhaustLoss: lift", lift, "m");
  requirePositive("wetExhaustLoss: waterDensity", waterDensity, "kg/m³");
  const drag = pipePressureLoss({
    density: (gasFlow / gasVolumeFlow) as Density,
    velocity: pipeVelocity(gasVolumeFlow, bore),
    diameter: bore,
    dynamicViscosity,
    length,
    roughness: hoseRoughness,
    lossCoefficient,
  });
  return (drag + waterDensity * gravity * lift) as PressureDifference;
}
