import { requirePositive, requireWithin } from "../quantity/guard";
import type { Fraction, Power } from "../quantity/kinds";

/** The pieces into which the power of the fuel goes, and how the heat of the metal is shared out. */
export interface HeatBalancePieces {
  /** fuel flow times lower heating value [W], above 0 */
  readonly fuelPower: Power;
  /** power at the flywheel [W] */
  readonly brakePower: Power;
  /** power of alternator, pumps and fan at the crank [W] */
  readonly accessoryPower: Power;
  /** power of the high-pressure fuel pump at the crank [W] */
  readonly fuelPumpPower: Power;
  /** power lost to friction, all of which turns to heat [W] */
  readonly frictionPower: Power;
  /** heat from the gas to cylinder, head and port walls [W] */
  readonly heatToWalls: Power;
  /** heat given up in all charge coolers [W] */
  readonly chargeCoolerHeat: Power;
  /** heat that leaves with the exhaust after the turbine, above that of the air that came in [W] */
  readonly exhaustHeat: Power;
  /** power lost in the blower's bearings, gears and seals [W] */
  readonly blowerMechanicalLoss: Power;
  /** power lost in the turbochargers' bearings [W] */
  readonly turbochargerMechanicalLoss: Power;
  /** part of the friction that heats oil, the rest the jacket [–], 0 to 1 */
  readonly frictionHeatToOil: Fraction;
  /** part of the wall heat that piston cooling and bearings pass to the oil [–], 0 to 1 */
  readonly wallHeatToOil: Fraction;
  /** part of the wall heat that leaves from the engine's surface [–], 0 to 1 */
  readonly wallHeatRadiated: Fraction;
}

/** One line of a heat balance. */
export interface HeatShare {
  /** short name for programs */
  readonly key: string;
  /** name for readers */
  readonly name: string;
  /** power [W] */
  readonly power: Power;
  /** that power over the fuel's [–] */
  readonly share: Fraction;
}

/** Where the power of the fuel goes. */
export interface HeatBalance {
  /** lines in the order in which a reader wants them; neither oil nor charge coolers are inside "coolant jacket" */
  readonly parts: readonly HeatShare[];
  /** fuel power less all lines [W]: 0 but for rounding, if every piece came from one consistent point */
  readonly unaccounted: Power;
}

/**
 * Shares of the fuel's power [W, –]: brake, accessories, fuel pump, coolant jacket, oil, charge coolers, exhaust,
 * radiation, and the mechanical losses of blower and turbochargers. Nothing is made to fit: what is missing is told.
 * Blower and pumping power are no lines of their own: they come back as charge heat and exhaust.
 *
 * @param pieces powers and heats, and how wall and friction heat are shared out [W, –]
 * @throws RangeError if the fuel power is not above zero, or a share outside 0 to 1, or wall shares exceed 1 together
 * @source first law for a steady flow
 * @example heatBalance({ fuelPower: 100, brakePower: 40, accessoryPower: 1, fuelPumpPower: 1, frictionPower: 5, heatToWalls: 15, chargeCoolerHeat: 8, exhaustHeat: 29, blowerMechanicalLoss: 0.5, turbochargerMechanicalLoss: 0.5, frictionHeatToOil: 0.6, wallHeatToOil: 0.2, wallHeatRadiated: 0.1 }).unaccounted // 0
 */
export function heatBalance(pieces: HeatBalancePieces): HeatBalance {
  const { fuelPower, frictionPower, heatToWalls, frictionHeatToOil, wallHeatToOil, wallHeatRadiated } = pieces;
  requirePositive("heatBalance: fuelPower", fuelPower, "W");
  requireWithin("heatBalance: frictionHeatToOil", frictionHeatToOil, [0, 1]);
  requireWithin("heatBalance: wallHeatToOil", wallHeatToOil, [0, 1]);
  requireWithin("heatBalance: wallHeatRadiated", wallHeatRadiated, [0, 1]);
  requireWithin("heatBalance: wallHeatToOil and wallHeatRadiated together", wallHeatToOil + wallHeatRadiated, [0, 1]);

  const radiation = wallHeatRadiated * heatToWalls;
  const oil = frictionHeatToOil * frictionPower + wallHeatToOil * heatToWalls;
  const jacket = frictionPower + heatToWalls - oil - radiation;
  const lines: readonly (readonly [key: string, name: string, power: number])[] = [
    ["brake", "Brake", pieces.brakePower],
    ["accessories", "Accessories", pieces.accessoryPower],
    ["fuelPump", "Fuel pump", pieces.fuelPumpPower],
    ["jacket", "Coolant jacket", jacket],
    ["oil", "Oil", oil],
    ["chargeCoolers", "Charge coolers", pieces.chargeCoolerHeat],
    ["exhaust", "Exhaust after the turbine", pieces.exhaustHeat],
    ["radiation", "Radiation and convection", radiation],
    ["blowerLoss", "Blower bearings and gears", pieces.blowerMechanicalLoss],
    ["turbochargerLoss", "Turbocharger bearings", pieces.turbochargerMechanicalLoss],
  ];
  const accounted = lines.reduce((sum, [, , power]) => sum + power, 0);
  return {
    parts: lines.map(([key, name, power]) => ({
      key,
      name,
      power: power as Power,
      share: (power / fuelPower) as Fraction,
    })),
    unaccounted: (fuelPower - accounted) as Power,
  };
}
