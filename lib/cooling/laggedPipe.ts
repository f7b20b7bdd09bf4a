import { brentRoot } from "../numeric";
import {
  type Fraction,
  type HeatTransferCoefficient,
  type Length,
  type Power,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Temperature,
  type ThermalConductivity,
} from "../quantity";

/** Stefan–Boltzmann constant [W/(m²·K⁴)]. @source CODATA 2018, exact in the SI of 2019 */
const radiationConstant = 5.670374419e-8;

export interface LaggedPipe {
  /** temperature of the gas, taken for the pipe's own [K], above 0 */
  readonly gasTemperature: Temperature;
  /** air and walls about it [K], above 0, at most gasTemperature */
  readonly roomTemperature: Temperature;
  /** outside diameter of the bare pipe [m], above 0 */
  readonly pipeDiameter: Length;
  /** thickness of the lagging [m], 0 or above */
  readonly thickness: Length;
  /** length of pipe in the room [m], 0 or above */
  readonly length: Length;
  /** conductivity of the lagging [W/(m·K)], above 0; mineral wool at 300 °C about 0.07 to 0.1 */
  readonly conductivity: ThermalConductivity;
  /** emissivity of the surface [–], 0 to 1; cloth about 0.9, bright sheet about 0.1 to 0.3 */
  readonly emissivity: Fraction;
  /** convection from the surface to the air [W/(m²·K)], above 0; 5 to 10 in still air */
  readonly convection: HeatTransferCoefficient;
}

export interface LaggedPipeState {
  /** temperature of the outer surface [K] */
  readonly surfaceTemperature: Temperature;
  /** heat to the room [W] */
  readonly heat: Power;
}

/**
 * Surface temperature and heat to the room of a lagged exhaust pipe [K, W]: what conducts through the lagging,
 * 2π k L (T_gas − T_s)/ln(d_o/d_i), leaves by convection and radiation, π d_o L [h (T_s − T_r) + ε σ (T_s⁴ − T_r⁴)].
 * The gas is taken to hold the pipe at its own temperature, which overstates the heat a little; flanges and hangers
 * are left out and are the hottest spots.
 *
 * @param pipe temperatures, measures and surface [SI units]
 * @throws RangeError if an argument is outside its span
 * @source Incropera et al., Fundamentals of Heat and Mass Transfer, ch. 3 (from memory)
 * @example laggedPipe({ gasTemperature: 723.15, roomTemperature: 313.15, pipeDiameter: 0.15, thickness: 0.05, length: 3, conductivity: 0.08, emissivity: 0.9, convection: 6 }).surfaceTemperature - 273.15 // 75.05
 */
export function laggedPipe(pipe: LaggedPipe): LaggedPipeState {
  const { gasTemperature, roomTemperature, pipeDiameter, thickness, length, conductivity, emissivity, convection } =
    pipe;
  requirePositive("laggedPipe: roomTemperature", roomTemperature, "K");
  requireWithin("laggedPipe: gasTemperature", gasTemperature, [roomTemperature, 2000], "K");
  requirePositive("laggedPipe: pipeDiameter", pipeDiameter, "m");
  requireNotNegative("laggedPipe: thickness", thickness, "m");
  requireNotNegative("laggedPipe: length", length, "m");
  requirePositive("laggedPipe: conductivity", conductivity, "W/(m·K)");
  requireWithin("laggedPipe: emissivity", emissivity, [0, 1]);
  requirePositive("laggedPipe: convection", convection, "W/(m²·K)");
  const outer = pipeDiameter + 2 * thickness;
  const leaving = (surface: number) =>
    Math.PI *
    outer *
    (convection * (surface - roomTemperature) + emissivity * radiationConstant * (surface ** 4 - roomTemperature ** 4));
  if (thickness === 0 || gasTemperature === roomTemperature) {
    return { surfaceTemperature: gasTemperature, heat: (length * leaving(gasTemperature)) as Power };
  }
  const conductance = (2 * Math.PI * conductivity) / Math.log(outer / pipeDiameter);
  const surface = brentRoot((t) => conductance * (gasTemperature - t) - leaving(t), [roomTemperature, gasTemperature], {
    name: "laggedPipe: surface temperature",
  }).root;
  return { surfaceTemperature: surface as Temperature, heat: (length * leaving(surface)) as Power };
}
