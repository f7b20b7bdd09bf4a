import {
  type BulkModulus,
  type Density,
  type DynamicViscosity,
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
} from "../quantity";
import { leastPumpPower, type PumpPlungers, pumpDisplacement, pumpTorque } from "./highPressurePump";
import { plungerLeakage } from "./plungerLeakage";
import { torqueRipple } from "./torqueRipple";

/** A plunger pump as built. */
export interface PlungerPump extends PumpPlungers {
  /** volume above the plunger at the end of its stroke, over the stroke's volume [–], 0 to 5 */
  readonly deadVolumeShare: Fraction;
  /** half the difference of diameters of plunger and barrel, under pressure [m], 0 or above */
  readonly gap: Length;
  /** length over which a plunger seals [m], above 0 */
  readonly sealLength: Length;
  /** torque without friction over torque with it, at the reference speed [–], 0.05 to 1 */
  readonly mechanicalEfficiency: Fraction;
  /** part of the friction that grows with speed, at the reference speed [–], 0 to 1 */
  readonly viscousShare: Fraction;
  /** shaft speed at which the efficiency is stated [rev/s], above 0 */
  readonly referenceSpeed: RotationalSpeed;
}

/** What a pump works on. */
export interface PumpDuty {
  /** speed of the pump's shaft [rev/s], above 0 */
  readonly pumpSpeed: RotationalSpeed;
  /** pressure rise across the pump [Pa], above 0 */
  readonly pressureRise: PressureDifference;
  /** bulk modulus of the fuel, mean over the rise [Pa], above 0 */
  readonly bulkModulus: BulkModulus;
  /** density of the fuel at the inlet [kg/m³], above 0 */
  readonly inletDensity: Density;
  /** dynamic viscosity of the fuel at the inlet [Pa·s], above 0 */
  readonly dynamicViscosity: DynamicViscosity;
}

/** A pump at one speed and pressure. */
export interface PumpAtSpeed {
  /** delivered mass over the mass of a full displacement [–]; 0 where squeeze and leakage leave nothing */
  readonly byMass: Ratio;
  /** flow into the rail with full filling [kg/s] */
  readonly delivery: MassFlow;
  /** flow past the plungers, back to the inlet [kg/s] */
  readonly leakage: MassFlow;
  /** power at the shaft with full filling [W] */
  readonly power: Power;
  /** mean torque with full filling [N·m] */
  readonly meanTorque: Torque;
  /** highest torque in a turn [N·m] */
  readonly peakTorque: Torque;
  /** least power that the delivery needs over power at the shaft [–] */
  readonly efficiency: Ratio;
}

/** A plunger is under pressure on its way up: half of the time. */
const pressedShare = 0.5;

/**
 * What a plunger pump delivers and takes at a speed [kg/s, W, N·m]: ṁ = D n ρ (1 − c (e^(Δp/K) − 1)) − ṁ_leak, where the
 * leakage past each plunger runs for half of the time; P = (ṁ + ṁ_leak) w (1 + f), w the least work for a kilogram and
 * f = (1/η − 1)(1 − s + s n/n_ref) the friction; η and s at n_ref. The highest torque is that of the plungers that press
 * together at full pressure. An inlet that does not fill the barrels, slow valves and yielding steel are left out.
 *
 * @param pump plungers [–, m], dead volume and friction [–], gap and sealing length [m], reference speed [rev/s]
 * @param duty speed [rev/s], pressure and bulk modulus [Pa], density [kg/m³] and viscosity [Pa·s]
 * @throws RangeError if an argument lies outside its span
 * @source mass balance of the pumping chamber; friction split after W. E. Wilson, Trans. ASME 68 (1946) 371 (from memory)
 * @example pumpAtSpeed({ plungers: 2, lobes: 2, bore: 0.0085, stroke: 0.009, deadVolumeShare: 0.6, gap: 5e-6, sealLength: 0.015, mechanicalEfficiency: 0.88, viscousShare: 0.5, referenceSpeed: 44 }, { pumpSpeed: 44, pressureRise: 1900e5, bulkModulus: 2.3e9, inletDensity: 812, dynamicViscosity: 0.00187 }).delivery // 0.0683686
 */
