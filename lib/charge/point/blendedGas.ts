import { type Gas, gasTemperatureSpan } from "../../fluid";
import { requireWithin } from "../../quantity/guard";
import type {
  Density,
  Pressure,
  Ratio,
  SpecificEnergy,
  SpecificEntropy,
  SpecificHeat,
  Temperature,
  Velocity,
} from "../../quantity/kinds";

/**
 * Two gases mixed by mass: exhaust is products of combustion without leftover, and the air that was too much. As exact as
 * a mixture by species, since enthalpy goes by mass, and made at no cost at every trial of a solver.
 */
export class BlendedGas implements Gas {
  readonly name: string;
  readonly gasConstant: SpecificHeat;
  readonly molarMass: number;
  private readonly first: Gas;
  private readonly second: Gas;
  private readonly rest: number;
  private readonly share: number;

  /** @param share mass of the second gas over that of both [–], 0 to 1 */
  constructor(first: Gas, second: Gas, share: number) {
    requireWithin(`blend of ${first.name} and ${second.name}: share`, share, [0, 1]);
    this.name = second.name;
    this.first = first;
    this.second = second;
    this.share = share;
    this.rest = 1 - share;
    this.gasConstant = this.mean(first.gasConstant, second.gasConstant) as SpecificHeat;
    this.molarMass = 1 / this.mean(1 / first.molarMass, 1 / second.molarMass);
  }

  specificHeat(temperature: Temperature): SpecificHeat {
    return this.mean(this.first.specificHeat(temperature), this.second.specificHeat(temperature)) as SpecificHeat;
  }

  enthalpy(temperature: Temperature): SpecificEnergy {
    return this.mean(this.first.enthalpy(temperature), this.second.enthalpy(temperature)) as SpecificEnergy;
  }

  entropy(temperature: Temperature): SpecificEntropy {
    return this.mean(this.first.entropy(temperature), this.second.entropy(temperature)) as SpecificEntropy;
  }

  temperatureAtEnthalpy(enthalpy: SpecificEnergy): Temperature {
    const start = 298.15 + enthalpy / (3.9 * this.gasConstant);
    return this.solved("enthalpy", start, (t) => (this.enthalpy(t) - enthalpy) / this.specificHeat(t));
  }

  temperatureAtEntropy(entropy: SpecificEntropy): Temperature {
    const start = 298.15 * Math.exp(entropy / (3.8 * this.gasConstant));
    return this.solved("entropy", start, (t) => t * -Math.expm1((entropy - this.entropy(t)) / this.specificHeat(t)));
  }

  isentropicTemperature(temperature: Temperature, pressureRatio: Ratio): Temperature {
    const rise = this.gasConstant * Math.log(pressureRatio);
    const entropy = this.entropy(temperature) + rise;
    const start = temperature * Math.exp(rise / this.specificHeat(temperature));
    return this.solved("entropy", start, (t) => t * -Math.expm1((entropy - this.entropy(t)) / this.specificHeat(t)));
  }

  ratioOfSpecificHeats(temperature: Temperature): Ratio {
    const cp = this.specificHeat(temperature);
    return (cp / (cp - this.gasConstant)) as Ratio;
  }

  density(temperature: Temperature, pressure: Pressure): Density {
    return (pressure / (this.gasConstant * temperature)) as Density;
  }

  speedOfSound(temperature: Temperature): Velocity {
    return Math.sqrt(this.ratioOfSpecificHeats(temperature) * this.gasConstant * temperature) as Velocity;
  }

  private mean(first: number, second: number): number {
    return this.rest * first + this.share * second;
  }

  /** Newton's method on a nearly straight function of temperature, each step kept inside the span of the gases. */
  private solved(what: string, start: number, stepBack: (t: Temperature) => number): Temperature {
    const [coldest, hottest] = gasTemperatureSpan;
    let t = Math.min(hottest, Math.max(coldest, start));
    for (let i = 0; i < 30; i++) {
      const next = t - stepBack(t as Temperature);
      if (Math.abs(next - t) <= 1e-8 * t && next >= coldest && next <= hottest) return next as Temperature;
      const inside = Math.min(hottest, Math.max(coldest, next));
      if (inside === t) break; // it leaves the span
      t = inside;
    }
    throw new RangeError(
      `${what} of ${this.name}: it leads outside ${coldest} to ${hottest} K; last ${Number(t.toPrecision(6))} K`,
    );
  }
}
