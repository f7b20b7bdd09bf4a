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
import { type ClosedCircuit, closedCircuit } from "./closedCircuit";
import { conductanceAtFlow } from "./conductanceAtFlow";
import type { StreamArrangement } from "./exchanger";
import { hotInletForHeat } from "./hotInletForHeat";
import type { LineElement } from "./lineElement";
import { type CircuitStation, named, pinchOf, seriesCircuit } from "./seriesCircuit";

export interface CoolingNetworkInputs {
  /** water going in [K], above 0 */
  readonly seaTemperature: Temperature;
  /** heat capacity rate of the pump's whole flow [W/K], above 0 */
  readonly seaCapacityRate: ThermalConductance;
  /** the pump's flow over the flow for which the exchangers are rated [–], above 0 */
  readonly flowRatio: Ratio;
  readonly elements: readonly LineElement[];
}

/** An element of the line with the water's temperatures about it. */
export interface LineNode {
  readonly name: string;
  /** elements of one number lie beside each other */
  readonly group: number;
  readonly beside: boolean;
  readonly share: Fraction;
  /** water entering and leaving the element [K] */
  readonly seaInlet: Temperature;
  readonly seaOutlet: Temperature;
  /** the whole water behind the group, all its branches mixed [K] */
  readonly trunkOutlet: Temperature;
  /** the exchanger, where there is one */
  readonly station: CircuitStation | undefined;
  /** the closed circuit behind it, where there is one */
  readonly circuit: ClosedCircuit | undefined;
}

export interface CoolingNetwork {
  readonly nodes: readonly LineNode[];
  readonly stations: readonly CircuitStation[];
  /** the whole water before, between and behind the groups that take heat [K] */
  readonly seaTemperatures: readonly Temperature[];
  /** water leaving the last element [K] */
  readonly discharge: Temperature;
  /** heat of all elements [W] */
  readonly heat: Power;
  /** largest gap of any energy balance, of an exchanger or of the whole, over the whole heat [–] */
  readonly residual: Ratio;
}

/**
 * Temperatures at every node of a raw-water line of any order, with branches, and of the circuits that it cools [K]:
 * behind each group of elements side by side T = T_in + ΣQ/C, within a branch T = T_in + Q/(s C). Each hot side then
 * runs as hot as its exchanger makes it at these flows; closed circuits find their thermostat's opening.
 * Constant specific heats; no loss to outside, no heat from the pump. How the flow is shared is given: see branchSplit.
 *
 * @param network water's temperature [K], heat capacity rate [W/K], flow over the exchangers' rated one [–], elements
 * @throws RangeError by the element's name if a share is outside its span, the shares of a group pass 1, or no exchanger passes its heat
 * @source energy balance; Kays & London, Compact Heat Exchangers (from memory)
 * @example coolingNetwork({ seaTemperature: 298.15, seaCapacityRate: 10000, flowRatio: 1, elements: [{ name: "jacket", beside: false, share: 0.5, duty: { kind: "rated", heat: 100000, arrangement: "counterflow", exchanger: { conductance: 4000, coldShare: 0.5 }, fouling: 0, hotCapacityRate: 20000, hotRatio: 1 } }] }).discharge // 308.15
 */
export function coolingNetwork(network: CoolingNetworkInputs): CoolingNetwork {
  const { seaTemperature, seaCapacityRate, flowRatio } = network;
  requirePositive("coolingNetwork: seaTemperature", seaTemperature, "K");
  requirePositive("coolingNetwork: seaCapacityRate", seaCapacityRate, "W/K");
  requirePositive("coolingNetwork: flowRatio", flowRatio);
  const nodes: LineNode[] = [];
  const seaTemperatures: Temperature[] = [seaTemperature];
  let heat = 0;
  groupsOf(network.elements).forEach((group, index) => {
    const trunkInlet = (seaTemperature + heat / seaCapacityRate) as Temperature;
    const solved = group.map((element) => ({
      element,
      ...solvedElement(element, trunkInlet, (element.share * seaCapacityRate) as ThermalConductance, flowRatio),
    }));
    heat += solved.reduce((sum, { station }) => sum + (station?.heat ?? 0), 0);
    const trunkOutlet = (seaTemperature + heat / seaCapacityRate) as Temperature;
    if (solved.some(({ station }) => station)) seaTemperatures.push(trunkOutlet);
    for (const { element, station, circuit } of solved) {
      nodes.push({
        name: element.name,
        group: index,
        beside: element.beside,
        share: element.share,
        seaInlet: trunkInlet,
        seaOutlet: station ? station.seaOutlet : trunkInlet,
        trunkOutlet,
        station,
        circuit,
      });
    }
  });
  const discharge = seaTemperatures.at(-1)!;
  return {
    nodes,
    stations: nodes.flatMap(({ station }) => station ?? []),
    seaTemperatures,
    discharge,
    heat: heat as Power,
    residual: residualOf(nodes, { heat, taken: seaCapacityRate * (discharge - seaTemperature) }, seaCapacityRate),
  };
}

