import { saturationVapourPressure } from "../fluid";
import {
  type Density,
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

export interface SuctionInputs {
  /** pressure of the air on the sea, or of the gas over a tank, absolute [Pa], above 0 */
  readonly surfacePressure: Pressure;
  /** height of the sea level over the pump inlet [m], −8 to 20; below 0 where the pump must lift */
  readonly levelAbovePump: Length;
  /** temperature of the water [K], 273.16 or above */
  readonly temperature: Temperature;
  /** density of the water [kg/m³], above 0 */
  readonly density: Density;
  /** loss of inlet, seacock, hose and bends [Pa], 0 or above */
  readonly lineLoss: PressureDifference;
  /** loss of the strainer, as dirty as it is allowed to get [Pa], 0 or above */
  readonly strainerLoss: PressureDifference;
}

/**
 * Suction head above boiling that the line leaves at the pump inlet, NPSH available [m]:
 * (p − p_v)/(ρ g) + z − (Δp_line + Δp_strainer)/(ρ g). Below 0 the water would boil in the line.
 * Takes the vapour pressure of fresh water, 2 % above that of sea water; dynamic pressure of the boat's way is left out.
 *
 * @param suction surface pressure [Pa], level [m], temperature [K], density [kg/m³], losses [Pa]
 * @throws RangeError if an argument is outside its span
 * @source definition of net positive suction head, any textbook on pumps
 * @example suctionHead({ surfacePressure: 101325, levelAbovePump: -1, temperature: 305.15, density: 1023, lineLoss: 6000, strainerLoss: 4000 }) // 7.629
 */
export function suctionHead(suction: SuctionInputs): Length {
  const { surfacePressure, levelAbovePump, temperature, density, lineLoss, strainerLoss } = suction;
  requirePositive("suctionHead: surfacePressure", surfacePressure, "Pa");
  requireWithin("suctionHead: levelAbovePump", levelAbovePump, [-8, 20], "m");
  requirePositive("suctionHead: density", density, "kg/m³");
  requireNotNegative("suctionHead: lineLoss", lineLoss, "Pa");
  requireNotNegative("suctionHead: strainerLoss", strainerLoss, "Pa");
  const aboveBoiling = surfacePressure - saturationVapourPressure(temperature) - lineLoss - strainerLoss;
  return (aboveBoiling / (density * gravity) + levelAbovePump) as Length;
}

/**
 * Suction head in hand over what the pump needs at this flow and speed [m]; below 0 the pump cavitates.
 * Half a metre to a metre in hand is usual (common practice, no source).
 *
 * @param suction surface pressure [Pa], level [m], temperature [K], density [kg/m³], losses [Pa]
 * @param needed suction head that the pump needs, NPSH required [m], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source definition of net positive suction head, any textbook on pumps
 * @example suctionMargin({ surfacePressure: 101325, levelAbovePump: -1, temperature: 305.15, density: 1023, lineLoss: 6000, strainerLoss: 4000 }, 4) // 3.629
 */
export function suctionMargin(suction: SuctionInputs, needed: Length): Length {
  requireNotNegative("suctionMargin: needed", needed, "m");
  return (suctionHead(suction) - needed) as Length;
}
