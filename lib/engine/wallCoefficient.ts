import { airConductivity, airTransportSpan, airViscosity } from "../fluid";
import type { HeatTransferCoefficient, Ratio, Temperature, Velocity, Volume } from "../quantity/kinds";
import { annandCoefficient, type CylinderGas, hohenbergCoefficient, woschniCoefficient } from "./gasHeatTransfer";

/** Published ways to reckon the heat from gas to walls. */
export type WallHeatCorrelation = "hohenberg" | "woschni" | "annand";

/** Gas constant of air, close to that of burnt gas [J/(kg·K)]. */
export const wallGasConstant = 287.05;

/** How the gas moves, as far as the correlations ask. */
export interface GasMotion {
  /** volume of the cylinder [m³], above 0 */
  readonly volume: Volume;
  /** mean piston speed [m/s], 0 or above */
  readonly meanPistonSpeed: Velocity;
  /** Woschni's velocity [m/s], 0 or above */
  readonly gasVelocity: Velocity;
}

/**
 * Heat transfer coefficient between gas and walls after one of three published correlations [W/(m²·K)]. Annand's factor
 * is 0.5, with the properties of air, held at their end above 1500 K.
 *
 * @param correlation whose it is
 * @param gas bore, pressure and temperature [m, Pa, K]
 * @param motion volume, mean piston speed and Woschni's velocity [m³, m/s, m/s]
 * @throws RangeError if an argument is outside its span
 * @source as hohenbergCoefficient, woschniCoefficient and annandCoefficient
 * @example wallCoefficient("hohenberg", { bore: 0.102, pressure: 8e6, temperature: 1500 }, { volume: 0.00012, meanPistonSpeed: 10, gasVelocity: 25 }) // 2797.38
 */
export function wallCoefficient(
  correlation: WallHeatCorrelation,
  gas: CylinderGas,
  { volume, meanPistonSpeed, gasVelocity }: GasMotion,
): HeatTransferCoefficient {
  switch (correlation) {
    case "hohenberg":
      return hohenbergCoefficient(gas, volume, meanPistonSpeed);
    case "woschni":
      return woschniCoefficient(gas, gasVelocity);
    case "annand": {
      const intensity = 0.5 as Ratio;
      const properties = transportAt(gas.temperature);
      return annandCoefficient(gas, { meanPistonSpeed, gasConstant: wallGasConstant, intensity, ...properties });
    }
  }
}

/** Transport properties of air; beyond the span in which they are known, those at its end. */
function transportAt(t: number) {
  const at = Math.min(Math.max(t, airTransportSpan[0]), airTransportSpan[1]) as Temperature;
  return { dynamicViscosity: airViscosity(at), conductivity: airConductivity(at) };
}
