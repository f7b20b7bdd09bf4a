import type { FrictionCoefficients, RatedRestriction } from "../engine";
import type { DieselFuel } from "../fluid";
import type {
  Area,
  Count,
  Fraction,
  Length,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  SpecificEnergy,
  Temperature,
} from "../quantity/kinds";
import type { Breathing, ChargePath, ChargePathBuild, CompressorBank, Convergence } from "./chargePathBuild";

/** Turbochargers side by side: compressors and the turbines that drive them. */
export interface TurbochargerBank extends CompressorBank {
  readonly count: Count;
  /** total-to-static efficiency of each turbine [–], 0.2 to 1 */
  readonly turbineEfficiency: Fraction;
  /** compressor over turbine power [–], 0.5 to 1; 1 where the turbine's efficiency includes the bearings */
  readonly mechanicalEfficiency: Fraction;
  /** part of the exhaust led past the turbines [–], 0 to 0.95; 0 if left out */
  readonly wastegateFraction?: Fraction;
}

/** A four-stroke diesel, as far as a demand for power asks. */
export interface DemandEngine extends Breathing {
  /** piston travel from one dead centre to the other [m], above 0 */
  readonly stroke: Length;
  /** gross indicated power over fuel power [–], 0.05 to 0.65 */
  readonly grossIndicatedEfficiency: Fraction;
  /** heat from the gas to cylinder, head and port walls over fuel power [–], 0 to 0.6; with the efficiency at most 1 */
  readonly heatToWallsShare: Fraction;
  /** volume at intake closing over clearance volume [–], 1 to 30 */
  readonly effectiveCompressionRatio: Ratio;
  /** polytropic exponent of compression [–], 1 to 1.5 */
  readonly compressionExponent: Ratio;
  /** peak over compression pressure [–], 1 to 3 */
  readonly firingRiseRatio: Ratio;
  /** coefficients of the friction line; chenFlynnCoefficients if left out */
  readonly friction?: FrictionCoefficients;
  /** pressure lost in intake and exhaust valves together [Pa], 0 or above; 0 if left out */
  readonly valveLoss?: PressureDifference;
}

/** Everything from the open air to the exhaust pipe, and what the crank drives beside the load. */
export interface DemandBuild extends ChargePathBuild {
  readonly turbochargers: TurbochargerBank;
  readonly engine: DemandEngine;
  /** the fuel, which enters at 298.15 K */
  readonly fuel: DieselFuel;
  /** air wanted over the least air for complete combustion [–], 1 to 20 */
  readonly excessAirRatio: Ratio;
  /** power of alternator, pumps and fan at the crank [W], 0 or above */
  readonly accessoryPower: Power;
  /** work of the high-pressure pump for each kilogram injected [J/kg], 0 or above */
  readonly fuelPumpWork: SpecificEnergy;
  /** a measured pressure loss of everything after the turbines, at the density there */
  readonly exhaustPipe: RatedRestriction;
  /** whether an exhaust pressure below the manifold's pushes the pistons (true) or is lost in the valves (false) */
  readonly pumpingGainCounts: boolean;
}

/** Where the power at the pistons goes. */
export interface DemandPowers {
  /** at the flywheel [W] */
  readonly brake: Power;
  /** friction [W] */
  readonly friction: Power;
  /** alternator, pumps and fan [W] */
  readonly accessories: Power;
  /** blower at its drive [W] */
  readonly blower: Power;
  /** exchange of gas, negative for a gain [W] */
  readonly pumping: Power;
  /** high-pressure fuel pump [W] */
  readonly fuelPump: Power;
  /** sum of all of these: gross indicated power [W] */
  readonly indicated: Power;
  /** fuel flow times lower heating value [W] */
  readonly fuel: Power;
}

/** The exhaust from the cylinders to the pipe. */
export interface DemandExhaust {
  /** flow of exhaust gas [kg/s] */
  readonly flow: MassFlow;
  /** before the turbines [K] */
  readonly turbineInletTemperature: Temperature;
  /** before the turbines [Pa] */
  readonly turbineInletPressure: Pressure;
  /** after the turbines and wastegates [K] */
  readonly turbineOutletTemperature: Temperature;
  /** after the turbines [Pa] */
  readonly turbineOutletPressure: Pressure;
  /** pressure before over after the turbines [–] */
  readonly expansionRatio: Ratio;
  /** power of all turbines at the wheel [W] */
  readonly turbinePower: Power;
  /** power lost in the turbochargers' bearings [W] */
  readonly bearingLoss: Power;
  /** effective nozzle area of one turbine that passes its flow at that ratio, undefined without expansion [m²] */
  readonly turbineAreaEach: Area | undefined;
  /** heat that leaves, above that of the air that came in [W] */
  readonly heat: Power;
}

/** What a wanted power asks for. */
export interface DemandPoint {
  /** "as wanted", or "more than wanted" where blower and engine take more air than that with idle turbochargers */
  readonly air: "as wanted" | "more than wanted";
  /** air over the least air for complete combustion [–] */
  readonly excessAirRatio: Ratio;
  readonly fuelFlow: MassFlow;
  readonly powers: DemandPowers;
  readonly path: ChargePath;
  readonly exhaust: DemandExhaust;
  /** estimated highest pressure in the cylinder [Pa] */
  readonly peakPressure: Pressure;
  /** mean effective pressure lost to friction [Pa] */
  readonly frictionMeanEffectivePressure: PressureDifference;
  /** mean effective pressure at the brake [Pa] */
  readonly brakeMeanEffectivePressure: PressureDifference;
  /** heat from the gas to cylinder, head and port walls [W] */
  readonly heatToWalls: Power;
  /** residual: of power over gross indicated power, and of the charge path; iterations: trials of fuel flow */
  readonly convergence: Convergence;
}
