import { cell } from "../../../lib/graph";
import type { Power } from "../../../lib/quantity";
import { jacketHeat, oilHeat } from "../../marine-cooling/heats";

export const landHeat = cell("landHeat", {
  label: "Heat that the engine's water carries on land",
  kind: "power",
  hint: "heat",
  symbol: "Q_{land}",
  from: { jacketHeat, oilHeat },
  compute: ({ jacketHeat, oilHeat }) => (jacketHeat + oilHeat) as Power,
  formula: "Q_{land} = Q_j + Q_o",
  source: "first law",
  assumptions: ["The oil cooler stands in the jacket water; charge coolers are cooled by their own air."],
});
