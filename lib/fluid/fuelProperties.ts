import {
  type BulkModulus,
  type Density,
  type KinematicViscosity,
  type Pressure,
  requirePositive,
  requireWithin,
  type Span,
  type SpecificHeat,
  type Temperature,
} from "../quantity";
import type { DieselFuel } from "./dieselFuel";

/** Where a fuel is. */
export interface FuelState {
  /** temperature [K], 253.15 to 423.15 */
  readonly temperature: Temperature;
  /** absolute pressure [Pa], 0 to 300e6 */
  readonly pressure: Pressure;
}

/** Temperatures for which the fuels answer [K]: −20 to 150 °C. Wax may stop the flow well before the cold end. */
export const fuelTemperatureSpan: Span = [273.15 - 20, 273.15 + 150];

/** Pressures for which the fuels answer [Pa]; measurements of diesel fuels end near 180e6, beyond it the laws are drawn out. */
export const fuelPressureSpan: Span = [0, 300e6];

/** Densities at 15 °C for which the fuels answer [kg/m³]. */
export const fuelDensitySpan: Span = [750, 950];

const referenceTemperature = 288.15; // K
const referencePressure = 101325; // Pa

/**
 * Density of a fuel [kg/m³]: ρ₁₅ exp(−α ΔT (1 + 0.8 α ΔT)) at 1 atm, with α of the petroleum tables; under pressure
 * multiplied by (1 + n Δp/K_T)^(1/n), K_T the isothermal bulk modulus at 1 atm and n its rise with pressure.
 * The tables hold for petroleum within 0.1 % to 90 °C; for paraffins and esters they are a stand-in, good to about 0.4 % at 60 °C.
 *
 * @param fuel the fuel [–]
 * @param state temperature [K] and absolute pressure [Pa]
 * @throws RangeError outside fuelTemperatureSpan, fuelPressureSpan or fuelDensitySpan
 * @source API MPMS 11.1 / ASTM D1250-80, generalized products (constants from memory); pressure: F. D. Murnaghan (1944)
 * @example fuelDensity(roadDiesel, {temperature: 313.15, pressure: 101325}) // 817.091
 */
export function fuelDensity(fuel: DieselFuel, { temperature, pressure }: FuelState): Density {
  requireFuel("fuelDensity", fuel, temperature);
  requireWithin("fuelDensity: pressure", pressure, fuelPressureSpan, "Pa");
  const atmospheric = densityAtAtmosphere(fuel, temperature);
  const expansion = fuelExpansion(fuel, temperature);
  const heat = atmospheric * fuelSpecificHeat(fuel, temperature);
  const isothermal = 1 / (1 / modulusAtAtmosphere(fuel, temperature) + (expansion ** 2 * temperature) / heat);
  const squeezed = 1 + (modulusRise * (pressure - referencePressure)) / isothermal;
  return (atmospheric * squeezed ** (1 / modulusRise)) as Density;
}

/**
 * Volumetric expansion of a fuel at 1 atm, a share of its volume per kelvin [1/K]: α (1 + 1.6 α (T − 288.15)).
 *
 * @param fuel the fuel [–]
 * @param temperature temperature [K], 253.15 to 423.15
 * @throws RangeError outside fuelTemperatureSpan or fuelDensitySpan
 * @source derivative of the density of ASTM D1250-80 (constants from memory)
 * @example fuelExpansion(roadDiesel, 288.15) // 0.000852726
 */
export function fuelExpansion(fuel: DieselFuel, temperature: Temperature): number {
  requireFuel("fuelExpansion", fuel, temperature);
  const alpha = expansionAt15C(fuel.densityAt15C);
  return alpha * (1 + 1.6 * alpha * (temperature - referenceTemperature));
}

/**
 * Kinematic viscosity of a fuel at 1 atm [m²/s]: lg lg(ν + 0.7 mm²/s) is straight over lg T, through the point at 40 °C
 * and that at 100 °C; without the latter the slope is 4.05, usual for diesel fuel within ±0.05.
 * Below 2 mm²/s the short form reads up to 3 % off. Pressure (about double at 100 MPa) and wax are left out.
 *
 * @param fuel the fuel [–]
 * @param temperature temperature [K], 253.15 to 423.15
 * @throws RangeError outside fuelTemperatureSpan, or if a viscosity of the fuel is not above 0
 * @source ASTM D341 (from memory); the slope: common practice, no source
 * @example 1e6 * fuelViscosity(roadDiesel, 293.15) // 4.24692
 */
export function fuelViscosity(fuel: DieselFuel, temperature: Temperature): KinematicViscosity {
  requireWithin("fuelViscosity: temperature", temperature, fuelTemperatureSpan, "K");
  const at40 = walther(fuel, "kinematicViscosityAt40C", fuel.kinematicViscosityAt40C);
  let slope = usualSlope;
  if (fuel.kinematicViscosityAt100C !== undefined) {
    const at100 = walther(fuel, "kinematicViscosityAt100C", fuel.kinematicViscosityAt100C);
    slope = (at40 - at100) / Math.log10(373.15 / 313.15);
  }
  const twiceLog = at40 - slope * Math.log10(temperature / 313.15);
  return (1e-6 * (10 ** (10 ** twiceLog) - 0.7)) as KinematicViscosity;
}

