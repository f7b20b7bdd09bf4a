import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  CrankAngle,
  Energy,
  Pressure,
  Ratio,
  RotationalSpeed,
  Temperature,
  Velocity,
  Volume,
} from "../quantity/kinds";
import { type CylinderGeometry, cylinderShape, requireCylinder } from "./cylinderShape";
import { type WallHeatCorrelation, wallCoefficient, wallGasConstant } from "./wallCoefficient";

export interface ClosedCycleInputs extends CylinderGeometry {
  /** crankshaft speed [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
  /** pressure at intake closing [Pa], above 0 */
  readonly pressure: Pressure;
  /** temperature at intake closing [K], above 0 */
  readonly temperature: Temperature;
  /** heat that the fuel of one cycle sets free in one cylinder [J], 0 or above */
  readonly fuelHeat: Energy;
  /** crank angle after firing dead centre at which the exhaust opens [rad], above 0 to π */
  readonly exhaustOpens: CrankAngle;
  /** crank angle after firing dead centre at which burning begins [rad], after intakeCloses */
  readonly burnStarts: CrankAngle;
  /** crank angle from its beginning to the end of burning [rad], above 0 */
  readonly burnDuration: CrankAngle;
  /** form exponent m of the burning law [–], 0 or above */
  readonly burnForm: number;
  /** efficiency exponent a of the burning law [–], above 0; 5 leaves 0.7 % unburnt, 6.908 0.1 % */
  readonly burnExponent: number;
  /** mean temperature of all walls [K], above 0 */
  readonly wallTemperature: Temperature;
  /** ratio of specific heats, the same throughout [–], above 1 */
  readonly ratioOfSpecificHeats: Ratio;
  /** way to reckon the heat to the walls, or none */
  readonly correlation: WallHeatCorrelation | "none";
  /** longest step of crank angle [rad], above 0; 2 degrees if left out */
  readonly step?: CrankAngle;
}

/** What the gas of one cylinder does between the closing and the opening of its valves. */
export interface ClosedCycle {
  /** heat from gas to walls [J]; below 0 where the walls are hotter */
  readonly wallHeat: Energy;
  /** work on the piston from intake closing to exhaust opening [J] */
  readonly work: Energy;
  /** highest pressure [Pa] */
  readonly peakPressure: Pressure;
  /** pressure at exhaust opening [Pa] */
  readonly endPressure: Pressure;
  /** temperature at exhaust opening [K] */
  readonly endTemperature: Temperature;
  /** mass of the gas [kg] */
  readonly mass: number;
}

/**
 * One closed cycle of a cylinder with heat to its walls [J, Pa]: a single zone of constant γ,
 * dp/dφ = [(γ − 1)(dQ_b − dQ_w)/dφ − γ p dV/dφ]/V, burning after Vibe, Q_b = Q [1 − e^{−a x^{m+1}}], and
 * Q_w = h A (T − T_w) dt with A = (1 + s)·π/4 B² + π B x, s the crown's surface over its circle. In Woschni's velocity the motored
 * pressure is that without heat; Annand's factor is 0.5, with the properties of air, held at their end above 1500 K.
 * Left out: mass of the fuel, leakage, dissociation, gas exchange and ports: see gasExchangeHeat and exhaustPortHeat.
 *
 * @param cycle geometry, state at intake closing, burning and walls [m, –, rev/s, Pa, K, J, rad]
 * @throws RangeError if an argument is outside its span
 * @source first law; I. Vibe, Brennverlauf und Kreisprozess (1970); coefficients as in gasHeatTransfer; J. B. Heywood (1988), ch. 9 and 12 (all from memory)
 * @example closedCycle({ bore: 0.102, stroke: 0.12, rodLength: 0.192, effectiveCompressionRatio: 15.192326, engineSpeed: 2500 / 60, pressure: 250000, temperature: 340, fuelHeat: 4200, intakeCloses: -2.443461, exhaustOpens: 2.2689280, burnStarts: -0.1047198, burnDuration: 0.9599311, burnForm: 1, burnExponent: 6.908, wallTemperature: 450, ratioOfSpecificHeats: 1.33, correlation: "hohenberg" }).wallHeat // 438.8
 */
