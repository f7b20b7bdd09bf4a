import {
  type Count,
  type Fraction,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  type Temperature,
  type TemperatureDifference,
  type ThermalConductance,
} from "../quantity";
import { conductanceForHeat, type StreamArrangement } from "./exchanger";

/** One exchanger on the sea-water line: what its hot side must lose, and at what temperature. */
export interface CircuitExchanger {
  /** what the exchanger cools, as it shall stand in an error */
  readonly name: string;
  readonly arrangement: StreamArrangement;
  /** shells in series, whole number, more than 1 for shellAndTube only [–], 1 to 12 */
  readonly shells?: Count | undefined;
  /** heat that the hot stream must lose [W], 0 or above */
  readonly heat: Power;
  /** mass flow times specific heat of the hot stream [W/K], above 0 */
  readonly hotCapacityRate: ThermalConductance;
  /** known temperature of the hot stream [K], above 0 */
  readonly hotTemperature: Temperature;
  /** where the hot stream has that temperature */
  readonly hotTemperatureAt: "inlet" | "outlet";
}

export interface SeriesCircuitInputs {
  /** temperature of the sea [K], above 0 */
  readonly seaTemperature: Temperature;
  /** mass flow times specific heat of the sea water [W/K], above 0 */
  readonly seaCapacityRate: ThermalConductance;
  /** exchangers in the order in which the sea water passes them */
  readonly exchangers: readonly CircuitExchanger[];
}

/** What one exchanger of the line sees, and must be. */
export interface CircuitStation {
  readonly name: string;
  /** heat to the sea water [W] */
  readonly heat: Power;
  /** sea water going in [K] */
  readonly seaInlet: Temperature;
  /** sea water coming out [K] */
  readonly seaOutlet: Temperature;
  /** hot stream going in [K] */
  readonly hotInlet: Temperature;
  /** hot stream coming out [K] */
  readonly hotOutlet: Temperature;
  /** effectiveness needed [–] */
  readonly effectiveness: Fraction;
  /** UA/Cmin needed [–] */
  readonly transferUnits: Ratio;
  /** UA needed, fouling not yet added [W/K] */
  readonly conductance: ThermalConductance;
  /** smallest difference between the streams at an end, as counterflow (parallel flow: as it flows) [K] */
  readonly pinch: TemperatureDifference;
}

export interface SeriesCircuit {
  readonly stations: readonly CircuitStation[];
  /** sea water before, between and behind the exchangers, one more than these [K] */
  readonly seaTemperatures: readonly Temperature[];
  /** sea water leaving the last exchanger [K] */
  readonly discharge: Temperature;
  /** heat of all exchangers [W] */
  readonly heat: Power;
}

/**
 * Sea water led through exchangers one after another: its temperature at every node, and the effectiveness, transfer
 * units and UA that each exchanger needs for its duty. After each: T_out = T_in + Q/C_sea.
 * Constant specific heats; no loss to outside, no heat from the pump. A pinch of a few kelvin, or below zero where
 * shell and tube lets outlets cross, tells of a large exchanger. Sea water above about 55 °C deposits scale.
 *
 * @param circuit sea temperature [K], sea heat capacity rate [W/K], exchangers in order
 * @throws RangeError by the exchanger's name if no surface can pass its heat there; tells the largest that it can
 * @source energy balance; 55 °C is common practice, no source
 * @example seriesCircuit({ seaTemperature: 298.15, seaCapacityRate: 10000, exchangers: [{ name: "jacket", arrangement: "counterflow", heat: 200000, hotCapacityRate: 20000, hotTemperature: 358.15, hotTemperatureAt: "inlet" }] }).stations[0].conductance // 4462.87
 */
export function seriesCircuit({ seaTemperature, seaCapacityRate, exchangers }: SeriesCircuitInputs): SeriesCircuit {
  requirePositive("seriesCircuit: seaTemperature", seaTemperature, "K");
  requirePositive("seriesCircuit: seaCapacityRate", seaCapacityRate, "W/K");
  const stations: CircuitStation[] = [];
  const seaTemperatures: Temperature[] = [seaTemperature];
  let heat = 0;
  for (const exchanger of exchangers) {
    requireNotNegative(`seriesCircuit: ${exchanger.name}: heat`, exchanger.heat, "W");
    heat += exchanger.heat;
    // From the sum, so that rounding does not pile up along the line.
    const seaOutlet = (seaTemperature + heat / seaCapacityRate) as Temperature;
    stations.push(stationOf(exchanger, seaTemperatures.at(-1)!, seaOutlet, seaCapacityRate));
    seaTemperatures.push(seaOutlet);
  }
  return { stations, seaTemperatures, discharge: seaTemperatures.at(-1)!, heat: heat as Power };
}

function stationOf(
  exchanger: CircuitExchanger,
  seaInlet: Temperature,
  seaOutlet: Temperature,
  seaCapacityRate: ThermalConductance,
): CircuitStation {
  const { name, arrangement, shells, heat, hotCapacityRate, hotTemperature, hotTemperatureAt } = exchanger;
  requirePositive(`seriesCircuit: ${name}: hotCapacityRate`, hotCapacityRate, "W/K");
  requirePositive(`seriesCircuit: ${name}: hotTemperature`, hotTemperature, "K");
  const change = heat / hotCapacityRate;
  const hotInlet = hotTemperatureAt === "inlet" ? hotTemperature : ((hotTemperature + change) as Temperature);
  const hotOutlet = hotTemperatureAt === "outlet" ? hotTemperature : ((hotTemperature - change) as Temperature);
  const need = named(`seriesCircuit: ${name}`, () =>
    conductanceForHeat({
      arrangement,
      shells,
      heat,
      hotInlet,
      coldInlet: seaInlet,
      hotCapacityRate,
      coldCapacityRate: seaCapacityRate,
    }),
  );
  return {
    name,
    heat,
    seaInlet,
    seaOutlet,
    hotInlet,
    hotOutlet,
    effectiveness: need.effectiveness,
    transferUnits: need.transferUnits,
    conductance: need.conductance,
    pinch: pinchOf(arrangement, { hotInlet, hotOutlet, seaInlet, seaOutlet }),
  };
}

/** Smallest difference between the streams at an end [K]. */
export function pinchOf(
  arrangement: StreamArrangement,
  ends: Pick<CircuitStation, "hotInlet" | "hotOutlet" | "seaInlet" | "seaOutlet">,
): TemperatureDifference {
  const { hotInlet, hotOutlet, seaInlet, seaOutlet } = ends;
  const pinch =
    arrangement === "parallelFlow" ? hotOutlet - seaOutlet : Math.min(hotInlet - seaOutlet, hotOutlet - seaInlet);
  return pinch as TemperatureDifference;
}

/** Says which exchanger of which circuit an error belongs to, in place of the function that met it. */
export function named<T>(name: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new RangeError(`${name}: ${error.message.replace(/^\w+: /, "")}`, { cause: error });
  }
}
