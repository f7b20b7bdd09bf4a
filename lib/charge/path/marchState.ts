import type { Gas } from "../../fluid";
import type { Fraction, MassFlow, Power, Pressure, PressureDifference, Ratio, RotationalSpeed, Temperature } from "../../quantity/kinds";
import type { CompressorPoint } from "../map/compressorField";
import type { BlowerElement, CompressorBankElement, CoolerElement, SprayElement } from "./elements";
import type { SprayOutlet } from "./spray";

/** The charge at one place of its path. */
export interface ChargeState {
  readonly pressure: Pressure;
  readonly temperature: Temperature;
  /** charge with its vapour [kg/s] */
  readonly massFlow: MassFlow;
  readonly humidityRatio: Ratio;
  readonly gas: Gas;
}

/** What a bank of compressors did on a march. */
export interface MarchedBank {
  readonly element: CompressorBankElement;
  readonly speed: RotationalSpeed;
  readonly correctedFlow: MassFlow;
  readonly correctedSpeed: RotationalSpeed;
  readonly point: CompressorPoint;
  /** power of all compressors of the bank, without bearings [W] */
  readonly power: Power;
  readonly inlet: ChargeState;
  readonly outlet: ChargeState;
}

/** What a blower did on a march. */
export interface MarchedBlower {
  readonly element: BlowerElement;
  readonly bypassOpen: boolean;
  readonly pressureRatio: Ratio;
  readonly speed: RotationalSpeed;
  readonly volumetricEfficiency: Fraction;
  readonly gasPower: Power;
  readonly shaftPower: Power;
  /** logarithm of the flow that it passes on over the one that marched; 0 with an open bypass */
  readonly mismatch: number;
  /** with an open bypass, logarithm of the flow that it could pass at a ratio of 1 over the one that marched; 0 otherwise */
  readonly surplus: number;
  readonly inlet: ChargeState;
  readonly outlet: ChargeState;
}

export interface MarchedCooler {
  readonly element: CoolerElement;
  /** how much warmer than its element states the cooling stream comes [K] */
  readonly sinkWarming: number;
  readonly effectiveness: Fraction;
  readonly pressureLoss: PressureDifference;
  readonly inlet: ChargeState;
  readonly outlet: ChargeState;
}

export interface MarchedSpray {
  readonly element: SprayElement;
  readonly sprayed: SprayOutlet;
  readonly outlet: ChargeState;
}

/** A march along the path, from the open air to the manifold. */
export interface PathMarch {
  /** states after each element, the open air first; shared with the solver, which does not change it */
  readonly states: readonly ChargeState[];
  readonly banks: readonly MarchedBank[];
  readonly blowers: readonly MarchedBlower[];
  readonly coolers: readonly MarchedCooler[];
  readonly sprays: readonly MarchedSpray[];
  readonly manifold: ChargeState;
}

/** What a march needs beside the path: a speed for each bank and a ratio for each blower, in the order of flow. */
export interface PathUnknowns {
  /** flow of air at the inlet, vapour included [kg/s] */
  readonly airFlow: number;
  /** wheel speeds of the banks [rev/s] */
  readonly wheelSpeeds: readonly number[];
  /** pressure ratios of the blowers [–] */
  readonly blowerRatios: readonly number[];
  /** of each cooler: how much warmer than its element states its cooling stream comes [K] */
  readonly sinkWarmings: readonly number[];
}
