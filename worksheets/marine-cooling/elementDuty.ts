import {
  type ClosedCircuit,
  closedCircuit,
  type ElementDuty,
  type LineNode,
  type RatedConductance,
} from "../../lib/cooling";
import { fuelSpecificHeat, seaWater } from "../../lib/fluid";
import type { Fraction, Power, Ratio, Temperature, ThermalConductance, VolumeFlow } from "../../lib/quantity";
import type { ChargeDuty, CircuitSetup, CircuitState } from "./circuitState";
import { coolantCapacityRate, liquidRate } from "./circuitState";
import type { ElementKey } from "./inputs";

/** What an element of the line does to the water. */
export function dutyOf(element: ElementKey, setup: CircuitSetup, state: CircuitState): ElementDuty {
  const { speedRatio } = state;
  const fouling = (setup.foulingResistance * setup.cleanCoefficient) as Ratio;
  const rated = (conductance: ThermalConductance): RatedConductance => ({
    conductance: (conductance * (state.conductanceLeft?.[element] ?? 1)) as ThermalConductance,
    coldShare: setup.seaSideShare,
  });
  const cooled = (heat: Power, hotCapacityRate: number, conductance: ThermalConductance, hotRatio: Ratio) =>
    ({
      kind: "rated",
      heat,
      arrangement: "counterflow",
      exchanger: rated(conductance),
      fouling,
      hotCapacityRate: hotCapacityRate as ThermalConductance,
      hotRatio,
    }) as const;
  const oilRate = (flow: VolumeFlow) => speedRatio * flow * setup.oilDensity * setup.oilSpecificHeat;
  switch (element) {
    case "fuelCooler": {
      const specificHeat = fuelSpecificHeat(setup.fuel, setup.fuelTemperature);
      const rate = setup.fuelReturnFlow * specificHeat;
      return cooled(state.fuelReturnHeat, rate, setup.fuelCooler, 1 as Ratio);
    }
    case "gearCooler":
      return cooled(state.gearHeat, oilRate(setup.gearOilFlow), setup.gearCooler, speedRatio);
    case "oilCooler":
      return cooled(state.oilHeat, oilRate(setup.oilFlow), setup.oilCooler, speedRatio);
    case "aftercooler":
    case "intercooler":
      return setup.chargeCooledBy === "sea" ? chargeDuty(element, state[element]) : { kind: "none" };
    case "jacketExchanger":
      return setup.jacketCooledBy === "keel"
        ? { kind: "none" }
        : {
            kind: "circuit",
            circuit: { ...jacketCircuit(setup, state), exchanger: rated(setup.jacketExchanger), fouling },
          };
    case "chargeLoop":
      return setup.chargeCooledBy === "loop"
        ? loopDuty(setup, state, rated(setup.loopCooler), fouling)
        : { kind: "none" };
    default:
      return { kind: "none" };
  }
}

/** The loop's thermostat stands at the charge coolers' inlet; what it mixes is the same as one at its own hot end. */
function loopDuty(setup: CircuitSetup, state: CircuitState, exchanger: RatedConductance, fouling: Ratio): ElementDuty {
  const heat = (state.aftercooler.heat + state.intercooler.heat) as Power;
  if (heat < 0) return { kind: "none" };
  const capacityRate = coolantCapacityRate(setup.loopFlow, setup.glycolShare, setup.loopTemperature);
  const hot = (setup.loopTemperature + heat / capacityRate) as Temperature;
  const control = { opens: (hot - 1) as Temperature, fullyOpen: hot };
  return {
    kind: "circuit",
    circuit: { heat, capacityRate, flowRatio: 1 as Ratio, control, arrangement: "counterflow", exchanger, fouling },
  };
}

export function coldestLoop(setup: CircuitSetup, state: CircuitState, node: LineNode): Temperature {
  const duty = dutyOf("chargeLoop", setup, state);
  if (duty.kind !== "circuit") return setup.loopTemperature;
  const flow = (node.share * state.rawWaterFlow) as VolumeFlow;
  return closedCircuit({
    ...duty.circuit,
    control: 1 as Fraction,
    coldInlet: node.seaInlet,
    coldCapacityRate: liquidRate(seaWater(setup.salinity), flow, state.seaTemperature),
    coldRatio: (flow / setup.exchangerSeaFlow) as Ratio,
  }).mixed;
}

function jacketCircuit(setup: CircuitSetup, { jacketHeat, speedRatio, stuckOpening }: CircuitState) {
  const opens = setup.thermostatOpens;
  const fullyOpen = (opens + setup.thermostatSpan) as Temperature;
  return {
    heat: jacketHeat,
    capacityRate: (speedRatio *
      coolantCapacityRate(setup.jacketFlow, setup.glycolShare, fullyOpen)) as ThermalConductance,
    flowRatio: speedRatio,
    control: stuckOpening ?? { opens, fullyOpen },
    arrangement: "counterflow",
  } as const;
}

/** Jacket water through pipes along the hull, in water that no exchanger warms. */
export function keelCircuit(setup: CircuitSetup, state: CircuitState): ClosedCircuit {
  const left = state.conductanceLeft?.jacketExchanger ?? 1;
  return closedCircuit({
    ...jacketCircuit(setup, state),
    exchanger: {
      conductance: (setup.keelCooler * left) as ThermalConductance,
      coldShare: setup.seaSideShare,
    },
    fouling: 0 as Ratio,
    coldInlet: state.seaTemperature,
    coldCapacityRate: Number.POSITIVE_INFINITY as ThermalConductance,
    coldRatio: 1 as Ratio,
  });
}

function chargeDuty(element: "aftercooler" | "intercooler", { heat, hotInlet, hotOutlet }: ChargeDuty): ElementDuty {
  if (heat === 0) return { kind: "none" };
  if (heat < 0) {
    throw new RangeError(
      `marineCircuit: the ${element} warms the charge by ${(-heat / 1000).toFixed(1)} kW, since the charge arrives colder than the cooling stream; set its effectiveness to 0 or leave it out`,
    );
  }
  const hotCapacityRate = (heat / (hotInlet - hotOutlet)) as ThermalConductance;
  return { kind: "given", heat, arrangement: "counterflow", hotInlet, hotCapacityRate };
}
