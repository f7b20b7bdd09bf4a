import { brentRoot } from "../numeric";
import { type Pressure, requirePositive, type VolumeFlow } from "../quantity";
import { type SupplyPart, supplyStations } from "./liftPump";

/** A supply line, and what its end must still have. */
export interface SupplyReach {
  /** absolute pressure on the fuel in the tank [Pa], above 0 */
  readonly tankPressure: Pressure;
  /** the parts, in the order in which the fuel meets them; together they give less as the flow grows */
  readonly parts: readonly SupplyPart[];
  /** least absolute pressure behind the last of them [Pa], above 0 */
  readonly leastPressure: Pressure;
  /** flow beyond which is not looked [m³/s], above 0 */
  readonly highestFlow: VolumeFlow;
}

/**
 * Flow at which the pressure behind a supply line has fallen to the least that it may be [m³/s]: where the lift pump's
 * curve crosses the line's. 0 if the pressure is too low even without flow; the highest flow looked at if it is not
 * reached below.
 *
 * @param reach pressures [Pa], parts and the highest flow [m³/s]
 * @throws RangeError if a pressure or the highest flow is not above 0
 * @source intersection of both curves
 * @example supplyReach({ tankPressure: 1e5, parts: [{ name: "Pump", change: () => 5e5 }, { name: "Line", change: (flow) => -1e13 * flow ** 2 }], leastPressure: 5e5, highestFlow: 1e-3 }) // 0.0001
 */
export function supplyReach({ tankPressure, parts, leastPressure, highestFlow }: SupplyReach): VolumeFlow {
  requirePositive("supplyReach: leastPressure", leastPressure, "Pa");
  requirePositive("supplyReach: highestFlow", highestFlow, "m³/s");
  const room = (flow: number) => supplyStations(tankPressure, parts, flow as VolumeFlow).at(-1)!.pressure - leastPressure;
  if (room(0) <= 0) return 0 as VolumeFlow;
  if (room(highestFlow) >= 0) return highestFlow;
  return brentRoot(room, [0, highestFlow], { tolerance: 1e-8 * highestFlow, name: "supplyReach" }).root as VolumeFlow;
}
