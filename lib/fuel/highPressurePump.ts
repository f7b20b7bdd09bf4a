import {
  type BulkModulus,
  type Count,
  type Density,
  type Fraction,
  type Length,
  type MassFlow,
  type Power,
  type PressureDifference,
  type Ratio,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Torque,
  type VolumeFlow,
  type VolumePerTurn,
} from "../quantity";

/** Plungers of a pump and the cam under them. */
export interface PumpPlungers {
  /** number of plungers [–], 1 to 24 */
  readonly plungers: Count;
  /** diameter of a plunger [m], above 0 */
  readonly bore: Length;
  /** stroke of a plunger [m], above 0 */
  readonly stroke: Length;
  /** lobes of the cam, strokes of each plunger in one turn [–], 1 to 12 */
  readonly lobes: Count;
}

/** Efficiencies from here to 1 are believed. */
const efficiencySpan = [0.05, 1] as const;

/**
 * Volume that a plunger pump displaces in one turn [m³]: n z π b² s / 4.
 *
 * @param pump plungers [–], bore and stroke [m], lobes [–]
 * @throws RangeError if an argument lies outside its span, or plungers or lobes are no whole number
 * @source geometry
 * @example pumpDisplacement({ plungers: 2, bore: 0.0085, stroke: 0.009, lobes: 2 }) // 2.04282e-6
 */
export function pumpDisplacement({ plungers, bore, stroke, lobes }: PumpPlungers): VolumePerTurn {
  requireWhole("pumpDisplacement: plungers", plungers, 24);
  requireWhole("pumpDisplacement: lobes", lobes, 12);
  requirePositive("pumpDisplacement: bore", bore, "m");
  requirePositive("pumpDisplacement: stroke", stroke, "m");
  return ((plungers * lobes * Math.PI * bore ** 2 * stroke) / 4) as VolumePerTurn;
}

/** A pump and its speed. */
export interface TurningPump {
  /** volume displaced in one turn [m³], above 0 */
  readonly displacement: VolumePerTurn;
  /** speed of the pump's shaft [rev/s], 0 or above */
  readonly pumpSpeed: RotationalSpeed;
}

/** A pump, its speed and what it delivers of its displacement. */
export interface DeliveringPump extends TurningPump {
  /** delivered volume, at outlet pressure, over displacement [–], 0 to 1; see pumpDelivery */
  readonly atOutlet: Fraction;
}

/**
 * Volume flow that a pump delivers, at outlet pressure [m³/s]: D n η, with the efficiency counted at the outlet.
 *
 * @param pump displacement [m³], speed [rev/s] and delivery at the outlet [–]
 * @throws RangeError if an argument lies outside its span
 * @source definition
 * @example pumpVolumeFlow({ displacement: 0.8e-6, pumpSpeed: 40, atOutlet: 0.84 }) // 2.688e-5
 */
export function pumpVolumeFlow({ displacement, pumpSpeed, atOutlet }: DeliveringPump): VolumeFlow {
  requirePositive("pumpVolumeFlow: displacement", displacement, "m³");
  requireNotNegative("pumpVolumeFlow: pumpSpeed", pumpSpeed, "rev/s");
  requireWithin("pumpVolumeFlow: atOutlet", atOutlet, [0, 1]);
  return (displacement * pumpSpeed * atOutlet) as VolumeFlow;
}

/** A pump and the fuel it takes in. */
export interface FilledPump {
  /** volume displaced in one turn [m³], above 0 */
  readonly displacement: VolumePerTurn;
  /** delivered mass over the mass of a full displacement [–], above 0 to 1; see pumpDelivery */
  readonly byMass: Fraction;
  /** density of the fuel at the inlet [kg/m³], above 0 */
  readonly inletDensity: Density;
}

/**
 * Mass flow that a pump delivers [kg/s]: D n ρ₁ η_m. An inlet valve that meters less is taken to be open.
 *
 * @param pump displacement [m³], delivery by mass [–], inlet density [kg/m³] and speed [rev/s]
 * @throws RangeError if an argument lies outside its span
 * @source definition
 * @example pumpMassFlow({ displacement: 0.8e-6, pumpSpeed: 40, byMass: 0.94, inletDensity: 820 }) // 0.0246656
 */
export function pumpMassFlow({ pumpSpeed, ...pump }: FilledPump & Pick<TurningPump, "pumpSpeed">): MassFlow {
  requireNotNegative("pumpMassFlow: pumpSpeed", pumpSpeed, "rev/s");
  return (massPerTurn("pumpMassFlow", pump) * pumpSpeed) as MassFlow;
}

/** A flow that a pump must give at an engine speed. */
export interface PumpDemand extends FilledPump {
  /** mass flow wanted into the rail: injected, and what injectors leak and return [kg/s], 0 or above */
  readonly demand: MassFlow;
  /** crankshaft speed at which it is wanted [rev/s], above 0 */
  readonly engineSpeed: RotationalSpeed;
}

/**
 * Turns of the pump in one turn of the crank that a demand asks for [–]: ṁ / (D ρ₁ η_m N).
 *
 * @param wanted demand [kg/s], engine speed [rev/s], displacement [m³], delivery by mass [–] and inlet density [kg/m³]
 * @throws RangeError if an argument lies outside its span
 * @source mass balance
 * @example pumpDriveRatio({ demand: 0.0246656, engineSpeed: 40, displacement: 0.8e-6, byMass: 0.94, inletDensity: 820 }) // 1
 */
