import { requirePositive, requireWithin } from "../quantity/guard";
import type {
  CrankAngle,
  Energy,
  Pressure,
  Ratio,
  RotationalSpeed,
  Temperature,
  Velocity,
} from "../quantity/kinds";
import { type CylinderGeometry, cylinderShape } from "./cylinderShape";
import { type WallHeatCorrelation, wallCoefficient } from "./wallCoefficient";

export interface GasExchangeInputs extends CylinderGeometry {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** crank angle after firing dead centre at which the exhaust opens [rad], above 0 to π */
  readonly exhaustOpens: CrankAngle;
  /** pressure in the cylinder at that angle [Pa], above 0 */
  readonly endPressure: Pressure;
  /** temperature there [K], above 0 */
  readonly endTemperature: Temperature;
  /** pressure before the turbines, or of the pipe [Pa], above 0 */
  readonly exhaustPressure: Pressure;
  /** pressure of the charge [Pa], above 0 */
  readonly chargePressure: Pressure;
  /** temperature of the charge [K], above 0 */
  readonly chargeTemperature: Temperature;
  /** mean temperature of all walls [K], above 0 */
  readonly wallTemperature: Temperature;
  /** ratio of specific heats [–], above 1 */
  readonly ratioOfSpecificHeats: Ratio;
  /** way to reckon the heat to the walls */
  readonly correlation: WallHeatCorrelation;
}

/** Woschni's velocity over the mean piston speed while gas is exchanged [–]. */
const exchangeVelocity = 6.18;

/** Step of crank angle [rad], 10 degrees at most. */
const longestStep = Math.PI / 18;

/**
 * Heat from gas to walls of one cylinder while its valves are open [J]: Q = ∫ h A (T − T_w) dt from the opening of the
 * exhaust to the closing of the intake. Up to the dead centre the gas is the exhaust's, let down without loss to its
 * pressure, T = T_e (p_x/p_e)^((γ−1)/γ); from there on it is the charge, which the walls warm, so that this part is below 0.
 * The blow-down itself, whose gas is faster and hotter, and the overlap are left out.
 *
 * @param exchange geometry, states of exhaust and charge, walls [m, –, rev/s, rad, Pa, K]
 * @throws RangeError if an argument is outside its span
 * @source coefficients as in gasHeatTransfer, Woschni's velocity 6.18 v_p (SAE 670931, from memory); isentropic expansion
 * @example gasExchangeHeat({ bore: 0.124, stroke: 0.141, rodLength: 0.23265, effectiveCompressionRatio: 12.8, intakeCloses: -2.443, engineSpeed: 40, exhaustOpens: 2.269, endPressure: 1e6, endTemperature: 1000, exhaustPressure: 3e5, chargePressure: 3.3e5, chargeTemperature: 315, wallTemperature: 453, ratioOfSpecificHeats: 1.33, correlation: "hohenberg" }) // 21.464
 */
export function gasExchangeHeat(exchange: GasExchangeInputs): Energy {
  requireExchange(exchange);
  const { engineSpeed, endPressure, exhaustPressure, chargePressure, chargeTemperature } = exchange;
  const cylinder = cylinderShape(exchange);
  const gamma = exchange.ratioOfSpecificHeats;
  const letDown = exchange.endTemperature * Math.min(1, exhaustPressure / endPressure) ** ((gamma - 1) / gamma);
  const meanPistonSpeed = (2 * exchange.stroke * engineSpeed) as Velocity;
  const gasVelocity = (exchangeVelocity * meanPistonSpeed) as Velocity;
  const over = (from: number, to: number, pressure: Pressure, temperature: Temperature): number => {
    const steps = Math.ceil((to - from) / longestStep);
    const d = (to - from) / steps;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const volume = cylinder.volume(from + (i + 0.5) * d);
      const gas = { bore: exchange.bore, pressure, temperature };
      const h = wallCoefficient(exchange.correlation, gas, { volume, meanPistonSpeed, gasVelocity });
      sum += h * cylinder.wallArea(volume) * (temperature - exchange.wallTemperature) * d;
    }
    return sum / (2 * Math.PI * engineSpeed); // s/rad
  };
  const exhaust = over(exchange.exhaustOpens, 2 * Math.PI, exhaustPressure, letDown as Temperature);
  const intake = over(2 * Math.PI, 4 * Math.PI + exchange.intakeCloses, chargePressure, chargeTemperature);
  return (exhaust + intake) as Energy;
}

function requireExchange(exchange: GasExchangeInputs): void {
  const name = (argument: string) => `gasExchangeHeat: ${argument}`;
  requirePositive(name("engineSpeed"), exchange.engineSpeed, "rev/s");
  requireWithin(name("exhaustOpens"), exchange.exhaustOpens, [0.1, Math.PI], "rad");
  requirePositive(name("endPressure"), exchange.endPressure, "Pa");
  requirePositive(name("endTemperature"), exchange.endTemperature, "K");
  requirePositive(name("exhaustPressure"), exchange.exhaustPressure, "Pa");
  requirePositive(name("chargePressure"), exchange.chargePressure, "Pa");
  requirePositive(name("chargeTemperature"), exchange.chargeTemperature, "K");
  requirePositive(name("wallTemperature"), exchange.wallTemperature, "K");
  requirePositive(name("ratioOfSpecificHeats less 1"), exchange.ratioOfSpecificHeats - 1);
}
