import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { Area, MassFlow, Pressure, Ratio, SpecificHeat, Temperature, Velocity } from "../../quantity/kinds";

/** The throat between a wheel's first blades, and the gas before it. */
export interface InducerThroat {
  /** effective area of the throat [m²], above 0 */
  readonly area: Area;
  /** blade speed at the throat's mean radius [m/s], 0 or above; 0 for a throat that stands */
  readonly bladeSpeed: Velocity;
  /** total temperature before it [K], above 0 */
  readonly temperature: Temperature;
  /** total pressure before it [Pa], above 0 */
  readonly pressure: Pressure;
  /** gas constant [J/(kg·K)], above 0 */
  readonly gasConstant: SpecificHeat;
  /** ratio of specific heats [–], above 1 to 1.7 */
  readonly ratioOfSpecificHeats: Ratio;
}

/**
 * Flow that chokes an inducer [kg/s]: A ρ₀₁ a₀₁ ((2 + (γ − 1)(U/a₀₁)²)/(γ + 1))^((γ + 1)/(2(γ − 1))); it grows with speed.
 *
 * @param throat area, blade speed and gas [m², m/s, K, Pa, J/(kg·K), –]
 * @throws RangeError if an argument is outside its span
 * @source S. L. Dixon, C. A. Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 7 (choking of the impeller, from memory)
 * @example inducerChokeFlow({ area: 0.0008, bladeSpeed: 180, temperature: 298, pressure: 1e5, gasConstant: 287.05, ratioOfSpecificHeats: 1.4 }) // 0.2193716
 */
export function inducerChokeFlow(throat: InducerThroat): MassFlow {
  const { area, bladeSpeed, temperature, pressure, gasConstant, ratioOfSpecificHeats: g } = throat;
  requirePositive("inducerChokeFlow: area", area, "m²");
  requireNotNegative("inducerChokeFlow: bladeSpeed", bladeSpeed, "m/s");
  requirePositive("inducerChokeFlow: temperature", temperature, "K");
  requirePositive("inducerChokeFlow: pressure", pressure, "Pa");
  requirePositive("inducerChokeFlow: gasConstant", gasConstant, "J/(kg·K)");
  requireWithin("inducerChokeFlow: ratioOfSpecificHeats", g, [1.0001, 1.7]);
  const sound = Math.sqrt(g * gasConstant * temperature);
  const density = pressure / (gasConstant * temperature);
  const relative = (2 + (g - 1) * (bladeSpeed / sound) ** 2) / (g + 1);
  return (area * density * sound * relative ** ((g + 1) / (2 * (g - 1)))) as MassFlow;
}
