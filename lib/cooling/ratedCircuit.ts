import { type Count, type Power, requirePositive, type Temperature, type ThermalConductance } from "../quantity";
import { exchangerOutlets, type StreamArrangement } from "./exchanger";
import { hotInletForHeat } from "./hotInletForHeat";
import { type CircuitStation, named, pinchOf, type SeriesCircuit } from "./seriesCircuit";

interface RatedCore {
  /** what the exchanger cools, as it shall stand in an error */
  readonly name: string;
  readonly arrangement: StreamArrangement;
  /** shells in series, whole number, more than 1 for shellAndTube only [–], 1 to 12 */
  readonly shells?: Count | undefined;
  /** UA, fouled as it is [W/K], above 0 */
  readonly conductance: ThermalConductance;
  /** mass flow times specific heat of the hot stream [W/K], above 0 */
  readonly hotCapacityRate: ThermalConductance;
}

/** An exchanger of known UA, and either its heat, for which the hot side finds its temperature, or that temperature. */
export type RatedExchanger =
  | (RatedCore & {
      /** heat that the hot stream must lose [W], 0 or above */
      readonly heat: Power;
    })
  | (RatedCore & {
      /** temperature of the hot stream going in [K], at least that of the sea water arriving */
      readonly hotInlet: Temperature;
    });

export interface RatedCircuitInputs {
  /** temperature of the sea [K], above 0 */
  readonly seaTemperature: Temperature;
  /** mass flow times specific heat of the sea water [W/K], above 0 */
  readonly seaCapacityRate: ThermalConductance;
  /** exchangers in the order in which the sea water passes them */
  readonly exchangers: readonly RatedExchanger[];
}

/**
 * Sea water led through given exchangers one after another: how hot each hot side runs at its heat, or how much heat it
 * loses at its temperature. The question of a warm harbour, a slow pump or a fouled core; seriesCircuit asks the
 * inverse. Constant specific heats; no loss to outside, no heat from the pump.
 *
 * @param circuit sea temperature [K], sea heat capacity rate [W/K], exchangers in order, each with UA [W/K]
 * @throws RangeError by the exchanger's name if an argument is outside its span
 * @source energy balance; Kays & London, Compact Heat Exchangers (from memory)
 * @example ratedCircuit({ seaTemperature: 298.15, seaCapacityRate: 10000, exchangers: [{ name: "jacket", arrangement: "counterflow", heat: 200000, hotCapacityRate: 20000, conductance: 4462.871026 }] }).stations[0].hotInlet // 358.15
 */
export function ratedCircuit({ seaTemperature, seaCapacityRate, exchangers }: RatedCircuitInputs): SeriesCircuit {
  requirePositive("ratedCircuit: seaTemperature", seaTemperature, "K");
  requirePositive("ratedCircuit: seaCapacityRate", seaCapacityRate, "W/K");
  const stations: CircuitStation[] = [];
  const seaTemperatures: Temperature[] = [seaTemperature];
  let heat = 0;
  for (const exchanger of exchangers) {
    const seaInlet = seaTemperatures.at(-1)!;
    const streams = { ...exchanger, coldInlet: seaInlet, coldCapacityRate: seaCapacityRate };
    const state = named(`ratedCircuit: ${exchanger.name}`, () =>
      "heat" in streams ? hotInletForHeat(streams) : { ...exchangerOutlets(streams), hotInlet: streams.hotInlet },
    );
    heat += state.heat;
    const seaOutlet = (seaTemperature + heat / seaCapacityRate) as Temperature;
    stations.push({
      name: exchanger.name,
      heat: state.heat,
      seaInlet,
      seaOutlet,
      hotInlet: state.hotInlet,
      hotOutlet: state.hotOutlet,
      effectiveness: state.effectiveness,
      transferUnits: state.transferUnits,
      conductance: exchanger.conductance,
      pinch: pinchOf(exchanger.arrangement, { ...state, seaInlet, seaOutlet }),
    });
    seaTemperatures.push(seaOutlet);
  }
  return { stations, seaTemperatures, discharge: seaTemperatures.at(-1)!, heat: heat as Power };
}
