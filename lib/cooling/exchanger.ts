import {
  type Count,
  type Fraction,
  type MassFlow,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type SpecificHeat,
  type Temperature,
  type ThermalConductance,
} from "../quantity";
import type { FlowArrangement } from "./arrangement";
import { exchangerEffectiveness } from "./effectiveness";
import { largestEffectiveness, transferUnitsFor } from "./transferUnits";

/** An arrangement told by the streams themselves: which of them is mixed, not which is the smaller. */
export type StreamArrangement =
  | Exclude<FlowArrangement, "crossflowMinimumMixed" | "crossflowMaximumMixed">
  | "crossflowHotMixed"
  | "crossflowColdMixed";

export interface ExchangerStreams {
  readonly arrangement: StreamArrangement;
  /** shells in series, whole number, more than 1 for shellAndTube only [–], 1 to 12 */
  readonly shells?: Count | undefined;
  /** temperature of the hot stream going in [K], coldInlet or above */
  readonly hotInlet: Temperature;
  /** temperature of the cold stream going in [K], above 0 */
  readonly coldInlet: Temperature;
  /** mass flow times specific heat of the hot stream [W/K], above 0 */
  readonly hotCapacityRate: ThermalConductance;
  /** mass flow times specific heat of the cold stream [W/K], above 0 */
  readonly coldCapacityRate: ThermalConductance;
}

/** What an exchanger does between two streams. */
export interface ExchangerState {
  /** heat from hot to cold [W] */
  readonly heat: Power;
  /** temperature of the hot stream coming out [K] */
  readonly hotOutlet: Temperature;
  /** temperature of the cold stream coming out [K] */
  readonly coldOutlet: Temperature;
  /** heat over the largest that the inlet temperatures allow [–] */
  readonly effectiveness: Fraction;
  /** UA/Cmin [–] */
  readonly transferUnits: Ratio;
  /** Cmin/Cmax [–] */
  readonly capacityRatio: Ratio;
  /** UA [W/K] */
  readonly conductance: ThermalConductance;
}

/**
 * Heat capacity rate of a stream [W/K]: C = ṁ c.
 *
 * @param massFlow mass flow [kg/s], 0 or above
 * @param specificHeat specific heat at the mean temperature of the stream [J/(kg·K)], above 0
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example heatCapacityRate(2.5, 3990) // 9975
 */
export function heatCapacityRate(massFlow: MassFlow, specificHeat: SpecificHeat): ThermalConductance {
  requireNotNegative("heatCapacityRate: massFlow", massFlow, "kg/s");
  requirePositive("heatCapacityRate: specificHeat", specificHeat, "J/(kg·K)");
  return (massFlow * specificHeat) as ThermalConductance;
}

/**
 * Heat and outlet temperatures of a given exchanger: Q = ε Cmin (T_hot − T_cold) with ε from UA/Cmin.
 * Constant specific heats; no boiling, no condensation, no loss to outside.
 *
 * @param exchanger streams, arrangement, and UA as conductance [W/K], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source Kays & London, Compact Heat Exchangers (from memory)
 * @example exchangerOutlets({ arrangement: "counterflow", conductance: 4000, hotInlet: 363.15, coldInlet: 303.15, hotCapacityRate: 8000, coldCapacityRate: 10000 }).hotOutlet // 342.4722
 */
export function exchangerOutlets(
  exchanger: ExchangerStreams & { readonly conductance: ThermalConductance },
): ExchangerState {
  requireStreams("exchangerOutlets", exchanger);
  requireNotNegative("exchangerOutlets: conductance", exchanger.conductance, "W/K");
  const core = coreOf(exchanger);
  const transferUnits = (exchanger.conductance / smallerRate(exchanger)) as Ratio;
  return stateAt(exchanger, exchangerEffectiveness({ ...core, transferUnits }), transferUnits);
}

/**
 * Heat and outlet temperatures of an exchanger of known effectiveness, and the UA that it must have:
 * Q = ε Cmin (T_hot − T_cold). An effectiveness measured on one stream's temperatures is this one only if that stream
 * has the smaller heat capacity rate, as charge air beside water has.
 *
 * @param exchanger streams, arrangement, and effectiveness [–], 0 to below what the arrangement allows
 * @throws RangeError if the arrangement cannot reach the effectiveness
 * @source Kays & London, Compact Heat Exchangers (from memory)
 * @example outletsAtEffectiveness({ arrangement: "counterflow", effectiveness: 0.8, hotInlet: 470, coldInlet: 305, hotCapacityRate: 404, coldCapacityRate: 8000 }).hotOutlet // 338
 */
