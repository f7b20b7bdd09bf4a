import { dryAir, type Gas } from "../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  Energy,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
  VolumePerTurn,
} from "../quantity/kinds";
import { type BlowerFilling, blowerVolumetricEfficiency } from "./blowerLeakage";

/** The volume that a blower moves, and between which pressures. */
export interface BlowerCycle {
  /** inlet pressure [Pa], above 0 */
  readonly inletPressure: Pressure;
  /** pressure into which it delivers [Pa], above 0 */
  readonly dischargePressure: Pressure;
  /** displacement [m³ per turn], above 0 */
  readonly displacementPerTurn: VolumePerTurn;
  /** volume trapped at the inlet over volume when the outlet opens; 1 for no internal compression [–], 1 to 3 */
  readonly builtInVolumeRatio: Ratio;
  /** ratio of specific heats of the charge [–], above 1 to 1.7 */
  readonly ratioOfSpecificHeats: Ratio;
}

/**
 * Work of the gas diagram in one turn [J]: isentropic compression to the built-in volume ratio v, then a rush of gas
 * from or into the outlet at constant volume. W = γ/(γ − 1) p₁ V (v^(γ−1) − 1) + (p₂ − p₁ v^γ) V/v; with v = 1, (p₂ − p₁) V.
 * Port losses are left out.
 *
 * @param cycle pressures, displacement, volume ratio and gas [Pa, m³, –]
 * @throws RangeError if an argument is outside its span
 * @source T. D. Eastop, A. McConkey, Applied Thermodynamics for Engineering Technologists, ch. on positive-displacement machines (from memory)
 * @example blowerWorkPerTurn({ inletPressure: 1e5, dischargePressure: 1.5e5, displacementPerTurn: 0.0023, builtInVolumeRatio: 1.5, ratioOfSpecificHeats: 1.4 }) // 101.2454
 */
export function blowerWorkPerTurn(cycle: BlowerCycle): Energy {
  const { inletPressure, dischargePressure, displacementPerTurn, builtInVolumeRatio: v } = cycle;
  const g = cycle.ratioOfSpecificHeats;
  requirePositive("blowerWorkPerTurn: inletPressure", inletPressure, "Pa");
  requirePositive("blowerWorkPerTurn: dischargePressure", dischargePressure, "Pa");
  requirePositive("blowerWorkPerTurn: displacementPerTurn", displacementPerTurn, "m³");
  requireWithin("blowerWorkPerTurn: builtInVolumeRatio", v, [1, 3]);
  requireWithin("blowerWorkPerTurn: ratioOfSpecificHeats", g, [1.0001, 1.7]);
  const inside = (g / (g - 1)) * inletPressure * displacementPerTurn * (v ** (g - 1) - 1);
  const atTheOutlet = (dischargePressure - inletPressure * v ** g) * (displacementPerTurn / v);
  return (inside + atTheOutlet) as Energy;
}

/** A positive-displacement blower driven by the crank. */
export interface Blower {
  /** displacement [m³ per turn], above 0 */
  readonly displacementPerTurn: VolumePerTurn;
  /** blower turns for one turn of the crank [–], above 0 */
  readonly driveRatio: Ratio;
  /** volume trapped at the inlet over volume when the outlet opens; 1 for no internal compression [–], 1 to 3 */
  readonly builtInVolumeRatio: Ratio;
  /** how much of its displacement it delivers */
  readonly filling: BlowerFilling;
  /** power to the gas over power at the drive, without windage [–], 0.5 to 1 */
  readonly mechanicalEfficiency: Fraction;
  /** power lost to windage and oil, per cube of the blower speed [W/(rev/s)³], 0 or above; 0 if left out */
  readonly windage?: number;
  /** whether a bypass joins its outlet to its inlet, so that it turns without load; false if left out */
  readonly bypassOpen?: boolean;
}

/** Gas at a blower's inlet, and what it meets at the outlet. */
export interface BlowerDuty {
  /** blower speed [rev/s], above 0 */
  readonly blowerSpeed: RotationalSpeed;
  /** inlet pressure [Pa], above 0 */
  readonly inletPressure: Pressure;
  /** inlet temperature [K], within the gas's span */
  readonly inletTemperature: Temperature;
  /** outlet over inlet pressure [–], 1 to 6 */
  readonly pressureRatio: Ratio;
  /** the charge [–]; dry air if left out */
  readonly gas?: Gas;
}

/** What a blower delivers and takes. */
export interface BlowerDelivery {
  /** delivered flow [kg/s] */
  readonly massFlow: MassFlow;
  /** delivered over displaced volume, at inlet density [–] */
  readonly volumetricEfficiency: Fraction;
  /** power put into the gas [W] */
  readonly gasPower: Power;
  /** power at the drive [W] */
  readonly shaftPower: Power;
  /** temperature at the outlet [K] */
  readonly outletTemperature: Temperature;
  /** ideal over actual work on the delivered gas [–] */
  readonly isentropicEfficiency: Fraction;
}

