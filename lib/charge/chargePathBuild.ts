import type { RatedRestriction } from "../engine";
import type {
  Count,
  Density,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
  Volume,
} from "../quantity/kinds";
import type { Blower } from "./blower";
import type { ChargeCooler } from "./chargeCooler";

/** The open air that an engine breathes. */
export interface Surroundings {
  /** pressure, vapour included [Pa], above 0 */
  readonly pressure: Pressure;
  /** temperature [K] */
  readonly temperature: Temperature;
  /** water vapour per kilogram of dry air [kg/kg], 0 to 0.2 */
  readonly humidityRatio: Ratio;
}

/** Compressors side by side, each with as much of the flow. */
export interface CompressorBank {
  /** number of turbochargers side by side [–], above 0 */
  readonly count: Count;
  /** ideal over actual work of each compressor [–], 0.2 to 1 */
  readonly compressorEfficiency: Fraction;
}

/** The breathing of a four-stroke engine. */
export interface Breathing {
  /** swept volume of all cylinders [m³], above 0 */
  readonly displacement: Volume;
  /** filling of the cylinders, against manifold density [–], 0.3 to 1.3 */
  readonly volumetricEfficiency: Fraction;
}

/** Everything between the open air and the cylinders: filter → turbochargers → cooler → blower → cooler → manifold. */
export interface ChargePathBuild {
  /** the open air */
  readonly surroundings: Surroundings;
  /** a measured pressure loss of filter and ducts before the compressors */
  readonly filter: RatedRestriction;
  /** turbochargers, side by side */
  readonly turbochargers: CompressorBank;
  /** cooler between turbochargers and blower */
  readonly coolerBeforeBlower: ChargeCooler;
  /** blower driven by the crank */
  readonly blower: Blower;
  /** cooler between blower and manifold; effectiveness and loss 0 for none */
  readonly coolerAfterBlower: ChargeCooler;
  /** warming of the first cooler's sink by each watt from the second, 1/(ṁ c) of water in series [K/W], 0 or above; 0 for air */
  readonly sinkWarmingPerWatt: number;
  /** the engine at the end of the path */
  readonly engine: Breathing;
}

/** State of the charge at one place of its path. */
export interface ChargeStation {
  /** short name for programs */
  readonly key: "ambient" | "filterOutlet" | "compressorOutlet" | "blowerInlet" | "blowerOutlet" | "manifold";
  /** name for readers */
  readonly name: string;
  /** absolute pressure [Pa] */
  readonly pressure: Pressure;
  /** temperature [K] */
  readonly temperature: Temperature;
  /** density [kg/m³] */
  readonly density: Density;
}

/** Share of one element in the rise of pressure from the open air to the manifold. */
export interface PressureShare {
  /** short name for programs */
  readonly key: "filter" | "turbochargers" | "coolerBeforeBlower" | "blower" | "coolerAfterBlower";
  /** name for readers */
  readonly name: string;
  /** outlet over inlet pressure [–] */
  readonly pressureRatio: Ratio;
  /** logarithm of that ratio over the logarithm of the whole, negative for a loss; undefined without any rise [–] */
  readonly share: Fraction | undefined;
}

/** What the compressors do. */
export interface CompressorResult {
  /** outlet over inlet pressure [–] */
  readonly pressureRatio: Ratio;
  /** power of all compressors together, without bearings [W] */
  readonly power: Power;
  /** work put into each kilogram [J/kg] */
  readonly specificWork: SpecificEnergy;
  /** flow through one compressor [kg/s] */
  readonly massFlowEach: MassFlow;
}

/** What the blower does. */
export interface BlowerResult {
  /** outlet over inlet pressure [–] */
  readonly pressureRatio: Ratio;
  /** blower speed [rev/s] */
  readonly speed: RotationalSpeed;
  /** delivered over displaced volume, at inlet density [–]; with an open bypass what it would be at a ratio of 1 */
  readonly volumetricEfficiency: Fraction;
  /** power put into the gas [W] */
  readonly gasPower: Power;
  /** power at the drive [W] */
  readonly shaftPower: Power;
}

/** What a charge cooler does. */
export interface CoolerResult {
  /** heat given up to the sink, without condensation [W] */
  readonly heat: Power;
  /** temperature at which its sink enters [K] */
  readonly sinkTemperature: Temperature;
  /** pressure lost [Pa] */
  readonly pressureLoss: PressureDifference;
  /** liquid water wrung out, which the stations downstream still carry as vapour [kg/s] */
  readonly condensateFlow: MassFlow;
  /** heat that condensation adds to the cooler's duty [W] */
  readonly latentHeat: Power;
}

/** How well the equations of a point are met. */
export interface Convergence {
  /** largest relative residual of any equation [–] */
  readonly residual: number;
  /** steps taken by the solver */
  readonly iterations: number;
}

/** The charge from the open air to the manifold. */
export interface ChargePath {
  /** flow of air, vapour included [kg/s] */
  readonly airFlow: MassFlow;
  /** flow of dry air [kg/s] */
  readonly dryAirFlow: MassFlow;
  /** states in the order of flow */
  readonly stations: readonly ChargeStation[];
  /** shares in the order of flow */
  readonly pressureShares: readonly PressureShare[];
  /** manifold pressure over pressure of the open air [–] */
  readonly overallPressureRatio: Ratio;
  readonly turbochargers: CompressorResult;
  readonly coolerBeforeBlower: CoolerResult;
  readonly blower: BlowerResult;
  readonly coolerAfterBlower: CoolerResult;
  /** absolute pressure at the blower's inlet [Pa] */
  readonly blowerInletPressure: Pressure;
  /** absolute pressure in the manifold [Pa] */
  readonly manifoldPressure: Pressure;
  /** temperature in the manifold [K] */
  readonly manifoldTemperature: Temperature;
  readonly convergence: Convergence;
}
