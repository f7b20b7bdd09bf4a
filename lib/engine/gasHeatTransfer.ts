import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  DynamicViscosity,
  HeatTransferCoefficient,
  Length,
  Pressure,
  Ratio,
  Temperature,
  ThermalConductivity,
  Velocity,
  Volume,
} from "../quantity/kinds";

/** The gas in a cylinder, as far as the heat to its walls asks. */
export interface CylinderGas {
  /** cylinder diameter [m], above 0 */
  readonly bore: Length;
  /** pressure of the gas [Pa], above 0 */
  readonly pressure: Pressure;
  /** mean temperature of the gas [K], above 0 */
  readonly temperature: Temperature;
}

/**
 * Heat transfer coefficient between gas and walls after Woschni [W/(m²·K)]: 3.26 B^−0.2 p^0.8 T^−0.55 w^0.8, p in kPa.
 * The constant belongs to this exponent of temperature and this unit of pressure; radiation is in it by the fit.
 *
 * @param gas bore, pressure and temperature [m, Pa, K]
 * @param gasVelocity mean velocity of the gas w, 2.28 times the mean piston speed before fire [m/s], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source G. Woschni, SAE 670931 (1967), in the form of J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §12.4.3 (from memory)
 * @example woschniCoefficient({ bore: 0.102, pressure: 8e6, temperature: 1500 }, 25) // 1604.99
 */
export function woschniCoefficient(gas: CylinderGas, gasVelocity: Velocity): HeatTransferCoefficient {
  requireGas("woschniCoefficient", gas);
  requireNotNegative("woschniCoefficient: gasVelocity", gasVelocity, "m/s");
  return (3.26 *
    gas.bore ** -0.2 *
    (gas.pressure / 1000) ** 0.8 *
    gas.temperature ** -0.55 *
    gasVelocity ** 0.8) as HeatTransferCoefficient;
}

/**
 * Heat transfer coefficient between gas and walls after Hohenberg [W/(m²·K)]: 130 V^−0.06 p^0.8 T^−0.4 (v_p + 1.4)^0.8,
 * p in bar, V in m³. Fitted to direct-injection diesels; soot is in it by the fit.
 *
 * @param gas pressure and temperature [Pa, K]
 * @param volume volume of the cylinder at this crank angle [m³], above 0
 * @param meanPistonSpeed mean piston speed [m/s], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source G. F. Hohenberg, Advanced Approaches for Heat Transfer Calculations, SAE 790825 (1979) (from memory)
 * @example hohenbergCoefficient({ bore: 0.102, pressure: 8e6, temperature: 1500 }, 0.00012, 10) // 2797.38
 */
export function hohenbergCoefficient(
  gas: CylinderGas,
  volume: Volume,
  meanPistonSpeed: Velocity,
): HeatTransferCoefficient {
  requireGas("hohenbergCoefficient", gas);
  requirePositive("hohenbergCoefficient: volume", volume, "m³");
  requireNotNegative("hohenbergCoefficient: meanPistonSpeed", meanPistonSpeed, "m/s");
  return (130 *
    volume ** -0.06 *
    (gas.pressure / 1e5) ** 0.8 *
    gas.temperature ** -0.4 *
    (meanPistonSpeed + 1.4) ** 0.8) as HeatTransferCoefficient;
}

/** What Annand's coefficient asks beside the gas. */
export interface AnnandState {
  /** mean piston speed [m/s], 0 or above */
  readonly meanPistonSpeed: Velocity;
  /** gas constant [J/(kg·K)], above 0 */
  readonly gasConstant: number;
  /** viscosity of the gas at its mean temperature [Pa·s], above 0 */
  readonly dynamicViscosity: DynamicViscosity;
  /** conductivity of the gas at its mean temperature [W/(m·K)], above 0 */
  readonly conductivity: ThermalConductivity;
  /** factor a [–], 0.35 to 0.8, by the intensity of the charge's motion */
  readonly intensity: Ratio;
}

/**
 * Convective heat transfer coefficient between gas and walls after Annand [W/(m²·K)]: a (k/B) Re^0.7, Re = ρ v_p B/μ.
 * Annand's radiation term is left out: it is a tenth or less over a whole cycle, and the span of a covers it.
 *
 * @param gas bore, pressure and temperature [m, Pa, K]
 * @param state mean piston speed, gas constant, viscosity, conductivity and factor [m/s, J/(kg·K), Pa·s, W/(m·K), –]
 * @throws RangeError if an argument is outside its span
 * @source W. J. D. Annand, Proc. Institution of Mechanical Engineers 177 (1963) 973 (from memory)
 * @example annandCoefficient({ bore: 0.102, pressure: 8e6, temperature: 1500 }, { meanPistonSpeed: 10, gasConstant: 287.05, dynamicViscosity: 5.517950767e-5, conductivity: 0.08671065491, intensity: 0.5 }) // 3188.21
 */
export function annandCoefficient(gas: CylinderGas, state: AnnandState): HeatTransferCoefficient {
  requireGas("annandCoefficient", gas);
  requireNotNegative("annandCoefficient: meanPistonSpeed", state.meanPistonSpeed, "m/s");
  requirePositive("annandCoefficient: gasConstant", state.gasConstant, "J/(kg·K)");
  requireWithin("annandCoefficient: intensity", state.intensity, [0.35, 0.8]);
  requirePositive("annandCoefficient: dynamicViscosity", state.dynamicViscosity, "Pa·s");
  requirePositive("annandCoefficient: conductivity", state.conductivity, "W/(m·K)");
  const density = gas.pressure / (state.gasConstant * gas.temperature);
  const reynolds = (density * state.meanPistonSpeed * gas.bore) / state.dynamicViscosity;
  return ((state.intensity * state.conductivity * reynolds ** 0.7) / gas.bore) as HeatTransferCoefficient;
}

function requireGas(caller: string, { bore, pressure, temperature }: CylinderGas): void {
  requirePositive(`${caller}: bore`, bore, "m");
  requirePositive(`${caller}: pressure`, pressure, "Pa");
  requirePositive(`${caller}: temperature`, temperature, "K");
}
