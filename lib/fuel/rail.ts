import {
  type BulkModulus,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  type Time,
  type Volume,
  type VolumeFlow,
  type VolumePerStroke,
} from "../quantity";

/** A volume of fuel under pressure. */
export interface Rail {
  /** volume of rail and pipes [m³], above 0 */
  readonly railVolume: Volume;
  /** bulk modulus of the fuel at that pressure [Pa], above 0 */
  readonly bulkModulus: BulkModulus;
}

/** A rail and what flows in and out. */
export interface FedRail extends Rail {
  /** volume flow in, at rail pressure [m³/s], 0 or above */
  readonly inflow: VolumeFlow;
  /** volume flow out, at rail pressure [m³/s], 0 or above */
  readonly outflow: VolumeFlow;
}

/** A rail and what one injection takes from it. */
export interface TappedRail extends Rail {
  /** injected volume, at rail pressure [m³], 0 or above */
  readonly injectedVolume: VolumePerStroke;
}

/**
 * Rate at which pressure in a rail rises [Pa/s]: K (Q_in − Q_out)/V; negative where it falls. The bulk modulus is taken
 * as constant, the rail as stiff.
 *
 * @param rail volume [m³], bulk modulus [Pa] and both flows [m³/s]
 * @throws RangeError if an argument lies outside its span
 * @source definition of the bulk modulus
 * @example railPressureRate({ railVolume: 25e-6, bulkModulus: 1.4e9, inflow: 2e-5, outflow: 6.6666667e-6 }) // 7.46667e8
 */
export function railPressureRate({ railVolume, bulkModulus, inflow, outflow }: FedRail): number {
  requirePositive("railPressureRate: railVolume", railVolume, "m³");
  requirePositive("railPressureRate: bulkModulus", bulkModulus, "Pa");
  requireNotNegative("railPressureRate: inflow", inflow, "m³/s");
  requireNotNegative("railPressureRate: outflow", outflow, "m³/s");
  return (bulkModulus * (inflow - outflow)) / railVolume;
}

/**
 * Fall of pressure in a rail that one injection causes before the pump makes it good [Pa]: K V_inj/V.
 *
 * @param rail volume [m³], bulk modulus [Pa] and injected volume [m³]
 * @throws RangeError if an argument lies outside its span
 * @source definition of the bulk modulus
 * @example railPressureDrop({ railVolume: 25e-6, bulkModulus: 1.4e9, injectedVolume: 120e-9 }) // 6720000
 */
export function railPressureDrop({ railVolume, bulkModulus, injectedVolume }: TappedRail): PressureDifference {
  requirePositive("railPressureDrop: railVolume", railVolume, "m³");
  requirePositive("railPressureDrop: bulkModulus", bulkModulus, "Pa");
  requireNotNegative("railPressureDrop: injectedVolume", injectedVolume, "m³");
  return ((bulkModulus * injectedVolume) / railVolume) as PressureDifference;
}

/** What one injection took, and what refills the rail. */
export interface RailRefill {
  /** volume taken, at rail pressure [m³], 0 or above */
  readonly injectedVolume: VolumePerStroke;
  /** volume flow that the pump can give, at rail pressure [m³/s], above what leaks */
  readonly inflow: VolumeFlow;
  /** volume flow that injectors leak and return, at rail pressure [m³/s], 0 or above */
  readonly leakage: VolumeFlow;
}

/**
 * Time in which a pump makes good what one injection took [s]: V/(Q_pump − Q_leak). A mean over the pump's strokes; waves
 * in the rail, and the part that flows in while fuel is still going out, are left out.
 *
 * @param refill volume [m³] and both flows [m³/s]
 * @throws RangeError if an argument lies outside its span, or what flows in does not exceed what leaks
 * @source mass balance
 * @example railRecoveryTime({ injectedVolume: 120e-9, inflow: 5e-5, leakage: 1e-5 }) // 0.003
 */
export function railRecoveryTime({ injectedVolume, inflow, leakage }: RailRefill): Time {
  requireNotNegative("railRecoveryTime: injectedVolume", injectedVolume, "m³");
  requireNotNegative("railRecoveryTime: leakage", leakage, "m³/s");
  requirePositive("railRecoveryTime: inflow", inflow, "m³/s");
  if (!(inflow > leakage)) {
    throw new RangeError(
      `railRecoveryTime: inflow is ${Number(inflow.toPrecision(6))} m³/s; it must exceed the leakage, ${Number(leakage.toPrecision(6))} m³/s, or the rail never recovers`,
    );
  }
  return (injectedVolume / (inflow - leakage)) as Time;
}
