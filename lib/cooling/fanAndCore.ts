import {
  type Area,
  type Density,
  type Fraction,
  type Power,
  type PressureDifference,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Velocity,
  type VolumeFlow,
} from "../quantity";

/** A fan behind or before a radiator's core, and the wind that helps it. */
export interface FanAndCore {
  /** rise of pressure of the fan without flow, at its rated speed and density [Pa], above 0 */
  readonly fanShutOff: PressureDifference;
  /** flow of the fan without rise, at its rated speed [m³/s], above 0 */
  readonly fanOpenFlow: VolumeFlow;
  /** speed for which these hold [rev/s], above 0 */
  readonly fanRatedSpeed: RotationalSpeed;
  /** speed of the fan [rev/s], 0 or above */
  readonly fanSpeed: RotationalSpeed;
  /** loss of core, grille and bonnet at the reference flow and rated density [Pa], above 0 */
  readonly coreLoss: PressureDifference;
  /** reference flow of that loss [m³/s], above 0 */
  readonly coreFlow: VolumeFlow;
  /** face of the core [m²], above 0 */
  readonly face: Area;
  /** speed of the vehicle through the air [m/s], 0 or above; 0 on a brake */
  readonly vehicleSpeed: Velocity;
  /** share of the stagnation pressure of the wind that reaches the core [–], 0 to 1 */
  readonly ramRecovery: Fraction;
  /** density for which fan and core were measured [kg/m³], above 0 */
  readonly ratedDensity: Density;
  /** density of the air at the core [kg/m³], above 0 */
  readonly density: Density;
}

export interface CoreAir {
  /** air through the core [m³/s] */
  readonly volumeFlow: VolumeFlow;
  /** velocity at its face [m/s] */
  readonly faceVelocity: Velocity;
  /** rise of pressure by the fan [Pa]; below 0 where the wind blows through a fan that brakes it */
  readonly fanRise: PressureDifference;
  /** power that the fan gives to the air [W] */
  readonly airPower: Power;
}

/**
 * Air through a radiator's core [m³/s]: fan and wind against the core's loss,
 * Δp_0 (n/n_r)² − Δp_0 (q/q_0)² + r ρ v²/2 = Δp_k (q/q_k)², all but the wind in proportion to the density.
 * Affinity laws for the fan; the core's loss with the square of the flow (fine cores: a power of 1.7 to 1.9).
 * Air that goes round the fan's tips and back is left out.
 *
 * @param parts fan, core, wind and densities [SI units]
 * @throws RangeError if an argument is outside its span, or neither fan nor wind moves air
 * @source affinity laws; Bernoulli's equation for the wind
 * @example fanAndCore({ fanShutOff: 800, fanOpenFlow: 10, fanRatedSpeed: 40, fanSpeed: 40, coreLoss: 200, coreFlow: 5, face: 0.8, vehicleSpeed: 0, ramRecovery: 0.5, ratedDensity: 1.2, density: 1.2 }).volumeFlow // 7.0711
 */
export function fanAndCore(parts: FanAndCore): CoreAir {
  const { fanShutOff, fanOpenFlow, fanRatedSpeed, fanSpeed, coreLoss, coreFlow, face, vehicleSpeed, density } = parts;
  requirePositive("fanAndCore: fanShutOff", fanShutOff, "Pa");
  requirePositive("fanAndCore: fanOpenFlow", fanOpenFlow, "m³/s");
  requirePositive("fanAndCore: fanRatedSpeed", fanRatedSpeed, "rev/s");
  requireNotNegative("fanAndCore: fanSpeed", fanSpeed, "rev/s");
  requirePositive("fanAndCore: coreLoss", coreLoss, "Pa");
  requirePositive("fanAndCore: coreFlow", coreFlow, "m³/s");
  requirePositive("fanAndCore: face", face, "m²");
  requireNotNegative("fanAndCore: vehicleSpeed", vehicleSpeed, "m/s");
  requireWithin("fanAndCore: ramRecovery", parts.ramRecovery, [0, 1]);
  requirePositive("fanAndCore: ratedDensity", parts.ratedDensity, "kg/m³");
  requirePositive("fanAndCore: density", density, "kg/m³");
  const thinner = density / parts.ratedDensity;
  const ram = (parts.ramRecovery * density * vehicleSpeed ** 2) / 2;
  const pushed = thinner * fanShutOff * (fanSpeed / fanRatedSpeed) ** 2 + ram;
  if (!(pushed > 0)) {
    throw new RangeError("fanAndCore: fan and vehicle both stand still; no air passes the core: give the fan a speed");
  }
  const held = thinner * (fanShutOff / fanOpenFlow ** 2 + coreLoss / coreFlow ** 2);
  const volumeFlow = Math.sqrt(pushed / held);
  const fanRise = thinner * coreLoss * (volumeFlow / coreFlow) ** 2 - ram;
  return {
    volumeFlow: volumeFlow as VolumeFlow,
    faceVelocity: (volumeFlow / face) as Velocity,
    fanRise: fanRise as PressureDifference,
    airPower: Math.max(0, fanRise * volumeFlow) as Power,
  };
}
