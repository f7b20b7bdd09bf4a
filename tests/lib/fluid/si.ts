import type {
  Density,
  Fraction,
  Pressure,
  Ratio,
  SpecificEnergy,
  SpecificEntropy,
  Temperature,
} from "../../../lib/quantity";

/** Plain numbers of the tables, given the kinds that lib asks for. */
export const kelvin = (value: number) => value as Temperature;
export const celsius = (value: number) => (273.15 + value) as Temperature;
export const pascal = (value: number) => value as Pressure;
export const ratio = (value: number) => value as Ratio;
export const fraction = (value: number) => value as Fraction;
export const joulePerKilogram = (value: number) => value as SpecificEnergy;
export const entropy = (value: number) => value as SpecificEntropy;
export const kilogramPerCubicMetre = (value: number) => value as Density;

/** How far `got` is from `wanted`, as a share of `wanted`. */
export const gap = (got: number, wanted: number) => Math.abs(got / wanted - 1);

/** Evenly spaced numbers, both ends included. */
export function between(low: number, high: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}

/** True if every number is above the one before. */
export function rises(values: readonly number[]): boolean {
  return values.length > 1 && values.every((value, i) => i === 0 || value > values[i - 1]!);
}
