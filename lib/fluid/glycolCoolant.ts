import {
  type Density,
  type DynamicViscosity,
  type Fraction,
  requireWithin,
  type Span,
  type SpecificHeat,
  type Temperature,
  type ThermalConductivity,
} from "../quantity";
import {
  type GlycolRow,
  glycolConductivity,
  glycolDensity,
  glycolFirstRow,
  glycolFreezing,
  glycolRowStep,
  glycolSpecificHeat,
  glycolViscosity,
} from "./glycolTable";
import type { Liquid } from "./liquid";
import { pureWater } from "./water";

/** Shares of glycol by volume for which glycolCoolant answers [–]. */
export const glycolFractionSpan: Span = [0, 0.6];

/**
 * Mixture of water and ethylene glycol [–], up to 110 °C, by the share of glycol in the volume before mixing.
 * Tables for 10 to 60 %, straight between neighbours (viscosity: its logarithm); below 10 % straight towards pure water.
 * Cold end: that of the table, some kelvins above freezing. 100 to 110 °C continue the tables' last step.
 * Other published tables differ by 2 to 3 % in specific heat and up to 10 % in viscosity; inhibitors are left out.
 * Boiling by Raoult's law for the water alone: about half a kelvin high at 50 %. Glycol is poisonous and sweet: keep it from children and animals.
 *
 * @param glycolVolumeFraction glycol in the mixture by volume [–], 0 to 0.6; 0.5 by volume is 0.524 by mass
 * @throws RangeError outside glycolFractionSpan; every property refuses a temperature outside the liquid's span
 * @source ASHRAE Handbook Fundamentals (2001), chapter 21, tables for ethylene glycol (read in a public copy)
 * @example glycolCoolant(0.5).specificHeat(353.15) // 3512
 */
export function glycolCoolant(glycolVolumeFraction: Fraction): Liquid {
  requireWithin("glycolCoolant: glycolVolumeFraction", glycolVolumeFraction, glycolFractionSpan);
  // Circuits ask for the same mixture again and again, and mixing the columns takes longer than many of their questions.
  if (lastMixed?.fraction !== glycolVolumeFraction) {
    lastMixed = { fraction: glycolVolumeFraction, coolant: mixture(glycolVolumeFraction) };
  }
  return lastMixed.coolant;
}

let lastMixed: { readonly fraction: Fraction; readonly coolant: Liquid } | undefined;

function mixture(glycolVolumeFraction: Fraction): Liquid {
  const name = `coolant with ${Number((100 * glycolVolumeFraction).toPrecision(3))} % glycol`;
  const density = column(glycolDensity, 1, pureWater.density, glycolVolumeFraction, straight);
  const specificHeat = column(glycolSpecificHeat, 1, pureWater.specificHeat, glycolVolumeFraction, straight);
  const viscosity = column(glycolViscosity, 1e-5, pureWater.dynamicViscosity, glycolVolumeFraction, logarithmic);
  const conductivity = column(glycolConductivity, 1e-3, pureWater.conductivity, glycolVolumeFraction, straight);
  const first = celsius(glycolRow(density.firstRow));
  const last = glycolRow(density.firstRow) + (density.values.length - 1) * glycolRowStep;
  const temperatureSpan: Span = [first, celsius(last)];
  const [, mass, freezing] = freezingRow(100 * glycolVolumeFraction);
  const waterMoles = (100 - mass) / waterMolarMass;
  const valueAt = (what: string, { values }: Column, temperature: number) => {
    if (!(temperature >= temperatureSpan[0] && temperature <= temperatureSpan[1])) {
      requireWithin(`${what} of ${name}: temperature`, temperature, temperatureSpan, "K");
    }
    const position = (temperature - first) / glycolRowStep;
    const below = Math.min(Math.floor(position), values.length - 2);
    return values[below]! + (position - below) * (values[below + 1]! - values[below]!);
  };
  return {
    name,
    temperatureSpan,
    freezingTemperature: celsius(freezing) as Temperature,
    vapourPressureRatio: waterMoles / (waterMoles + mass / glycolMolarMass),
    density: (temperature) => valueAt("density", density, temperature) as Density,
    specificHeat: (temperature) => valueAt("specificHeat", specificHeat, temperature) as SpecificHeat,
    dynamicViscosity: (temperature) =>
      Math.exp(valueAt("dynamicViscosity", viscosity, temperature)) as DynamicViscosity,
    conductivity: (temperature) => valueAt("conductivity", conductivity, temperature) as ThermalConductivity,
  };
}

/** Molar masses of water and of C₂H₆O₂ [g/mol]. */
const waterMolarMass = 18.015;
const glycolMolarMass = 62.068;

/** A property of one mixture over temperature: its values (or their logarithms) from a row of the tables on. */
interface Column {
  readonly firstRow: number;
  readonly values: Float64Array;
}

/** Values taken as they are, or by their logarithms. */
const straight = (value: number) => value;
const logarithmic = Math.log;

/** Rows added above the tables' 100 °C, each a step like the last. */
const rowsBeyond = 2;

function column(
  table: readonly GlycolRow[],
  unit: number,
  pure: (temperature: number) => number,
  fraction: number,
  scale: (value: number) => number,
): Column {
  const left = Math.min(Math.floor(10 * fraction + 1e-9), 5);
  const weight = Math.max(0, 10 * fraction - left);
  const cell = (row: number, tenth: number): number | null => {
    if (tenth > 0) {
      const value = table[row]?.[tenth - 1];
      return value == null ? null : scale(unit * value);
    }
    return glycolRow(row) >= 0 ? scale(pure(celsius(glycolRow(row)))) : null;
  };
  const mixed: number[] = [];
  for (let row = 0; row < table.length; row++) {
    const a = weight < 1 ? cell(row, left) : 0;
    const b = weight > 0 ? cell(row, left + 1) : 0;
    if (a !== null && b !== null) mixed.push(a + weight * (b - a));
  }
  const firstRow = table.length - mixed.length;
  for (let i = 0; i < rowsBeyond; i++) mixed.push(2 * mixed.at(-1)! - mixed.at(-2)!);
  return { firstRow, values: Float64Array.from(mixed) };
}

/** Temperature of a row of the tables [°C]. */
function glycolRow(row: number): number {
  return glycolFirstRow + row * glycolRowStep;
}

function celsius(temperature: number): number {
  return 273.15 + temperature;
}

/** The row of the freezing table at a volume per cent, straight between rows and beyond the last (57.8 %). */
function freezingRow(volume: number): readonly [number, number, number] {
  const above = glycolFreezing.findIndex(([v], i) => i > 0 && v >= volume);
  const upper = glycolFreezing.at(above)!;
  const lower = glycolFreezing.at(above - 1)!;
  const share = (volume - lower[0]) / (upper[0] - lower[0]);
  return [volume, lower[1] + share * (upper[1] - lower[1]), lower[2] + share * (upper[2] - lower[2])];
}
