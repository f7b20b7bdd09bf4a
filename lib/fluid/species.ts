/** Seven coefficients of cp/R = a₁T⁻² + a₂T⁻¹ + a₃ + a₄T + a₅T² + a₆T³ + a₇T⁴. */
export type HeatCapacityCoefficients = readonly [number, number, number, number, number, number, number];

/** A pure gas, as the mixtures need it. */
export interface Species {
  /** molar mass [kg/mol] */
  readonly molarMass: number;
  /** cp/R from 200 to 1000 K [–] */
  readonly low: HeatCapacityCoefficients;
  /** cp/R from 1000 to 6000 K [–] */
  readonly high: HeatCapacityCoefficients;
}

export type SpeciesName = "nitrogen" | "oxygen" | "argon" | "carbonDioxide" | "waterVapour";

/** Amounts of the species in a mixture, in mol per any fixed quantity of it. */
export type Composition = Readonly<Record<SpeciesName, number>>;

/** Molar gas constant [J/(mol·K)]. @source CODATA 2018, exact since the SI of 2019 */
export const molarGasConstant = 8.31446261815324;

/**
 * The gases of air and of lean exhaust, every digit of the source. Its two constants of integration a species are not
 * kept: a mixture sets its own zero.
 *
 * @source B. J. McBride, M. J. Zehe, S. Gordon, NASA Glenn Coefficients for Calculating Thermodynamic Properties of
 * Individual Species, NASA/TP-2002-211556 (2002), table entries N2, O2, Ar, CO2, H2O (read in public copies of the file)
 */
export const species: Readonly<Record<SpeciesName, Species>> = {
  nitrogen: {
    molarMass: 28.0134e-3,
    low: [2.210371497e4, -3.81846182e2, 6.08273836, -8.53091441e-3, 1.384646189e-5, -9.62579362e-9, 2.519705809e-12],
    high: [5.87712406e5, -2.239249073e3, 6.06694922, -6.1396855e-4, 1.491806679e-7, -1.923105485e-11, 1.061954386e-15],
  },
  oxygen: {
    molarMass: 31.9988e-3,
    low: [-3.42556342e4, 4.84700097e2, 1.119010961, 4.29388924e-3, -6.83630052e-7, -2.0233727e-9, 1.039040018e-12],
    high: [
      -1.037939022e6, 2.344830282e3, 1.819732036, 1.267847582e-3, -2.188067988e-7, 2.053719572e-11, -8.19346705e-16,
    ],
  },
  argon: {
    molarMass: 39.948e-3,
    low: [0, 0, 2.5, 0, 0, 0, 0],
    high: [
      2.010538475e1, -5.99266107e-2, 2.500069401, -3.99214116e-8, 1.20527214e-11, -1.819015576e-15, 1.078576636e-19,
    ],
  },
  carbonDioxide: {
    molarMass: 44.0095e-3,
    low: [4.94365054e4, -6.26411601e2, 5.30172524, 2.503813816e-3, -2.127308728e-7, -7.68998878e-10, 2.849677801e-13],
    high: [1.176962419e5, -1.788791477e3, 8.29152319, -9.22315678e-5, 4.86367688e-9, -1.891053312e-12, 6.33003659e-16],
  },
  waterVapour: {
    molarMass: 18.01528e-3,
    low: [-3.94796083e4, 5.75573102e2, 9.31782653e-1, 7.22271286e-3, -7.34255737e-6, 4.95504349e-9, -1.336933246e-12],
    high: [1.034972096e6, -2.412698562e3, 4.64611078, 2.291998307e-3, -6.83683048e-7, 9.42646893e-11, -4.82238053e-15],
  },
};

export const speciesNames = Object.keys(species) as readonly SpeciesName[];
