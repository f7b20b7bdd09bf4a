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

/** A heat into the jacket, and what shares it out. */
export interface JacketHeat
  extends Pick<
    HeatBalancePieces,
    "fuelPower" | "frictionPower" | "frictionHeatToOil" | "wallHeatToOil" | "wallHeatRadiated"
  > {
  /** heat into the jacket water [W] */
  readonly jacketHeat: Power;
}

/**
 * Share of the fuel's power that goes into the walls, from a measured heat into the jacket water [–]: the jacket's line of
 * heatBalance, solved for it: λ = (Q_j − (1 − λ_fo) P_f)/((1 − λ_wo − λ_wr) ṁ_f H_u).
 *
 * @param measured heat, fuel and friction, and how wall and friction heat are shared out [W, –]
 * @throws RangeError if an argument is outside its span, nothing of the walls' heat goes into the jacket, or the share falls outside 0 to 0.6
 * @source first law for a steady flow
 * @example wallShareFromJacket({ jacketHeat: 240e3, fuelPower: 1.95e6, frictionPower: 90e3, frictionHeatToOil: 0.6, wallHeatToOil: 0.18, wallHeatRadiated: 0.08 }) // 0.14137
 */
export function wallShareFromJacket(measured: JacketHeat): Fraction {
  const { jacketHeat, fuelPower, frictionPower, frictionHeatToOil, wallHeatToOil, wallHeatRadiated } = measured;
  requirePositive("wallShareFromJacket: jacketHeat", jacketHeat, "W");
  requirePositive("wallShareFromJacket: fuelPower", fuelPower, "W");
  requireWithin("wallShareFromJacket: frictionHeatToOil", frictionHeatToOil, [0, 1]);
  const toJacket = 1 - wallHeatToOil - wallHeatRadiated;
  requirePositive("wallShareFromJacket: 1 less wallHeatToOil and wallHeatRadiated", toJacket);
  const friction = (1 - frictionHeatToOil) * frictionPower;
  const share = (jacketHeat - friction) / (toJacket * fuelPower);
  if (share >= 0 && share <= 0.6) return share as Fraction;
  const kilowatts = (power: number) => `${(power / 1000).toPrecision(3)} kW`;
  throw new RangeError(
    `wallShareFromJacket: ${kilowatts(jacketHeat)} measured in the jacket, of which ${kilowatts(friction)} is friction, would be ${(100 * share).toFixed(0)} % of the fuel's ${kilowatts(fuelPower)} in the walls; it must be 0 to 60 %: look at both measurements`,
  );
}