export function pumpDriveRatio({ demand, engineSpeed, ...pump }: PumpDemand): Ratio {
  requireNotNegative("pumpDriveRatio: demand", demand, "kg/s");
  requirePositive("pumpDriveRatio: engineSpeed", engineSpeed, "rev/s");
  return (demand / (massPerTurn("pumpDriveRatio", pump) * engineSpeed)) as Ratio;
}

/** A pump under pressure. */
export interface LoadedPump {
  /** volume displaced in one turn [m³], above 0 */
  readonly displacement: VolumePerTurn;
  /** pressure rise across the pump [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** torque without friction over torque with it [–], 0.05 to 1 */
  readonly mechanicalEfficiency: Fraction;
}

/**
 * Mean torque of a high-pressure pump, at most [N·m]: D Δp / (2 π η). What the squeezed fuel in the dead volume gives
 * back on the way down, and a filling metered below full, are left out; peaks are two to three times the mean with few
 * lobes (common practice, no source).
 *
 * @param pump displacement [m³], pressure rise [Pa] and mechanical efficiency [–]
 * @throws RangeError if an argument lies outside its span
 * @source first law, liquid taken as stiff
 * @example pumpTorque({ displacement: 0.8e-6, pressureRise: 1600e5, mechanicalEfficiency: 0.88 }) // 23.1498
 */
export function pumpTorque({ displacement, pressureRise, mechanicalEfficiency }: LoadedPump): Torque {
  requirePositive("pumpTorque: displacement", displacement, "m³");
  requireNotNegative("pumpTorque: pressureRise", pressureRise, "Pa");
  requireWithin("pumpTorque: mechanicalEfficiency", mechanicalEfficiency, efficiencySpan);
  return ((displacement * pressureRise) / (2 * Math.PI * mechanicalEfficiency)) as Torque;
}

/**
 * Power at a high-pressure pump's shaft, at most [W]: D n Δp / η, which is 2 π n times pumpTorque.
 *
 * @param pump displacement [m³], pressure rise [Pa], mechanical efficiency [–] and speed [rev/s]
 * @throws RangeError if an argument lies outside its span
 * @source first law, liquid taken as stiff
 * @example pumpShaftPower({ displacement: 0.8e-6, pressureRise: 1600e5, mechanicalEfficiency: 0.88, pumpSpeed: 40 }) // 5818.18
 */
export function pumpShaftPower({ pumpSpeed, ...pump }: LoadedPump & Pick<TurningPump, "pumpSpeed">): Power {
  requireNotNegative("pumpShaftPower: pumpSpeed", pumpSpeed, "rev/s");
  return (2 * Math.PI * pumpSpeed * pumpTorque(pump)) as Power;
}

/** A mass of liquid brought up in pressure. */
export interface LiquidCompression {
  /** mass flow [kg/s], 0 or above */
  readonly massFlow: MassFlow;
  /** density before [kg/m³], above 0 */
  readonly inletDensity: Density;
  /** pressure rise [Pa], 0 or above */
  readonly pressureRise: PressureDifference;
  /** bulk modulus, mean over the rise [Pa], above 0 */
  readonly bulkModulus: BulkModulus;
}

/**
 * Least power for bringing a yielding liquid up in pressure [W]: ṁ ∫dp/ρ = (ṁ/ρ₁) K (1 − e^(−Δp/K)), without friction
 * and leakage and with all elastic energy given back. A real pump lies between this and pumpShaftPower.
 *
 * @param compression mass flow [kg/s], inlet density [kg/m³], pressure rise and bulk modulus [Pa]
 * @throws RangeError if an argument lies outside its span
 * @source first law for steady flow with constant mean bulk modulus
 * @example leastPumpPower({ massFlow: 0.0246656, inletDensity: 820, pressureRise: 1600e5, bulkModulus: 1.5e9 }) // 4565.01
 */
export function leastPumpPower({ massFlow, inletDensity, pressureRise, bulkModulus }: LiquidCompression): Power {
  requireNotNegative("leastPumpPower: massFlow", massFlow, "kg/s");
  requirePositive("leastPumpPower: inletDensity", inletDensity, "kg/m³");
  requireNotNegative("leastPumpPower: pressureRise", pressureRise, "Pa");
  requirePositive("leastPumpPower: bulkModulus", bulkModulus, "Pa");
  return ((-massFlow / inletDensity) * bulkModulus * Math.expm1(-pressureRise / bulkModulus)) as Power;
}

function massPerTurn(name: string, { displacement, byMass, inletDensity }: FilledPump): number {
  requirePositive(`${name}: displacement`, displacement, "m³");
  requireWithin(`${name}: byMass`, byMass, [Number.MIN_VALUE, 1]);
  requirePositive(`${name}: inletDensity`, inletDensity, "kg/m³");
  return displacement * byMass * inletDensity;
}

function requireWhole(name: string, value: number, highest: number): void {
  requireWithin(name, value, [1, highest]);
  if (!Number.isInteger(value)) throw new RangeError(`${name} is ${value}; it must be a whole number`);
}
