import type { KindName } from "./kinds";
import type { BareSymbol } from "./units";
import type { UnitSystem } from "./units/unit";

/** What a quantity is about, where the trade reads the same kind in several units. */
export type DisplayHint =
  | "fuel"
  | "boost"
  | "duct"
  | "small"
  | "rail"
  | "weather"
  | "altitude"
  | "distance"
  | "coolant"
  | "heat"
  | "boat"
  | "road"
  | "running hours"
  | "large";

type Pair<K extends KindName> = readonly [metric: BareSymbol<K>, customary: BareSymbol<K>];

type Choice<K extends KindName> = { readonly usual: Pair<K> } & { readonly [H in DisplayHint]?: Pair<K> };

/** Common practice, no source: what the two trades read on gauges, drawings and test sheets. */
const choices: { readonly [K in KindName]: Choice<K> } = {
  pressure: {
    usual: ["kPa", "psi"],
    boost: ["bar", "psi"],
    duct: ["mbar", "inH2O"],
    rail: ["bar", "psi"],
    weather: ["hPa", "inHg"],
  },
  gaugePressure: { usual: ["kPa", "psi"], boost: ["bar", "psi"], duct: ["mbar", "inH2O"], rail: ["bar", "psi"] },
  pressureDifference: {
    usual: ["kPa", "psi"],
    boost: ["bar", "psi"],
    duct: ["mbar", "inH2O"],
    small: ["Pa", "inH2O"],
    rail: ["bar", "psi"],
  },
  temperature: { usual: ["°C", "°F"] },
  temperatureDifference: { usual: ["K", "°F"] },
  massFlow: { usual: ["kg/min", "lb/min"], fuel: ["kg/h", "lb/h"], small: ["g/s", "lb/h"], coolant: ["kg/s", "lb/s"] },
  volumeFlow: {
    usual: ["m³/min", "cfm"],
    fuel: ["L/h", "gal/h"],
    small: ["L/h", "gal/h"],
    coolant: ["L/min", "gal/min"],
    large: ["m³/h", "cfm"],
  },
  power: { usual: ["kW", "hp"], heat: ["kW", "Btu/min"], small: ["W", "W"] },
  torque: { usual: ["N·m", "lbf·ft"], small: ["N·m", "lbf·in"] },
  force: { usual: ["N", "lbf"], large: ["kN", "lbf"] },
  energy: { usual: ["kJ", "Btu"], small: ["J", "ft·lbf"], large: ["MJ", "Btu"] },
  mass: { usual: ["kg", "lb"], fuel: ["mg", "mg"], small: ["g", "oz"], large: ["t", "lb"] },
  length: {
    usual: ["mm", "in"],
    small: ["µm", "mil"],
    duct: ["m", "ft"],
    altitude: ["m", "ft"],
    large: ["m", "ft"],
    distance: ["km", "mile"],
    boat: ["nautical miles", "nautical miles"],
  },
  area: { usual: ["cm²", "in²"], small: ["mm²", "in²"], large: ["m²", "ft²"] },
  volume: {
    usual: ["L", "cu in"],
    fuel: ["L", "gal US"],
    coolant: ["L", "gal US"],
    small: ["cm³", "cu in"],
    large: ["m³", "ft³"],
  },
  volumePerStroke: { usual: ["mm³", "mm³"] },
  volumePerTurn: { usual: ["L/rev", "cu in/rev"], small: ["cc/rev", "cu in/rev"] },
  rotationalSpeed: { usual: ["rpm", "rpm"] },
  angle: { usual: ["deg", "deg"] },
  crankAngle: { usual: ["deg", "deg"] },
  velocity: { usual: ["m/s", "ft/s"], duct: ["m/s", "ft/min"], boat: ["knots", "knots"], road: ["km/h", "mph"] },
  time: { usual: ["s", "s"], small: ["ms", "ms"], "running hours": ["h", "h"] },
  frequency: { usual: ["Hz", "Hz"] },
  specificFuelConsumption: { usual: ["g/kWh", "lb/(hp·h)"] },
  specificEnergy: { usual: ["kJ/kg", "Btu/lb"], fuel: ["MJ/kg", "Btu/lb"] },
  specificHeat: { usual: ["kJ/(kg·K)", "Btu/(lb·°F)"] },
  specificEntropy: { usual: ["kJ/(kg·K)", "Btu/(lb·°F)"] },
  density: { usual: ["kg/m³", "lb/ft³"], fuel: ["kg/m³", "lb/gal"] },
  dynamicViscosity: { usual: ["mPa·s", "cP"] },
  kinematicViscosity: { usual: ["mm²/s", "cSt"] },
  thermalConductivity: { usual: ["W/(m·K)", "Btu/(h·ft·°F)"] },
  thermalConductance: { usual: ["kW/K", "Btu/(min·°F)"], small: ["W/K", "Btu/(h·°F)"] },
  bulkModulus: { usual: ["GPa", "psi"] },
  massPerLength: { usual: ["kg/m", "lb/ft"], small: ["g/m", "lb/ft"] },
  electricCurrent: { usual: ["A", "A"] },
  voltage: { usual: ["V", "V"] },
  acceleration: { usual: ["m/s²", "ft/s²"], large: ["g", "g"] },
  momentOfInertia: { usual: ["kg·m²", "lb·ft²"], small: ["kg·cm²", "lb·in²"] },
  stress: { usual: ["MPa", "ksi"], small: ["kPa", "psi"] },
  stiffness: { usual: ["N/mm", "lbf/in"] },
  powerPerVolume: { usual: ["kW/L", "hp/cu in"] },
  heatTransferCoefficient: { usual: ["W/(m²·K)", "Btu/(h·ft²·°F)"] },
  heatFlux: { usual: ["kW/m²", "Btu/(h·ft²)"] },
  foulingResistance: { usual: ["m²·K/W", "h·ft²·°F/Btu"] },
  ratio: { usual: ["", ""] },
  fraction: { usual: ["%", "%"] },
  count: { usual: ["", ""] },
};

/**
 * Symbol of the unit in which the trade reads a kind of quantity.
 * A hint that means nothing for the kind leaves the usual unit.
 *
 * @param kind kind of quantity
 * @param system "SI" or "US"
 * @param hint what the quantity is about: the same mass flow is read in kg/min for air and in kg/h for fuel
 * @source common practice, no source
 * @example unitNamed("massFlow", displayUnit("massFlow", "SI", "fuel")).factor // 2.7778e-4
 */
export function displayUnit<K extends KindName>(kind: K, system: UnitSystem, hint?: DisplayHint): BareSymbol<K> {
  const choice: Choice<K> = choices[kind];
  const [metric, customary]: Pair<K> = (hint && choice[hint]) ?? choice.usual;
  return system === "US" ? customary : metric;
}
