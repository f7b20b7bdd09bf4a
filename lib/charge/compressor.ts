import { dryAir, type Gas } from "../fluid";
import { requireNotNegative, requireWithin } from "../quantity/guard";
import type { Fraction, MassFlow, Power, Ratio, SpecificEnergy, Temperature } from "../quantity/kinds";

/** A gas before a compressor, and what the compressor does. */
export interface Compression {
  /** total temperature at the inlet [K], within the gas's span */
  readonly inletTemperature: Temperature;
  /** outlet over inlet pressure [–], 1 to 20 */
  readonly pressureRatio: Ratio;
  /** ideal over actual work [–], 0.2 to 1 */
  readonly isentropicEfficiency: Fraction;
  /** what is compressed [–]; dry air if left out */
  readonly gas?: Gas;
}

/** A gas after a compressor. */
export interface Compressed {
  /** temperature after an ideal compression [K] */
  readonly isentropicTemperature: Temperature;
  /** temperature at the outlet [K] */
  readonly outletTemperature: Temperature;
  /** work put into each kilogram [J/kg] */
  readonly specificWork: SpecificEnergy;
}

/**
 * Outlet state of an adiabatic compressor, with specific heat that varies with temperature [K, J/kg]:
 * h₂ = h₁ + (h₂ₛ − h₁)/η, where T₂ₛ lies on the isentrope of the pressure ratio.
 * Heat that soaks in from a hot turbine is left out.
 *
 * @param compression inlet temperature, pressure ratio, efficiency and gas [K, –, –]
 * @throws RangeError if an argument is outside its span or the outlet is hotter than the gas's span
 * @source S. L. Dixon, C. A. Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, §1.10 (definition, from memory)
 * @example compressorOutlet({ inletTemperature: 298.15, pressureRatio: 2.5, isentropicEfficiency: 0.76 }).outletTemperature // 414.998
 */
export function compressorOutlet(compression: Compression): Compressed {
  const { inletTemperature, pressureRatio, isentropicEfficiency, gas = dryAir } = compression;
  requireWithin("compressorOutlet: pressureRatio", pressureRatio, [1, 20]);
  requireWithin("compressorOutlet: isentropicEfficiency", isentropicEfficiency, [0.2, 1]);
  return compressed(gas, inletTemperature, pressureRatio, isentropicEfficiency);
}

/** As compressorOutlet, unguarded and below a ratio of 1 too, for solvers on their way to an answer. */
export function compressed(
  gas: Gas,
  inletTemperature: Temperature,
  pressureRatio: number,
  efficiency: number,
): Compressed {
  const isentropicTemperature = gas.isentropicTemperature(inletTemperature, pressureRatio as Ratio);
  const inlet = gas.enthalpy(inletTemperature);
  const specificWork = (gas.enthalpy(isentropicTemperature) - inlet) / efficiency;
  return {
    isentropicTemperature,
    outletTemperature: gas.temperatureAtEnthalpy((inlet + specificWork) as SpecificEnergy),
    specificWork: specificWork as SpecificEnergy,
  };
}

/**
 * Power that a compressor puts into a flow [W]: P = ṁ w, at the wheel, without bearing losses.
 *
 * @param massFlow flow through the compressor [kg/s], 0 or above
 * @param compression inlet temperature, pressure ratio, efficiency and gas [K, –, –]
 * @throws RangeError if the flow is negative, or as compressorOutlet
 * @source first law for a steady flow
 * @example compressorPower(0.35, { inletTemperature: 298.15, pressureRatio: 2.5, isentropicEfficiency: 0.76 }) // 41272.5
 */
export function compressorPower(massFlow: MassFlow, compression: Compression): Power {
  requireNotNegative("compressorPower: massFlow", massFlow, "kg/s");
  return (massFlow * compressorOutlet(compression).specificWork) as Power;
}
