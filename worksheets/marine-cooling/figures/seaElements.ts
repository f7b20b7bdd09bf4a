import { figures, share } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { RowFlow } from "../hydraulics";
import type { ElementKey } from "../inputs";
import type { MarineNetwork } from "../networkAt";
import type { HotLimit, SeaElement } from "./seaLineDrawing";

export type HotLimits = Readonly<Partial<Record<ElementKey, HotLimit>>>;

/** The line's elements as they are drawn: temperatures of the network, pressures of the pump's line. */
export function seaElements(
  { nodes }: MarineNetwork,
  rows: readonly RowFlow[],
  limits: HotLimits,
  words: { readonly flow: number; readonly blocked: number; readonly units: FigureUnits },
): readonly SeaElement[] {
  const { flow, blocked, units } = words;
  return nodes.map(({ key, name, station, ...node }, i) => {
    const limit = limits[key];
    const closest =
      station &&
      `closest ${figures(units.number("temperatureDifference", station.pinch), 2)} ${units.unit("temperatureDifference")}`;
    const remarks = [
      [
        ...(node.share < 1 ? [`${share(units, node.share)} of the water`] : []),
        ...(key === "pump" ? [units.text("volumeFlow", flow, "coolant")] : []),
        ...(key === "strainer" && blocked > 0 ? [`${share(units, blocked)} blocked`] : []),
        ...(closest === undefined ? [] : [closest]),
      ].join(", "),
      ...(limit && station ? [`at most ${figures(units.number("temperature", limit.at))}`] : []),
    ].filter((words) => words !== "");
    return {
      name,
      remarks,
      group: node.group,
      share: node.share,
      seaInlet: node.seaInlet,
      seaOutlet: node.seaOutlet,
      trunkInlet: node.seaInlet,
      trunkOutlet: node.trunkOutlet,
      pressureIn: rows[i]!.pressureIn,
      pressureOut: rows[i]!.pressureOut,
      hot: station && { inlet: station.hotInlet, outlet: station.hotOutlet, limit },
    };
  });
}
