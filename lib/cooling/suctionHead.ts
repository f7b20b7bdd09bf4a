import { type Liquid, saturationVapourPressure } from "../fluid";
import {
  type Length,
  type Pressure,
  type PressureDifference,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Temperature,
} from "../quantity";

/** Standard acceleration of free fall [m/s²], by definition. */
const gravity = 9.80665;

/** Coldest temperature at which the vapour pressure of water is known [K]. */
const iceFree = 273.15;

export interface SuctionInputs {
  /** pressure of the air on the sea, or of the gas over a tank, absolute [Pa], above 0 */
  readonly surfacePressure: Pressure;
  /** height of the sea level over the pump inlet [m], −8 to 20; below 0 where the pump must lift */
  readonly levelAbovePump: Length;
  /** what is pumped */
  readonly liquid: Liquid;
  /** temperature of the liquid [K], within its span */
  readonly temperature: Temperature;
  /** loss of inlet, seacock, hose and bends [Pa], 0 or above */
  readonly lineLoss: PressureDifference;
  /** loss of the strainer, as dirty as it is allowed to get [Pa], 0 or above */
  readonly strainerLoss: PressureDifference;
}

/**
 * Suction head above boiling that the line leaves at the pump inlet, NPSH available [m]:
 * (p − p_v)/(ρ g) + z − (Δp_line + Δp_strainer)/(ρ g). Below 0 the water would boil in the line.
 * Sea water colder than 0 °C is given the vapour pressure of 0 °C, at a cost of less than 1 cm. Pressure from the
 * boat's way and sucked-in air are left out.
 *
 * @param suction surface pressure [Pa], level [m], liquid, temperature [K], losses [Pa]
 * @throws RangeError if an argument is outside its span
 * @source definition of net positive suction head, any textbook on pumps
 * @example suctionHead({ surfacePressure: 101325, levelAbovePump: -1, liquid: water, temperature: 305.15, lineLoss: 6000, strainerLoss: 4000 }) // 7.871
 */
export function suctionHead(suction: SuctionInputs): Length {
  const { surfacePressure, levelAbovePump, liquid, temperature, lineLoss, strainerLoss } = suction;
  requirePositive("suctionHead: surfacePressure", surfacePressure, "Pa");
  requireWithin("suctionHead: levelAbovePump", levelAbovePump, [-8, 20], "m");
  requireNotNegative("suctionHead: lineLoss", lineLoss, "Pa");
  requireNotNegative("suctionHead: strainerLoss", strainerLoss, "Pa");
  const weight = liquid.density(temperature) * gravity;
  const saturation = saturationVapourPressure(Math.max(temperature, iceFree) as Temperature);
  const aboveBoiling = surfacePressure - liquid.vapourPressureRatio * saturation - lineLoss - strainerLoss;
  return (aboveBoiling / weight + levelAbovePump) as Length;
}

/**
 * Suction head in hand over what the pump needs at this flow and speed [m]; below 0 the pump cavitates.
 * Half a metre to a metre in hand is usual (common practice, no source).
 *
 * @param suction surface pressure [Pa], level [m], liquid, temperature [K], losses [Pa]
 * @param needed suction head that the pump needs, NPSH required [m], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source definition of net positive suction head, any textbook on pumps
 * @example suctionMargin({ surfacePressure: 101325, levelAbovePump: -1, liquid: water, temperature: 305.15, lineLoss: 6000, strainerLoss: 4000 }, 4) // 3.871
 */
export function suctionMargin(suction: SuctionInputs, needed: Length): Length {
  requireNotNegative("suctionMargin: needed", needed, "m");
  return (suctionHead(suction) - needed) as Length;
}
