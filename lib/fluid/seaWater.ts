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
import type { Liquid } from "./liquid";
import { pureWater } from "./water";

/** Salt in the open sea [kg/kg]; the Baltic has 0.005 to 0.02, the Red Sea 0.04 (common figures, from memory). */
export const openSeaSalinity = 0.035 as Fraction;

/** Salinities for which seaWater answers [kg of salt per kg]. */
export const salinitySpan: Span = [0, 0.042];

const temperatureSpan: Span = [273.15 - 2, 273.15 + 60];

/**
 * Sea water at 1 bar [–], −2 to 60 °C: each property is that of pure water, raised or lowered by the salt.
 * The same salinity is taken for the absolute one (g per kg, TEOS-10); the practical scale reads 0.47 % less and is converted.
 * Density is stated by its source from −2 to 40 °C and continued to 60 °C, where Sharqawy et al. (2010) give 0.05 % more; the
 * other three are stated from 0 to 180 °C and continued to −2 °C.
 *
 * @param salinity salt [kg per kg of sea water], 0 to 0.042
 * @throws RangeError outside salinitySpan; every property refuses a temperature outside the liquid's span
 * @source density: Millero, Poisson, Deep-Sea Research 28A (1981) 625 (EOS-80); specific heat: Jamieson et al., Desalination 7 (1969)
 * 23; viscosity: Sharqawy, Lienhard, Zubair, Desalination and Water Treatment 16 (2010) 354, equation 22; conductivity:
 * Jamieson, Tudhope, Desalination 8 (1970) 393; freezing: Millero, Leung, UNESCO technical papers in marine science 44
 * (1983); vapour pressure: Nayar et al., Desalination 390 (2016) 1. Coefficients read in public implementations.
 * @example seaWater(0.035).density(293.15) // 1024.64
 */
export function seaWater(salinity: Fraction): Liquid {
  requireWithin("seaWater: salinity", salinity, salinitySpan, "kg/kg");
  const name = `sea water of ${Number((1000 * salinity).toPrecision(3))} g/kg`;
  const grams = 1000 * salinity;
  const practical = grams / absoluteToPractical;
  const cp = jamieson(grams);
  const freshCp = jamieson(0);
  const guard = (what: string, temperature: number) => {
    if (temperature >= temperatureSpan[0] && temperature <= temperatureSpan[1]) return;
    requireWithin(`${what} of ${name}: temperature`, temperature, temperatureSpan, "K");
  };
  return {
    name,
    temperatureSpan,
    freezingTemperature: freezing(practical) as Temperature,
    vapourPressureRatio: Math.exp(-4.5818e-4 * grams - 2.0443e-6 * grams ** 2),
    density(temperature) {
      guard("density", temperature);
      return (pureWater.density(temperature) + salted(temperature - 273.15, practical)) as Density;
    },
    specificHeat(temperature) {
      guard("specificHeat", temperature);
      return (pureWater.specificHeat(temperature) * (cp(temperature) / freshCp(temperature))) as SpecificHeat;
    },
    dynamicViscosity(temperature) {
      guard("dynamicViscosity", temperature);
      return (pureWater.dynamicViscosity(temperature) * thickened(temperature - 273.15, salinity)) as DynamicViscosity;
    },
    conductivity(temperature) {
      guard("conductivity", temperature);
      const salt = jamiesonTudhope(temperature, practical) / jamiesonTudhope(temperature, 0);
      return (pureWater.conductivity(temperature) * salt) as ThermalConductivity;
    },
  };
}

/** Grams of salt per kilogram over practical salinity. @source TEOS-10, IOC Manuals and Guides 56 (2010) */
const absoluteToPractical = 35.16504 / 35;

/** What salt adds to density [kg/m³], of practical salinity s, t in °C. @source Millero, Poisson (1981) */
function salted(t: number, s: number): number {
  const a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
  return s * (a + b * Math.sqrt(s) + 4.8314e-4 * s);
}

/** cp of sea water of s g/kg [kJ/(kg·K)], as a function of temperature in K on the scale of 1968. @source Jamieson et al. (1969) */
function jamieson(s: number): (temperature: number) => number {
  const a = 5.328 - 9.76e-2 * s + 4.04e-4 * s * s;
  const b = -6.913e-3 + 7.351e-4 * s - 3.15e-6 * s * s;
  const c = 9.6e-6 - 1.927e-6 * s + 8.23e-9 * s * s;
  const d = 2.5e-9 + 1.666e-9 * s - 7.125e-12 * s * s;
  return (temperature) => {
    const t = 1.00024 * temperature;
    return a + t * (b + t * (c + t * d));
  };
}

/** Viscosity over that of pure water [–], salinity s in kg/kg, t in °C. @source Sharqawy et al. (2010), equation 22 */
function thickened(t: number, s: number): number {
  const a = 1.540913604 + t * (1.9981117208e-2 - t * 9.5203865864e-5);
  const b = 7.9739318223 + t * (-7.5614568881e-2 + t * 4.7237011074e-4);
  return 1 + s * (a + s * b);
}

/** Conductivity [mW/(m·K)] of practical salinity s. @source Jamieson, Tudhope (1970) */
function jamiesonTudhope(temperature: number, s: number): number {
  const reduced = 2.3 - (343.5 + 0.037 * s) / temperature;
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the source's own three digits
  return (240 + 0.0002 * s) * 10 ** (0.434 * reduced * Math.cbrt(1 - temperature / (647.3 + 0.03 * s)));
}

/** Freezing point at the surface [K], of practical salinity s. @source Millero, Leung (1983) */
function freezing(s: number): number {
  return 273.15 + s * (-0.0575 + 1.710523e-3 * Math.sqrt(s) - 2.154996e-4 * s);
}
