import { dryAir, type Gas } from "../fluid";
import { requirePositive } from "../quantity/guard";
import type {
  Count,
  Density,
  Fraction,
  Length,
  MassFlow,
  Pressure,
  Ratio,
  Temperature,
  Velocity,
} from "../quantity/kinds";

/** Air meters side by side, and what they have to read. */
export interface MeterBank {
  /** flow of air through all meters together [kg/s], above 0 */
  readonly airFlow: MassFlow;
  /** number of meters side by side [–], above 0 */
  readonly meters: Count;
  /** highest flow that one meter reads [kg/s], above 0 */
  readonly meterCapacity: MassFlow;
}

/** How hard each meter of a bank works. */
export interface MeterLoad {
  /** flow through one meter [kg/s] */
  readonly flowPerMeter: MassFlow;
  /** that flow over the highest it reads [–] */
  readonly load: Fraction;
  /** what is left of its span, negative when it is overrun [–] */
  readonly headroom: Fraction;
}

/**
 * Load of each of several air meters in parallel, and what is left of its span [kg/s, –]; the flow is taken as shared
 * alike, which holds for equal ducts only. A negative headroom is an answer: the meter is overrun.
 *
 * @param bank air flow, number of meters and capacity of one [kg/s, –, kg/s]
 * @throws RangeError if an argument is not above zero
 * @source definition
 * @example airMeterLoad({ airFlow: 1.2, meters: 3, meterCapacity: 0.5 }).headroom // 0.2
 */
export function airMeterLoad({ airFlow, meters, meterCapacity }: MeterBank): MeterLoad {
  requirePositive("airMeterLoad: airFlow", airFlow, "kg/s");
  requirePositive("airMeterLoad: meters", meters);
  requirePositive("airMeterLoad: meterCapacity", meterCapacity, "kg/s");
  const flowPerMeter = airFlow / meters;
  const load = flowPerMeter / meterCapacity;
  return { flowPerMeter: flowPerMeter as MassFlow, load: load as Fraction, headroom: (1 - load) as Fraction };
}

/**
 * Turn-down that a meter must span [–]: highest over idle air flow. Few meters read well below a tenth of their span.
 *
 * @param highestAirFlow flow at full power [kg/s], above 0
 * @param idleAirFlow flow at idle, through as many meters [kg/s], above 0
 * @throws RangeError if a flow is not above zero
 * @source definition
 * @example meterTurnDown(1.2, 0.06) // 20
 */
export function meterTurnDown(highestAirFlow: MassFlow, idleAirFlow: MassFlow): Ratio {
  requirePositive("meterTurnDown: highestAirFlow", highestAirFlow, "kg/s");
  requirePositive("meterTurnDown: idleAirFlow", idleAirFlow, "kg/s");
  return (highestAirFlow / idleAirFlow) as Ratio;
}

/** Gas in a round duct. */
export interface DuctFlow {
  /** flow through the duct [kg/s], above 0 */
  readonly massFlow: MassFlow;
  /** static pressure in it [Pa], above 0 */
  readonly pressure: Pressure;
  /** static temperature in it [K], above 0 */
  readonly temperature: Temperature;
  /** inside diameter [m], above 0 */
  readonly diameter: Length;
  /** what flows [–]; dry air if left out */
  readonly gas?: Gas;
}

/** How fast a gas moves in a duct. */
export interface DuctSpeed {
  /** mean velocity over the cross-section [m/s] */
  readonly velocity: Velocity;
  /** velocity over the local speed of sound [–] */
  readonly machNumber: Ratio;
  /** density of the gas [kg/m³] */
  readonly density: Density;
}

/**
 * Mean velocity and Mach number of a gas in a round duct [m/s, –]: v = ṁ/(ρ π/4 d²), M = v/a.
 *
 * @param duct flow, pressure, temperature, diameter and gas [kg/s, Pa, K, m]
 * @throws RangeError if an argument is not above zero
 * @source conservation of mass
 * @example ductSpeed({ massFlow: 0.48, pressure: 1e5, temperature: 298.15, diameter: 0.1016 }).velocity // 50.67
 */
export function ductSpeed({ massFlow, pressure, temperature, diameter, gas = dryAir }: DuctFlow): DuctSpeed {
  requirePositive("ductSpeed: massFlow", massFlow, "kg/s");
  requirePositive("ductSpeed: pressure", pressure, "Pa");
  requirePositive("ductSpeed: temperature", temperature, "K");
  requirePositive("ductSpeed: diameter", diameter, "m");
  const density = gas.density(temperature, pressure);
  const velocity = massFlow / (density * (Math.PI / 4) * diameter ** 2);
  return {
    velocity: velocity as Velocity,
    machNumber: (velocity / gas.speedOfSound(temperature)) as Ratio,
    density,
  };
}
