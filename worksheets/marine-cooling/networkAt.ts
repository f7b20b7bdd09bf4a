import {
  type ClosedCircuit,
  type CoolingNetwork,
  coolingNetwork,
  type LineElement,
  type LineNode,
} from "../../lib/cooling";
import { seaWater } from "../../lib/fluid";
import type { Ratio, Temperature } from "../../lib/quantity";
import type { CircuitSetup, CircuitState } from "./circuitState";
import { liquidRate } from "./circuitState";
import { coldestLoop, dutyOf, keelCircuit } from "./elementDuty";
import { elementNames } from "./elementNames";
import { type LineRow, lineGroups } from "./hydraulics";
import type { ElementKey } from "./inputs";

/** The line solved, with the closed circuits that it cools. */
export interface MarineNetwork extends Omit<CoolingNetwork, "nodes"> {
  readonly nodes: readonly (LineNode & { readonly key: ElementKey })[];
  /** the jacket circuit; undefined where the line has no exchanger for it */
  readonly jacket: ClosedCircuit | undefined;
  readonly keel: boolean;
  /** the charge coolers' loop */
  readonly loop: ClosedCircuit | undefined;
  /** coldest water that the loop could bring to the charge coolers with its thermostat fully open [K] */
  readonly loopColdest: Temperature | undefined;
}

/**
 * The whole network at a state of engine and sea.
 *
 * @param setup exchangers, circuits and liquids
 * @param state heats, flow and sea
 * @throws RangeError by the element's name where it has no answer, or stands twice in the line
 */
export function networkAt(setup: CircuitSetup, state: CircuitState): MarineNetwork {
  const { seaTemperature, rawWaterFlow } = state;
  const rows = setup.rawWaterLine;
  requireOnce(rows);
  const network = coolingNetwork({
    seaTemperature,
    seaCapacityRate: liquidRate(seaWater(setup.salinity), rawWaterFlow, seaTemperature),
    flowRatio: (rawWaterFlow / setup.exchangerSeaFlow) as Ratio,
    elements: lineGroups(rows, setup.branchFlow, setup.strainerBlocked).flatMap((group) =>
      group.rows.map(
        ({ element }, i): LineElement => ({
          name: elementNames[element],
          beside: i > 0,
          share: group.shares[i]!,
          duty: dutyOf(element, setup, state),
        }),
      ),
    ),
  });
  const nodes = network.nodes.map((node, i) => ({ ...node, key: rows[i]!.element }));
  const keel = setup.jacketCooledBy === "keel";
  const loopNode = nodes.find(({ key, circuit }) => key === "chargeLoop" && circuit);
  return {
    ...network,
    nodes,
    keel,
    jacket: keel ? keelCircuit(setup, state) : nodes.find(({ key }) => key === "jacketExchanger")?.circuit,
    loop: loopNode?.circuit,
    loopColdest: loopNode && coldestLoop(setup, state, loopNode),
  };
}

function requireOnce(rows: readonly LineRow[]): void {
  for (const element of Object.keys(elementNames) as ElementKey[]) {
    if (element === "pipe" || element === "strainer") continue;
    const times = rows.filter((each) => each.element === element).length;
    if (times > 1) {
      throw new RangeError(
        `rawWaterLine: the ${elementNames[element].toLowerCase()} stands ${times} times in the line; its heat can be taken out once: leave one row`,
      );
    }
  }
}
