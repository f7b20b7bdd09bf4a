import {
  type Density,
  type Fraction,
  type Pressure,
  type Ratio,
  requirePositive,
  requireWithin,
  type SpecificEnergy,
  type SpecificEntropy,
  type SpecificHeat,
  type Temperature,
  type Velocity,
} from "../quantity";
import { type Gas, gasReferenceTemperature, gasTemperatureSpan } from "./gas";
import { HeatCapacityCurve } from "./heatCapacityCurve";
import { type HeatCapacityCoefficients, molarGasConstant } from "./species";

/** Temperature at which the two polynomials of the source meet [K]. */
const joint = 1000;

/** Lowest and highest enthalpy [J/kg], and lowest and highest entropy [J/(kg·K)], of the temperatures for which a gas answers. */
type Ends = readonly [leastEnthalpy: number, mostEnthalpy: number, leastEntropy: number, mostEntropy: number];

/** The gas behind gasOf: it mixes its coefficients once, so that a property costs one polynomial. */
export class MixedGas implements Gas {
  readonly name: string;
  readonly molarMass: number;
  readonly gasConstant: SpecificHeat;
  private readonly low: HeatCapacityCurve;
  private readonly high: HeatCapacityCurve;
  private readonly ends: Ends;

  private constructor(name: string, molarMass: number, low: HeatCapacityCurve, high: HeatCapacityCurve, ends: Ends) {
    this.name = name;
    this.molarMass = molarMass;
    this.gasConstant = (molarGasConstant / molarMass) as SpecificHeat;
    this.low = low;
    this.high = high;
    this.ends = ends;
  }

  /** A gas from the coefficients of its cp below and above the joint. */
  static of(
    name: string,
    molarMass: number,
    below: HeatCapacityCoefficients,
    above: HeatCapacityCoefficients,
  ): MixedGas {
    const low = HeatCapacityCurve.through(below, { temperature: gasReferenceTemperature, enthalpy: 0, entropy: 0 });
    // Continuous at the joint, so that every enthalpy belongs to one temperature.
    const high = HeatCapacityCurve.through(above, {
      temperature: joint,
      enthalpy: low.enthalpy(joint),
      entropy: low.entropy(joint),
    });
    const [coldest, hottest] = gasTemperatureSpan;
    return new MixedGas(name, molarMass, low, high, [
      low.enthalpy(coldest) - rounding,
      high.enthalpy(hottest) + rounding,
      low.entropy(coldest) - rounding,
      high.entropy(hottest) + rounding,
    ]);
  }

  blendedWith(other: Gas, share: Fraction): Gas {
    if (!(other instanceof MixedGas)) throw new TypeError(`blendedWith: ${other.name} is no gas of gasOf`);
    if (!(share >= 0 && share <= 1)) {
      requireWithin(`blend of ${this.name} and ${other.name}: share`, share, [0, 1]);
    }
    const rest = 1 - share;
    const { ends: own } = this;
    const { ends: added } = other;
    return new MixedGas(
      other.name,
      1 / (rest / this.molarMass + share / other.molarMass),
      HeatCapacityCurve.blend(this.low, other.low, share),
      HeatCapacityCurve.blend(this.high, other.high, share),
      [
        rest * own[0] + share * added[0],
        rest * own[1] + share * added[1],
        rest * own[2] + share * added[2],
        rest * own[3] + share * added[3],
      ],
    );
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
    const { ends } = this;
    if (!(enthalpy >= ends[0] && enthalpy <= ends[1])) {
      requireWithin(`temperatureAtEnthalpy of ${this.name}: enthalpy`, enthalpy, [ends[0], ends[1]], "J/kg");
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
      if (Math.abs(next - t) <= lastStep * t) return withinSpan(next);
      t = next > below && next < above ? next : (below + above) / 2;
    }
    throw this.unfound("temperatureAtEnthalpy", `enthalpy ${enthalpy} J/kg`, t);
  }

  temperatureAtEntropy(entropy: SpecificEntropy): Temperature {
    const { ends } = this;
    if (!(entropy >= ends[2] && entropy <= ends[3])) {
      requireWithin(`temperatureAtEntropy of ${this.name}: entropy`, entropy, [ends[2], ends[3]], "J/(kg·K)");
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
    const { ends } = this;
    if (!(entropy >= ends[2] && entropy <= ends[3])) {
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
      if (Math.abs(next - t) <= lastStep * t) return withinSpan(next);
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

/** A Newton step this small (of T) leaves a tenth of its square, since cp changes by a fifth while T doubles: below the last digits. */
const lastStep = 1e-6;

/**
 * Slack at the ends of the span for the last digits of enthalpy [J/kg] and entropy [J/(kg·K)]: the value of a
 * temperature just inside may be rounded past that of the end. It is worth less than a millionth of a kelvin.
 */
const rounding = 1e-7;

function withinSpan(temperature: number): Temperature {
  return Math.min(gasTemperatureSpan[1], Math.max(gasTemperatureSpan[0], temperature)) as Temperature;
}
