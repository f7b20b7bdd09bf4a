import type {
  Density,
  Fraction,
  Pressure,
  Ratio,
  Span,
  SpecificEnergy,
  SpecificEntropy,
  SpecificHeat,
  Temperature,
  Velocity,
} from "../quantity";

/** An ideal gas of fixed composition whose specific heat varies with temperature. */
export interface Gas {
  readonly name: string;
  /** R of the mixture [J/(kg·K)] */
  readonly gasConstant: SpecificHeat;
  /** molar mass of the mixture [kg/mol] */
  readonly molarMass: number;
  /** specific heat at constant pressure [J/(kg·K)] */
  specificHeat(temperature: Temperature): SpecificHeat;
  /** sensible enthalpy, 0 at 298.15 K [J/kg] */
  enthalpy(temperature: Temperature): SpecificEnergy;
  /** ∫ cp dT/T, 0 at 298.15 K; the part of pressure, −R ln p, is left out [J/(kg·K)] */
  entropy(temperature: Temperature): SpecificEntropy;
  /** temperature at which the gas has this sensible enthalpy [K] */
  temperatureAtEnthalpy(enthalpy: SpecificEnergy): Temperature;
  /** temperature at which ∫ cp dT/T from 298.15 K has this value [K] */
  temperatureAtEntropy(entropy: SpecificEntropy): Temperature;
  /** temperature after an ideal change of pressure, new over old: above 1 compression, below 1 expansion [K] */
  isentropicTemperature(temperature: Temperature, pressureRatio: Ratio): Temperature;
  /** cp / (cp − R) [–] */
  ratioOfSpecificHeats(temperature: Temperature): Ratio;
  /** p / (R T) [kg/m³] */
  density(temperature: Temperature, pressure: Pressure): Density;
  /** √(γ R T) [m/s] */
  speedOfSound(temperature: Temperature): Velocity;
  /** this gas and another mixed by mass, a share of the other, 0 to 1; quickly made, for solvers; it bears the other's name */
  blendedWith(other: Gas, share: Fraction): Gas;
}

/** Temperatures for which a gas answers [K]. Above, the products of combustion begin to dissociate. */
export const gasTemperatureSpan: Span = [200, 2500];

/** Temperature at which the sensible enthalpy and the entropy of every gas are zero [K]. */
export const gasReferenceTemperature = 298.15 as Temperature;