/**
 * Isentropic bulk modulus of a fuel, as sound and injection see it [Pa]: ρ c² at 1 atm plus 10.5 Δp, with
 * c = 1360 (ρ₁₅/837)^0.4 − 3.6 (t − 20 °C) m/s. The isothermal modulus is 10 to 20 % lower. Within about 5 % for a fuel
 * without air in it; a hundredth of free air at 1 atm makes it collapse.
 *
 * @param fuel the fuel [–]
 * @param state temperature [K] and absolute pressure [Pa]
 * @throws RangeError outside fuelTemperatureSpan, fuelPressureSpan or fuelDensitySpan
 * @source own line through figures from memory for No. 2 diesel and methyl esters; compare Tat, Van Gerpen, J. American Oil
 * Chemists' Society 80 (2003) 1127
 * @example fuelBulkModulus(roadDiesel, {temperature: 313.15, pressure: 101325}) // 1.35e9
 */
export function fuelBulkModulus(fuel: DieselFuel, { temperature, pressure }: FuelState): BulkModulus {
  requireFuel("fuelBulkModulus", fuel, temperature);
  requireWithin("fuelBulkModulus: pressure", pressure, fuelPressureSpan, "Pa");
  return (modulusAtAtmosphere(fuel, temperature) + modulusRise * (pressure - referencePressure)) as BulkModulus;
}

/**
 * Specific heat of a liquid fuel [J/(kg·K)]: (1685 + 3.39 t)/√d, t in °C, d the density at 15 °C over 999 kg/m³.
 * Within about 4 % for petroleum (from memory); for paraffins and esters it is an estimate.
 *
 * @param fuel the fuel [–]
 * @param temperature temperature [K], 253.15 to 423.15
 * @throws RangeError outside fuelTemperatureSpan or fuelDensitySpan
 * @source C. S. Cragoe, Thermal Properties of Petroleum Products, US Bureau of Standards, Miscellaneous Publication 97 (1929) (from memory)
 * @example fuelSpecificHeat(roadDiesel, 313.15) // 1991
 */
export function fuelSpecificHeat(fuel: DieselFuel, temperature: Temperature): SpecificHeat {
  requireFuel("fuelSpecificHeat", fuel, temperature);
  return ((1685 + 3.39 * (temperature - 273.15)) / Math.sqrt(fuel.densityAt15C / 999)) as SpecificHeat;
}

/** Slope of lg lg(ν + 0.7) over lg T: common practice, no source. */
const usualSlope = 4.05;

/** Rise of the bulk modulus with pressure [–]: from memory, 10 to 11 for liquid hydrocarbons. */
const modulusRise = 10.5;

/** α = K₀/ρ² + K₁/ρ [1/K]. @source ASTM D1250-80: jet group below 838.3127 kg/m³, fuel oils above (from memory) */
function expansionAt15C(density: number): number {
  if (density < 838.3127) return 594.5418 / density ** 2;
  return (186.9696 / density + 0.4862) / density;
}

function densityAtAtmosphere(fuel: DieselFuel, temperature: number): number {
  const warmed = expansionAt15C(fuel.densityAt15C) * (temperature - referenceTemperature);
  return fuel.densityAt15C * Math.exp(-warmed * (1 + 0.8 * warmed));
}

function modulusAtAtmosphere(fuel: DieselFuel, temperature: number): number {
  const sound = 1360 * (fuel.densityAt15C / 837) ** 0.4 - 3.6 * (temperature - 293.15);
  return densityAtAtmosphere(fuel, temperature) * sound ** 2;
}

/** lg lg(ν + 0.7), ν in mm²/s. */
function walther(fuel: DieselFuel, field: keyof DieselFuel, viscosity: number): number {
  if (!(viscosity > 0)) requirePositive(`fuelViscosity of ${fuel.name}: ${field}`, viscosity, "m²/s");
  return Math.log10(Math.log10(1e6 * viscosity + 0.7));
}

function requireFuel(name: string, fuel: DieselFuel, temperature: number): void {
  if (!(fuel.densityAt15C >= fuelDensitySpan[0] && fuel.densityAt15C <= fuelDensitySpan[1])) {
    requireWithin(`${name} of ${fuel.name}: densityAt15C`, fuel.densityAt15C, fuelDensitySpan, "kg/m³");
  }
  if (!(temperature >= fuelTemperatureSpan[0] && temperature <= fuelTemperatureSpan[1])) {
    requireWithin(`${name}: temperature`, temperature, fuelTemperatureSpan, "K");
  }
}
