import type {
  Density,
  Pressure,
  Ratio,
  Span,
  SpecificEnergy,
  SpecificEntropy,
  SpecificHeat,
  Temperature,
  Velocity,
} from "../quantity";
import { requirePositive, requireWithin } from "../quantity";
import { HeatCapacityCurve } from "./heatCapacityCurve";
import {
  type Composition,
  type HeatCapacityCoefficients,
  molarGasConstant,
  type Species,
  species,
  speciesNames,
} from "./species";

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
}

/** Temperatures for which a gas answers [K]. Above, the products of combustion begin to dissociate. */
export const gasTemperatureSpan: Span = [200, 2500];

/** Temperature at which the sensible enthalpy and the entropy of every gas are zero [K]. */
export const gasReferenceTemperature = 298.15 as Temperature;

/**
 * An ideal gas of the given composition [–]; its specific heat is the sum of those of its species by amount of substance.
 * Leaves out the pressure dependence of a real gas (cp of air near 300 K grows about 0.2 % a bar, from memory) and dissociation.
 * The entropy of mixing is constant and therefore left out too.
 *
 * @param name what to call the gas in an error [–]
 * @param composition amounts of the species [mol], each 0 or above, per any fixed quantity of gas
 * @throws RangeError if an amount is negative or all are zero; every method of the gas refuses a temperature outside
 * gasTemperatureSpan, and an enthalpy or entropy that belongs to one
 * @source McBride, Zehe, Gordon, NASA/TP-2002-211556 (2002): polynomials of nine coefficients
 * @example gasOf("oxygen", {nitrogen: 0, oxygen: 1, argon: 0, carbonDioxide: 0, waterVapour: 0}).gasConstant // 259.836701
 */
export function gasOf(name: string, composition: Composition): Gas {
  let amount = 0;
  let mass = 0;
  for (const each of speciesNames) {
    if (!(composition[each] >= 0))
      throw new RangeError(`gasOf: amount of ${each} is ${composition[each]} mol; it must be 0 or above`);
    amount += composition[each];
    mass += composition[each] * species[each].molarMass;
  }
  requirePositive("gasOf: amount of all species", amount, "mol");
  return new MixedGas(name, mass / amount, mixed(composition, mass, "low"), mixed(composition, mass, "high"));
}

/** Coefficients of the mixture's cp [J/(kg·K)], from those of its species. */
function mixed(composition: Composition, mass: number, range: keyof Pick<Species, "low" | "high">) {
  const sum: [number, number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0, 0];
  for (const each of speciesNames) {
    const share = (composition[each] * molarGasConstant) / mass;
    species[each][range].forEach((a, i) => {
      sum[i] = sum[i]! + share * a;
    });
  }
  return sum;
}

/** Temperature at which the two polynomials of the source meet [K]. */
const joint = 1000;

class MixedGas implements Gas {
  readonly name: string;
  readonly molarMass: number;
  readonly gasConstant: SpecificHeat;
  private readonly low: HeatCapacityCurve;
  private readonly high: HeatCapacityCurve;
  private readonly enthalpySpan: Span;
  private readonly entropySpan: Span;

  constructor(name: string, molarMass: number, low: HeatCapacityCoefficients, high: HeatCapacityCoefficients) {
    this.name = name;
    this.molarMass = molarMass;
    this.gasConstant = (molarGasConstant / molarMass) as SpecificHeat;
    this.low = new HeatCapacityCurve(low, { temperature: gasReferenceTemperature, enthalpy: 0, entropy: 0 });
    // Continuous at the joint, so that every enthalpy belongs to one temperature.
    this.high = new HeatCapacityCurve(high, {
      temperature: joint,
      enthalpy: this.low.enthalpy(joint),
      entropy: this.low.entropy(joint),
    });
    const [coldest, hottest] = gasTemperatureSpan;
    this.enthalpySpan = [this.low.enthalpy(coldest), this.high.enthalpy(hottest)];
    this.entropySpan = [this.low.entropy(coldest), this.high.entropy(hottest)];
  }

  specificHeat(temperature: Temperature): SpecificHeat {
    this.requireTemperature("specificHeat", temperature);
    return this.curve(temperature).specificHeat(temperature) as SpecificHeat;
  }

  enthalpy(temperature: Temperature): SpecificEnergy {
    this.requireTemperature("enthalpy", temperature);
    return this.curve(temperature).enthalpy(temperature) as SpecificEnergy;
  }

  entropy(temperature: Temperature): SpecificEntropy {
    this.requireTemperature("entropy", temperature);
    return this.curve(temperature).entropy(temperature) as SpecificEntropy;
  }

