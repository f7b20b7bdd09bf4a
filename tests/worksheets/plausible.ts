/**
 * The span in which each number of the demo build must lie for someone of the trade to take it seriously, in any of
 * its installations, and where the span comes from. "Common practice" stands for common practice, no source.
 * These are plausibility ranges, not precise checks.
 */
export interface Plausible {
  readonly unit: string;
  readonly span: readonly [number, number];
  readonly source: string;
}

const geometry = "geometry of the parts stated in the build";
const practice = "common practice, no source";
const heywood2 =
  "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), chapter 2 (from memory), upper end widened for high output";
const heywood12 = "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), Table 12.1 (from memory), widened";
const iso2533 = "ISO 2533:1975, sea level to 1500 m";
const share = "share of the engine's power usual for such a unit: common practice, no source";

export const plausible: Readonly<Record<string, Plausible>> = {
  // The promise
  displacement: { unit: "L", span: [10.1, 10.3], source: geometry },
  meanPistonSpeed: {
    unit: "m/s",
    span: [10, 17],
    source: "10–13 m/s continuous, 14–16 m/s competition, from memory of textbooks",
  },
  ratedTorque: { unit: "N·m", span: [1400, 2400], source: practice },
  meanEffectivePressure: { unit: "bar", span: [15, 32], source: heywood2 },
  ambientPressure: { unit: "hPa", span: [845, 1014], source: iso2533 },
  ambientHumidityRatio: { unit: "", span: [0.003, 0.03], source: "ASHRAE psychrometric chart, 20–40 °C" },
  ambientDensity: { unit: "kg/m³", span: [0.95, 1.25], source: iso2533 },
  // Air demand
  frictionMeanPressure: { unit: "bar", span: [1.5, 3.5], source: "Heywood (1988), chapter 13 (from memory)" },
  frictionPower: {
    unit: "kW",
    span: [30, 95],
    source: "8–12 % of indicated power: Heywood (1988), chapter 13 (from memory)",
  },
  pumpingPower: {
    unit: "kW",
    span: [-60, 40],
    source: "mean pumping pressure within ±2 bar: common practice, no source",
  },
  fuelPumpPower: { unit: "kW", span: [3, 20], source: "1–2 % of brake power: common practice, no source" },
  indicatedPower: {
    unit: "kW",
    span: [430, 950],
    source: "mechanical efficiency 0.78–0.92 with the blower counted in: common practice, no source",
  },
  fuelFlow: { unit: "kg/h", span: [70, 190], source: "195–240 g/kWh" },
  specificFuelConsumption: { unit: "g/kWh", span: [195, 245], source: heywood2 },
  excessAirRatioMet: { unit: "", span: [1.3, 2.3], source: practice },
  airFuelRatio: { unit: "", span: [18, 33], source: practice },
  dryAirFlow: {
    unit: "kg/min",
    span: [35, 80],
    source: "220–250 lb/min at 1,400 hp, in proportion: common practice, no source",
  },
  airFlow: {
    unit: "kg/min",
    span: [35, 80],
    source: "220–250 lb/min at 1,400 hp, in proportion: common practice, no source",
  },
  thumbAirFlow: { unit: "kg/min", span: [35, 80], source: practice },
  densityNeeded: { unit: "kg/m³", span: [3, 5.5], source: practice },
  pressureNeeded: { unit: "bar", span: [2.8, 5], source: practice },
  flowPerMeter: { unit: "kg/min", span: [10, 27], source: "within the meter's own span" },
  meterHeadroom: { unit: "%", span: [5, 50], source: practice },
  idleAirFlow: { unit: "kg/min", span: [2, 8], source: "displacement swept at idle near outside density" },
  idleFlowPerMeter: { unit: "kg/min", span: [0.9, 4], source: "within the meter's own span" },
  turnDown: { unit: "", span: [6, 25], source: practice },
  meterVelocity: { unit: "m/s", span: [20, 80], source: practice },
  meterMach: { unit: "", span: [0.05, 0.3], source: practice },
  meterDepression: { unit: "mbar", span: [2, 40], source: practice },
  ductVelocity: { unit: "m/s", span: [15, 60], source: practice },
  bellmouthRatedLoss: { unit: "mbar", span: [0.1, 5], source: "1–5 % of the velocity head" },
  ductRatedLoss: { unit: "mbar", span: [1, 25], source: "about one velocity head" },
  intakeLoss: { unit: "mbar", span: [10, 50], source: practice },
  // Boost
  chargeSinkTemperature: { unit: "°C", span: [15, 45], source: practice },
  compressorPressureRatio: {
    unit: "",
    span: [2, 3.8],
    source: "single-stage radial compressors: common practice, no source",
  },
  compressorCorrectedFlow: { unit: "kg/min", span: [15, 45], source: practice },
  compressorOutletTemperature: { unit: "°C", span: [130, 205], source: practice },
  compressorPower: { unit: "kW", span: [70, 240], source: "energy balance of air at these ratios" },
  intercoolerHeat: {
    unit: "kW",
    span: [60, 180],
    source: "10–15 % of fuel power for all charge coolers: common practice, no source",
  },
  blowerInletTemperature: { unit: "°C", span: [40, 90], source: practice },
  blowerInletPressure: { unit: "bar", span: [2, 3.5], source: practice },
  blowerPressureRatio: {
    unit: "",
    span: [1.15, 2],
    source: "straight-lobe blowers up to 2: common practice, no source",
  },
  blowerFilling: { unit: "%", span: [80, 95], source: "0.80–0.93 for lobes at mid speed, from memory" },
  blowerShaftPower: { unit: "kW", span: [15, 110], source: "5–12 % of brake power: common practice, no source" },
  blowerOutletTemperature: { unit: "°C", span: [70, 170], source: practice },
  aftercoolerHeat: { unit: "kW", span: [25, 130], source: practice },
  condensate: { unit: "g/s", span: [0, 8], source: "psychrometrics at boost pressure" },
  manifoldTemperature: { unit: "°C", span: [30, 70], source: practice },
  manifoldPressure: { unit: "bar", span: [2.8, 5], source: practice },
  boost: { unit: "bar", span: [1.8, 4], source: practice },
  turbochargerShare: { unit: "%", span: [65, 92], source: practice },
  blowerShare: { unit: "%", span: [10, 40], source: practice },
  turbineInletTemperature: { unit: "°C", span: [480, 760], source: practice },
  expansionRatio: { unit: "", span: [1.8, 4], source: practice },
  turbineInletPressure: { unit: "bar", span: [2, 4.5], source: practice },
  backPressureRatio: {
    unit: "",
    span: [0.55, 1.1],
    source: "a blower behind the turbochargers lifts the manifold above the exhaust: common practice, no source",
  },
  turbineOutletTemperature: { unit: "°C", span: [350, 600], source: practice },
  turbineArea: { unit: "cm²", span: [5, 25], source: "turbine nozzles of such engines: common practice, no source" },
  exhaustFlow: { unit: "kg/min", span: [36, 84], source: "air and fuel together" },
  peakPressure: { unit: "bar", span: [110, 230], source: practice },
  loopResidual: { unit: "", span: [0, 1e-9], source: "the solver's own promise" },
  // Fuel delivery
  fuelHeatingValue: {
    unit: "MJ/kg",
    span: [42, 43.5],
    source: "EN 590 and ISO 8217 distillates: common practice, no source",
  },
  stoichiometricRatio: { unit: "", span: [14.3, 14.8], source: "balance of elements, hydrogen to carbon 1.75 to 1.95" },
  fuelDensityAtPump: { unit: "kg/m³", span: [795, 860], source: "EN 590 and ISO 8217 DM grades, at 40–50 °C" },
  fuelPumpWork: { unit: "kJ/kg", span: [150, 400], source: "pressure over density, with losses" },
  fuelPerStroke: { unit: "mg", span: [150, 320], source: "fuel flow over strokes" },
  injectedVolume: { unit: "mm³", span: [180, 400], source: practice },
  cylinderPressure: { unit: "bar", span: [90, 200], source: practice },
  nozzleArea: { unit: "mm²", span: [0.2, 0.7], source: geometry },
  jetVelocity: { unit: "m/s", span: [450, 750], source: "Bernoulli at 1200–2200 bar" },
  nozzleFlow: { unit: "L/h", span: [400, 1200], source: practice },
  injectionTime: { unit: "ms", span: [0.8, 2.4], source: practice },
  injectionAngle: { unit: "deg", span: [12, 40], source: practice },
  holeDiameterNeeded: { unit: "µm", span: [150, 320], source: practice },
  pumpDisplacement: { unit: "cc/rev", span: [1, 4], source: geometry },
  pumpFilling: { unit: "%", span: [75, 96], source: "from memory of pump tests" },
  fuelPumpSpeed: {
    unit: "rpm",
    span: [1500, 3200],
    source: "at or a little below crankshaft speed: common practice, no source",
  },
  pumpCapacity: { unit: "kg/h", span: [120, 320], source: practice },
  pumpDemand: { unit: "kg/h", span: [80, 230], source: practice },
  pumpRatioNeeded: { unit: "", span: [0.3, 0.84], source: "below the ratio fitted" },
  supplyMassFlow: {
    unit: "kg/h",
    span: [200, 560],
    source: "two to four times what is burnt: common practice, no source",
  },
  supplyVolumeFlow: { unit: "L/h", span: [240, 700], source: "the same by volume" },
  supplyVelocity: { unit: "m/s", span: [0.4, 2.5], source: practice },
  supplyReynolds: { unit: "", span: [1500, 12000], source: "definition" },
  supplyLoss: { unit: "bar", span: [0.03, 0.6], source: practice },
  inletPressure: { unit: "bar", span: [3.5, 6], source: practice },
  fuelReturnFlow: {
    unit: "kg/h",
    span: [100, 400],
    source: "one to three times what is burnt: common practice, no source",
  },
  returnTemperature: { unit: "°C", span: [40, 80], source: practice },
  fuelReturnHeat: { unit: "kW", span: [0.2, 5], source: practice },
  // Drive speeds
  blowerDriveRatio: {
    unit: "",
    span: [1, 2.2],
    source: "blowers are overdriven up to about 2: common practice, no source",
  },
  fuelPumpDriveRatio: {
    unit: "",
    span: [0.6, 1],
    source: "at or a little below crankshaft speed: common practice, no source",
  },
  rawWaterDriveRatio: { unit: "", span: [0.5, 1.2], source: practice },
  hydraulicPower: { unit: "kW", span: [0, 12], source: share },
  alternatorPower: { unit: "kW", span: [1, 8], source: share },
  accessoryPower: { unit: "kW", span: [6, 30], source: "1–3 % of brake power: common practice, no source" },
  blowerSpeed: { unit: "rpm", span: [2500, 7200], source: practice },
  blowerTopSpeed: { unit: "rpm", span: [2500, 7200], source: practice },
  blowerBeltLength: { unit: "mm", span: [1300, 1500], source: geometry },
  blowerBeltSpeed: { unit: "m/s", span: [20, 45], source: practice },
  blowerTorque: { unit: "N·m", span: [30, 180], source: "power over speed" },
  blowerBeltPull: { unit: "N", span: [500, 3500], source: "torque over radius" },
  blowerBeltRating: { unit: "kW", span: [30, 200], source: "ISO 5295 form with the build's own pull" },
  blowerBeltLoad: { unit: "kW", span: [15, 110], source: "the blower's power" },
  electricalLoad: { unit: "A", span: [20, 200], source: practice },
  idleElectricalLoad: { unit: "A", span: [10, 120], source: practice },
  idleBatteryBalance: { unit: "A", span: [0, 80], source: "an idle that charges: common practice, no source" },
  hydraulicHeatRate: { unit: "kW", span: [0, 8], source: "the pump's power less what steering carries away" },
  steeringFlowAtIdle: { unit: "L/min", span: [0, 20], source: practice },
  rawWaterPumpSpeed: { unit: "rpm", span: [1500, 2600], source: practice },
  // Marine cooling, for the boat: elsewhere the sheet only shows what would be
  rawWaterInlet: { unit: "°C", span: [25, 34], source: "warm seas: common practice, no source" },
  rawWaterFlow: {
    unit: "L/min",
    span: [250, 430],
    source: "about 0.7–1.1 L/min for each kilowatt: common practice, no source",
  },
  seaCapacityRate: { unit: "kW/K", span: [17, 30], source: "flow times about 4 MJ/(m³·K)" },
  jacketHeat: { unit: "kW", span: [90, 200], source: heywood12 },
  oilHeat: { unit: "kW", span: [35, 80], source: heywood12 },
  gearHeat: { unit: "kW", span: [7, 16], source: "2–4 % of power: common practice, no source" },
  seaHeat: {
    unit: "kW",
    span: [270, 400],
    source: "0.7–1.0 kW to the sea for each kilowatt of power: common practice, no source",
  },
  jacketReaches: { unit: "°C", span: [60, 86], source: practice },
  oilReaches: { unit: "°C", span: [70, 105], source: practice },
  gearOilReaches: { unit: "°C", span: [55, 80], source: practice },
  fuelReaches: { unit: "°C", span: [33, 55], source: practice },
  rawWaterDischarge: { unit: "°C", span: [38, 55], source: "about 55 °C at most: common practice, no source" },
  rawWaterNeeded: { unit: "L/min", span: [130, 310], source: "energy balance" },
  rawWaterVelocity: { unit: "m/s", span: [1, 2.5], source: practice },
  rawWaterSpeed: { unit: "rpm", span: [1500, 2600], source: practice },
  wetExhaustTemperature: { unit: "°C", span: [40, 70], source: practice },
  wetExhaustSaturated: { unit: "°C", span: [38, 68], source: practice },
  wetExhaustVelocity: { unit: "m/s", span: [8, 25], source: practice },
};
