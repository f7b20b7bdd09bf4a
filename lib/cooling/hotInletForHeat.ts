import {
  type Power,
  requireNotNegative,
  requirePositive,
  type Temperature,
  type ThermalConductance,
} from "../quantity";
import { type ExchangerState, type ExchangerStreams, exchangerOutlets } from "./exchanger";

export interface HotInletInputs extends Omit<ExchangerStreams, "hotInlet"> {
  /** UA, fouled as it is [W/K], above 0 */
  readonly conductance: ThermalConductance;
  /** heat that the hot stream must lose [W], 0 or above */
  readonly heat: Power;
}

/** What an exchanger does, and how hot its hot stream must come for it. */
export interface ExchangerAtHeat extends ExchangerState {
  /** temperature of the hot stream going in [K] */
  readonly hotInlet: Temperature;
}

/**
 * Temperature to which the hot stream rises until a given exchanger passes a given heat, and the outlets that follow:
 * T_hot = T_cold + Q/(ε Cmin). This is how hot jacket water runs when thermostat and heat are what they are.
 * Constant specific heats; whether the stream may become that hot is not asked: see boilingMargin.
 *
 * @param exchanger arrangement, UA [W/K], heat [W], cold inlet [K], heat capacity rates [W/K]
 * @throws RangeError if an argument is outside its span
 * @source Kays & London, Compact Heat Exchangers (from memory)
 * @example hotInletForHeat({ arrangement: "counterflow", conductance: 4000, heat: 165422.2, coldInlet: 303.15, hotCapacityRate: 8000, coldCapacityRate: 10000 }).hotInlet // 363.15
 */
export function hotInletForHeat(exchanger: HotInletInputs): ExchangerAtHeat {
  const { conductance, heat, coldInlet, hotCapacityRate, coldCapacityRate } = exchanger;
  requirePositive("hotInletForHeat: conductance", conductance, "W/K");
  requireNotNegative("hotInletForHeat: heat", heat, "W");
  // Effectiveness does not ask how far apart the streams are.
  const { effectiveness } = exchangerOutlets({ ...exchanger, hotInlet: coldInlet });
  const difference = heat / (effectiveness * Math.min(hotCapacityRate, coldCapacityRate));
  const hotInlet = (coldInlet + difference) as Temperature;
  return { ...exchangerOutlets({ ...exchanger, hotInlet }), heat, hotInlet };
}
