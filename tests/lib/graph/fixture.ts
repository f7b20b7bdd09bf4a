/** A small worksheet of its own for the tests of the graph, the files and the benches: the air demand of an engine. */
import {
  choice,
  choiceColumn,
  cell,
  graphOf,
  type InputValues,
  input,
  quantityColumn,
  structure,
  table,
  textColumn,
} from "../../../lib/graph";
import type { KindName, Quantity } from "../../../lib/quantity";

/** Gas constant of air [J/(kg·K)] */
export const gasConstant = 287.05;
/** Specific heat of air at constant pressure [J/(kg·K)] */
export const airHeat = 1005;
/** (κ − 1)/κ of air [–] */
export const airExponent = 0.2857;

/** A number in the SI unit of a kind. */
export const of = <K extends KindName>(_kind: K, value: number): Quantity<K> => value as Quantity<K>;

const span = <K extends KindName>(kind: K, lowest: number, highest: number) =>
  [of(kind, lowest), of(kind, highest)] as const;

/** Declares a quantity input without hint or scale. */
const set = <K extends KindName>(
  key: string,
  label: string,
  kind: K,
  value: number,
  ends: [number, number],
  step: number,
) => input(key, { label, kind, value: of(kind, value), span: span(kind, ...ends), step });

export const ratedPower = set("ratedPower", "Rated power", "power", 700e3, [50e3, 2000e3], 5e3);
export const engineSpeed = set("engineSpeed", "Engine speed", "rotationalSpeed", 35, [5, 60], 0.5);
export const displacement = set("displacement", "Displacement", "volume", 15e-3, [3e-3, 40e-3], 1e-4);
export const cylinders = set("cylinders", "Cylinders", "count", 6, [1, 16], 1);
export const fuelConsumption = set(
  "fuelConsumption",
  "Fuel consumption",
  "specificFuelConsumption",
  5.9e-8,
  [4.5e-8, 1e-7],
  1e-10,
);
export const airFuelRatio = set("airFuelRatio", "Air–fuel ratio", "ratio", 24, [14, 60], 0.1);
export const filling = set("filling", "Volumetric efficiency", "fraction", 0.9, [0.3, 1.3], 0.01);
export const ambientPressure = set("ambientPressure", "Ambient pressure", "pressure", 1e5, [5e4, 1.1e5], 100);
export const ambientTemperature = set(
  "ambientTemperature",
  "Ambient temperature",
  "temperature",
  298.15,
  [220, 330],
  1,
);
export const designTemperature = set("designTemperature", "Design temperature", "temperature", 325, [280, 420], 1);
export const efficiency = set("efficiency", "Compressor efficiency", "fraction", 0.72, [0.4, 0.9], 0.01);
export const effectiveness = set("effectiveness", "Cooler effectiveness", "fraction", 0.8, [0, 1], 0.01);
export const coolantTemperature = set("coolantTemperature", "Coolant temperature", "temperature", 310, [273, 380], 1);
export const meterCapacity = set("meterCapacity", "Meter capacity", "massFlow", 1.1, [0.05, 5], 0.05);
export const hottestCharge = set("hottestCharge", "Hottest charge allowed", "temperature", 345, [300, 500], 1);
export const stages = choice("stages", {
  label: "Stages",
  value: "two",
  options: { one: "one compressor", two: "two compressors in line" },
});
export const accessoryRun = table("accessoryRun", {
  label: "Accessory run",
  rows: [1, 4],
  columns: {
    name: textColumn({ label: "Name", longest: 20 }),
    drive: choiceColumn({ label: "Drive", options: { belt: "by belt", gear: "by gear" } }),
    teeth: quantityColumn({ label: "Teeth", kind: "count", span: span("count", 10, 120), step: 1 }),
    load: quantityColumn({ label: "Load", kind: "power", span: span("power", 0, 100e3), step: 100 }),
  },
  value: [
    { name: "fan", drive: "belt", teeth: of("count", 40), load: of("power", 12e3) },
    { name: "water pump", drive: "gear", teeth: of("count", 24), load: of("power", 3e3) },
  ],
});

