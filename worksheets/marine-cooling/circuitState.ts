import { heatCapacityRate } from "../../lib/cooling";
import { type DieselFuel, glycolCoolant, type Liquid } from "../../lib/fluid";
import type {
  Density,
  Fraction,
  HeatTransferCoefficient,
  MassFlow,
  Power,
  Ratio,
  SpecificHeat,
  Temperature,
  TemperatureDifference,
  ThermalConductance,
  VolumeFlow,
} from "../../lib/quantity";
import type { MarineBalance } from "./balanceOf";
import type { BranchFlow, LineRow } from "./hydraulics";
import type { ElementKey } from "./inputs";
import type { CooledCharge, SolvedEngine } from "./solvedEngine";

/** Exchangers, circuits and liquids, as the inputs state them. */
export interface CircuitSetup {
  readonly rawWaterLine: readonly LineRow[];
  readonly branchFlow: BranchFlow;
  readonly strainerBlocked: Fraction;
  readonly exchangerSeaFlow: VolumeFlow;
  readonly seaSideShare: Fraction;
  readonly foulingResistance: number;
  readonly cleanCoefficient: HeatTransferCoefficient;
  readonly salinity: Fraction;
  readonly jacketCooledBy: "exchanger" | "keel";
  readonly jacketFlow: VolumeFlow;
  readonly glycolShare: Fraction;
  readonly thermostatOpens: Temperature;
  readonly thermostatSpan: TemperatureDifference;
  readonly jacketExchanger: ThermalConductance;
  readonly keelCooler: ThermalConductance;
  readonly chargeCooledBy: "sea" | "loop";
  readonly loopTemperature: Temperature;
  readonly loopFlow: VolumeFlow;
  readonly loopCooler: ThermalConductance;
  readonly oilFlow: VolumeFlow;
  readonly oilDensity: Density;
  readonly oilSpecificHeat: SpecificHeat;
  readonly oilCooler: ThermalConductance;
  readonly gearOilFlow: VolumeFlow;
  readonly gearCooler: ThermalConductance;
  readonly fuelCooler: ThermalConductance;
  readonly fuelReturnFlow: MassFlow;
  readonly fuel: DieselFuel;
  readonly fuelTemperature: Temperature;
}

/** A charge cooler's charge. */
export interface ChargeDuty {
  readonly heat: Power;
  readonly hotInlet: Temperature;
  readonly hotOutlet: Temperature;
}

/** What the engine gives to its circuits, and the sea that must take it. */
export interface CircuitState {
  readonly seaTemperature: Temperature;
  readonly rawWaterFlow: VolumeFlow;
  /** engine speed over the promised one: jacket, oil and gear pumps turn with it */
  readonly speedRatio: Ratio;
  readonly jacketHeat: Power;
  readonly oilHeat: Power;
  readonly gearHeat: Power;
  readonly fuelReturnHeat: Power;
  readonly aftercooler: ChargeDuty;
  readonly intercooler: ChargeDuty;
  /** share of the flow that a stuck thermostat lets through, for a failure */
  readonly stuckOpening?: Fraction;
  /** part of an element's UA that is left, for a failure */
  readonly conductanceLeft?: Readonly<Partial<Record<ElementKey, Fraction>>>;
}

/** What a solved point of the engine gives to the circuits. */
export function heatsOf(
  engine: SolvedEngine,
  { lines }: MarineBalance,
): Pick<CircuitState, "jacketHeat" | "oilHeat" | "gearHeat" | "fuelReturnHeat" | "aftercooler" | "intercooler"> {
  const line = (key: string) => lines.find((each) => each.key === key)!.power;
  return {
    jacketHeat: line("jacket"),
    oilHeat: line("oil"),
    gearHeat: line("gear"),
    fuelReturnHeat: line("fuelReturn"),
    aftercooler: chargeDuty(engine.aftercooler),
    intercooler: chargeDuty(engine.intercooler),
  };
}

function chargeDuty({ heat, latentHeat, hotInlet, hotOutlet }: CooledCharge): ChargeDuty {
  return { heat: (heat + latentHeat) as Power, hotInlet, hotOutlet };
}

/** Heat capacity rate of a flow of coolant [W/K]. */
export function coolantCapacityRate(flow: VolumeFlow, glycolShare: Fraction, temperature: Temperature) {
  return liquidRate(glycolCoolant(glycolShare), flow, temperature);
}

export function liquidRate(liquid: Liquid, flow: VolumeFlow, temperature: Temperature): ThermalConductance {
  return heatCapacityRate((flow * liquid.density(temperature)) as MassFlow, liquid.specificHeat(temperature));
}
