import type { Density, KinematicViscosity, Ratio, SpecificEnergy } from "../quantity";
import { requireWithin, type Span } from "../quantity";
import { dryAir, dryAirComposition } from "./air";
import { species } from "./species";

/** A fuel for compression ignition, as its data sheet describes it. */
export interface DieselFuel {
  readonly name: string;
  /** density at 15 °C and atmospheric pressure [kg/m³] */
  readonly densityAt15C: Density;
  /** kinematic viscosity at 40 °C [m²/s] */
  readonly kinematicViscosityAt40C: KinematicViscosity;
  /** kinematic viscosity at 100 °C [m²/s], where the data sheet gives it */
  readonly kinematicViscosityAt100C?: KinematicViscosity;
  /** hydrogen atoms to carbon atoms [–] */
  readonly hydrogenToCarbon: Ratio;
  /** oxygen atoms to carbon atoms [–] */
  readonly oxygenToCarbon: Ratio;
  /** heat of combustion with the water as vapour [J/kg], at 25 °C */
  readonly lowerHeatingValue: SpecificEnergy;
}

/** Road diesel in the middle of EN 590 (820 to 845 kg/m³, 2.0 to 4.5 mm²/s). Typical values, from memory. */
export const roadDiesel = dieselFuel({
  name: "road diesel",
  densityAt15C: 835,
  kinematicViscosityAt40C: 2.7e-6,
  hydrogenToCarbon: 1.85,
  oxygenToCarbon: 0,
  lowerHeatingValue: 42.9e6,
});

/** Marine distillate inside ISO 8217 DMA (up to 890 kg/m³, 2 to 6 mm²/s). Typical values, from memory. */
export const marineDistillate = dieselFuel({
  name: "marine distillate",
  densityAt15C: 860,
  kinematicViscosityAt40C: 3.6e-6,
  hydrogenToCarbon: 1.78,
  oxygenToCarbon: 0,
  lowerHeatingValue: 42.6e6,
});

/** Hydrotreated or synthetic paraffins inside EN 15940 (765 to 800 kg/m³). Typical values, from memory. */
export const paraffinicDiesel = dieselFuel({
  name: "paraffinic diesel",
  densityAt15C: 780,
  kinematicViscosityAt40C: 2.9e-6,
  hydrogenToCarbon: 2.13,
  oxygenToCarbon: 0,
  lowerHeatingValue: 44.0e6,
});

/** Fatty acid methyl ester inside EN 14214 (860 to 900 kg/m³, 3.5 to 5.0 mm²/s). Typical values, from memory. */
export const methylEster = dieselFuel({
  name: "methyl ester",
  densityAt15C: 883,
  kinematicViscosityAt40C: 4.4e-6,
  hydrogenToCarbon: 1.85,
  oxygenToCarbon: 0.105,
  lowerHeatingValue: 37.4e6,
});

/** The fuels above, in the order in which a list should offer them. */
export const dieselFuels: readonly DieselFuel[] = [roadDiesel, marineDistillate, paraffinicDiesel, methylEster];

/** Hydrogen to carbon and oxygen to carbon for which the balances answer [–]. */
export const hydrogenToCarbonSpan: Span = [0.5, 4];
export const oxygenToCarbonSpan: Span = [0, 1];

/**
 * Dry air that burns a fuel without leftover [kg per kg of fuel]: CHyOz takes 1 + y/4 − z/2 molecules of oxygen.
 * Sulphur, nitrogen and water in the fuel are left out.
 *
 * @param fuel the fuel [–]; its hydrogen to carbon 0.5 to 4, its oxygen to carbon 0 to 1
 * @throws RangeError if the fuel's make-up is outside these spans
 * @source balance of elements; atomic masses from the molar masses of NASA/TP-2002-211556 (2002)
 * @example stoichiometricAirFuelRatio(roadDiesel) // 14.5744
 */
export function stoichiometricAirFuelRatio(fuel: DieselFuel): Ratio {
  const airPerCarbon = (oxygenPerCarbon(fuel) / dryAirComposition.oxygen) * dryAir.molarMass;
  return (airPerCarbon / fuelMassPerCarbon(fuel)) as Ratio;
}

/**
 * Molecules of oxygen that burn a carbon atom of the fuel and what hangs on it [–]: 1 + y/4 − z/2.
 *
 * @param fuel the fuel [–]
 * @throws RangeError if the fuel's make-up is outside hydrogenToCarbonSpan or oxygenToCarbonSpan
 * @source balance of elements
 * @example oxygenPerCarbon(roadDiesel) // 1.4625
 */
export function oxygenPerCarbon(fuel: DieselFuel): number {
  requireWithin(`${fuel.name}: hydrogenToCarbon`, fuel.hydrogenToCarbon, hydrogenToCarbonSpan);
  requireWithin(`${fuel.name}: oxygenToCarbon`, fuel.oxygenToCarbon, oxygenToCarbonSpan);
  return 1 + fuel.hydrogenToCarbon / 4 - fuel.oxygenToCarbon / 2;
}

/** Mass of as much fuel as holds a mole of carbon [kg/mol]. */
function fuelMassPerCarbon(fuel: DieselFuel): number {
  return atomicMass.carbon + fuel.hydrogenToCarbon * atomicMass.hydrogen + fuel.oxygenToCarbon * atomicMass.oxygen;
}

/** [kg/mol], out of the molecules of the table, so that the products weigh what fuel and air did. */
const oxygenAtom = species.oxygen.molarMass / 2;
const atomicMass = {
  oxygen: oxygenAtom,
  carbon: species.carbonDioxide.molarMass - 2 * oxygenAtom,
  hydrogen: (species.waterVapour.molarMass - oxygenAtom) / 2,
};

/** The fields of a fuel as plain SI numbers. */
type PlainFuel = { readonly [K in keyof DieselFuel]: K extends "name" ? string : number };

function dieselFuel(plain: PlainFuel): DieselFuel {
  return Object.freeze({ ...plain }) as DieselFuel;
}
