import type {
  Area,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Temperature,
  Torque,
  Velocity,
} from "../../quantity/kinds";
import type { Convergence } from "../chargePathBuild";
import type { DemandPowers } from "../demandBuild";
import type { ChargeElement } from "../path/elements";
import type { LimitMargin } from "./limits";

/** State of the charge at one place of its path. */
export interface PathStation {
  /** place along the path: 0 the open air, then one after each element */
  readonly number: number;
  /** the element behind which it stands; undefined for the open air */
  readonly after: ChargeElement["kind"] | undefined;
  /** name for readers */
  readonly name: string;
  readonly pressure: Pressure;
  readonly temperature: Temperature;
  readonly massFlow: MassFlow;
  readonly humidityRatio: Ratio;
  /** outlet over inlet pressure of the element before it, 1 for the open air [–] */
  readonly pressureRatio: Ratio;
  /** logarithm of that ratio over that of the whole path, negative for a loss; undefined without any rise [–] */
  readonly share: Fraction | undefined;
}

/** One bank of turbochargers at work. */
export interface BankResult {
  readonly name: string;
  readonly wheelSpeed: RotationalSpeed;
  readonly tipSpeed: Velocity | undefined;
  readonly correctedFlow: MassFlow;
  readonly correctedSpeed: RotationalSpeed;
  readonly pressureRatio: Ratio;
  /** ideal over actual work, in the charge as it is [–] */
  readonly compressorEfficiency: Fraction;
  /** whether the point lies outside the compressor's field */
  readonly extrapolated: boolean;
  /** (ṁ − ṁ_surge)/ṁ [–] */
  readonly surgeMargin: Fraction;
  /** (ṁ_choke − ṁ)/ṁ_choke [–] */
  readonly chokeMargin: Fraction;
  /** of all compressors of the bank, without bearings [W] */
  readonly compressorPower: Power;
  /** of all its turbines, at the wheel [W] */
  readonly turbinePower: Power;
  readonly turbineEfficiency: Fraction;
  /** tip speed over spouting velocity [–] */
  readonly speedRatio: Ratio;
  readonly expansionRatio: Ratio;
  readonly turbineInletPressure: Pressure;
  readonly turbineInletTemperature: Temperature;
  readonly turbineOutletTemperature: Temperature;
  readonly wastegateFraction: Fraction;
  /** effective area of one turbine, all entries [m²] */
  readonly turbineAreaEach: Area;
}

/** One blower at work. */
export interface BlowerWork {
  readonly name: string;
  readonly bypassOpen: boolean;
  readonly bypassShare: Fraction;
  readonly pressureRatio: Ratio;
  readonly speed: RotationalSpeed;
  readonly volumetricEfficiency: Fraction;
  readonly gasPower: Power;
  readonly shaftPower: Power;
  /** at the blower's shaft, for the drive [N·m] */
  readonly shaftTorque: Torque;
  readonly outletTemperature: Temperature;
}

/** One charge cooler at work. */
export interface CoolerWork {
  readonly name: string;
  /** temperature at which its cooling stream comes [K] */
  readonly sinkTemperature: Temperature;
  /** how much of it another cooler has given the stream before [K] */
  readonly sinkWarming: number;
  readonly effectiveness: Fraction;
  readonly heat: Power;
  readonly pressureLoss: PressureDifference;
  /** liquid water that the cooler wrings out; the stations behind it still carry it as vapour [kg/s] */
  readonly condensateFlow: MassFlow;
  /** heat that condensation adds to the cooler's duty [W] */
  readonly latentHeat: Power;
}

/** One spray at work. */
export interface SprayWork {
  readonly name: string;
  readonly waterFlow: MassFlow;
  readonly evaporatedFlow: MassFlow;
  readonly saturated: boolean;
  readonly temperatureDrop: number;
}

/** How well a point's balances close. */
export interface OperatingConvergence extends Convergence {
  /** mass, out less in over in, of the whole engine [–] */
  readonly massResidual: number;
  /** energy, in less out over the fuel's power, of the whole engine [–] */
  readonly energyResidual: number;
}

/** What chosen parts give at a speed and load. */
export interface OperatingPoint {
  readonly engineSpeed: RotationalSpeed;
  readonly brakePower: Power;
  readonly torque: Torque;
  readonly fuelFlow: MassFlow;
  /** flow of air at the inlet, vapour included [kg/s] */
  readonly airFlow: MassFlow;
  readonly dryAirFlow: MassFlow;
  readonly excessAirRatio: Ratio;
  /** in the order of flow, numbered from the open air */
  readonly stations: readonly PathStation[];
  readonly manifoldPressure: Pressure;
  readonly manifoldTemperature: Temperature;
  readonly banks: readonly BankResult[];
  readonly blowers: readonly BlowerWork[];
  readonly coolers: readonly CoolerWork[];
  readonly sprays: readonly SprayWork[];
  readonly powers: DemandPowers;
  readonly peakPressure: Pressure;
  readonly frictionMeanEffectivePressure: PressureDifference;
  readonly brakeMeanEffectivePressure: PressureDifference;
  readonly exhaustFlow: MassFlow;
  /** before the first turbine [K] */
  readonly exhaustTemperature: Temperature;
  /** before the first turbine: what the cylinders push against [Pa] */
  readonly backPressure: Pressure;
  /** after the last turbine */
  readonly pipePressure: Pressure;
  readonly pipeTemperature: Temperature;
  readonly heatToWalls: Power;
  /** heat that leaves with the exhaust, above that of the air and water that came in [W] */
  readonly exhaustHeat: Power;
  /** distance from every limit */
  readonly margins: readonly LimitMargin[];
  readonly convergence: OperatingConvergence;
}