function groupsOf(elements: readonly LineElement[]): readonly (readonly LineElement[])[] {
  const groups: LineElement[][] = [];
  for (const element of elements) {
    if (element.share === 0 && element.duty.kind !== "none") {
      throw new RangeError(
        `coolingNetwork: no water passes the ${element.name.toLowerCase()}, whose heat must go somewhere; open its valve or take it out of the line`,
      );
    }
    requireWithin(`coolingNetwork: ${element.name}: share`, element.share, [0, 1]);
    if (element.beside && groups.length > 0) groups.at(-1)!.push(element);
    else groups.push([element]);
  }
  for (const group of groups) {
    const together = group.reduce((sum, { share }) => sum + share, 0);
    if (together <= 1 + 1e-9) continue;
    throw new RangeError(
      `coolingNetwork: ${group.map(({ name }) => name.toLowerCase()).join(" and ")} lie beside each other and take ${(100 * together).toFixed(0)} % of the flow together; it must be at most 100 %`,
    );
  }
  return groups;
}

interface SolvedElement {
  readonly station: CircuitStation | undefined;
  readonly circuit: ClosedCircuit | undefined;
}

function solvedElement(
  { name, duty, share }: LineElement,
  seaInlet: Temperature,
  coldCapacityRate: ThermalConductance,
  flowRatio: Ratio,
): SolvedElement {
  const coldRatio = (share * flowRatio) as Ratio;
  switch (duty.kind) {
    case "none":
      return { station: undefined, circuit: undefined };
    case "given": {
      if (duty.heat === 0) return { station: undefined, circuit: undefined };
      const hotOutlet = (duty.hotInlet - duty.heat / duty.hotCapacityRate) as Temperature;
      if (!(hotOutlet > seaInlet)) {
        throw new RangeError(
          `coolingNetwork: the ${name.toLowerCase()} brings its stream to ${(hotOutlet - 273.15).toFixed(1)} °C, which sea water of ${(seaInlet - 273.15).toFixed(1)} °C cannot do; with this sea the stream stays warmer: put the cooler nearer to the pump, or give it more water`,
        );
      }
      const exchangers = [{ ...duty, name, hotTemperature: duty.hotInlet, hotTemperatureAt: "inlet" as const }];
      const line = { seaTemperature: seaInlet, seaCapacityRate: coldCapacityRate, exchangers };
      return { station: seriesCircuit(line).stations[0], circuit: undefined };
    }
    case "rated": {
      requireNotNegative(`coolingNetwork: ${name}: heat`, duty.heat, "W");
      const { arrangement, hotCapacityRate, heat, hotRatio, fouling } = duty;
      const conductance = conductanceAtFlow(duty.exchanger, { coldRatio, hotRatio, fouling });
      const state = named(`coolingNetwork: ${name}`, () =>
        hotInletForHeat({ arrangement, hotCapacityRate, heat, coldInlet: seaInlet, coldCapacityRate, conductance }),
      );
      return { station: stationOf(name, arrangement, seaInlet, state), circuit: undefined };
    }
    case "circuit": {
      const inputs = { ...duty.circuit, coldInlet: seaInlet, coldCapacityRate, coldRatio };
      const circuit = named(`coolingNetwork: ${name}`, () => closedCircuit(inputs));
      const flows = { hot: circuit.opening * inputs.capacityRate, cold: coldCapacityRate };
      const smaller = Math.min(flows.hot, flows.cold);
      const state = {
        heat: circuit.heat,
        hotInlet: circuit.hot,
        hotOutlet: circuit.exchangerOutlet,
        coldOutlet: circuit.coldOutlet,
        conductance: circuit.conductance,
        transferUnits: (smaller > 0 ? circuit.conductance / smaller : 0) as Ratio,
        effectiveness: (circuit.heat === 0 ? 0 : circuit.heat / (smaller * (circuit.hot - seaInlet))) as Fraction,
      };
      return { station: stationOf(name, inputs.arrangement, seaInlet, state), circuit };
    }
  }
}

type SolvedStreams = Pick<
  CircuitStation,
  "heat" | "hotInlet" | "hotOutlet" | "conductance" | "transferUnits" | "effectiveness"
> & { readonly coldOutlet: Temperature };

function stationOf(
  name: string,
  arrangement: StreamArrangement,
  seaInlet: Temperature,
  { coldOutlet: seaOutlet, ...state }: SolvedStreams,
): CircuitStation {
  const pinch = pinchOf(arrangement, { hotInlet: state.hotInlet, hotOutlet: state.hotOutlet, seaInlet, seaOutlet });
  return { name, seaInlet, seaOutlet, pinch, ...state };
}

/** The largest gap between what an exchanger passes and what its water takes up, and of the whole line. */
function residualOf(
  nodes: readonly LineNode[],
  whole: { readonly heat: number; readonly taken: number },
  seaCapacityRate: number,
): Ratio {
  if (whole.heat === 0) return 0 as Ratio;
  let largest = Math.abs(whole.taken - whole.heat);
  for (const { station, share } of nodes) {
    if (!station) continue;
    const taken = share * seaCapacityRate * (station.seaOutlet - station.seaInlet);
    largest = Math.max(largest, Math.abs(taken - station.heat));
  }
  return (largest / whole.heat) as Ratio;
}