  temperatureAtEnthalpy(enthalpy: SpecificEnergy): Temperature {
    const [lowest, highest] = this.enthalpySpan;
    if (!(enthalpy >= lowest && enthalpy <= highest)) {
      requireWithin(`temperatureAtEnthalpy of ${this.name}: enthalpy`, enthalpy, this.enthalpySpan, "J/kg");
    }
    let below = gasTemperatureSpan[0];
    let above = gasTemperatureSpan[1];
    let t = Math.min(above, Math.max(below, gasReferenceTemperature + enthalpy / (3.8 * this.gasConstant)));
    for (let i = 0; i < mostSteps; i++) {
      const curve = this.curve(t);
      const excess = curve.enthalpy(t) - enthalpy;
      if (excess > 0) above = t;
      else below = t;
      const next = t - excess / curve.specificHeat(t);
      if (Math.abs(next - t) <= lastStep * t) return next as Temperature;
      t = next > below && next < above ? next : (below + above) / 2;
    }
    throw this.unfound("temperatureAtEnthalpy", `enthalpy ${enthalpy} J/kg`, t);
  }

  temperatureAtEntropy(entropy: SpecificEntropy): Temperature {
    const [lowest, highest] = this.entropySpan;
    if (!(entropy >= lowest && entropy <= highest)) {
      requireWithin(`temperatureAtEntropy of ${this.name}: entropy`, entropy, this.entropySpan, "J/(kg·K)");
    }
    return this.solvedAtEntropy(entropy, gasReferenceTemperature * Math.exp(entropy / (3.7 * this.gasConstant)));
  }

  isentropicTemperature(temperature: Temperature, pressureRatio: Ratio): Temperature {
    this.requireTemperature("isentropicTemperature", temperature);
    if (!(pressureRatio > 0)) {
      requirePositive(`isentropicTemperature of ${this.name}: pressureRatio`, pressureRatio);
    }
    const curve = this.curve(temperature);
    const rise = this.gasConstant * Math.log(pressureRatio);
    const entropy = curve.entropy(temperature) + rise;
    const [lowest, highest] = this.entropySpan;
    if (!(entropy >= lowest && entropy <= highest)) {
      throw new RangeError(
        `isentropicTemperature of ${this.name}: pressureRatio is ${Number(pressureRatio.toPrecision(6))}; from ${Number(temperature.toPrecision(6))} K it leads outside ${gasTemperatureSpan[0]} to ${gasTemperatureSpan[1]} K`,
      );
    }
    return this.solvedAtEntropy(entropy, temperature * Math.exp(rise / curve.specificHeat(temperature)));
  }

  ratioOfSpecificHeats(temperature: Temperature): Ratio {
    this.requireTemperature("ratioOfSpecificHeats", temperature);
    const cp = this.curve(temperature).specificHeat(temperature);
    return (cp / (cp - this.gasConstant)) as Ratio;
  }

  density(temperature: Temperature, pressure: Pressure): Density {
    this.requireTemperature("density", temperature);
    if (!(pressure > 0)) requirePositive(`density of ${this.name}: pressure`, pressure, "Pa");
    return (pressure / (this.gasConstant * temperature)) as Density;
  }

  speedOfSound(temperature: Temperature): Velocity {
    this.requireTemperature("speedOfSound", temperature);
    const cp = this.curve(temperature).specificHeat(temperature);
    return Math.sqrt((cp / (cp - this.gasConstant)) * this.gasConstant * temperature) as Velocity;
  }

  /** Newton's method in ln T, along which the entropy is nearly straight; halving of the bracket where it leaves it. */
  private solvedAtEntropy(entropy: number, start: number): Temperature {
    let below = gasTemperatureSpan[0];
    let above = gasTemperatureSpan[1];
    let t = Math.min(above, Math.max(below, start));
    for (let i = 0; i < mostSteps; i++) {
      const curve = this.curve(t);
      const excess = curve.entropy(t) - entropy;
      if (excess > 0) above = t;
      else below = t;
      const next = t * Math.exp(-excess / curve.specificHeat(t));
      if (Math.abs(next - t) <= lastStep * t) return next as Temperature;
      t = next > below && next < above ? next : (below + above) / 2;
    }
    throw this.unfound("temperatureAtEntropy", `entropy ${entropy} J/(kg·K)`, t);
  }

  private curve(temperature: number): HeatCapacityCurve {
    return temperature < joint ? this.low : this.high;
  }

  /** The message is put together only when there is something to say: this stands in every hot call. */
  private requireTemperature(method: string, temperature: number): void {
    if (temperature >= gasTemperatureSpan[0] && temperature <= gasTemperatureSpan[1]) return;
    requireWithin(`${method} of ${this.name}: temperature`, temperature, gasTemperatureSpan, "K");
  }

  private unfound(method: string, wanted: string, reached: number): RangeError {
    return new RangeError(
      `${method} of ${this.name}: no temperature for ${wanted} after ${mostSteps} steps; last ${reached} K`,
    );
  }
}

const mostSteps = 60;

/** A Newton step this small (of T) leaves an error of its square: below the last digit. */
const lastStep = 1e-8;
