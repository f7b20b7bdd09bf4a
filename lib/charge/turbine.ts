import { type Gas, gasTemperatureSpan } from "../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../quantity/guard";
import type {
  Density,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  SpecificEnergy,
  Temperature,
} from "../quantity/kinds";

/** What a turbine has to drive, and what it has to do it with. */
export interface TurbineDuty {
  /** power that the compressors take, without bearing losses [W], 0 or above */
  readonly compressorPower: Power;
  /** flow of exhaust gas from the engine [kg/s], above 0 */
  readonly exhaustFlow: MassFlow;
  /** part of it that a wastegate leads past the turbine [–], 0 to 0.95; 0 if left out */
  readonly wastegateFraction?: Fraction;
  /** total temperature at the turbine inlet [K], within the gas's span */
  readonly inletTemperature: Temperature;
  /** total-to-static efficiency [–], 0.2 to 1 */
  readonly isentropicEfficiency: Fraction;
  /** compressor over turbine power, bearings between them [–], 0.5 to 1; 1 where a map's turbine efficiency includes the bearings */
  readonly mechanicalEfficiency: Fraction;
  /** the exhaust gas [–] */
  readonly gas: Gas;
}

/** How a turbine must expand its gas to hold the balance of its shaft. */
export interface TurbineBalance {
  /** total pressure before over static pressure after the turbine [–] */
  readonly expansionRatio: Ratio;
  /** power that the gas gives to the wheel [W] */
  readonly turbinePower: Power;
  /** power lost in the bearings [W] */
  readonly mechanicalLoss: Power;
  /** temperature after the turbine, mixed with what passed the wastegate [K] */
  readonly outletTemperature: Temperature;
  /** compressor power for which an expansion down to the coldest temperature of the gas tables would do [W] */
  readonly availablePower: Power;
}

/**
 * Expansion ratio that balances a turbocharger's shaft, with specific heat that varies with temperature [–, W, K]:
 * the ideal drop is h₃ − hₛ = P_c/(η_m η_t ṁ_t), and ln ER = (s(T₃) − s(Tₛ))/R on that isentrope.
 * Steady mean values: pulses, which give a turbine more than their mean says, are left out.
 *
 * @param duty power, flow, temperature, efficiencies and gas [W, kg/s, K, –]
 * @throws RangeError if an argument is outside its span; "not enough exhaust energy" with the power needed and available
 * @source N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (power balance, from memory)
 * @example turbineBalance({ compressorPower: 42.39e3, exhaustFlow: 0.366, inletTemperature: 900, isentropicEfficiency: 0.7, mechanicalEfficiency: 0.97, gas: burntGas({ excessAirRatio: 1.5 }) }).expansionRatio // 2.0557
 */
export function turbineBalance(duty: TurbineDuty): TurbineBalance {
  const { compressorPower, exhaustFlow, wastegateFraction = 0, inletTemperature, gas } = duty;
  requireNotNegative("turbineBalance: compressorPower", compressorPower, "W");
  requirePositive("turbineBalance: exhaustFlow", exhaustFlow, "kg/s");
  requireWithin("turbineBalance: wastegateFraction", wastegateFraction, [0, 0.95]);
  requireWithin("turbineBalance: isentropicEfficiency", duty.isentropicEfficiency, [0.2, 1]);
  requireWithin("turbineBalance: mechanicalEfficiency", duty.mechanicalEfficiency, [0.5, 1]);

  const inlet = gas.enthalpy(inletTemperature);
  const turbinePower = compressorPower / duty.mechanicalEfficiency;
  const usable = duty.isentropicEfficiency * exhaustFlow * (1 - wastegateFraction);
  const idealOutlet = inlet - turbinePower / usable;
  const coldest = gas.enthalpy(gasTemperatureSpan[0] as Temperature);
  const availablePower = duty.mechanicalEfficiency * usable * (inlet - coldest);
  if (!(idealOutlet > coldest)) {
    throw new RangeError(
      `turbineBalance: not enough exhaust energy; the compressors need ${kilowatts(compressorPower)}, the exhaust at ${inletTemperature.toFixed(0)} K gives at most ${kilowatts(availablePower)}`,
    );
  }
  const idealTemperature = gas.temperatureAtEnthalpy(idealOutlet as SpecificEnergy);
  const drop = gas.entropy(inletTemperature) - gas.entropy(idealTemperature);
  return {
    expansionRatio: Math.exp(drop / gas.gasConstant) as Ratio,
    turbinePower: turbinePower as Power,
    mechanicalLoss: (turbinePower - compressorPower) as Power,
    outletTemperature: gas.temperatureAtEnthalpy((inlet - turbinePower / exhaustFlow) as SpecificEnergy),
    availablePower: availablePower as Power,
  };
}

/** Exhaust on its way from the turbine to the open air. */
export interface ExhaustPipe {
  /** pressure of the surroundings [Pa], above 0 */
  readonly ambientPressure: Pressure;
  /** flow of exhaust gas [kg/s], 0 or above */
  readonly exhaustFlow: MassFlow;
  /** temperature after the turbine [K], above 0 */
  readonly temperature: Temperature;
  /** flow at which the pipe's loss was measured [kg/s], above 0 */
  readonly ratedFlow: MassFlow;
  /** density after the turbine at which it was measured [kg/m³], above 0 */
  readonly ratedDensity: Density;
  /** pressure lost there [Pa], 0 or above */
  readonly ratedLoss: PressureDifference;
  /** the exhaust gas [–] */
  readonly gas: Gas;
}

/**
 * Pressure after the turbine [Pa]: p₄ = p_ambient + Δp_r (ṁ/ṁ_r)² ρ_r R T₄/p₄, solved for p₄.
 *
 * @param pipe pressure, flow, temperature, rated loss and gas [Pa, kg/s, K, kg/m³]
 * @throws RangeError if an argument is outside its span
 * @source similarity of turbulent losses, ideal gas law
 * @example pressureAfterTurbine({ ambientPressure: 1e5, exhaustFlow: 1.1, temperature: 800, ratedFlow: 1.1, ratedDensity: 0.45, ratedLoss: 8000, gas: dryAir }) // 107678
 */
export function pressureAfterTurbine(pipe: ExhaustPipe): Pressure {
  const { ambientPressure, exhaustFlow, temperature, ratedFlow, ratedDensity, ratedLoss, gas } = pipe;
  requirePositive("pressureAfterTurbine: ambientPressure", ambientPressure, "Pa");
  requireNotNegative("pressureAfterTurbine: exhaustFlow", exhaustFlow, "kg/s");
  requirePositive("pressureAfterTurbine: temperature", temperature, "K");
  requirePositive("pressureAfterTurbine: ratedFlow", ratedFlow, "kg/s");
  requirePositive("pressureAfterTurbine: ratedDensity", ratedDensity, "kg/m³");
  requireNotNegative("pressureAfterTurbine: ratedLoss", ratedLoss, "Pa");
  const loss = ratedLoss * (exhaustFlow / ratedFlow) ** 2 * ratedDensity * gas.gasConstant * temperature; // [Pa²]
  return ((ambientPressure + Math.sqrt(ambientPressure ** 2 + 4 * loss)) / 2) as Pressure;
}

function kilowatts(power: number): string {
  return `${(power / 1000).toFixed(1)} kW`;
}
