import {
  type Density,
  type DynamicViscosity,
  requireWithin,
  type Span,
  type SpecificHeat,
  type Temperature,
  type ThermalConductivity,
} from "../quantity";
import type { Liquid } from "./liquid";

const span: Span = [273.15, 273.15 + 150];

/**
 * Liquid water, 0 to 150 °C, at 1 atm or at saturation if that is higher. Up to 5 bar more changes density by 0.02 %.
 * Density: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97 (coefficients read in public implementations).
 * Specific heat: own fit of the sixth degree to IAPWS R7-97 region 1, largest gap 0.03 %.
 * Viscosity and conductivity: IAPWS SR6-08 (2011), liquid water at 0.1 MPa, stated from −20 to 110 °C; taken on to
 * 150 °C, where the viscosity still meets IAPWS R12-08 within 0.3 % (figure from memory).
 */
export const water: Liquid = {
  name: "water",
  temperatureSpan: span,
  freezingTemperature: 273.15 as Temperature,
  vapourPressureRatio: 1,
  density(temperature) {
    requireWithin("density of water: temperature", temperature, span, "K");
    return pureWater.density(temperature) as Density;
  },
  specificHeat(temperature) {
    requireWithin("specificHeat of water: temperature", temperature, span, "K");
    return pureWater.specificHeat(temperature) as SpecificHeat;
  },
  dynamicViscosity(temperature) {
    requireWithin("dynamicViscosity of water: temperature", temperature, span, "K");
    return pureWater.dynamicViscosity(temperature) as DynamicViscosity;
  },
  conductivity(temperature) {
    requireWithin("conductivity of water: temperature", temperature, span, "K");
    return pureWater.conductivity(temperature) as ThermalConductivity;
  },
};

/**
 * The correlations behind `water`, plain numbers in SI units and without guard, for mixtures that stay liquid below 0 °C.
 * @source as `water` says
 */
export const pureWater = {
  /** Kell (1975), equation 16 [kg/m³]. */
  density(temperature: number): number {
    const t = temperature - 273.15;
    const power = 16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12)));
    return (999.83952 + t * power) / (1 + 16.87985e-3 * t);
  },
  /** Own fit to IAPWS R7-97 [J/(kg·K)], in x = −1 to 1 for 0 to 150 °C. */
  specificHeat(temperature: number): number {
    const x = (temperature - 348.15) / 75;
    const power = 61.43781695 + x * (11.22379269 + x * (-11.84923945 + x * (-19.06348932 + x * 23.44293301)));
    return 4191.46175796 + x * (54.16494025 + x * power);
  },
  /** IAPWS SR6-08, viscosity at 0.1 MPa [Pa·s]. */
  dynamicViscosity(temperature: number): number {
    const x = -Math.log(temperature / 300); // powers by one logarithm: a third of the time
    const falling = 61.131 * Math.exp(19.6 * x) + 0.45903 * Math.exp(40 * x);
    return 1e-6 * (280.68 * Math.exp(1.9 * x) + 511.45 * Math.exp(7.7 * x) + falling);
  },
  /** IAPWS SR6-08, conductivity at 0.1 MPa [W/(m·K)]. */
  conductivity(temperature: number): number {
    const x = -Math.log(temperature / 300);
    const falling = 1.1567 * Math.exp(6 * x) - 0.432115 * Math.exp(7.6 * x);
    return 1.663 * Math.exp(1.15 * x) - 1.7781 * Math.exp(3.4 * x) + falling;
  },
} as const;
