import type { RatedRestriction } from "../../engine";
import type { Count, Fraction, Length, RotationalSpeed, Temperature, Velocity } from "../../quantity/kinds";
import type { Blower } from "../blower";
import type { CompressorField } from "../map/compressorField";
import type { TurbineField } from "../turbineField";
import type { Wastegate } from "../wastegate";
import type { RatedCooling } from "./ratedCooler";
import type { WaterSpray } from "./spray";

interface Named {
  /** name for readers */
  readonly name: string;
}

/** Filter, duct, throttle: something that only costs pressure. */
export interface RestrictionElement extends Named {
  readonly kind: "restriction";
  /** a measured pressure loss */
  readonly restriction: RatedRestriction;
}

/** Turbochargers side by side: compressors in this place of the path, and the turbines that drive them. */
export interface CompressorBankElement extends Named {
  readonly kind: "compressorBank";
  /** number of turbochargers side by side [–], above 0 */
  readonly count: Count;
  /** what each compressor does */
  readonly compressor: CompressorField;
  /** what each turbine does; the bank nearest to the engine has its turbines nearest to the engine */
  readonly turbine: TurbineField;
  /** compressor over turbine power [–], 0.5 to 1; 1 where the turbine's efficiency includes the bearings */
  readonly mechanicalEfficiency: Fraction;
  /** part of the exhaust led past the turbines; none if left out */
  readonly wastegate?: Wastegate;
  /** highest wheel speed [rev/s]; the end of the compressor's field at its reference state if left out */
  readonly highestSpeed?: RotationalSpeed;
  /** highest speed of the compressor's tip [m/s]; no limit if left out */
  readonly highestTipSpeed?: Velocity;
  /** least distance from surge, (ṁ − ṁ_surge)/ṁ [–]; 0 if left out */
  readonly leastSurgeMargin?: Fraction;
  /** least distance from choke, (ṁ_choke − ṁ)/ṁ_choke [–]; 0 if left out */
  readonly leastChokeMargin?: Fraction;
}

/** A charge cooler of fixed effectiveness. */
export interface FixedCooling {
  readonly kind: "fixed";
  /** cooling of the charge over the most that its sink allows [–], 0 to 1 */
  readonly effectiveness: Fraction;
  /** temperature at which the sink enters [K] */
  readonly sinkTemperature: Temperature;
}

/** A charge cooler. */
export interface CoolerElement extends Named {
  readonly kind: "cooler";
  /** how it cools: a fixed effectiveness, or one rated point */
  readonly cooling: FixedCooling | RatedCooling;
  /** a measured pressure loss */
  readonly restriction: RatedRestriction;
  /** the cooler that its cooling stream has passed before, if that stands in the path; none if left out */
  readonly warmedBy?: SinkWarming;
}

/** Coolers whose cooling stream passes one after the other. */
export interface SinkWarming {
  /** name of the cooler that the stream has passed */
  readonly cooler: string;
  /** warming of the stream for each watt of heat that it took there, at the speed for which the build is stated [K/W], 0 or above */
  readonly perWatt: number;
}

/** Water sprayed into the charge. */
export interface SprayElement extends Named {
  readonly kind: "spray";
  readonly spray: WaterSpray;
}

/** A blower driven by the crank, with its bypass. */
export interface BlowerElement extends Named {
  readonly kind: "blower";
  readonly blower: Blower;
  /** "closed"; "open", so that it turns without load; "automatic" opens where the blower would be a restriction. The blower's own bypassOpen counts as "open"; "closed" if left out */
  readonly bypass?: "closed" | "open" | "automatic";
  /** part of the delivered flow that a bypass valve leads back to the inlet [–], 0 to 0.9; 0 if left out */
  readonly bypassShare?: Fraction;
  /** highest blower speed [rev/s]; no limit if left out */
  readonly highestSpeed?: RotationalSpeed;
  /** highest speed of the rotors' tips [m/s], with their diameter; no limit if left out */
  readonly highestTipSpeed?: Velocity;
  /** diameter of the rotors [m]; needed for the tip speed */
  readonly rotorDiameter?: Length;
  /** highest temperature at the outlet [K]; no limit if left out */
  readonly highestOutletTemperature?: Temperature;
}

/** A vessel before the cylinders: in steady flow it changes nothing. */
export interface PlenumElement extends Named {
  readonly kind: "plenum";
}

/** One place of the charge path. */
export type ChargeElement =
  | RestrictionElement
  | CompressorBankElement
  | CoolerElement
  | SprayElement
  | BlowerElement
  | PlenumElement;
