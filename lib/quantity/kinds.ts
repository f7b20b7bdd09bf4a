/**
 * Every kind of quantity that a worksheet may hold, with the SI unit in which lib keeps it.
 *
 * Kinds are finer than dimensions: absolute pressure, gauge pressure and a pressure difference share the pascal and
 * must not be mixed, nor a temperature with a temperature difference, nor the volume of a stroke with that of a turn.
 */
export const kinds = {
  pressure: { name: "absolute pressure", unit: "Pa" },
  gaugePressure: { name: "gauge pressure", unit: "Pa" },
  pressureDifference: { name: "pressure difference", unit: "Pa" },
  temperature: { name: "temperature", unit: "K" },
  temperatureDifference: { name: "temperature difference", unit: "K" },
  massFlow: { name: "mass flow", unit: "kg/s" },
  volumeFlow: { name: "volume flow", unit: "m³/s" },
  power: { name: "power", unit: "W" },
  torque: { name: "torque", unit: "N·m" },
  force: { name: "force", unit: "N" },
  energy: { name: "energy", unit: "J" },
  mass: { name: "mass", unit: "kg" },
  length: { name: "length", unit: "m" },
  area: { name: "area", unit: "m²" },
  volume: { name: "volume", unit: "m³" },
  volumePerStroke: { name: "volume per stroke", unit: "m³" },
  volumePerTurn: { name: "volume per turn", unit: "m³" },
  /** Turns per second, not radians per second. */
  rotationalSpeed: { name: "rotational speed", unit: "rev/s" },
  angle: { name: "angle", unit: "rad" },
  crankAngle: { name: "crank angle", unit: "rad" },
  velocity: { name: "velocity", unit: "m/s" },
  time: { name: "time", unit: "s" },
  frequency: { name: "frequency", unit: "Hz" },
  specificFuelConsumption: { name: "specific fuel consumption", unit: "kg/J" },
  specificEnergy: { name: "specific energy", unit: "J/kg" },
  specificHeat: { name: "specific heat", unit: "J/(kg·K)" },
  specificEntropy: { name: "specific entropy", unit: "J/(kg·K)" },
  density: { name: "density", unit: "kg/m³" },
  dynamicViscosity: { name: "dynamic viscosity", unit: "Pa·s" },
  kinematicViscosity: { name: "kinematic viscosity", unit: "m²/s" },
  thermalConductivity: { name: "thermal conductivity", unit: "W/(m·K)" },
  /** UA of an exchanger, and heat capacity rate of a stream. */
  thermalConductance: { name: "thermal conductance", unit: "W/K" },
  bulkModulus: { name: "bulk modulus", unit: "Pa" },
  massPerLength: { name: "mass per length", unit: "kg/m" },
  electricCurrent: { name: "electric current", unit: "A" },
  voltage: { name: "voltage", unit: "V" },
  acceleration: { name: "acceleration", unit: "m/s²" },
  momentOfInertia: { name: "moment of inertia", unit: "kg·m²" },
  stress: { name: "stress", unit: "Pa" },
  stiffness: { name: "stiffness", unit: "N/m" },
  powerPerVolume: { name: "power per volume", unit: "W/m³" },
  heatTransferCoefficient: { name: "heat transfer coefficient", unit: "W/(m²·K)" },
  heatFlux: { name: "heat flux", unit: "W/m²" },
  foulingResistance: { name: "fouling resistance", unit: "m²·K/W" },
  /** A pure number read as it stands: a pressure ratio, an air–fuel ratio, a Reynolds number. */
  ratio: { name: "ratio", unit: "" },
  /** A pure number read in per cent: an efficiency, a share, a humidity. */
  fraction: { name: "fraction", unit: "" },
  /** A whole number of things: cylinders, teeth, pumps. */
  count: { name: "count", unit: "" },
} as const;

export type KindName = keyof typeof kinds;

declare const kindBrand: unique symbol;

/** A number in the SI unit of its kind. The brand exists for the compiler only; arithmetic drops it. */
export type Quantity<K extends KindName> = number & { readonly [kindBrand]: K };

export type Pressure = Quantity<"pressure">;
export type GaugePressure = Quantity<"gaugePressure">;
export type PressureDifference = Quantity<"pressureDifference">;
export type Temperature = Quantity<"temperature">;
export type TemperatureDifference = Quantity<"temperatureDifference">;
export type MassFlow = Quantity<"massFlow">;
export type VolumeFlow = Quantity<"volumeFlow">;
export type Power = Quantity<"power">;
export type Torque = Quantity<"torque">;
export type Force = Quantity<"force">;
export type Energy = Quantity<"energy">;
export type Mass = Quantity<"mass">;
export type Length = Quantity<"length">;
export type Area = Quantity<"area">;
export type Volume = Quantity<"volume">;
export type VolumePerStroke = Quantity<"volumePerStroke">;
export type VolumePerTurn = Quantity<"volumePerTurn">;
export type RotationalSpeed = Quantity<"rotationalSpeed">;
export type Angle = Quantity<"angle">;
export type CrankAngle = Quantity<"crankAngle">;
export type Velocity = Quantity<"velocity">;
export type Time = Quantity<"time">;
export type Frequency = Quantity<"frequency">;
export type SpecificFuelConsumption = Quantity<"specificFuelConsumption">;
export type SpecificEnergy = Quantity<"specificEnergy">;
export type SpecificHeat = Quantity<"specificHeat">;
export type SpecificEntropy = Quantity<"specificEntropy">;
export type Density = Quantity<"density">;
export type DynamicViscosity = Quantity<"dynamicViscosity">;
export type KinematicViscosity = Quantity<"kinematicViscosity">;
export type ThermalConductivity = Quantity<"thermalConductivity">;
export type ThermalConductance = Quantity<"thermalConductance">;
export type BulkModulus = Quantity<"bulkModulus">;
export type MassPerLength = Quantity<"massPerLength">;
export type ElectricCurrent = Quantity<"electricCurrent">;
export type Voltage = Quantity<"voltage">;
export type Acceleration = Quantity<"acceleration">;
export type MomentOfInertia = Quantity<"momentOfInertia">;
export type Stress = Quantity<"stress">;
export type Stiffness = Quantity<"stiffness">;
export type PowerPerVolume = Quantity<"powerPerVolume">;
export type HeatTransferCoefficient = Quantity<"heatTransferCoefficient">;
export type HeatFlux = Quantity<"heatFlux">;
export type FoulingResistance = Quantity<"foulingResistance">;
export type Ratio = Quantity<"ratio">;
export type Fraction = Quantity<"fraction">;
export type Count = Quantity<"count">;
