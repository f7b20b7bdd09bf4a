import type { Graph } from "../../lib/graph";
import { type KindName, unitsOf } from "../../lib/quantity";
import { described, isObject, stepped, Unreadable } from "../../worksheets/build/unreadable";
import type { UnitChoice } from "../state";

/** The choice of units that a link or a record holds. @throws Unreadable naming the field that is none */
export function readUnits(raw: unknown, graph: Graph): UnitChoice {
  if (raw === undefined) return { system: "SI", own: {} };
  if (!isObject(raw)) throw new Unreadable("units", `it is ${described(raw)}; it must be an object`);
  const { system = "SI", own = {} } = raw;
  if (system !== "SI" && system !== "US") throw new Unreadable("units.system", `it is ${described(system)}; it must be "SI" or "US"`);
  if (!isObject(own)) throw new Unreadable("units.own", `it is ${described(own)}; it must be an object`);
  for (const [key, symbol] of Object.entries(own)) {
    const node = graph.nodes.find((each) => each.key === key);
    const kind: KindName | undefined = node && "kind" in node ? node.kind : undefined;
    const known = kind && unitsOf(kind).some((unit) => unit.symbol === symbol);
    if (!known) throw new Unreadable(stepped("units.own", key), `${described(symbol)} is no unit of that line`);
  }
  return { system, own: own as Readonly<Record<string, string>> };
}