export const fuelFlow = cell("fuelFlow", {
  label: "Fuel flow",
  kind: "massFlow",
  symbol: "\\dot m_f",
  from: { power: ratedPower, consumption: fuelConsumption },
  compute: ({ power, consumption }) => of("massFlow", power * consumption),
  formula: "\\dot m_f = P\\,b",
  source: "definition",
});
export const airFlow = cell("airFlow", {
  label: "Air flow",
  kind: "massFlow",
  symbol: "\\dot m_a",
  from: { fuel: fuelFlow, ratio: airFuelRatio },
  compute: ({ fuel, ratio }) => of("massFlow", fuel * ratio),
  formula: "\\dot m_a = \\dot m_f\\,r",
  source: "definition",
  limits: [{ component: "air meters", side: "most", bound: meterCapacity }],
});
export const exhaustFlow = cell("exhaustFlow", {
  label: "Exhaust flow",
  kind: "massFlow",
  symbol: "\\dot m_e",
  from: { air: airFlow, fuel: fuelFlow },
  compute: ({ air, fuel }) => of("massFlow", air + fuel),
  formula: "\\dot m_e = \\dot m_a + \\dot m_f",
  source: "balance of mass",
});
export const sweptFlow = cell("sweptFlow", {
  label: "Swept volume flow",
  kind: "volumeFlow",
  symbol: "\\dot V",
  from: { volume: displacement, speed: engineSpeed },
  compute: ({ volume, speed }) => of("volumeFlow", (volume * speed) / 2),
  formula: "\\dot V = V n / 2",
  source: "definition",
});
export const chargeDensity = cell("chargeDensity", {
  label: "Charge density",
  kind: "density",
  symbol: "\\rho",
  from: { air: airFlow, swept: sweptFlow, filling },
  compute: ({ air, swept, filling }) => of("density", air / (filling * swept)),
  formula: "\\rho = \\dot m_a / (\\eta_v \\dot V)",
  source: "definition",
});
export const manifoldPressure = cell("manifoldPressure", {
  label: "Manifold pressure",
  kind: "pressure",
  symbol: "p_m",
  from: { density: chargeDensity, temperature: designTemperature },
  compute: ({ density, temperature }) => of("pressure", density * gasConstant * temperature),
  formula: "p_m = \\rho R T",
  source: "ideal gas",
});
export const pressureRatio = cell("pressureRatio", {
  label: "Pressure ratio",
  kind: "ratio",
  symbol: "\\pi",
  from: { manifold: manifoldPressure, ambient: ambientPressure },
  compute: ({ manifold, ambient }) => {
    const ratio = manifold / ambient;
    if (!(ratio >= 1)) throw new RangeError(`pressureRatio: ratio is ${ratio.toPrecision(3)}; it must be at least 1`);
    return of("ratio", ratio);
  },
  formula: "\\pi = p_m / p_0",
  source: "definition",
  validity: [{ of: "result", span: [1, 4], note: "the efficiency is taken as one number up to a pressure ratio of 4" }],
});
export const stageRatio = cell("stageRatio", {
  label: "Pressure ratio of a stage",
  kind: "ratio",
  symbol: "\\pi_1",
  from: { ratio: pressureRatio, stages },
  compute: ({ ratio, stages }) => of("ratio", stages === "two" ? Math.sqrt(ratio) : ratio),
  formula: "\\pi_1 = \\pi^{1/z}",
  source: "equal division",
});
export const stageRise = cell("stageRise", {
  label: "Temperature rise of a stage",
  kind: "temperatureDifference",
  symbol: "\\Delta T",
  from: { ratio: stageRatio, inlet: ambientTemperature, efficiency },
  compute: ({ ratio, inlet, efficiency }) =>
    of("temperatureDifference", (inlet * (ratio ** airExponent - 1)) / efficiency),
  formula: "\\Delta T = T_0 (\\pi_1^{k} - 1) / \\eta",
  source: "isentropic efficiency",
  validity: [{ of: "inlet", span: [240, 320], note: "inlet air of −33 to 47 °C" }],
});
export const deliveryTemperature = cell("deliveryTemperature", {
  label: "Delivery temperature",
  kind: "temperature",
  symbol: "T_2",
  from: { inlet: ambientTemperature, rise: stageRise, stages },
  compute: ({ inlet, rise, stages }) => of("temperature", inlet + (stages === "two" ? 2 * rise : rise)),
  formula: "T_2 = T_0 + z\\,\\Delta T",
  source: "equal division",
});
export const chargeTemperature = cell("chargeTemperature", {
  label: "Charge temperature",
  kind: "temperature",
  hint: "coolant",
  symbol: "T_3",
  from: { delivery: deliveryTemperature, coolant: coolantTemperature, effectiveness },
  compute: ({ delivery, coolant, effectiveness }) => of("temperature", delivery - effectiveness * (delivery - coolant)),
  formula: "T_3 = T_2 - \\varepsilon (T_2 - T_c)",
  source: "effectiveness",
  limits: [{ component: "piston crowns", side: "most", bound: hottestCharge, source: "common practice, no source" }],
});
export const compressorPower = cell("compressorPower", {
  label: "Compressor power",
  kind: "power",
  symbol: "P_c",
  from: { air: airFlow, delivery: deliveryTemperature, inlet: ambientTemperature },
  compute: ({ air, delivery, inlet }) => of("power", air * airHeat * (delivery - inlet)),
  formula: "P_c = \\dot m_a c_p (T_2 - T_0)",
  source: "first law",
});
export const coolerDuty = cell("coolerDuty", {
  label: "Cooler duty",
  kind: "power",
  symbol: "Q",
  from: { air: airFlow, delivery: deliveryTemperature, charge: chargeTemperature },
  compute: ({ air, delivery, charge }) => of("power", air * airHeat * (delivery - charge)),
  formula: "Q = \\dot m_a c_p (T_2 - T_3)",
  source: "first law",
});
export const coolerRoom = cell("coolerRoom", {
  label: "Charge above coolant",
  kind: "temperatureDifference",
  symbol: "\\Delta T_c",
  from: { charge: chargeTemperature, coolant: coolantTemperature },
  compute: ({ charge, coolant }) => of("temperatureDifference", charge - coolant),
  formula: "\\Delta T_c = T_3 - T_c",
  source: "definition",
  limits: [{ component: "cooler", side: "least", bound: of("temperatureDifference", 0) }],
});
export const meanPressure = cell("meanPressure", {
  label: "Brake mean effective pressure",
  kind: "pressureDifference",
  symbol: "p_e",
  from: { power: ratedPower, swept: sweptFlow },
  compute: ({ power, swept }) => of("pressureDifference", power / swept),
  formula: "p_e = P / \\dot V",
  source: "definition",
});
export const torque = cell("torque", {
  label: "Torque",
  kind: "torque",
  symbol: "M",
  from: { power: ratedPower, speed: engineSpeed },
  compute: ({ power, speed }) => of("torque", power / (2 * Math.PI * speed)),
  formula: "M = P / (2\\pi n)",
  source: "definition",
});
export const cylinderPower = cell("cylinderPower", {
  label: "Power of a cylinder",
  kind: "power",
  symbol: "P_1",
  from: { power: ratedPower, cylinders },
  compute: ({ power, cylinders }) => of("power", power / cylinders),
  formula: "P_1 = P / z",
  source: "definition",
});

