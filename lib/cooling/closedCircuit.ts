import { brentRoot } from "../numeric";
import {
  type Fraction,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Temperature,
  type ThermalConductance,
} from "../quantity";
import { conductanceAtFlow, type RatedConductance } from "./conductanceAtFlow";
import { exchangerOutlets, type StreamArrangement } from "./exchanger";

/** A wax thermostat between a bypass and an exchanger. */
export interface Thermostat {
  /** temperature at which it begins to open [K], above 0 */
  readonly opens: Temperature;
  /** temperature at which all the flow passes the exchanger [K], above opens */
  readonly fullyOpen: Temperature;
}

export interface ClosedCircuitInputs {
  /** heat that the coolant takes up in each round [W], 0 or above */
  readonly heat: Power;
  /** heat capacity rate of the pump's whole flow [W/K], above 0 */
  readonly capacityRate: ThermalConductance;
  /** the pump's flow over the flow for which the exchanger is rated [–], above 0 */
  readonly flowRatio: Ratio;
  /** a thermostat, or the share of the flow that always passes the exchanger [–], 0 to 1 */
  readonly control: Thermostat | Fraction;
  readonly arrangement: StreamArrangement;
  /** the exchanger at its rated flows */
  readonly exchanger: RatedConductance;
  /** fouling resistance over the clean resistance at the rated flows [–], 0 or above */
  readonly fouling: Ratio;
  /** cold stream going in [K], above 0 */
  readonly coldInlet: Temperature;
  /** heat capacity rate of the cold stream [W/K], 0 or above; Infinity for open water along a hull */
  readonly coldCapacityRate: ThermalConductance;
  /** cold flow over the one for which the exchanger is rated [–], 0 or above */
  readonly coldRatio: Ratio;
}

/** A closed circuit in balance. */
export interface ClosedCircuit {
  /** coolant leaving the engine, where the thermostat feels it [K] */
  readonly hot: Temperature;
  /** coolant leaving the exchanger [K] */
  readonly exchangerOutlet: Temperature;
  /** coolant going back, exchanger and bypass mixed [K] */
  readonly mixed: Temperature;
  /** share of the flow through the exchanger [–] */
  readonly opening: Fraction;
  /** UA at these flows [W/K] */
  readonly conductance: ThermalConductance;
  /** heat passed to the cold stream, reckoned from the exchanger [W] */
  readonly heat: Power;
  /** cold stream coming out [K] */
  readonly coldOutlet: Temperature;
}

/** Stands for open water, whose temperature no exchanger moves [W/K]. */
const openWater = 1e15;

/**
 * Temperatures of a closed coolant circuit with thermostat and bypass [K]: the heat taken up in the engine is passed on,
 * Q = ε C_min (T_hot − T_cold), by the share of the flow that the thermostat lets through at T_hot.
 * The opening grows in a straight line between its two temperatures; hysteresis and lag are left out, and so is
 * whether the coolant would boil.
 *
 * @param circuit heat, flows, control and exchanger [W, W/K, –, K]
 * @throws RangeError if an argument is outside its span, or no temperature passes the heat
 * @source energy balance; Kays & London, Compact Heat Exchangers (from memory)
 * @example closedCircuit({ heat: 165422.2, capacityRate: 8000, flowRatio: 1, control: 1, arrangement: "counterflow", exchanger: { conductance: 4000, coldShare: 0.5 }, fouling: 0, coldInlet: 303.15, coldCapacityRate: 10000, coldRatio: 1 }).hot // 363.15
 */
