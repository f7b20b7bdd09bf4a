import { requirePositive } from "../quantity";
import type { Gas } from "./gas";
import { MixedGas } from "./mixedGas";
import { type Composition, molarGasConstant, type Species, species, speciesNames } from "./species";

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
  return MixedGas.of(name, mass / amount, mixed(composition, mass, "low"), mixed(composition, mass, "high"));
}

/** Coefficients of the mixture's cp [J/(kg·K)], from those of its species. */
function mixed(composition: Composition, mass: number, range: keyof Pick<Species, "low" | "high">) {
  const sum: [number, number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0, 0];
  for (const each of speciesNames) {
    const share = (composition[each] * molarGasConstant) / mass;
    const coefficients = species[each][range];
    for (let i = 0; i < sum.length; i++) sum[i] = sum[i]! + share * coefficients[i]!;
  }
  return sum;
}