/**
 * Flow, power and outlet temperature of a blower [kg/s, W, K]. The work on the whole displacement warms the delivered
 * flow, since what leaks keeps circling: h₂ = h₁ + W N/ṁ. Heat lost by the casing is left out.
 *
 * @param blower displacement, built-in ratio, filling and losses [m³, –]
 * @param duty speed, inlet state, pressure ratio and gas [rev/s, Pa, K, –]
 * @throws RangeError if an argument is outside its span; below a ratio of 1 the blower would be a restriction
 * @source first law for a steady flow; blowerWorkPerTurn
 * @example blowerDelivery({ displacementPerTurn: 0.0023, driveRatio: 2, builtInVolumeRatio: 1, filling: { kind: "fixed", volumetricEfficiency: 0.9 }, mechanicalEfficiency: 0.93 }, { blowerSpeed: 200, inletPressure: 1e5, inletTemperature: 300, pressureRatio: 1.6 }).shaftPower // 29677.42
 */
export function blowerDelivery(blower: Blower, duty: BlowerDuty): BlowerDelivery {
  const { blowerSpeed, inletPressure, inletTemperature, pressureRatio, gas = dryAir } = duty;
  requirePositive("blowerDelivery: blowerSpeed", blowerSpeed, "rev/s");
  requireWithin("blowerDelivery: mechanicalEfficiency", blower.mechanicalEfficiency, [0.5, 1]);
  requireNotNegative("blowerDelivery: windage", blower.windage ?? 0, "W/(rev/s)³");
  if (pressureRatio < 1) {
    throw new RangeError(
      `blowerDelivery: pressureRatio is ${pressureRatio.toPrecision(4)}; the blower would be a restriction: open its bypass`,
    );
  }
  requireWithin("blowerDelivery: pressureRatio", pressureRatio, [1, 6]);
  const { massFlow, gasPower, volumetricEfficiency } = displaced(blower, {
    blowerSpeed,
    inletPressure,
    inletTemperature,
    pressureRatio,
    gas,
  });
  const inlet = gas.enthalpy(inletTemperature);
  const ideal = gas.enthalpy(gas.isentropicTemperature(inletTemperature, pressureRatio)) - inlet;
  return {
    massFlow,
    volumetricEfficiency,
    gasPower,
    shaftPower: blowerShaftPower(blower, blowerSpeed, gasPower),
    outletTemperature: gas.temperatureAtEnthalpy((inlet + gasPower / massFlow) as SpecificEnergy),
    // at a ratio of 1 there is neither ideal nor actual work
    isentropicEfficiency: (gasPower > 0 ? (ideal * massFlow) / gasPower : 1) as Fraction,
  };
}

/** Flow and gas power of a blower, below a ratio of 1 too, for solvers on their way to an answer. */
export function displaced(
  blower: Blower,
  duty: Required<BlowerDuty>,
): { massFlow: MassFlow; gasPower: Power; volumetricEfficiency: Fraction } {
  const { blowerSpeed, inletPressure, inletTemperature, pressureRatio, gas } = duty;
  const { displacementPerTurn, builtInVolumeRatio, filling } = blower;
  const ratioOfSpecificHeats = gas.ratioOfSpecificHeats(inletTemperature);
  const volumetricEfficiency = blowerVolumetricEfficiency(filling, {
    pressureRatio,
    blowerSpeed,
    displacementPerTurn,
    inletTemperature,
    gasConstant: gas.gasConstant,
    ratioOfSpecificHeats,
  });
  const work = blowerWorkPerTurn({
    inletPressure,
    dischargePressure: (inletPressure * pressureRatio) as Pressure,
    displacementPerTurn,
    builtInVolumeRatio,
    ratioOfSpecificHeats,
  });
  const density = gas.density(inletTemperature, inletPressure);
  return {
    massFlow: (volumetricEfficiency * density * displacementPerTurn * blowerSpeed) as MassFlow,
    gasPower: (work * blowerSpeed) as Power,
    volumetricEfficiency,
  };
}

/**
 * Power at a blower's drive [W]: P_gas/η_m + k N³.
 *
 * @param blower mechanical efficiency and windage [–, W/(rev/s)³]
 * @param blowerSpeed blower speed [rev/s]
 * @param gasPower power put into the gas [W]; 0 with an open bypass
 * @throws nothing beyond what its callers guard
 * @source common practice, no source
 * @example blowerShaftPower({ displacementPerTurn: 0.004, driveRatio: 2, builtInVolumeRatio: 1, filling: { kind: "fixed", volumetricEfficiency: 0.9 }, mechanicalEfficiency: 0.9, windage: 0.001 }, 100, 45000) // 51000
 */
export function blowerShaftPower(blower: Blower, blowerSpeed: RotationalSpeed, gasPower: Power): Power {
  return (gasPower / blower.mechanicalEfficiency + (blower.windage ?? 0) * blowerSpeed ** 3) as Power;
}
