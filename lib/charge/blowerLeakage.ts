import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  Area,
  Fraction,
  Pressure,
  Ratio,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  VolumePerTurn,
} from "../quantity/kinds";
import { nozzleMassFlow } from "./nozzle";

/** The same filling at every speed and ratio. */
export interface FixedFilling {
  readonly kind: "fixed";
  /** delivered over displaced volume, at inlet density [–], 0.05 to 1 */
  readonly volumetricEfficiency: Fraction;
}

/** A line through the user's own points: 1 − (a √(r − 1) + b (r − 1)) N₀/N − c (N/N₀)². */
export interface FittedFilling {
  readonly kind: "fitted";
  /** loss by slip per root of pressure ratio less 1, at the reference speed [–], 0 or above */
  readonly slipPerRoot: Ratio;
  /** loss by slip per pressure ratio less 1, at the reference speed [–], 0 or above */
  readonly slipPerRatio: Ratio;
  /** loss by incomplete filling of the inlet, at the reference speed [–], 0 or above */
  readonly inletLoss: Ratio;
  /** blower speed to which the three belong [rev/s], above 0 */
  readonly referenceSpeed: RotationalSpeed;
}

/** Clearances that leak like one nozzle from outlet to inlet. */
export interface ClearanceLeakage {
  readonly kind: "clearance";
  /** effective area of all clearances together [m²], 0 or above */
  readonly area: Area;
}

/** How much of its displacement a blower delivers. */
export type BlowerFilling = FixedFilling | FittedFilling | ClearanceLeakage;

/** The point of work of a blower, as far as its leakage asks. */
export interface LeakageState {
  /** outlet over inlet pressure [–], above 0; no leakage at 1 or below */
  readonly pressureRatio: Ratio;
  /** blower speed [rev/s], above 0 */
  readonly blowerSpeed: RotationalSpeed;
  /** displacement [m³ per turn], above 0 */
  readonly displacementPerTurn: VolumePerTurn;
  /** inlet temperature [K], above 0 */
  readonly inletTemperature: Temperature;
  /** gas constant of the charge [J/(kg·K)], above 0 */
  readonly gasConstant: SpecificHeat;
  /** ratio of specific heats of the charge [–], above 1 to 1.7 */
  readonly ratioOfSpecificHeats: Ratio;
}

/**
 * Volumetric efficiency of a blower, against its own inlet density [–]. Fixed, or a fitted line, or leakage through
 * clearances: nozzle flow from discharge pressure and T₁ (1 + (r − 1)(γ − 1)/γ) back to the inlet, over ρ₁ V N.
 * Leakage follows the blower's own ratio, not that of the whole charge path; its warming of the inlet is left out.
 *
 * @param filling fixed, fitted or clearance [–, –, m²]
 * @param state pressure ratio, speed, displacement and gas [–, rev/s, m³, K]
 * @throws RangeError if an argument is outside its span, or leakage leaves less than 5 % of the displacement
 * @source isentropic nozzle flow for the clearances; the fitted shape is common practice, no source
 * @example blowerVolumetricEfficiency({ kind: "clearance", area: 7e-5 }, { pressureRatio: 1.6, blowerSpeed: 200, displacementPerTurn: 0.0023, inletTemperature: 300, gasConstant: 287.05, ratioOfSpecificHeats: 1.4 }) // 0.9557421
 */
export function blowerVolumetricEfficiency(filling: BlowerFilling, state: LeakageState): Fraction {
  requirePositive("blowerVolumetricEfficiency: pressureRatio", state.pressureRatio);
  requirePositive("blowerVolumetricEfficiency: blowerSpeed", state.blowerSpeed, "rev/s");
  const efficiency = filled(filling, state);
  if (efficiency >= 0.05 && efficiency <= 1) return efficiency as Fraction;
  throw new RangeError(
    `blowerVolumetricEfficiency: leakage at pressure ratio ${state.pressureRatio.toPrecision(4)} and ${state.blowerSpeed.toPrecision(4)} rev/s leaves ${efficiency.toPrecision(3)} of the displacement; it must be 0.05 to 1`,
  );
}

function filled(filling: BlowerFilling, state: LeakageState): number {
  const rise = Math.max(0, state.pressureRatio - 1);
  if (filling.kind === "fixed") return filling.volumetricEfficiency;
  if (filling.kind === "fitted") {
    requirePositive("blowerVolumetricEfficiency: referenceSpeed", filling.referenceSpeed, "rev/s");
    const speed = state.blowerSpeed / filling.referenceSpeed;
    const slip = filling.slipPerRoot * Math.sqrt(rise) + filling.slipPerRatio * rise;
    return 1 - slip / speed - filling.inletLoss * speed ** 2;
  }
  requireNotNegative("blowerVolumetricEfficiency: clearance area", filling.area, "m²");
  requireWithin("blowerVolumetricEfficiency: ratioOfSpecificHeats", state.ratioOfSpecificHeats, [1.0001, 1.7]);
  const { inletTemperature, gasConstant, ratioOfSpecificHeats: g } = state;
  const leak = nozzleMassFlow(filling.area, {
    pressure: (1 + rise) as Pressure, // in units of the inlet pressure, which cancels
    temperature: (inletTemperature * (1 + (rise * (g - 1)) / g)) as Temperature,
    downstreamPressure: 1 as Pressure,
    gasConstant,
    ratioOfSpecificHeats: g,
  });
  return 1 - (leak * gasConstant * inletTemperature) / (state.displacementPerTurn * state.blowerSpeed);
}
