import { type Pressure, type PressureDifference, requireNotNegative, requirePositive, type VolumeFlow } from "../quantity";

/** A lift pump, from two points of its test sheet. */
export interface LiftPump {
  /** pressure rise without flow, or at which its relief valve opens [Pa], at or above the other */
  readonly pressureWithoutFlow: PressureDifference;
  /** pressure rise at the flow below [Pa], 0 or above */
  readonly ratedRise: PressureDifference;
  /** flow at that pressure rise [m³/s], above 0 */
  readonly ratedFlow: VolumeFlow;
}

/**
 * Pressure rise of a lift pump at a flow [Pa]: Δp₀ − (Δp₀ − Δp_r)(q/q_r)², a parabola through two points. Below zero
 * beyond the flow that it gives freely: it would have to be pushed through. Voltage, wear and a strainer's dirt move it.
 *
 * @param pump rises [Pa] and flow [m³/s] of its two points
 * @param flow flow asked about [m³/s], 0 or above
 * @throws RangeError if an argument lies outside its span, or the shut-off rise is below the rated one
 * @source common practice for centrifugal and relieved pumps, no source
 * @example liftPumpRise({ pressureWithoutFlow: 6.5e5, ratedRise: 5.5e5, ratedFlow: 2e-4 }, 1e-4) // 625000
 */
export function liftPumpRise({ pressureWithoutFlow, ratedRise, ratedFlow }: LiftPump, flow: VolumeFlow): PressureDifference {
  requireNotNegative("liftPumpRise: ratedRise", ratedRise, "Pa");
  requirePositive("liftPumpRise: ratedFlow", ratedFlow, "m³/s");
  requireNotNegative("liftPumpRise: flow", flow, "m³/s");
  if (!(pressureWithoutFlow >= ratedRise && pressureWithoutFlow < Number.POSITIVE_INFINITY)) {
    throw new RangeError(
      `liftPumpRise: pressureWithoutFlow is ${bars(pressureWithoutFlow)}; it must be at least the pressure at the rated flow, ${bars(ratedRise)}`,
    );
  }
  return (pressureWithoutFlow - (pressureWithoutFlow - ratedRise) * (flow / ratedFlow) ** 2) as PressureDifference;
}

/** A part of the supply line, and the pressure that it takes or gives at a flow. */
export interface SupplyPart {
  readonly name: string;
  /** change of pressure across it at a flow, negative for a loss [m³/s → Pa] */
  readonly change: (flow: VolumeFlow) => number;
}

/** A place along the supply line. */
export interface SupplyStation {
  readonly name: string;
  /** absolute pressure behind the part of that name [Pa]; below zero it cannot be, and the fuel has parted before */
  readonly pressure: Pressure;
}

/**
 * Absolute pressure behind each part of a supply line [Pa], from the tank on: what each part takes or gives, added up.
 *
 * @param tankPressure absolute pressure on the fuel in the tank [Pa], above 0
 * @param parts the parts, in the order in which the fuel meets them
 * @param flow flow through all of them [m³/s], 0 or above
 * @throws RangeError if the tank's pressure is not above 0 or the flow negative
 * @source sum of losses
 * @example supplyStations(101325, [{ name: "Filter", change: (flow) => -1e9 * flow }], 1e-5)[1].pressure // 91325
 */
export function supplyStations(
  tankPressure: Pressure,
  parts: readonly SupplyPart[],
  flow: VolumeFlow,
): readonly SupplyStation[] {
  requirePositive("supplyStations: tankPressure", tankPressure, "Pa");
  requireNotNegative("supplyStations: flow", flow, "m³/s");
  const stations: SupplyStation[] = [{ name: "Tank", pressure: tankPressure }];
  let pressure: number = tankPressure;
  for (const { name, change } of parts) {
    pressure += change(flow);
    stations.push({ name, pressure: pressure as Pressure });
  }
  return stations;
}

/** In the unit in which lift pumps are read. */
function bars(pressure: number): string {
  return `${Number((pressure / 1e5).toPrecision(4))} bar`;
}