export interface Pulley {
  readonly name: string;
  readonly speed: Quantity<"rotationalSpeed">;
  readonly load: Quantity<"power">;
}

/** Fastest that any accessory may turn [rev/s] */
const fastestAccessory = 150;

export const pulleys = structure("pulleys", {
  label: "Pulleys",
  from: { rows: accessoryRun, speed: engineSpeed },
  compute: ({ rows, speed }): readonly Pulley[] =>
    rows.map(({ name, teeth, load }) => ({ name, speed: of("rotationalSpeed", (speed * 60) / teeth), load })),
  checks: (run) =>
    run.map(({ name, speed }) => ({
      component: name,
      label: `Speed of the ${name}`,
      kind: "rotationalSpeed",
      side: "most",
      value: speed,
      bound: fastestAccessory,
    })),
  formula: "n_i = n\\,z_0/z_i",
  source: "definition",
});
export const accessoryPower = cell("accessoryPower", {
  label: "Power of the accessories",
  kind: "power",
  symbol: "P_x",
  from: { pulleys },
  compute: ({ pulleys }) =>
    of(
      "power",
      pulleys.reduce((sum, { load }) => sum + load, 0),
    ),
  formula: "P_x = \\sum P_i",
  source: "definition",
});
export const accessoryShare = cell("accessoryShare", {
  label: "Share of the accessories",
  kind: "fraction",
  symbol: "x",
  from: { accessories: accessoryPower, power: ratedPower },
  compute: ({ accessories, power }) => of("fraction", accessories / power),
  formula: "x = P_x / P",
  source: "definition",
});

export const inputs = [
  ratedPower,
  engineSpeed,
  displacement,
  cylinders,
  fuelConsumption,
  airFuelRatio,
  filling,
  ambientPressure,
  ambientTemperature,
  designTemperature,
  efficiency,
  effectiveness,
  coolantTemperature,
  meterCapacity,
  hottestCharge,
  stages,
  accessoryRun,
] as const;

export const cells = [
  fuelFlow,
  airFlow,
  exhaustFlow,
  sweptFlow,
  chargeDensity,
  manifoldPressure,
  pressureRatio,
  stageRatio,
  stageRise,
  deliveryTemperature,
  chargeTemperature,
  compressorPower,
  coolerDuty,
  coolerRoom,
  meanPressure,
  torque,
  cylinderPower,
  pulleys,
  accessoryPower,
  accessoryShare,
] as const;

export const airDemand = graphOf([...inputs, ...cells]);

/** The value of every input as declared. */
export const declared: InputValues = Object.fromEntries(airDemand.inputs.map((input) => [input.key, input.value]));