export function pumpAtSpeed(pump: PlungerPump, duty: PumpDuty): PumpAtSpeed {
  const { deadVolumeShare, mechanicalEfficiency, viscousShare, referenceSpeed } = pump;
  const { pumpSpeed, pressureRise, bulkModulus, inletDensity, dynamicViscosity } = duty;
  requireWithin("pumpAtSpeed: deadVolumeShare", deadVolumeShare, [0, 5]);
  requireWithin("pumpAtSpeed: viscousShare", viscousShare, [0, 1]);
  requirePositive("pumpAtSpeed: referenceSpeed", referenceSpeed, "rev/s");
  requirePositive("pumpAtSpeed: pumpSpeed", pumpSpeed, "rev/s");
  requirePositive("pumpAtSpeed: pressureRise", pressureRise, "Pa");
  if (bulkModulus !== Number.POSITIVE_INFINITY) requirePositive("pumpAtSpeed: bulkModulus", bulkModulus, "Pa");
  requirePositive("pumpAtSpeed: inletDensity", inletDensity, "kg/m³");

  const displacement = pumpDisplacement(pump);
  const swept = displacement * pumpSpeed * inletDensity;
  const squeezed = swept * (1 - deadVolumeShare * Math.expm1(pressureRise / bulkModulus));
  const gap = { diameter: pump.bore, gap: pump.gap, sealLength: pump.sealLength, pressureRise, dynamicViscosity };
  const past = pump.plungers * pressedShare * plungerLeakage(gap) * inletDensity;
  const leakage = Math.min(past, Math.max(0, squeezed));
  const delivery = Math.max(0, squeezed) - leakage;

  const work = leastWork(duty);
  const friction = (1 / mechanicalEfficiency - 1) * (1 - viscousShare + (viscousShare * pumpSpeed) / referenceSpeed);
  const power = (delivery + leakage) * work * (1 + friction);
  const bound = pumpTorque({ displacement, pressureRise, mechanicalEfficiency });
  return {
    byMass: (delivery / swept) as Ratio,
    delivery: delivery as MassFlow,
    leakage: leakage as MassFlow,
    power: power as Power,
    meanTorque: (power / (2 * Math.PI * pumpSpeed)) as Torque,
    peakTorque: (bound * torqueRipple(pump.plungers).peak) as Torque,
    efficiency: (power > 0 ? (delivery * work) / power : 0) as Ratio,
  };
}

/** Least work for a kilogram [J/kg]. */
function leastWork({ inletDensity, pressureRise, bulkModulus }: PumpDuty): number {
  if (bulkModulus === Number.POSITIVE_INFINITY) return pressureRise / inletDensity;
  return leastPumpPower({ massFlow: 1 as MassFlow, inletDensity, pressureRise, bulkModulus });
}

/** A pump that is metered, and its friction and torque then. */
export interface MeteredPump {
  /** flow that the rail takes [kg/s], 0 to what the pump delivers full */
  readonly demand: MassFlow;
  /** the pump with full filling */
  readonly full: PumpAtSpeed;
  /** speed of the pump's shaft [rev/s], above 0 */
  readonly pumpSpeed: RotationalSpeed;
}

/**
 * Mean torque of a pump that is metered at its inlet to what the rail takes [N·m]: the full pump's, less in the measure in
 * which less is pressed, (ṁ_demand + ṁ_leak)/(ṁ_full + ṁ_leak). Friction that does not depend on load is left out.
 *
 * @param metered demand [kg/s], full pump and speed [rev/s]
 * @throws RangeError if the demand exceeds what the pump delivers, or an argument lies outside its span
 * @source first law
 * @example meteredTorque({ demand: 0.02, pumpSpeed: 40, full: { delivery: 0.045, leakage: 0.005, power: 10000 } }) // 19.8944
 */
export function meteredTorque({ demand, full, pumpSpeed }: MeteredPump): Torque {
  requireNotNegative("meteredTorque: demand", demand, "kg/s");
  requirePositive("meteredTorque: pumpSpeed", pumpSpeed, "rev/s");
  requireWithin("meteredTorque: demand", demand, [0, full.delivery * (1 + 1e-12)], "kg/s");
  const pressed = full.delivery + full.leakage;
  return (pressed === 0 ? 0 : ((demand + full.leakage) / pressed) * (full.power / (2 * Math.PI * pumpSpeed))) as Torque;
}