export function outletsAtEffectiveness(
  exchanger: ExchangerStreams & { readonly effectiveness: Fraction },
): ExchangerState {
  requireStreams("outletsAtEffectiveness", exchanger);
  const { effectiveness } = exchanger;
  return stateAt(exchanger, effectiveness, transferUnitsFor({ ...coreOf(exchanger), effectiveness }));
}

/**
 * UA, effectiveness and outlets that an exchanger needs to pass a given heat: the inverse of exchangerOutlets.
 * A clean core just this large has nothing in hand: foul it with fouledConductance.
 *
 * @param exchanger streams, arrangement, and heat [W], 0 to below the largest that the arrangement allows
 * @throws RangeError if the heat is out of reach; the message tells the largest heat that no surface can exceed
 * @source Kays & London, Compact Heat Exchangers (from memory)
 * @example conductanceForHeat({ arrangement: "counterflow", heat: 200000, hotInlet: 363.15, coldInlet: 303.15, hotCapacityRate: 8000, coldCapacityRate: 10000 }).conductance // 5341.256
 */
export function conductanceForHeat(exchanger: ExchangerStreams & { readonly heat: Power }): ExchangerState {
  requireStreams("conductanceForHeat", exchanger);
  const { heat, hotInlet, coldInlet, arrangement } = exchanger;
  requireNotNegative("conductanceForHeat: heat", heat, "W");
  const core = coreOf(exchanger);
  const reach = smallerRate(exchanger) * (hotInlet - coldInlet);
  const largest = largestEffectiveness(core) * reach;
  if (heat > 0 && !(heat < largest)) {
    throw new RangeError(
      `conductanceForHeat: heat is ${shown(heat)} W; it must be below ${shown(largest)} W, ` +
        `the most that ${arrangement} allows between ${shown(hotInlet)} K and ${shown(coldInlet)} K: raise a flow or the temperature difference`,
    );
  }
  const effectiveness = (heat === 0 ? 0 : heat / reach) as Fraction;
  return stateAt(exchanger, effectiveness, transferUnitsFor({ ...core, effectiveness }));
}

function requireStreams(caller: string, streams: ExchangerStreams): void {
  requirePositive(`${caller}: coldInlet`, streams.coldInlet, "K");
  requireWithin(`${caller}: hotInlet`, streams.hotInlet, [streams.coldInlet, Number.POSITIVE_INFINITY], "K");
  requirePositive(`${caller}: hotCapacityRate`, streams.hotCapacityRate, "W/K");
  requirePositive(`${caller}: coldCapacityRate`, streams.coldCapacityRate, "W/K");
}

function smallerRate({ hotCapacityRate, coldCapacityRate }: ExchangerStreams): number {
  return Math.min(hotCapacityRate, coldCapacityRate);
}

function coreOf(streams: ExchangerStreams) {
  const { hotCapacityRate, coldCapacityRate, shells } = streams;
  const larger = Math.max(hotCapacityRate, coldCapacityRate);
  return {
    arrangement: bySize(streams),
    capacityRatio: (smallerRate(streams) / larger) as Ratio,
    shells,
  };
}

function bySize({ arrangement, hotCapacityRate, coldCapacityRate }: ExchangerStreams): FlowArrangement {
  const hotIsSmaller = hotCapacityRate < coldCapacityRate;
  if (arrangement === "crossflowHotMixed") return hotIsSmaller ? "crossflowMinimumMixed" : "crossflowMaximumMixed";
  if (arrangement === "crossflowColdMixed") return hotIsSmaller ? "crossflowMaximumMixed" : "crossflowMinimumMixed";
  return arrangement;
}

function stateAt(streams: ExchangerStreams, effectiveness: Fraction, transferUnits: Ratio): ExchangerState {
  const { hotInlet, coldInlet, hotCapacityRate, coldCapacityRate } = streams;
  const smaller = smallerRate(streams);
  const heat = effectiveness * smaller * (hotInlet - coldInlet);
  return {
    heat: heat as Power,
    hotOutlet: (hotInlet - heat / hotCapacityRate) as Temperature,
    coldOutlet: (coldInlet + heat / coldCapacityRate) as Temperature,
    effectiveness,
    transferUnits,
    capacityRatio: (smaller / Math.max(hotCapacityRate, coldCapacityRate)) as Ratio,
    conductance: (transferUnits * smaller) as ThermalConductance,
  };
}

function shown(value: number): number {
  return Number(value.toPrecision(5));
}