export function closedCycle(cycle: ClosedCycleInputs): ClosedCycle {
  requireCycle(cycle);
  const { engineSpeed, pressure, temperature, fuelHeat, ratioOfSpecificHeats: gamma } = cycle;
  const cylinder = cylinderShape(cycle);
  const startVolume = cylinder.volume(cycle.intakeCloses);
  const massTimesConstant = (pressure * startVolume) / temperature;
  const coefficient = coefficientOf(cycle, cylinder.swept, startVolume);
  const perRadian = 1 / (2 * Math.PI * engineSpeed); // s/rad

  const burning = (angle: number): number => {
    const x = (angle - cycle.burnStarts) / cycle.burnDuration;
    if (x <= 0) return 0;
    const { burnForm: m, burnExponent: a } = cycle;
    return ((fuelHeat * a * (m + 1)) / cycle.burnDuration) * x ** m * Math.exp(-a * x ** (m + 1));
  };
  /** what the crank angle alone decides */
  const instantAt = (angle: number): Instant => {
    const volume = cylinder.volume(angle);
    return { angle, volume, swept: cylinder.volumeSlope(angle), area: cylinder.wallArea(volume), burnt: burning(angle) };
  };
  /** slopes of pressure, wall heat and work with crank angle */
  const slopes = ({ angle, volume, swept, area, burnt }: Instant, p: number): readonly [number, number, number] => {
    const t = (p * volume) / massTimesConstant;
    const toWalls = coefficient(angle, p, t, volume) * area * (t - cycle.wallTemperature) * perRadian;
    return [((gamma - 1) * (burnt - toWalls) - gamma * p * swept) / volume, toWalls, p * swept];
  };

  const span = cycle.exhaustOpens - cycle.intakeCloses;
  const steps = Math.ceil(span / (cycle.step ?? Math.PI / 90));
  const d = span / steps;
  let [p, wallHeat, work, peak] = [pressure as number, 0, 0, pressure as number];
  let from = instantAt(cycle.intakeCloses);
  for (let i = 0; i < steps; i++) {
    const middle = instantAt(cycle.intakeCloses + (i + 0.5) * d);
    const to = instantAt(cycle.intakeCloses + (i + 1) * d);
    const k1 = slopes(from, p);
    const k2 = slopes(middle, p + (d / 2) * k1[0]);
    const k3 = slopes(middle, p + (d / 2) * k2[0]);
    const k4 = slopes(to, p + d * k3[0]);
    const mean = (part: 0 | 1 | 2) => (k1[part] + 2 * k2[part] + 2 * k3[part] + k4[part]) / 6;
    p += d * mean(0);
    wallHeat += d * mean(1);
    work += d * mean(2);
    peak = Math.max(peak, p);
    from = to;
  }
  return {
    wallHeat: wallHeat as Energy,
    work: work as Energy,
    peakPressure: peak as Pressure,
    endPressure: p as Pressure,
    endTemperature: ((p * from.volume) / massTimesConstant) as Temperature,
    mass: massTimesConstant / wallGasConstant,
  };
}

/** The cylinder at a crank angle: volume [m³] and its slope [m³/rad], walls [m²] and heat set free [J/rad]. */
interface Instant {
  readonly angle: number;
  readonly volume: number;
  readonly swept: number;
  readonly area: number;
  readonly burnt: number;
}

/** The coefficient at a crank angle; what fire adds to the gas's velocity counts for Woschni alone. */
function coefficientOf(cycle: ClosedCycleInputs, swept: number, startVolume: number) {
  const { correlation, burnStarts } = cycle;
  if (correlation === "none") return () => 0;
  const meanPistonSpeed = (2 * cycle.stroke * cycle.engineSpeed) as Velocity;
  return (angle: number, p: number, t: number, volume: number): number => {
    const motored = cycle.pressure * (startVolume / volume) ** cycle.ratioOfSpecificHeats;
    const fire =
      angle > burnStarts ? (3.24e-3 * swept * cycle.temperature * (p - motored)) / (cycle.pressure * startVolume) : 0;
    const gas = { bore: cycle.bore, pressure: p as Pressure, temperature: t as Temperature };
    const gasVelocity = Math.max(0, 2.28 * meanPistonSpeed + fire) as Velocity;
    return wallCoefficient(correlation, gas, { volume: volume as Volume, meanPistonSpeed, gasVelocity });
  };
}

function requireCycle(cycle: ClosedCycleInputs): void {
  const name = (argument: string) => `closedCycle: ${argument}`;
  requireCylinder("closedCycle", cycle);
  requirePositive(name("engineSpeed"), cycle.engineSpeed, "rev/s");
  requirePositive(name("pressure"), cycle.pressure, "Pa");
  requirePositive(name("temperature"), cycle.temperature, "K");
  requireNotNegative(name("fuelHeat"), cycle.fuelHeat, "J");
  requireWithin(name("exhaustOpens"), cycle.exhaustOpens, [0.1, Math.PI], "rad");
  requireWithin(name("burnStarts"), cycle.burnStarts, [cycle.intakeCloses, cycle.exhaustOpens], "rad");
  requirePositive(name("burnDuration"), cycle.burnDuration, "rad");
  requireNotNegative(name("burnForm"), cycle.burnForm);
  requirePositive(name("burnExponent"), cycle.burnExponent);
  requirePositive(name("wallTemperature"), cycle.wallTemperature, "K");
  requirePositive(name("ratioOfSpecificHeats less 1"), cycle.ratioOfSpecificHeats - 1);
  requirePositive(name("step"), cycle.step ?? 1, "rad");
}
