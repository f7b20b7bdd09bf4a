import type { Gas } from "../../fluid";
import type { Fraction, Power, Pressure, Ratio, RotationalSpeed, SpecificEnergy, Temperature } from "../../quantity/kinds";
import type { MarchedBank } from "../path/marchState";
import { type TurbineWork, turbineExpansionRatio, turbineWork } from "../turbineField";
import { wastegateFraction } from "../wastegate";

/** What the turbines of a bank do on a trial. */
export interface TurbineState {
  readonly bank: MarchedBank;
  readonly wastegateFraction: Fraction;
  readonly inletTemperature: Temperature;
  readonly outletTemperature: Temperature;
  readonly inletPressure: Pressure;
  readonly outletPressure: Pressure;
  readonly expansionRatio: Ratio;
  readonly work: TurbineWork;
  /** power at the wheels of all turbines that holds the balance of the shafts [W] */
  readonly power: Power;
  /** power that the gas would give [W] */
  readonly available: number;
}

/** Temperatures before, between and after the turbines, if each gives what its compressors take. */
export function turbineTemperatures(
  banks: readonly MarchedBank[],
  gas: Gas,
  flow: number,
  inletTemperature: Temperature,
): readonly Temperature[] {
  const temperatures = [inletTemperature];
  let enthalpy: number = gas.enthalpy(inletTemperature);
  for (let i = banks.length - 1; i >= 0; i--) {
    enthalpy -= banks[i]!.power / banks[i]!.element.mechanicalEfficiency / flow;
    temperatures.push(gas.temperatureAtEnthalpy(enthalpy as SpecificEnergy));
  }
  return temperatures;
}

interface TurbinePlace {
  readonly gas: Gas;
  readonly flow: number;
  readonly before: Temperature;
  readonly after: Temperature;
  readonly outletPressure: Pressure;
}

/** What the turbines of a bank do with the exhaust that reaches them. */
export function turbineState(bank: MarchedBank, { gas, flow, before, after, outletPressure }: TurbinePlace): TurbineState {
  const { element, speed } = bank;
  const past = wastegateFraction(element.wastegate, bank.outlet.pressure);
  const through = flow * (1 - past);
  const expansionRatio = turbineExpansionRatio(element.turbine, {
    massFlow: through / element.count,
    temperature: before,
    downstreamPressure: outletPressure,
    gasConstant: gas.gasConstant,
    ratioOfSpecificHeats: gas.ratioOfSpecificHeats(before),
  });
  const work = turbineWork(element.turbine, {
    speed: speed as RotationalSpeed,
    temperature: before,
    expansionRatio,
    gas,
  });
  return {
    bank,
    wastegateFraction: past,
    inletTemperature: before,
    outletTemperature: after,
    inletPressure: (outletPressure * expansionRatio) as Pressure,
    outletPressure,
    expansionRatio,
    work,
    power: (bank.power / element.mechanicalEfficiency) as Power,
    available: through * work.specificWork,
  };
}
