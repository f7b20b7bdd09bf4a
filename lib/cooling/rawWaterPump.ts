import {
  type Fraction,
  type Power,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type RotationalSpeed,
  type VolumeFlow,
  type VolumePerTurn,
} from "../quantity";

export interface ImpellerPumpInputs {
  /** volume carried in one turn without leakage [m³/rev], above 0 */
  readonly displacement: VolumePerTurn;
  /** pump shaft speed [rev/s], 0 or above */
  readonly speed: RotationalSpeed;
  /** delivered over carried volume, at this speed and pressure [–], 0 to 1 */
  readonly volumetricEfficiency: Fraction;
}

/**
 * Delivery of a flexible-impeller or other displacement pump [m³/s]: V̇ = η D n.
 * The efficiency falls as pressure rises and as vanes wear or take a set: a new pump at low pressure has about 0.8–0.9,
 * a season-old one 0.6–0.7 (common practice, no source). Never run a flexible impeller dry.
 *
 * @param pump displacement [m³/rev], speed [rev/s], volumetric efficiency [–]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example impellerPumpFlow({ displacement: 1.2e-4, speed: 30, volumetricEfficiency: 0.85 }) // 0.00306
 */
export function impellerPumpFlow({ displacement, speed, volumetricEfficiency }: ImpellerPumpInputs): VolumeFlow {
  requirePositive("impellerPumpFlow: displacement", displacement, "m³/rev");
  requireNotNegative("impellerPumpFlow: speed", speed, "rev/s");
  requireWithin("impellerPumpFlow: volumetricEfficiency", volumetricEfficiency, [0, 1]);
  return (volumetricEfficiency * displacement * speed) as VolumeFlow;
}

/** One point of a centrifugal pump's curve. */
export interface PumpPoint {
  /** pump shaft speed [rev/s], above 0 */
  readonly speed: RotationalSpeed;
  /** delivery [m³/s], 0 or above */
  readonly volumeFlow: VolumeFlow;
  /** rise of total pressure [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** shaft power [W], 0 or above */
  readonly power: Power;
}

/**
 * The point of a centrifugal pump that answers to a measured one at another speed: flow with the speed, pressure with
 * its square, power with its cube. True along a circuit whose loss goes with the square of the flow and which lifts
 * nothing; efficiency taken as unchanged, cavitation left out.
 *
 * @param measured a point of the pump's curve: speed [rev/s], flow [m³/s], pressure rise [Pa], power [W]
 * @param speed the other shaft speed [rev/s], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source affinity laws of similar flow, any textbook on pumps
 * @example pumpPointAtSpeed({ speed: 30, volumeFlow: 0.004, pressureRise: 90000, power: 600 }, 20).pressureRise // 40000
 */
export function pumpPointAtSpeed(measured: PumpPoint, speed: RotationalSpeed): PumpPoint {
  requirePositive("pumpPointAtSpeed: measured speed", measured.speed, "rev/s");
  requireNotNegative("pumpPointAtSpeed: volumeFlow", measured.volumeFlow, "m³/s");
  requireNotNegative("pumpPointAtSpeed: pressureRise", measured.pressureRise, "Pa");
  requireNotNegative("pumpPointAtSpeed: power", measured.power, "W");
  requireNotNegative("pumpPointAtSpeed: speed", speed, "rev/s");
  const ratio = speed / measured.speed;
  return {
    speed,
    volumeFlow: (measured.volumeFlow * ratio) as VolumeFlow,
    pressureRise: (measured.pressureRise * ratio ** 2) as PressureDifference,
    power: (measured.power * ratio ** 3) as Power,
  };
}
