import { requireNotNegative, requirePositive } from "../quantity/guard";
import type { Density, MassFlow, PressureDifference } from "../quantity/kinds";

/** One measured point of a filter, cooler, silencer or duct. */
export interface RatedRestriction {
  /** flow at which the loss was measured [kg/s], above 0 */
  readonly massFlow: MassFlow;
  /** gas density at which it was measured [kg/m³], above 0 */
  readonly density: Density;
  /** pressure lost there [Pa], 0 or above */
  readonly pressureLoss: PressureDifference;
}

/**
 * Pressure lost in a restriction, scaled from its rated point [Pa]: Δp = Δp_r (ṁ/ṁ_r)² ρ_r/ρ.
 * Turbulent flow with a constant loss coefficient; fine cooler passages follow a power nearer 1.8.
 *
 * @param rated flow, density and loss of the rated point [kg/s, kg/m³, Pa]
 * @param massFlow flow through the restriction [kg/s], 0 or above
 * @param density gas density in it [kg/m³], above 0
 * @throws RangeError if an argument is outside its span
 * @source similarity of turbulent losses (Darcy–Weisbach)
 * @example restrictionLoss({ massFlow: 0.6, density: 1.2, pressureLoss: 2000 }, 0.9, 1.1) // 4909.091
 */
export function restrictionLoss(rated: RatedRestriction, massFlow: MassFlow, density: Density): PressureDifference {
  requirePositive("restrictionLoss: rated massFlow", rated.massFlow, "kg/s");
  requirePositive("restrictionLoss: rated density", rated.density, "kg/m³");
  requireNotNegative("restrictionLoss: rated pressureLoss", rated.pressureLoss, "Pa");
  requireNotNegative("restrictionLoss: massFlow", massFlow, "kg/s");
  requirePositive("restrictionLoss: density", density, "kg/m³");
  const flowRatio = massFlow / rated.massFlow;
  return ((rated.pressureLoss * flowRatio ** 2 * rated.density) / density) as PressureDifference;
}