export function closedCircuit(circuit: ClosedCircuitInputs): ClosedCircuit {
  requireNotNegative("closedCircuit: heat", circuit.heat, "W");
  const { heat, coldInlet, control } = circuit;
  const passes = heatPassed(circuit);
  if (typeof control !== "number") {
    const full = passes(control.fullyOpen);
    if (heat <= full.heat) {
      const from = Math.max(coldInlet, control.opens);
      const found = brentRoot((t) => passes(t as Temperature).heat - heat, [from, control.fullyOpen], {
        name: "closedCircuit: temperature",
        tolerance: 1e-11,
      });
      return passes(found.root as Temperature);
    }
  }
  // With an opening that no longer moves, heat is in proportion to the difference.
  const sample = Math.max(typeof control === "number" ? 0 : control.fullyOpen, coldInlet + 1) as Temperature;
  const passed = passes(sample).heat;
  if (!(passed > 0) && heat > 0) {
    throw new RangeError(
      `closedCircuit: the exchanger passes nothing of ${(heat / 1000).toPrecision(3)} kW; a stream stands still, or the thermostat is shut`,
    );
  }
  const difference = heat === 0 ? 0 : (heat * (sample - coldInlet)) / passed;
  return passes((coldInlet + difference) as Temperature);
}

/**
 * What a closed circuit passes on while the coolant leaves the engine at a temperature, in balance or not: for coolant
 * that warms up or boils over. Below the cold stream's temperature nothing is passed.
 *
 * @param circuit as for closedCircuit; its heat is not asked for
 * @throws RangeError if an argument is outside its span
 * @source energy balance; Kays & London, Compact Heat Exchangers (from memory)
 * @example heatPassed({ capacityRate: 8000, flowRatio: 1, control: 1, arrangement: "counterflow", exchanger: { conductance: 4000, coldShare: 0.5 }, fouling: 0, coldInlet: 303.15, coldCapacityRate: 10000, coldRatio: 1 })(363.15).heat // 165422.2
 */
export function heatPassed(circuit: Omit<ClosedCircuitInputs, "heat">): (hot: Temperature) => ClosedCircuit {
  const { capacityRate, flowRatio, arrangement, exchanger, fouling, coldInlet, coldRatio } = circuit;
  requirePositive("closedCircuit: capacityRate", capacityRate, "W/K");
  requirePositive("closedCircuit: flowRatio", flowRatio);
  requirePositive("closedCircuit: coldInlet", coldInlet, "K");
  const coldCapacityRate = Math.min(circuit.coldCapacityRate, openWater) as ThermalConductance;
  requireNotNegative("closedCircuit: coldCapacityRate", coldCapacityRate, "W/K");
  const openingAt = openingOf(circuit.control);
  return (hot) => {
    const opening = openingAt(hot);
    const conductance = conductanceAtFlow(exchanger, {
      coldRatio,
      hotRatio: (opening * flowRatio) as Ratio,
      fouling,
    });
    if (conductance === 0 || coldCapacityRate === 0 || !(hot > coldInlet)) {
      const heat = 0 as Power;
      return { hot, exchangerOutlet: hot, mixed: hot, opening, conductance, heat, coldOutlet: coldInlet };
    }
    const hotCapacityRate = (opening * capacityRate) as ThermalConductance;
    const streams = { arrangement, hotInlet: hot, coldInlet, hotCapacityRate, coldCapacityRate };
    const state = exchangerOutlets({ ...streams, conductance });
    return {
      hot,
      exchangerOutlet: state.hotOutlet,
      mixed: (hot - state.heat / capacityRate) as Temperature,
      opening,
      conductance,
      heat: state.heat,
      coldOutlet: state.coldOutlet,
    };
  };
}

function openingOf(control: Thermostat | Fraction): (hot: Temperature) => Fraction {
  if (typeof control === "number") {
    requireWithin("closedCircuit: control", control, [0, 1]);
    return () => control;
  }
  const { opens, fullyOpen } = control;
  requirePositive("closedCircuit: opens", opens, "K");
  requirePositive("closedCircuit: fullyOpen less opens", fullyOpen - opens, "K");
  return (hot) => Math.min(1, Math.max(0, (hot - opens) / (fullyOpen - opens))) as Fraction;
}
