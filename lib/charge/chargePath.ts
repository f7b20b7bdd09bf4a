import { type Gas, moistAir } from "../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type { MassFlow, Ratio, RotationalSpeed } from "../quantity/kinds";
import { balancePath } from "./balancePath";
import type { ChargePath, ChargePathBuild } from "./chargePathBuild";
import { describePath } from "./describePath";

/** A flow of air wanted at a speed. */
export interface WantedAirFlow {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** flow of air into the engine, vapour included [kg/s], above 0 */
  readonly airFlow: MassFlow;
}

/**
 * The charge from the open air to the manifold for a wanted flow of air [Pa, K, W]. Blower and engine each pass a
 * volume, which sets the densities before them, ρ = ṁ/V̇; the turbochargers' pressure ratio follows.
 * Steady flow; heat lost by pipes, pulses, and the water wrung out by the coolers are left out of the stations.
 *
 * @param build everything between the open air and the cylinders
 * @param wanted engine speed and flow of air [rev/s, kg/s]
 * @throws RangeError by name: a ratio below 1 (the blower, or the turbochargers, would be a restriction), or no balance of flow
 * @source conservation of mass; first law on every element
 * @example chargePath(inventedBuild, { engineSpeed: 50, airFlow: 0.8 }).manifoldPressure / 1e5 // 3.195
 */
export function chargePath(build: ChargePathBuild, { engineSpeed, airFlow }: WantedAirFlow): ChargePath {
  requirePositive("chargePath: airFlow", airFlow, "kg/s");
  const gas = chargeOf(build, engineSpeed);
  return describePath(build, gas, engineSpeed, balancePath(build, gas, engineSpeed, { airFlow }));
}

/** A pressure ratio of the turbochargers at a speed. */
export interface GivenTurbochargerRatio {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** outlet over inlet pressure of the compressors [–], 1 to 20 */
  readonly turbochargerPressureRatio: Ratio;
}

/**
 * The charge from the open air to the manifold where the turbochargers hold a pressure ratio [kg/s, Pa, K, W]:
 * the flow of air, and the pressures at which blower and engine settle, follow.
 *
 * @param build everything between the open air and the cylinders
 * @param given engine speed and pressure ratio of the turbochargers [rev/s, –]
 * @throws RangeError by name: the blower would be a restriction, or no balance of flow
 * @source conservation of mass; first law on every element
 * @example chargePathAtTurbochargerRatio(inventedBuild, { engineSpeed: 50, turbochargerPressureRatio: 2 }).airFlow // 0.80075
 */
export function chargePathAtTurbochargerRatio(build: ChargePathBuild, given: GivenTurbochargerRatio): ChargePath {
  const { engineSpeed, turbochargerPressureRatio: turbochargerRatio } = given;
  requireWithin("chargePathAtTurbochargerRatio: turbochargerPressureRatio", turbochargerRatio, [1, 20]);
  const gas = chargeOf(build, engineSpeed);
  return describePath(build, gas, engineSpeed, balancePath(build, gas, engineSpeed, { turbochargerRatio }));
}

/**
 * The charge at idle, where the turbochargers neither help nor hinder [kg/s, Pa, K, W]: a pressure ratio of 1.
 * What blower and engine settle at by themselves; also what they take before the turbochargers wake.
 *
 * @param build everything between the open air and the cylinders
 * @param engineSpeed crankshaft speed [rev/s], above 0
 * @throws RangeError by name: the blower would be a restriction, or no balance of flow
 * @source conservation of mass; first law on every element
 * @example chargePathAtIdle(inventedBuild, 12).airFlow // 0.08097
 */
export function chargePathAtIdle(build: ChargePathBuild, engineSpeed: RotationalSpeed): ChargePath {
  return chargePathAtTurbochargerRatio(build, { engineSpeed, turbochargerPressureRatio: 1 as Ratio });
}

/** The charge of a build, once the build is known to make sense. */
export function chargeOf(build: ChargePathBuild, engineSpeed: RotationalSpeed): Gas {
  requirePositive("chargePath: engineSpeed", engineSpeed, "rev/s");
  requirePositive("chargePath: turbochargers count", build.turbochargers.count);
  requireWithin("chargePath: compressorEfficiency", build.turbochargers.compressorEfficiency, [0.2, 1]);
  requirePositive("chargePath: driveRatio", build.blower.driveRatio);
  requireWithin("chargePath: blower mechanicalEfficiency", build.blower.mechanicalEfficiency, [0.5, 1]);
  requireNotNegative("chargePath: blower windage", build.blower.windage ?? 0, "W/(rev/s)³");
  requireNotNegative("chargePath: sinkWarmingPerWatt", build.sinkWarmingPerWatt, "K/W");
  return moistAir(build.surroundings.humidityRatio);
}
