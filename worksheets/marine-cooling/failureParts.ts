import { type ExhaustMixInputs, exhaustMixWithoutEvaporation, type LineNode, timeToLimit } from "../../lib/cooling";
import { glycolCoolant, seaWater } from "../../lib/fluid";
import type {
  Density,
  Fraction,
  Mass,
  MassFlow,
  Power,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  Time,
  Volume,
} from "../../lib/quantity";
import type { CircuitSetup, CircuitState } from "./circuitState";
import { type MarineNetwork, networkAt } from "./networkAt";
import type { RawWaterState } from "./rawWater";

/** One temperature in one failure. */
export interface FailurePart {
  readonly part: string;
  /** before it [K] */
  readonly usual: Temperature;
  /** where it would settle [K]; Infinity where nothing carries the heat off */
  readonly reached: number;
  /** what it must not pass [K] */
  readonly limit: Temperature;
  /** time until it is passed [s]; undefined where it never is */
  readonly secondsToLimit: Time | undefined;
}

/** All that a failure is reckoned from. */
export interface FailuresFrom {
  readonly circuitSetup: CircuitSetup;
  readonly circuitState: CircuitState;
  readonly marineCircuit: MarineNetwork;
  readonly rawWaterState: RawWaterState;
  readonly exhaust: ExhaustMixInputs;
  readonly exhaustKind: "wet" | "dry";
  readonly pumpSpeed: RotationalSpeed;
  readonly wornFilling: Fraction;
  readonly fouledShare: Fraction;
  readonly stuckOpening: Fraction;
  readonly warmMetal: Mass;
  readonly circuitVolume: Volume;
  readonly oilVolume: Volume;
  readonly gearOilVolume: Volume;
  readonly jacketTemperature: Temperature;
  readonly oilTemperature: Temperature;
  readonly gearOilTemperature: Temperature;
  readonly dischargeLimit: Temperature;
  readonly wetExhaustLimit: Temperature;
}

/** Specific heat of cast iron [J/(kg·K)], from memory. */
const iron = 460 as SpecificHeat;

const nodeOf = (network: MarineNetwork, key: string): LineNode | undefined =>
  network.nodes.find((node) => node.key === key);

const hotOf = (network: MarineNetwork, key: string) => nodeOf(network, key)?.station?.hotInlet;

/** Heat capacities of jacket, oil and gear oil [J/K]. */
function lumpsOf(at: FailuresFrom) {
  const coolant = glycolCoolant(at.circuitSetup.glycolShare);
  // Past its limit the water has no time left to be reckoned, and may be hotter than its properties are known.
  const hot = Math.min(at.marineCircuit.jacket?.mixed ?? 350, at.jacketTemperature) as Temperature;
  const water = at.circuitVolume * coolant.density(hot) * coolant.specificHeat(hot);
  const oil = (volume: Volume) => volume * at.circuitSetup.oilDensity * at.circuitSetup.oilSpecificHeat;
  return { jacket: at.warmMetal * iron + water, oil: oil(at.oilVolume), gear: oil(at.gearOilVolume) };
}

