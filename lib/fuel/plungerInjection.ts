import {
  type BulkModulus,
  type Energy,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  type Volume,
  type VolumePerStroke,
} from "../quantity";

/** One injection by a plunger of its own, without a rail. */
export interface PlungerInjection {
  /** fuel that leaves the nozzle [m³], above 0 */
  readonly injectedVolume: VolumePerStroke;
  /** volume of barrel, pipe and injector that must be squeezed first [m³], 0 or above */
  readonly trappedVolume: Volume;
  /** bulk modulus of the fuel, mean over the rise [Pa], above 0 */
  readonly bulkModulus: BulkModulus;
  /** from barrel to injection pressure [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** from injection to cylinder pressure [Pa], 0 or above */
  readonly nozzleDrop: PressureDifference;
}

/** What the plunger must do for it. */
export interface PlungerWork {
  /** volume spent on squeezing [m³] */
  readonly compression: VolumePerStroke;
  /** volume that the plunger must displace [m³] */
  readonly plungerVolume: VolumePerStroke;
  /** work of one injection [J] */
  readonly work: Energy;
}

/**
 * Displacement [m³] and work [J] of a plunger that builds up pressure for each injection: ΔV = V_t Δp/K on top of the
 * fuel itself, W = Δp ΔV/2 + Δp_nozzle V. The swelling of pipes, which adds 10 to 20 % to ΔV, and all friction are left out.
 *
 * @param injection volumes [m³], bulk modulus and pressures [Pa]
 * @throws RangeError if an argument lies outside its span
 * @source Ganesan, Internal Combustion Engines, chapter on fuel injection (attribution from memory)
 * @example plungerInjection({ injectedVolume: 1.234568e-7, trappedVolume: 9e-6, bulkModulus: 1.25e9, pressureRise: 299e5, nozzleDrop: 260e5 }).work // 6.42831
 */
export function plungerInjection(injection: PlungerInjection): PlungerWork {
  const { injectedVolume, trappedVolume, bulkModulus, pressureRise, nozzleDrop } = injection;
  requirePositive("plungerInjection: injectedVolume", injectedVolume, "m³");
  requireNotNegative("plungerInjection: trappedVolume", trappedVolume, "m³");
  requirePositive("plungerInjection: bulkModulus", bulkModulus, "Pa");
  requireNotNegative("plungerInjection: pressureRise", pressureRise, "Pa");
  requireNotNegative("plungerInjection: nozzleDrop", nozzleDrop, "Pa");
  const compression = (trappedVolume * pressureRise) / bulkModulus;
  return {
    compression: compression as VolumePerStroke,
    plungerVolume: (injectedVolume + compression) as VolumePerStroke,
    work: ((pressureRise * compression) / 2 + nozzleDrop * injectedVolume) as Energy,
  };
}