/** Where the temperatures settle in a failed state, and how soon the limits are passed. */
export function partsIn(at: FailuresFrom, state: CircuitState): readonly FailurePart[] {
  const usual = at.marineCircuit;
  let network: MarineNetwork | undefined;
  try {
    network = networkAt(at.circuitSetup, state);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return withoutJacketFlow(at); // a thermostat stuck shut passes no heat at all
  }
  const lumps = lumpsOf(at);
  const part = (
    name: string,
    before: Temperature | undefined,
    after: number | undefined,
    limit: Temperature,
    seconds: () => number,
  ) =>
    before === undefined || after === undefined
      ? []
      : [
          {
            part: name,
            usual: before,
            reached: after,
            limit,
            secondsToLimit: finite(after > limit ? seconds() : Number.POSITIVE_INFINITY),
          },
        ];
  const oilTime = (key: "oilCooler" | "gearCooler", heat: Power, lump: number, limit: Temperature) => {
    const station = nodeOf(network, key)!.station!;
    const passed = (t: Temperature) =>
      t <= station.seaInlet
        ? (0 as Power)
        : (((station.heat * (t - station.seaInlet)) / (station.hotInlet - station.seaInlet)) as Power);
    return timeToLimit({ heatCapacity: lump, heat, passed, start: hotOf(usual, key)!, limit });
  };
  const jacketTime = () => {
    // between the old and the new balance the exchanger passes heat in proportion to the temperatures' distance
    const cold = nodeOf(network, "jacketExchanger")?.seaInlet ?? state.seaTemperature;
    const hot = network.jacket!.hot;
    const passed = (t: Temperature) => (t <= cold ? 0 : (state.jacketHeat * (t - cold)) / (hot - cold)) as Power;
    return timeToLimit({
      heatCapacity: lumps.jacket,
      heat: state.jacketHeat,
      passed,
      start: usual.jacket!.hot,
      limit: at.jacketTemperature,
    });
  };
  return [
    ...part("Jacket water", usual.jacket?.hot, network.jacket?.hot, at.jacketTemperature, jacketTime),
    ...part("Engine oil", hotOf(usual, "oilCooler"), hotOf(network, "oilCooler"), at.oilTemperature, () =>
      oilTime("oilCooler", state.oilHeat, lumps.oil, at.oilTemperature),
    ),
    ...part("Gear oil", hotOf(usual, "gearCooler"), hotOf(network, "gearCooler"), at.gearOilTemperature, () =>
      oilTime("gearCooler", state.gearHeat, lumps.gear, at.gearOilTemperature),
    ),
    ...part("Discharge", usual.discharge, network.discharge, at.dischargeLimit, () => 0),
    ...part("Exhaust mix", mixOf(at, usual, at.circuitState), mixOf(at, network, state), at.wetExhaustLimit, () => 0),
  ];
}

function mixOf(
  at: FailuresFrom,
  network: MarineNetwork,
  { rawWaterFlow, seaTemperature }: CircuitState,
): Temperature | undefined {
  if (at.exhaustKind === "dry") return undefined; // the water goes overboard by itself
  const density: Density = seaWater(at.circuitSetup.salinity).density(seaTemperature);
  const waterFlow = (rawWaterFlow * density) as MassFlow;
  if (network.discharge > 371) return undefined; // it would boil in the line
  return exhaustMixWithoutEvaporation({ ...at.exhaust, waterFlow, waterTemperature: network.discharge }).temperature;
}

const finite = (seconds: number): Time | undefined => (Number.isFinite(seconds) ? (seconds as Time) : undefined);

const nothing = () => 0 as Power;

function standing(name: string, before: Temperature | undefined, limit: Temperature, heat: Power, lump: number) {
  if (before === undefined) return [];
  const seconds =
    heat > 0
      ? timeToLimit({ heatCapacity: lump, heat, passed: nothing, start: before, limit })
      : Number.POSITIVE_INFINITY;
  return [{ part: name, usual: before, reached: Number.POSITIVE_INFINITY, limit, secondsToLimit: finite(seconds) }];
}

export function withoutSea(at: FailuresFrom): readonly FailurePart[] {
  const { marineCircuit: usual, circuitState: state } = at;
  const lumps = lumpsOf(at);
  const jacket = usual.keel
    ? [] // a keel cooler goes on without the pump
    : standing("Jacket water", usual.jacket?.hot, at.jacketTemperature, state.jacketHeat, lumps.jacket);
  const mixed = mixOf(at, usual, state);
  return [
    ...jacket,
    ...standing("Engine oil", hotOf(usual, "oilCooler"), at.oilTemperature, state.oilHeat, lumps.oil),
    ...standing("Gear oil", hotOf(usual, "gearCooler"), at.gearOilTemperature, state.gearHeat, lumps.gear),
    ...(mixed === undefined
      ? []
      : [
          {
            part: "Exhaust hose",
            usual: mixed,
            reached: at.exhaust.gasTemperature,
            limit: at.wetExhaustLimit,
            secondsToLimit: finite(at.exhaust.gasTemperature > at.wetExhaustLimit ? 0 : Number.POSITIVE_INFINITY),
          },
        ]),
  ];
}

export function withoutJacketFlow(at: FailuresFrom): readonly FailurePart[] {
  const { marineCircuit: usual, circuitState: state } = at;
  return standing("Jacket water", usual.jacket?.hot, at.jacketTemperature, state.jacketHeat, lumpsOf(at).jacket);
}
